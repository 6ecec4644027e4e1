"""A child in a long pilot's coat leans toward a paper barge that glows with lanterns, in a chapel gone blue."""
from mathutils import Vector as V

import figures
import materials as m
import more_indoors as more
import props

CAPTION = "In a dark blue chapel a small child in a pilot's coat down to the ankles leans forward, one hand out, toward a paper barge on a trolley whose hull glows orange from lanterns inside."
CAMERA = dict(zoom=1.42, aim_move=(0.2, 0, -0.2))
WORLD = dict(seen=0.05, sky=[(0, (0.5, 0.6, 0.9)), (1, (0.7, 0.85, 1.2))])
FINISH = dict(samples=16, contrast=0.2, bloom=0.16, saturation=1.4, push=0.3, vignette=0.22)


def build(document):
    """The chapel, the child and the barge."""
    more.chapel(document, ("#343e46", "#46505a"))
    her = figures.Figure((-0.78, 0, 0), 68, 1.30, "child", figures.pose(
        "ease", pelvis=(0, -0.02, 0.93), lean=(17, 0), look=(10, 10, 4), hand_l=(-0.10, 0.58, 1.16), elbow_l=(-0.3, -0.2, -1), finger_l=(0.0, 1, -0.1), palm_l=(0, 0, -1), curl_l=0.15,
        hand_r=(0.30, -0.06, 0.94), foot_r=(0.08, -0.10, 0.085), foot_l=(-0.09, 0.14, 0.085)), skin="#c89a7c")
    felt = m.cloth("#54452f", folds=0.7)
    her.trousers(m.cloth("#23252b"))
    her.coat(felt, 0.86, 0.10, collar=0.07, slack=0.045, buttons=m.metal("#b89a5a", 0.3))
    her.shoes(m.leather("#2a1d16"), 0.4)
    her.hair(m.hair("#5a3a22"), "braid")
    at, turn = V((0.98, 0.55, 0)), 20
    more.paper_barge(at, turn)
    for s in (-1, 1):
        props.bench((s * 2.9, 3.2, 0), 2.0, m.wood("#3a2c22"))
        props.bench((s * 2.9, 4.4, 0), 2.0, m.wood("#3a2c22"))
