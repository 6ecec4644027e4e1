"""A bass player on a high stool where the second beam of sun lands; a bare chapel, panelled gallery, blue at the door."""

CAPTION = "A bass player on a high stool where the second beam of sun lands; a bare chapel, panelled gallery, blue at the door."
import figures
import forms
import materials as m
import places
import props

CAMERA = dict(portrait=True, zoom=1.6, aim_move=(0.1, 0, -0.27))
WORLD = dict(seen=0.15)
FINISH = dict(contrast=0.24, bloom=0.12, saturation=1.1, push=0.2)


def build(document):
    """The chapel, the bass and its player."""
    places.boards(-5, 7, 4.4, 0.2)
    panel = m.wood("#3d4a48", "z", 0.8, 0.6, 0.2)
    a, b, high = places.span(places.surface(document, "gallery"))
    forms.upright(places.surface(document, "gallery"), panel, 0.3)
    for i in range(10):
        forms.box((a.x + 0.45 + i * 0.9, a.y - 0.03, 1.9), (0.66, 0.05, 1.2), m.wood("#4b5a56", "z", 0.8, 0.6, 0.2), bevel=0.02)
        forms.box((a.x + 0.45 + i * 0.9, a.y - 0.03, 3.4), (0.66, 0.05, 1.0), m.wood("#6a5238", "z", 0.8, 0.6, 0.2), bevel=0.02)
    forms.box((0, a.y - 0.12, 2.65), (9, 0.3, 0.14), m.wood("#6b4a2c"))
    lime = m.stone("#c3bbab", 0.7, 0.95, 0.012)
    places.wall_with_windows((4.3, -5, 0), (4.3, 6, 0), 5.4, [(4.0, 1.2, 1.7, 3.6), (8.8, 1.2, 1.9, 3.8)], lime, 0.25, (3, 6))
    forms.box((-4.5, 2, 2.6), (0.3, 9, 5.2), lime, bevel=0)
    places.beams(0.5, 4.9, 9, 4, 1.6, 0.24, m.wood("#5a3b24"), "x")
    for y in (2.6, 3.8):
        props.bench((-2.2, y, 0), 2.6, m.wood("#4a3522"))
        props.bench((2.2, y, 0), 2.6, m.wood("#4a3522"))
    bass = props.double_bass((0.58, -0.30, 0), 38, 15, 5, "#8a4a22")[0].matrix_world
    seat, facing, height = (0, 0.12, 0), 30, 1.70
    strings, side = bass @ props.V((0, -0.25, 0.66)), (bass.to_3x3() @ props.V((1, 0, 0))).normalized()
    frog, tip = strings - side * 0.30, strings + side * 0.38
    stop = bass @ props.V((0.01, -0.06, 1.12))
    props.bow(frog, tip)
    props.stool((-0.02, 0.14, 0), m.wood("#2e2118"), 0.70)

    def own(p):
        return figures.own(seat, facing, height, p)
    her = figures.Figure(seat, facing, height, "woman", figures.pose(
        "perch", pelvis=(0, 0, 0.78), lean=(10, -4), look=(-6, 18, 8), foot_r=(0.20, 0.42, 0.085), foot_l=(-0.22, 0.30, 0.24),
        hand_l=own(stop + props.V((-0.05, 0.03, 0.02))), elbow_l=(-0.9, 0.1, -0.3), finger_l=(0.7, 0.5, 0.1), palm_l=(0.1, -1, 0.1), curl_l=0.6,
        hand_r=own(frog + props.V((-0.05, 0, 0.06))), elbow_r=(0.8, -0.4, 0.2), finger_r=(-0.4, 0.5, -0.8), curl_r=0.6), skin="#c89d80")
    her.dress(m.cloth("#6e2434"), 0.86, 0.95, 0.14)
    her.shoes(m.leather("#1d1613"), 0.3)
    her.hair(m.hair("#2b1d16"), "bun")
    places.air((-4.2, -4.5, 0), (4.15, 5.9, 5), 0.035, "#fff6ea", 0.5)
