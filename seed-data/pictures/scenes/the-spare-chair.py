"""Five people of three generations and one empty chair on white to the floor."""
import figures
import forms
import materials as m
import more_indoors as more
import places
import props

CAPTION = "Five people and an empty wooden chair on white to the floor: a grandfather with his hand on the chair, his daughter on a stool with a baby, a girl cross-legged, a kneeling father turned to the chair, a great-aunt with a stick."
CAMERA = dict(zoom=1.04, aim_move=(0.08, 0, -0.14))
WORLD = dict(seen=1)
FINISH = dict(samples=16, contrast=0.14, bloom=0.03, vignette=0.02, push=0.1, saturation=0.8)


def build(document):
    """The white cloth and the family."""
    places.backdrop(m.Build("cloth", "#f0efec", 0.95, specular=0.05).material, 9, 3.4, 4.2, -7, 0.9)
    props.chair((-0.90, 0.10, 0), m.wood("#8a5a34", "z"), 14)
    old = figures.Figure((-1.36, 0.30, 0), -6, 1.76, "man", figures.pose(
        "ease", lean=(2, -3), look=(14, 4, 0), hand_l=(-0.36, 0.05, 0.98), elbow_l=(-0.7, -0.6, 0), finger_l=(-0.2, 0.8, -0.3), palm_l=(0, 0, -1), curl_l=0.5), skin="#c59a7e")
    old.trousers(m.cloth("#5a5348"))
    old.coat(m.cloth("#3c4a5c", 220, 0.5), 0.22, 0.02, slack=0.024)
    old.shoes(m.leather("#3a2a20"))
    old.hair(m.hair("#d9d6cf"), "crop")
    old.beard(m.hair("#d6d2ca"))
    props.stool((-0.35, -0.10, 0), m.wood("#6a4a2e"), 0.46)
    her = figures.Figure((-0.35, -0.14, 0), -5, 1.68, "woman", figures.pose(
        "sit", pelvis=(0, 0, 0.57), lean=(6, 2), look=(4, 16, 4), hand_r=(-0.06, 0.25, 0.84), hand_l=(0.08, 0.28, 0.80), elbow_r=(0.8, -0.2, -0.4), elbow_l=(-0.8, -0.2, -0.4)), skin="#cda184")
    her.dress(m.cloth("#9a4a2e", folds=0.5), 0.78, 0.9, 0.10)
    her.shoes(m.leather("#4a2e20"), 0.25)
    her.hair(m.hair("#4a2e1e"), "bun")
    more.bundle(her.at((0.03, 0.27, 0.93)), 172)
    girl = figures.Figure((0.35, -0.42, 0), 4, 1.42, "child", figures.pose(
        "sit", pelvis=(0, 0, 0.12), lean=(10, 0), look=(-6, -6, -6), foot_r=(-0.10, 0.30, 0.06), foot_l=(0.12, 0.36, 0.08), knee_r=(1, 0.5, 0.15), knee_l=(-1, 0.5, 0.15),
        toe_r=(70, 30), toe_l=(-70, 30), hand_r=(0.10, 0.34, 0.30), hand_l=(-0.10, 0.36, 0.30)), skin="#d2a688")
    girl.trousers(m.cloth("#34506a"), 0.020)
    girl.top(m.cloth("#d0a23c"), 0.018, 0.9, 0.02)
    girl.shoes(m.leather("#7a3a2c"))
    girl.hair(m.hair("#6a4426"), "braid")
    dad = figures.Figure((0.92, 0.0, 0), -34, 1.78, "man", figures.pose(
        "kneel", lean=(8, 0), look=(-26, -2, 0), hand_r=(0.20, 0.42, 0.72), hand_l=(-0.16, 0.30, 0.66)), skin="#b98a6a")
    dad.trousers(m.cloth("#4a4a38"))
    dad.top(m.cloth("#66703f"), 0.026, 0.55, 0.03)
    dad.shoes(m.leather("#2f231a"))
    dad.hair(m.hair("#2b1d14"), "short")
    dad.beard(m.hair("#2b1d14"))
    aunt = figures.Figure((1.52, 0.35, 0), 8, 1.58, "woman", figures.pose(
        "stand", lean=(9, 0), look=(-16, -2, 4), hand_r=(0.10, 0.34, 0.96), hand_l=(-0.08, 0.36, 0.98), elbow_r=(0.8, -0.4, -0.2), elbow_l=(-0.8, -0.4, -0.2), curl_r=0.9, curl_l=0.9), skin="#d9b096")
    aunt.dress(m.cloth("#e2ddd2", folds=0.5), 0.9, 0.92, 0.10, collar=0.03)
    aunt.shoes(m.leather("#57504a"))
    aunt.hair(m.hair("#a8a5a0"), "bun")
    top = aunt.at((0, 0.42, 0.98))
    forms.rod((top.x, top.y - 0.02, 0), top, 0.014, m.wood("#2a1c12", "z"))
    forms.ball(top, 0.026, m.wood("#2a1c12", "z"))
