"""Midsummer night on the salt: a veiled woman at a white-clothed table, spoons like embers, one heap of ice and one of fire."""
import figures
import materials as m
import more_coast as coast
import places
import props

CAPTION = "Night on a salt flat: a woman in a high collar and a veil sits behind a white-clothed table; the spoons glow orange, an ice-blue salt heap stands left, one like embers right, and an empty chair waits."
CAMERA = dict(move=(0, 0, 0.22), aim_move=(-0.08, 0, 0.06), zoom=1.42)
WORLD = dict(sky=[(0, (3.4, 3.5, 1.5)), (0.035, (2.3, 2.6, 1.3)), (0.12, (0.6, 0.95, 0.8)), (0.25, (0.25, 0.45, 0.5)), (1, (0.15, 0.28, 0.38))], seen=0.42, stops=-2.7, temperature_k=9500)
FINISH = dict(contrast=0.2, saturation=1.12, bloom=0.08, vignette=0.2)


def build(document):
    """The flat, the heaps, the table and the widow."""
    places.salt_flat(cracks=1.6)
    salt = m.stone("#aaa8a2", 0.35, 0.95, 0.03)
    coast.salt_heap((-2.3, 6.6, 0), 1.3, 1.4, salt, 1)
    coast.salt_heap((2.15, 6.3, 0), 1.3, 1.4, salt, 2)
    coast.cloth_table((0, -0.12, 0), (1.75, 0.72, 0.76), m.cloth("#b3afa6", 200, 0.5), 0, 0.60)
    props.chair((0, 0.46, 0), m.wood("#241a14", "z"), 0)
    props.chair((-1.30, -0.05, 0), m.wood("#4a3626", "z"), 62)
    her = figures.Figure((0, 0.40, 0), -14, 1.66, "woman", figures.pose(
        "sit", pelvis=(0, 0, 0.55), lean=(3, 0), look=(-4, 4, 0), hand_r=(0.17, 0.40, 0.83), hand_l=(-0.17, 0.40, 0.83), palm_r=(0, 0, -1), palm_l=(0, 0, -1),
        finger_r=(-0.5, 0.8, 0), finger_l=(0.5, 0.8, 0), curl_r=0.1, curl_l=0.1), skin="#c59a84")
    black = m.cloth("#1d1c20", 200, 0.6, 0.4)
    her.dress(black, 0.8, 0.95, 0.1, collar=0.085)
    her.shoes(m.leather("#111111"))
    her.hair(m.hair("#2a2220"), "bun")
    her.buttons(m.metal("#8d8158"), 5, 0)
    coast.ghost(her, (0.115, 0.02, 0.03), ("head",), 0.80)
    coast.veil(her, coast.gauze("#0b0b0e", 0.74))
    silver = m.metal("#d6d2c8", 0.28)
    z = 0.768
    for i, x in enumerate((-0.62, -0.40, 0.0, 0.24, 0.44, 0.64)):
        coast.spoon((x, -0.30 + 0.02 * (i % 2), z), 4 * (i % 3) - 4, silver, 0.21, i % 3 == 1)
    props.plate((0.0, -0.10, z), 0.12, m.clay("#cfcac0", 0.3))
    props.bowl((-0.52, -0.06, z), 0.085, m.clay("#b9b4aa", 0.35))
    props.cup((0.34, -0.02, z), 0.08, m.clay("#c9c2b4", 0.35))
    props.candle((0.55, 0.05, z), 0.14, 0.011, lit=False)
