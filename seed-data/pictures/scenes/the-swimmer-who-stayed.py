"""A woman in a bathing cap and a long coat stands barefoot at the bottom of an empty bath, looking at the far ladder."""
import math

import figures
import forms
import materials as m
import more_indoors as more

CAPTION = "A woman in a red bathing cap, goggles on her brow, and a long wool coat stands barefoot at the bottom of an empty tiled bath, blue as water. She looks to a bright ladder on the far wall; one warm spot lies on a drain."
CAMERA = dict(zoom=1.12, aim_move=(0.35, 0, 0.05))
WORLD = dict(seen=0.15)
FINISH = dict(samples=16, contrast=0.18, bloom=0.1, saturation=1.18, vignette=0.2, push=0.15)


def build(document):
    """The bath and the swimmer."""
    more.bath(6.0, 6.0, 3.2, -6.0)
    more.steps((2.6, 5.80, 0), 3.1, 0.5, m.clay("#f2f4f2", 0.4))
    more.grating((-1.10, 1.30, 0.0), 0.34)
    her = figures.Figure((0, 0, 0), 20, 1.73, "woman", figures.pose(
        "ease", look=(44, -6, 3), hand_r=(0.235, 0.10, 0.86), hand_l=(-0.16, 0.10, 0.86), elbow_r=(0.8, -0.6, 0), elbow_l=(-0.8, -0.6, 0)), skin="#cfa488")
    her.coat(m.cloth("#b0804a", 220, 0.7), 0.66, 0.09, collar=0.06, slack=0.04, buttons=m.leather("#2a1c14"))
    her.shoes(m.skin("#cfa488"))
    rubber = m.clay("#c2372e", 0.35)
    her._head_thing([her._egg((0, -0.022, 0.040), (0.079, 0.096, 0.084))], rubber)
    q = her.head_point
    strap = [q(0.082 * math.cos(t), -0.020 + 0.100 * math.sin(t), 0.050 + 0.012 * math.sin(t)) for t in (2 * math.pi * i / 30 for i in range(31))]
    her._place(forms.tube(strap, 0.006, m.leather("#1a1a1a"), 8))
    for s in (1, -1):
        p = q(s * 0.030, 0.078, 0.062)
        her._place(forms.ball(p, (0.022, 0.012, 0.016), m.Build("lens", "#10242a", 0.08, specular=1.0).material))


