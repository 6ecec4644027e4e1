"""An old eel trapper kneels on a weir sill in river fog and tips a long wicker trap; an eel slides over his sleeve."""
import math

import figures
import forms
import materials as m
import more_coast as coast
import places

CAPTION = "An old man in cap and waders kneels on a weir sill in fog and tips a long wicker trap toward a bucket; an eel slides over his sleeve. Soft light from the right, a cold blue edge on his back, pale falling water behind."
CAMERA = dict(zoom=1.30, aim_move=(0.12, 0, -0.18))
WORLD = dict(sky=[(0, (1.0, 1.05, 1.0)), (1, (0.85, 0.95, 1.05))], seen=0.45, temperature_k=6600)
FINISH = dict(contrast=0.22, saturation=0.95, mist=(13, (0.125, 0.145, 0.145)), mist_from=6.2, vignette=0.16)


def trap(a, b, radius, material):
    """A long wicker trap from its closed end a to its mouth b."""
    a, b = coast.V(a), coast.V(b)
    way = (b - a).normalized()
    side = way.orthogonal().normalized()
    up = way.cross(side)

    def r(t):
        return radius * (0.30 + 0.62 * math.sin(min(t * 1.25, 1) * math.pi / 2)) * (1 + 0.35 * max(t - 0.82, 0) / 0.18)
    n = 30
    for i in range(n + 1):
        t = i / n
        ring = [a.lerp(b, t) + (side * math.cos(s) + up * math.sin(s)) * (r(t) * (1 + 0.03 * math.sin(s * 8 + i * math.pi))) for s in (2 * math.pi * k / 40 for k in range(41))]
        forms.tube(ring, 0.0075, material, 6)
    for k in range(16):
        s = 2 * math.pi * k / 16
        forms.tube([a.lerp(b, i / 12) + (side * math.cos(s) + up * math.sin(s)) * r(i / 12) for i in range(13)], 0.006, material, 6)


def build(document):
    """The sill, the fall, the sluice timber, the man, his trap, bucket and eel."""
    forms.box((0, -0.4, -0.25), (14, 2.6, 0.5), m.courses("#4b4f4a", (1.1, 0.7), "#232624", 0.6, 0.03, wet=0.9, up="y"), bevel=0.04)
    forms.ground(m.water("#2a3834", 0.35, 1.6), -0.42, 60, centre=(0, 60))
    fall = m.wood("#b9c6c1", "z", 1.3, 0.5, 0.45)
    forms.sheet(lambda u, v: (-7 + u * 14, 5.6 - 0.7 * (1 - v) ** 1.7 + 0.05 * coast.noise_line(u * 40, 1), -0.4 + 1.5 * (1 - (1 - v) ** 1.8)), fall, 300, 30)
    coast.spray([(-6, 4.7, -0.3), (6, 4.7, -0.25)], 1500, (0.1, 0.18, 0.10), 0.014, m.paper("#e6eeea", 0.4), 2)
    black = m.wood("#171817", "z", 1, 0.7)
    forms.upright(places.surface(document, "timber"), black, 0.35)
    forms.box((-4.6, 4.6, 1.0), (6.4, 1.6, 4.0), m.courses("#2f332f", (0.9, 0.4), "#161816", 0.7, 0.04, wet=0.5), bevel=0.03)
    forms.box((-1.45, 4.0, 1.2), (0.24, 0.26, 3.4), black)
    for x in (1.95, 2.55):
        forms.box((x, 3.3, 1.2), (0.26, 0.3, 3.6), black)
    forms.box((2.3, 3.2, 1.75), (1.6, 0.2, 0.22), black)
    him = figures.Figure((0.0, 0, 0), 35, 1.72, "man", figures.pose(
        "kneel", lean=(16, 0), look=(4, 20, 2), hand_r=(0.14, 0.52, 0.84), hand_l=(-0.10, 0.66, 0.58), elbow_r=(0.8, -0.3, -0.2), elbow_l=(-0.8, -0.3, -0.3), curl_r=0.7, curl_l=0.75, palm_r=(-0.4, 0, -0.9), palm_l=(0.3, 0, 0.9)), skin="#b98a70")
    him.trousers(m.leather("#3c4238"), 0.032)
    him.top(m.cloth("#56604f", 140, 0.9), 0.036, 0.95, 0.05)
    him.shoes(m.leather("#2b2f2a"), 0.95)
    him.belt(m.leather("#2a221a"), 0.020, 0.026)
    him.hair(m.hair("#b5b1a8"), "crop")
    him.beard(m.hair("#c2beb5"))
    him.cap(m.cloth("#3a3f3c"))
    him.scarf(m.cloth("#7a5a3a"), 0.0)
    wicker = m.wood("#a3814f", "x", 3, 0.8, 0.4)
    r, l = him.at("grip_r"), him.at("grip_l")
    way = (l - r).normalized()
    trap(r - way * 0.24 + coast.V((0, 0, 0.06)), l + way * 0.42 + coast.V((0, 0, 0.02)), 0.14, wicker)
    mouth = l + way * 0.42
    spot = coast.V((mouth.x + way.x * 0.10, mouth.y + way.y * 0.10, 0.0))
    zinc = m.metal("#7d8587", 0.45)
    forms.lathe([(0, 0.01), (0.115, 0), (0.155, 0.27), (0.163, 0.275), (0.163, 0.285), (0.150, 0.28), (0.112, 0.02), (0, 0.02)], spot, zinc)
    forms.tube([spot + coast.V((0.16 * math.cos(t), -0.02 + 0.12 * abs(math.sin(t)) * -1, 0.27 - 0.10 * math.sin(t))) for t in (math.pi * k / 20 for k in range(21))], 0.006, zinc, 8)
    middle = him.at("elbow_r").lerp(him.at("wrist_r"), 0.5)
    eel = [middle + coast.V(p) for p in ((-0.12, -0.13, -0.30), (-0.07, -0.14, -0.16), (-0.06, -0.12, 0.0), (-0.02, -0.06, 0.10), (0.03, -0.07, 0.10), (0.08, -0.13, 0.0), (0.06, -0.15, -0.13), (0.12, -0.14, -0.24))]
    forms.tube(eel, [0.006, 0.016, 0.022, 0.025, 0.026, 0.025, 0.024, 0.012], m.clay("#2b2a1c", 0.1), 14, 3)
