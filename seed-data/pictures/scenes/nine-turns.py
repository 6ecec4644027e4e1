"""A dancer in mid turn on dark boards, her white skirt risen to a wide bell that glows orange from inside; black cloth."""
import figures
import forms
import materials as m
import more_indoors as more
import places

CAPTION = "A dancer turns on dark boards before black cloth. Her wide white skirt has risen to a bell, its hem drawn in light on both sides, orange glowing through the folds; she looks to the left."
CAMERA = dict(zoom=1.6, aim_move=(0, 0, -0.2))
WORLD = dict(seen=0.02)
TRIMS = dict(ember=0.5)  # read inside the bell: the cloth keeps half a stop of it
FINISH = dict(samples=16, contrast=0.22, bloom=0.12, saturation=1.75, vignette=0.25)


def build(document):
    """The boards, the cloth, the dancer and her skirt."""
    black = m.cloth("#131214", 200, 0.6)
    a, b, high = places.span(places.surface(document, "black"))
    places.drape(a, b, high, black, 16, 0.10)
    dark = [m.wood(c, "y", 1.0, 0.34) for c in ("#2e241b", "#34291f", "#2a211a")]
    for i, shade in enumerate(dark * 14):
        forms.box((-3.6 + i * 0.172, -1.5, -0.02), (0.166, 11.5, 0.04), shade, bevel=0.004)
    her = figures.Figure((0, 0, 0), 30, 1.69, "woman", figures.pose(
        "stand", pelvis=(0, 0, 1.005), lean=(-6, 4), twist=-16, look=(-68, -8, -6), foot_r=(0.03, 0.0, 0.150), toe_r=(0, 52),
        foot_l=(-0.06, -0.20, 0.34), knee_l=(-0.5, 1, 0), toe_l=(0, 60), hand_r=(0.54, -0.24, 1.22), hand_l=(-0.55, -0.12, 1.26),
        elbow_r=(0.5, -0.7, 0.2), elbow_l=(-0.5, -0.7, 0.2), palm_r=(0, -1, -0.2), palm_l=(0, -1, -0.2), curl_r=0.1, curl_l=0.1), skin="#c69a7c")
    her.top(m.silk("#7a2430", 0.2), 0.006, None)
    her.trousers(m.cloth("#d8cfc2", 260, 0.2), 0.004, 0.5)
    her.shoes(m.leather("#c9a58a"))
    her.hair(m.hair("#1b1513"), "tail", (-0.28, -0.02, 0.22))
    waist = her.at((0, 0, 1.10))
    cloth = more.see_through("#efe9df", 0.72)
    more.bell(waist, 0.105, 1.02, 0.46, cloth, 15, tilt=(-0.16, -0.10), swirl=1.1, depth=0.06, comma=4.35)
