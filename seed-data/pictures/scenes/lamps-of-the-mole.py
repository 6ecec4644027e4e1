"""A crane signaller on a night roof with a red and a white paddle crossed; sodium lamps of the harbour, one crane lamp drawn as a bow."""
import math
import random

import figures
import forms
import materials as m
import more_coast as coast
import places

CAPTION = "Night on a roof: a crane signaller in a heavy coat braces with a red and a white paddle crossed before him, warm lamp light on his face; behind, a string of small sodium lamps and one crane lamp drawn as a long bow."
CAMERA = dict(zoom=1.26, aim_move=(-0.20, 0, 0.04))
WORLD = dict(sky=[(0, (1.2, 1.0, 0.9)), (0.1, (0.8, 0.9, 1.2)), (1, (0.5, 0.7, 1.2))], seen=0.05, stops=-2.5)
FINISH = dict(contrast=0.2, bloom=0.14, vignette=0.15)


def build(document):
    """The roof, the lift house, the harbour's lamps and the signaller."""
    forms.ground(m.stone("#2e2b29", 0.25, 0.8, 0.015, 0.3), 0, 6.5, centre=(0, 0))
    forms.upright(places.surface(document, "lift house"), m.courses("#c2b8a6", (0.24, 0.075), "#8f8678", 0.9, 0.012, gap=0.009), 1.6)
    forms.box((-3.5, 4.36, 1.0), (0.85, 0.06, 2.0), m.wood("#3a2c22", "z"))
    forms.upright(places.surface(document, "parapet"), m.stone("#1d1b1b", 0.6, 0.7, 0.02), 0.35)
    chance = random.Random(6)
    lamp, pale = m.glow("#ffab4d", 5.0), m.glow("#ffe0b0", 4.0)
    streak = m.glow("#c8741f", 0.45)
    for i in range(46):
        x = -16 + i * 1.05 + chance.uniform(-0.3, 0.3)
        y = 70 + 0.35 * i
        z = 2.1 + 0.045 * i + chance.choice((0, 0, 0, 0.9, -0.5)) * 0.6
        forms.ball((x, y, z), chance.uniform(0.10, 0.19), pale if chance.random() < 0.15 else lamp)
        for k in range(3):
            forms.box((x + chance.gauss(0, 0.03), y - 3, -0.15 - 0.55 * k + 0.03 * i), (0.16 - 0.03 * k, 0.05, 0.34), streak, bevel=0)
    bow = [(-9 + 21 * t, 60, 6.6 + 5.4 * math.sin(math.pi * (0.18 + 0.74 * t))) for t in (k / 40 for k in range(41))]
    forms.tube(bow, [0.045] * 40 + [0.10], m.glow("#ffd9a0", 2.4), 8)
    crane = m.clay("#101014")
    for x in (9.5, -6.5):
        forms.rod((x, 64, -4), (x, 64, 8.5), 0.22, crane)
        forms.rod((x, 64, 8.0), (x - 6.5, 64, 11.5), 0.16, crane)
        forms.rod((x, 64, 8.5), (x + 2.2, 64, 9.2), 0.2, crane)
    him = figures.Figure((0, 0, 0), -35, 1.79, "man", figures.pose(
        "stand", pelvis=(0, 0, 0.925), lean=(2, 0), look=(-2, 2, 0), foot_r=(0.20, 0.04, 0.085), foot_l=(-0.20, -0.04, 0.085), toe_r=(-20, 0), toe_l=(20, 0),
        hand_r=(0.08, 0.36, 0.98), hand_l=(-0.08, 0.40, 0.98), elbow_r=(0.8, -0.2, -0.5), elbow_l=(-0.8, -0.2, -0.5), curl_r=0.95, curl_l=0.95,
        finger_r=(-0.8, 0.5, 0.2), finger_l=(0.8, 0.5, 0.2), glove="#3a2a20"), skin="#bf8a6b")
    him.trousers(m.cloth("#2d2d36"))
    him.coat(m.cloth("#4d505c", 160, 0.9), 0.62, 0.08, collar=0.075, slack=0.045, buttons=m.metal("#b0904c", 0.3))
    him.belt(m.leather("#1d1714"), 0.026, 0.06)
    him.shoes(m.leather("#17161a"), 0.6)
    him.hair(m.hair("#3a2c22"), "crop")
    him.beard(m.hair("#4a382a"))
    him.cap(m.cloth("#2a2d36"), m.leather("#101012"))
    for side, tip, colour in (("r", (-0.36, 0.42, 1.24), "#c2281c"), ("l", (0.36, 0.40, 1.24), "#efe8da")):
        grip, end = him.at("grip_" + side), him.at(tip)
        way = (end - grip).normalized()
        forms.rod(grip - way * 0.12, end, 0.014, m.wood("#7d5c3a"))
        disc = forms.lathe([(0, -0.008), (0.155, -0.008), (0.16, 0), (0.155, 0.008), (0, 0.008)], (0, 0, 0), m.clay(colour, 0.5))
        normal = him.at((0, 1, 0.1)) - him.at((0, 0, 0))
        disc.matrix_world = coast.Matrix.Translation(end + way * 0.05) @ normal.normalized().to_track_quat("Z", "Y").to_matrix().to_4x4()
    places.puff(him.at((0.02, 0.30, 1.62)), (0.20, 0.14, 0.10), 4.0, "#e8e0d8", 0.6)
