"""Five of a threshing crew, tired in five ways, in the great door of a barn; stubble and a sky from straw-gold to dusty rose."""
import figures
import forms
import materials as m
import more_land
import places
import props

CAPTION = "Seen from inside a barn, five tired threshers rest in the great doorway: a man with a fork, a woman on a sack, a woman with folded arms, a tall man with a jug, a girl asleep against the post. Behind, stubble and a rose-gold evening sky."
CAMERA = dict(zoom=1.34, aim_move=(0, 0, 0.0))
WORLD = dict(seen=0.5, ground=0.4)
FINISH = dict(samples=26, contrast=0.18, bloom=0.12, vignette=0.2, push=0.25, saturation=0.9)


def build(document):
    """The door, the field and the crew."""
    more_land.painted_sky([(0.0, "#d6a45e"), (0.12, "#e0b67c"), (0.34, "#d6a288"), (0.64, "#b88a88"), (1.0, "#857688")], 90, 160, 1, 36, 0.07, 0.40, 0.85, (1, 1, 4))
    b = m.Build("stubble", "#000000")
    shine = b.nodes.new("ShaderNodeEmission")
    b.links.new(b.ramp(b.noise(2.2, 5, b.stretch(3.0, 0.25, 1)), 0.35, 0.7, (m.linear("#6b5128"), m.linear("#b08a48"))), shine.inputs[0])
    shine.inputs[1].default_value = 0.75
    b.links.new(shine.outputs[0], b.nodes["Material Output"].inputs[0])
    more_land.only_seen(forms.raw([(-90, 1.35, 0), (90, 1.35, 0), (90, 90, 0.9), (-90, 90, 0.9)], [(0, 1, 2, 3)], b.material))
    rick = m.glow("#7a5a34", 0.55)
    for x, y, s in ((-2.9, 30, 1.0), (3.4, 36, 1.1), (7.6, 34, 1.3)):
        more_land.only_seen(forms.lathe([(1.5 * s, 0), (1.7 * s, 1.2 * s), (1.8 * s, 1.7 * s), (1.6 * s, 2.2 * s), (1.1 * s, 2.75 * s), (0.5 * s, 3.1 * s), (0, 3.2 * s)], (x, y, 0.1), rick))
    oak = m.wood("#6a4f36", "z", 1, 0.7, 0.5)
    for s in (-1, 1):
        forms.box((s * 2.36, 1.25, 1.9), (0.24, 0.26, 3.8), oak)
        forms.box((s * 3.7, 1.35, 1.9), (2.5, 0.1, 3.8), m.wood("#4a3a2b", "z", 1, 0.8, 0.5), bevel=0)
    forms.box((0, 1.25, 3.66), (5.0, 0.28, 0.28), m.wood("#5a432e", "x", 1, 0.7, 0.5))
    forms.box((0, 1.35, 4.3), (10, 0.1, 1.1), m.wood("#4a3a2b", "z", 1, 0.8, 0.5), bevel=0)
    for s in (-1, 1):
        forms.rod((s * 2.36, 1.2, 2.75), (s * 1.55, 1.2, 3.6), 0.085, oak)
    places.boards(-6, 1.35, 5, 0.26, m.wood("#6b543a", "y", 1, 0.7, 0.5))
    more_land.straw(m.paper("#d3b064", 0.3), lambda c: (c.gauss(0, 1.8), c.uniform(-2.4, 1.3), 0.012 + abs(c.gauss(0, 0.01))), 1600, 0.2, 4, 0.08)
    places.grass(m.paper("#b08a48", 0.4), (-2.4, 2.4, 1.4, 3.2), 900, 0.16, 2, (0.02, 0))
    s = [x["place"] for x in document["subjects"]]
    boots, dark = m.leather("#3a2a1e"), m.cloth("#3d3a36")
    one = figures.Figure(s[0], 25, 1.80, "man", figures.pose("lean", hand_r=(0.34, 0.16, 1.26), hand_l=(0.20, 0.26, 1.10), elbow_r=(0.8, -0.4, -0.2), curl_r=0.9, curl_l=0.9, look=(-10, 12, 4)), skin="#b98a6a")
    one.trousers(dark)
    one.top(m.cloth("#b9ae98"), 0.03, 0.3)
    one.top(m.cloth("#4b3b2e"), 0.042, None)
    one.shoes(boots, 0.4)
    one.hair(m.hair("#8a8378"), "crop")
    one.hat(m.cloth("#8a6a3c"), 0.085, 0.10)
    g = one.at("grip_r")
    forms.rod((g.x - 0.02, g.y - 0.02, 0), (g.x + 0.01, g.y, 1.75), 0.015, m.wood("#9a7a4e", "z"))
    for k in (-1, 1):
        forms.tube([(g.x + 0.01, g.y, 1.72), (g.x + k * 0.08, g.y, 1.80), (g.x + k * 0.075, g.y, 2.06)], 0.008, m.metal("#6a6662"), 8, 2)
    props.sack((-0.8, -0.46, 0), 0.52, None, 20)
    two = figures.Figure((s[1]["x_m"], s[1]["y_m"], 0), 10, 1.66, "woman", figures.pose("sit", pelvis=(0, 0, 0.56), lean=(24, 2), look=(12, 10, 8), hand_r=(0.16, 0.40, 0.62), hand_l=(-0.14, 0.42, 0.86), elbow_l=(-0.6, 0.3, -0.8), finger_l=(0.3, 0, 1), curl_l=0.4))
    two.dress(m.cloth("#6b4b4a"), 0.85, 0.35, 0.12)
    two.shoes(boots, 0.3)
    two.hair(m.hair("#5a3a24"), "bun")
    two.headscarf(m.cloth("#c9a04a"))
    three = figures.Figure(s[2], -5, 1.72, "woman", figures.pose("ease", hand_r=(-0.12, 0.24, 1.14), hand_l=(0.12, 0.26, 1.18), elbow_r=(0.9, -0.1, -0.3), elbow_l=(-0.9, -0.1, -0.3), curl_r=0.4, curl_l=0.4, look=(-6, -2, 3)))
    three.trousers(m.cloth("#44505c"))
    three.top(m.cloth("#8d9aa0"), 0.026, 0.35, 0.02)
    three.shoes(boots, 0.5)
    three.hair(m.hair("#2d2019"), "bob")
    three.cap(m.cloth("#4a4036"))
    three.scarf(m.cloth("#a5432f"), 0)
    four = figures.Figure(s[3], -15, 1.84, "man", figures.pose("ease", hand_r=(0.26, 0.12, 0.92), curl_r=0.9, hand_l=(-0.20, 0.20, 1.36), elbow_l=(-1, 0.2, -0.2), finger_l=(0.4, -0.2, 0.9), curl_l=0.5, look=(14, -6, -4)), skin="#a97d5e")
    four.trousers(m.cloth("#5a4a38"))
    four.top(m.cloth("#a89a86"), 0.03, 0.25)
    four.top(m.cloth("#5b3a30"), 0.042, None)
    four.shoes(boots, 0.4)
    four.hair(m.hair("#3a291d"), "short")
    four.beard(m.hair("#3f2c1f"))
    j = four.at("grip_r")
    props.jug((j.x - 0.06, j.y, j.z - 0.20), 0.24, m.clay("#8a5a3a", 0.3))
    five = figures.Figure((1.92, 0.75, 0), -30, 1.55, "woman", figures.pose("stand", pelvis=(-0.04, 0, 0.93), lean=(2, -10), look=(6, 18, -22), hand_r=(0.05, 0.22, 0.98), hand_l=(-0.10, 0.20, 1.00), foot_r=(0.12, 0.10, 0.085), foot_l=(-0.06, 0.0, 0.085)), skin="#d0a486")
    five.dress(m.cloth("#7d8a6a"), 0.72, 0.5, 0.12)
    five.shoes(boots, 0.3)
    five.hair(m.hair("#a5743c"), "braid")
    five.hat(m.cloth("#c29a54"), 0.10, 0.09, m.cloth("#7a3a30"))
