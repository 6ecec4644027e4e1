"""A three-metre man on stilts in fog: long coat, tall hat, arms out, one stilt lifted with a chain of falling drops; a false sun."""
import figures
import forms
import materials as m
import more_coast as coast

CAPTION = "A man on tall stilts walks over wet sand in pale fog: long coat, tall hat, arms out for balance, one stilt lifted and dripping; a warm brighter patch of fog at the upper right plays the sun."
CAMERA = dict(portrait=True, zoom=1.08, aim_move=(0.5, 0, 0.22))
WORLD = dict(sky=[(0, (1.12, 1.05, 0.95)), (0.3, (1.0, 1.0, 1.0)), (1, (0.85, 0.92, 1.05))], seen=1.1, temperature_k=6000)
FINISH = dict(push=0.55, mist=(14, (0.37, 0.365, 0.35)), mist_from=25, contrast=0.12, vignette=0.06, saturation=1.0, tint=(1.02, 1.0, 0.95))


def build(document):
    """The sand, the false sun and the man."""
    forms.ground(m.wet_ground("#8f8577", 0.62, 0.7, 0.02, 0.6), 0, 300, centre=(0, 285))
    coast.bright_patch((2.9, 14, 4.4), 4.2, "#ffe0aa", 1.6)
    lift = 1.18
    him = figures.Figure((0, 0, lift), -25, 1.72, "man", figures.pose(
        "walk", pelvis=(0.03, 0, 0.94), lean=(3, -4), twist=4, hips=-4, look=(-4, 12, 4), foot_r=(0.08, -0.02, 0.085), toe_r=(-6, 6), foot_l=(-0.13, 0.42, 0.50), toe_l=(8, -8),
        hand_r=(0.66, 0.14, 1.40), hand_l=(-0.70, 0.02, 1.26), elbow_r=(0.2, -0.6, -0.8), elbow_l=(-0.2, -0.6, -0.8), finger_r=(0.9, 0.2, 0.2), finger_l=(-0.9, 0.1, 0.1), palm_r=(0, 0, -1), palm_l=(0, 0, -1), curl_r=0.1, curl_l=0.1), skin="#b78a6d")
    stripe = m.cloth("#7a6a55")
    him.trousers(stripe)
    him.coat(m.cloth("#3d4650", folds=0.8), 0.86, 0.14, (0.0, -0.14, 0), collar=0.06, buttons=m.metal("#b89b5a"))
    him.shoes(m.leather("#1f1b19"), 0.3)
    him.hair(m.hair("#5a4a3c"), "short")
    him.hat(m.cloth("#22252a"), 0.055, 0.22, m.cloth("#8a3a2a"))
    him.scarf(m.cloth("#a0522d"), 0.42, (0.0, -0.25, 0.0))
    pole = m.wood("#6b4f35", "z")
    for side in "rl":
        ankle, knee = him.at("ankle_" + side), him.at("knee_" + side)
        down = (ankle - knee).normalized()
        foot = coast.V((ankle.x, ankle.y - 0.02, 0.0)) if side == "r" else ankle + down * (lift + 0.02)
        top = ankle + (ankle - foot).normalized() * 0.34
        forms.rod(foot, top, 0.026, pole, 0.032)
        forms.box(ankle - coast.V((0, 0, 0.10)), (0.13, 0.26, 0.03), pole, -25)
        if side == "l":
            drops = m.clay("#f4f4f2", 0.1)
            for i in range(9):
                forms.ball((foot.x + 0.006 * (i % 2), foot.y, max(foot.z - 0.05 - 0.011 * i * (i + 2), 0.02)), 0.011 - 0.0005 * i, drops)
    coast.spray([(-0.25, 0, 0.01), (0.25, 0, 0.02)], 60, (0.15, 0.15, 0.03), 0.006, m.clay("#f0f0ee", 0.1), 3)
