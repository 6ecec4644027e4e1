"""An inspector with a hand lamp beside tram nineteen in an amber hall; a blue edge from the open doors, her line of light behind her."""

CAPTION = "An inspector with a hand lamp beside tram nineteen in an amber hall; a blue edge from the open doors, her line of light behind her."
import figures
import forms
import materials as m
import places
import props

CAMERA = dict(zoom=1.08, aim_move=(0.35, 0, 0.0))
WORLD = dict(seen=0.2, sky=[(0, (1, 0.95, 0.9)), (1, (1, 0.9, 0.8))])
FINISH = dict(push=0.45, contrast=0.2, saturation=0.85, mark="left", bloom=0.1)


def build(document):
    """The hall, the car and the inspector."""
    floor = m.courses("#4b463f", (0.6, 0.3), "#2a2723", 0.6, 0.02, wet=0.5, up="y")
    forms.box((-1, 5, -0.05), (14, 24, 0.1), floor, bevel=0)
    forms.upright(places.surface(document, "hall wall"), m.courses("#6d5a4c", (0.24, 0.08), "#40362f", gap=0.009, bump=0.02), 0.3)
    places.tram(document)
    places.rails(3.0, 1.0, -4, 14)
    places.rails(-1.7, 1.0, -4, 14)
    iron = m.metal("#4c4843", 0.45)
    hose = m.leather("#2a211b")
    for i in range(9):
        y = 0.6 + i * 1.0
        forms.tube([(-4.18, y, 2.6), (-4.02, y, 2.58), (-3.96, y, 2.50), (-4.0, y, 2.42)], 0.02, iron)
        if i % 2 == 0:
            forms.tube([(-4.06, y - 0.18, 1.2), (-4.04, y - 0.12, 2.3), (-4.0, y, 2.52), (-4.04, y + 0.12, 2.3), (-4.06, y + 0.18, 1.3), (-4.06, y, 1.05), (-4.06, y - 0.18, 1.2)], 0.035, hose, rounds=2)
    for i in range(5):
        y = 1.5 + i * 2.6
        forms.box((-1, y, 5.0), (14, 0.2, 0.3), m.clay("#2a241e"))
        props_lamp = forms.lathe([(0.02, 0.5), (0.03, 0.12), (0.18, 0.0), (0.17, 0.0)], (-1.2, y, 4.0), iron)
        forms.ball((-1.2, y, 4.02), 0.07, m.glow("#ffbf70", 5))
        del props_lamp
        places.lamp((-1.2, y, 3.85), 60, (1, 0.62, 0.25), 0.08)
    brick = m.courses("#6d5a4c", (0.24, 0.08), "#40362f", gap=0.009, bump=0.02)
    forms.box((-1, 14.3, 3.2), (16, 0.3, 6.4), brick, bevel=0)
    forms.box((-1, 5, 5.5), (16, 20, 0.1), m.wood("#4a3a2c", "y"), bevel=0)
    forms.text("19", (1.74, -0.55, 1.18), 0.42, m.clay("#d8c79a", 0.4), -88)
    forms.box((5.2, 5, 3), (0.3, 20, 6), brick, bevel=0)
    forms.text("19", (2.2, -1.06, 1.15), 0.42, m.clay("#d8c79a", 0.4))
    forms.box((-1.2, 14, 2.3), (4.2, 0.1, 4.6), m.glow("#3a4f72", 0.42), bevel=0)
    for x in (-3.4, -1.2, 1.0):
        forms.box((x, 13.9, 2.3), (0.16, 0.2, 4.7), iron)
    forms.box((-1.2, 13.9, 4.65), (4.6, 0.2, 0.2), iron)
    forms.box((-1.2, 13.9, 2.4), (4.3, 0.12, 0.1), iron)
    her = figures.Figure((0, 0, 0), 62, 1.72, "woman", figures.pose(
        "stand", lean=(6, 0), twist=4, look=(6, 12, 0), foot_r=(0.11, -0.12, 0.085), foot_l=(-0.10, 0.20, 0.085), hand_l=(-0.10, 0.52, 1.22), elbow_l=(-0.8, -0.3, -0.5), curl_l=0.9,
        hand_r=(0.26, 0.06, 0.98), curl_r=0.6), skin="#c39678")
    her.trousers(m.cloth("#25303f"))
    her.coat(m.cloth("#2b3a50", folds=0.7), 0.34, 0.05, buttons=m.metal("#c0994a", 0.3))
    her.shoes(m.leather("#1c1815"), 0.3)
    her.hair(m.hair("#3a2418"), "bun")
    her.cap(m.cloth("#1f2a3a"), m.leather("#121214"))
    props.hand_lamp(her.at("grip_l"), (1.75, 0.6, 0.7), 9)
    path = [(-1.9, 3.4, 0.86), (-1.5, 2.6, 0.74), (-1.15, 1.9, 0.82), (-0.75, 1.25, 0.70), (-0.35, 0.6, 0.78), (0.0, 0.25, 0.95), her.at("grip_l")]
    forms.tube(path, 0.006, m.glow("#ffc878", 2.2), 8, 3)
