"""A post rider on a loaded bicycle crosses white salt under a pearl sky; his cap hangs in the air behind him."""

CAPTION = "A post rider on a loaded bicycle crosses white salt under a pearl sky; his cap hangs in the air behind him."
import random

import figures
import forms
import materials as m
import places
import props

CAMERA = dict(zoom=1.22, aim_move=(-0.15, 0, 0.1))
WORLD = dict(sky=[(0, (1.1, 1.07, 1.03)), (0.25, (1, 1, 1)), (1, (0.85, 0.92, 1.0))], seen=0.95)
FINISH = dict(push=0.2, contrast=0.1, saturation=1.05, shoulder=0.5, bloom=0.08, mist=(140, (0.56, 0.57, 0.58)), mist_from=14, mist_sky=0.3)


def build(document):
    """The salt, the dyke, the rider and his cap."""
    places.salt_flat()
    dyke = places.surface(document, "dyke")
    forms.upright(dyke, m.stone("#8b8474", 1.0), 4, 0.6)
    for i in range(26):
        forms.rod((-32 + i * 2.6, 61, 0), (-32 + i * 2.6, 61, 2.5), 0.09, m.wood("#5a4f42", "z"))
    turn = 6
    props.bicycle((0, 0, 0.02), turn, "#9a2c22", m.leather("#6b4a2c"))
    him = figures.Figure((0.02, 0.0, 0), -84, 1.85, "man", figures.pose(
        "sit", pelvis=(0, -0.13, 0.965), lean=(12, 0), look=(-14, 0, 0), foot_r=(0.11, 0.10, 0.29), foot_l=(-0.11, -0.15, 0.455), toe_r=(0, 18), toe_l=(0, 0), knee_r=(0.2, 1, 0), knee_l=(-0.2, 1, 0.2),
        hand_r=(0.23, 0.33, 1.02), elbow_r=(0.8, -0.3, -0.3), curl_r=0.85, palm_r=(0, 0, -1), hand_l=(-0.34, -0.34, 1.80), elbow_l=(-0.6, -0.8, -0.6), finger_l=(-0.2, -0.5, 0.8), curl_l=0.15), skin="#c59a7e")
    him.trousers(m.cloth("#2d3138"))
    him.coat(m.cloth("#24324a", folds=0.7), 0.26, 0.04, (0, -0.14, 0.0), buttons=m.metal("#c9a24c", 0.3))
    him.shoes(m.leather("#201a17"), 0.5)
    him.hair(m.hair("#7a4a28"), "short")
    him.scarf(m.cloth("#d8a62e"), 0.42, (0, -0.42, 0.12))
    cap = figures.Figure((0.95, 0.1, 0.35), -110, 1.85, "man", figures.pose("stand", look=(0, -30, 20)))
    before = set(cap.things)
    cap.cap(m.cloth("#24324a"), m.leather("#15161a"))
    for thing in before:
        thing.hide_render = True
    salt = m.paper("#ffffff", 0.4)
    forms.specks(salt, lambda c: (0.75 + abs(c.gauss(0, 0.45)), 0.05 + c.gauss(0, 0.08), abs(c.gauss(0, 0.10)) * (1 + c.random())), 500, 0.008, random.Random(4))
