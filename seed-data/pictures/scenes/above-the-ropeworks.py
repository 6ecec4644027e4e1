"""Two brothers on a roof in the wind, each in his own light, the town's windows on below, a green band in the dusk."""

CAPTION = "Two brothers on a roof in the wind, each in his own light, the town's windows on below, a green band in the dusk."
import random

import figures
import forms
import materials as m
import places
import props

CAMERA = dict(zoom=1.0, aim_move=(0, 0, 0.02))
WORLD = dict(sky=[(0, (1.6, 1.15, 0.62)), (0.06, (1.05, 1.15, 0.75)), (0.16, (0.55, 0.9, 0.9)), (0.4, (0.4, 0.55, 0.95)), (1, (0.25, 0.33, 0.7))], seen=0.40)
FINISH = dict(contrast=0.2, saturation=0.85, push=0.15, mark="left")


def build(document):
    """The roof, the town and the brothers."""
    forms.box((1, 1, -0.1), (16, 12, 0.2), m.wet_ground("#3d3f42", 0.35, 0.8, 0.02, 0.5), bevel=0)
    forms.upright(places.surface(document, "lift house"), m.courses("#d5d2c8", (0.24, 0.08), "#a9a69c", gap=0.008, bump=0.02), 2.4)
    forms.box((-3.5, 5.5, 2.86), (3.0, 3.0, 0.14), m.clay("#3a3b3e"))
    forms.upright(places.surface(document, "parapet"), m.courses("#6d5a50", (0.24, 0.08), "#463e39", gap=0.008, bump=0.02), 0.35)
    places.roof_town(18, -4.6, 80, 6, 0.45, strength=1.2)
    lit, chance = m.glow("#ffc070", 1.1), random.Random(12)
    for _ in range(34):
        forms.box((chance.uniform(-6, 13), 17.8, chance.choice((1.75, 2.0, 2.75, 3.0))), (0.34, 0.05, 0.5), lit, bevel=0)
    iron = m.metal("#2b2b2d", 0.6)
    for x in (3.4, 4.6):
        forms.rod((x, 5.6, 0), (x, 5.6, 3.4), 0.03, iron)
    props.rope([(3.4, 5.6, 3.3), (4.0, 5.6, 3.05), (4.6, 5.6, 3.3)], iron, 0.012)
    one, two = document["subjects"]
    elder = figures.Figure(one["place"], -40, 1.84, "man", figures.pose(
        "ease", look=(-14, 2, 0), hand_r=(0.20, 0.10, 1.04), hand_l=(-0.20, 0.12, 1.02), elbow_r=(1, -0.4, 0), elbow_l=(-1, -0.4, 0), curl_r=0.6, curl_l=0.6), skin="#b68a6d")
    elder.trousers(m.cloth("#26272c"))
    elder.coat(m.cloth("#1d2026", folds=0.8), 0.62, 0.10, (0.25, -0.10, 0.04), 0.055)
    elder.shoes(m.leather("#17130f"), 0.4)
    elder.hair(m.hair("#3a3430"), "short", (0.1, 0, 0))
    elder.beard(m.hair("#3f3833"))
    elder.scarf(m.cloth("#8a8f96"), 0.34, (0.30, -0.16, 0.14))
    younger = figures.Figure(two["place"], 35, 1.79, "man", figures.pose(
        "stand", lean=(-3, 3), twist=8, look=(10, -7, 0), foot_r=(0.18, -0.05, 0.085), foot_l=(-0.17, 0.12, 0.085), hand_r=(0.24, -0.02, 0.98), hand_l=(-0.03, 0.24, 1.22), elbow_l=(-1, 0, -0.3), curl_l=0.7), skin="#c79b7e")
    younger.trousers(m.cloth("#3a3026"))
    younger.top(m.cloth("#8a3a2a"), 0.02, 0.9, 0.03)
    younger.coat(m.cloth("#1a1a1d", folds=0.8), 0.40, 0.10, (0.26, -0.14, 0.06), 0.05, slack=0.036)
    younger.shoes(m.leather("#241a12"), 0.4)
    younger.hair(m.hair("#7d5430"), "curls")
    younger.scarf(m.cloth("#b0432c"), 0.46, (0.50, -0.10, 0.22))
    for x, y, z, t in ((-1.9, 9, 4.3, 20), (1.4, 12, 5.6, -15), (2.2, 13, 5.0, 10)):
        props.bird((x, y, z), t, m.clay("#15171c"), 0.9, 1.0)
