"""A deckhand at the end of a throw: loops of thin line in the air, each edged with hard light, a slate squall sky over granite."""
import math

import figures
import forms
import materials as m
import more_coast as coast
import places
import props

CAPTION = "A deckhand in a blue jersey at the end of a throw, arm out to the upper left, two loops of thin rope and a heavy knot in the air, each edged with hard light; slate squall sky over a dark granite wall."
CAMERA = dict(zoom=0.88, aim_move=(-0.50, 0, 0.0))
WORLD = dict(seen=0.4)
FINISH = dict(contrast=0.24, saturation=0.95, bloom=0.07)


def build(document):
    """The quay, the squall, the deckhand and the line."""
    coast.clouds("#232a33", "#5f6a75", 0.85, scale=1.3, low=0.36, high=0.7, seed=5.3)
    forms.upright(places.surface(document, "wall"), m.courses("#565a5d", (1.1, 0.46), "#2f3236", wet=0.3), 0.9, 0.04)
    forms.box((0, -2.5, -0.2), (30, 15, 0.4), m.courses("#4d4e4e", (1.2, 0.8), "#1f2021", 0.75, 0.03, wet=0.4, up="y"), bevel=0.03)
    props.bollard((-1.9, 1.9, 0), 0.55, 0.19)
    props.bollard((2.3, 2.4, 0), 0.55, 0.19)
    her = figures.Figure((0.42, 0, 0), 8, 1.72, "woman", figures.pose(
        "stand", pelvis=(0.12, 0.04, 0.86), lean=(10, 20), twist=-10, hips=-6, look=(-24, -10, 14), foot_r=(0.42, 0.22, 0.085), toe_r=(-48, 0), foot_l=(-0.36, -0.16, 0.10), toe_l=(-4, 16), knee_r=(0.6, 1, 0),
        hand_r=(0.86, 0.26, 1.74), hand_l=(-0.38, -0.10, 1.02), elbow_r=(0.1, -0.6, -0.8), elbow_l=(-0.5, -0.8, -0.1), finger_r=(0.75, 0.3, 0.5), curl_r=0.02, curl_l=0.9, palm_r=(0.1, 0.5, -0.8)), skin="#bd8b70")
    her.trousers(m.cloth("#26282b", 200, 0.7), 0.03)
    her.top(m.cloth("#2f4d68", 90, 0.5), 0.040, 0.92, 0.03)
    her.shoes(m.leather("#161515"), 0.75)
    her.hair(m.hair("#7a4a28"), "short")

    def q(x, y, z):
        return her.matrix @ her.head_point(x, y, z)

    for k in range(7):
        props.ribbon([q(-0.05 + 0.015 * k, 0.06, 0.085), q(0.0 + 0.02 * k, 0.11, 0.05 - 0.008 * k), q(0.10 + 0.012 * k, 0.15, 0.02 - 0.012 * k), q(0.20, 0.16 + 0.01 * k, 0.03 - 0.02 * k)], (0.018, 0.004), m.hair("#7a4a28"), 0.01, 1.0)
    line = m.cloth("#e0d3b2", 200, 0.2)
    a = her.at("grip_r") + coast.V((-0.06, 0, 0.03))
    points = [her.at("grip_l"), her.at((-0.2, 0.30, 0.95)), her.at((0.30, 0.42, 1.12)), a]
    n, turns = 84, 3
    for i in range(1, n + 1):
        t = i / n
        c = a.lerp(coast.V((-2.0, -0.35, 2.12)), t) + coast.V((0, 0, 0.12 * math.sin(t * math.pi)))
        r = 0.27 * math.sin(math.pi * min(t * 1.15, 1)) ** 0.6
        w = 2 * math.pi * turns * t
        points.append(c + coast.V((math.sin(w) * r * 0.8, 0.12 * math.sin(w), (math.cos(w) - 1) * -r)))
    end = coast.V((-2.26, -0.40, 2.02))
    points.append(end)
    props.rope(points, line, 0.006, 2)
    forms.ball(end, 0.062, m.cloth("#c9b78c", 60, 0.9))
    for axes in ((0, 1), (0, 2), (1, 2)):
        ring = []
        for j in range(21):
            p = coast.V((0, 0, 0))
            p[axes[0]], p[axes[1]] = 0.064 * math.cos(math.pi * j / 10), 0.064 * math.sin(math.pi * j / 10)
            ring.append(end + p)
        forms.tube(ring, 0.011, line, 8)
    grip = her.at("grip_l")
    loop = [grip + coast.V((0.05 * math.sin(t * 3), 0.10 * math.sin(t), -0.17 + 0.17 * math.cos(t))) for t in (2 * math.pi * k / 24 for k in range(73))]
    forms.tube([p + coast.V((0.004 * i / 24, 0.012 * (i // 24), 0)) for i, p in enumerate(loop)], 0.009, line, 8)
