"""A wet face straight before us: the left half furnace orange, the right half ice blue, the seam on the nose."""
import math

import figures
import forms
import materials as m
import more_indoors as more

CAPTION = "A face seen close and straight on, hair wetted flat, eyes half shut: the left half is furnace orange, the right half ice blue, meeting along the nose. Drops of water on the brow hold both colours."
CAMERA = dict(portrait=True, zoom=2.55, aim_move=(0, 0, 0.062), focus_m=2.1)
WORLD = dict(seen=0.02)
TRIMS = dict(key=-3, under=-2.5, **{"cold-store": 0.5})  # grid and felt keep the white off the cheeks; the blue with the right gel alone
FINISH = dict(contrast=0.2, bloom=0.08, push=-0.25, saturation=2.4, samples=16)


def build(document):
    """The head, the towel and the felt."""
    forms.upright(document["surfaces"][0], m.cloth("#6a6a6c", 120, 0.2), 0.1)
    her = figures.Figure((0, 0, 0), 0, 1.72, "woman", figures.pose("stand", look=(2, -3, -3)), skin="#cdb6a8")
    wet = her.skin.node_tree.nodes["Principled BSDF"].inputs
    wet["Roughness"].default_value, wet["Specular"].default_value = 0.34, 0.6
    slick = m.Build("wet hair", "#1a1412", 0.22, specular=0.6)
    slick.bump(slick.noise(60, 3, slick.stretch(1.5, 1.5, 0.12)), 0.5, 0.008)
    q = her.head_point
    her._head_thing([her._egg((0, -0.026, 0.041), (0.0785, 0.0925, 0.0845)), [(q(0.055, -0.055, 0.02), 0.030), (q(-0.055, -0.055, 0.02), 0.030), (q(0.040, -0.075, -0.15), 0.026), (q(-0.040, -0.075, -0.15), 0.026)]], slick.material, 0.0052, 4)
    more.face(her, "#8a4a46", shut=0.7)
    more.beads(her, 90, size=0.0024, low=0.12, high=0.66)
    towel = m.cloth("#6d6d70", 60, 0.8)

    def ring(u, v):
        a = 2 * math.pi * u
        fold = 0.012 * math.sin(9 * a + 2 * v) + 0.006 * math.sin(23 * a)
        roll = 0.02 * math.sin(v * math.pi)
        return math.cos(a) * (0.235 + fold + roll), -0.01 + math.sin(a) * (0.165 + fold + roll), 1.10 + 0.225 * v + 0.012 * math.sin(2 * a)
    forms.sheet(ring, towel, 160, 14, 0.02)
