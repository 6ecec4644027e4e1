"""More props and places for the quarry, wood, barn, brickworks and mill scenes."""
import math
import random

import bpy
from mathutils import Matrix, Vector, noise

import forms
import materials

V = Vector


def painted_sky(stops, y=60.0, wide=140.0, low=-8.0, high=60.0, scale=0.06, amount=0.4, strength=1.0, stretch=(1, 1, 2), detail=6):
    """A far painted cloth that only the camera sees: stops are (0 low .. 1 high, "#colour"), blown about by noise."""
    b = materials.Build("sky", "#000000")
    split, level = b.nodes.new("ShaderNodeSeparateXYZ"), b.nodes.new("ShaderNodeMapRange")
    b.links.new(b.where, split.inputs[0])
    level.inputs["From Min"].default_value, level.inputs["From Max"].default_value = low, high
    level.clamp = False
    b.links.new(split.outputs[2], level.inputs[0])
    blown, add = b.nodes.new("ShaderNodeMath"), b.nodes.new("ShaderNodeMath")
    blown.operation = "MULTIPLY_ADD"
    blown.inputs[1].default_value, blown.inputs[2].default_value = amount, -amount / 2
    b.links.new(b.noise(scale, detail, b.stretch(*stretch), 0.6), blown.inputs[0])
    b.links.new(blown.outputs[0], add.inputs[0])
    b.links.new(level.outputs[0], add.inputs[1])
    ramp = b.nodes.new("ShaderNodeValToRGB")
    ends = ramp.color_ramp.elements
    for n, (at, colour) in enumerate(stops):
        spot = ends[n] if n < 2 else ends.new(at)
        spot.position, spot.color = at, materials.linear(colour)
    b.links.new(add.outputs[0], ramp.inputs[0])
    shine = b.nodes.new("ShaderNodeEmission")
    shine.inputs[1].default_value = strength
    b.links.new(ramp.outputs[0], shine.inputs[0])
    b.links.new(shine.outputs[0], b.nodes["Material Output"].inputs[0])
    cloth = forms.raw([(-wide / 2, y, low), (wide / 2, y, low), (wide / 2, y, high), (-wide / 2, y, high)], [(0, 1, 2, 3)], b.material)
    return only_seen(cloth)


def only_seen(thing):
    """The camera sees the thing, light does not."""
    thing.visible_diffuse = thing.visible_glossy = thing.visible_shadow = thing.visible_transmission = thing.visible_volume_scatter = False
    return thing


def chalk(text, at, size=0.05, material=None):
    """Upright letters that face the camera."""
    curve = bpy.data.curves.new("chalk", "FONT")
    curve.body, curve.size, curve.extrude, curve.align_x = text, size, 0.0006, "CENTER"
    curve.materials.append(material or materials.clay("#d8d6d0", 0.95))
    thing = bpy.data.objects.new("chalk", curve)
    thing.matrix_world = Matrix.Translation(at) @ Matrix.Rotation(math.radians(90), 4, "X")
    bpy.context.scene.collection.objects.link(thing)
    return thing


def straw(material, where, count, long=0.16, seed=1, flat=0.25):
    """Loose straws: where(chance) gives a point; flat is how steep they may lie."""
    chance, points, faces = random.Random(seed), [], []
    for _ in range(count):
        p = V(where(chance))
        d = V((chance.gauss(0, 1), chance.gauss(0, 1), chance.gauss(0, flat))).normalized() * long * chance.uniform(0.4, 1)
        side = d.orthogonal().normalized() * 0.0028
        up = d.cross(side).normalized() * 0.0028
        n = len(points)
        points += [p - d / 2 + side, p - d / 2 - side + up, p - d / 2 - side - up, p + d / 2 + side, p + d / 2 - side + up, p + d / 2 - side - up]
        faces += [(n, n + 1, n + 4, n + 3), (n + 1, n + 2, n + 5, n + 4), (n + 2, n, n + 3, n + 5)]
    return forms.raw(points, faces, material)


def hill(material, y=6.0, high=2.0, deep=5.0, wide=24.0, rough=0.12, start=None):
    """A bank that rises behind the subject from y - deep to y."""
    a = y - deep if start is None else start
    return forms.sheet(lambda u, v: ((u - 0.5) * wide, a + v * (deep + 6), -0.4 * math.exp(-v * 18) + high * (0.5 - 0.5 * math.cos(min(v * (deep + 6) / deep, 1) * math.pi))
                                     + rough * noise.fractal((u * wide, v * 8, 3), 1, 2, 3)), material, 90, 60)


def hammer(head, grip, material=None, weight=1.0):
    """A sledge hammer from its head to the end of its shaft."""
    a, b = V(head), V(grip)
    along = (b - a).normalized()
    across = along.cross(V((0, 1, 0))).normalized()
    forms.rod(a - along * 0.03, b, 0.015, materials.wood("#a07a4c", "x"), 0.013)
    iron = material or materials.metal("#6a6c6e", 0.45)
    forms.hull([(a + across * s * 0.085 * weight, r, across) for s, r in ((1, 0.026), (0.8, 0.036), (-0.8, 0.036), (-1, 0.026))], iron, False)


def lurcher(at, material, turn_deg=0, scale=1.0):
    """A lean dog in a tight turn: its feet under it, nose to the camera's right, ears blown back."""
    limb = forms.limb
    g = limb(((-0.36, 0.26, 0.49), 0.095), ((-0.22, 0.17, 0.575), 0.078), ((-0.04, 0.06, 0.53), 0.10), ((0.12, -0.03, 0.475), 0.122), ((0.21, -0.09, 0.49), 0.105))
    g += limb(((0.16, -0.05, 0.56), 0.075), ((0.29, -0.14, 0.64), 0.060), ((0.39, -0.22, 0.70), 0.056))
    g += [[((0.40, -0.23, 0.705), 0.060), ((0.46, -0.28, 0.69), 0.047)], [((0.46, -0.28, 0.685), 0.042), ((0.60, -0.37, 0.635), 0.021)]]
    for y, d in ((0.0, 0.0), (0.13, -0.06)):
        g += limb(((-0.34 + d, 0.22 + y, 0.47), 0.095), ((-0.17 + d, 0.15 + y, 0.31), 0.056), ((-0.31 + d * 0.5, 0.22 + y, 0.17), 0.028), ((-0.10 - d * 1.4, 0.12 + y, 0.035), 0.021), ((-0.04 - d * 1.4, 0.09 + y, 0.025), 0.024))
    g += limb(((0.16, -0.11, 0.44), 0.066), ((0.08, -0.10, 0.30), 0.036), ((0.17, -0.13, 0.17), 0.024), ((0.02, -0.07, 0.07), 0.020), ((0.06, -0.09, 0.045), 0.023))
    g += limb(((0.22, 0.00, 0.44), 0.066), ((0.22, 0.02, 0.30), 0.036), ((0.33, -0.05, 0.21), 0.024), ((0.20, 0.0, 0.10), 0.020), ((0.24, -0.02, 0.075), 0.023))
    g += limb(((-0.43, 0.31, 0.50), 0.030), ((-0.56, 0.40, 0.40), 0.019), ((-0.70, 0.46, 0.42), 0.013), ((-0.80, 0.48, 0.50), 0.008))
    for y in (0.05, -0.045):
        g.append([((0.385, -0.22 + y, 0.745), 0.018), ((0.30, -0.17 + y * 1.5, 0.775), 0.014), ((0.25, -0.14 + y * 1.6, 0.765), 0.006)])
    body = forms.blob(g, material, 0.0075, 14)
    nose = forms.ball((0.615, -0.38, 0.637), 0.017, materials.clay("#100e0d", 0.3))
    eyes = [forms.ball((0.452, -0.318, 0.722), 0.009, materials.clay("#0c0a08", 0.15))]
    return forms.place([body, nose, *eyes], at, turn_deg, scale)


def brick_vault(path, width, spring, rise, material, back, brick=(0.30, 0.15), seed=1):
    """A barrel vault of real bricks along a path of (x, y): walls up to spring, then an arc of a given rise."""
    chance, gone = random.Random(seed), 0.0
    points = [V((x, y, 0)) for x, y in path]
    profile = [(-width / 2, z) for z in _steps(0, spring, brick[1])]
    fine = [(-width / 2 * math.cos(math.pi * k / 400), spring + rise * math.sin(math.pi * k / 400)) for k in range(401)]
    for (x0, z0), (x1, z1) in zip(fine, fine[1:]):
        gone += math.hypot(x1 - x0, z1 - z0)
        if gone >= brick[1]:
            profile.append((x1, z1))
            gone -= brick[1]
    profile += [(width / 2, z) for z in _steps(0, spring, brick[1])[::-1]]
    stone = forms.box((0, 0, 0), (brick[0] - 0.012, 0.12, brick[1] - 0.012), material, 0, 0.012)
    matrices = []
    for a, b in zip(points, points[1:]):
        along = (b - a).normalized()
        side = V((along.y, -along.x, 0))
        count = max(int((b - a).length / brick[0]), 1)
        for i in range(count):
            at = a.lerp(b, (i + 0.5) / count)
            for k, (x, z) in enumerate(profile):
                x0, z0 = profile[max(k - 1, 0)]
                x1, z1 = profile[min(k + 1, len(profile) - 1)]
                across = (side * (x1 - x0) + V((0, 0, z1 - z0))).normalized()
                out = along.cross(across)
                p = at + side * x + V((0, 0, z)) + along * (brick[0] / 2 if k % 2 else 0) + out * chance.gauss(0, 0.009)
                frame = Matrix((along, out, across)).transposed().to_4x4()
                matrices.append(Matrix.Translation(p) @ frame @ Matrix.Rotation(chance.gauss(0, 0.02), 4, "X"))
    copies = forms.scatter(stone, matrices)
    grown = [(x * 1.012, z + (0.05 if z > 0.3 else 0)) for x, z in profile]

    def shell(u, v):
        f = v * (len(points) - 1)
        i = min(int(f), len(points) - 2)
        along = (points[i + 1] - points[i]).normalized()
        at = points[i].lerp(points[i + 1], f - i)
        x, z = grown[min(int(u * (len(grown) - 1) + 0.5), len(grown) - 1)]
        return at + V((along.y, -along.x, 0)) * x + V((0, 0, z))
    forms.sheet(shell, back, len(grown) - 1, max(len(points) * 3, 6))
    return copies


def _steps(a, b, step):
    return [a + step * (i + 0.5) for i in range(int((b - a) / step))]


def brocade(colour, bright, scale=14.0):
    """Heavy curtain cloth with a woven pattern that shines."""
    b = materials.Build("brocade", colour, 0.6, specular=0.35, sheen=0.5)
    magic = b.nodes.new("ShaderNodeTexMagic")
    magic.turbulence_depth = 3
    magic.inputs["Scale"].default_value, magic.inputs["Distortion"].default_value = scale, 1.6
    b.links.new(b.where, magic.inputs["Vector"])
    b.links.new(b.ramp(magic.outputs["Fac"], 0.46, 0.58, (materials.linear(colour), materials.linear(bright))), b.shader.inputs["Base Color"])
    b.links.new(b.ramp(magic.outputs["Fac"], 0.46, 0.58, ((0.85,) * 3 + (1,), (0.35,) * 3 + (1,))), b.shader.inputs["Roughness"])
    b.bump(magic.outputs["Fac"], 0.35, 0.006)
    b.bump(b.noise(5, 2, b.stretch(1.6, 1.6, 0.5), 0.4), 0.8, 0.05)
    return b.material


def wing(top, tip, length, material, drift=(0, 0, 0), folds=5, depth=0.05, back=(0, 1, 0)):
    """Cloth that hangs from an arm: from the shoulder to the wrist, longest in its middle."""
    a, b, d, k = V(top), V(tip), V(drift), V(back)

    def at_uv(u, v):
        p = a.lerp(b, u) + V((0, 0, -0.03 + 0.03 * math.sin(u * math.pi)))
        fall = length * (0.62 + 0.38 * math.sin(min(u * 1.15, 1) * math.pi * 0.62 + 0.3)) * v
        wave = math.sin(u * folds * 6.28 + v * 1.2) * depth * v**0.8
        return p + V((0, 0, -fall)) + k * wave + d * v * v
    return forms.sheet(at_uv, material, 60, 40, 0.01)


def scales(at, width=0.34, drop=0.24, material=None, turn_deg=0, tip_deg=0, pan=0.07):
    """A hand balance hanging from a point: beam, threads and two pans; tip_deg lowers the camera-left pan."""
    m = material or materials.metal("#c9a24e", 0.28)
    tip, things = math.radians(tip_deg), []
    things += [forms.rod((0, 0, 0), (0, 0, -0.05), 0.004, m), forms.ball((0, 0, -0.06), 0.011, m)]
    ends = [V((s * width / 2 * math.cos(tip), 0, -0.06 + s * width / 2 * math.sin(tip))) for s in (-1, 1)]
    things.append(forms.tube([ends[0], V((0, 0, -0.05)), ends[1]], [0.004 + width * 0.008, 0.008 + width * 0.012, 0.004 + width * 0.008], m, 8, 2))
    for e in ends:
        low = e + V((0, 0, -drop))
        for t in range(3):
            a = 2 * math.pi * t / 3 + 0.5
            things.append(forms.rod(e, low + V((math.cos(a) * pan * 0.95, math.sin(a) * pan * 0.95, 0)), 0.0014, m, sides=6))
        things.append(forms.lathe([(0, -0.022), (pan * 0.6, -0.018), (pan, 0.0), (pan, 0.004), (pan * 0.58, -0.012), (0, -0.016)], low, m, 32))
    return forms.place(things, at, turn_deg)


def snow_sledge(at=(0, 0, 0), turn_deg=0, roll_deg=0, long=1.45, wide=0.44, high=0.26):
    """A wooden sledge that heads toward the camera."""
    m, things = materials.wood("#a8713e", "y", 1, 0.5), []
    for s in (1, -1):
        x = s * wide / 2
        things.append(forms.tube([(x, long / 2, 0.03), (x, 0, 0.02), (x, -long / 2 + 0.1, 0.03), (x, -long / 2 - 0.08, 0.10), (x, -long / 2 - 0.10, 0.24), (x, -long / 2 - 0.02, 0.33)], 0.019, m, 10, 3))
        for y in (-0.35, 0.05, 0.45):
            things.append(forms.rod((x, y * long, 0.03), (x * 0.9, y * long, high), 0.016, m))
    for i in range(5):
        things.append(forms.box(((i - 2) * wide / 5, 0.04, high), (wide / 5 - 0.012, long * 0.92, 0.022), m, 0, 0.004))
    things.append(forms.rod((-wide / 2, -long / 2 - 0.02, 0.33), (wide / 2, -long / 2 - 0.02, 0.33), 0.018, m))
    return forms.place(things, at, turn_deg, 1, 0, roll_deg)


def speckled(light="#e8dcc4", dark="#1d1916", scale=70.0, share=0.5):
    """Feathers: pale with dark speckles."""
    b = materials.Build("speckled", light, 0.8, specular=0.2, sheen=0.2)
    cells = b.nodes.new("ShaderNodeTexVoronoi")
    cells.inputs["Scale"].default_value = scale
    b.links.new(b.stretch(1, 1.4, 1), cells.inputs["Vector"])
    b.links.new(b.ramp(cells.outputs["Distance"], share - 0.08, share + 0.04, (materials.linear(dark), materials.linear(light))), b.shader.inputs["Base Color"])
    b.bump(cells.outputs["Distance"], 0.5, 0.006)
    return b.material


def hen(at, turn_deg=0, material=None, scale=1.0):
    """A hen that sits asleep, heading camera-left, its head sunk on its breast; about 0.36 long."""
    m, limb = material or speckled(), forms.limb
    g = [[((0.03, 0, 0.10), 0.100), ((-0.07, 0, 0.095), 0.098), ((0.0, 0.03, 0.085), 0.09), ((0.0, -0.03, 0.085), 0.09)]]
    g += limb(((0.08, 0, 0.12), 0.075), ((0.17, 0, 0.20), 0.048), ((0.21, 0, 0.255), 0.018))
    g += [[((0.16, 0.02, 0.19), 0.03), ((0.16, -0.02, 0.19), 0.03), ((0.24, 0.012, 0.24), 0.012), ((0.19, 0, 0.275), 0.010)]]
    g += limb(((-0.08, 0, 0.13), 0.078), ((-0.125, 0, 0.20), 0.052), ((-0.150, 0, 0.232), 0.040))
    g += [[((-0.155, -0.01, 0.235), 0.035), ((-0.172, -0.012, 0.224), 0.026)]]
    body = forms.blob(g, m, 0.0055, 7)
    wing_ = forms.blob([[((-0.03, -0.085, 0.11), 0.045), ((0.08, -0.082, 0.105), 0.040), ((0.16, -0.06, 0.15), 0.012)]], m, 0.005, 5)
    red, horn = materials.clay("#b3261c", 0.5), materials.clay("#c99a4a", 0.4)
    comb = forms.blob([[((-0.185 + 0.018 * i, -0.006, 0.268 + 0.012 * (i % 2)), 0.0075), ((-0.165 + 0.01 * i, -0.006, 0.255), 0.009)] for i in range(4)]
                      + [[((-0.192, -0.02, 0.205), 0.009), ((-0.188, -0.022, 0.186), 0.010)], [((-0.172, -0.040, 0.228), 0.011)]], red, 0.0035, 3)
    beak = forms.rod((-0.192, -0.012, 0.224), (-0.222, -0.014, 0.205), 0.0085, horn, 0.001)
    lid = forms.tube([(-0.172, -0.0455, 0.240), (-0.178, -0.0445, 0.236), (-0.184, -0.0415, 0.238)], 0.0022, materials.clay("#1a1512"), 6)
    return forms.place([body, wing_, comb, beak, lid], at, turn_deg, scale)


def shawl(fig, material, low=0.14, slack=0.05):
    """A cloth about the shoulders, crossed on the breast."""
    j, C = fig.joints, fig.R_chest
    back = j["chest"] + C @ V((0, -0.10, -0.06))
    groups = []
    for s, side in ((1, "r"), (-1, "l")):
        sh, neck = j["shoulder_" + side], j["neck"] + C @ V((s * 0.05, -0.01, 0.0))
        arm = sh.lerp(j["elbow_" + side], 0.55)
        groups.append([(neck, 0.04), (sh, 0.065), (back, 0.05), (j["neck"] + C @ V((0, -0.06, 0.0)), 0.04)])
        groups.append([(sh, 0.068), (arm, 0.070), (back + C @ V((s * 0.10, 0, -0.02)), 0.045)])
        groups.append([(neck + C @ V((0, 0.04, 0)), 0.03), (sh + C @ V((0, 0.05, -0.02)), 0.045), (j["chest"] + C @ V((-s * 0.02, 0.13, -low)), 0.026), (j["chest"] + C @ V((s * 0.09, 0.11, -low * 0.6)), 0.035)])
    return fig._wear(groups, material, 0.011, 6, fig._creases(0.009, 18))


def lamb(at, turn_deg=0, material=None, scale=1.0):
    """A new lamb lying across a lap, its head at camera-left and lifted a little; about 0.5 long."""
    m, limb = material or materials.cloth("#d9cfba", 60, 1.2, 0.2), forms.limb
    g = limb(((0.17, 0, 0.10), 0.088), ((0.02, 0, 0.115), 0.080), ((-0.13, 0, 0.11), 0.078), ((-0.20, -0.02, 0.17), 0.050), ((-0.245, -0.03, 0.215), 0.045))
    g += [[((-0.25, -0.03, 0.215), 0.047), ((-0.325, -0.06, 0.175), 0.026)], [((-0.24, 0.035, 0.225), 0.014), ((-0.20, 0.085, 0.195), 0.011)], [((-0.235, -0.085, 0.215), 0.014), ((-0.18, -0.12, 0.175), 0.011)]]
    g += limb(((-0.14, -0.04, 0.06), 0.045), ((-0.20, -0.13, 0.03), 0.027), ((-0.13, -0.155, -0.07), 0.019), ((-0.14, -0.16, -0.13), 0.019), ((-0.155, -0.165, -0.15), 0.019))
    g += limb(((-0.10, -0.05, 0.06), 0.045), ((-0.10, -0.14, 0.02), 0.027), ((0.00, -0.165, 0.0), 0.019), ((0.05, -0.165, -0.01), 0.019))
    g += limb(((0.18, -0.04, 0.07), 0.070), ((0.08, -0.135, 0.03), 0.036), ((0.20, -0.155, -0.005), 0.022), ((0.12, -0.165, -0.06), 0.018), ((0.10, -0.17, -0.08), 0.019))
    g += limb(((0.25, 0.0, 0.11), 0.022), ((0.31, -0.02, 0.04), 0.017), ((0.32, -0.02, -0.04), 0.012))
    body = forms.blob(g, m, 0.007, 5)
    nose = forms.ball((-0.345, -0.067, 0.170), 0.011, materials.clay("#2a211e", 0.3))
    return forms.place([body, nose], at, turn_deg, scale)


def ewe_head(at, turn_deg=0, scale=1.0, wool="#b8ab92", face="#2c2622"):
    """The head and neck of a ewe that looks to camera-left."""
    w, limb = materials.cloth(wool, 40, 1.5), forms.limb
    dark = materials.cloth(face, 150, 0.2)
    head = forms.blob([[((0, 0, 0), 0.085), ((-0.20, 0, -0.09), 0.048)]] + [[((0.02, y * 0.08, 0.03), 0.022), ((0.05, y * 0.20, -0.01), 0.028), ((0.04, y * 0.15, -0.03), 0.012)] for y in (1, -1)], dark, 0.009, 6)
    neck = forms.blob(limb(((0.03, 0, 0.05), 0.085), ((0.14, 0, -0.04), 0.15), ((0.34, 0, -0.22), 0.24)), w, 0.015, 3, None)
    return forms.place([head, neck], at, turn_deg, scale)


def beam(a, b, radius_a, radius_b, colour="#ffdca0", strength=0.2, falloff=0.6):
    """A ray of light in dusty air that only the camera sees: soft at its sides, fading to its end."""
    m = bpy.data.materials.new("beam")
    m.use_nodes = True
    nodes, links = m.node_tree.nodes, m.node_tree.links
    nodes.clear()
    out, add, clear, shine = (nodes.new(n) for n in ("ShaderNodeOutputMaterial", "ShaderNodeAddShader", "ShaderNodeBsdfTransparent", "ShaderNodeEmission"))
    edge, soft, mul, turb, far = (nodes.new(n) for n in ("ShaderNodeLayerWeight", "ShaderNodeMath", "ShaderNodeMath", "ShaderNodeTexNoise", "ShaderNodeMath"))
    edge.inputs[0].default_value = 0.5
    soft.operation, mul.operation, far.operation = "POWER", "MULTIPLY", "MULTIPLY"
    invert = nodes.new("ShaderNodeMath")
    invert.operation = "SUBTRACT"
    invert.inputs[0].default_value = 1
    links.new(edge.outputs["Facing"], invert.inputs[1])
    links.new(invert.outputs[0], soft.inputs[0])
    soft.inputs[1].default_value = 2.2
    turb.inputs["Scale"].default_value = 1.3
    where = nodes.new("ShaderNodeTexCoord")
    links.new(where.outputs["Object"], turb.inputs[0])
    spread = nodes.new("ShaderNodeMapRange")
    spread.inputs["From Min"].default_value, spread.inputs["From Max"].default_value = 0.25, 0.75
    spread.inputs["To Min"].default_value = 0.55
    links.new(turb.outputs["Fac"], spread.inputs[0])
    links.new(soft.outputs[0], mul.inputs[0])
    links.new(spread.outputs[0], mul.inputs[1])
    links.new(mul.outputs[0], far.inputs[0])
    far.inputs[1].default_value = strength * 0.5
    shine.inputs[0].default_value = materials.linear(colour)
    links.new(far.outputs[0], shine.inputs[1])
    links.new(clear.outputs[0], add.inputs[0])
    links.new(shine.outputs[0], add.inputs[1])
    links.new(add.outputs[0], out.inputs[0])
    return only_seen(forms.tube([a, b], [radius_a, radius_b], m, 40))


def shovel(a, b, material=None):
    """A flat wooden grain shovel from the end of its shaft to the edge of its blade."""
    a, b, m = V(a), V(b), material or materials.wood("#b58a52", "x")
    along = (b - a).normalized()
    neck = b - along * 0.34
    forms.rod(a, neck + along * 0.05, 0.016, m)
    across = along.cross(V((0, -0.9, 0.45))).normalized() * 0.15
    up = across.cross(along).normalized() * 0.03
    points = [neck - across * 0.7, neck + across * 0.7, b + across, b - across]
    blade = forms.raw([*points, *[p + up * 0.3 for p in points]], [(0, 1, 2, 3), (4, 7, 6, 5), (0, 4, 5, 1), (1, 5, 6, 2), (2, 6, 7, 3), (3, 7, 4, 0)], m)
    for s in (1, -1):
        forms.hull([(neck + across * 0.7 * s + up, 0.012), (b + across * s + up, 0.009)], m)
    return blade


def lining(fig, material, from_z=1.0, to_z=0.08, width=0.16, aside=0.05):
    """The open front of a long coat: a wedge of its lining from from_z down to to_z (own axes), width at the hem."""
    fig._trees = fig._surface()
    rows, columns, points = 40, 8, []
    for r in range(rows + 1):
        t = r / rows
        for c in range(columns + 1):
            x = fig.joints["pelvis"].x + aside * t + (c / columns - 0.5) * width * t
            hit = fig.front((x, 0, from_z + (to_z - from_z) * t), (0, 1, 0))
            y = hit.y if hit else (points[-columns - 1][1] if len(points) > columns else 0.15)
            points.append((x, y + 0.006 - 0.004 * math.sin(c * 1.9) * t, from_z + (to_z - from_z) * t))
    n = columns + 1
    faces = [(r * n + c, r * n + c + 1, (r + 1) * n + c + 1, (r + 1) * n + c) for r in range(rows) for c in range(columns)]
    return fig._place(forms.raw(points, faces, material, True, "lining"))
