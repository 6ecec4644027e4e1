"""Places as strong simple shapes. Where a builder takes a document's surface, it is lit and measured where the document says."""
import math
import random

import bpy
from mathutils import Matrix, Vector, noise

import forms
import materials
import props

V = Vector


def surface(document, words):
    """The document's surface whose name holds the words."""
    return next(s for s in document["surfaces"] if words in s["name"])


def span(s):
    """(from, to, height) of a surface as vectors and a number."""
    return (V((s["from"]["x_m"], s["from"]["y_m"], s["from"]["z_m"])), V((s["to"]["x_m"], s["to"]["y_m"], s["to"]["z_m"])), s["height_m"])


def backdrop(material=None, width=3.5, y=2.0, high=3.2, front=-4.0, bend=0.7):
    """Studio paper or cloth: a wall at y that bends into the floor and runs to the front."""
    m = material or materials.paper("#d8d5cf", 0.0)

    def at_uv(u, v):
        x = (u - 0.5) * width
        long = (y - front - bend) + bend * math.pi / 2 + (high - bend)
        s = v * long
        if s < y - front - bend:
            return x, front + s, 0
        s -= y - front - bend
        if s < bend * math.pi / 2:
            a = s / bend
            return x, y - bend + math.sin(a) * bend, bend * (1 - math.cos(a))
        return x, y, bend + s - bend * math.pi / 2
    return forms.sheet(at_uv, m, 2, 120)


def drape(a, b, high, material, folds=9, depth=0.09, bottom=0.0):
    """A hanging cloth between two points, in folds."""
    a, b = V(a), V(b)
    along = b - a
    back = V((-along.y, along.x, 0)).normalized()

    def at_uv(u, v):
        p = a.lerp(b, u)
        w = math.sin(u * folds * 6.28 + math.sin(u * 13) * 1.2) * depth * (1 - 0.45 * v) + math.sin(u * folds * 2.1) * depth * 0.5
        return p.x + back.x * w, p.y + back.y * w, bottom + v * high
    return forms.sheet(at_uv, material, folds * 16, 12)


def room(width=6.0, y_back=3.0, y_front=-6.0, high=3.0, wall=None, floor=None, ceiling=None, left=True, right=True, back=True):
    """A room that is open toward the camera: floor, back and side walls, and a ceiling where it has a material."""
    wall = wall or materials.stone("#b9b1a2", 0.6, 0.95, 0.01)
    floor = floor or materials.wood("#5d4630", "y")
    deep, mid = y_back - y_front, (y_back + y_front) / 2
    forms.box((0, mid, -0.05), (width, deep, 0.1), floor, bevel=0)
    if back:
        forms.box((0, y_back + 0.1, high / 2), (width + 0.4, 0.2, high), wall, bevel=0)
    for on, s in ((left, -1), (right, 1)):
        if on:
            forms.box((s * (width / 2 + 0.1), mid, high / 2), (0.2, deep, high), wall, bevel=0)
    if ceiling:
        forms.box((0, mid, high + 0.1), (width + 0.4, deep, 0.2), ceiling, bevel=0)


def boards(y_front=-6.0, y_back=4.0, x=3.0, width=0.16, material=None, z=0.0, seed=2):
    """A floor of boards that run away from the camera."""
    chance = random.Random(seed)
    shades = [material] if material else [materials.wood(c, "y", 1.0, 0.5) for c in ("#5a4129", "#634a30", "#523b26", "#6b5036")]
    n = int(2 * x / width)
    for i in range(n):
        centre = -x + (i + 0.5) * width
        forms.box((centre, (y_front + y_back) / 2, z - 0.02), (width - 0.006, y_back - y_front, 0.04), chance.choice(shades), bevel=0.004)


def wall_with_windows(a, b, high, windows, material, thickness=0.25, bars=(3, 5), bar=None, pane=None):
    """An upright wall from a to b with openings: windows is [(middle along the wall in m from a, sill, width, height)]."""
    a, b = V(a), V(b)
    along = (b - a).normalized()
    turn = math.degrees(math.atan2(along.y, along.x))
    long = (b - a).length

    def piece(s0, s1, z0, z1):
        if s1 - s0 > 0.005 and z1 - z0 > 0.005:
            c = a + along * (s0 + s1) / 2
            forms.box((c.x, c.y, a.z + (z0 + z1) / 2), (s1 - s0, thickness, z1 - z0), material, turn, 0.0)
    at = 0.0
    bar = bar or materials.wood("#2d2722", "z")
    for s, sill, w, h in sorted(windows):
        piece(at, s - w / 2, 0, high)
        piece(s - w / 2, s + w / 2, 0, sill)
        piece(s - w / 2, s + w / 2, sill + h, high)
        at = s + w / 2
        c = a + along * s
        across, up = bars
        for i in range(1, across):
            p = c + along * (i / across - 0.5) * w
            forms.box((p.x, p.y, a.z + sill + h / 2), (0.035, 0.05, h), bar, turn, 0)
        for i in range(1, up):
            forms.box((c.x, c.y, a.z + sill + h * i / up), (w, 0.05, 0.035), bar, turn, 0)
        if pane:
            forms.box((c.x, c.y, a.z + sill + h / 2), (w, 0.006, h), pane, turn, 0)
    piece(at, long, 0, high)


def shining_window(centre, width, high, turn_deg=0, strength=1.5, colour="#cfe0f5", bars=(2, 3)):
    """A window that is seen bright: turn_deg 0 faces the camera, 90 faces camera-right."""
    things = [forms.box((0, 0.02, 0), (width, 0.01, high), materials.glow(colour, strength), bevel=0)]
    frame = materials.wood("#3a3129", "z")
    for i in range(bars[0] + 1):
        things.append(forms.box(((i / bars[0] - 0.5) * width, 0, 0), (0.045, 0.05, high), frame, bevel=0.004))
    for i in range(bars[1] + 1):
        things.append(forms.box((0, 0, (i / bars[1] - 0.5) * high), (width, 0.05, 0.045), frame, bevel=0.004))
    return forms.place(things, centre, turn_deg)


def harbour(document, wall="wall", water_z=-0.45, steps=True, wet=0.7):
    """A quay wall of stone courses, a wet quay with steps down, dark water behind."""
    forms.upright(surface(document, wall), materials.courses("#6a6c6b", (0.78, 0.31), "#3b3d3f", bump=0.09, wet=0.5), 0.8, 0.04)
    stone = materials.courses("#5c5d5c", (1.2, 0.8), "#262728", 0.75, 0.03, wet=wet, up="y")
    forms.box((0, -4.2, -0.2), (30, 10.6, 0.4), stone, bevel=0.03)
    if steps:
        for i in range(5):
            forms.box((0, 1.35 + i * 0.42, -0.3 - i * 0.17), (30, 0.42, 0.4), stone, bevel=0.03)
    forms.ground(materials.water("#0b1418", 0.25, 3.0), water_z, 60, centre=(0, 50))


def sea(z=-0.3, y=4.0, material=None, half=120):
    """Open water from y to the horizon."""
    forms.ground(material or materials.water("#142028", 0.35, 1.2), z, half, centre=(0, y + half))


def beach(material=None, z=0.0, rough=0.06, shore_y=7.0):
    """Sand that falls to a sea at shore_y."""
    m = material or materials.stone("#b09a78", 0.3, 0.95, 0.015)
    forms.sheet(lambda u, v: ((u - 0.5) * 60, -8 + v * (shore_y + 12), z + rough * noise.fractal((u * 60, v * 20, 0), 1, 2, 3) - 0.9 * max(v - 0.62, 0)), m, 120, 90)
    sea(z - 0.12, shore_y)


def quarry(document, face="face", floor=None, stone="#c2a878", benches=3, high=None):
    """A worked face in benches behind a dusty stone floor."""
    a, b, full = span(surface(document, face))
    high = high or full
    chance = random.Random(4)
    m = materials.stone(stone, 0.9, 0.95, 0.25)
    y = a.y
    for bench in range(benches):
        z0, z1 = high * bench / benches, high * (bench + 1) / benches
        x = a.x - 6
        while x < b.x + 8:
            w = chance.uniform(0.7, 2.4)
            cut = y + bench * 0.25 + chance.uniform(0, 0.22)
            forms.box((x + w / 2, cut + 3, (z0 + z1) / 2 + chance.uniform(-0.12, 0.1)), (w - 0.01, 6, z1 - z0), m, bevel=0.03, roll_deg=chance.uniform(-0.7, 0.7))
            x += w
    forms.box(((a.x + b.x) / 2, y + benches * 0.25 + 2.5, high / 2 - 0.3), (b.x - a.x + 20, 3.5, high), m, bevel=0)
    forms.ground(floor or materials.stone("#8f8064", 1.0, 0.95, 0.05, 0.35), 0, 24, 0.05, 0.8)
    for _ in range(60):
        x, yy, r = chance.uniform(-9, 9), chance.uniform(2.5, 10.5), abs(chance.gauss(0, 0.16)) + 0.04
        rock((x, yy, r * 0.4), r, m, chance)


def rock(at, size, material, chance, flat=0.7):
    """One broken stone."""
    points = [(V((chance.gauss(0, 1), chance.gauss(0, 1), chance.gauss(0, 1))).normalized() * size * chance.uniform(0.7, 1.1),) for _ in range(14)]
    thing = forms.hull([(V((p[0].x, p[0].y, p[0].z * flat)) + V(at),) for p in points], material, False)
    return thing


def heap(centre, radius, high, material, seed=1, stones=140):
    """A heap of broken stones."""
    chance = random.Random(seed)
    c = V(centre)
    forms.hull([(c + V((0, 0, high * 0.8)), 0.2), (c, radius * 0.85, (0, 0, 1))], material, False)
    for _ in range(stones):
        t, r = chance.uniform(0, 6.28), math.sqrt(chance.random()) * radius
        rock(c + V((math.cos(t) * r, math.sin(t) * r, high * (1 - r / radius) * 0.92)), chance.uniform(0.10, 0.34) * radius / 2, material, chance)


def salt_flat(material=None, far=True, cracks=2.2):
    """White crust in wide plates to the horizon."""
    b = materials.Build("salt", "#e4e2dc", 0.75, specular=0.4)
    cells = b.nodes.new("ShaderNodeTexVoronoi")
    cells.feature = "DISTANCE_TO_EDGE"
    cells.inputs["Scale"].default_value = 1 / cracks
    b.links.new(b.where, cells.inputs["Vector"])
    ridge = b.ramp(cells.outputs["Distance"], 0.0, 0.06, ((1, 1, 1, 1), (0, 0, 0, 1)))
    b.bump(ridge, 0.9, 0.05)
    b.bump(b.noise(5, 6), 0.4, 0.02)
    mix = b.ramp(cells.outputs["Distance"], 0.0, 0.05, (materials.linear("#f4f2ee"), materials.linear("#cfccc4")))
    b.links.new(mix, b.shader.inputs["Base Color"])
    forms.ground(material or b.material, 0, 400, centre=(0, 300))


def mill_stones(at=(0, 0, 0), radius=0.6, material=None, runner=True):
    """A pair of mill stones in a round wooden frame."""
    m, w = material or materials.stone("#8f8a80", 0.2, 0.9, 0.01), materials.wood("#6a4e32", "z")
    forms.lathe([(radius * 1.18, 0), (radius * 1.2, 0.02), (radius * 1.2, 0.42), (radius * 1.12, 0.46), (0, 0.46)], at, w)
    if runner:
        forms.lathe([(0, 0.46), (radius, 0.46), (radius, 0.68), (radius * 0.97, 0.71), (radius * 0.2, 0.71), (radius * 0.2, 0.5)], at, m)


def beams(y, high, long=6.0, count=5, gap=0.8, size=0.16, material=None, along="y"):
    """Ceiling beams from y on."""
    m = material or materials.wood("#3d2b1d", along)
    for i in range(count):
        if along == "y":
            forms.box(((i - (count - 1) / 2) * gap, y, high), (size, long, size * 1.2), m)
        else:
            forms.box((0, y + i * gap, high), (long, size, size * 1.2), m)


def shelves(a, b, high, rows=4, material=None, books=True, seed=1, deep=0.3):
    """Shelves from a to b against a wall, with books of mixed colours."""
    a, b, m, chance = V(a), V(b), material or materials.wood("#4b3422"), random.Random(seed)
    along, turn = (b - a).normalized(), math.degrees(math.atan2((b - a).y, (b - a).x))
    long, step = (b - a).length, high / rows
    for r in range(rows + 1):
        c = (a + b) / 2 + V((0, 0, r * step))
        forms.box(c, (long, deep, 0.03), m, turn)
    for s in (0, 0.5, 1):
        forms.box(a.lerp(b, s) + V((0, 0, high / 2)), (0.035, deep, high), m, turn)
    if books:
        covers = [materials.cloth(c, 200, 0.1) for c in ("#5b2b26", "#2f3d45", "#6b5a34", "#37462f", "#7a6a55", "#40283a", "#8a7a58")]
        for r in range(rows):
            s = 0.05
            while s < long - 0.08:
                w, h = chance.uniform(0.022, 0.06), step * chance.uniform(0.55, 0.88)
                if chance.random() < 0.06:
                    s += chance.uniform(0.05, 0.2)
                    continue
                p = a + along * (s + w / 2) + V((0, 0, r * step + 0.015 + h / 2))
                forms.box(p, (w * 0.94, deep * chance.uniform(0.6, 0.8), h), chance.choice(covers), turn, 0.003, 0, chance.choice((0, 0, 0, 4, -3)))
                s += w


def tiles(a, b, high, size=0.15, colour="#d8dcd6", grout="#8a8f8c", thickness=0.05, rough=0.18):
    """A tiled upright wall from a to b."""
    m = materials.courses(colour, (size, size), grout, rough, 0.012, gap=0.006)
    a, b = V(a), V(b)
    c = (a + b) / 2 + V((0, 0, high / 2))
    return forms.box(c, ((b - a).length, thickness, high), m, math.degrees(math.atan2((b - a).y, (b - a).x)), 0)


def brick_arch(centre, width, high, deep=0.5, material=None, wall_width=None, wall_high=None, turn_deg=0):
    """A brick wall with a round-topped opening in its middle: high is the arch's top."""
    m = material or materials.courses("#8a4a34", (0.24, 0.075), "#5a4a40", gap=0.009, bump=0.02)
    ww, wh, r = wall_width or width * 2, wall_high or high * 1.4, width / 2
    ring = [(-r, 0), (-r, high - r)] + [(-r * math.cos(math.pi * k / 24), high - r + r * math.sin(math.pi * k / 24)) for k in range(1, 24)] + [(r, high - r), (r, 0)]
    outer = [(-ww / 2, 0), (-ww / 2, high - r)] + [(max(-ww / 2, min(ww / 2, -ww / 2 * math.cos(math.pi * k / 24) * 1.5)), wh) for k in range(1, 24)] + [(ww / 2, high - r), (ww / 2, 0)]
    n, points, faces = len(ring), [], []
    for y in (0, deep):
        points += [(x, y, z) for x, z in ring] + [(x, y, z) for x, z in outer]
    for i in range(n - 1):
        faces += [(i, i + 1, n + i + 1, n + i), (2 * n + i + 1, 2 * n + i, 3 * n + i, 3 * n + i + 1), (i + 1, i, 2 * n + i, 2 * n + i + 1)]
    thing = forms.raw(points, faces, m)
    edge = materials.courses("#7a3f2c", (0.12, 0.24), "#4a3a32", gap=0.009, bump=0.02)
    arc = [(-r * math.cos(math.pi * k / 30) * 1.06, -0.02, high - r + r * 1.06 * math.sin(math.pi * k / 30)) for k in range(31)]
    things = [thing]
    for i in range(30):
        p, q = V(arc[i]), V(arc[i + 1])
        angle = math.degrees(math.atan2(q.z - p.z, q.x - p.x))
        things.append(forms.box((p + q) / 2, ((q - p).length * 0.9, 0.10, 0.22), edge, 0, 0.008, 0, -angle))
    return forms.place(things, centre, turn_deg)


def wood_of_trunks(seed=1, count=26, area=(-9, 9, 3, 20), keep=(-1.2, 1.2), leaves=None, floor=None, high=9.0, bark="#3c332b"):
    """A wood: trunks behind the subject, paper leaves on the ground and, with a material, in the branches."""
    chance, m = random.Random(seed), materials.stone(bark, 0.35, 0.95, 0.07)
    forms.ground(floor or materials.stone("#4a3d2c", 0.5, 0.95, 0.05), 0, 26, 0.10, 0.5)
    ends = []
    for _ in range(count):
        y = chance.uniform(area[2], area[3])
        x = chance.uniform(area[0], area[1]) * (0.6 + 0.05 * y)
        if keep[0] < x < keep[1] and y < 8:
            x += math.copysign(2.2, x)
        ends += props.tree((x, y, 0), high * chance.uniform(0.8, 1.2), chance.uniform(0.09, 0.26), m, chance.randint(0, 999), (chance.uniform(-0.6, 0.6), 0), 6 if leaves else 3)
    if leaves:
        scatter_leaves(leaves, [(p.x, p.y, p.z) for p in ends for _ in range(10)], 0.45, 0.16, seed)
    return ends


def scatter_leaves(material, points, spread, size, seed=1, lobes=0):
    """Paper leaves about points, turned by chance."""
    chance = random.Random(seed)
    leaf = props.leaf_mesh(material, size, size * 0.62, lobes)
    matrices = []
    for p in points:
        at = V(p) + V((chance.gauss(0, spread), chance.gauss(0, spread), chance.gauss(0, spread)))
        matrices.append(Matrix.Translation(at) @ Matrix.Rotation(chance.uniform(0, 6.28), 4, "Z") @ Matrix.Rotation(chance.uniform(-1.4, 1.4), 4, "X")
                        @ Matrix.Rotation(chance.uniform(-1, 1), 4, "Y") @ Matrix.Scale(chance.uniform(0.6, 1.25), 4))
    return forms.scatter(leaf, matrices)


def fallen_leaves(materials_list, area=(-4, 4, -4, 8), count=700, size=0.11, z=0.02, seed=3):
    """Paper leaves that lie on the ground."""
    chance = random.Random(seed)
    for m in materials_list:
        leaf = props.leaf_mesh(m, size, size * 0.62)
        forms.scatter(leaf, [forms.at(chance.uniform(area[0], area[1]), chance.uniform(area[2], area[3]), z + chance.uniform(0, 0.03), chance.uniform(0, 360),
                                      chance.uniform(0.6, 1.2), chance.gauss(0, 22), chance.uniform(0, 360)) for _ in range(count // len(materials_list))])


def grass(material, area=(-5, 5, -3, 9), count=2500, high=0.35, seed=1, wind=(0.08, 0)):
    """Blades of paper grass."""
    chance, points, faces = random.Random(seed), [], []
    for _ in range(count):
        x, y = chance.uniform(area[0], area[1]), chance.uniform(area[2], area[3])
        h, t, w = high * chance.uniform(0.4, 1.2), chance.uniform(0, 6.28), 0.006
        a, b = math.cos(t) * w, math.sin(t) * w
        dx, dy = wind[0] + chance.gauss(0, 0.06), wind[1] + chance.gauss(0, 0.06)
        n = len(points)
        points += [(x - a, y - b, 0), (x + a, y + b, 0), (x + a * 0.7 + dx * 0.35, y + b * 0.7 + dy * 0.35, h * 0.6), (x - a * 0.7 + dx * 0.35, y - b * 0.7 + dy * 0.35, h * 0.6), (x + dx * h / high, y + dy * h / high, h)]
        faces += [(n, n + 1, n + 2, n + 3), (n + 3, n + 2, n + 4)]
    return forms.raw(points, faces, material)


def vine_row(a, b, high, materials_list, density=90, deep=0.35, seed=1, size=0.13, low=0.3):
    """A row of vines: posts, wires and lobed paper leaves."""
    chance, a, b = random.Random(seed), V(a), V(b)
    stem = materials.wood("#3a2c1e", "z")
    long = (b - a).length
    for i in range(int(long / 0.9) + 1):
        p = a.lerp(b, min(i * 0.9 / long, 1))
        points = [p + V((chance.gauss(0, 0.05), chance.gauss(0, 0.05), high * k / 4)) for k in range(5)]
        forms.tube(points, [0.03, 0.022, 0.018, 0.014, 0.008], stem, 8, 2)
    for m in materials_list:
        leaf = props.leaf_mesh(m, size, size * 0.95, 5)
        matrices = []
        for _ in range(int(density * long / len(materials_list))):
            p = a.lerp(b, chance.random()) + V((chance.gauss(0, 0.1), chance.gauss(0, deep / 2), chance.uniform(low, high) + chance.gauss(0, 0.05)))
            matrices.append(Matrix.Translation(p) @ Matrix.Rotation(chance.uniform(0, 6.28), 4, "Z") @ Matrix.Rotation(chance.gauss(-0.9, 0.5), 4, "X") @ Matrix.Scale(chance.uniform(0.6, 1.25), 4))
        forms.scatter(leaf, matrices)


def greenhouse_wall(a, b, high, pane=None, bar=None, step=0.55, rows=3):
    """A wall of panes in thin bars."""
    a, b = V(a), V(b)
    turn = math.degrees(math.atan2((b - a).y, (b - a).x))
    m = bar or materials.clay("#4d5a58", 0.5)
    long = (b - a).length
    for i in range(int(long / step) + 1):
        p = a.lerp(b, min(i * step / long, 1))
        forms.box((p.x, p.y, a.z + high / 2), (0.03, 0.05, high), m, turn, 0.004)
    for r in range(rows + 1):
        c = (a + b) / 2
        forms.box((c.x, c.y, a.z + high * r / rows), (long, 0.05, 0.03), m, turn, 0.004)
    c = (a + b) / 2
    if pane:
        forms.box((c.x, c.y, a.z + high / 2), (long, 0.004, high), pane, turn, 0)


def roof_town(y=16.0, z=-9.0, width=60, rows=6, lit=0.35, seed=2, wall="#2c3038", glow="#ffcf8a", strength=0.9):
    """A town below and beyond a roof: dark gabled houses with some windows lit."""
    chance = random.Random(seed)
    walls = [materials.clay(c) for c in (wall, "#33353c", "#2a2b31")]
    roofs, shine = materials.clay("#22242a"), materials.glow(glow, strength)
    for row in range(rows):
        x, yy = -width / 2 - row * 4, y + row * 7
        while x < width / 2 + row * 4:
            w, h, d = chance.uniform(3.2, 6.5), chance.uniform(5.0, 9.0) + row * 0.7, 5.0
            m = chance.choice(walls)
            forms.box((x + w / 2, yy + d / 2, z + h / 2), (w, d, h), m, bevel=0)
            rise = chance.uniform(1.2, 2.4)
            forms.raw([(x - 0.15, yy - 0.2, z + h), (x + w + 0.15, yy - 0.2, z + h), (x + w + 0.15, yy + d, z + h), (x - 0.15, yy + d, z + h), (x, yy + d / 2, z + h + rise), (x + w, yy + d / 2, z + h + rise)],
                      [(0, 1, 5, 4), (2, 3, 4, 5), (0, 4, 3), (1, 2, 5)], roofs)
            if chance.random() < 0.7:
                forms.box((x + w * chance.uniform(0.2, 0.8), yy + d / 2, z + h + rise), (0.6, 0.6, 1.6), m, bevel=0)
            for i in range(int(w / 1.3)):
                for k in range(2):
                    if chance.random() < lit:
                        forms.box((x + 0.8 + i * 1.3, yy - 0.03, z + h - 1.2 - k * 2.2), (0.55, 0.06, 0.85), shine, bevel=0)
            x += w + chance.choice((0, 0, 0, 1.2))


def tram(document, words="tram", number=True, lower="#7a3326", upper="#cfc3a2"):
    """The side of a tram along a document's surface, on wheels over the rail."""
    a, b, high = span(surface(document, words))
    turn = math.degrees(math.atan2((b - a).y, (b - a).x))
    long = (b - a).length
    low, up, dark = materials.clay(lower, 0.35), materials.clay(upper, 0.35), materials.clay("#1a1816", 0.6)
    glass, iron, brass = materials.clay("#20262a", 0.08), materials.metal("#4a4643", 0.5), materials.metal("#b08d4c", 0.3)
    parts = [forms.box((long / 2, -1.1, 1.28), (long, 2.2, 0.92), low, bevel=0.08), forms.box((long / 2, -1.1, 2.28), (long, 2.2, 1.10), up, bevel=0.08),
             forms.box((long / 2, -1.1, high - 0.12), (long + 0.1, 2.3, 0.24), low, bevel=0.1), forms.box((long / 2, 0.012, 1.76), (long, 0.03, 0.05), brass)]
    n = int(long / 1.05)
    for i in range(n):
        parts.append(forms.box((0.55 + i * (long - 0.6) / n, 0.004, 2.28), (0.78, 0.03, 0.78), glass, bevel=0.02))
    for i in range(int(long / 2.4)):
        x = 1.3 + i * 2.4
        wheel_ = forms.lathe([(0, 0), (0.40, 0), (0.42, 0.02), (0.42, 0.10), (0.36, 0.12), (0.30, 0.08), (0.12, 0.08), (0.10, 0.16), (0, 0.16)], (0, 0, 0), iron)
        wheel_.matrix_world = Matrix.Translation((x, -0.18, 0.42)) @ Matrix.Rotation(math.radians(-90), 4, "X")
        parts.append(wheel_)
        parts += [forms.box((x, 0.0, 0.62), (0.26, 0.14, 0.22), dark, bevel=0.02), forms.box((x, -0.02, 0.78), (1.1, 0.08, 0.10), dark, bevel=0.01)]
    parts.append(forms.box((long / 2, -1.1, 0.84), (long, 1.9, 0.10), dark))
    # The surface's left side, seen from its start, faces the walkway.
    for p in parts:
        p.matrix_world = Matrix.Translation(a) @ Matrix.Rotation(math.radians(turn), 4, "Z") @ p.matrix_world
    return parts


def rails(x=0.0, gauge=1.0, y0=-6.0, y1=14.0, material=None, z=0.0):
    """A pair of rails that run away from the camera."""
    m = material or materials.metal("#8a857c", 0.3)
    for s in (1, -1):
        forms.box((x + s * gauge / 2, (y0 + y1) / 2, z + 0.02), (0.06, y1 - y0, 0.06), m, bevel=0.012)


def arcade(y=5.0, count=5, width=1.6, high=3.0, material=None, gap=0.5, centre=0.0, deep=0.6):
    """A row of arches behind the subject."""
    for i in range(count):
        brick_arch((centre + (i - (count - 1) / 2) * (width + gap), y, 0), width, high, deep, material, width + gap, high * 1.35)


def barn(width=7.0, y_back=5.0, high=4.5, material=None, gaps=True, floor=None):
    """A barn of upright boards; with gaps the light behind shows between them."""
    m, chance = material or materials.wood("#5b4935", "z", 1, 0.85, 0.5), random.Random(6)
    forms.ground(floor or materials.stone("#6b5a42", 0.3, 0.95, 0.03), 0, 14, 0.03, 1.5)

    def row(a, b):
        a, b = V(a), V(b)
        long, turn, s = (b - a).length, math.degrees(math.atan2((b - a).y, (b - a).x)), 0.0
        while s < long:
            w = chance.uniform(0.16, 0.26)
            p = a.lerp(b, min((s + w / 2) / long, 1))
            forms.box((p.x, p.y, high / 2), (w, 0.035, high), m, turn, 0.004)
            s += w + (chance.choice((0.004, 0.012, 0.03)) if gaps else 0.002)
    row((-width / 2, y_back, 0), (width / 2, y_back, 0))
    row((-width / 2, -2.0, 0), (-width / 2, y_back, 0))
    row((width / 2, -2.0, 0), (width / 2, y_back, 0))
    for x in (-width / 2 + 0.2, 0, width / 2 - 0.2):
        forms.box((x, y_back - 0.15, high / 2), (0.2, 0.2, high), m)
    forms.box((0, y_back - 0.15, high * 0.72), (width, 0.18, 0.2), m)


def hay(at=(0, 0, 0), size=(1.0, 0.5, 0.45), material=None, seed=1, turn_deg=0):
    """A bale of hay."""
    m, chance = material or materials.stone("#b3954f", 0.08, 1.0, 0.02), random.Random(seed)
    things = [forms.box((0, 0, size[2] / 2), size, m, bevel=0.05)]
    points, faces = [], []
    for _ in range(500):
        p = V((chance.uniform(-0.5, 0.5) * size[0], chance.uniform(-0.5, 0.5) * size[1], chance.random() * size[2]))
        side = chance.randint(0, 4)
        if side == 0:
            p.z = size[2]
        elif side < 3:
            p.y = -size[1] / 2
        else:
            p.x = math.copysign(size[0] / 2, p.x)
        d = V((chance.gauss(0, 1), chance.gauss(0, 0.5), chance.gauss(0, 0.5))).normalized() * 0.09
        n = len(points)
        points += [p - d, p + d, p + d + V((0, 0, 0.005)), p - d + V((0, 0, 0.005))]
        faces.append((n, n + 1, n + 2, n + 3))
    things.append(forms.raw(points, faces, m))
    return forms.place(things, at, turn_deg)


def weir(y=4.0, high=1.6, width=16.0, pool_z=0.0, seed=1):
    """A weir: still water above, a white sheet of water, a pool below."""
    chance = random.Random(seed)
    white = materials.paper("#e6eef0", 0.4)

    def fall(u, v):
        x = (u - 0.5) * width
        t = 1 - v
        return x, y - t**1.6 * 0.9 + 0.05 * noise.noise((x * 3, v * 1.2, 1)) - 0.04 * abs(math.sin(x * 9 + noise.noise((x, v, 0)) * 3)), pool_z + high * (1 - t**1.8) + 0.02 * noise.noise((x * 6, v * 4, 0))
    forms.sheet(fall, white, 220, 40)
    forms.ground(materials.water("#18262a", 0.5, 2.5, 0.1), pool_z, 30, centre=(0, y - 30))
    forms.ground(materials.water("#22343a", 0.1, 0.8, 0.05), pool_z + high, 30, centre=(0, y + 30))
    forms.specks(white, lambda c: (c.uniform(-width / 2, width / 2), y - 0.9 + c.gauss(0, 0.22), pool_z + abs(c.gauss(0, 0.13))), 1600, 0.014, chance)


def fence(a, b, material=None, high=1.0, step=1.6, rails_=2):
    """Posts and rails."""
    a, b, m = V(a), V(b), material or materials.wood("#5a4a38")
    n = max(int((b - a).length / step), 1)
    for i in range(n + 1):
        p = a.lerp(b, i / n)
        forms.box(p + V((0, 0, high / 2)), (0.10, 0.10, high), m, 0, 0.01, 0, (i * 37 % 5 - 2))
    for r in range(rails_):
        z = V((0, 0, high * (0.45 + 0.4 * r)))
        forms.rod(a + z, b + z, 0.035, m)


def air(low=(-5, -5, 0), high=(5, 8, 5), density=0.02, colour="#ffffff", forward=0.3):
    """Air in a box that shows beams of light; noisy, so give FINISH 64 samples and keep the density low."""
    size = [b - a for a, b in zip(low, high)]
    return forms.box([(a + b) / 2 for a, b in zip(low, high)], size, materials.haze(density, colour, forward), bevel=0)


def puff(centre, radii, density, colour="#ffffff", forward=0.4, ambient=0.0):
    """A soft cloud of dust, breath or steam: thick in its middle, nothing at its edge; ambient is its own faint brightness."""
    m = materials.haze(0, colour, forward)
    nodes, links = m.node_tree.nodes, m.node_tree.links
    where, fall, turb, mul, scale = (nodes.new(n) for n in ("ShaderNodeTexCoord", "ShaderNodeTexGradient", "ShaderNodeTexNoise", "ShaderNodeMath", "ShaderNodeMath"))
    fall.gradient_type = "SPHERICAL"
    turb.inputs["Scale"].default_value, turb.inputs["Detail"].default_value = 2.2, 4
    links.new(where.outputs["Object"], fall.inputs[0])
    links.new(where.outputs["Object"], turb.inputs[0])
    edge = nodes.new("ShaderNodeMapRange")
    edge.inputs["From Min"].default_value, edge.inputs["From Max"].default_value = 0.42, 0.68
    links.new(turb.outputs["Fac"], edge.inputs[0])
    mul.operation = scale.operation = "MULTIPLY"
    links.new(fall.outputs["Fac"], mul.inputs[0])
    links.new(edge.outputs[0], mul.inputs[1])
    links.new(mul.outputs[0], scale.inputs[0])
    scale.inputs[1].default_value = density
    links.new(scale.outputs[0], nodes["Volume Scatter"].inputs["Density"])
    if ambient:
        shine, both = nodes.new("ShaderNodeEmission"), nodes.new("ShaderNodeAddShader")
        shine.inputs[0].default_value = materials.linear(colour)
        dim = nodes.new("ShaderNodeMath")
        dim.operation = "MULTIPLY"
        dim.inputs[1].default_value = ambient
        links.new(scale.outputs[0], dim.inputs[0])
        links.new(dim.outputs[0], shine.inputs[1])
        links.new(nodes["Volume Scatter"].outputs[0], both.inputs[0])
        links.new(shine.outputs[0], both.inputs[1])
        links.new(both.outputs[0], nodes["Material Output"].inputs["Volume"])
    thing = forms.ball((0, 0, 0), 1, m)
    thing.matrix_world = Matrix.Translation(centre) @ Matrix.Diagonal((*radii, 1))
    return thing


def lamp(at, power=20, colour=(1, 0.7, 0.35), radius=0.05):
    """A lamp of the place itself (not the document's): a point that shines; power in Blender's watts."""
    light = bpy.data.lights.new("lamp", "POINT")
    light.energy, light.color, light.shadow_soft_size = power, colour, radius
    thing = bpy.data.objects.new("lamp", light)
    thing.location = at
    bpy.context.scene.collection.objects.link(thing)
    return thing


def panel_light(at, toward, width, high, level, colour=(1, 1, 1), seen=False):
    """Light that comes through a window or door of the place: level is stops against the exposure at the point toward."""
    import lights
    at, toward = V(at), V(toward)
    light = bpy.data.lights.new("opening", "AREA")
    light.shape, light.size, light.size_y, light.color = "RECTANGLE", width, high, colour
    light.spread = math.radians(165)
    light.energy = math.pi * 2**level / lights.per_watt(at, toward, toward, (at - toward).normalized(), ("rectangle", width, high), light.spread)
    thing = bpy.data.objects.new("opening", light)
    thing.location = at
    thing.rotation_euler = (toward - at).to_track_quat("-Z", "Y").to_euler()
    thing.visible_camera = seen
    bpy.context.scene.collection.objects.link(thing)
    return thing
