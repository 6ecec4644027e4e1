"""The miller claps: flour hangs between his hands, lit from behind; oak bins and a lime-washed wall fall away in brown."""

CAPTION = "The miller claps: flour hangs between his hands, lit from behind; oak bins and a lime-washed wall fall away in brown."
import random

import figures
import forms
import materials as m
import places
import props

CAMERA = dict(portrait=True, zoom=1.28, aim_move=(-0.06, 0, 0.03))
WORLD = dict(seen=0.2, stops=-2.6)
FINISH = dict(push=0.3, contrast=0.22, bloom=0.1)


def build(document):
    """The stone floor and the miller."""
    oak = m.wood("#5d4126", "z")
    a, b, high = places.span(places.surface(document, "bins"))
    for i in range(4):
        x = a.x + (i + 0.5) * (b.x - a.x) / 4
        forms.box((x, a.y + 0.5, high / 2), (1.2, 1.0, high), oak, bevel=0.03)
        forms.box((x, a.y - 0.02, 1.0), (0.5, 0.05, 0.45), m.wood("#6e4e2e", "x"), bevel=0.02)
        forms.lathe([(0.10, 0), (0.12, 0.02), (0.10, 0.03)], (0, 0, 0), m.metal("#b08a48", 0.3)).matrix_world = _stand(x, a.y - 0.05, 1.02)
    forms.box((0, a.y - 0.05, high + 0.05), (5.4, 0.2, 0.16), oak)
    forms.box((0, a.y + 1.1, 2.2), (6, 0.2, 4.4), m.stone('#6b5f50', 0.6), bevel=0)
    wall = m.stone("#c9bfae", 0.6, 0.95, 0.015)
    places.wall_with_windows((-2.6, 4.2, 0), (-2.6, -2.5, 0), 2.9, [(3.4, 1.1, 0.8, 0.9)], wall, bars=(2, 3))
    forms.box((0, 0.5, -0.05), (6, 8, 0.1), m.wood("#6a5138", "y", 0.8, 0.6), bevel=0)
    places.beams(-0.6, 2.75, 6, 4, 1.3, 0.2, along="x")
    places.mill_stones((1.35, 1.55, 0), 0.62)
    props.sack((-1.35, 1.5, 0), 0.85)
    props.sack((-0.95, 2.0, 0), 0.8, turn_deg=60)
    him = figures.Figure((0, 0, 0), -20, 1.76, "man", figures.pose(
        "stand", lean=(-3, 1), twist=3, look=(-4, 10, 4), hand_r=(0.085, 0.40, 1.13), hand_l=(-0.085, 0.40, 1.14), elbow_r=(0.9, -0.3, -0.5), elbow_l=(-0.9, -0.3, -0.5),
        finger_r=(-0.15, 0.75, 0.65), finger_l=(0.15, 0.75, 0.65), palm_r=(-1, 0, 0), palm_l=(1, 0, 0), curl_r=0.05, curl_l=0.05, foot_r=(0.14, 0.05, 0.085), foot_l=(-0.13, 0, 0.085)), skin="#b98a6b")
    him.trousers(m.cloth("#4a3d30"))
    him.top(m.cloth("#8d8674"), 0.024, 0.25, 0.025)
    him.apron(m.cloth("#a99c82", 200, 0.4), 0.25, 0.26, 0.5)
    him.shoes(m.leather("#2c2018"), 0.4)
    him.hair(m.hair("#c9c0b2"), "short")
    him.beard(m.hair("#c4bcb0"))
    middle = (him.at("grip_r") + him.at("grip_l")) / 2
    flour = m.paper("#fffaf0", 0.5)
    forms.specks(flour, lambda c: (middle.x + c.gauss(0, 0.17), middle.y + c.gauss(0, 0.14), middle.z + 0.05 + c.gauss(0, 0.13)), 2600, 0.0021, random.Random(1))
    forms.specks(flour, lambda c: (middle.x + c.gauss(0, 0.10), middle.y + c.gauss(0, 0.09), middle.z + 0.03 + c.gauss(0, 0.09)), 1600, 0.0024, random.Random(2))
    places.puff(middle, (0.42, 0.26, 0.30), 3.2, "#fff6e6", 0.5)


def _stand(x, y, z):
    from mathutils import Matrix
    return Matrix.Translation((x, y, z)) @ Matrix.Rotation(1.5708, 4, "X")
