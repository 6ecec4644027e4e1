"""A woman drags a cart of anchor chain up the slip; hard work light from the right, mist, a rusted hull, jetty stumps."""

CAPTION = "A woman drags a cart of anchor chain up the slip; hard work light from the right, mist, a rusted hull, jetty stumps."
import random
from math import cos, radians, sin

import figures
import forms
import materials as m
import places
import props

CAMERA = dict(zoom=1.2, aim_move=(-0.4, 0, -0.25))
WORLD = dict(sky=[(0, (1.1, 1.05, 1.0)), (0.3, (0.8, 0.9, 1.0)), (1, (0.5, 0.6, 0.8))], seen=0.4)
FINISH = dict(mist=(9, (0.082, 0.104, 0.124)), mist_from=6.6, mist_sky=0.98, contrast=0.2, saturation=0.85, push=0.6)


def build(document):
    """The slip, the jetty, the lighter, the cart and the woman."""
    slip = m.courses("#4e4d4a", (0.5, 0.25), "#1f1f1f", 0.7, 0.05, wet=0.8, up="y")
    forms.place(forms.box((0, -1, -0.1), (24, 9, 0.2), slip, bevel=0), (0, 0, 0), roll_deg=-5.5)
    forms.ground(m.wet_ground("#2c2a27", 0.55, 0.6, 0.05, 0.5), -0.75, 40, 0.12, 0.7, (0, 30))
    tar, chance = m.wood("#1f1c19", "z", 1, 0.7), random.Random(5)
    for i in range(14):
        x = -9 + i * 1.15
        forms.rod((x, 7.6 + 0.1 * i, -1), (x + chance.uniform(-0.1, 0.1), 7.6 + 0.1 * i, 2.4 + chance.uniform(-0.5, 0.6)), 0.16, tar)
    forms.box((-1.5, 8.2, 2.2), (16, 1.4, 0.16), tar, 5.7)
    forms.box((-1.5, 7.6, 1.0), (16, 0.12, 0.2), tar, 5.7)
    for x, h in ((-4.4, 3.4), (-6.2, 2.6), (-3.2, 1.7)):
        forms.rod((x, 5.5, -1), (x + 0.25, 5.5, h), 0.10, tar)
    hull = places.surface(document, "lighter")
    forms.upright(hull, m.rust("#6a3820"), 1.8, 0.25)
    a, b, _ = places.span(hull)
    for i in range(5):
        p = a.lerp(b, 0.1 + 0.2 * i)
        forms.box((p.x, p.y, 0.8), (0.05, 0.1, 2.3), m.rust("#4a281a"), -20)
    her = figures.Figure((0, 0, 0), 68, 1.68, "woman", figures.pose(
        "pull", pelvis=(0, -0.10, 0.83), lean=(36, 0), foot_r=(0.09, 0.34, 0.085), foot_l=(-0.09, -0.64, 0.10), hand_r=(0.33, -0.20, 0.86), hand_l=(-0.33, -0.20, 0.86), look=(4, -4, 0)), skin="#b88b70")
    her.trousers(m.cloth("#1f2226"))
    her.coat(m.cloth("#6a5a40", folds=0.8), 0.42, 0.05, (0, -0.08, 0), collar=0.05)
    her.belt(m.leather("#2a1d14"), 0.022, 0.05)
    her.shoes(m.leather("#191615"), 0.7)
    her.hair(m.hair("#33241b"), "crop")
    her.headscarf(m.cloth("#6e2b26"))
    wood = m.wood("#3e3024")
    props.cart((-1.55, 0.50, -0.17), -21, wood, shafts=False)
    for side, y in (("r", -0.36), ("l", 0.36)):
        hand = her.at("grip_" + side)
        start = props.V((-1.55 + 0.25 * cos(radians(-21)) - y * sin(radians(-21)), 0.50 + 0.25 * sin(radians(-21)) + y * cos(radians(-21)), 0.48))
        forms.rod(start, hand + (hand - start) * 0.16, 0.026, wood)
    places.puff(her.at((0.0, 0.62, 1.42)), (0.30, 0.16, 0.13), 2.2, "#dfe8ee", 0.6, 0.03)
