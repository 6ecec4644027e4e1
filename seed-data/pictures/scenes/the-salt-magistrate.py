"""A village play on a quarry stage: the magistrate on a block, a clerk with scales, a clerk with a ledger; cobalt against ember."""
import figures
import forms
import materials as m
import more_land
import places
import props

CAPTION = "Three players on a stone stage at dusk: a judge in a pale robe and tall square hat on a block, a clerk kneeling with brass scales, a clerk in amber light with an open ledger. The quarry behind is cobalt blue."
CAMERA = dict(zoom=1.46, aim_move=(0, 0, -0.24))
WORLD = dict(sky=[(0, (0.75, 0.85, 1.1)), (0.3, (0.5, 0.65, 1.1)), (1, (0.3, 0.4, 0.9))], seen=0.3, stops=-2.5)
FINISH = dict(samples=26, contrast=0.2, saturation=1.28, bloom=0.1, vignette=0.2)


def build(document):
    """The quarry, the block and the three."""
    places.quarry(document, "stepped face", m.stone("#7c7c80", 0.6, 0.95, 0.04, 0.2), "#878d9c", 4)
    block = m.stone("#c2b496", 0.5, 0.9, 0.03)
    forms.box((0, 0.62, 0.45), (1.8, 1.24, 0.9), block, 0, 0.03)
    forms.box((0, 0.86, 1.13), (0.8, 0.5, 0.46), block, 0, 0.02)
    forms.box((0, 1.05, 1.75), (0.86, 0.14, 1.2), block, 0, 0.03)
    judge = figures.Figure((0, 0.66, 0.9), 0, 1.75, "man", figures.pose(
        "sit", lean=(0, 0), look=(-8, 4, 0), hand_r=(0.34, 0.42, 1.10), elbow_r=(0.8, -0.4, -0.6), finger_r=(0.1, 0.1, 1), palm_r=(0, 1, 0), curl_r=0.35, hand_l=(-0.20, 0.40, 0.68)), skin="#c8a184")
    pale = m.cloth("#a69c88", 200, 1.0)
    judge.dress(pale, 0.95, 0.9, 0.14)
    judge.coat(m.cloth("#8f8674", 200, 1.0), 0.5, 0.1, collar=0.06)
    judge.shoes(m.leather("#3a2a20"))
    judge.scarf(m.cloth("#8a2f24"), 0.5)
    judge.hair(m.hair("#b8b4ac"), "long")
    judge.beard(m.hair("#c4c0b8"))
    top = judge.at("head") + forms.Vector((0, 0.015, 0.085))
    hat = forms.lathe([(0.135, -0.02), (0.14, 0.0), (0.15, 0.30), (0.155, 0.31), (0, 0.33)], (0, 0, 0), m.cloth("#26262e"), 4)
    for p in hat.data.polygons:
        p.use_smooth = False
    forms.place(hat, top, 45)
    forms.place(forms.lathe([(0.142, 0.02), (0.146, 0.06)], (0, 0, 0), m.cloth("#a8842c"), 4), top, 45)
    one = figures.Figure(document["subjects"][0 + 1]["place"], 35, 1.70, "woman", figures.pose(
        "kneel", lean=(4, 0), look=(-30, -16, 0), hand_r=(0.42, 0.40, 1.28), elbow_r=(0.7, 0.0, -0.7), curl_r=0.8, finger_r=(0, 0.8, 0.4), hand_l=(-0.20, 0.26, 0.62)), skin="#cba084")
    one.dress(m.cloth("#3c4a66"), 0.9, 0.9, 0.12)
    one.top(m.cloth("#2e3850"), 0.03, None, 0.04)
    one.shoes(m.leather("#2a2320"))
    one.hair(m.hair("#3a2a20"), "bun")
    one.headscarf(m.cloth("#e0dccf"))
    more_land.scales(one.at("grip_r"), 0.58, 0.34, m.clay("#ffe6a0", 0.3), 10, 8, 0.105)
    two = figures.Figure(document["subjects"][2]["place"], -40, 1.74, "man", figures.pose(
        "ease", lean=(6, 0), look=(6, 14, 0), hand_r=(0.20, 0.40, 1.14), hand_l=(-0.20, 0.40, 1.14), palm_r=(-0.2, 0, 1), palm_l=(0.2, 0, 1), finger_r=(-0.4, 0.9, 0), finger_l=(0.4, 0.9, 0)), skin="#c39a78")
    two.trousers(m.cloth("#3a2c26"))
    two.coat(m.cloth("#7a4a2a"), 0.72, 0.12, collar=0.05)
    two.shoes(m.leather("#2a2320"), 0.4)
    two.hair(m.hair("#4a3524"), "short")
    two.hat(m.cloth("#3c2a22"), 0.06, 0.12)
    mid = (two.at("grip_r") + two.at("grip_l")) / 2
    props.open_book(mid + forms.Vector((0, 0, 0.03)), 0.23, -40, 38)
