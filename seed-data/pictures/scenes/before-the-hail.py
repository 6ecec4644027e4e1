"""A shot-firer on a pale ledge under a cloud the colour of a bruise, the empty exploder box under his arm."""
import random

import figures
import forms
import materials as m
import more_land
import places

CAPTION = "A quarry shot-firer in a peaked cap and long coat stands on pale stone under a violet thundercloud, a wooden box under one arm. His face is lit from the left, a cold white line runs down his sleeve."
CAMERA = dict(portrait=True, zoom=1.13, aim_move=(0.16, 0, 0.08))
FINISH = dict(samples=26, contrast=0.2, saturation=1.1, vignette=0.22, push=0.15)


def build(document):
    """The cloud, the ledge and the man."""
    more_land.painted_sky([(0.0, "#7c8098"), (0.20, "#9b9ab2"), (0.28, "#615f7c"), (0.42, "#3b3a54"), (0.62, "#292a42"), (1.0, "#191d2e")], 70, 130, -9, 34, 0.12, 0.46, 0.85, (1, 1, 1.9))
    stone = m.stone("#cfc6b0", 0.7, 0.95, 0.08)
    forms.ground(stone, 0, 9, 0.05, 0.7, (0, 1.0))
    chance = random.Random(8)
    for _ in range(46):
        x, y, r = chance.uniform(-4, 4), chance.uniform(1.2, 7), abs(chance.gauss(0, 0.12)) + 0.05
        places.rock((x, y, r * 0.3), r, stone, chance)
    man = figures.Figure(document["subjects"][0]["place"], -20, 1.78, "man", figures.pose(
        "ease", look=(14, -2, 0), hand_r=(0.22, 0.16, 1.02), elbow_r=(0.9, -0.35, -0.1), finger_r=(-0.4, 0.9, -0.1), palm_r=(-1, 0, 0.1),
        hand_l=(-0.28, 0.05, 0.90), curl_l=0.5, curl_r=0.5), skin="#c39a7c")
    man.trousers(m.cloth("#2b2a30"))
    man.coat(m.cloth("#6e6453", 200, 1.0), 0.86, 0.10, (0.03, -0.06, 0), buttons=m.metal("#7e7252"))
    man.shoes(m.leather("#1f1b19"), 0.5)
    man.hair(m.hair("#6d6a68"), "crop")
    man.beard(m.hair("#77726c"))
    man.cap(m.cloth("#2d2c33"), m.leather("#17161a"))
    man.scarf(m.cloth("#5c5a62"), 0)
    at = man.at((0.30, 0.10, 1.14))
    forms.box(at, (0.17, 0.30, 0.24), m.wood("#8a5a34", "x"), -12, 0.012)
    top = man.at((0.30, 0.10, 1.275))
    forms.box(top, (0.05, 0.16, 0.03), m.metal("#a08a4c", 0.35), -12)
    forms.rod((0.38, -0.42, 0.02), (0.42, -0.42, 0.20), 0.009, m.glow("#f2f6ff", 1.3), 0.003)
