"""A grey lean dog flat out over white wet salt, all four feet in the air, low sun along its back, two salt heaps far off."""
import forms
import lights
import materials as m
import more_coast as coast

CAPTION = "A lean grey dog runs flat out from right to left over wet white salt, all four feet off the ground, spray behind its hind feet; a small salt heap stands far off in the pale haze."
CAMERA = dict(zoom=1.25, aim_move=(0.06, 0, 0.06))
WORLD = dict(sky=[(0, (1.25, 1.2, 1.1)), (0.10, (1.05, 1.08, 1.1)), (0.4, (0.7, 0.85, 1.05)), (1, (0.5, 0.7, 1.0))], seen=1.15)
FINISH = dict(push=0.35, contrast=0.22, mist=(160, (0.55, 0.62, 0.70)), mist_from=12, bloom=0.07, vignette=0.05)


def build(document):
    """The salt, the heaps and the dog."""
    lights.add_sun(document, 1.3, azimuth_deg=166, elevation_deg=21)
    forms.ground(m.wet_ground("#e9e8e4", 0.55, 0.6, 0.012, 0.9), 0, 400, centre=(0, 380))
    salt = m.stone("#f0eee9", 0.3, 0.9, 0.02)
    coast.salt_heap((-7.5, 30, 0), 1.9, 1.5, salt, 1)
    coast.salt_heap((-4.2, 34, 0), 1.5, 1.15, salt, 2)
    coast.running_dog((-0.05, 0, -0.02), m.cloth("#53585c", 160, 0.3, 1.0), m.clay("#7d7674"), 6, 0.95)
    drops = m.glow("#ffffff", 1.6)
    coast.spray([(0.85, 0, 0.03), (1.25, 0.0, 0.22)], 700, (0.12, 0.10, 0.06), 0.010, drops, 1)
    coast.spray([(0.88, 0, 0.22), (1.20, 0.03, 0.50), (1.62, 0.05, 0.78)], 420, (0.07, 0.08, 0.07), 0.010, drops, 2)
    coast.spray([(-0.1, 0, 0.02), (0.9, 0, 0.03)], 120, (0.2, 0.10, 0.02), 0.005, drops, 3)
