"""An old woman on a meal bin with a speckled hen asleep on her arm: a state portrait of a hen."""
import figures
import forms
import materials as m
import more_land
import places

CAPTION = "An old woman in a shawl sits on a meal bin in a barn with a black-and-cream speckled hen asleep on her left arm. Soft warm light from the left falls on the hen first and on her face second."
CAMERA = dict(portrait=True, zoom=1.16, aim_move=(-0.06, 0, -0.16))
WORLD = dict(seen=0.3, ground=0.35)
FINISH = dict(samples=26, contrast=0.2, vignette=0.25, push=0.2, saturation=1.03)


def build(document):
    """The barn, the bin, the two of them."""
    places.barn(6.0, 3.2, 3.4, m.wood("#6a5440", "z", 1, 0.85, 0.5), False, m.stone("#8a7550", 0.2, 0.95, 0.03))
    gold = m.paper("#c0a060", 0.2)
    more_land.straw(gold, lambda c: (c.uniform(-2.5, 2.5), c.uniform(-1, 3.0), 0.02 + abs(c.gauss(0, 0.05))), 2500, 0.2, 2)
    more_land.straw(gold, lambda c: (1.6 + c.gauss(0, 0.5), 2.5 + c.gauss(0, 0.25), abs(c.gauss(0, 0.35))), 1800, 0.22, 3, 0.6)
    bin_ = m.wood("#5f4a34", "x", 1, 0.8, 0.5)
    forms.box((0.02, 0.12, 0.20), (0.86, 0.5, 0.40), bin_, -25, 0.012)
    forms.box((0.02, 0.12, 0.405), (0.92, 0.56, 0.035), bin_, -25, 0.012)
    her = figures.Figure(document["subjects"][0]["place"], -25, 1.62, "woman", figures.pose(
        "sit", lean=(8, -3), look=(-10, 14, -4), hand_l=(-0.05, 0.34, 0.80), elbow_l=(-1, -0.1, -0.4), finger_l=(0.7, 0.6, 0.1), palm_l=(0, -0.2, 1), curl_l=0.3,
        hand_r=(0.12, 0.36, 0.70), elbow_r=(0.9, -0.3, -0.2), finger_r=(-0.8, 0.5, -0.1), palm_r=(0, -0.3, 1), curl_r=0.3), skin="#bd9478")
    her.dress(m.cloth("#5c4436", 200, 0.8), 0.9, 0.9, 0.12)
    her.skirt(m.cloth("#9a8d76", 180, 1.0), 0.60, 0.08, 0.085)
    more_land.shawl(her, m.cloth("#7a6a58", 70, 0.9), 0.16)
    her.shoes(m.leather("#241c18"), 0.3)
    her.hair(m.hair("#b9b4ab"), "crop")
    her.headscarf(m.cloth("#8a3a2c", 160, 0.5))
    more_land.hen((0.07, -0.30, 0.665), 18, more_land.speckled("#e6dac0", "#191512", 62, 0.42), 1.05)
