"""A coxswain in ochre oilskin looks up at a black storm cone on its mast; slate sea and cloud, a torn flag straight in the wind."""
import random

import figures
import forms
import materials as m
import more_coast as coast
import props

CAPTION = "A coxswain in an ochre oilskin looks up at a black storm cone on a mast; hard white light on the face, rust on the far shoulder, a torn flag straight out in the wind, black sea and cloud, wet shingle."
CAMERA = dict(portrait=True, zoom=1.10, aim_move=(-0.34, 0, 0.22))
WORLD = dict(seen=0.3)
FINISH = dict(contrast=0.26, saturation=1.0, vignette=0.18)


def build(document):
    """The sky, the sea, the shingle, the mast and the coxswain."""
    coast.clouds("#14181d", "#5d666f", 0.9, scale=1.7, low=0.35, high=0.72, seed=8.4)
    forms.ground(m.water("#0b0f13", 0.9, 0.9, 0.12), -0.45, 120, centre=(0, 126))
    forms.ground(m.stone("#35332f", 0.10, 0.5, 0.04, 0.8), -0.02, 9, 0.05, 0.8, (0, -1.5))
    chance = random.Random(3)
    pebble = forms.ball((0, 0, 0), (0.05, 0.038, 0.024), m.stone("#4c4a46", 0.15, 0.4, 0.01, 0.8))
    forms.scatter(pebble, [forms.at(chance.uniform(-3.5, 3.5), chance.uniform(-3, 6.5), 0.0, chance.uniform(0, 360), abs(chance.gauss(0.6, 0.5)) + 0.3) for _ in range(1500)])
    foam = m.paper("#c9d2d6", 0.3)
    for y, x0 in ((6.6, -7), (8.2, -3), (11.0, -9)):
        forms.tube([(x0 + i * 0.9, y + chance.gauss(0, 0.12), -0.38) for i in range(16)], [abs(chance.gauss(0.05, 0.03)) + 0.02 for _ in range(16)], foam, 8, 2)
    tar = m.wood("#121112", "z")
    forms.rod((-1.30, 2.6, 0), (-1.36, 2.6, 5.4), 0.055, tar)
    black = m.cloth("#08080a", 150, 0.6, 0.2)
    forms.place(forms.lathe([(0, 0), (0.36, 0), (0.34, 0.03), (0.015, 0.86), (0, 0.87)], (0, 0, 0), black), (-0.90, 2.5, 2.32), 0, 1, 0, 8)
    props.rope([(-1.34, 2.55, 4.6), (-0.84, 2.5, 3.19)], radius=0.01)
    flag = m.silk("#8f3a2c", 0.6)
    for k, (long, z) in enumerate(((1.25, 0.20), (0.8, 0.0), (1.1, -0.18))):
        props.ribbon([(-1.31, 2.6, 3.48 + z * 0.9), (-1.31 + long * 0.4, 2.52, 3.53 + z), (-1.31 + long, 2.6, 3.51 + z)], (0.20, 0.12), flag, 0.06, 2.0, 0.2)
    him = figures.Figure((0, 0, 0), -30, 1.82, "man", figures.pose(
        "ease", lean=(-3, 3), look=(-6, -20, -4), hand_r=(0.34, 0.30, 1.42), elbow_r=(0.6, -0.5, -0.7), curl_r=0.95, finger_r=(-0.3, 0.7, 0.6), hand_l=(-0.08, 0.30, 1.16), elbow_l=(-0.8, -0.3, -0.6), curl_l=0.85, finger_l=(0.6, 0.5, 0.3)), skin="#b67f62")
    oilskin = m.leather("#c28a22")
    him.trousers(m.leather("#b07d22"), 0.03)
    him.coat(oilskin, 0.48, 0.09, (-0.10, -0.05, 0.0), collar=0.055, slack=0.032)
    him.buttons(m.metal("#3a3630"), 5, 0.02)
    him.shoes(m.leather("#17171a"), 0.8)
    him.hair(m.hair("#a39c92"), "short", (-0.1, 0, 0.02))
    him.beard(m.hair("#aba49a"))
    him.beanie(m.cloth("#27323d", 90, 0.7))
    brass = m.metal("#d8a94a", 0.22)
    w = him.at("grip_l") + coast.V((-0.02, -0.05, 0.03))
    forms.rod(w, w + coast.V((-0.07, -0.01, 0.02)), 0.014, brass)
    forms.ball(w, 0.021, brass)
    forms.tube([him.at((0.05, 0.13, 1.42)), him.at((-0.02, 0.20, 1.30)), w], 0.004, m.cloth("#d9d0b8"), 8, 2)
    props.rope([(-1.30, 2.5, 4.4), him.at("grip_r"), him.at((0.38, 0.28, 0.9)), him.at((0.42, 0.24, 0.05))], radius=0.010, rounds=1)
    for x, z, r in ((-0.315, 0.86, 0.016), (-0.25, 0.90, 0.009), (-0.30, 0.97, 0.007), (-0.20, 0.85, 0.006)):
        coast.bright_patch((x * 0.82 - 0.02, -3.75, z + 0.07), r, "#cfd8de", 0.28)
