"""Three children on a wooden sledge lean into a bend; a fan of snow, lit through, flies up behind them."""
import math
import random

import figures
import forms
import materials as m
import more_land
import places
import props

CAPTION = "Three children in red, yellow and blue woollen hats lean a wooden sledge into a bend, the middle one half off, scarves flying. A fan of snow stands white in the light before blue beech trunks."
CAMERA = dict(zoom=2.15, aim_move=(0.16, 0, -0.16))
WORLD = dict(sky=[(0, (0.9, 1.0, 1.1)), (1, (0.75, 0.9, 1.1))], seen=0.9, ground=0.9)
FINISH = dict(samples=26, contrast=0.12, saturation=1.12, push=0.6, bloom=0.12, vignette=0.06, mist=(45, (0.30, 0.36, 0.45)), mist_from=8)


def build(document):
    """The slope, the sledge and the three."""
    more_land.painted_sky([(0, "#dfe8f2"), (0.3, "#c3d3e6"), (1, "#9db6d4")], 40, 110, -4, 30, 0.1, 0.2, 0.8)
    snow = m.stone("#eef2f8", 0.8, 0.8, 0.015)
    forms.ground(snow, 0, 10, 0.07, 0.7)
    more_land.hill(snow, 9, 1.7, 7.0, 40, 0.3)
    bark = m.stone("#6a6660", 0.5, 0.9, 0.06)
    chance = random.Random(9)
    for i in range(17):
        x, y = -7 + i * 0.95 + chance.uniform(-0.3, 0.3), chance.uniform(8.5, 15)
        if -0.7 < x < 0.9:
            continue
        props.tree((x, y, 1.2), 9, chance.uniform(0.12, 0.28), bark, i, (0.3, 0), 5)
    turn = -60
    more_land.snow_sledge((0, 0, 0.03), turn, -8, 1.7)
    r = math.radians(turn)
    ahead = (math.sin(r), -math.cos(r))
    rows = [(0.50, 1.12, "child", "#c0392b", "#f1e2c0", "#2f5a8a", 13), (0.0, 1.22, "child", "#e2b32c", "#b5482e", "#7a3a3a", 26), (-0.64, 1.36, "child", "#2f66a8", "#d0672c", "#4a6a3c", 12)]
    for n, (s, high, kind, hat, scarf, coat, tilt) in enumerate(rows):
        k = high / 1.75
        seat, x = 0.36 / k, ahead[0] * s + (0.0 if n != 1 else 0.04)
        changes = dict(pelvis=(0, 0, seat), lean=(4 - 8 * n, tilt), look=(8 - 10 * n, -4, tilt * 0.4), foot_r=(0.20, 0.62, seat - 0.06), foot_l=(-0.20, 0.62, seat - 0.06),
                       toe_r=(-10, -30), toe_l=(10, -30), knee_r=(0.3, 0.3, 1), knee_l=(-0.3, 0.3, 1), hand_r=(0.22, 0.34, seat + 0.14), hand_l=(-0.22, 0.34, seat + 0.14), curl_r=0.8, curl_l=0.8, glove="#3a2f2a")
        if n == 1:
            changes.update(pelvis=(-0.16, 0, seat + 0.04), lean=(-10, -16), hand_l=(-0.62, 0.16, seat + 0.52), foot_l=(-0.60, 0.45, seat - 0.16), look=(10, -14, -8), curl_l=0.1, finger_l=(-0.5, 0, 1))
        if n == 2:
            changes.update(hand_r=(0.40, 0.05, seat + 0.50), curl_r=0.2)
        kid = figures.Figure((x, ahead[1] * s, 0.02), turn + 22, high, kind, figures.pose("sit", **changes), skin="#d6a78c")
        kid.trousers(m.cloth("#3c3a40"), 0.026)
        kid.top(m.cloth(coat, 160, 0.6), 0.04, 0.95, 0.05)
        kid.shoes(m.leather("#4a2f22"), 0.5)
        kid.hair(m.hair("#5a3a22"), "crop")
        kid.beanie(m.cloth(hat, 110, 0.3))
        kid.scarf(m.cloth(scarf, 120), 0.3, (-0.22, -0.55, 0.16))
        forms.ball(kid.at(kid.head_point(0, -0.03, 0.155)), 0.032, m.cloth(scarf, 60))
    white = m.paper("#ffffff", 0.5)

    def fan(c):
        t, a = c.random() ** 0.7, c.uniform(0, 1)
        out = 0.25 + 1.75 * t
        return (0.25 + out * (0.55 + 0.45 * a) + c.gauss(0, 0.05), 0.15 + 0.75 * a * t + c.gauss(0, 0.1), 0.04 + max(1.25 * t * (1.25 - t) * (0.35 + 0.65 * a) + c.gauss(0, 0.05), 0))
    forms.specks(white, fan, 2600, 0.011, random.Random(1))
    forms.specks(white, lambda c: (-0.55 + c.gauss(0, 0.22), -0.55 + c.gauss(0, 0.2), 0.03 + abs(c.gauss(0, 0.13))), 700, 0.009, random.Random(2))
    for at, size, dense in (((1.0, 0.5, 0.35), (0.75, 0.4, 0.5), 3.0), ((1.6, 0.7, 0.6), (0.75, 0.45, 0.65), 2.2), ((-0.6, -0.6, 0.1), (0.5, 0.35, 0.22), 2.5)):
        places.puff(at, size, dense, "#ffffff", 0.5)
