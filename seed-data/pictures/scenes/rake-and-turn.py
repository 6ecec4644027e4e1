"""A dancer whirls a long salt rake at dusk: skirt flaring late, an arc of brine drops cold on one side and warm on the other."""
import math

import figures
import forms
import materials as m
import more_coast as coast

CAPTION = "At dusk a dancer whirls a long salt rake, her skirt flaring after her; an arc of brine drops flies off its end, plum and rust sky, wet mirror ground, two salt heaps at the right."
CAMERA = dict(zoom=0.98, aim_move=(0.42, 0, 0.0))
WORLD = dict(sky=[(0, (2.3, 0.95, 0.42)), (0.06, (1.9, 0.75, 0.42)), (0.16, (1.0, 0.48, 0.52)), (0.35, (0.48, 0.32, 0.5)), (1, (0.3, 0.28, 0.45))], seen=0.62)
FINISH = dict(contrast=0.2, bloom=0.09, saturation=1.05)


def build(document):
    """The brine, the heaps, the dancer, the rake and the drops."""
    forms.ground(coast.brine("#6f6a70", 0.03, 2.2, 0.62, 0.05), 0, 300, centre=(0, 285))
    salt = m.stone("#d9d6d2", 0.4, 0.9, 0.03)
    coast.salt_heap((1.75, 9.2, 0), 1.25, 1.3, salt, 1)
    coast.salt_heap((3.9, 9.6, 0), 1.35, 1.25, salt, 2)
    her = figures.Figure((-0.35, 0, 0), 15, 1.70, "woman", figures.pose(
        "stand", pelvis=(0.02, 0, 0.95), lean=(-6, -10), twist=34, hips=14, look=(62, -4, -4), foot_r=(0.03, 0.02, 0.125), toe_r=(20, 34), foot_l=(-0.20, -0.34, 0.34), toe_l=(30, 52), knee_l=(-0.7, 0.7, 0),
        hand_r=(-0.38, 0.42, 1.34), hand_l=(-0.62, 0.20, 1.42), elbow_r=(0.2, 0.2, -1), elbow_l=(-0.3, -0.4, -1), curl_r=0.9, curl_l=0.9), skin="#b98468")
    her.top(m.cloth("#2c3f52"), 0.014, 0.55)
    her.skirt(m.silk("#7a2c3a", 0.5), 0.80, 0.30, 0.03, (0.22, -0.22, 0.16), 11, 0.034)
    her.belt(m.leather("#2a1a14"), 0.022, 0.03)
    her.hair(m.hair("#241914"), "tail", (0.34, -0.12, 0.16))
    hands = her.at("grip_r"), her.at("grip_l")
    way = (hands[1] - hands[0]).normalized()
    pole = m.wood("#9a7a52", "x")
    butt, head = hands[0] - way * 0.45, hands[0] + way * 1.95
    forms.rod(butt, head, 0.016, pole)
    across = way.cross((0, 0, 1)).normalized()
    board = forms.box((0, 0, 0), (0.055, 0.62, 0.03), pole)
    forms.place(board, head, math.degrees(math.atan2(way.y, way.x)))
    for k in range(9):
        p = head + across * (k / 8 - 0.5) * 0.58
        forms.rod(p, p - coast.V((0, 0, 0.13)), 0.008, pole, 0.004)
    start = math.degrees(math.atan2(head.y - her.at("pelvis").y, head.x - her.at("pelvis").x))
    far = (head - her.at("pelvis"))
    radius = math.hypot(far.x, far.y)
    drops = m.clay("#f2f4f5", 0.1)
    arc = [(-0.35 + math.cos(math.radians(start + a)) * radius, math.sin(math.radians(start + a)) * radius, head.z - 0.1 - 0.95 * (a / 200) ** 1.1 + 0.25 * math.sin(math.radians(a))) for a in range(0, 196, 8)]
    coast.spray(arc, 1500, (0.045, 0.045, 0.055), 0.0085, drops, 1)
    coast.spray(arc[:12], 600, (0.05, 0.05, 0.07), 0.009, drops, 2)
    coast.spray([(0.2, -0.1, 0.05), (0.9, -0.1, 0.12)], 260, (0.25, 0.2, 0.12), 0.007, drops, 3)
