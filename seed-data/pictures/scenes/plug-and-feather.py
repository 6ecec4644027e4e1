"""A splitter strikes the eleventh of fourteen plugs along a nine-ton block; chips stand in the air."""
import math
import random

import figures
import forms
import materials as m
import more_land
import places

CAPTION = "A woman in a leather apron swings a hammer onto one of a row of steel plugs in a huge pale block of stone. Chips of stone hang bright in the air; a grey quarry face stands behind her."
CAMERA = dict(zoom=1.72, move=(0, 0, 0.28), aim_move=(0.12, 0, 0.10))
WORLD = dict(sky=[(0, (1.1, 1.1, 1.12)), (1, (0.9, 0.95, 1.05))], seen=0.5)
FINISH = dict(samples=26, contrast=0.2, mist=(40, (0.20, 0.22, 0.24)), mist_from=7, push=0.2)


def build(document):
    """The quarry, the block and the blow."""
    places.quarry(document, "worked face", stone="#968e80", benches=5)
    block = m.stone("#c9c3b4", 0.5, 0.9, 0.035)
    forms.box((-0.15, 0.03, 0.45), (3.5, 0.50, 0.9), block, 0, 0.02)
    forms.box((-0.5, -0.05, -0.02), (4.5, 1.2, 0.1), m.stone("#8f8878", 0.6), 0, 0.04)
    steel, dark = m.metal("#9a9da0", 0.3), m.clay("#3a362f")
    for i in range(14):
        x = -0.1 + (10 - i) * 0.156
        forms.lathe([(0.0, 0.0), (0.026, 0.0), (0.024, 0.001), (0, 0.001)], (x, 0, 0.9005), dark, 18)
        forms.lathe([(0.013, 0), (0.015, 0.055), (0.017, 0.06), (0.012, 0.066), (0, 0.066)], (x, 0, 0.90), steel, 18)
        for s in (1, -1):
            forms.box((x + s * 0.017, 0, 0.915), (0.006, 0.026, 0.05), steel, 0, 0.002, 0, s * 14)
    her = figures.Figure(document["subjects"][0]["place"], -25, 1.69, "woman", figures.pose(
        "stand", pelvis=(0, -0.05, 0.93), lean=(26, 4), twist=14, foot_r=(0.14, 0.08, 0.085), foot_l=(-0.16, -0.20, 0.085), look=(-14, 24, 0),
        hand_r=(0.30, 0.50, 1.07), hand_l=(0.02, 0.42, 0.98), elbow_r=(0.9, -0.3, 0.1), elbow_l=(-0.8, -0.2, 0.2),
        finger_r=(-0.6, 0.5, -0.5), finger_l=(-0.2, 0.8, -0.4), palm_r=(0, 0.3, -1), palm_l=(0.3, 0, -1), curl_r=0.95, curl_l=0.95, glove="#8a6a42"), skin="#c89a7a")
    her.trousers(m.cloth("#33363b"))
    her.top(m.cloth("#55606a"), 0.026, 0.9, 0.03)
    her.apron(m.leather("#5a3420"), 0.26, 0.30, 0.4)
    her.shoes(m.leather("#2a221d"), 0.4)
    her.hair(m.hair("#6a3c22"), "bun")
    her.headscarf(m.cloth("#a8502c"))
    head = (-0.1, 0.0, 1.008)
    a, b = her.at("grip_r"), her.at("grip_l")
    more_land.hammer(head, b + (a - b).normalized() * -0.02, weight=1.0)
    forms.rod(b, b + (b - forms.Vector(head)).normalized() * 0.3, 0.013, m.wood("#a07a4c", "x"))
    chip = m.stone("#e8e2d4", 0.1)
    chance = random.Random(5)
    for _ in range(90):
        t, r = chance.uniform(0.1, 3.04), abs(chance.gauss(0.0, 0.22)) + 0.05
        places.rock((-0.1 + math.cos(t) * r * 1.3, chance.gauss(-0.06, 0.08), 0.96 + math.sin(t) * r), chance.uniform(0.003, 0.012), chip, chance)
    forms.specks(chip, lambda c: (-0.1 + c.gauss(0, 0.22), c.gauss(-0.03, 0.1), 0.95 + abs(c.gauss(0, 0.16))), 260, 0.003, chance)
