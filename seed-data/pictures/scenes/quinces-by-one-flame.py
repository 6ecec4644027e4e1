"""A copper pan of fox-red quinces on a trivet, a cook's two hands, a wooden spoon, steam against the light, a candle aside."""
import math
import random

import figures
import forms
import materials as m
import places
import props

CAPTION = "A copper pan of fox-red quinces steams on an iron trivet; a cook's two hands hold a wooden spoon and the handle. A candle stands aside at the left, cut yellow fruit lies in front, and a cold blue window shape shines in the copper."
CAMERA = dict(zoom=0.98, aim_move=(0.0, 0, 0.055))
WORLD = dict(seen=0.05)
FINISH = dict(samples=20, contrast=0.2, saturation=1.3, bloom=0.12, vignette=0.25, push=0.6)


def build(document):
    """The table, the pan, the fruit, the hands."""
    forms.upright(document["surfaces"][0], m.stone("#7a644c", 0.5, 0.95, 0.012), 0.1)
    wood = m.wood("#6a4a30", "x", 0.7, 0.6, 0.4)
    for i in range(6):
        forms.box((0, -0.62 + i * 0.24, 0.735), (2.4, 0.236, 0.05), wood, bevel=0.006)
    copper = m.metal("#c8703c", 0.20, 0.12)
    for x, z, r in ((0.14, 1.10, 0.15), (0.52, 1.06, 0.12)):
        lid = forms.lathe([(0, 0.02), (r * 0.3, 0.018), (r, 0.0), (r * 1.04, -0.01)], (0, 0, 0), m.metal("#b0683c", 0.3))
        forms.place(lid, (x, 1.46, z), 0, 1, 90)
        forms.rod((x, 1.47, z + r + 0.02), (x, 1.40, z + r + 0.02), 0.006, m.metal("#3a3a3c"))
    iron = m.Build("iron", "#1b1a1a", 0.5, specular=0.5).material
    forms.lathe([(0.15, 0.045), (0.15, 0.057), (0.175, 0.057), (0.175, 0.045), (0.15, 0.045)], (0, 0, 0.76), iron)
    for t in (0.5, 2.6, 4.7):
        forms.rod((0.163 * math.cos(t), 0.163 * math.sin(t), 0.76), (0.163 * math.cos(t), 0.163 * math.sin(t), 0.81), 0.009, iron)
    z = 0.818
    forms.lathe([(0, 0), (0.150, 0), (0.172, 0.012), (0.186, 0.05), (0.196, 0.118), (0.207, 0.124), (0.205, 0.130), (0.192, 0.126), (0.182, 0.055), (0.166, 0.016), (0, 0.012)], (0, 0, z), copper, 90)
    syrup = m.Build("syrup", "#7e2410", 0.08, specular=0.8)
    syrup.bump(syrup.noise(30, 2), 0.3, 0.006)
    forms.lathe([(0, 0.092), (0.189, 0.092)], (0, 0, z), syrup.material)
    fox = m.Build("quince", "#b8461c", 0.22, specular=0.6)
    fox.mottle(18, 0.25)
    chance = random.Random(3)
    for _ in range(34):
        t, r = chance.uniform(0, 6.28), 0.165 * math.sqrt(chance.random())
        forms.ball((r * math.cos(t), r * math.sin(t), z + 0.092 + chance.uniform(-0.004, 0.014)), (0.034, 0.023, 0.020), fox.material, chance.uniform(0, 180))
    brass, rivet = m.metal("#c79a4a", 0.3), m.metal("#d8b070", 0.25)
    for s in (1, -1):
        forms.tube([(s * 0.196, -0.05, z + 0.098), (s * 0.262, -0.05, z + 0.110), (s * 0.275, 0.0, z + 0.112), (s * 0.262, 0.05, z + 0.110), (s * 0.196, 0.05, z + 0.098)], 0.010, brass, 12, 2)
    forms.ball((-0.150, -0.124, z + 0.085), 0.008, rivet)
    forms.ball((-0.112, -0.158, z + 0.085), 0.008, rivet)
    drop = m.Build("drop", "#a01408", 0.05, specular=1.0).material
    forms.ball((-0.112, -0.160, z + 0.068), (0.006, 0.006, 0.011), drop)
    yellow, flesh = m.clay("#d2a62c", 0.45), m.clay("#efdc96", 0.4)
    for x, y, r in ((-0.30, -0.14, 0.042), (-0.235, -0.215, 0.040), (0.30, -0.22, 0.043)):
        props.fruit((x, y, 0.76), r, yellow, "apple")
    forms.place([forms.hull([((0, 0, 0), 0.038), ((0, -0.012, 0), 0.038)], yellow), forms.lathe([(0, 0.0505), (0.037, 0.0502)], (0, 0, 0), flesh)], (-0.14, -0.27, 0.80), 0, 1, 62)
    forms.place([forms.lathe([(0, 0), (0.030, 0.008), (0.040, 0.030), (0.041, 0.034), (0, 0.034)], (0, 0, 0), yellow), forms.lathe([(0, 0.0345), (0.039, 0.0345)], (0, 0, 0), flesh),
                 forms.ball((0, 0, 0.034), (0.010, 0.014, 0.003), m.clay("#7a5a2a"))], (-0.03, -0.275, 0.772), 20, 1, 28)
    props.knife((0.14, -0.30, 0.76), 0.22, turn_deg=24)
    props.candle((-0.385, 0.12, 0.775), 0.15, 0.013, 7)
    forms.lathe([(0, 0), (0.06, 0), (0.065, 0.012), (0.02, 0.016), (0, 0.016)], (-0.385, 0.12, 0.76), brass)
    cook = figures.Figure((0.66, 0.10, 0), -90, 1.66, "woman", figures.pose(
        "stand", lean=(24, 0), look=(0, 30, 0), hand_r=(0.00, 0.52, 1.205), hand_l=(-0.10, 0.44, 1.01), elbow_r=(0.7, -0.4, 0.1), elbow_l=(-0.8, -0.4, 0.1),
        finger_r=(-0.5, 0.8, -0.3), palm_r=(-0.4, -0.2, -0.9), finger_l=(0.2, 0.8, -0.5), palm_l=(0.6, 0, -0.7), curl_r=0.85, curl_l=0.8), skin="#c08e70")
    cook.dress(m.cloth("#3a3c46"), 0.9, 0.55, 0.1)
    grip = cook.at("grip_r")
    forms.rod(grip + figures.V((0.05, 0.01, 0.13)), (-0.02, 0.02, z + 0.09), 0.0085, m.wood("#a5794a", "z"))
    for x, y, h, r in ((-0.06, 0.02, 1.05, 0.10), (0.03, 0.08, 1.16, 0.12), (-0.02, 0.05, 1.28, 0.14), (-0.10, 0.10, 1.20, 0.10)):
        places.puff((x, y, h), (r, r, r * 1.3), 7)
