"""Two men in a low kiln vault: a pair of bricks hangs in the air between the barrow man's hands and the setter's."""
import random

import figures
import forms
import materials as m
import more_land
import props

CAPTION = "Two men face each other in a low brick vault; two bricks side by side hang in mid-air between them. Left of them a wall of stacked bricks glows red through its gaps; from the right comes cool daylight."
CAMERA = dict(zoom=1.42, aim_move=(0.03, 0, -0.08))
WORLD = dict(seen=0.2)
FINISH = dict(samples=26, contrast=0.18, saturation=1.0, bloom=0.14, vignette=0.22, push=0.4)


def build(document):
    """The vault, the set bricks, the barrow and the men."""
    chance = random.Random(7)
    brick = m.clay("#8f8a8c", 0.6)
    more_land.brick_vault([(0, -1.5), (0, 4.5)], 9.4, 1.0, 1.75, brick, m.clay("#5a4c46", 0.9), (0.4, 0.2))
    forms.box((0, 4.6, 1.4), (10, 0.2, 2.8), m.courses("#86848a", (0.24, 0.08), "#4a403c", gap=0.01, bump=0.02), bevel=0)
    forms.ground(m.stone("#7d6a5e", 0.4, 0.95, 0.03), 0, 9, 0.02, 1.2)
    raw, kinds = [], ("#8a6454", "#7a5648", "#967060")
    for kind in kinds:
        thing, matrices = forms.box((0, 0, 0), (0.105, 0.22, 0.066), m.clay(kind, 0.8), 0, 0.004), []
        for row in range(30):
            for column in range(26):
                x = -2.65 + column * 0.152 + (0.03 if row % 2 else 0)
                if chance.random() < 0.34 and x < 1.35 and row * 0.071 < 2.1 - max(0, x + 1.0) * 1.0:
                    raw.append((row, column))
                    matrices.append(forms.at(x + chance.gauss(0, 0.004), 2.5 + chance.gauss(0, 0.012), 0.036 + row * 0.071, chance.gauss(0, 1.5)))
        forms.scatter(thing, matrices)
    body = forms.box((0, 0, 0), (0.105, 0.2, 0.066), m.clay("#6e4c40", 0.8), 0, 0.004)
    forms.scatter(body, [forms.at(-2.65 + c * 0.152 + (0.03 if r % 2 else 0), 2.52, 0.036 + r * 0.071, chance.gauss(0, 1)) for r in range(30) for c in range(26)
                         if (r, c) not in raw and -2.65 + c * 0.152 < 1.35 and r * 0.071 < 2.05 - max(0, -1.65 + c * 0.152) * 1.0])
    forms.raw([(-2.7, 2.75, 0), (1.0, 2.75, 0), (0.1, 2.75, 0.9), (-1.0, 2.75, 2.0), (-2.7, 2.75, 2.0)], [(0, 1, 2, 3, 4)], m.glow("#ff3008", 1.3))
    one = figures.Figure(document["subjects"][0]["place"], 60, 1.74, "man", figures.pose(
        "ease", lean=(6, 0), look=(-4, 0, 0), hand_r=(0.20, 0.42, 1.24), hand_l=(-0.20, 0.42, 1.24), elbow_r=(0.7, -0.4, -0.8), elbow_l=(-0.7, -0.4, -0.8),
        finger_r=(0.1, 1, 0.15), finger_l=(-0.1, 1, 0.15), palm_r=(-1, 0, 0.3), palm_l=(1, 0, 0.3), curl_r=0.1, curl_l=0.1, foot_r=(0.12, 0.18, 0.085), foot_l=(-0.14, -0.16, 0.085)), skin="#bd8f70")
    one.trousers(m.cloth("#3e3a38", 180, 0.8), 0.024)
    one.top(m.cloth("#a59a8c", 200, 0.9), 0.028, 0.3)
    one.apron(m.leather("#5a3c28"), 0.24, 0.24, 0.55)
    one.shoes(m.leather("#2a221e"), 0.5)
    one.hair(m.hair("#3b2a1e"), "crop")
    one.beard(m.hair("#4a3526"))
    one.headscarf(m.cloth("#8a3326"))
    two = figures.Figure(document["subjects"][1]["place"], -60, 1.80, "man", figures.pose(
        "stand", pelvis=(0, 0.06, 0.90), lean=(14, 0), look=(4, -4, 0), hand_r=(0.16, 0.56, 1.32), hand_l=(-0.16, 0.56, 1.32), elbow_r=(0.6, -0.3, -0.8), elbow_l=(-0.6, -0.3, -0.8),
        finger_r=(0.05, 1, 0.5), finger_l=(-0.05, 1, 0.5), palm_r=(-0.5, 0, 1), palm_l=(0.5, 0, 1), curl_r=0.1, curl_l=0.1, foot_r=(0.14, 0.30, 0.085), foot_l=(-0.14, -0.26, 0.12), toe_l=(8, 26)), skin="#a97c60")
    two.trousers(m.cloth("#4a5058", 180, 0.8), 0.024)
    two.top(m.cloth("#6a7886", 200, 0.9), 0.026, 0.12)
    two.shoes(m.leather("#2a221e"), 0.5)
    two.hair(m.hair("#8a7a62"), "short")
    two.cap(m.cloth("#3a4048"))
    two.belt(m.leather("#3a281c"))
    bright = m.clay("#d8a88c", 0.8)
    for s in (-1, 1):
        forms.box((0.05, 0.1 + 0.075 * s, 1.3), (0.225, 0.105, 0.068), bright, 12, 0.004, 6, -16)
    wood = m.wood("#6a563e", "x", 1, 0.7, 0.5)
    forms.box((2.05, 0.62, 0.36), (0.9, 0.6, 0.05), wood, -12)
    for y in (0.36, 0.88):
        forms.rod((2.75, y, 0.42), (1.45, y, 0.30), 0.025, wood)
    props.wheel((1.72, 0.62, 0.2), 0.2, m.metal("#4a4745", 0.5), 8, 0.02, 0.04, "y")
    forms.rod((2.3, 0.4, 0), (2.3, 0.4, 0.36), 0.025, wood)
    for row in range(4):
        for c in range(4):
            forms.box((1.78 + c * 0.16 + (row % 2) * 0.03, 0.62, 0.42 + row * 0.07), (0.105, 0.44, 0.066), bright, -12 + chance.gauss(0, 2), 0.004)
    forms.specks(m.clay("#c98a68"), lambda c: (0.05 + c.gauss(0, 0.35), 0.1 + c.gauss(0, 0.2), 1.25 + c.gauss(0, 0.25)), 160, 0.0032, chance)
