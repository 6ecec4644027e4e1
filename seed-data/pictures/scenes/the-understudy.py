"""A young woman at a lectern, low orange light; the shadow of her raised hand climbs the curved bookshelves behind her."""
import bpy

import figures
import forms
import materials as m
import more_indoors as more
import props

CAPTION = "In a round reading room by night a young woman stands at a lectern, lit low and orange from the right. The shadow of her raised hand climbs the curved bookshelves behind; a line of blue lies on her hair."
CAMERA = dict(zoom=1.08, aim_move=(-0.42, 0, 0.22))
WORLD = dict(seen=0.1, stops=-4.3)  # it had fallen by two stops by the chosen frame
FINISH = dict(mark="left", samples=16, contrast=0.18, push=0.7, saturation=1.2, bloom=0.1)


def build(document):
    """The shelves, the lectern, the understudy."""
    more.curved_shelves(3.4, 1.7, 78, 4.6, 9, ("#a87850", "#b08a60", "#b09068", "#a07a58", "#b09870", "#ac7c58"))
    candle = bpy.data.lights["candle"]
    candle.spot_size, candle.spot_blend, candle.shadow_soft_size = 1.35, 0.7, 0.03
    her = figures.Figure((0, 0, 0), 24, 1.66, "woman", figures.pose(
        "ease", lean=(-3, -3), look=(34, -24, 8), hand_l=(-0.40, -0.12, 1.78), elbow_l=(-1, 0.1, -0.5), finger_l=(-0.3, -0.05, 1), palm_l=(-0.49, 0.87, -0.4), curl_l=0.05,
        hand_r=(0.26, 0.34, 1.10), elbow_r=(0.6, -0.7, -0.2), curl_r=0.3), skin="#cda186")
    her.dress(m.cloth("#7a2f3a", folds=0.4), 0.9, 0.9, 0.14, collar=0.03)
    her.shoes(m.leather("#1d1613"))
    her.hair(m.hair("#4a2c1c"), "bun")
    more.face(her, "#b05a50", "#3a241a", 0.2)
    oak = m.wood("#5a3d24", "z")
    forms.box((0.42, -0.52, 0.02), (0.5, 0.42, 0.06), oak)
    forms.box((0.42, -0.52, 0.52), (0.16, 0.16, 1.0), oak, 24)
    forms.box((0.42, -0.52, 1.06), (0.56, 0.40, 0.03), oak, 24, 0.008, -20)
    props.open_book((0.42, -0.54, 1.09), 0.26, 24 + 180, 0)
    props.lantern((0.86, -0.30, 0.72), 0.26, 1.6)
    props.stool((0.86, -0.30, 0), m.wood("#2e2118"), 0.72)
