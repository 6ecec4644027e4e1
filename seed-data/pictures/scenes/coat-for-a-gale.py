"""A tall woman strides up a wet slip toward a low camera, her near-black coat blown open on its rust lining, a black jetty behind."""
import random

import figures
import forms
import materials as m
import more_coast as coast

CAPTION = "A tall hooded woman strides up a wet stone slip toward us; the gale blows her long black felt coat open on a rust-red lining. Behind her the beams of a black jetty and torn grey cloud."
CAMERA = dict(portrait=True, zoom=1.55, aim_move=(0.20, 0, -0.16))
WORLD = dict(seen=0.6)
FINISH = dict(contrast=0.24, saturation=0.95, push=0.25, mist=(700, (0.20, 0.23, 0.26)), mist_from=8)


def build(document):
    """The slip, the jetty, the cloud, the woman and her coat."""
    coast.clouds("#4a535c", "#c9d0d5", 0.8, scale=2.2, seed=3.1)
    slip = m.courses("#54544f", (0.62, 0.34), "#1d1e1f", 0.6, 0.05, wet=0.95, up="y")
    forms.place(forms.box((0, 3, -0.15), (26, 20, 0.3), slip, bevel=0), (0, 0, 0), pitch_deg=-3)
    forms.ground(m.water("#20292e", 0.4, 1.2), -1.0, 120, centre=(0, 128))
    tar, chance = m.wood("#141312", "z", 1, 0.6), random.Random(4)
    for i in range(5):
        x = -5.4 + i * 2.35
        forms.rod((x, 8.4, -1.5), (x + chance.uniform(-0.15, 0.15), 8.4, 3.4 + chance.uniform(-0.1, 0.9)), 0.24, tar)
    forms.box((-1, 8.5, 2.6), (15, 0.3, 0.34), tar)
    forms.box((-1, 8.3, 1.3), (15, 0.14, 0.22), tar)
    for i in range(4):
        forms.rod((-5.3 + i * 2.35, 8.35, 1.3), (-3.1 + i * 2.35, 8.35, 2.6), 0.08, tar)
    her = figures.Figure((0, 0, 0.0), -15, 1.78, "woman", figures.pose(
        "walk", pelvis=(0, 0.06, 0.90), lean=(9, 2), twist=8, hips=-10, look=(14, 3, 4), foot_r=(0.05, 0.40, 0.10), foot_l=(-0.07, -0.38, 0.17), hand_l=(-0.34, 0.16, 0.98), hand_r=(0.10, 0.30, 1.20),
        elbow_r=(0.8, -0.4, -0.5), elbow_l=(-0.7, -0.6, -0.2), curl_l=0.7, curl_r=0.8), skin="#c09078")
    felt, rust = m.cloth("#19181b", 120, 0.9, 0.5), m.cloth("#96391e", 200, 0.5)
    her.trousers(m.cloth("#24262b"))
    her.coat(felt, 0.52, 0.06, (-0.14, -0.16, 0.02), collar=0.06, slack=0.03)
    coast.flap(her, ((-0.10, 0.17, 1.20), (-0.13, 0.14, 0.52)), ((-0.40, 0.12, 1.14), (-1.02, -0.12, 0.66)), felt, rust, 0.10)
    coast.flap(her, ((-0.08, -0.16, 1.00), (-0.14, -0.18, 0.42)), ((-0.50, -0.42, 0.98), (-1.16, -0.62, 0.40)), felt, rust, 0.12)
    coast.flap(her, ((0.05, 0.18, 1.16), (0.16, 0.18, 0.50)), ((-0.10, 0.24, 1.12), (-0.22, 0.34, 0.40)), felt, rust, 0.06)
    her.shoes(m.leather("#141314"), 0.85)
    her.hair(m.hair("#3a2219"), "short")
    her.hood(felt)
    her.scarf(m.cloth("#4a5660"), 0.0)
    coast.spray([(-1.6, -0.6, 0.02), (1.6, 0.4, 0.05)], 160, (0.4, 0.5, 0.03), 0.005, m.paper("#dfe6ea", 0.4), 2)
