"""Tea on wet sand at blue hour: hostess pouring, three guests who look elsewhere, and an empty chair that has the warmest light."""
import math

import figures
import forms
import materials as m
import more_coast as coast
import props

CAPTION = "A tea party on wet sand at blue hour: a hostess pours from a tin pot, a monk-like man lifts his cup, a girl laughs, a man stares at the empty chair before the table, the warmest thing of all; foam comes up behind them."
CAMERA = dict(zoom=1.32, aim_move=(0.02, 0, -0.10))
WORLD = dict(sky=[(0, (1.6, 1.15, 0.75)), (0.07, (1.2, 1.05, 0.9)), (0.2, (0.75, 0.9, 1.0)), (1, (0.45, 0.62, 1.0))], seen=0.5, temperature_k=8800, stops=-2.0)
FINISH = dict(contrast=0.2, bloom=0.09, saturation=1.05)


def build(document):
    """The shore, the groyne, the table, the chairs and the party."""
    forms.ground(m.wet_ground("#6a5c4c", 0.75, 0.55, 0.012, 0.7), 0, 40, 0.0, 1, (0, 30))
    forms.ground(m.water("#1b3946", 0.5, 0.8, 0.05), 0.012, 100, centre=(0, 111))
    foam = m.paper("#e8eef2", 0.3)
    noise = coast.noise_line
    for k, (y, w, amp) in enumerate(((0.95, 0.10, 0.26), (2.6, 0.08, 0.25), (6.0, 0.14, 0.3))):
        forms.sheet(lambda u, v, y=y, w=w, amp=amp, k=k: ((u - 0.5) * 18, y + amp * noise((u - 0.5) * 18 * 0.8, k) + (v - 0.5) * w * (1.2 + 1.5 * noise((u - 0.5) * 18 * 3, k + 9)), 0.016 + 0.02 * math.sin(v * math.pi)), foam, 300, 6)
    tar = m.wood("#171514", "z", 1, 0.6)
    for i in range(17):
        x = -6 + i * 0.75
        forms.rod((x, 9, -0.2), (x + 0.05 * math.sin(i * 5), 9, 1.45 + 0.22 * math.sin(i * 2.3)), 0.15, tar)
    cloth = m.cloth("#cbc6ba", 200, 0.5)
    coast.cloth_table((0, 0.08, 0), (2.15, 0.72, 0.76), cloth, 3, 0.62, 2)
    oak = m.wood("#6b4a2e", "z")
    props.chair((0.72, -0.72, 0), m.wood("#a8703a", "z"), 160)
    props.chair((-1.46, 0.16, 0), oak, 46)
    props.chair((-0.72, 0.72, 0), oak, 6)
    props.chair((1.52, 0.18, 0), oak, -58)
    z = 0.768
    china = m.clay("#ddd6c8", 0.3)
    for x, y in ((-0.62, -0.06), (0.62, -0.10), (0.95, 0.15)):
        props.plate((x, y, z), 0.075, china)
        props.cup((x, y, z + 0.01), 0.07, china)
    props.plate((-0.2, 0.02, z), 0.13, china)
    for k in range(5):
        forms.ball((-0.2 + 0.05 * math.cos(k * 1.3), 0.02 + 0.05 * math.sin(k * 1.3), z + 0.035), 0.032, m.clay("#b5763a", 0.5))
    props.jug((0.36, 0.22, z), 0.13, m.clay("#7d9aa5", 0.3))
    her = figures.Figure((0.04, 0.72, 0), -10, 1.68, "woman", figures.pose(
        "stand", lean=(10, 0), look=(-6, 18, 4), hand_r=(0.04, 0.46, 1.20), hand_l=(-0.30, 0.34, 1.02), elbow_r=(0.9, -0.2, 0.1), elbow_l=(-0.7, -0.4, -0.4), curl_r=0.9, finger_r=(-0.2, 0.8, -0.3), curl_l=0.5), skin="#c4937a")
    her.dress(m.cloth("#7a2f4a"), 0.92, 0.9, 0.14, collar=0.04)
    her.hair(m.hair("#7d4a24"), "bun")
    tin = m.metal("#c3c6c8", 0.22)
    g = her.at("grip_r") + coast.V((-0.02, -0.13, -0.02))
    pot = [forms.lathe([(0, 0), (0.075, 0), (0.098, 0.03), (0.10, 0.08), (0.078, 0.125), (0.05, 0.14), (0.045, 0.15), (0, 0.155)], (0, 0, 0), tin), forms.ball((0, 0, 0.168), 0.015, tin),
           forms.tube([(-0.085, 0, 0.045), (-0.14, 0, 0.07), (-0.165, 0, 0.125), (-0.19, 0, 0.145)], [0.026, 0.02, 0.014, 0.012], tin, 12, 2),
           forms.tube([(0.09, 0, 0.11), (0.15, 0, 0.12), (0.16, 0, 0.06), (0.095, 0, 0.035)], 0.010, tin, 10, 3)]
    forms.place(pot, g + coast.V((-0.06, 0, -0.06)), 12, 1.15, 0, -26)
    spout = g + coast.V((-0.26, 0.02, 0.0))
    forms.tube([spout, spout + coast.V((-0.03, 0, -0.06)), (spout.x - 0.04, spout.y, z + 0.06)], [0.006, 0.005, 0.004], m.solid_glass("#b5763a"), 8, 2)
    props.plate((spout.x - 0.04, spout.y, z), 0.075, china)
    props.cup((spout.x - 0.04, spout.y, z + 0.01), 0.07, china)
    monk = figures.Figure((-1.46, 0.14, 0), 44, 1.74, "man", figures.pose(
        "sit", lean=(-6, 0), look=(4, -12, 0), hand_l=(-0.20, 0.40, 1.42), elbow_l=(-0.5, 0.2, -0.9), hand_r=(0.14, 0.34, 0.66), curl_l=0.8, finger_l=(0.2, 0.5, 0.8)), skin="#c08e70")
    monk.dress(m.cloth("#5d4631", folds=0.9), 0.94, 0.97, 0.10)
    monk.hood(m.cloth("#5d4631"), down=True)
    monk.belt(m.cloth("#cdbf9c"), 0.016, 0.05)
    monk.hair(m.hair("#6d6258"), "crop")
    monk.beard(m.hair("#7d7268"))
    props.cup(monk.at("grip_l") + coast.V((0.0, 0, 0.0)), 0.085, china)
    girl = figures.Figure((-0.72, 0.70, 0), 12, 1.58, "woman", figures.pose(
        "sit", lean=(-12, 3), look=(4, -22, 8), hand_r=(0.20, 0.30, 0.80), hand_l=(-0.04, 0.16, 1.16), elbow_l=(-0.8, 0, -0.5), finger_l=(0.3, 0.2, 0.9), curl_l=0.2), skin="#cf9f86")
    girl.dress(m.cloth("#d0a13c"), 0.85, 0.6, 0.10)
    girl.hair(m.hair("#c08a48"), "braid", (0.1, -0.1, 0.05))
    man = figures.Figure((1.52, 0.16, 0), -56, 1.76, "man", figures.pose(
        "sit", lean=(12, 0), look=(-2, 14, 0), hand_r=(0.16, 0.38, 0.66), hand_l=(-0.16, 0.36, 0.66), curl_r=0.6, curl_l=0.6), skin="#b98468")
    man.trousers(m.cloth("#2b313b"))
    man.coat(m.cloth("#34506b"), 0.34, 0.05, collar=0.05)
    man.hair(m.hair("#241c18"), "short")
    for fig in (her, monk, girl, man):
        fig.shoes(m.leather("#1f1a18"), 0.3)
