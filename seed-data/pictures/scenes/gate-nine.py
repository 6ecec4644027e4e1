"""Noon against the sun: a slalom paddler leans into a draw stroke, a fan of backlit spray like an open hand, white water behind."""
import math
import random

import figures
import forms
import lights
import materials as m
import more_coast as coast

CAPTION = "Noon against the sun: a slalom paddler in a red helmet leans into a draw stroke, the blade buried in bottle-green water; a fan of backlit spray opens like a hand, a striped gate pole hangs left, white water behind."
CAMERA = dict(zoom=1.28, aim_move=(0.06, 0, -0.04))
WORLD = dict(sky=[(0, (0.8, 0.95, 1.0)), (1, (0.5, 0.75, 1.1))], seen=0.35)
FINISH = dict(contrast=0.28, bloom=0.1, saturation=1.05)


def build(document):
    """The river, the weir, the gate, the canoe, the paddler and the spray."""
    lights.add_sun(document, 0.9, azimuth_deg=196, elevation_deg=48)
    forms.sheet(lambda u, v: ((u - 0.5) * 24, -6 + v * 15, -0.02 + 0.07 * coast.noise_line(u * 24 * 0.9 + v * 6, 2) * 1.0 + 0.06 * coast.noise_line(v * 15 * 1.3 + u * 9, 5)), m.water("#0d3a30", 0.55, 2.4, 0.05), 240, 160)
    white = m.paper("#eef4f4", 0.4)
    chance = random.Random(4)
    forms.sheet(lambda u, v: ((u - 0.5) * 26, 9.6 - 1.5 * (1 - v) ** 1.3 + 0.12 * coast.noise_line(u * 60, 3), -0.05 + 0.95 * v + 0.10 * coast.noise_line(u * 45 + v * 5, 7)), m.wood("#dfe8ea", "z", 0.9, 0.4, 0.5), 400, 30)
    coast.spray([(-9, 8.0, 0.1), (9, 8.0, 0.1)], 2600, (0.2, 0.5, 0.20), 0.03, white, 2)
    for _ in range(70):
        x, y = chance.uniform(-7, 7), chance.uniform(2.2, 8.0)
        forms.ball((x, y, 0.0), (chance.uniform(0.15, 0.6), chance.uniform(0.04, 0.10), chance.uniform(0.02, 0.07)), white)
    dark = m.stone("#14211b", 2.0, 0.95, 0.2)
    forms.box((0, 26, 3), (80, 4, 9), dark, bevel=0)
    for i in range(40):
        forms.ball((-20 + i * 1.05, 23 + chance.uniform(-1, 1), 1.5 + chance.uniform(0, 5)), chance.uniform(1.0, 2.2), m.cloth(chance.choice(("#16261c", "#1b2e20", "#122019")), 4, 0.9) if i % 4 == 0 else dark)
    red, pole_white = m.clay("#c4271d", 0.35), m.clay("#eee9de", 0.35)
    for px, py in ((-1.18, 0.15), (-0.72, 2.6)):
        for k in range(12):
            z = 0.22 + k * 0.2
            forms.rod((px, py, z), (px, py, z + 0.2), 0.022, red if k % 2 else pole_white)
    # The hull: a slim decked canoe that heads to the camera's left and toward it.
    turn, ash = -62, m.wood("#a8682f", "x", 1.0, 0.18, 0.35)
    ash.node_tree.nodes["Principled BSDF"].inputs["Clearcoat"].default_value = 0.7
    hull = forms.blob([[((-1.72, 0, 0.16), 0.02), ((-0.9, 0.15, 0.06), 0.09), ((-0.9, -0.15, 0.06), 0.09), ((-0.9, 0, 0.16), 0.06)],
                       [((-0.9, 0.15, 0.06), 0.09), ((-0.9, -0.15, 0.06), 0.09), ((-0.9, 0, 0.16), 0.06), ((0, 0.24, 0.06), 0.09), ((0, -0.24, 0.06), 0.09), ((0, 0, 0.2), 0.07)],
                       [((0, 0.24, 0.06), 0.09), ((0, -0.24, 0.06), 0.09), ((0, 0, 0.2), 0.07), ((0.9, 0.16, 0.06), 0.09), ((0.9, -0.16, 0.06), 0.09), ((0.9, 0, 0.13), 0.06)],
                       [((0.9, 0.16, 0.06), 0.09), ((0.9, -0.16, 0.06), 0.09), ((1.7, 0, 0.14), 0.02)]], ash, 0.014, 6)
    forms.place(hull, (0, 0, -0.04), 50, 1.0, 10, 4)
    ring = forms.tube([(0.30 * math.cos(t), 0.22 * math.sin(t), 0.27) for t in (2 * math.pi * k / 30 for k in range(31))], 0.028, m.leather("#17181a"), 10)
    forms.place(ring, (0, 0, -0.04), 50, 1.0, 10, 4)
    her = figures.Figure((0, 0.02, -0.16), -24, 1.68, "woman", figures.pose(
        "kneel", pelvis=(0, -0.04, 0.42), lean=(16, -24), twist=16, hips=8, look=(14, 10, -10), foot_r=(0.14, -0.42, 0.16), foot_l=(-0.14, -0.42, 0.16), knee_r=(0.3, 1, -0.4), knee_l=(-0.3, 1, -0.4), toe_r=(0, 80), toe_l=(0, 80),
        hand_r=(-0.18, 0.40, 1.12), hand_l=(-0.58, 0.34, 0.62), elbow_r=(0.5, -0.2, 0.6), elbow_l=(-0.6, -0.5, -0.3), curl_r=0.9, curl_l=0.9), skin="#b98468")
    her.trousers(m.cloth("#16191c"))
    her.top(m.silk("#e6e2d6", 0.5), 0.018, 0.93, 0.02)
    vest = her.top(m.cloth("#1f5a4a", 120, 0.5), 0.042, None)
    forms.place(forms.tube([(0.21 * math.cos(t), 0.17 * math.sin(t), 0) for t in (2 * math.pi * k / 30 for k in range(31))], [0.10] * 31, m.cloth("#1a1c1f", 60, 0.6), 10), (0, 0, 0.23), -24, 1.0)
    her.hair(m.hair("#3a2619"), "tail", (0.1, -0.1, 0.05))
    her._head_thing([her._egg((0, -0.016, 0.050), (0.094, 0.112, 0.088))], m.clay("#c8281c", 0.22))
    hold, low = her.at("grip_r"), her.at("grip_l")
    way = (low - hold).normalized()
    shaft = m.wood("#b98a50", "x", 1, 0.3)
    end = low + way * 0.62
    forms.rod(hold - way * 0.06, end, 0.016, shaft)
    forms.rod(hold - way * 0.06 - coast.V((0.05, 0.03, 0)), hold - way * 0.06 + coast.V((0.05, 0.03, 0)), 0.016, shaft)
    forms.hull([(low + way * 0.34, 0.02), (end - way * 0.02 + coast.V((0.09, 0.03, 0)), 0.012), (end - way * 0.02 - coast.V((0.09, 0.03, 0)), 0.012), (end + way * 0.22, 0.05)], shaft)
    blade = low + way * 0.42
    foot = coast.V((blade.x, blade.y, 0.02))
    bright = m.paper("#ffffff", 0.5)
    for k, (angle, long) in enumerate(((14, 1.05), (36, 1.3), (58, 1.4), (80, 1.2), (103, 0.9))):
        d = coast.V((math.cos(math.radians(angle)), 0.12, math.sin(math.radians(angle))))
        path = [foot + d * long * t + coast.V((0, 0, -0.55 * t * t * long * 0.5)) for t in (0, 0.2, 0.4, 0.6, 0.8, 1.0)]
        coast.spray(path[:4], 800, (0.026, 0.05, 0.026), 0.008, bright, 10 + k)
        coast.spray(path[2:], 420, (0.045, 0.07, 0.045), 0.007, bright, 20 + k)
    coast.spray([foot, foot + coast.V((0.4, 0, 0))], 500, (0.16, 0.16, 0.03), 0.010, bright, 31)
