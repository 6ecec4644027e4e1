"""A small upright figure in a pale coat under a big vermilion umbrella, pearl-grey fog, all of it doubled in flat brine."""
import figures
import forms
import materials as m
import more_coast as coast
import props

CAPTION = "A small upright woman in a pale coat under a large vermilion umbrella stands in pearl-grey fog; flat brine doubles her, and there is no other colour."
CAMERA = dict(zoom=0.665, aim_move=(-1.0, 0, -1.0))
WORLD = dict(seen=1.0)
FINISH = dict(push=0.85, mist=(9, (0.43, 0.455, 0.495)), mist_from=8.3, contrast=0.1, vignette=0.05, bloom=0.05)


def build(document):
    """The brine, the woman and the umbrella."""
    forms.ground(coast.brine("#dfe3e6", 0.012, 2.5, 0.8, 0.02), 0, 400, centre=(0, 380))
    her = figures.Figure((0, 0, 0), -25, 1.75, "woman", figures.pose(
        "ease", look=(2, -2, 0), hand_r=(0.14, 0.22, 1.16), elbow_r=(0.7, -0.5, -0.6), curl_r=0.9, hand_l=(-0.27, 0.02, 0.88)), skin="#b98a70")
    her.trousers(m.cloth("#8f8d8a"))
    her.coat(m.cloth("#d8d3c9", folds=0.8), 0.72, 0.10, collar=0.06, buttons=m.clay("#6d675e"))
    her.belt(m.cloth("#cbc5b8"), 0.022, 0.045)
    her.shoes(m.leather("#2b2725"), 0.5)
    her.hair(m.hair("#2a211d"), "bob")
    grip = her.at("grip_r")
    props.umbrella(grip, grip + (her.at((0.02, -0.10, 2.32)) - grip), 0.88, m.paper("#e23416", 0.38), 8)
