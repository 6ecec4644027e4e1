"""Places and props of the indoor scenes: a skirt in a turn, chapel, curved shelves, drained bath, kitchen wall, lids and lips."""
import math
import random

from mathutils import Matrix, Vector as V

import forms
import materials as m
import places
import props


def see_through(colour, through, rough=0.85):
    """Cloth or paper of which a share of the light comes through, without mottle."""
    b = m.Build("thin", colour, rough, specular=0.15, sheen=0.2)
    thin, mix = b.nodes.new("ShaderNodeBsdfTranslucent"), b.nodes.new("ShaderNodeMixShader")
    thin.inputs[0].default_value = m.linear(colour)
    mix.inputs[0].default_value = through
    b.links.new(b.shader.outputs[0], mix.inputs[1])
    b.links.new(thin.outputs[0], mix.inputs[2])
    b.links.new(mix.outputs[0], b.nodes["Material Output"].inputs[0])
    return b.material


def bell(centre, waist, reach, drop, material, folds=17, tilt=(0, 0), swirl=0.9, depth=0.05, comma=None):
    """A wide skirt in a turn: centre is the waist, reach the hem's radius, drop how far it falls; folds run out in a spiral."""
    c = V(centre)

    def at(u, v):
        a = 2 * math.pi * u
        r = waist + (reach - waist) * v
        turned = a + swirl * v
        wave = math.sin(folds * turned + 0.8 * math.sin(3 * a))
        wide = 1 + 0.07 * v * math.sin(2 * a + 0.6)
        low = -drop * (0.25 * v + 0.75 * v * v) + 0.10 * v * math.sin(2 * a - 0.5) + depth * wave * v ** 1.2
        if comma is not None:
            low -= 0.30 * v * v * math.exp(-((a - comma) / 0.16) ** 2)
        x, y = math.cos(a) * r * wide, math.sin(a) * r * wide
        return c.x + x, c.y + y, c.z + low + x * tilt[0] + y * tilt[1]
    return forms.sheet(at, material, 420, 40)


def chapel(document, panels=("#3d4a48", "#6a5238"), lime="#c3bbab", pictures=()):
    """Bare chapel: boards, lime-washed walls, the gallery's painted panels along the document's surface, a dark loft above them."""
    a, b, _ = places.span(places.surface(document, "gallery"))
    places.boards(-6, a.y, 4.4, 0.2)
    forms.upright(places.surface(document, "gallery"), m.wood(panels[0], "z", 0.8, 0.6, 0.2), 0.3)
    rail = m.wood("#6b4a2c")
    n = 9
    step = (b.x - a.x) / n
    for i in range(n):
        x = a.x + step * (i + 0.5)
        forms.box((x, a.y - 0.03, 1.25), (step * 0.76, 0.05, 2.1), m.wood(panels[0], "z", 0.8, 0.6, 0.2), bevel=0.02)
        face = m.wood(pictures[i % len(pictures)] if pictures else panels[1], "z", 0.8, 0.6, 0.2)
        forms.box((x, a.y - 0.05, 3.35), (step * 0.72, 0.06, 1.15), face, bevel=0.03)
        forms.rod((a.x + step * i, a.y - 0.25, 0), (a.x + step * i, a.y - 0.25, 2.6), 0.07, rail)
    forms.box((0, a.y - 0.22, 2.62), (b.x - a.x, 0.42, 0.16), rail)
    forms.box((0, a.y - 0.14, 4.05), (b.x - a.x, 0.3, 0.14), rail)
    wall = m.stone(lime, 0.7, 0.95, 0.012)
    forms.box((-4.45, 1, 2.6), (0.3, 12, 5.2), wall, bevel=0)
    forms.box((4.45, 1, 2.6), (0.3, 12, 5.2), wall, bevel=0)
    return a, b


def curved_shelves(radius=3.6, middle_y=1.7, half_deg=75, high=4.4, rows=12, covers=None, wood="#3b2818", seed=4, brass=True):
    """Bookshelves round a reading room: the wall's middle is at middle_y, its ends come forward."""
    chance = random.Random(seed)
    frame = m.wood(wood, "z")
    covers = [m.cloth(c, 200, 0.1) for c in covers or ("#5b2b26", "#6b3526", "#4a2a20", "#6b5a34", "#37362f", "#7a5a3a", "#40283a", "#8a6a48")]
    centre = V((0, middle_y - radius, 0))
    bays, step = 10, high / rows
    for k in range(bays):
        a0, a1 = (math.radians(90 + half_deg - 2 * half_deg * (k + e) / bays) for e in (0, 1))
        p0, p1 = (centre + V((math.cos(a), math.sin(a), 0)) * (radius + 0.12) for a in (a0, a1))
        along = (p1 - p0).normalized()
        turn = math.degrees(math.atan2(along.y, along.x))
        long = (p1 - p0).length
        back = V((-along.y, along.x, 0))
        forms.box((p0 + p1) / 2 + back * 0.13 + V((0, 0, high / 2)), (long + 0.1, 0.04, high), frame, turn, 0)
        forms.box(p0 + V((0, 0, high / 2)) - back * 0.02, (0.09, 0.30, high), frame, turn, 0.01)
        for r in range(rows + 1):
            forms.box((p0 + p1) / 2 + V((0, 0, r * step)), (long, 0.27, 0.028), frame, turn, 0.004)
        for r in range(rows):
            s = 0.06
            while s < long - 0.07:
                w, h = chance.uniform(0.024, 0.06), step * chance.uniform(0.60, 0.86)
                if chance.random() < 0.02:
                    s += chance.uniform(0.03, 0.09)
                    continue
                p = p0 + along * (s + w / 2) + V((0, 0, r * step + 0.014 + h / 2)) - back * 0.02
                forms.box(p, (w * 0.93, 0.19 * chance.uniform(0.85, 1), h), chance.choice(covers), turn, 0.003, 0, chance.choice((0, 0, 0, 0, 4, -3)))
                s += w
    forms.lathe([(0, -0.01), (radius + 0.6, -0.01)], centre, m.wood("#4a3220", "x"), 8)
    if brass:
        bright = m.metal("#b08a4a", 0.3)
        ring = [centre + V((math.cos(math.radians(t)), math.sin(math.radians(t)), 0)) * (radius - 0.12) + V((0, 0, 2.55)) for t in range(90 - half_deg, 91 + half_deg, 3)]
        forms.tube(ring, 0.018, bright, 10)


def face(fig, lip="#9a5a50", lash="#1d1512", shut=0.6):
    """Lids, lashes and lips for a head seen close; shut 0..1 is how far the lids are down."""
    q, R, k = fig.head_point, fig.R_head, fig.head_scale
    dark = m.clay(lash, 0.6)
    for s in (1, -1):
        ball = forms.blob([forms.egg(q(s * 0.031, 0.074, -0.001), [0.0155 * k, 0.0115 * k, 0.0125 * k], R)], fig.skin, 0.0028, 4)
        fig._place(ball)
        arc = []
        for i in range(9):
            t = math.radians(-75 + 150 * i / 8)
            low = 0.0065 * shut
            arc.append(q(s * 0.031 + math.sin(t) * 0.0155, 0.0745 + math.cos(t) * 0.0122, -0.001 - low * math.cos(t) - 0.001))
        fig._place(forms.tube(arc, [0.0006, 0.0010, 0.0014, 0.0015, 0.0016, 0.0015, 0.0014, 0.0010, 0.0006], dark, 8, 1))
        brow = [q(s * x, y, z) for x, y, z in ((0.014, 0.0905, 0.026), (0.030, 0.0890, 0.032), (0.046, 0.0770, 0.030), (0.054, 0.069, 0.024))]
        fig._place(forms.tube(brow, [0.0016, 0.0028, 0.0024, 0.0010], dark, 8, 2))
    soft = m.Build("lip", lip, 0.4, specular=0.4).material
    upper = [[(q(-0.023, 0.0755, -0.0665), 0.0026), (q(-0.005, 0.0845, -0.0630), 0.0052)], [(q(-0.005, 0.0845, -0.0630), 0.0052), (q(0.005, 0.0845, -0.0630), 0.0052), (q(0, 0.0835, -0.0668), 0.0050)],
             [(q(0.023, 0.0755, -0.0665), 0.0026), (q(0.005, 0.0845, -0.0630), 0.0052)]]
    lower = [[(q(-0.018, 0.0760, -0.0690), 0.0030), (q(0, 0.0835, -0.0715), 0.0068)], [(q(0.018, 0.0760, -0.0690), 0.0030), (q(0, 0.0835, -0.0715), 0.0068)]]
    fig._place(forms.blob(upper, soft, 0.0022, 3))
    fig._place(forms.blob(lower, soft, 0.0022, 3))


def beads(fig, count, seed=2, size=0.0022, low=0.2, high=1.1):
    """Drops of water on the brow of a head."""
    q, chance = fig.head_point, random.Random(seed)
    wet = m.Build("drop", "#b8a89e", 0.05, specular=0.9)
    wet.set("Clearcoat", 1.0)
    things = []
    for _ in range(count):
        a, e = chance.uniform(-1.1, 1.1), chance.uniform(low, high)
        p = q(math.sin(a) * math.cos(e) * 0.0735, -0.016 + math.cos(a) * math.cos(e) * 0.0935, 0.030 + math.sin(e) * 0.0835)
        r = size * chance.choice((0.35, 0.45, 0.6, 0.8, 1.2))
        things.append(fig._place(forms.ball(p, (r, r * 0.8, r * 1.15), wet.material)))
    return things


def goose(at=(0, 0, 0), turn_deg=0, scale=1.0):
    """A white goose, neck long, beak to camera-left (turn_deg 0); feet at the place, about 0.85 high."""
    b = m.Build("feather", "#e6e2da", 0.8, specular=0.2, sheen=0.3)
    b.bump(b.noise(26, 3, b.stretch(1, 1.6, 1.8)), 0.3, 0.02)
    b.bump(b.noise(120, 2), 0.2, 0.004)
    white, orange, dark = b.material, m.clay("#d07a2a", 0.45), m.Build("eye", "#0c0a0a", 0.08, specular=1.0).material
    body = forms.limb(((-0.17, 0, 0.33), 0.125), ((-0.02, 0, 0.29), 0.165), ((0.14, 0, 0.30), 0.135), ((0.27, 0, 0.33), 0.075), ((0.38, 0, 0.37), 0.028))
    neck = forms.limb(((-0.16, 0, 0.36), 0.105), ((-0.215, 0, 0.46), 0.066), ((-0.205, 0, 0.57), 0.046), ((-0.175, 0, 0.67), 0.040), ((-0.175, 0, 0.745), 0.041), ((-0.205, 0, 0.790), 0.048), ((-0.255, 0, 0.785), 0.034))
    belly = forms.limb(((-0.10, 0, 0.22), 0.10), ((0.12, 0, 0.20), 0.10))
    things = [forms.blob(body + neck + belly, white, 0.008, 8)]
    for s in (1, -1):
        for i, (x, z, r, k) in enumerate(((0.02, 0.345, 0.075, 0.30), (0.10, 0.325, 0.060, 0.30), (0.17, 0.345, 0.045, 0.26))):
            wing = forms.blob([[((x - 0.12, s * 0.135, z - 0.01), r), ((x + 0.05, s * 0.140, z), r * 0.9), ((x + k, s * 0.06, z + 0.03 - 0.012 * i), 0.012)]], white, 0.007, 5)
            things.append(wing)
        things.append(forms.ball((-0.232, s * 0.0415, 0.800), 0.0095, dark))
        things.append(forms.tube([(0.02, s * 0.07, 0.16), (0.02, s * 0.075, 0.03)], 0.014, orange, 10))
        foot = forms.hull([((0.03, s * 0.075, 0.012), 0.012), ((-0.10, s * 0.13, 0.008), 0.008), ((-0.11, s * 0.075, 0.008), 0.008), ((-0.10, s * 0.02, 0.008), 0.008)], orange)
        things.append(foot)
    bill = [[((-0.275, 0, 0.785), 0.026), ((-0.325, 0, 0.768), 0.019), ((-0.372, 0, 0.755), 0.011)], [((-0.265, 0, 0.808), 0.016), ((-0.30, 0, 0.790), 0.014)]]
    things.append(forms.blob([bill[0][:2], bill[0][1:], bill[1]], orange, 0.004, 4))
    return forms.place(things, at, turn_deg, scale)


def cup(at, radius=0.042, high=0.058, glaze=None, milk=None):
    """A thin bowl-shaped cup without a handle; with a material, milk in it."""
    g = glaze
    r, h = radius, high
    outer = [(0, 0.004), (r * 0.50, 0.004), (r * 0.52, 0), (r * 0.56, 0), (r * 0.56, 0.006), (r * 0.72, h * 0.18), (r * 0.90, h * 0.48), (r * 0.98, h * 0.8), (r, h)]
    inner = [(r - 0.0016, h + 0.0004), (r * 0.955, h * 0.8), (r * 0.86, h * 0.48), (r * 0.66, h * 0.2), (r * 0.4, h * 0.12), (0, h * 0.11)]
    things = [forms.lathe(_smooth(outer + inner, 2), (0, 0, 0), g, 72)]
    if milk:
        things.append(forms.lathe([(0, h * 0.84), (r * 0.950, h * 0.84), (r * 0.962, h * 0.855)], (0, 0, 0), milk, 72))
    return forms.place(things, at)


def _smooth(profile, times=2):
    for _ in range(times):
        fine = [profile[0]]
        for (a, b), (c, d) in zip(profile, profile[1:]):
            fine += [(a * 0.75 + c * 0.25, b * 0.75 + d * 0.25), (a * 0.25 + c * 0.75, b * 0.25 + d * 0.75)]
        profile = [*fine, profile[-1]]
    return profile


def bath(far_y=6.0, half=6.0, high=3.2, front=-8.0, lines=(-3.6, -1.2, 1.2, 3.6), line="#2c5a58", gallery=True, white="#d9dfdb", size=0.15, wall_green=1.35):
    """A drained bath: tiled floor with lane lines, tiled walls with a sea-green band, an iron gallery above the far wall."""
    grout = "#7f8a88"
    floor = m.courses(white, (size, size), grout, 0.30, 0.006, gap=0.006, up="y")
    forms.box((0, (far_y + front) / 2, -0.05), (2 * half, far_y - front, 0.1), floor, bevel=0)
    dark = m.courses(line, (size, size), "#223a3a", 0.25, 0.006, gap=0.006, up="y")
    for x in lines:
        forms.box((x, (far_y + front) / 2 - 0.6, 0.0), (0.24, far_y - front - 1.2, 0.006), dark, bevel=0)
        forms.box((x, far_y - 1.2, 0.0), (0.9, 0.24, 0.006), dark, bevel=0)
    places.tiles((-half, far_y + 0.025, 0), (half, far_y + 0.025, 0), high, size, white, grout)
    places.tiles((-half - 0.025, front, 0), (-half - 0.025, far_y, 0), high, size, white, grout)
    places.tiles((half + 0.025, front, 0), (half + 0.025, far_y, 0), high, size, white, grout)
    green = m.courses("#3f7d6f", (size, size), "#2f5a52", 0.2, 0.01, gap=0.006)
    forms.box((0, far_y - 0.004, wall_green), (2 * half, 0.02, size * 2), green, bevel=0)
    forms.box((0, far_y - 0.004, high - size), (2 * half, 0.02, size * 2), green, bevel=0)
    for s in (1, -1):
        forms.box((s * (half - 0.004), (far_y + front) / 2, wall_green), (0.02, far_y - front, size * 2), green, bevel=0)
    if gallery:
        iron, boards = m.clay("#4a6a66", 0.5), m.wood("#4a5552", "z")
        forms.box((0, far_y + 0.5, high + 0.06), (2 * half + 2, 1.3, 0.12), m.stone("#9aa39e", 0.5, 0.8, 0.01), bevel=0.02)
        forms.box((0, far_y + 2.0, high + 1.6), (2 * half + 2, 0.2, 3.2), boards, bevel=0)
        for z in (0.55, 1.05):
            forms.rod((-half - 1, far_y + 0.1, high + z), (half + 1, far_y + 0.1, high + z), 0.024, iron)
        for i in range(int(4 * half) + 1):
            x = -half + i * 0.5
            forms.rod((x, far_y + 0.1, high + 0.1), (x, far_y + 0.1, high + 1.05), 0.018 if i % 4 else 0.045, iron)


def steps(at, high, width=0.46, material=None, rung=0.30):
    """A bath's iron ladder, upright against a wall that faces the camera: at is its foot in the middle."""
    bright = material or m.metal("#c9cdd0", 0.22)
    x, y, z = at
    for s in (1, -1):
        forms.tube([(x + s * width / 2, y, z + 0.25), (x + s * width / 2, y, z + high), (x + s * width / 2, y + 0.04, z + high + 0.75), (x + s * width / 2, y + 0.5, z + high + 0.8), (x + s * width / 2, y + 0.55, z + high)], 0.020, bright, 12, 2)
    n = int(high / rung)
    for i in range(1, n + 1):
        forms.box((x, y - 0.02, z + i * rung), (width, 0.09, 0.025), bright, bevel=0.008)


def grating(at, radius=0.32):
    """A round drain grating with bars over a dark hole."""
    x, y, z = at
    iron = m.metal("#b59a6a", 0.4)
    forms.lathe([(0, 0.006), (radius, 0.006)], at, m.clay("#0a0806", 0.9))
    forms.lathe([(radius, 0.004), (radius, 0.022), (radius + 0.05, 0.022), (radius + 0.055, 0.0)], at, iron)
    for i in range(-4, 5):
        k = i * radius / 4.6
        r = math.sqrt(max(radius**2 - k**2, 0))
        forms.box((x + k, y, z + 0.016), (radius * 0.10, 2 * r, 0.012), iron, bevel=0.003)


def thrown_coat(at, material, lining, pitch=-38, turn=0, roll=0, scale=1.0):
    """A heavy coat in the air, spread, its lining seen from below: at is the middle of its shoulders."""
    def shell(grow):
        def at_uv(u, v):
            a = math.radians(-68 + 316 * u)
            fold = math.sin(7 * a + 1.2) * 0.055 * v ** 1.4 + 0.03 * math.sin(13 * a) * v * v
            rx = (0.13 + 0.10 * min(v * 5, 1) + 0.40 * v ** 1.1 + fold) * grow
            ry = (0.09 + 0.06 * min(v * 5, 1) + 0.34 * v ** 1.1 + fold) * grow
            flip = 0.20 * math.exp(-((u - 0.06) / 0.10) ** 2) * v * v + 0.13 * math.exp(-((u - 0.95) / 0.08) ** 2) * v * v
            return math.cos(a) * rx, math.sin(a) * ry, 0.06 - 1.05 * v + 0.10 * v * math.sin(3 * a) + flip
        return at_uv
    things = [forms.sheet(shell(1.0), material, 150, 40, 0.012), forms.sheet(shell(0.955), lining, 150, 40)]
    for s, hand in ((1, (0.60, -0.22, -0.62)), (-1, (-0.74, -0.10, -0.40))):
        path = [(s * 0.14, 0, 0.02), (s * 0.30, -0.02, -0.03), (hand[0] * 0.78, -0.10, hand[2] * 0.50), hand]
        things.append(forms.tube(path, [0.12, 0.10, 0.09, 0.105], material, 24, 3))
        end = V(hand)
        things.append(forms.rod(end, end + (end - V(path[2])).normalized() * 0.004, 0.090, m.clay("#b0aaa0")))
    ring = [(0.13 * math.cos(t), 0.095 * math.sin(t), 0.075 + 0.02 * math.sin(t)) for t in (2 * math.pi * i / 30 + 2.0 for i in range(27))]
    things.append(forms.tube(ring, 0.042, material, 14))
    return forms.place(things, at, turn, scale, pitch, roll)


def bundle(at, turn_deg=0, wrap="#e4dccb", skin="#d8ab8c"):
    """A baby wrapped in a shawl, its head at its right."""
    cloth = m.cloth(wrap, 220, 0.6)
    things = [forms.blob(forms.limb(((0.10, 0, 0.0), 0.085), ((-0.08, 0, -0.02), 0.095), ((-0.24, 0, -0.06), 0.060)) + [[((0.14, 0.02, 0.02), 0.080)]], cloth, 0.009, 6),
              forms.ball((0.185, 0.045, 0.040), (0.060, 0.058, 0.062), m.skin(skin)), forms.ball((0.200, 0.012, 0.048), (0.074, 0.066, 0.078), cloth)]
    return forms.place(things, at, turn_deg)


def singing(fig):
    """A mouth open on a round vowel."""
    q, R, k = fig.head_point, fig.R_head, fig.head_scale
    fig._place(forms.blob([forms.egg(q(0, 0.0795, -0.070), [0.0125 * k, 0.0075 * k, 0.0165 * k], R)], m.clay("#2a1210", 0.8), 0.003, 2))
    ring = [q(0.0145 * math.cos(t), 0.0825 - 0.004 * abs(math.cos(t)), -0.070 + 0.018 * math.sin(t)) for t in (2 * math.pi * i / 24 for i in range(25))]
    fig._place(forms.tube(ring, 0.0040 * k, m.Build("lip", "#a05a50", 0.5).material, 8))


def baths_hall(far_y=12.0, half=7.0):
    """The whole hall by night: pool floor with lane lines as low ridges, cubicle doors, clock wall, roof of rods and rafters."""
    grout, white = "#76817f", "#d5dcd8"
    floor = m.courses(white, (0.3, 0.3), grout, 0.32, 0.010, gap=0.010, up="y")
    forms.box((0, 1.5, -0.05), (12, 21, 0.1), floor, bevel=0)
    line = m.clay("#23504f", 0.4)
    for x in (-4.4, -2.2, 0, 2.2, 4.4):
        forms.box((x, 1.2, 0.0), (0.26, 19.4, 0.07), line, bevel=0.01)
    forms.box((-1.80, 1.2, 0.0), (0.10, 19.4, 0.035), m.clay("#3b6a68", 0.4), bevel=0.01)
    tile = m.courses(white, (0.3, 0.2), grout, 0.25, 0.01, gap=0.008)
    forms.box((0, far_y + 0.15, 3.3), (2 * half + 2, 0.3, 6.6), tile, bevel=0)
    green = m.courses("#3f7d6f", (0.3, 0.2), "#2f5a52", 0.2, 0.01, gap=0.008)
    forms.box((0, far_y - 0.01, 1.3), (2 * half + 2, 0.04, 0.4), green, bevel=0)
    forms.box((0, far_y - 0.01, 5.2), (2 * half + 2, 0.04, 0.2), green, bevel=0)
    clock = forms.lathe([(0, 0.05), (0.68, 0.05), (0.72, 0.09), (0.80, 0.08), (0.82, 0.0)], (0, 0, 0), m.clay("#e4e2d8", 0.5))
    hands = [forms.box((0.0, 0.21, 0.07), (0.05, 0.46, 0.02), m.clay("#141414")), forms.box((0.15, -0.06, 0.07), (0.36, 0.06, 0.02), m.clay("#141414"), -22)]
    ticks = [forms.box((math.sin(t) * 0.58, math.cos(t) * 0.58, 0.06), (0.05, 0.12, 0.012), m.clay("#141414"), -math.degrees(t)) for t in (math.pi * i / 6 for i in range(12))]
    forms.place([clock, *hands, *ticks], (0, far_y - 0.02, 3.7), 0, 1, 90)
    door, post = m.wood("#5f7d78", "z"), m.clay("#c9cfc8", 0.5)
    for s in (-1, 1):
        forms.box((s * 6.4, 4.0, 0.06), (0.9, 16, 0.28), m.stone("#9fa8a2", 0.5, 0.7, 0.01), bevel=0.02)
        for i in range(8):
            y = 4.6 + i * 0.92
            forms.box((s * 6.85, y, 1.25), (0.06, 0.80, 1.75), door, 9 if i == 3 else 0, 0.01)
            forms.box((s * 6.9, y - 0.46, 1.3), (0.16, 0.09, 2.2), post, bevel=0.01)
        forms.box((s * 6.95, 8.0, 2.5), (0.5, 8.2, 0.18), post, bevel=0.02)
        rail = m.clay("#7f928e", 0.5)
        for z in (3.0, 3.35, 3.7):
            forms.rod((s * 6.75, 4, z), (s * 6.75, far_y, z), 0.03, rail)
        for i in range(9):
            forms.rod((s * 6.75, 4 + i, 2.5), (s * 6.75, 4 + i, 5.9 if i % 2 == 0 else 3.75), 0.05 if i % 2 == 0 else 0.02, rail)
    night = m.clay("#20282c", 0.9)
    for s in (-1, 1):
        forms.box((s * 9.7, 2, 3.2), (0.2, 22, 6.4), night, bevel=0)
        forms.box((s * 4.0, 4, 7.45), (9.2, 20, 0.05), night, 0, 0, 0, s * 20)
    steel = m.clay("#8fa6b4", 0.5)
    for y in (-1.0, 2.2, 5.4, 8.6, 11.6):
        forms.rod((-7, y, 6.0), (7, y, 6.0), 0.035, steel)
        for s in (-1, 1):
            forms.rod((s * 7, y, 5.9), (0, y, 8.6), 0.08, steel)
            forms.rod((s * 2.4, y, 6.0), (s * 2.4, y, 7.65), 0.025, steel)
            forms.rod((s * 2.4, y, 7.6), (0, y, 6.0), 0.025, steel)
    for s in (-1, 1):
        for k in (0.15, 0.5, 0.85):
            forms.rod((s * 7 * (1 - k), -2, 5.9 + 2.7 * k), (s * 7 * (1 - k), 12, 5.9 + 2.7 * k), 0.04, steel)
    box = m.wood("#b08a5a", "z")
    forms.box((5.45, 11.1, 1.05), (1.7, 1.3, 2.1), box, bevel=0.02)
    forms.box((5.45, 11.0, 2.18), (2.0, 1.7, 0.14), m.wood("#7a5632"), bevel=0.02)
    forms.box((5.45, 10.44, 1.45), (1.1, 0.04, 0.75), m.glow("#ff9a3c", 0.55), bevel=0)
    for x in (4.9, 5.27, 5.63, 6.0):
        forms.box((x, 10.42, 1.45), (0.05, 0.05, 0.8), m.wood("#5a3a20", "z"), bevel=0)
    for z in (1.05, 1.85):
        forms.box((5.45, 10.42, z), (1.2, 0.05, 0.06), m.wood("#5a3a20"), bevel=0)


def ghost(colour, strength, solid=0.35):
    """A see-through shine: a blur of something that moved, or a drop out of focus."""
    b = m.Build("ghost", colour)
    clear, shine, mix = b.nodes.new("ShaderNodeBsdfTransparent"), b.nodes.new("ShaderNodeEmission"), b.nodes.new("ShaderNodeMixShader")
    shine.inputs[0].default_value, shine.inputs[1].default_value = m.linear(colour), strength
    mix.inputs[0].default_value = solid
    b.links.new(clear.outputs[0], mix.inputs[1])
    b.links.new(shine.outputs[0], mix.inputs[2])
    b.links.new(mix.outputs[0], b.nodes["Material Output"].inputs[0])
    return b.material


def handbell(mouth, grip, scale=1.0, brass=None):
    """A handbell from the middle of its mouth to its leather grip's end."""
    brass = brass or m.metal("#d8a548", 0.22, 0.1)
    a, b = V(mouth), V(grip)
    profile = [(0.0, 0.145), (0.02, 0.145), (0.034, 0.132), (0.044, 0.095), (0.052, 0.05), (0.068, 0.015), (0.080, 0.0), (0.076, 0.0), (0.060, 0.02), (0.044, 0.06), (0.0, 0.10)]
    cup_ = forms.lathe([(r * scale, z * scale) for r, z in profile], (0, 0, 0), brass, 40)
    loop = forms.tube([(0.012, 0, 0.14), (0.032, 0, 0.20), (0.020, 0, 0.27), (-0.020, 0, 0.27), (-0.032, 0, 0.20), (-0.012, 0, 0.14)], 0.010, m.leather("#2a1a12"), 10, 2)
    ball = forms.ball((0, 0, 0.012), 0.016, m.metal("#5a5a5c", 0.4))
    turn = (b - a).to_track_quat("Z", "Y").to_matrix().to_4x4()
    for thing in (cup_, loop, ball):
        thing.matrix_world = Matrix.Translation(a) @ turn @ thing.matrix_world
    return cup_


def kitchen(wall_y=2.6, half=3.5, high=2.6, range_x=0.3, iron=True):
    """The lower kitchen: smoke-brown plaster, flagged floor, an iron range in its wall."""
    forms.box((0, wall_y + 0.1, high / 2), (2 * half, 0.2, high), m.stone("#6e5a45", 0.5, 0.95, 0.012), bevel=0)
    forms.box((0, -1.5, -0.05), (9, 2 * wall_y + 6, 0.1), m.courses("#7d7669", (0.75, 0.55), "#4a453c", 0.7, 0.02, up="y"), bevel=0)
    for s in (1, -1):
        forms.box((s * (half + 0.1), -1, high / 2), (0.2, 8, high), m.stone("#6e5a45", 0.5, 0.95, 0.012), bevel=0)
    if not iron:
        return
    black, bright, x = m.Build("iron", "#17171a", 0.45, specular=0.5).material, m.metal("#a9a49a", 0.3), range_x
    forms.box((x, wall_y - 0.30, 0.45), (1.7, 0.6, 0.9), black, bevel=0.02)
    forms.box((x, wall_y - 0.34, 0.92), (1.85, 0.72, 0.06), black, bevel=0.01)
    for dx, w in ((-0.55, 0.46), (0.0, 0.46), (0.55, 0.46)):
        forms.box((x + dx, wall_y - 0.62, 0.48), (w, 0.05, 0.56), black, bevel=0.015)
        forms.rod((x + dx - w * 0.32, wall_y - 0.67, 0.58), (x + dx + w * 0.32, wall_y - 0.67, 0.58), 0.012, bright)
    forms.rod((x - 0.9, wall_y - 0.72, 0.86), (x + 0.9, wall_y - 0.72, 0.86), 0.014, bright)
    forms.box((x, wall_y - 0.32, 2.1), (2.2, 0.66, 0.9), m.stone("#5e4c3a", 0.5, 0.95, 0.012), bevel=0.02)
    forms.lathe([(0, 0), (0.14, 0), (0.15, 0.16), (0.13, 0.20), (0.03, 0.22), (0, 0.22)], (x - 0.4, wall_y - 0.4, 0.95), black)
    forms.lathe([(0, 0), (0.20, 0), (0.20, 0.18), (0, 0.18)], (x + 0.45, wall_y - 0.4, 0.95), m.metal("#a8643a", 0.3))


def paper_barge(at, turn):
    """Two metres of lath and paper on a bread trolley, three lanterns in it."""
    paper = see_through("#f2e4c8", 0.6)
    lath, iron = m.wood("#8a6a44", "x"), m.metal("#4a4a4c", 0.5)
    long, wide, high = 2.0, 0.62, 0.46

    def side(s):
        def at_uv(u, v):
            x = (u - 0.5) * long
            t = 2 * u - 1
            beam = max(1 - abs(t) ** 2.4, 0.0) ** 0.8 if t < 0 else 1 - 0.45 * t ** 3
            sheer = high * (1 + 0.45 * max(-t, 0) ** 2.2 + 0.22 * max(t, 0) ** 2)
            crease = 0.012 * abs(math.sin(u * 8 * math.pi)) * beam
            y = s * (wide / 2 * beam * (0.45 + 0.55 * v ** 0.7) - crease)
            return x, y, sheer * v
        return at_uv
    things = [forms.sheet(side(s), paper, 64, 16) for s in (1, -1)]
    floor = forms.sheet(lambda u, v: ((u - 0.5) * long * 0.98, (v - 0.5) * wide * 0.45 * max(1 - abs(2 * u - 1) ** 2.4, 0.02) ** 0.8, 0.005), paper, 40, 4)
    things.append(floor)
    for i in range(9):
        u = i / 8
        for s in (1, -1):
            f = side(s)
            things.append(forms.tube([V(f(min(max(u, 0.005), 0.995), v / 8)) + V((0, s * 0.006, 0)) for v in range(9)], 0.008, lath, 8))
    for s in (1, -1):
        f = side(s)
        things.append(forms.tube([V(f(u / 40, 1.0)) for u in range(41)], 0.013, lath, 8))
    things.append(forms.rod((-0.15, 0, 0), (-0.15, 0, 1.18), 0.016, lath, 0.010))
    things.append(forms.tube([(0.95, 0, 0.5), (1.12, 0, 0.62), (0.55, 0, 0.74)], 0.014, lath, 8))
    forms.place(things, at + V((0, 0, 0.34)), turn)
    for x, z in ((-0.62, 0.50), (-0.14, 0.80), (0.52, 0.50)):
        p = at + V((x * math.cos(math.radians(turn)) + 0.02, x * math.sin(math.radians(turn)) - 0.03, z))
        props.lantern(p, 0.24, 1.4)
    for x in (-0.5, 0.45):
        p = at + V((x * math.cos(math.radians(turn)), x * math.sin(math.radians(turn)), 0.58))
        places.lamp(p, 7, (1, 0.42, 0.10), 0.06)
    wheel = []
    wheel.append(forms.box((0, 0, 0.29), (1.5, 0.5, 0.05), m.wood("#5a4632")))
    for x in (-0.6, 0.6):
        for y in (-0.2, 0.2):
            wheel += props.wheel((x, y, 0.12), 0.12, iron, 6, 0.014, 0.03, "y") or []
    forms.place([w for w in wheel if w], at, turn)
