"""Five sounding leads in a fan on black wet granite with their hemp lines, brass tags and a dish of tallow."""
import math

import forms
import materials as m
import more_coast as coast
import props

CAPTION = "Five cylindrical sounding leads lie in a fan on black wet granite among coils of hemp line; each has a bright line down its left and a cooler one on its right. Brass tags are the only warm points; a dish of tallow."
CAMERA = dict(zoom=1.26, move=(0, 0.45, 0.65), aim_move=(0, -0.13, -0.18))
WORLD = dict(seen=0.5)
FINISH = dict(contrast=0.26, saturation=0.9, bloom=0.07, vignette=0.2)


def build(document):
    """The slab, the leads, the lines, the tags and the tallow."""
    forms.ground(m.wet_ground("#131517", 0.72, 0.5, 0.012, 2.6), 0.0, 3.0, 0.006, 3.0)
    lead = m.metal("#6d7278", 0.40, 0.22)
    brass, hemp = m.metal("#d9a441", 0.25, 0.1), [m.cloth(c, 60, 0.5) for c in ("#a39779", "#857a64", "#978b72")]
    pivot = coast.V((0.0, -0.62, 0.0))
    for i, angle in enumerate((-33, -16.5, 0, 16.5, 33)):
        way = coast.V((math.sin(math.radians(angle)), math.cos(math.radians(angle)), 0))
        long = 0.34 + 0.015 * (i % 2)
        near, far = pivot + way * 0.46, pivot + way * (0.46 + long)
        z = coast.V((0, 0, 0.034))
        forms.tube([near + z, near + z + way * 0.004, near + z + way * 0.02, far + z - way * 0.004, far + z], [0.016, 0.022, 0.026, 0.035, 0.031], lead, 36)
        eye = near + z - way * 0.012
        side = coast.V((way.y, -way.x, 0))
        forms.tube([eye + way * 0.02 * math.cos(t) - way * 0.006 + side * 0.013 * math.sin(t) for t in (2 * math.pi * k / 18 for k in range(19))], 0.005, lead, 8)
        tag = near - way * 0.055 + side * 0.028
        forms.place(forms.lathe([(0, 0), (0.019, 0), (0.0195, 0.0015), (0.019, 0.003), (0.004, 0.003)], (0, 0, 0), brass), tag + coast.V((0, 0, 0.012)), 0, 1, 14 - 5 * i, -8 + 4 * i)
        rope = hemp[i % 3]
        c = pivot + way * (0.20 + 0.02 * (i % 2)) + side * 0.0
        c = coast.V((0.205 * (i - 2), -0.36 - 0.035 * (i % 2) - 0.02 * abs(i - 2), 0))
        points = [near + z * 0.9 - way * 0.02, near - way * 0.06 + z * 0.5, c + coast.V((0.10, 0.075, 0.012))]
        r = 0.088
        for k in range(5 * 22):
            t, inward = 0.6 + 2 * math.pi * k / 22, 0.0136 * k / 22
            points.append(c + coast.V((math.cos(t) * (r - inward), math.sin(t) * (r - inward), 0.008 + 0.002 * (k // 66))))
        forms.tube(points, 0.0066, rope, 10, 2)
    props.bowl((0.47, 0.16, 0.0), 0.062, m.metal("#4b4e51", 0.45), 0.5)
    tallow = m.clay("#d8cda8", 0.45)
    forms.blob([[((0.47, 0.16, 0.030), 0.035), ((0.49, 0.15, 0.036), 0.028), ((0.455, 0.175, 0.042), 0.018)]], tallow, 0.004, 8)
    props.knife((-0.50, 0.10, 0.0), 0.22, turn_deg=66)
    coast.spray([(-0.6, 0.0, 0), (0.6, 0.2, 0)], 500, (0.2, 0.22, 0.0), 0.0035, m.solid_glass("#e8eef2"), 4)
