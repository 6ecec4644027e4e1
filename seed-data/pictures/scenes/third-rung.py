"""An old cataloguer in tweed on a library ladder, a book open on his arm, a finger in the next; ember-red bindings behind."""
import math

import figures
import forms
import materials as m
import more_indoors as more
import props

CAPTION = "An old cataloguer in tweed stands on the third rung of a library ladder, a book open on his forearm, a finger already in the next one. Soft window light from the left; red-brown bindings glow behind him like embers."
CAMERA = dict(portrait=True, zoom=1.55, aim_move=(0.04, 0, -0.04))
WORLD = dict(seen=0.3)
FINISH = dict(samples=16, contrast=0.2, push=0.4, saturation=1.1, bloom=0.07, vignette=0.2)


def build(document):
    """The shelves, the ladder and the man."""
    more.curved_shelves(3.6, 1.6, 60, 4.6, 12, ("#7a2f22", "#8a3a24", "#6b2a20", "#5b2b1e", "#94502c", "#4a2a1e", "#7a4a2a"))
    wood = m.wood("#8a5f38", "z")
    props.ladder((0.02, -0.32, 0), (0.10, 1.10, 4.2), 0.52, wood, 0.285)
    man = figures.Figure((0.0, 0.0, 0.75), -22, 1.72, "man", figures.pose(
        "stand", lean=(3, 2), look=(-10, 2, 5), hand_l=(-0.06, 0.30, 1.20), elbow_l=(-0.7, -0.5, -0.6), finger_l=(0.9, 0.3, 0.1), palm_l=(0, 0, 1), curl_l=0.2,
        hand_r=(0.30, 0.28, 1.30), elbow_r=(0.7, -0.6, -0.4), foot_r=(0.10, 0.0, 0.085), foot_l=(-0.10, -0.02, 0.085), curl_r=0.4), skin="#c99c80")
    man.trousers(m.cloth("#5a4a36"))
    man.coat(m.cloth("#7d7358", 90, 0.5), 0.24, 0.02, slack=0.022, collar=0.03)
    man.shoes(m.leather("#3a2416"))
    man.hair(m.hair("#dcd8d0"), "crop")
    man.beard(m.hair("#d5d0c6"))
    q, frame = man.head_point, m.metal("#c9b070", 0.3)
    for s in (1, -1):
        ring = [q(s * 0.031 + 0.021 * math.cos(t), 0.098, -0.004 + 0.018 * math.sin(t)) for t in (2 * math.pi * i / 24 for i in range(25))]
        man._place(forms.tube(ring, 0.0020, frame, 8))
    man._place(forms.tube([q(-0.010, 0.098, 0.0), q(0, 0.104, 0.004), q(0.010, 0.098, 0.0)], 0.002, frame, 8))
    arm = man.at((-0.12, 0.33, 1.245))
    props.open_book(arm, 0.22, 158, -14)
    other = man.at("grip_r")
    forms.box(other, (0.045, 0.17, 0.24), m.leather("#8a2f24"), 30, 0.006, 8)
    forms.box((other.x + 0.004, other.y, other.z + 0.003), (0.036, 0.172, 0.232), m.paper("#e4d9bd", 0), 30, 0.0, 8)


