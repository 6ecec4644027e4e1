"""A rope clerk on a pale landing, the noon sun behind her on hammered-tin water; a ledger under her arm, a black chain."""
import math

import figures
import forms
import lights
import materials as m
import more_coast as coast
import props

CAPTION = "A stern rope clerk in a steel-blue smock, ledger under her arm, looks out to the left; behind her nearly white glittering noon water, a bright line of sun on hair and shoulder, and one black mooring chain."
CAMERA = dict(portrait=True, zoom=1.42, move=(0, 0, 0.85), aim_move=(-0.12, 0, -0.02))
WORLD = dict(sky=[(0, (1.1, 1.08, 1.05)), (0.3, (0.9, 0.97, 1.05)), (1, (0.6, 0.8, 1.1))], seen=3.5)
FINISH = dict(contrast=0.2, saturation=0.8, bloom=0.12, vignette=0.05, push=0.1)


def build(document):
    """The water, the landing, the mast, the chain and the clerk."""
    lights.add_sun(document, 1.3, azimuth_deg=199, elevation_deg=44)
    forms.ground(coast.glitter("#8b979e", "#ffffff", 1.7, 2.0, 0.55), -1.5, 120, centre=(0, 121.8))
    granite = m.courses("#c9c4ba", (1.3, 0.7), "#8d887e", 0.9, 0.02, up="y")
    forms.box((0, -1.1, -0.2), (6, 5.2, 0.4), granite, bevel=0.03)
    post = m.stone("#bdb7ab", 0.3, 0.9, 0.01)
    black = m.clay("#08080a", 0.5)
    for x in (-0.86, 0.98):
        forms.box((x, 1.15, 0.5), (0.26, 0.26, 1.0), post, 6, 0.03)

    def sag(a, b, low):
        return [(a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t, a[2] + (b[2] - a[2]) * t - low * 4 * t * (1 - t)) for t in (k / 12 for k in range(13))]

    props.chain(sag((-0.86, 1.0, 0.84), (0.98, 1.0, 0.84), 0.22), black, 0.13)
    props.chain(sag((-2.6, 0.9, 0.8), (-0.86, 1.0, 0.84), 0.2), black, 0.13)
    mast = m.wood("#d8d0c0", "z", 1, 0.6, 0.2)
    forms.rod((0.98, 5.2, -1.5), (1.06, 5.2, 8), 0.075, mast)
    for dx in (0.35, 0.6):
        forms.rod((1.10 + dx, 5.2, -1.3), (1.06, 5.2, 7), 0.012, m.cloth("#6d6a62"))
    her = figures.Figure((0, 0, 0), -20, 1.66, "woman", figures.pose(
        "stand", lean=(-3, 1), twist=-4, look=(-22, -7, 0), hand_l=(-0.17, 0.20, 1.00), elbow_l=(-0.75, -0.6, -0.1), finger_l=(0.1, 0.7, 0.1), palm_l=(0.8, 0, 0.5), curl_l=0.75,
        hand_r=(0.30, 0.02, 0.86), elbow_r=(0.5, -0.8, 0), curl_r=0.8), skin="#bd8c70")
    her.skirt(m.cloth("#39424b"), 0.85, 0.10, 0.03)
    her.top(m.cloth("#4f6d88", 200, 0.8), 0.030, 0.9, 0.035)
    her.skirt(m.cloth("#4f6d88", 200, 0.8), 0.34, 0.05, 0.045, folds=7, depth=0.005)
    her.belt(m.leather("#3a2f28"), 0.020, 0.05)
    her.shoes(m.leather("#2b2725"))
    her.hair(m.hair("#6d5c4c"), "bun", (-0.05, 0, 0))
    spot = her.at((-0.245, 0.07, 1.065))
    forms.place(props.book((0, 0, 0), (0.24, 0.34, 0.06), "#6a3a2c"), spot, -20 + 90, 1, 84, 6)
    hand = her.at("grip_r")
    rope = m.cloth("#c9b78f", 90, 0.4)
    for k in range(5):
        r = 0.15 + 0.006 * k
        forms.tube([hand + coast.V((0.0175 * (k - 2) + 0.09 * math.sin(t), 0.02 * k - 0.04 + r * 0.35 * math.sin(t), -r + r * math.cos(t))) for t in (6.2832 * j / 30 for j in range(31))], 0.011, rope, 8)
