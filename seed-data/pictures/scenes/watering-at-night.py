"""A grower in a cap and apron holds a brass lance high in a glasshouse by night; beads of spray, orange above and blue below."""
import random

import figures
import forms
import materials as m
import more_indoors as more
import places

CAPTION = "A grower in a cap and apron holds a brass lance high in a dark glasshouse. The spray flies to the right in a wide arc of glittering beads, orange at the top, blue lower down; benches of cuttings run back on both sides."
CAMERA = dict(zoom=1.42, aim_move=(0.42, 0, -0.02))
WORLD = dict(seen=0.03)
FINISH = dict(samples=16, contrast=0.2, bloom=0.22, saturation=2.1, push=0.35, vignette=0.2)


def build(document):
    """The house, the benches, the grower, the water."""
    forms.box((0, 2, -0.05), (8, 16, 0.1), m.wet_ground("#3a3a38", 0.6), bevel=0)
    places.greenhouse_wall((-3.2, 8, 0), (3.2, 8, 0), 3.4, m.Build("wet glass", "#0a1014", 0.4, specular=0.8).material, m.clay("#4d5a58", 0.5), 0.64, 3)
    for s in (1, -1):
        places.greenhouse_wall((s * 3.3, -2, 0), (s * 3.3, 8, 0), 3.2, None, m.clay("#4d5a58", 0.5), 0.8, 3)
        for i in range(8):
            forms.rod((s * 3.3, 1 + i, 3.2), (0, 1 + i, 4.4), 0.025, m.clay("#4d5a58", 0.5))
        forms.box((s * 1.95, 3.5, 0.74), (1.1, 9, 0.10), m.wood("#6a543a", "y"), bevel=0.01)
        for i in range(6):
            forms.box((s * 1.6, -0.8 + i * 1.7, 0.35), (0.08, 0.08, 0.70), m.wood("#4a3a2a", "z"), bevel=0.005)
    chance = random.Random(8)
    leaves = [m.paper(c, 0.35) for c in ("#6f9a4a", "#88ad58", "#4f7f48")]
    points, pots = [[], [], []], []
    for s in (1, -1):
        for i in range(20):
            for k in range(3):
                x, y = s * (1.58 + 0.32 * k), -0.7 + i * 0.44
                pots.append(forms.at(x, y, 0.79))
                points[chance.randrange(3)] += [(x, y, 0.93 + 0.05 * j) for j in range(4)]
    forms.scatter(forms.lathe([(0, 0), (0.055, 0), (0.075, 0.11), (0.08, 0.12), (0, 0.11)], (0, 0, 0), m.clay("#a4603c", 0.8), 18), pots)
    for stuff, where in zip(leaves, points):
        places.scatter_leaves(stuff, where, 0.07, 0.12, 4)
    man = figures.Figure((0, 0, 0), 35, 1.77, "man", figures.pose(
        "ease", lean=(-5, 3), look=(8, -16, 0), hand_l=(-0.27, 0.24, 1.66), elbow_l=(-0.8, 0, -0.5), finger_l=(-0.4, 0.7, 0.5), palm_l=(0.6, 0.2, 0.6), curl_l=0.9,
        hand_r=(0.13, 0.15, 1.28), elbow_r=(0.8, -0.4, -0.3), finger_r=(-0.4, 0.7, 0.5), curl_r=0.9), skin="#b98a6a")
    man.trousers(m.cloth("#3c4048"))
    man.top(m.cloth("#8a8f86", 220, 0.5), 0.026, 0.95, 0.03)
    man.apron(m.cloth("#3f5a4a"), 0.27, 0.2, 0.45)
    man.shoes(m.leather("#20242a"), 0.7)
    man.hair(m.hair("#5a4a3c"), "crop")
    man.cap(m.cloth("#4a4238"))
    man.beard(m.hair("#6a5a4a"))
    brass = m.metal("#d8a94e", 0.22, 0.1)
    low, high = man.at("grip_r"), man.at("grip_l")
    tip = high + (high - low).normalized() * 0.42
    forms.rod(low - (high - low) * 0.15, tip, 0.011, brass)
    rose = forms.lathe([(0.012, 0), (0.045, 0.06), (0.048, 0.07), (0, 0.075)], (0, 0, 0), brass, 24)
    turn = (tip - high).to_track_quat("Z", "Y").to_matrix().to_4x4()
    turn.translation = tip
    rose.matrix_world = turn
    hose = [low, low + figures.V((-0.05, 0.05, -0.5)), (low.x - 0.1, low.y + 0.2, 0.06), (-0.7, -0.2, 0.03), (-1.0, 1.2, 0.03), (-0.5, 4, 0.03)]
    forms.tube(hose, 0.016, m.leather("#4a5a34"), 12, 3)
    away = (tip - high).normalized()

    def drop(c):
        t = abs(c.gauss(0.36, 0.22)) + 0.015
        speed = 2.3 * c.uniform(0.82, 1.15)
        side = 0.16 * t * 3
        p = tip + away * 0.06 + figures.V((away.x * speed * t + 0.35 * t, away.y * speed * t + 0.45 * t, away.z * speed * t - 4.9 * t * t))
        return p.x + c.gauss(0, side * 0.45), p.y + c.gauss(0, side), max(p.z + c.gauss(0, side * 0.42), 0.02)
    bead = more.see_through("#b4b4b4", 0.7, 0.2)
    forms.specks(bead, drop, 1900, 0.009, random.Random(2))
    forms.specks(bead, drop, 500, 0.014, random.Random(3))
    forms.specks(bead, drop, 3000, 0.0036, random.Random(4))
    cam = figures.V((0, -6.2, 1.3))
    for x, z, r, tone in ((-0.128, 0.128, 0.011, "#6aa0ff"), (-0.098, 0.112, 0.014, "#ff9a40"), (-0.126, 0.096, 0.008, "#8ab4ff")):
        disc = forms.lathe([(0, 0), (r, 0)], (0, 0, 0), more.ghost(tone, 0.4, 0.3), 48)
        forms.place(disc, cam + figures.V((x, 1.0, z)), 0, 1, 90)
