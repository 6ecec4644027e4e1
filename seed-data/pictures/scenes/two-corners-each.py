"""Two sisters shake a white sheet between them in a stone kitchen; it glows from behind, the younger pulls, the elder laughs."""
import math

import figures
import forms
import materials as m
import more_indoors as more
import props

CAPTION = "In a stone kitchen two sisters hold a white sheet between them at shoulder height, at the top of its shake, glowing with light from behind. The younger, barefoot in a blue smock, pulls; the elder in a faded red dress leans back and laughs."
CAMERA = dict(zoom=1.22, aim_move=(0, 0, -0.22))
WORLD = dict(seen=0.6)
FINISH = dict(samples=16, contrast=0.14, saturation=0.92, bloom=0.1, push=0.2, vignette=0.15)


def build(document):
    """The kitchen, the sisters, the sheet."""
    more.kitchen(2.6, 3.5, 3.4, 0.35)
    elder = figures.Figure((-1.32, 0.05, 0), 74, 1.70, "woman", figures.pose(
        "ease", pelvis=(0.02, 0.02, 0.92), lean=(-7, 3), look=(-6, -14, 6), hand_r=(0.16, 0.52, 1.40), hand_l=(-0.14, 0.54, 1.44), elbow_r=(0.8, -0.3, -0.5), elbow_l=(-0.8, -0.3, -0.5),
        curl_r=0.9, curl_l=0.9, foot_r=(0.10, 0.20, 0.085), foot_l=(-0.10, -0.14, 0.085)), skin="#cfa286")
    elder.dress(m.cloth("#b0524a", folds=0.5), 0.80, 0.55, 0.16, wind=(0, -0.05, 0.02))
    elder.apron(m.cloth("#d9d2c2"), 0.24, 0.16, 0.55)
    elder.shoes(m.leather("#4a3424"))
    elder.hair(m.hair("#6a3f24"), "bun")
    young = figures.Figure((1.18, 0.05, 0), -76, 1.60, "woman", figures.pose(
        "ease", pelvis=(0, -0.16, 0.86), lean=(-15, -2), look=(4, 2, -5), hand_r=(0.16, 0.36, 1.40), hand_l=(-0.16, 0.38, 1.42), elbow_r=(0.8, -0.3, -0.5), elbow_l=(-0.8, -0.3, -0.5),
        curl_r=0.9, curl_l=0.9, foot_r=(0.10, 0.26, 0.085), toe_r=(0, -12), foot_l=(-0.10, -0.10, 0.085)), skin="#d6aa8c")
    young.dress(m.cloth("#3f6690", folds=0.5), 0.62, 0.75, 0.15, wind=(0, 0.06, 0.02))
    young.shoes(m.skin("#d6aa8c"))
    young.hair(m.hair("#a8743c"), "braid", (0, -0.22, 0.05))
    a0, a1 = elder.at("grip_r"), elder.at("grip_l")
    b0, b1 = young.at("grip_l"), young.at("grip_r")
    linen = more.see_through("#f1efe9", 0.5)

    def sheet(u, v):
        near, far = a0.lerp(b0, u), a1.lerp(b1, u)
        p = near.lerp(far, v)
        hump = math.sin(math.pi * u) ** 0.8
        lift = 0.62 * hump * math.sin(math.pi * (0.05 + 0.75 * v)) + 0.05 * math.sin(5.5 * u + 2) * hump
        drape = 0.42 * hump ** 0.5 * (1 - v) ** 2.2
        fold = 0.026 * math.sin(26 * u + 5 * v) * hump + 0.075 * math.sin(11 * u + 1.0) * (1 - 0.6 * v) * hump
        return p.x, p.y - 0.22 * hump * (1 - v) + fold, p.z + lift - drape + 0.5 * fold
    forms.sheet(sheet, linen, 120, 60)
    basket = props.basket((-0.45, -0.35, 0), 0.28, 0.24)
    forms.blob([[((-0.45, -0.35, 0.20), 0.17), ((-0.36, -0.30, 0.24), 0.13)]], m.cloth("#e6e2d8", 200, 0.9), 0.012, 6)
