"""A ferryman sits on a bollard on the wet steps; the far wall, the tarred hull, slate water and a band of first light."""

CAPTION = "A ferryman sits on a bollard on the wet steps; the far wall, the tarred hull, slate water and a band of first light."
import figures
import forms
import materials as m
import places
import props

WORLD = dict(sky=[(0, (1.15, 1.05, 1.0)), (0.12, (0.75, 0.85, 1.0)), (0.5, (0.5, 0.62, 0.85)), (1, (0.4, 0.5, 0.75))], seen=0.42)
CAMERA = dict(zoom=1.14, aim_move=(0.25, 0, 0.10))
FINISH = dict(mist=(30, (0.16, 0.18, 0.20)), mist_from=9, mist_sky=0.3, saturation=0.72, contrast=0.36, vignette=0.25)


def build(document):
    """The harbour and the man."""
    places.surface(document, "quay")["height_m"] = 2.5
    places.harbour(document, "quay")
    props.bollard((0, 0.05, 0), 0.5, 0.19)
    man = figures.Figure((0, 0, 0), -25, 1.76, "man", figures.pose(
        "sit", pelvis=(0, -0.02, 0.60), lean=(12, -2), twist=8, look=(-8, 8, 3), hand_r=(-0.06, 0.38, 0.80), hand_l=(-0.20, 0.33, 0.84), curl_r=0.7, curl_l=0.8,
        foot_r=(0.17, 0.50, 0.085), foot_l=(-0.15, 0.36, 0.085)), skin="#b98a6c")
    man.trousers(m.cloth("#2a2d33"))
    man.coat(m.cloth("#343c46", folds=0.7), 0.50, 0.05, buttons=m.metal("#8d8158"))
    man.shoes(m.leather("#1f1c1a"), 0.6)
    man.hair(m.hair("#8d8a85"), "crop")
    man.beard(m.hair("#9a968f"))
    man.cap(m.cloth("#23282f"), m.leather("#15161a"))
    man.scarf(m.cloth("#7d3b2c"), 0.22)
    props.lantern((-0.42, -0.62, 0), 0.30, lit=False)
    props.coil((0.75, -0.35, 0), 0.24, 5)
    tar = m.wood("#1b1918", "x", 0.6, 0.5, 0.3)
    props.boat((3.7, 2.8, -0.5), 4.6, 1.7, 1.0, tar, turn_deg=-18)
    forms.rod((3.9, 2.8, 0.2), (3.9, 2.8, 4.4), 0.05, tar)
    props.rope([(0.05, 0.1, 0.42), (0.8, 1.2, 0.12), (1.52, 3.45, 0.82)], radius=0.018)
