"""A tall woman in a floor-length burnt-orange coat, her hand on a pier, in the long vault of a cold ring kiln."""
import random

import figures
import forms
import materials as m
import more_land
import places

CAPTION = "A tall woman in a floor-length burnt-orange coat with a blue lining stands, chin up, with one hand on a brick pier. Behind her a brick vault runs from cold blue on the left to glowing orange round a bend on the right."
CAMERA = dict(portrait=True, zoom=1.62, aim_move=(0.06, 0, 0.0))
FINISH = dict(samples=26, contrast=0.2, saturation=1.2, bloom=0.1, vignette=0.2, push=0.5)


def build(document):
    """The vault, the pier and the coat."""
    brick = m.clay("#a39c9a", 0.45)
    more_land.brick_vault([(0.3, -3.2), (0.3, 7.0)], 9.9, 1.1, 2.1, brick, m.clay("#6a5e58", 0.9), (0.34, 0.17))
    wall = m.courses("#a09894", (0.30, 0.10), "#4a3e38", 0.5, 0.03, gap=0.012)
    places.brick_arch((1.75, 6.8, 0), 1.3, 1.9, 0.6, wall, 3.0, 3.4)
    places.brick_arch((-1.25, 6.8, 0), 1.3, 1.9, 0.6, wall, 3.0, 3.4)
    places.brick_arch((-4.25, 6.8, 0), 1.3, 1.9, 0.6, wall, 3.0, 3.4)
    forms.box((0, 8.4, 1.7), (12, 0.2, 3.4), wall, bevel=0)
    forms.ground(m.courses("#6b5d54", (0.34, 0.17), "#2c2622", 0.6, 0.02, up="y", wet=0.3), 0, 14)
    for x, y in ((-3.4, 2.6), (-3.2, 5.0)):
        forms.box((x, y, 1.0), (0.5, 0.6, 2.0), m.courses("#7c6558", (0.24, 0.08), "#3a302b", gap=0.01, bump=0.02))
    places.lamp((1.9, 7.8, 0.7), 22, (1, 0.42, 0.10), 0.15)
    places.lamp((-1.2, 7.8, 0.7), 12, (0.35, 0.55, 1), 0.15)
    pier = m.courses("#8a7a74", (0.24, 0.08), "#40342e", gap=0.01, bump=0.025)
    forms.box((0.98, -0.06, 1.35), (0.36, 0.5, 2.7), pier)
    her = figures.Figure(document["subjects"][0]["place"], -20, 1.84, "woman", figures.pose(
        "ease", look=(-4, -12, 4), twist=4, hand_l=(-0.49, -0.10, 1.30), elbow_l=(-0.5, -0.6, -0.7), finger_l=(-0.3, 0.1, 1), palm_l=(-1, 0, 0), curl_l=0.05,
        hand_r=(0.30, 0.10, 0.92), curl_r=0.3, finger_r=(0.2, 0.2, -1)), skin="#caa085")
    ember, flame = m.cloth("#c04a16", 220, 0.9, 0.4), m.silk("#2c5fae")
    her.trousers(m.cloth("#23242a"))
    her.coat(ember, 0.97, 0.20, (0.12, -0.16, 0), 0.06)
    more_land.lining(her, flame, 1.02, 0.07, 0.30, 0.02)
    her.shoes(m.leather("#1b1715"), 0.3)
    her.hair(m.hair("#2a1c16"), "bun")
    soot = m.clay("#120d0b")
    forms.specks(soot, lambda c: (c.uniform(0.1, 2.6), c.uniform(2, 5), c.uniform(0.4, 2.6)), 70, 0.013, random.Random(3), 1)
