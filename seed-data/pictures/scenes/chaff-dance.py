"""A dancer turns on one foot with a grain shovel; golden chaff spirals where two dusty beams cross behind him."""
import math
import random

import figures
import forms
import materials as m
import more_land
import places

CAPTION = "A man in a loose shirt and braces spins on one foot in a dark barn, a flat grain shovel swung out. Golden chaff spirals round him where two beams of dusty light cross behind his belt."
CAMERA = dict(zoom=1.55, aim_move=(-0.10, 0, -0.16))
WORLD = dict(seen=1.0)
FINISH = dict(samples=26, contrast=0.2, saturation=1.08, bloom=0.14, vignette=0.2, push=0.45)


def build(document):
    """The barn, the beams, the chaff and the dancer."""
    places.barn(11.0, 5.5, 5.2, m.wood("#6b5138", "z", 1, 0.8, 0.5), True)
    more_land.only_seen(forms.box((0, 6.2, 2.5), (14, 0.05, 6), m.glow("#f3d9a0", 0.42), bevel=0))
    places.boards(-6, 5.4, 5.4, 0.24)
    places.beams(3.6, 4.6, 11, 2, 1.7, 0.26, m.wood("#4b3826"), "x")
    more_land.beam((4.2, 3.4, 4.25), (-3.4, 1.4, -0.35), 0.22, 0.5, "#ffcf80", 0.20)
    more_land.beam((3.3, 3.6, 4.6), (-2.0, 1.8, -0.3), 0.10, 0.2, "#ffcf80", 0.13)
    more_land.beam((-4.6, 3.0, 2.9), (3.4, 1.0, -0.25), 0.16, 0.42, "#fff2da", 0.16)
    him = figures.Figure(document["subjects"][0]["place"], 20, 1.77, "man", figures.pose(
        "stand", pelvis=(0.0, 0, 0.955), lean=(-2, -12), twist=-42, hips=-22, foot_r=(0.03, 0.0, 0.115), toe_r=(-16, 24), foot_l=(-0.34, -0.30, 0.40), toe_l=(20, 50), knee_l=(-0.7, 0.7, -0.1),
        look=(26, -6, 6), hand_r=(0.66, 0.14, 1.30), hand_l=(0.30, 0.36, 1.22), elbow_r=(0.3, -0.8, 0.2), elbow_l=(-0.4, 0.5, -0.6), curl_r=0.95, curl_l=0.95,
        finger_r=(0.3, 0.9, 0), finger_l=(0.5, 0.8, 0), palm_r=(0, 0, -1), palm_l=(0, 0, 1)), skin="#c39677")
    him.trousers(m.cloth("#4a4038", 200, 0.8), 0.026)
    him.top(m.cloth("#cfc5ad", 220, 1.0), 0.034, 0.6, 0.02)
    him.shoes(m.leather("#4a3322"), 0.2)
    him.hair(m.hair("#4a2f1d"), "short", (0.1, 0, 0))
    braces = m.leather("#6a3520")
    for s in (1, -1):
        him._trees = him._surface()
        points = []
        for t in range(9):
            p = him.joints["chest"].lerp(him.joints["pelvis"], -0.35 + 1.3 * t / 8) + him.R_chest @ forms.Vector((s * 0.075, 0, 0))
            hit = him.front(p)
            if hit:
                points.append(him.matrix @ (hit + him.R_chest @ forms.Vector((0, 0.006, 0))))
        if len(points) > 2:
            forms.tube(points, 0.013, braces, 8, 1)
    r, l = him.at("grip_r"), him.at("grip_l")
    way = (r - l).normalized()
    tip = r + way * 0.78
    more_land.shovel(l - way * 0.22, tip)
    chance, gold = random.Random(3), m.paper("#e0b050", 0.45)

    def spiral(c):
        t = c.random()
        a = math.radians(186 - 330 * t)
        reach = (tip - forms.Vector((0, 0, 0))).length * 0.52 + 0.35 * t
        return (math.cos(a) * reach * 1.0 + c.gauss(0, 0.05 + 0.08 * t), math.sin(a) * reach * 0.75 + 0.15 + c.gauss(0, 0.07), 1.28 + 0.95 * t + 0.1 * math.sin(a) + c.gauss(0, 0.05 + 0.12 * t))
    forms.specks(gold, spiral, 1500, 0.0085, chance)
    forms.specks(gold, lambda c: (c.gauss(0, 1.2), c.gauss(0.6, 0.7), c.uniform(0.1, 2.9)), 500, 0.0055, chance)
    more_land.straw(m.paper("#c9a050", 0.2), lambda c: (c.gauss(0, 1.4), c.gauss(0.2, 1.0), 0.015), 700, 0.1, 5, 0.05)
