"""Night on a sluice deck: a woman in a wide hat, bellows wide open and glowing orange from below, moonlight on hat and wet boards."""
import math

import figures
import forms
import materials as m
import more_coast as coast
import places

CAPTION = "Night on a wet sluice deck: a woman in a wide hat, head down, with a squeeze-box wide open that glows orange from below; blue moonlight on hat and shoulders, a rust-orange riveted gate left, an ice-blue fall right."
CAMERA = dict(portrait=True, zoom=1.52, aim_move=(-0.02, 0, -0.12))
WORLD = dict(seen=0.06, stops=-3.8, temperature_k=6500)
TRIMS = {"coal": 0.7}  # The pleats turn half away from it.
FINISH = dict(contrast=0.22, bloom=0.1, vignette=0.18)


def build(document):
    """The deck, the gate, the fall and the player."""
    deck = m.wet_ground("#3a302a", 0.6, 0.5, 0.01, 1.6)
    for i in range(26):
        forms.box((0, -2.6 + i * 0.22, -0.04), (9, 0.212, 0.08), deck, bevel=0.006)
    gate = places.surface(document, "gate")
    forms.upright(gate, m.rust("#8a4a26"), 0.2)
    a, b, high = places.span(gate)
    iron = m.rust("#6d3a20")
    for i in range(6):
        x = a.x + 0.1 + i * 0.72
        forms.box((x, a.y - 0.03, high / 2), (0.16, 0.07, high), iron)
        for k in range(9):
            for s in (-0.045, 0.045):
                forms.ball((x + s, a.y - 0.075, 0.15 + k * 0.24), (0.022, 0.016, 0.022), iron)
    for z in (0.35, 1.15, 1.95):
        forms.box(((a.x + b.x) / 2, a.y - 0.04, z), (b.x - a.x, 0.08, 0.13), iron)
    forms.box((0.34, 4.55, 1.5), (0.34, 0.5, 3.0), m.stone("#2a2827", 0.4, 0.8, 0.03))
    fall = m.wood("#cfe0e8", "z", 1.6, 0.5, 0.55)
    forms.sheet(lambda u, v: (0.5 + u * 3.6, 4.9 - 0.5 * (1 - v) ** 1.7 + 0.04 * coast.noise_line(u * 14, 1), 1.35 * (1 - (1 - v) ** 1.8) + 0.02), fall, 160, 30)
    forms.box((2.3, 5.4, 1.2), (3.8, 1.0, 0.3), m.water("#0d1a22"), bevel=0.1)
    coast.spray([(0.6, 4.3, 0.05), (4.0, 4.3, 0.1)], 900, (0.1, 0.15, 0.14), 0.012, m.paper("#e6f0f4", 0.4), 2)
    her = figures.Figure((0, 0, 0), -20, 1.63, "woman", figures.pose(
        "ease", lean=(6, -3), look=(-6, 16, 6), hand_r=(0.40, 0.30, 1.10), hand_l=(-0.40, 0.32, 1.16), elbow_r=(0.6, -0.6, -0.6), elbow_l=(-0.6, -0.6, -0.6), finger_r=(0.0, 0.9, 0.5), finger_l=(0.0, 0.9, 0.5),
        palm_r=(-1, 0, 0), palm_l=(1, 0, 0), curl_r=0.5, curl_l=0.5), skin="#c08a70")
    her.dress(m.cloth("#2c2f3a", folds=0.9), 0.86, 0.9, 0.16, collar=0.03)
    her.scarf(m.cloth("#7a3a2a"), 0.0)
    her.shoes(m.leather("#161413"), 0.7)
    her.hair(m.hair("#2a1c16"), "long")
    her.hat(m.cloth("#26262c", 180, 0.4), 0.155, 0.115, m.cloth("#6d2f24"))
    # The box: two wooden ends and between them a pleated bellows that sags a little.
    r, l = her.at("grip_r"), her.at("grip_l")
    front = (her.at((0, 1, 0)) - her.at((0, 0, 0))).normalized()
    axis = (l - r)
    up = axis.normalized().cross(front)
    up = up if up.z > 0 else -up
    square = [(math.cos(t), math.sin(t)) for t in (math.pi / 6 + math.pi / 3 * k for k in range(6))]

    def ring(t, radius):
        c = r.lerp(l, t) + front * 0.07 + V(0, 0, -0.10 * math.sin(math.pi * t))
        return [c + up * (y * radius) + front * (x * radius) for x, y in square]

    def V(x, y, z):
        return coast.V((x, y, z))

    def skin(rings, material):
        points = [p for one in rings for p in one]
        faces = [(i * 6 + k, i * 6 + (k + 1) % 6, (i + 1) * 6 + (k + 1) % 6, (i + 1) * 6 + k) for i in range(len(rings) - 1) for k in range(6)]
        faces += [tuple(range(6)), tuple((len(rings) - 1) * 6 + k for k in range(6))]
        forms.raw(points, faces, material)
    n = 38
    skin([ring(0.11 + 0.78 * i / n, 0.135 if i % 2 else 0.105) for i in range(n + 1)], m.paper("#f2b066", 0.3))
    wood = m.wood("#6b3018", "z", 1, 0.3)
    for t0, t1 in ((0.02, 0.12), (0.88, 0.98)):
        skin([ring(t0, 0.138), ring(t0 + 0.005, 0.146), ring(t1 - 0.005, 0.146), ring(t1, 0.138)], wood)
