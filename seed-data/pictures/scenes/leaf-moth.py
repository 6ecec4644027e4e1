"""A woman in a huge moss-green brocade coat, her sleeves like wings, with two coins of sun on her in a dappled wood."""
import random

import figures
import forms
import materials as m
import more_land
import places
import props

CAPTION = "A woman in a huge moss-green brocade coat spreads her arms a little like a moth's wings and looks over her shoulder. Two coins of hard sun lie on her cheek and skirt; a beech wood, green and gold, behind."
CAMERA = dict(portrait=True, zoom=1.34, aim_move=(0.0, 0, 0.0))
WORLD = dict(sky=[(0, (1.0, 1.15, 0.75)), (0.5, (0.95, 1.15, 0.75)), (1, (1.0, 1.1, 0.8))], seen=0.6)
FINISH = dict(samples=26, contrast=0.2, saturation=1.0, bloom=0.1, push=0.15)


def build(document):
    """The wood and the coat."""
    more_land.painted_sky([(0.0, "#26331e"), (0.35, "#5a5e2c"), (0.55, "#90893c"), (0.75, "#cdbb62"), (1.0, "#ebe6b8")], 22, 60, -2, 16, 0.55, 1.15, 0.8, (1, 1, 1), 3)
    floor = m.stone("#6a4a2a", 0.4, 0.95, 0.04)
    forms.ground(floor, 0, 12, 0.05, 0.6)
    more_land.hill(floor, 7.5, 1.3, 4.5, 24, 0.15)
    bark = m.stone("#8e8c84", 0.5, 0.9, 0.05)
    for x, y, r in ((-1.55, 5.0, 0.33), (1.9, 8.5, 0.22), (0.7, 10.5, 0.16), (-3.4, 9.0, 0.25), (3.4, 6.5, 0.2), (-0.6, 12.0, 0.14)):
        props.tree((x, y, 0.2), 10, r, bark, int(r * 90), (0.3, 0), 2)
    browns = [m.paper(c, 0.3) for c in ("#9c5f28", "#7a4420", "#b98440")]
    places.fallen_leaves(browns, (-3, 3, -3.5, 6), 1700, 0.10, 0.03)
    greens = [m.paper(c, 0.6) for c in ("#7fa03a", "#a8c04c", "#5f8030")]
    chance = random.Random(4)
    for k, green in enumerate(greens):
        places.scatter_leaves(green, [(chance.uniform(-3, 3), chance.uniform(3, 7), chance.uniform(2.7, 4.2)) for _ in range(120)], 0.2, 0.16, k)
        places.scatter_leaves(green, [(chance.uniform(-1.3, -0.7), -2.2, chance.uniform(1.95, 2.3)) for _ in range(9)], 0.08, 0.13, k + 7)
    her = figures.Figure(document["subjects"][0]["place"], -30, 1.82, "woman", figures.pose(
        "ease", twist=-8, lean=(-3, 2), look=(48, 0, 6), hand_r=(0.58, 0.06, 1.06), hand_l=(-0.60, 0.0, 1.10), elbow_r=(0.4, -0.8, -0.1), elbow_l=(-0.4, -0.8, -0.1),
        finger_r=(0.9, 0.2, -0.1), finger_l=(-0.9, 0.1, 0.1), palm_r=(0, 0.3, -1), palm_l=(0, 0.3, -1), curl_r=0.15, curl_l=0.15), skin="#d0a488")
    cloth = more_land.brocade("#26361e", "#55622e", 26)
    her.trousers(m.cloth("#3a3524"))
    her.coat(cloth, 0.95, 0.26, (0.05, -0.12, 0), 0.09, 0.05)
    for side in "rl":
        more_land.wing(her.at("shoulder_" + side), her.at("wrist_" + side), 0.66, cloth, her.at((0, -0.10, 0)) - her.at((0, 0, 0)), 3, 0.045)
    her.shoes(m.leather("#4a3020"), 0.3)
    her.hair(m.hair("#6b3a1c"), "curls")
