"""A figure in a stiff white paper coat on a pale sand path among white strings in a whitewashed glasshouse."""
import math
import random

import figures
import forms
import materials as m
import more_indoors as more
import places

CAPTION = "A woman in a stiff white coat of pattern paper with wide skirts stands on a pale sand path in a whitewashed glasshouse, rows of white strings rising from very pale young plants. Everything is creamy white; a white moth sits on her right cuff."
CAMERA = dict(portrait=True, zoom=1.3, aim_move=(0.0, 0, 0.0))
WORLD = dict(seen=0.95)
FINISH = dict(samples=16, contrast=0.16, bloom=0.08, vignette=0.0, saturation=0.95, push=0.15, shoulder=0.5)


def build(document):
    """The glasshouse, the strings, the paper coat."""
    sand = m.stone("#d8ccb2", 0.15, 1.0, 0.006)
    forms.box((0, 2, -0.05), (1.7, 14, 0.1), sand, bevel=0)
    for s in (1, -1):
        forms.box((s * 2.1, 2, -0.03), (2.5, 14, 0.1), m.stone("#c4b79c", 0.15, 1.0, 0.02), bevel=0)
        forms.box((s * 0.86, 2, 0.02), (0.05, 14, 0.09), m.clay("#e9e3d5"), bevel=0.01)
    pane = more.see_through("#f0efe9", 0.6)
    bar = m.clay("#f2f1ec", 0.6)
    places.greenhouse_wall((-3.3, 8, 0), (3.3, 8, 0), 3.6, m.glow("#f3efe2", 0.56), bar, 0.66, 3)
    forms.raw([(-3.3, 8.05, 3.6), (3.3, 8.05, 3.6), (0, 8.05, 5.2)], [(0, 1, 2)], m.glow("#f3efe2", 0.60))
    places.greenhouse_wall((-3.3, -2, 0), (-3.3, 8, 0), 3.4, pane, bar, 0.7, 3)
    places.greenhouse_wall((3.3, -2, 0), (3.3, 8, 0), 3.4, pane, bar, 0.7, 3)
    for s in (1, -1):
        for i in range(10):
            forms.rod((s * 3.3, -1 + i, 3.4), (0, -1 + i, 4.9), 0.025, bar)
    forms.rod((0, -2, 4.9), (0, 8, 4.9), 0.04, bar)
    twine, chance = m.glow("#fffdf6", 0.92), random.Random(5)
    green = [m.paper(c, 0.4) for c in ("#dfe8cc", "#e6ecd6", "#d0dcb8")]
    points = [[], [], []]
    for s in (1, -1):
        for row in (1.0, 1.6, 2.3):
            forms.rod((s * row, -2, 3.1), (s * row, 8, 3.1), 0.006, bar)
            for i in range(17):
                y = -1.2 + i * 0.55
                forms.rod((s * row + chance.uniform(-0.02, 0.02), y, 0.05), (s * row, y, 3.1), 0.010, twine, None, 6)
                for k in range(7):
                    points[k % 3].append((s * row, y, 0.10 + 0.07 * k))
    for stuff, where in zip(green, points):
        places.scatter_leaves(stuff, where, 0.09, 0.11, 3)
    her = figures.Figure((0, 0, 0), -15, 1.76, "woman", figures.pose(
        "stand", look=(10, -2, 5), hand_r=(0.46, 0.10, 0.96), hand_l=(-0.47, 0.06, 0.98), elbow_r=(0.8, -0.5, 0), elbow_l=(-0.8, -0.5, 0),
        finger_r=(0.5, 0.2, -0.8), finger_l=(-0.5, 0.2, -0.8), curl_r=0.2, curl_l=0.15), skin="#e2c3ab")
    b = m.Build("pattern paper", "#efebe0", 0.85, specular=0.15)
    b.bump(b.noise(9, 2, b.stretch(1.3, 1.3, 0.5), 0.3), 0.7, 0.03)
    paper = b.material
    her.trousers(m.cloth("#e6e0d2"))
    her.coat(paper, 0.66, 0.27, collar=0.075, slack=0.045)
    her.shoes(m.leather("#ded6c6"), 0.75)
    her.hair(m.hair("#cdb594"), "bun")

    def lapel(u, v):
        t = math.radians(-150 + 300 * u)
        n = her.joints["neck"]
        r = 0.085 + 0.075 * v
        return n.x + math.sin(t) * r * 1.15, n.y + math.cos(t) * r * 0.95 + 0.012, n.z + 0.030 + 0.055 * v - 0.035 * math.cos(t) * (1 - v)
    collar = forms.sheet(lapel, paper, 40, 6, 0.004)
    her._place(collar)
    cuff = her.at("wrist_r")
    moth = m.paper("#fbfaf5", 0.3)
    for s in (1, -1):
        wing = forms.raw([(0, 0, 0), (s * 0.040, 0.004, 0.022), (s * 0.046, 0.006, -0.010), (s * 0.018, 0.002, -0.026)], [(0, 1, 2, 3)], moth)
        forms.place(wing, cuff + figures.V((-0.02, -0.058, 0.035)), 20)
    forms.rod(cuff + figures.V((-0.02, -0.060, 0.045)), cuff + figures.V((-0.02, -0.060, 0.012)), 0.004, m.clay("#d9d2c0"))
