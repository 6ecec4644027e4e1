"""Nine unfired bricks in three rows, each with a thumb mark, in one raking light before black."""
import math
import random

import forms
import materials as m
import more_land
from mathutils import noise

CAPTION = "Nine grey unfired bricks in three rows on a board before a black wall. A low light from the left cuts every thumb-sized dent into a bright half and a dark half; small chalk numbers beside them."
CAMERA = dict(zoom=1.12, aim_move=(0, 0, -0.01))
FINISH = dict(samples=26, contrast=0.3, saturation=0.85, push=1.35, vignette=0.25)


def build(document):
    """The board and the bricks."""
    chance = random.Random(11)
    forms.box((0, 2.6, 1.2), (4.5, 0.2, 2.6), m.wood("#151413", "z"), bevel=0)
    forms.box((0, 0.05, 0.783), (1.5, 0.34, 0.034), m.wood("#5a5148", "x", 1, 0.8, 0.5), 0, 0.004)
    green = m.stone("#86847f", 0.09, 0.95, 0.006)
    for row in range(3):
        for column in range(3):
            x, z = (column - 1) * 0.296 + chance.uniform(-0.006, 0.006), 0.80 + row * 0.1 + 0.048
            tilt, back = chance.uniform(-1.0, 1.0), chance.uniform(0, 0.008)
            dx, dz, turn = chance.uniform(-0.035, 0.02), chance.uniform(-0.008, 0.008), chance.uniform(-0.5, 0.5)
            w, h = 0.262, 0.092

            def face(u, v, dx=dx, dz=dz, turn=turn, row=row, column=column, back=back, w=w, h=h):
                px, pz = (u - 0.5) * w, (v - 0.5) * h
                a, b = px - dx, pz - dz
                a, b = a * math.cos(turn) - b * math.sin(turn), a * math.sin(turn) + b * math.cos(turn)
                d = (a / 0.027) ** 2 + (b / 0.034) ** 2
                dent = 0.017 * max(1 - d, 0) ** 1.25 - 0.0012 * math.exp(-((math.sqrt(d) - 1.12) / 0.16) ** 2)
                edge = max(abs(px) - w / 2 + 0.006, 0) ** 2 + max(abs(pz) - h / 2 + 0.006, 0) ** 2
                grit = 0.0011 * noise.fractal((px * 60 + row * 9, pz * 60 + column * 5, 1), 1, 2, 3)
                return px, dent + edge * 90 + grit + back, pz
            front = forms.sheet(face, green, 130, 56)
            body = forms.box((0, 0.058 + back, 0), (w - 0.002, 0.108, h - 0.002), green, 0, 0.004)
            forms.place([front, body], (x, 0, z), 0, 1, 0, tilt)
            more_land.chalk(str(row * 3 + column + 1), (x + 0.095, -0.0035 + back, z - 0.032), 0.034, m.clay("#e6e4de", 0.95))
