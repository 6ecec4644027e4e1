"""Four cloaked finders among beech trunks, each with a lantern and a pool of amber; a fifth lantern far off."""
import figures
import forms
import materials as m
import more_land
import places
import props

CAPTION = "Four cloaked people search a dark beech wood, apart from each other, each lit by one amber lantern; one kneels and digs. Blue mist lies at their knees, and far off between the trees a fifth lantern shines."
CAMERA = dict(zoom=1.36, aim_move=(-0.06, 0, -0.22))
WORLD = dict(sky=[(0, (0.8, 0.9, 1.2)), (1, (0.7, 0.8, 1.2))], seen=0.08, ground=0.2, stops=-4.0)
FINISH = dict(samples=26, contrast=0.12, saturation=1.25, bloom=0.16, vignette=0.2, push=0.55, mist=(26, (0.010, 0.017, 0.040)), mist_from=8.2, mist_sky=0.9)


def build(document):
    """The wood, the four and their lanterns."""
    floor = m.stone("#4a3322", 0.3, 0.95, 0.05)
    forms.ground(floor, 0, 22, 0.06, 0.6)
    more_land.hill(floor, 13, 1.8, 6, 50, 0.3)
    bark = m.stone("#77706a", 0.5, 0.9, 0.06)
    for x, y, r in ((-3.6, 3.4, 0.24), (-2.7, 6.0, 0.3), (-1.5, 4.4, 0.18), (0.35, 5.2, 0.26), (1.5, 3.2, 0.2), (3.4, 4.0, 0.28), (2.7, 7.0, 0.2), (-4.8, 7.0, 0.3),
                    (-0.6, 8.5, 0.22), (4.2, 9.0, 0.25), (1.4, 10.0, 0.2), (-3.2, 10.5, 0.24), (-3.05, 0.6, 0.2), (5.9, 8.0, 0.3)):
        props.tree((x, y, 0), 9, r, bark, int(r * 100 + x * 3) % 97, (0.4, 0), 2)
    browns = [m.paper(c, 0.2) for c in ("#8a5428", "#6a3c1e")]
    places.fallen_leaves(browns, (-4, 4, -3, 4), 1500, 0.11, 0.03)
    s = [x["place"] for x in document["subjects"]]
    indigo, brown, moss, plum = m.cloth("#a08a6c"), m.cloth("#8a6a50"), m.cloth("#7a7a5e"), m.cloth("#7a5850")
    boots = m.leather("#2a201a")

    def cloak(fig, cloth, long=0.9):
        fig.trousers(m.cloth("#2c2826"))
        fig.coat(cloth, long, 0.15, (0.0, -0.10, 0), 0.05)
        fig.hood(cloth)
        fig.shoes(boots, 0.4)

    def lamp(at, power, strength=2.2, high=0.27):
        props.lantern((at[0], at[1], at[2] - high * 1.02), high, strength)
        places.lamp((at[0], at[1] - 0.02, at[2] - high * 0.6), power, (1, 0.48, 0.14), 0.05)
    one = figures.Figure(s[0], -35, 1.66, "woman", figures.pose("ease", hand_r=(0.26, 0.40, 1.16), elbow_r=(0.8, -0.5, -0.5), curl_r=0.9, finger_r=(0.2, 0.9, 0), palm_r=(0, 0, -1),
                         hand_l=(-0.10, 0.22, 1.16), look=(-12, 4, 0)), skin="#cba084")
    cloak(one, indigo)
    lamp(one.at("grip_r"), 18)
    two = figures.Figure(s[1], 20, 1.80, "man", figures.pose("walk", hand_r=(0.36, 0.30, 1.30), elbow_r=(0.8, -0.4, -0.4), curl_r=0.9, look=(-20, -6, 0)))
    cloak(two, brown)
    two.beard(m.hair("#5a4a3c"))
    lamp(two.at("grip_r"), 10)
    three = figures.Figure(s[2], 45, 1.66, "woman", figures.pose("kneel", lean=(34, 0), hand_r=(0.16, 0.46, 0.24), hand_l=(-0.12, 0.50, 0.20), look=(0, 14, 0)), skin="#cba084")
    cloak(three, moss, 0.8)
    lamp((1.62, -0.50, 0.30), 14, 3.2)
    four = figures.Figure(s[3], -10, 1.75, "man", figures.pose("ease", hand_l=(-0.34, 0.16, 1.02), curl_l=0.9, look=(52, 4, 0)))
    cloak(four, plum)
    lamp(four.at("grip_l"), 6, 1.6)
    forms.ball((4.5, 12.2, 2.72), 0.10, m.glow("#ffb060", 6))
    places.lamp((4.4, 11.9, 2.75), 20, (1, 0.6, 0.25))
    places.puff((-1.2, 2.6, 0.25), (3.4, 1.2, 0.55), 0.32, "#c8d4ff")
    places.puff((2.6, 3.2, 0.25), (3.0, 1.2, 0.5), 0.32, "#c8d4ff")
