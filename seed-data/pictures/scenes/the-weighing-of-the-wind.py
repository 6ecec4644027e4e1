"""A tiny stage on a meal bin: a round miller and a thin customs lady, rod puppets, with an empty scale that goes down; the player dim behind."""
import figures
import forms
import materials as m
import more_land
import places

CAPTION = "Two rod puppets on a black-clothed meal bin: a round miller in a big hat, lit rose, and a thin lady with a brass scale, lit cool. Its empty pan, the brightest point, tips down. Dim behind, the hooded player's hands hold the rods."
CAMERA = dict(zoom=1.9, aim_move=(0.0, 0, 0.12))
WORLD = dict(seen=0.2, ground=0.3)
FINISH = dict(samples=28, contrast=0.2, saturation=1.2, bloom=0.16, vignette=0.25, push=0.35)


def build(document):
    """The stones, the bin, the player and the two."""
    casing = m.stone("#86b0a2", 0.5, 0.8, 0.02)
    forms.lathe([(1.9, 0), (1.9, 1.05), (1.85, 1.16), (1.7, 1.2), (1.62, 1.2), (1.6, 1.55), (1.5, 1.64), (0, 1.66)], (-0.3, 4.5, 0), casing, 90)
    for k in range(3):
        ring = [(-0.3 + 1.93 * forms.math.cos(t), 4.5 + 1.93 * forms.math.sin(t), 0.3 + 0.33 * k) for t in (6.2832 * i / 72 for i in range(73))]
        forms.tube(ring, 0.025, m.metal("#7a8a8c", 0.5), 8)
    oak = m.wood("#5a4a3a", "z", 1, 0.7, 0.5)
    forms.box((1.9, 3.2, 1.5), (0.3, 0.3, 3.0), oak)
    forms.box((-2.3, 3.4, 1.5), (0.3, 0.3, 3.0), oak)
    forms.box((0, 6.5, 1.5), (9, 0.2, 3.4), m.stone("#6a6a66", 0.6), bevel=0)
    black = m.cloth("#17161a", 200, 0.8, 0.4)
    forms.box((0, 0.1, 0.53), (1.9, 0.5, 1.05), black, 0, 0.02)
    places.drape((-1.0, -0.17, 0), (1.0, -0.17, 0), 1.05, black, 9, 0.02)
    forms.box((0, 0.1, 1.055), (1.96, 0.56, 0.012), black, 0, 0.004)
    player = figures.Figure(document["subjects"][0]["place"], 0, 1.75, "man", figures.pose(
        "stand", lean=(10, 0), look=(-10, 34, 4), hand_r=(0.34, 0.30, 1.62), hand_l=(-0.36, 0.30, 1.66), elbow_r=(0.9, -0.2, -0.6), elbow_l=(-0.9, -0.2, -0.6),
        finger_r=(-0.5, 0.7, -0.4), finger_l=(0.5, 0.7, -0.4), palm_r=(0, -0.3, -1), palm_l=(0, -0.3, -1), curl_r=0.75, curl_l=0.75), skin="#96705a")
    player.trousers(m.cloth("#1c1b1f"))
    player.top(m.cloth("#3a3d46", 180, 0.8), 0.03, 0.9)
    player.hood(m.cloth("#3f434e", 180, 0.6))
    miller = figures.Figure((-0.35, -0.02, 1.063), 30, 0.41, "man", figures.pose(
        "ease", lean=(-6, 0), look=(6, 2, 0), hand_r=(0.50, 0.30, 1.30), hand_l=(-0.36, 0.46, 1.22), elbow_r=(0.6, -0.2, -0.8), elbow_l=(-0.6, -0.2, -0.8), finger_r=(0.3, 0.3, 1), curl_r=0.1, curl_l=0.1), skin="#d2a286")
    rose = m.cloth("#c9796a", 900, 0.5)
    miller.trousers(m.cloth("#6a4a3a", 900), 0.03)
    miller.top(rose, 0.05, 0.9)
    forms.ball(miller.at((0, 0.05, 1.10)), (0.072, 0.062, 0.078), rose)
    forms.place(forms.lathe([(0.066, 0), (0.075, 0.003), (0.075, 0.012), (0.066, 0.015)], (0, 0, 0), m.leather("#5a3422")), miller.at((0, 0.05, 1.05)))
    miller.shoes(m.leather("#3a2418"), 0.3)
    miller.beard(m.hair("#e4dccb"))
    miller.hat(m.cloth("#d9b46a", 900), 0.15, 0.14, m.cloth("#7a3a30", 900))
    lady = figures.Figure((0.40, 0.0, 1.063), -30, 0.44, "woman", figures.pose(
        "stand", look=(-4, 10, 4), hand_r=(0.42, 0.40, 1.50), elbow_r=(0.7, -0.2, -0.6), curl_r=0.8, hand_l=(-0.34, 0.10, 1.06), elbow_l=(-0.9, -0.3, 0), finger_l=(0.4, 0.2, -0.6)), skin="#d6b09a")
    teal = m.cloth("#7fa3ad", 900, 0.5)
    lady.dress(teal, 0.95, 0.95, 0.10, collar=0.05)
    lady.apron(m.cloth("#d8dde0", 900), 0.10, 0.14, 0.4)
    lady.shoes(m.leather("#222228"))
    lady.hair(m.hair("#2a2a30"), "bun")
    lady.hat(m.cloth("#2e3a48", 900), 0.05, 0.16, m.cloth("#c9a24e", 900))
    brass = m.clay("#ffe9a8", 0.3)
    g = lady.at("grip_r")
    more_land.scales(g, 0.26, 0.12, brass, 8, 13, 0.05)
    rods = m.metal("#d8b890", 0.4)
    hands = (player.at("grip_r"), player.at("grip_l"))
    for hand, ends in ((hands[0], (miller.at("head") + forms.Vector((0, 0.01, 0.05)), miller.at("grip_r"), miller.at("grip_l"))), (hands[1], (lady.at("head") + forms.Vector((0, 0.01, 0.06)), g))):
        for e in ends:
            forms.rod(hand + (hand - e).normalized() * 0.05, e, 0.0028, rods, sides=8)
