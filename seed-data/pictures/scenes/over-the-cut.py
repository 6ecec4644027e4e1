"""A dancer at the top of a leap over the third bench, plum sky, honey stone lit far behind."""

CAPTION = "A dancer at the top of a leap over the third bench, plum sky, honey stone lit far behind."
import random

import figures
import forms
import materials as m
import places
import props

CAMERA = dict(zoom=1.3, aim_move=(-0.22, 0, 0.10))
WORLD = dict(sky=[(0, (1.15, 0.85, 0.85)), (0.15, (0.85, 0.7, 0.95)), (0.5, (0.5, 0.5, 0.85)), (1, (0.35, 0.4, 0.7))], seen=0.45)
FINISH = dict(contrast=0.2, saturation=0.92, mark="left")


def build(document):
    """The quarry and the dancer."""
    places.quarry(document, "face", m.stone("#6f634e", 1.0, 0.95, 0.05, 0.2), "#9c8560", 3, 5.6)
    places.heap((7.5, 5.2, 0), 2.6, 2.2, m.stone("#4a443c", 0.4), 3, 110)
    her = figures.Figure((0, 0, 0.06), 78, 1.71, "woman", figures.pose("leap"), skin="#c4977a")
    crimson = m.silk("#7d1f2b", 0.3)
    her.trousers(m.cloth("#2c2430", 300, 0.15, 0.1), 0.006, 0.96)
    her.top(m.cloth("#7d1f2b", 300, 0.2), 0.009, None)
    her.skirt(m.cloth("#7d1f2b", 300, 0.2), 0.06, 0.0, 0.010, folds=1, depth=0.0)
    her.shoes(m.cloth("#2c2430"))
    her.hair(m.hair("#2a1c17"), "tail", (0, -0.16, 0.20))
    back = her.at((0.0, -0.16, 1.52))
    props.ribbon([back, her.at((0.05, -0.45, 1.70)), her.at((0.1, -0.85, 1.62)), her.at((0.0, -1.25, 1.85)), her.at((-0.1, -1.6, 1.70))], (0.12, 0.34), crimson, 0.09, 2.2, 0.9)
    props.ribbon([her.at((-0.1, -0.14, 1.47)), her.at((-0.15, -0.5, 1.50)), her.at((-0.1, -0.9, 1.40)), her.at((-0.2, -1.3, 1.52))], (0.10, 0.22), crimson, 0.07, 1.8, 0.7)
    dust = m.paper("#c9b48c", 0.5)
    forms.specks(dust, lambda c: (-0.8 + c.gauss(0, 0.35), 0.15 + c.gauss(0, 0.3), abs(c.gauss(0, 0.16))), 700, 0.008, random.Random(2))
