"""A stern old man in a black coat before black cloth, ledger under his arm, a yellow pencil behind his ear; one hard light."""
import figures
import forms
import materials as m
import more_indoors as more

CAPTION = "A stern old man in a black coat stands before pure black, a ledger under his left arm, a bright yellow pencil behind his ear. One hard light from high on the left; the far side of his face is dark."
CAMERA = dict(portrait=True, zoom=1.3, aim_move=(0.03, 0, -0.06))
WORLD = dict(seen=0.0)
FINISH = dict(samples=16, contrast=0.16, saturation=0.8, bloom=0.05, push=0.35)


def build(document):
    """The cloth and the man."""
    forms.upright(document["surfaces"][0], m.cloth("#0c0c0d", 200, 0.3), 0.05)
    man = figures.Figure((0, 0, 0), -20, 1.74, "man", figures.pose(
        "stand", lean=(-2, 0), look=(6, -8, 0), hand_l=(-0.26, 0.20, 1.02), elbow_l=(-0.7, -0.7, -0.4), finger_l=(0.4, 0.8, 0.2), palm_l=(0.9, 0, 0.2), curl_l=0.5), skin="#c9a084")
    man.trousers(m.cloth("#1b1b1d"))
    man.coat(m.cloth("#26262a", 200, 0.7), 0.55, 0.04, collar=0.028, buttons=m.metal("#8d8d86", 0.3))
    man.hair(m.hair("#b4b0a8"), "crop")
    man.beard(m.hair("#b9b5ad"))
    more.face(man, "#9a6a5a", "#57504a", 0.35)
    q = man.head_point
    tip, end = man.matrix @ q(0.090, 0.078, 0.016), man.matrix @ q(0.086, -0.070, 0.040)
    yellow = m.clay("#f0c020", 0.4)
    forms.rod(tip.lerp(end, 0.14), end, 0.0048, yellow)
    forms.rod(tip, tip.lerp(end, 0.14), 0.0008, m.wood("#e6cfa0"), 0.0048)
    forms.rod(end, end.lerp(tip, -0.10), 0.0050, m.clay("#c46a5c"))
    book = man.at((-0.245, 0.13, 1.12))
    forms.box(book, (0.07, 0.36, 0.28), m.leather("#6b3a2a"), -20, 0.01, 12, 0)
    forms.box(book, (0.05, 0.365, 0.265), m.paper("#d9cfb4", 0), -20, 0.0, 12, 0)
