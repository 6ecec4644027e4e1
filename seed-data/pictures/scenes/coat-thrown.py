"""A woman in cream throws a heavy pale coat over her head; it hangs spread in the air, its belt an S above the collar; all white."""
import figures
import materials as m
import more_indoors as more
import places
import props

CAPTION = "On white, a woman in cream has thrown a heavy pale felt coat straight up: it hangs spread in the air over her raised arms, soft grey shade in its lining, the loose belt writing an S above the collar."
CAMERA = dict(portrait=True, zoom=1.34, aim_move=(0.05, 0, 0.26))
WORLD = dict(seen=1)
FINISH = dict(samples=16, contrast=0.16, bloom=0.03, vignette=0.03, push=0.15, saturation=1.1)


def build(document):
    """The cloth, the model, the coat."""
    places.backdrop(m.Build("cloth", "#efeeea", 0.95, specular=0.05).material, 9, 3.6, 4.6, -6, 0.9)
    her = figures.Figure((0, 0, 0), -15, 1.79, "woman", figures.pose(
        "reach", pelvis=(0.02, 0, 0.97), lean=(-9, -3), look=(-6, -34, 4), hand_r=(0.34, 0.10, 2.02), hand_l=(-0.36, 0.14, 1.98), elbow_r=(0.8, 0.3, 0.1), elbow_l=(-0.8, 0.3, 0.1),
        finger_r=(0.3, 0.1, 1), finger_l=(-0.4, 0.2, 1), curl_r=0.15, curl_l=0.1, foot_r=(0.10, 0.10, 0.11), toe_r=(-10, 24), foot_l=(-0.12, -0.14, 0.12), toe_l=(14, 28)), skin="#dcb79e")
    cream = m.cloth("#e3d8c2", 260, 0.5)
    her.trousers(cream, 0.035, 0.96)
    her.top(m.silk("#e9dfcc", 0.3), 0.016, 0.9, 0.03)
    her.shoes(m.leather("#d9c9ae"), 0)
    her.hair(m.hair("#a4562a"), "long", (0.02, -0.16, 0.02))
    felt = m.cloth("#d6cbb8", 120, 0.3, 0.5)
    more.thrown_coat((0.05, 0.02, 2.84), felt, m.silk("#b3ada4", 0.3), -24, 14, -12, 0.95)
    path = [(-0.30, -0.1, 2.86), (-0.22, -0.1, 3.06), (0.05, -0.12, 3.10), (0.12, -0.1, 2.96), (0.30, -0.1, 2.92), (0.52, -0.1, 3.08), (0.50, -0.1, 3.24)]
    props.ribbon(path, 0.055, felt, 0.01, 2.0, 0.4)
