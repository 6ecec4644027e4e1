"""A kiln burner bends over a small open feed hole in the brick floor, one hand up against the heat, lit from under the chin."""
import random

import figures
import forms
import materials as m
import places

CAPTION = "A man in a flat cap bends over a fire hole that is just out of the picture, one hand raised against the heat. Deep orange light from below fills his face and palm; a thin cold line marks his cap and shoulder."
CAMERA = dict(portrait=True, zoom=1.72, aim_move=(0.04, 0, 0.10))
WORLD = dict(seen=0.2, ground=0.25)
FINISH = dict(samples=26, contrast=0.22, saturation=1.08, bloom=0.12, vignette=0.25, push=0.4)


def build(document):
    """The roof over the kiln, the man and the coal."""
    forms.ground(m.courses("#7a4a38", (0.24, 0.12), "#3a2a24", up="y"), 0, 8)
    timber = m.wood("#5a4636", "x", 1, 0.8, 0.5)
    forms.box((0, 6.3, 1.5), (9, 0.2, 3.2), m.wood("#4a3a2e", "z", 1, 0.85, 0.5), bevel=0)
    for x in (-1.5, 0.5, 2.4):
        forms.box((x, 5.6, 1.4), (0.2, 0.2, 2.8), timber)
        forms.rod((x, 5.6, 1.7), (x + 0.8, 5.6, 2.5), 0.08, timber)
    forms.box((0, 5.6, 2.5), (9, 0.22, 0.24), timber)
    places.shining_window((-0.72, 6.1, 1.95), 0.7, 0.6, 0, 0.10, "#a9bfd4", (2, 2))
    man = figures.Figure(document["subjects"][0]["place"], 10, 1.78, "man", figures.pose(
        "stand", pelvis=(0, -0.30, 0.88), lean=(52, 6), twist=8, look=(-6, 20, 6), foot_r=(0.18, 0.08, 0.085), foot_l=(-0.20, -0.22, 0.085),
        hand_r=(0.34, 0.52, 1.22), elbow_r=(0.8, -0.2, -0.6), finger_r=(0.05, 0.35, 1), palm_r=(-0.25, 0.6, -0.9), curl_r=0.08,
        hand_l=(-0.30, 0.16, 0.74), elbow_l=(-0.9, -0.2, 0.3), curl_l=0.4), skin="#b98866")
    man.trousers(m.cloth("#3a332d"))
    man.top(m.cloth("#8a7a66", 180, 0.9), 0.03, 0.5)
    man.top(m.cloth("#4d4035", 160, 0.8), 0.044, None)
    man.scarf(m.cloth("#8a3f2c"), 0)
    man.shoes(m.leather("#231b16"), 0.4)
    man.hair(m.hair("#5a5048"), "crop")
    man.beard(m.hair("#6a5d50"))
    man.cap(m.cloth("#4a463f", 140, 0.4))
    chance, coal = random.Random(4), m.clay("#0c0a09", 0.35)
    palm = man.at("grip_r")
    for _ in range(16):
        places.rock((palm.x + chance.gauss(0.22, 0.12), palm.y - 0.12 + chance.gauss(0, 0.08), palm.z - 0.22 + chance.gauss(0, 0.15)), chance.uniform(0.006, 0.016), coal, chance)
    forms.specks(m.glow("#ff8a2c", 2.2), lambda c: (0.3 + c.gauss(0, 0.22), -0.5 + c.gauss(0, 0.1), c.uniform(0.4, 1.7)), 40, 0.0032, chance)
