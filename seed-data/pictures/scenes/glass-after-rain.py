"""A grafter among her vines: an orange sun through streaming panes, leaf shadows, blue evening in the glass."""

CAPTION = "A grafter among her vines: an orange sun through streaming panes, leaf shadows, blue evening in the glass."
import random

import figures
import forms
import materials as m
import places
import props

CAMERA = dict(portrait=True, zoom=1.3, aim_move=(0.03, 0, -0.02))
# The readings were taken behind real panes and leaves; the scene's leaves take their part once more.
TRIMS = {"sun-in": 0.7, "sun-vines": 0.7}
WORLD = dict(seen=0.26, sky=[(0, (1.1, 1.0, 0.95)), (0.3, (0.8, 0.9, 1)), (1, (0.5, 0.65, 1))])
FINISH = dict(contrast=0.2, bloom=0.12, saturation=1.15, push=-0.3, shoulder=0.5)


def build(document):
    """The house, its vines and the grafter."""
    forms.box((0, 1, -0.05), (6, 10, 0.1), m.wet_ground("#2f332c", 0.6, 0.6, 0.03, 0.9), bevel=0)
    greens = [m.paper(c, 0.4) for c in ("#38522c", "#6f7f38", "#2a4228")]
    places.vine_row((-2.4, 2.4, 0), (2.4, 2.4, 0), 2.4, greens, 260, 0.5, 3, 0.16)
    places.vine_row((-1.9, 0.6, 0), (-1.5, 2.4, 0), 2.5, greens, 170, 0.4, 8, 0.16)
    places.greenhouse_wall((2.6, -2, 0), (2.6, 5, 0), 2.4)
    places.greenhouse_wall((-2.6, 5.0, 0), (2.6, 5.0, 0), 2.6, step=0.6)
    for i in range(6):
        y = -0.5 + i * 1.1
        forms.rod((2.6, y, 2.4), (0, y, 3.4), 0.025, m.clay("#4d5a58"))
        forms.rod((-2.6, y, 2.4), (0, y, 3.4), 0.025, m.clay("#4d5a58"))
    chance = random.Random(9)
    leaves = [(2.2 + chance.gauss(0, 0.12), -0.75 + chance.gauss(0, 0.35), 1.2 + chance.random() * 1.1) for _ in range(7)]
    places.scatter_leaves(greens[1], leaves, 0.06, 0.15, 2, 5)
    near = [(-0.95 + chance.gauss(0, 0.10), -1.5 + chance.gauss(0, 0.10), chance.uniform(0.7, 2.2)) for _ in range(34)]
    places.scatter_leaves(greens[2], near, 0.06, 0.15, 5, 5)
    her = figures.Figure((0, 0, 0), 25, 1.66, "woman", figures.pose(
        "stand", lean=(5, 0), look=(4, 14, 6), hand_r=(0.10, 0.36, 1.13), hand_l=(-0.12, 0.36, 1.16), elbow_r=(1, -0.3, -0.5), elbow_l=(-1, -0.3, -0.5), curl_r=0.8, curl_l=0.7), skin="#c69a7c")
    her.dress(m.cloth("#97875f"), 0.8, 0.35, 0.10, collar=0.02)
    her.apron(m.cloth("#3a4a3c"), 0.22, 0.2, 0.55)
    her.shoes(m.leather("#2a1f17"), 0.4)
    her.hair(m.hair("#2a1a12"), "bun")
    hand = her.at("grip_l")
    for i in range(7):
        tip = hand + props.V((chance.gauss(0, 0.06) - 0.03, chance.gauss(0, 0.05) - 0.04, 0.26 + chance.random() * 0.14))
        forms.rod(hand - props.V((0, 0, 0.10)), tip, 0.005, m.wood("#5a3f25", "z"))
    grip = her.at("grip_r")
    props.knife(grip, 0.2, 20, 0, 25)
    drops = m.solid_glass("#e8f2f6")
    forms.specks(drops, lambda c: (2.57, c.uniform(-0.8, 3.5), c.uniform(0.3, 2.3)), 500, 0.010, chance)
