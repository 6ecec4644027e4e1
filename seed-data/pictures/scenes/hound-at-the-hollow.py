"""A grey lurcher in a tight turn, rust leaves flying up lit from behind, a dark bank of the hollow."""
import math
import random

import forms
import materials as m
import more_land
import places

CAPTION = "A lean grey dog turns hard in dead leaves, feet gathered under it and ears blown back. A spray of rust-orange leaves glows behind it against a dark wooded bank."
CAMERA = dict(zoom=1.62, aim_move=(-0.06, 0, 0.0))
WORLD = dict(sky=[(0, (1, 1, 1)), (1, (0.9, 0.95, 1))], seen=0.12, ground=0.25)
FINISH = dict(samples=26, contrast=0.2, saturation=1.12, vignette=0.25, bloom=0.08, push=0.35)


def build(document):
    """The hollow, the dog and the leaves."""
    litter = m.stone("#3a2415", 0.25, 0.95, 0.05)
    forms.ground(litter, 0, 14, 0.04, 0.8)
    more_land.hill(litter, 6.5, 2.4, 5.0, 30, 0.2)
    rust = [m.paper(c, 0.5) for c in ("#a8501e", "#8a3c16", "#c2762c", "#6e3214")]
    places.fallen_leaves(rust, (-3.2, 3.2, -3.5, 4.5), 2600, 0.10, 0.02)
    chance = random.Random(2)
    for k, colour in enumerate(("#5a2c14", "#7a431c", "#3e2010")):
        bank = [(chance.uniform(-6, 6), chance.uniform(2.0, 5.6)) for _ in range(700)]
        places.scatter_leaves(m.paper(colour, 0.2), [(x, y, 0.05 + 1.2 * (1 - math.cos(min((y - 1.5) / 5, 1) * math.pi))) for x, y in bank], 0.05, 0.13, k + 20)
    for k, leaf in enumerate(rust[:3]):
        points = []
        for _ in range(46):
            t = chance.random() ** 0.8
            points.append((-0.32 - 0.95 * t + chance.gauss(0, 0.05), 0.25 + 0.2 * t + chance.gauss(0, 0.12), 0.08 + 0.75 * t * (1.15 - 0.5 * t) + chance.gauss(0, 0.12 + 0.12 * t)))
        places.scatter_leaves(leaf, [p for p in points if p[2] > 0.03], 0.05, 0.085, k + 4)
    places.scatter_leaves(rust[2], [(0.1 * i - 0.3, -0.3, 0.06 + 0.05 * abs(math.sin(i * 2.2))) for i in range(9)], 0.05, 0.08, 9)
    more_land.lurcher((-0.02, 0, 0.0), m.cloth("#96938e", 140, 0.12, 0.3), 0, 1.02)
