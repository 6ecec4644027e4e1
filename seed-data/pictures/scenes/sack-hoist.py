"""A strong woman, her back to us, hauls a full meal sack up on a chain and laughs over her shoulder."""
import random

import figures
import forms
import materials as m
import places
import props

CAPTION = "Seen from behind, a strong woman in a sleeveless top hauls on a chain above her head and laughs over her shoulder. A full meal sack hangs at her right, leaking a thread of flour. Oak frame in dim blue behind."
CAMERA = dict(portrait=True, zoom=1.35, aim_move=(0.28, 0, -0.14))
WORLD = dict(seen=0.2, ground=0.4)
FINISH = dict(samples=26, contrast=0.2, saturation=1.05, bloom=0.08, vignette=0.18, push=0.3)


def build(document):
    """The mill floor, the frame, the sack and the woman."""
    chance = random.Random(2)
    oak = m.wood("#7a644c", "z", 1, 0.7, 0.5)
    flat = m.wood("#75604a", "x", 1, 0.7, 0.5)
    places.boards(-5, 4, 4, 0.24)
    forms.box((0, 4.2, 2), (9, 0.2, 4.4), m.stone("#a39c8e", 0.5, 0.95, 0.03), bevel=0)
    for x in (-1.75, 0.05, 1.75):
        forms.box((x, 2.6, 1.5), (0.26, 0.26, 3.0), oak)
    for z in (0.9, 2.45):
        forms.box((0, 2.6, z), (6.4, 0.24, 0.24), flat)
    forms.rod((-1.75, 2.6, 1.5), (-0.9, 2.6, 2.4), 0.09, oak)
    forms.rod((1.75, 2.6, 1.5), (0.9, 2.6, 2.4), 0.09, oak)
    places.beams(2.4, 3.2, 7, 2, -1.6, 0.26, m.wood("#6a543e", "x"), "x")
    forms.box((0.05, 2.462, 1.62), (0.2, 0.004, 0.014), m.glow("#d8dce0", 0.5), 0, 0, 0, 4)
    her = figures.Figure(document["subjects"][0]["place"], 158, 1.72, "woman", figures.pose(
        "stand", pelvis=(0, -0.04, 0.90), lean=(-8, 3), twist=4, look=(-78, -6, -8), hand_r=(0.04, 0.28, 1.98), hand_l=(-0.03, 0.30, 1.76), elbow_r=(0.9, -0.4, -0.2), elbow_l=(-0.9, -0.3, -0.5),
        finger_r=(-0.8, 0.3, 0.3), finger_l=(0.8, 0.3, 0.3), palm_r=(-0.2, 0.9, 0), palm_l=(0.2, 0.9, 0), curl_r=0.95, curl_l=0.95, foot_r=(0.20, 0.12, 0.085), foot_l=(-0.20, -0.08, 0.085)), skin="#c59878")
    her.trousers(m.cloth("#5a5346", 180, 0.9), 0.036)
    her.top(m.cloth("#c9bfa8", 220, 0.7), 0.014, None)
    her.belt(m.leather("#4a2f1f"), 0.022)
    her.shoes(m.leather("#33261d"), 0.4)
    her.hair(m.hair("#5b2f1a"), "bun")
    iron = m.metal("#a5a09a", 0.35)
    a, b = her.at("grip_r"), her.at("grip_l")
    c = (a + b) / 2
    props.chain([(c.x, c.y, 0.5), (c.x, c.y, 3.3)], iron, 0.085)
    props.sack((0.75, 0.30, 0.42), 0.86, m.cloth("#c9b78f", 90, 0.9), 10)
    props.chain([(0.75, 0.30, 1.22), (0.75, 0.30, 3.3)], iron, 0.085)
    props.rope([(0.70, 0.26, 1.14), (0.75, 0.22, 1.16), (0.80, 0.28, 1.14), (0.76, 0.34, 1.16), (0.70, 0.30, 1.15)], None, 0.012, 2)
    flour = m.clay("#f0ece2", 0.95)
    forms.rod((0.66, 0.20, 0.52), (0.665, 0.20, 0.03), 0.0035, flour, 0.007)
    forms.lathe([(0.13, 0), (0.07, 0.025), (0.02, 0.06), (0, 0.065)], (0.665, 0.20, 0), flour)
    forms.specks(flour, lambda k: (0.665 + k.gauss(0, 0.02), 0.20 + k.gauss(0, 0.02), k.uniform(0.02, 0.5)), 160, 0.0035, chance)
    forms.specks(flour, lambda k: (k.gauss(0.2, 0.7), k.gauss(0.2, 0.5), k.uniform(0.1, 2.3)), 260, 0.0022, chance)
    props.sack((-1.25, 1.3, 0), 0.7, None, 30)
    props.sack((1.45, 1.6, 0), 0.66, None, -20)
