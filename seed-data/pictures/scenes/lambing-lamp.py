"""A shepherd kneels in straw under a hot amber lamp with a wet new lamb across her knees; the ewe's head is near and blurred."""
import figures
import forms
import materials as m
import more_land

CAPTION = "A tired shepherd in a wool cap kneels in straw, a wet newborn lamb across her knees, in the small pool of an amber lamp. A ewe's blurred head watches from the corner; behind, a wall of very dim blue."
CAMERA = dict(zoom=1.5, aim_move=(0.04, 0, -0.16))
WORLD = dict(seen=0.2, ground=0.3)
FINISH = dict(samples=26, contrast=0.32, saturation=1.05, bloom=0.1, vignette=0.4, push=0.15, mark="left")


def build(document):
    """The pen, the shepherd, the lamb and the ewe."""
    ground = m.stone("#4a3a22", 0.2, 0.95, 0.03)
    forms.ground(ground, 0, 10, 0.03, 1.0)
    lime = m.stone("#7d7c7a", 0.7, 0.95, 0.03)
    forms.box((0, 5.1, 2), (9, 0.2, 4), lime, bevel=0)
    forms.box((-1.9, 4.96, 1.0), (1.1, 0.1, 2.0), m.wood("#2b2622", "z"), bevel=0)
    wood = m.wood("#8a6a46", "x", 1, 0.8, 0.5)
    for x in (-2.4, -1.2, 0.0, 1.2, 2.4):
        forms.rod((x, 1.6, 0), (x + 0.02, 1.6, 1.15), 0.035, wood)
    for k, z in enumerate((0.28, 0.52, 0.76, 1.0)):
        forms.box((0, 1.56, z), (5.2, 0.025, 0.075), wood, 0, 0.006, 0, (k * 7 % 3) * 0.4 - 0.4)
    gold = m.paper("#a5834a", 0.2)
    more_land.straw(gold, lambda c: (c.gauss(0, 1.0), c.gauss(-0.2, 0.9), 0.02 + abs(c.gauss(0, 0.05))), 6500, 0.22, 2)
    more_land.straw(gold, lambda c: (c.choice((-1.0, 1.3)) + c.gauss(0, 0.35), 1.0 + c.gauss(0, 0.3), abs(c.gauss(0, 0.16))), 2200, 0.22, 3, 0.6)
    her = figures.Figure(document["subjects"][0]["place"], -15, 1.68, "woman", figures.pose(
        "kneel", pelvis=(0, -0.10, 0.335), lean=(16, -3), look=(8, 32, 4), foot_r=(0.12, -0.42, 0.09), foot_l=(-0.12, -0.42, 0.09), toe_r=(0, 80), toe_l=(0, 80),
        knee_r=(0.25, 1, 0.2), knee_l=(-0.25, 1, 0.2), hand_r=(0.16, 0.36, 0.56), hand_l=(-0.34, 0.38, 0.54), elbow_r=(0.8, -0.5, 0), elbow_l=(-0.8, -0.5, 0),
        finger_r=(-0.5, 0.6, -0.4), finger_l=(0.3, 0.8, -0.4), palm_r=(-0.5, 0, -1), palm_l=(0.5, 0, -1), curl_r=0.3, curl_l=0.3), skin="#c99c80")
    her.trousers(m.cloth("#3d4034", 180, 0.8), 0.026)
    her.top(m.cloth("#6b6a58", 110, 0.9), 0.036, 0.15, 0.05)
    her.shoes(m.leather("#2a2420"), 0.6)
    her.hair(m.hair("#6b4526"), "braid")
    her.beanie(m.cloth("#7d3a2c", 90, 0.4))
    wet = m.Build("wet fleece", "#d8ccb2", 0.35, specular=0.6)
    wet.mottle(40, 0.3)
    wet.bump(wet.noise(70, 4), 0.9, 0.012)
    more_land.lamb((0.05, -0.40, 0.375), -4, wet.material, 1.0)
    more_land.ewe_head((0.50, -1.45, 0.42), -20, 1.0)
