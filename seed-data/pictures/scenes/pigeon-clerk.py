"""An old pigeon clerk at dusk before his white loft, a hen bird in both hands like a glass: warm front, blue back, black coat."""
import figures
import forms
import materials as m
import more_coast as coast
import places
import props

CAPTION = "An old man in a dark coat and cap bows his head over a hen pigeon that he holds in both hands; warm light on face and hands, a blue edge behind, a white slatted loft with birds under an apricot and lilac sky."
CAMERA = dict(portrait=True, zoom=1.02, aim_move=(0.10, 0, 0.06))
WORLD = dict(sky=[(0, (1.9, 1.15, 0.75)), (0.07, (1.7, 1.05, 0.85)), (0.14, (1.1, 0.85, 1.05)), (0.4, (0.65, 0.65, 1.0)), (1, (0.5, 0.6, 1.0))], seen=0.8)
FINISH = dict(contrast=0.22, saturation=1.05)


def build(document):
    """The loft, the birds and the clerk."""
    loft = places.surface(document, "loft")
    a, b, high = places.span(loft)
    lime, dark = m.wood("#cfcac0", "x", 1, 0.8, 0.15), m.clay("#17171c")
    forms.upright(loft, dark, 0.2)
    n = 17
    for i in range(n):
        z = 0.25 + (high - 0.3) * i / (n - 1)
        forms.box(((a.x + b.x) / 2, a.y - 0.06, z), (b.x - a.x, 0.02, 0.085), lime, bevel=0.003, pitch_deg=24)
    for x in (-2.6, -1.3, 0.0, 1.2):
        forms.box((x, a.y - 0.10, high / 2), (0.09, 0.06, high), lime)
    forms.box(((a.x + b.x) / 2, a.y - 0.02, high + 0.02), (b.x - a.x + 0.3, 0.5, 0.05), m.clay("#34343a"))
    grey, white = m.paper("#8f949c", 0.1), m.paper("#e2ddd4", 0.1)
    for x, turn, c in ((-1.05, 0, grey), (-0.78, 160, white), (-0.30, 20, grey), (0.72, 185, grey), (0.95, 0, white)):
        coast.pigeon((x, a.y - 0.16, high + 0.04), turn, *(("#8f949c", "#6d727c") if c is grey else ("#ddd8cf", "#c4bfb8")))
    props.bird((-0.55, 4.4, 2.75), 20, white, 0.9, 0.7, 0.9, 35)
    props.bird((0.95, 5.2, 2.95), 200, grey, 0.9, 0.7, 0.9, 15)
    him = figures.Figure((0, 0, 0), 25, 1.74, "man", figures.pose(
        "stand", lean=(4, 0), look=(-6, 17, 3), hand_r=(0.085, 0.30, 1.21), hand_l=(-0.085, 0.30, 1.21), elbow_r=(0.7, -0.4, -0.8), elbow_l=(-0.7, -0.4, -0.8),
        finger_r=(-0.35, 0.75, 0.45), finger_l=(0.35, 0.75, 0.45), palm_r=(-0.8, -0.1, 0.6), palm_l=(0.8, -0.1, 0.6), curl_r=0.45, curl_l=0.45), skin="#c08e70")
    him.trousers(m.cloth("#1c1c20"))
    him.coat(m.cloth("#17171b", folds=0.8), 0.6, 0.06, collar=0.055, buttons=m.metal("#5d5238", 0.5))
    him.scarf(m.cloth("#6b5a44"), 0.0)
    him.shoes(m.leather())
    him.hair(m.hair("#b9b4ac"), "crop")
    him.beard(m.hair("#c6c1b8"))
    him.cap(m.cloth("#26262b"))
    middle = (him.at("grip_r") + him.at("grip_l")) / 2
    coast.pigeon(middle + coast.V((-0.005, -0.015, 0.0)), 14, "#b9bac0", "#8d919b", 1.2, 10)
