"""Three sisters on the steps at blue hour: one reads the glowing sheet, one half stands and points at it, one will not look."""
import math

import figures
import forms
import materials as m
import places

CAPTION = "Three sisters on harbour steps in the blue hour: the middle one holds a big tide table that glows orange on her chin, the left one half rises to point at it, the right one has turned away with folded arms."
CAMERA = dict(zoom=1.18, aim_move=(0.02, 0, -0.14))
WORLD = dict(sky=[(0, (1.1, 1.15, 0.95)), (0.15, (0.8, 0.95, 1.0)), (1, (0.5, 0.65, 1.0))], seen=0.4, temperature_k=8600, stops=-2.3)
TRIMS = {"paper": 1.3, "door-below": 1.2}  # Half of it is lost in the sheet before it comes to her chin.
FINISH = dict(contrast=0.2, bloom=0.09, saturation=1.0)


def build(document):
    """The steps, the harbour, the kiosk and the three sisters."""
    stone = m.courses("#6f6d69", (0.9, 0.5), "#333333", 0.8, 0.03, wet=0.4, up="y")
    face = m.courses("#77736c", (0.9, 0.22), "#3a3a3a", 0.85, 0.03)
    forms.box((0, -3.0, -0.1), (14, 6.2, 0.2), stone, bevel=0)
    forms.box((0.1, 0.38, 0.21), (3.1, 0.66, 0.42), face, bevel=0.02)
    for i in range(6):
        forms.box((-1.0, 1.55 + i * 0.32, 0.52 + i * 0.14), (10.0, 0.34, 0.2 + i * 0.02), face, bevel=0.015)
        forms.box((-1.0, 1.7 + i * 0.32, 0.25 + i * 0.07), (10.0, 0.5, 0.5 + i * 0.14), face, bevel=0.01)
    forms.ground(m.water("#12343c", 0.3, 1.5), 0.1, 100, centre=(0, 108))
    dark = m.clay("#1a2630")
    for x, w, h in ((-9, 4, 3.2), (-5.4, 3, 2.5), (-1.5, 5, 2.9), (4, 4, 3.6), (9, 5, 2.8)):
        forms.box((x, 30, h / 2), (w, 3, h), dark, bevel=0)
        forms.hull([((x - w / 2 - 0.1, 28.4, h),), ((x + w / 2 + 0.1, 28.4, h),), ((x - w / 2, 30, h + 1.1),), ((x + w / 2, 30, h + 1.1),)], dark, False)
    for x, h in ((-3.6, 5.0), (-2.9, 4.2), (1.1, 5.4)):
        forms.rod((x, 16, 0), (x, 16, h), 0.05, dark)
        forms.rod((x - 0.9, 16, h * 0.72), (x + 0.9, 16, h * 0.76), 0.03, dark)
    lit = m.glow("#ffc069", 1.8)
    for x, z in ((-8.6, 1.9), (-5.0, 1.6), (0.2, 1.8), (3.2, 2.2), (4.8, 2.2), (8.4, 1.7)):
        forms.box((x, 28.4, z), (0.34, 0.05, 0.46), lit, bevel=0)
    kiosk = places.surface(document, "kiosk")
    forms.upright(kiosk, m.wood("#3c5f5c", "z", 1, 0.6, 0.3), 1.2)
    forms.box((2.9, 2.95, 2.42), (3.4, 1.5, 0.08), m.clay("#2a2f30"), -9)
    a = figures.Figure((0, 0.12, 0), 10, 1.66, "woman", figures.pose(
        "sit", pelvis=(0, 0, 0.52), lean=(10, 0), look=(0, 20, 0), foot_r=(0.13, 0.40, 0.085), foot_l=(-0.13, 0.44, 0.085), hand_r=(0.34, 0.29, 0.86), hand_l=(-0.34, 0.29, 0.86), curl_r=0.6, curl_l=0.6,
        elbow_r=(0.8, -0.4, -0.5), elbow_l=(-0.8, -0.4, -0.5)), skin="#c4937a")
    a.dress(m.cloth("#5a3346"), 0.86, 0.9, 0.10, collar=0.03)
    a.shoes(m.leather("#1b1717"), 0.4)
    a.hair(m.hair("#4a2f22"), "bun")
    p = [a.at(q) for q in ((0.36, 0.36, 0.64), (-0.36, 0.36, 0.64), (-0.36, 0.32, 1.00), (0.36, 0.32, 1.00))]
    bend = (a.at((0, 1, 0)) - a.at((0, 0, 0)))
    forms.sheet(lambda u, v: p[0].lerp(p[1], u).lerp(p[3].lerp(p[2], u), v) + bend * (0.04 * math.sin(u * math.pi) + 0.012 * math.sin(u * 9 + v * 4)), m.paper("#f3c98c", 0.5), 40, 24)
    ink = m.clay("#4a4038")
    for r in range(9):
        forms.sheet(lambda u, v, r=r: p[0].lerp(p[1], 0.1 + 0.8 * u).lerp(p[3].lerp(p[2], 0.1 + 0.8 * u), 0.10 + 0.088 * r + 0.022 * v) + bend * (0.044 + 0.04 * math.sin((0.1 + 0.8 * u) * math.pi) - 0.04 + 0.012 * math.sin((0.1 + 0.8 * u) * 9 + (0.1 + 0.088 * r) * 4)), ink, 24, 1)
    b = figures.Figure((-0.92, 0.16, 0), 42, 1.70, "woman", figures.pose(
        "stand", pelvis=(0, -0.10, 0.72), lean=(30, 0), twist=12, look=(6, 16, 0), foot_r=(0.13, 0.10, 0.085), foot_l=(-0.12, 0.20, 0.085), hand_r=(0.06, 0.66, 0.98), hand_l=(-0.26, 0.10, 0.62),
        finger_r=(0.0, 0.95, -0.25), curl_r=0.35, curl_l=0.3, elbow_r=(0.5, -0.3, -0.7)), skin="#b98468")
    b.dress(m.cloth("#2f5a58"), 0.88, 0.9, 0.12, collar=0.03)
    b.shoes(m.leather("#1b1717"), 0.4)
    b.hair(m.hair("#7a4a2a"), "braid", (0.1, -0.05, 0.1))
    c = figures.Figure((0.98, 0.34, 0), 44, 1.64, "woman", figures.pose(
        "sit", pelvis=(0, 0, 0.52), lean=(-4, -4), twist=-4, look=(34, -8, -6), foot_r=(0.02, 0.42, 0.085), foot_l=(-0.05, 0.50, 0.085), toe_l=(10, 0), hand_r=(-0.10, 0.17, 1.02), hand_l=(0.12, 0.21, 0.97),
        elbow_r=(0.8, -0.2, -0.6), elbow_l=(-0.8, -0.2, -0.6), finger_r=(-0.95, -0.15, 0.1), finger_l=(0.95, -0.1, 0.1), curl_r=0.4, curl_l=0.4), skin="#c79880")
    c.dress(m.cloth("#8a7a52"), 0.86, 0.9, 0.10, collar=0.03)
    c.shoes(m.leather("#1b1717"), 0.4)
    c.hair(m.hair("#2a2220"), "bob")
    tin = m.metal("#9a5a3a", 0.4)
    forms.lathe([(0, 0), (0.13, 0), (0.13, 0.11), (0.135, 0.11), (0.135, 0.14), (0, 0.145)], (0.46, 0.14, 0.42), tin)
