"""A loaf, three herring on pewter, a jug, a knife and an onion on a scrubbed table before smoke-brown plaster."""

CAPTION = "A loaf, three herring on pewter, a jug, a knife and an onion on a scrubbed table before smoke-brown plaster."
import forms
import materials as m
import places
import props

CAMERA = dict(zoom=1.0, aim_move=(-0.02, 0, 0.03))
WORLD = dict(seen=0.3)
FINISH = dict(contrast=0.2, saturation=1.05, vignette=0.2)


def build(document):
    """The table and what is on it."""
    forms.upright(places.surface(document, "plaster"), m.stone("#7d6a55", 0.5, 0.95, 0.012))
    forms.upright(places.surface(document, "reveal"), m.clay("#dcd8d0"))
    forms.box((0, -0.6, -0.05), (5, 5, 0.1), m.wood("#3a2a1e", "x"), bevel=0)
    table = m.wood("#8a6b49", "x", 0.7, 0.7, 0.35)
    for i in range(5):
        forms.box((0, -0.36 + i * 0.19, 0.74), (1.9, 0.186, 0.04), table, bevel=0.005)
    z = 0.76
    props.loaf((-0.10, 0.10, z), 0.34, turn_deg=-14)
    pewter = m.metal("#8d8f90", 0.42, 0.3)
    props.plate((0.13, -0.14, z), 0.165, pewter)
    for i, turn in enumerate((-4, 5, -2)):
        props.fish((0.12 + 0.015 * i, -0.20 + i * 0.062, z + 0.010 + 0.004 * i), 0.27, turn_deg=turn)
    props.jug((0.26, 0.22, z), 0.27, m.clay("#5d6a66", 0.28))
    props.knife((-0.20, -0.17, z), 0.26, turn_deg=38)
    props.fruit((-0.33, -0.02, z), 0.040, m.clay("#a4602f", 0.32), "onion")
    props.fruit((-0.40, 0.07, z), 0.034, m.clay("#8d4a2a", 0.32), "onion")
    crumb = m.clay("#c79a5c")
    import random
    forms.specks(crumb, lambda c: (-0.05 + c.gauss(0, 0.12), -0.03 + c.gauss(0, 0.05), z + 0.002), 40, 0.0035, random.Random(1))
    linen = m.cloth("#cfc8b6", 220, 0.4)
    places.drape((-0.62, -0.40, 0), (-0.36, -0.42, 0), 0.30, linen, 3, 0.02, z - 0.31)
