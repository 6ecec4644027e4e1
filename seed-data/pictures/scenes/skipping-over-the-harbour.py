"""A lean boxer at the top of his jump over dark roof felt, rope under his boots, a bar of orange in a deep blue north."""
import figures
import forms
import materials as m
import more_coast as coast
import places
import props

CAPTION = "A lean boxer in shorts and boots hangs in the air over dark roof felt, his skipping rope a bright wire under his feet; behind him deep blue sky with a bar of orange at the horizon."
CAMERA = dict(portrait=True, zoom=1.3, aim_move=(-0.1, 0, 0.03))
WORLD = dict(sky=[(0, (2.6, 1.25, 0.28)), (0.075, (2.4, 1.15, 0.30)), (0.13, (1.3, 0.95, 0.55)), (0.24, (0.5, 0.62, 0.75)), (0.6, (0.22, 0.36, 0.62)), (1, (0.15, 0.27, 0.5))], seen=0.75)
FINISH = dict(contrast=0.2, bloom=0.09, vignette=0.16)


def build(document):
    """The roof and the boxer."""
    forms.ground(m.stone("#2c2a2b", 0.25, 0.85, 0.012, 0.2), 0, 30)
    tar = m.stone("#17161a", 0.6, 0.7, 0.02)
    forms.upright(places.surface(document, "parapet"), tar, 0.35)
    forms.box((0, 6.15, 1.12), (10.4, 0.5, 0.09), tar)
    chimney = m.clay("#15151a")
    for x, y, w, h in ((-4.8, 9, 1.0, 2.4), (5.6, 10, 1.3, 2.0), (6.5, 14, 0.7, 4.2)):
        forms.box((x, y, h / 2), (w, w, h), chimney)
        for k in (-0.25, 0.25):
            forms.rod((x + k * w, y, h), (x + k * w, y, h + 0.4), 0.12, chimney)
    forms.rod((-3.0, 12, 0), (-3.0, 12, 4.4), 0.05, chimney)
    forms.rod((-3.0, 12, 3.6), (-0.8, 12, 4.6), 0.04, chimney)
    him = figures.Figure((0, 0, 0.29), 10, 1.69, "man", figures.pose(
        "stand", pelvis=(0, -0.02, 0.92), lean=(6, 2), hips=4, look=(-10, 6, 3), foot_r=(0.10, 0.10, 0.16), foot_l=(-0.10, -0.16, 0.22), toe_r=(-8, 42), toe_l=(10, 62),
        hand_r=(0.40, 0.20, 0.98), hand_l=(-0.40, 0.20, 1.00), elbow_r=(0.1, -0.9, -0.5), elbow_l=(-0.1, -0.9, -0.5), curl_r=0.95, curl_l=0.95, glove="#cfc6b4",
        finger_r=(0.75, 0.5, -0.25), finger_l=(-0.75, 0.5, -0.25)), skin="#a9765a")
    coast.shorts(him, m.silk("#8a1f22", 0.5))
    him.belt(m.cloth("#d8d0bd"), 0.026, 0.012)
    him.shoes(m.leather("#1b1a1c"), 0.55)
    him.hair(m.hair("#1c1614"), "crop")
    r, l = him.at("grip_r"), him.at("grip_l")
    wire = m.cloth("#e8dfcb", 200, 0.1)
    foot = him.at("ankle_r")
    props.rope([r, (r.x - 0.24, r.y - 0.1, 0.72), (r.x - 0.16, -0.16, 0.24), (foot.x - 0.10, -0.18, 0.07), (0.05, -0.16, 0.05), (0.34, -0.16, 0.12),
                (l.x + 0.20, -0.1, 0.42), (l.x + 0.22, l.y, 0.80), l], wire, 0.006, 4)
    for p in (r, l):
        forms.rod(p, p + (p - him.at((0, 0.2, 1.05))).normalized() * 0.09, 0.014, m.wood("#7a4a28"))
