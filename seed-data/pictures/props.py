"""Things to hold, to sit on and to look at. Each is made at a place, facing the camera unless turn_deg (to camera-right) says otherwise."""
import math
import random

from mathutils import Matrix, Vector

import forms
import materials

V = Vector


def _put(things, at, turn_deg=0, scale=1.0, pitch_deg=0, roll_deg=0):
    return forms.place(things, at, turn_deg, scale, pitch_deg, roll_deg)


def table(at=(0, 0, 0), size=(1.2, 0.7, 0.76), material=None, turn_deg=0, top=0.035):
    """A table; at is on the ground under its middle, size is across, deep, high."""
    m = material or materials.wood()
    w, d, h = size
    legs = [forms.box((x * (w / 2 - 0.07), y * (d / 2 - 0.07), (h - top) / 2), (0.06, 0.06, h - top), m) for x in (1, -1) for y in (1, -1)]
    rails = [forms.box((0, y * (d / 2 - 0.07), h - top - 0.05), (w - 0.16, 0.025, 0.09), m) for y in (1, -1)]
    return _put([forms.box((0, 0, h - top / 2), (w, d, top), m, bevel=0.006), *legs, *rails], at, turn_deg)


def chair(at=(0, 0, 0), material=None, turn_deg=0, seat=0.46):
    """A plain chair whose sitter faces the camera."""
    m = material or materials.wood("#5d432c")
    parts = [forms.box((0, 0, seat), (0.43, 0.42, 0.035), m)]
    parts += [forms.rod((x * 0.18, -0.17, 0), (x * 0.18, -0.17, seat), 0.018, m) for x in (1, -1)]
    parts += [forms.tube([(x * 0.18, 0.19, 0), (x * 0.18, 0.18, seat), (x * 0.18, 0.25, seat + 0.48)], 0.018, m) for x in (1, -1)]
    parts += [forms.box((0, 0.20 + 0.02 * i, seat + 0.2 + 0.1 * i), (0.36, 0.018, 0.05), m) for i in range(3)]
    return _put(parts, at, turn_deg)


def stool(at=(0, 0, 0), material=None, high=0.68, radius=0.17):
    """A round stool."""
    m = material or materials.wood("#4a3524")
    parts = [forms.lathe([(0, high - 0.035), (radius, high - 0.035), (radius, high - 0.008), (radius - 0.015, high), (0, high)], (0, 0, 0), m)]
    for k in range(4):
        t = math.pi / 4 + k * math.pi / 2
        parts.append(forms.rod((math.cos(t) * radius * 1.25, math.sin(t) * radius * 1.25, 0), (math.cos(t) * radius * 0.7, math.sin(t) * radius * 0.7, high - 0.03), 0.016, m))
    ring = [(math.cos(t) * radius * 1.1, math.sin(t) * radius * 1.1, high * 0.3) for t in (2 * math.pi * k / 24 for k in range(25))]
    parts.append(forms.tube(ring, 0.011, m))
    return _put(parts, at)


def bench(at=(0, 0, 0), long=1.6, material=None, turn_deg=0, high=0.45):
    """A plain bench."""
    m = material or materials.wood()
    parts = [forms.box((0, 0, high), (long, 0.32, 0.045), m)]
    parts += [forms.box((x * (long / 2 - 0.15), 0, high / 2), (0.05, 0.28, high), m) for x in (1, -1)]
    return _put(parts, at, turn_deg)


def bottle(at=(0, 0, 0), high=0.30, material=None, radius=0.037):
    """A bottle."""
    h, r = high, radius
    return forms.lathe([(0, 0.006), (r * 0.9, 0), (r, 0.008), (r, h * 0.58), (r * 0.85, h * 0.66), (r * 0.36, h * 0.76), (r * 0.33, h * 0.95), (r * 0.42, h * 0.955), (r * 0.42, h), (r * 0.30, h)], at, material or materials.solid_glass("#5f8a5c"))


def bowl(at=(0, 0, 0), radius=0.13, material=None, deep=0.5):
    """A bowl."""
    r, d = radius, radius * deep
    outer = [(r * 0.38, 0), (r * 0.42, 0.008)] + [(r * (0.42 + 0.58 * math.sin(t)), 0.008 + d * (1 - math.cos(t)) * 1.0) for t in (math.pi / 2 * k / 10 for k in range(1, 11))]
    inner = [(a - 0.008, b + 0.004) for a, b in outer[::-1][:-2]] + [(0, 0.016)]
    return forms.lathe([(0, 0), *outer, *inner], at, material or materials.clay("#b9a78c"))


def plate(at=(0, 0, 0), radius=0.15, material=None):
    """A plate."""
    r = radius
    return forms.lathe([(0, 0), (r * 0.6, 0), (r * 0.66, 0.004), (r, 0.018), (r, 0.022), (r * 0.66, 0.010), (r * 0.6, 0.007), (0, 0.007)], at, material or materials.clay("#cfc8ba", 0.4))


def jug(at=(0, 0, 0), high=0.24, material=None, turn_deg=0):
    """A jug with a handle at its right and a lip at its left."""
    m, h = material or materials.clay("#8a7f70", 0.35), high
    body = forms.lathe([(0, 0), (h * 0.24, 0), (h * 0.30, h * 0.1), (h * 0.36, h * 0.34), (h * 0.31, h * 0.58), (h * 0.20, h * 0.78), (h * 0.20, h * 0.88), (h * 0.25, h), (h * 0.235, h), (h * 0.185, h * 0.88), (h * 0.18, h * 0.7), (0, h * 0.6)], (0, 0, 0), m)
    for v in body.data.vertices:
        if v.co.z > h * 0.86 and v.co.x < 0:
            v.co.x *= 1 + 0.45 * (v.co.z / h - 0.86) / 0.14
    handle = forms.tube([(h * 0.2, 0, h * 0.9), (h * 0.42, 0, h * 0.92), (h * 0.52, 0, h * 0.66), (h * 0.44, 0, h * 0.42), (h * 0.32, 0, h * 0.36)], h * 0.035, m, 12, 3)
    return _put([body, handle], at, turn_deg)


def cup(at=(0, 0, 0), high=0.09, material=None, turn_deg=0):
    """A cup with a handle."""
    m, h = material or materials.clay("#d8d0c0", 0.4), high
    body = forms.lathe([(0, 0), (h * 0.32, 0), (h * 0.44, h * 0.2), (h * 0.46, h), (h * 0.42, h), (h * 0.40, h * 0.25), (0, h * 0.15)], (0, 0, 0), m)
    handle = forms.tube([(h * 0.44, 0, h * 0.82), (h * 0.72, 0, h * 0.8), (h * 0.72, 0, h * 0.4), (h * 0.44, 0, h * 0.28)], h * 0.06, m, 10, 3)
    return _put([body, handle], at, turn_deg)


def loaf(at=(0, 0, 0), long=0.32, material=None, turn_deg=0):
    """A scored loaf dusted with flour."""
    m = material or _crust()
    k = long / 0.32

    def slashes(p, n):
        for i in range(-1, 2):
            line = p[:, 0] + 0.7 * p[:, 1] - i * 0.072
            p = p + n * ((-0.007 * 2.718 ** (-(line / 0.008) ** 2) + 0.003 * 2.718 ** (-((abs(line) - 0.014) / 0.008) ** 2)) * (p[:, 2] > 0.055))[:, None]
        return p
    body = forms.blob([[((-0.085, 0, 0.055), 0.058), ((0, 0, 0.064), 0.070), ((0.085, 0, 0.055), 0.058), ((-0.11, 0, 0.045), 0.045), ((0.11, 0, 0.045), 0.045)]], m, 0.004, 6, slashes)
    for v in body.data.vertices:
        v.co.z = max(v.co.z, 0.006)
    return _put(body, at, turn_deg, k)


def _crust():
    b = materials.Build("crust", "#a86a34", 0.85, specular=0.2)
    b.mottle(14, 0.45, None, 8)
    mix = b.nodes.new("ShaderNodeMixRGB")
    up = b.nodes.new("ShaderNodeSeparateXYZ")
    b.links.new(b.where, up.inputs[0])
    spot = b.nodes.new("ShaderNodeMath")
    spot.operation = "MULTIPLY"
    b.links.new(b.ramp(b.noise(38, 6), 0.45, 0.62, ((0, 0, 0, 1), (1, 1, 1, 1))), spot.inputs[0])
    b.links.new(b.ramp(up.outputs[2], 0.06, 0.12, ((0, 0, 0, 1), (0.85, 0.85, 0.85, 1))), spot.inputs[1])
    b.links.new(spot.outputs[0], mix.inputs[0])
    before = b.shader.inputs["Base Color"].links[0].from_socket
    b.links.new(before, mix.inputs[1])
    mix.inputs[2].default_value = materials.linear("#efe4d0")
    b.links.new(mix.outputs[0], b.shader.inputs["Base Color"])
    b.bump(b.noise(45, 7), 0.6, 0.006)
    return b.material


def fish(at=(0, 0, 0), long=0.26, material=None, turn_deg=0, belly="#c9ced0"):
    """A herring-like fish on its side, its head at its left, its back away from the camera."""
    m = material or _scales()
    k = long / 0.26

    def thin(p, n):
        p = p.copy()
        p[:, 2] = p[:, 2] * 0.55
        return p
    groups = forms.limb(((-0.13, 0, 0.03), 0.007), ((-0.10, 0, 0.03), 0.020), ((-0.03, 0, 0.03), 0.030), ((0.03, 0, 0.03), 0.028), ((0.09, 0, 0.03), 0.013), ((0.115, 0, 0.03), 0.008))
    body = forms.blob(groups, m, 0.0032, 5, thin)
    fins = []
    for s in (1, -1):
        fins.append(forms.raw([(0.106, 0, 0.017), (0.125, s * 0.014, 0.020), (0.154, s * 0.036, 0.030), (0.126, s * 0.002, 0.020)], [(0, 1, 2, 3)], m))
    fins.append(forms.raw([(-0.01, 0.026, 0.017), (0.035, 0.024, 0.017), (0.035, 0.040, 0.016), (0.012, 0.046, 0.016)], [(0, 1, 2, 3)], m))
    fins.append(forms.raw([(0.01, -0.026, 0.017), (0.045, -0.022, 0.017), (0.05, -0.034, 0.014)], [(0, 1, 2)], m))
    fins.append(forms.raw([(-0.085, -0.004, 0.034), (-0.05, -0.014, 0.033), (-0.055, 0.000, 0.034)], [(0, 1, 2)], m))
    for f in fins:
        f.modifiers.new("thick", "SOLIDIFY").thickness = 0.0022
    eye = [forms.lathe([(0.0050, 0), (0.0048, 0.0014), (0.0, 0.0020)], (-0.108, -0.005, 0.0238), materials.clay("#b9b08c", 0.2), 20),
           forms.lathe([(0.0030, 0), (0.0028, 0.0022), (0.0, 0.0026)], (-0.108, -0.005, 0.0238), materials.clay("#0c0c0e", 0.1), 20)]
    return _put([body, *fins, *eye], at, turn_deg, k)


def _scales():
    b = materials.Build("scales", "#b9c0c4", 0.26, 0.55, 0.5)
    up = b.nodes.new("ShaderNodeSeparateXYZ")
    b.links.new(b.where, up.inputs[0])
    shift = b.nodes.new("ShaderNodeMath")
    shift.operation = "MULTIPLY_ADD"
    shift.inputs[1].default_value, shift.inputs[2].default_value = 14, 0.5
    b.links.new(up.outputs[1], shift.inputs[0])
    ramp = b.nodes.new("ShaderNodeValToRGB")
    ends = ramp.color_ramp.elements
    ends[0].position, ends[0].color = 0.25, materials.linear("#d9d6cc")
    ends[1].position, ends[1].color = 0.80, materials.linear("#26384a")
    ends.new(0.55).color = materials.linear("#8fa3ad")
    b.links.new(shift.outputs[0], ramp.inputs[0])
    b.links.new(ramp.outputs[0], b.shader.inputs["Base Color"])
    cells = b.nodes.new("ShaderNodeTexVoronoi")
    cells.inputs["Scale"].default_value = 260
    b.links.new(b.where, cells.inputs["Vector"])
    b.bump(cells.outputs["Distance"], 0.35, 0.002)
    return b.material


def fruit(at=(0, 0, 0), radius=0.038, material=None, kind="apple"):
    """An apple, a pear, a lemon or an onion."""
    r = radius
    colours = {"apple": "#8e2f23", "pear": "#a8a03c", "lemon": "#d9b62c", "onion": "#b5713a"}
    m = material or materials.clay(colours[kind], 0.35)
    profiles = {
        "apple": [(0.0, 0.18), (0.35, 0.02), (0.8, 0.25), (1.0, 0.9), (0.85, 1.45), (0.45, 1.72), (0.15, 1.62), (0, 1.5)],
        "pear": [(0, 0.05), (0.5, 0.05), (0.95, 0.5), (1.0, 0.95), (0.75, 1.5), (0.45, 1.95), (0.38, 2.3), (0.22, 2.55), (0, 2.58)],
        "lemon": [(0, -0.1), (0.15, 0.0), (0.6, 0.3), (0.95, 0.85), (0.95, 1.25), (0.6, 1.8), (0.18, 2.1), (0.12, 2.25), (0, 2.28)],
        "onion": [(0, 0.02), (0.2, 0.02), (0.8, 0.3), (1.05, 0.8), (0.9, 1.25), (0.4, 1.6), (0.15, 1.9), (0.12, 2.3), (0.05, 2.5), (0, 2.5)],
    }
    fine = _rounded([(a * r, b * r) for a, b in profiles[kind]])
    things = [forms.lathe(fine, (0, 0, 0), m)]
    if kind in ("apple", "pear"):
        top = profiles[kind][-1][1] * r
        things.append(forms.tube([(0, 0, top - 0.004), (0.002, 0, top + r * 0.3), (r * 0.2, 0, top + r * 0.55)], r * 0.05, materials.wood("#3b2a1c"), 8))
    return _put(things, at)


def _rounded(profile, times=2):
    for _ in range(times):
        fine = [profile[0]]
        for (a, b), (c, d) in zip(profile, profile[1:]):
            fine += [(a * 0.75 + c * 0.25, b * 0.75 + d * 0.25), (a * 0.25 + c * 0.75, b * 0.25 + d * 0.75)]
        profile = [*fine, profile[-1]]
    return profile


def knife(at=(0, 0, 0), long=0.24, turn_deg=0, pitch_deg=0, roll_deg=0):
    """A knife lying flat, its point to its left."""
    k = long
    blade = forms.raw([(-k * 0.58, 0, 0.004), (-k * 0.45, -0.020, 0.004), (0, -0.022, 0.004), (0, 0.004, 0.004), (-k * 0.4, 0.004, 0.004)], [(0, 1, 2, 3, 4)], materials.metal("#c4c8cc", 0.22))
    blade.modifiers.new("thick", "SOLIDIFY").thickness = 0.002
    grip = forms.hull([((0, -0.008, 0.006), 0.008), ((k * 0.40, -0.008, 0.006), 0.0095)], materials.wood("#3a2618"))
    return _put([blade, grip], at, turn_deg, 1, pitch_deg, roll_deg)


def candle(at=(0, 0, 0), high=0.12, radius=0.012, strength=6.0, lit=True):
    """A candle, with its flame as something that shines."""
    things = [forms.lathe([(0, 0), (radius, 0), (radius, high - 0.004), (radius * 0.8, high), (0, high - 0.004)], (0, 0, 0), materials.paper("#e6dcc0", 0.3))]
    if lit:
        things.append(forms.lathe(_rounded([(0, 0), (0.0055, 0.010), (0.004, 0.022), (0, 0.040)]), (0, 0, high + 0.004), materials.glow("#ffb45a", strength)))
    return _put(things, at)


def lantern(at=(0, 0, 0), high=0.30, strength=2.0, lit=True, metal="#3a3a3c"):
    """A hand lantern; strength 0 or lit=False is a dark one."""
    m, h = materials.metal(metal, 0.5), high
    things = [forms.lathe([(0, 0), (h * 0.27, 0), (h * 0.27, h * 0.08), (h * 0.2, h * 0.14), (0, h * 0.14)], (0, 0, 0), m),
              forms.lathe([(h * 0.22, h * 0.64), (h * 0.24, h * 0.66), (h * 0.12, h * 0.80), (h * 0.10, h * 0.86), (0, h * 0.86)], (0, 0, 0), m)]
    glow = materials.glow("#ffb866", strength) if lit else materials.solid_glass()
    things.append(forms.lathe(_rounded([(h * 0.10, h * 0.14), (h * 0.19, h * 0.3), (h * 0.18, h * 0.48), (h * 0.11, h * 0.64)]), (0, 0, 0), glow))
    for k in range(4):
        t = math.pi / 4 + k * math.pi / 2
        things.append(forms.rod((math.cos(t) * h * 0.23, math.sin(t) * h * 0.23, h * 0.1), (math.cos(t) * h * 0.22, math.sin(t) * h * 0.22, h * 0.66), h * 0.012, m))
    things.append(forms.tube([(-h * 0.22, 0, h * 0.66), (-h * 0.2, 0, h * 0.92), (0, 0, h * 1.06), (h * 0.2, 0, h * 0.92), (h * 0.22, 0, h * 0.66)], h * 0.012, m, 8, 3))
    return _put(things, at)


def hand_lamp(at, toward, strength=6.0):
    """A torch with a shining face: at is the grip, toward the point it is aimed at."""
    a, d = V(at), (V(toward) - V(at)).normalized()
    m = materials.metal("#55585a", 0.4)
    forms.tube([a - d * 0.10, a + d * 0.08, a + d * 0.11, a + d * 0.15], [0.017, 0.017, 0.034, 0.036], m, 18)
    forms.rod(a + d * 0.149, a + d * 0.153, 0.031, materials.glow("#ffe2ae", strength))


def rope(points, material=None, radius=0.014, rounds=3):
    """A rope through points."""
    return forms.tube(points, radius, material or materials.cloth("#a58f66", 120), 10, rounds)


def coil(at=(0, 0, 0), radius=0.22, turns=4, material=None, thick=0.018):
    """A coil of rope on the ground."""
    points = []
    for i in range(turns * 24 + 1):
        t = 2 * math.pi * i / 24
        layer = i / 24
        points.append((at[0] + math.cos(t) * (radius - 0.012 * (layer % 2)), at[1] + math.sin(t) * (radius - 0.012 * (layer % 2)), at[2] + thick * (1 + 1.55 * layer)))
    return forms.tube(points, thick, material or materials.cloth("#a58f66", 120), 8)


def ladder(bottom, top, width=0.42, material=None, rung=0.28):
    """A ladder that leans from bottom to top."""
    m = material or materials.wood("#7d6142", "z")
    a, b = V(bottom), V(top)
    side = (b - a).cross(V((0, 0, 1)))
    side = side.normalized() * width / 2 if side.length > 0.01 else V((width / 2, 0, 0))
    for k in (1, -1):
        forms.rod(a + side * k, b + side * k, 0.022, m)
    n = int((b - a).length / rung)
    for i in range(1, n + 1):
        p = a.lerp(b, i / (n + 0.6))
        forms.rod(p - side, p + side, 0.014, m)


def barrel(at=(0, 0, 0), high=0.9, material=None):
    """A barrel with two hoops a side."""
    h, r, m = high, high * 0.32, material or materials.wood("#6b4d31", "z")
    iron = materials.metal("#3f3d3b", 0.6)
    things = [forms.lathe(_rounded([(0, 0.02), (r * 0.84, 0), (r * 0.95, h * 0.2), (r, h * 0.5), (r * 0.95, h * 0.8), (r * 0.84, h), (r * 0.8, h), (r * 0.8, h - 0.03), (0, h - 0.03)], 1), (0, 0, 0), m)]
    for z in (0.07, 0.25, 0.75, 0.93):
        s = r * (0.86 + 0.14 * (1 - abs(2 * z - 1) ** 1.6)) + 0.004
        things.append(forms.lathe([(s, h * z - 0.02), (s + 0.005, h * z - 0.02), (s + 0.005, h * z + 0.02), (s, h * z + 0.02)], (0, 0, 0), iron))
    return _put(things, at)


def crate(at=(0, 0, 0), size=(0.6, 0.42, 0.4), material=None, turn_deg=0):
    """A crate of boards."""
    m, (w, d, h) = material or materials.wood("#8a6c48"), size
    things = []
    for y in (1, -1):
        things += [forms.box((0, y * d / 2, h * (i + 0.5) / 3), (w, 0.016, h / 3 - 0.012), m, bevel=0.003) for i in range(3)]
    for x in (1, -1):
        things += [forms.box((x * w / 2, 0, h * (i + 0.5) / 3), (0.016, d, h / 3 - 0.012), m, bevel=0.003) for i in range(3)]
        things += [forms.box((x * (w / 2 - 0.03), y * (d / 2 + 0.014), h / 2), (0.05, 0.014, h), m, bevel=0.003) for y in (1, -1)]
    things.append(forms.box((0, 0, 0.01), (w, d, 0.02), m))
    return _put(things, at, turn_deg)


def sack(at=(0, 0, 0), high=0.6, material=None, turn_deg=0):
    """A tied sack."""
    h = high
    thing = forms.blob([[((0.09, 0, 0.14), 0.15), ((-0.09, 0, 0.14), 0.15), ((0.07, 0, h * 0.55), 0.15), ((-0.06, 0, h * 0.55), 0.15), ((0, 0, h * 0.85), 0.06)],
                        [((0, 0, h * 0.84), 0.05), ((0.04, 0, h), 0.05), ((-0.05, 0.01, h), 0.05)]], material or materials.cloth("#b5a27c", 90, 0.9), 0.014, 6)
    for v in thing.data.vertices:
        v.co.z = max(v.co.z, 0.0)
    return _put(thing, at, turn_deg)


def bollard(at=(0, 0, 0), high=0.55, radius=0.17, material=None):
    """An iron bollard."""
    h, r = high, radius
    return forms.lathe(_rounded([(r * 1.35, 0), (r * 1.3, 0.04), (r * 0.95, 0.09), (r * 0.86, h * 0.55), (r * 0.95, h * 0.72), (r * 1.25, h * 0.8), (r * 1.28, h * 0.9), (r * 0.9, h), (0, h * 1.02)]), at, material or materials.rust("#3a2c26"))


def boat(at=(0, 0, 0), long=4.0, wide=1.4, high=0.6, material=None, inside=None, turn_deg=0, heel_deg=0):
    """An open clinker boat, its bow at its left."""
    m = material or materials.wood("#54402c", "x")

    def shell(grow):
        def at_uv(u, v):
            x = (u - 0.5) * long
            t = 2 * u - 1
            beam = max(1 - abs(t) ** 2.6, 0) ** 0.7 if t < 0 else 1 - 0.35 * t**2.5
            a = (v - 0.5) * math.pi
            y = math.sin(a) * wide / 2 * beam * grow
            sheer = high * (1 + 0.35 * t * t)
            z = sheer * (1 - math.cos(a) ** 0.55 * (0.98 if abs(t) < 0.98 else 0.6)) + (1 - grow) * 0.15
            step = 0.012 * ((abs(v - 0.5) * 14) % 1)
            return x, y + math.copysign(step, y) * beam, z
        return at_uv
    hull = forms.sheet(shell(1.0), m, 60, 56, 0.025)
    things = [hull]
    for k in (-0.18, 0.12, 0.36):
        things.append(forms.box((k * long, 0, high * 0.72), (0.2, wide * 0.86, 0.03), inside or m))
    return _put(things, at, turn_deg, 1, heel_deg)


def oar(a, b, material=None):
    """An oar from its grip to its blade's tip."""
    a, b, m = V(a), V(b), material or materials.wood("#8a6f4c")
    forms.rod(a, a.lerp(b, 0.75), 0.02, m)
    forms.hull([(a.lerp(b, 0.72), 0.018), (a.lerp(b, 0.80), 0.03), (b, 0.035)], m)


def wheel(at, radius, material, spokes=12, thick=0.02, hub=0.04, axis="x", spoke=0.012):
    """A spoked wheel about an axis."""
    turn = {"x": lambda u, v: (0, u, v), "y": lambda u, v: (u, 0, v)}[axis]
    c = V(at)
    ring = [c + V(turn(math.cos(t) * radius, math.sin(t) * radius)) for t in (2 * math.pi * k / 64 for k in range(65))]
    things = [forms.tube(ring, thick, material, 10)]
    for k in range(spokes):
        t = 2 * math.pi * k / spokes
        things.append(forms.rod(c, c + V(turn(math.cos(t) * radius, math.sin(t) * radius)), spoke, material, sides=6))
    way = V((0.06, 0, 0)) if axis == "x" else V((0, 0.06, 0))
    things.append(forms.rod(c - way, c + way, hub, material))
    return things


def bicycle(at=(0, 0, 0), turn_deg=0, colour="#7a2f28", panniers=None, scale=1.0):
    """A bicycle that heads for its left (camera-left); saddle at (0.18, 0, 0.98), bars at (-0.42, ±0.24, 1.08), cranks at (0.05, 0, 0.30)."""
    m, dark, bright = materials.clay(colour, 0.35), materials.leather("#1c1b1b"), materials.metal("#9a9d9f", 0.3)
    r, things = 0.34, []
    for x in (-0.55, 0.52):
        things += wheel((x, 0, r), r, dark, 0, 0.019, 0.022, "y")
        things += wheel((x, 0, r), r - 0.022, bright, 20, 0.009, 0.02, "y", 0.0032)
        fender = [(x + math.cos(t) * (r + 0.032), 0, r + math.sin(t) * (r + 0.032)) for t in (math.radians(15 + 150 * k / 20) for k in range(21))]
        things.append(forms.tube(fender, 0.016, m, 8))
    crank, seat, head, low = V((0.05, 0, 0.30)), V((0.16, 0, 0.86)), V((-0.36, 0, 0.92)), V((-0.40, 0, 0.70))
    rear, front = V((0.52, 0, r)), V((-0.55, 0, r))
    for a, b in ((crank, seat), (seat.lerp(crank, 0.12), head), (low, crank)):
        things.append(forms.rod(a, b, 0.017, m))
    for s in (1, -1):
        off = V((0, s * 0.05, 0))
        things += [forms.rod(crank + off * 0.6, rear + off, 0.010, m), forms.rod(seat, rear + off, 0.009, m), forms.rod(low + off * 0.7, front + off, 0.012, m)]
    things += [forms.rod(head + V((0.0, 0, -0.26)), head + V((-0.02, 0, 0.12)), 0.019, m), forms.rod(seat, V((0.18, 0, 0.95)), 0.013, bright)]
    things.append(forms.hull([((0.30, 0.07, 0.965), 0.03), ((0.30, -0.07, 0.965), 0.03), ((0.06, 0, 0.975), 0.02)], dark))
    things.append(forms.tube([(-0.26, 0.26, 1.04), (-0.36, 0.25, 1.05), (-0.42, 0.14, 1.06), (-0.39, 0, 1.05), (-0.42, -0.14, 1.06), (-0.36, -0.25, 1.05), (-0.26, -0.26, 1.04)], 0.013, bright, 10, 2))
    things.append(forms.lathe([(0, 0), (0.09, 0), (0.09, 0.012), (0, 0.012)], (0, 0, 0), bright))
    things[-1].matrix_world = Matrix.Translation(crank + V((0, -0.03, 0))) @ Matrix.Rotation(math.radians(90), 4, "X")
    for s, a in ((1, 0.6), (-1, 0.6 + math.pi)):
        tip = crank + V((math.cos(a) * 0.16, s * -0.09, math.sin(a) * 0.16))
        things += [forms.rod(crank + V((0, s * -0.06, 0)), tip, 0.010, bright), forms.box(tip + V((0, s * -0.05, 0)), (0.09, 0.09, 0.02), dark)]
    things.append(forms.box((0.52, 0, 0.76), (0.36, 0.14, 0.015), dark))
    things.append(forms.lathe([(0, 0), (0.045, 0.0), (0.06, 0.06), (0.055, 0.075), (0, 0.075)], (0, 0, 0), bright))
    things[-1].matrix_world = Matrix.Translation((-0.44, 0, 0.92)) @ Matrix.Rotation(math.radians(-90), 4, "Y")
    if panniers:
        for s in (1, -1):
            things.append(forms.box((0.54, s * 0.15, 0.54), (0.40, 0.16, 0.38), panniers, bevel=0.04))
            things.append(forms.box((0.54, s * 0.16, 0.70), (0.42, 0.17, 0.10), panniers, bevel=0.04))
    return _put(things, at, turn_deg, scale)


def cart(at=(0, 0, 0), turn_deg=0, material=None, load=True, shafts=True):
    """A two-wheeled handcart; it is pulled toward its right, the shafts from (0.3, ±0.36, 0.65) to (1.25, ±0.36, 0.80) if it has them."""
    m = material or materials.wood("#4d3a28")
    iron, things = materials.metal("#5a5552", 0.5), []
    for y in (1, -1):
        things += wheel((-0.35, y * 0.62, 0.48), 0.46, m, 12, 0.030, 0.07, "y", 0.017)
        things += [forms.rod((-0.9, y * 0.36, 0.62), (1.25, y * 0.36, 0.80) if shafts else (0.3, y * 0.36, 0.65), 0.026, m), forms.box((-0.35, y * 0.44, 0.78), (1.25, 0.03, 0.30), m)]
    things += [forms.box((-0.35, 0, 0.62), (1.25, 0.86, 0.04), m), forms.box((0.26, 0, 0.78), (0.03, 0.86, 0.30), m), forms.rod((-0.35, -0.66, 0.48), (-0.35, 0.66, 0.48), 0.025, iron)]
    if load:
        chance = random.Random(3)
        for _ in range(80):
            things.append(link((-0.35 + 0.48 * chance.uniform(-1, 1), 0.3 * chance.uniform(-1, 1), 0.76 + chance.uniform(0, 0.30)), 0.10, iron, chance.uniform(0, 180), chance.uniform(0, 90)))
    return _put(things, at, turn_deg)


def link(at, long, material, turn_deg=0, pitch_deg=0):
    """One link of a chain."""
    half = long * 0.28
    points = [(math.cos(t) * half + (long * 0.22 if math.cos(t) > 0 else -long * 0.22), math.sin(t) * half, 0) for t in (2 * math.pi * k / 20 for k in range(21))]
    return _put(forms.tube(points, long * 0.13, material, 8), at, turn_deg, 1, pitch_deg)


def chain(points, material, long=0.10):
    """A hanging or lying chain through points."""
    points = [V(p) for p in points]
    n = 0
    for a, b in zip(points, points[1:]):
        count = max(int((b - a).length / (long * 0.62)), 1)
        for i in range(count):
            p, d = a.lerp(b, i / count), (b - a).normalized()
            ring = link((0, 0, 0), long, material)
            ring.matrix_world = Matrix.Translation(p) @ d.to_track_quat("X", "Z").to_matrix().to_4x4() @ Matrix.Rotation(math.radians(90 * (n % 2)), 4, "X")
            n += 1


def double_bass(at=(0, 0, 0), turn_deg=0, lean_deg=12, roll_deg=0, colour="#6e3a1e"):
    """A double bass that stands on its pin and faces the camera; about 1.85 high."""
    return _fiddle(at, 1.0, turn_deg, lean_deg, roll_deg, colour, 0.16)


def violin(at=(0, 0, 0), turn_deg=0, lean_deg=0, roll_deg=0, colour="#7a3d1c"):
    """A violin, 0.6 m long, its lower end at the place."""
    return _fiddle(at, 0.325, turn_deg, lean_deg, roll_deg, colour, 0.0)


def _fiddle(at, k, turn_deg, lean_deg, roll_deg, colour, pin):
    m = materials.wood(colour, "z", 1.0, 0.28, 0.25)
    m.node_tree.nodes["Principled BSDF"].inputs["Clearcoat"].default_value = 0.5
    dark, string = materials.wood("#1c1512", "z", 1, 0.4, 0.1), materials.metal("#c9c2b0", 0.3)
    outline = [(0.0, 0.0), (0.17, 0.015), (0.28, 0.08), (0.335, 0.20), (0.325, 0.32), (0.26, 0.42), (0.205, 0.50), (0.195, 0.58), (0.215, 0.66), (0.245, 0.76), (0.235, 0.88), (0.18, 0.98), (0.09, 1.06), (0.035, 1.12)]
    outline = _rounded(outline, 2)
    ring = outline + [(-x, z) for x, z in outline[::-1]]
    n, points, faces = len(ring), [], []
    levels = [(-0.10, 0.0), (-0.11, 1.0), (-0.10, 1.03), (-0.09, 1.0), (0.09, 1.0), (0.10, 1.03), (0.11, 1.0), (0.135, 0.55), (0.145, 0.0)]
    levels = [(-0.145, 0.0), (-0.135, 0.55)] + levels[1:]
    for y, s in levels:
        points += [(x * s, y, 0.55 + (z - 0.55) * s) for x, z in ring]
    for i in range(len(levels) - 1):
        faces += [(i * n + j, i * n + (j + 1) % n, (i + 1) * n + (j + 1) % n, (i + 1) * n + j) for j in range(n)]
    body = forms.raw(points, faces, m, True)
    things = [body]
    things.append(forms.hull([((0.030, -0.13, 1.02), 0.012), ((-0.030, -0.13, 1.02), 0.012), ((0.022, -0.045, 1.60), 0.010), ((-0.022, -0.045, 1.60), 0.010), ((0, -0.03, 1.05), 0.03), ((0, -0.01, 1.60), 0.018)], m))
    things.append(forms.hull([((0.035, -0.19, 0.70), 0.006), ((-0.035, -0.19, 0.70), 0.006), ((0.020, -0.075, 1.60), 0.006), ((-0.020, -0.075, 1.60), 0.006)], dark))
    scroll = [(0, -0.02, 1.58), (0, 0.0, 1.70)] + [(0, 0.0 - 0.05 + 0.05 * math.cos(t) * (1 - t / 9), 1.72 + 0.055 * math.sin(t) * (1 - t / 9)) for t in (0.3 * i for i in range(20))]
    things.append(forms.tube(scroll, [0.024, 0.024] + [0.026 - 0.0006 * i for i in range(20)], m, 12))
    for s, z in ((1, 1.63), (-1, 1.66), (1, 1.69), (-1, 1.72)):
        things += [forms.rod((0, -0.005, z), (s * 0.09, 0.0, z + 0.005), 0.008, dark), forms.ball((s * 0.10, 0, z + 0.005), (0.022, 0.008, 0.018), dark)]
    things.append(forms.hull([((0.07, -0.14, 0.47), 0.008), ((-0.07, -0.14, 0.47), 0.008), ((0.04, -0.235, 0.47), 0.006), ((-0.04, -0.235, 0.47), 0.006)], materials.wood("#b98d55")))
    things.append(forms.hull([((0.05, -0.19, 0.36), 0.008), ((-0.05, -0.19, 0.36), 0.008), ((0.02, -0.14, 0.03), 0.008), ((-0.02, -0.14, 0.03), 0.008)], dark))
    for s in (-1.5, -0.5, 0.5, 1.5):
        things.append(forms.tube([(s * 0.016, -0.20, 0.33), (s * 0.020, -0.243, 0.475), (s * 0.009, -0.082, 1.62)], 0.0028, string, 6))
    for s in (1, -1):
        curve = [(s * (0.115 + 0.03 * math.sin(t * 2)), -0.1445, 0.47 + 0.10 * t) for t in (-1 + 0.1 * i for i in range(21))]
        things.append(forms.tube([(x, -0.128 - 0.010, z) for x, _, z in curve], 0.008, dark, 8))
    if pin:
        things.append(forms.rod((0, 0, -pin / k), (0, 0, 0.02), 0.010, string))
    for t in things:
        t.matrix_world = Matrix.Translation((0, 0, pin / k)) @ t.matrix_world
    return _put(things, at, turn_deg, k, -lean_deg, roll_deg)


def bow(a, b, material=None):
    """A fiddle bow from its frog to its tip."""
    a, b = V(a), V(b)
    up = V((0, -0.4, 1)).normalized() * 0.03
    forms.tube([a + up, a.lerp(b, 0.5) + up * 0.5, b + up], 0.006, material or materials.wood("#3a2013"), 8, 2)
    forms.tube([a, b], 0.004, materials.cloth("#e8dfcc"), 6)


def book(at=(0, 0, 0), size=(0.16, 0.22, 0.035), colour="#5a2f2a", turn_deg=0):
    """A closed book lying down."""
    w, d, h = size
    cover = materials.cloth(colour)
    things = [forms.box((0, 0, h / 2), (w * 0.97, d * 0.97, h * 0.86), materials.paper("#e6dcc4", 0.1), bevel=0.002)]
    things += [forms.box((0, 0, z), (w, d, h * 0.08), cover, bevel=0.001) for z in (h * 0.04, h * 0.96)]
    things.append(forms.box((-w / 2, 0, h / 2), (h * 0.1, d, h), cover, bevel=0.002))
    return _put(things, at, turn_deg)


def open_book(at=(0, 0, 0), size=0.24, turn_deg=0, pitch_deg=0):
    """An open book, its pages up."""
    page = materials.paper("#efe6d0", 0.15)
    things = [forms.sheet(lambda u, v, s=s: (s * u * size, (v - 0.5) * size * 1.3, 0.004 + 0.035 * math.sin(min(u * 1.25, 1) * math.pi) * (1 - u * 0.3)), page, 20, 2, 0.008) for s in (1, -1)]
    things.append(forms.box((0, 0, 0), (size * 2.04, size * 1.34, 0.006), materials.cloth("#4c2c26"), bevel=0.002))
    return _put(things, at, turn_deg, 1, pitch_deg)


def umbrella(at, tip, radius=0.55, material=None, ribs=8):
    """An open rain umbrella: at is the grip, tip the point of its stick."""
    a, b = V(at), V(tip)
    m = material or materials.silk("#20242c")

    def dome(u, v):
        t, r = 2 * math.pi * u, v
        bite = 1 - 0.10 * r * (0.5 + 0.5 * math.cos(t * ribs))
        return radius * r * bite * math.cos(t), radius * r * bite * math.sin(t), -radius * 0.55 * r**2.1
    canopy = forms.sheet(dome, m, ribs * 8, 16, 0.004)
    canopy.matrix_world = Matrix.Translation(b) @ (b - a).to_track_quat("Z", "Y").to_matrix().to_4x4()
    forms.rod(a, b, 0.008, materials.wood("#2c2018"))
    return canopy


def basket(at=(0, 0, 0), radius=0.2, high=0.18, material=None):
    """A basket with a bow handle."""
    m = material or materials.wood("#9b7a48", "x", 3, 0.8, 0.5)
    things = []
    for i in range(9):
        z = high * (i + 0.5) / 9
        r = radius * (0.78 + 0.22 * z / high)
        things.append(forms.tube([(r * math.cos(t) * (1 + 0.02 * math.sin(t * 12 + i * math.pi)), r * math.sin(t) * (1 + 0.02 * math.sin(t * 12 + i * math.pi)), z) for t in (2 * math.pi * k / 72 for k in range(73))], high / 15, m, 7))
    things.append(forms.lathe([(0, 0.01), (radius * 0.8, 0.01)], (0, 0, 0), m))
    things.append(forms.tube([(math.cos(t) * radius, 0, high + math.sin(t) * radius * 1.1) for t in (math.pi * k / 16 for k in range(17))], 0.011, m, 8))
    return _put(things, at)


def leaf_mesh(material, long=0.12, wide=0.09, lobes=0, fold=0.25):
    """One paper leaf at the origin along +y, to be scattered; lobes 3 or 5 is a vine leaf."""
    n = 24
    edge = []
    for k in range(n + 1):
        t = math.pi * k / n
        r = wide / 2 * math.sin(t) ** 0.8
        if lobes:
            r *= 1 + 0.30 * math.cos(lobes * t * 2 / 1.2)
        edge.append((r, long * (1 - math.cos(t)) / 2))
    points, faces = [(0, y, 0) for _, y in edge], []
    for s in (1, -1):
        start = len(points)
        points += [(s * r, y, fold * r * (1 - 0.6 * y / long)) for r, y in edge]
        faces += [(i, i + 1, start + i + 1, start + i) for i in range(n)]
    return forms.raw(points, faces, material, False, "leaf")


def tree(at=(0, 0, 0), high=7.0, radius=0.18, material=None, seed=1, lean=(0, 0), branches=10):
    """A bare trunk with some branches; returns points where leaves can be."""
    chance, m = random.Random(seed), material or materials.stone("#4a3d31", 0.4, 0.95, 0.06)
    a = V(at)
    spine = [a + V((lean[0] * t * t + chance.gauss(0, 0.05) * high * 0.15 * t, lean[1] * t * t + chance.gauss(0, 0.05) * high * 0.15 * t, high * t)) for t in (i / 8 for i in range(9))]
    forms.tube([spine[0] - V((0, 0, 0.2)), *spine], [radius * 1.6, radius * 1.25] + [radius * (1 - 0.75 * i / 8) for i in range(1, 9)], m, 14, 1)
    ends = []
    for _ in range(branches):
        i = chance.randint(3, 7)
        turn, long = chance.uniform(0, 6.28), high * chance.uniform(0.12, 0.28)
        p = spine[i].lerp(spine[i + 1], chance.random())
        way = V((math.cos(turn), math.sin(turn), chance.uniform(0.3, 0.9))).normalized()
        points = [p, p + way * long * 0.5 + V((0, 0, -0.03 * long)), p + way * long + V((0, 0, 0.1 * long))]
        forms.tube(points, [radius * 0.3, radius * 0.18, radius * 0.06], m, 8, 2)
        ends += [points[1], points[2], points[1].lerp(points[2], 0.5)]
    return ends


def dog(at=(0, 0, 0), turn_deg=0, material=None, scale=1.0, sitting=False, walk=True):
    """A lean dog that faces camera-left (turn_deg 0); about 0.62 high at the shoulder."""
    m = material or materials.cloth("#4a4038", 160, 0.2)
    if sitting:
        groups = forms.limb(((0.16, 0, 0.14), 0.12), ((0.02, 0, 0.34), 0.11), ((-0.10, 0, 0.52), 0.105), ((-0.16, 0, 0.68), 0.065))
        groups += [g for y in (1, -1) for g in forms.limb(((-0.12, y * 0.07, 0.48), 0.055), ((-0.15, y * 0.075, 0.24), 0.036), ((-0.16, y * 0.075, 0.03), 0.026), ((-0.21, y * 0.075, 0.02), 0.026))
                   + forms.limb(((0.12, y * 0.10, 0.20), 0.10), ((-0.06, y * 0.13, 0.16), 0.05), ((0.06, y * 0.13, 0.04), 0.032), ((-0.08, y * 0.13, 0.025), 0.026))]
        groups += forms.limb(((0.24, 0, 0.06), 0.030), ((0.42, 0.06, 0.03), 0.022), ((0.52, 0.12, 0.04), 0.012))
        neck, head = V((-0.16, 0, 0.68)), V((-0.22, 0, 0.80))
    else:
        s = 0.10 if walk else 0
        groups = forms.limb(((0.30, 0, 0.52), 0.105), ((0.10, 0, 0.53), 0.095), ((-0.14, 0, 0.50), 0.125), ((-0.27, 0, 0.55), 0.11), ((-0.40, 0, 0.68), 0.07))
        for y, f in ((1, s), (-1, -s)):
            groups += forms.limb(((-0.26, y * 0.07, 0.48), 0.065), ((-0.27 - f * 0.5, y * 0.075, 0.28), 0.036), ((-0.26 - f, y * 0.075, 0.05), 0.024), ((-0.31 - f, y * 0.075, 0.024), 0.026))
            groups += forms.limb(((0.32, y * 0.07, 0.48), 0.085), ((0.26 + f, y * 0.08, 0.30), 0.045), ((0.38 + f, y * 0.08, 0.18), 0.028), ((0.34 + f, y * 0.08, 0.04), 0.024), ((0.29 + f, y * 0.08, 0.024), 0.025))
        groups += forms.limb(((0.38, 0, 0.56), 0.035), ((0.52, 0, 0.50), 0.024), ((0.64, 0, 0.56), 0.012))
        neck, head = V((-0.40, 0, 0.68)), V((-0.48, 0, 0.78))
    groups += [[(neck, 0.062), (head, 0.060)], [(head, 0.070), (head + V((-0.07, 0, -0.01)), 0.052)], [(head + V((-0.06, 0, -0.015)), 0.042), (head + V((-0.18, 0, -0.035)), 0.027)]]
    for y in (1, -1):
        groups.append([(head + V((0.015, y * 0.055, 0.05)), 0.018), (head + V((0.04, y * 0.085, 0.0)), 0.014), (head + V((0.0, y * 0.082, -0.03)), 0.011)])
    body = forms.blob(groups, m, 0.009, 7)
    nose = forms.ball(head + V((-0.205, 0, -0.025)), 0.015, materials.clay("#15120f", 0.3))
    return _put([body, nose], at, turn_deg, scale)


def horse(at=(0, 0, 0), turn_deg=0, material=None, scale=1.0, mane=None):
    """A standing horse that faces camera-left; about 1.55 high at the withers."""
    m = material or materials.cloth("#6a4a33", 200, 0.2)
    groups = forms.limb(((0.72, 0, 1.16), 0.27), ((0.30, 0, 1.12), 0.27), ((-0.15, 0, 1.12), 0.28), ((-0.50, 0, 1.20), 0.26))
    groups += [[((0.75, 0, 1.22), 0.24), ((0.5, 0, 1.3), 0.12), ((-0.35, 0, 1.40), 0.10), ((-0.5, 0, 1.25), 0.22)]]
    groups += forms.limb(((-0.58, 0, 1.28), 0.20), ((-0.82, 0, 1.62), 0.135), ((-0.98, 0, 1.86), 0.095))
    groups += forms.limb(((-0.98, 0, 1.88), 0.105), ((-1.12, 0, 1.72), 0.095), ((-1.28, 0, 1.50), 0.062), ((-1.34, 0, 1.42), 0.060))
    groups += [[((-1.06, y * 0.05, 1.70), 0.085), ((-1.02, y * 0.03, 1.86), 0.07)] for y in (1, -1)]
    for y in (1, -1):
        f = 0.05 * y
        groups += forms.limb(((-0.52, y * 0.15, 1.05), 0.14), ((-0.54 + f, y * 0.16, 0.60), 0.065), ((-0.54 + f, y * 0.16, 0.55), 0.062), ((-0.53 + f, y * 0.16, 0.22), 0.042), ((-0.55 + f, y * 0.16, 0.14), 0.050))
        groups += [[((-0.55 + f, y * 0.16, 0.14), 0.045), ((-0.58 + f, y * 0.16, 0.0), 0.068, (0, 0, 1))]]
        groups += forms.limb(((0.78, y * 0.15, 1.08), 0.20), ((0.68 + f, y * 0.16, 0.78), 0.10), ((0.86 + f, y * 0.16, 0.56), 0.062), ((0.80 + f, y * 0.16, 0.22), 0.044), ((0.77 + f, y * 0.16, 0.14), 0.050))
        groups += [[((0.77 + f, y * 0.16, 0.14), 0.045), ((0.73 + f, y * 0.16, 0.0), 0.068, (0, 0, 1))]]
        groups.append([((-0.96, y * 0.065, 1.96), 0.030), ((-0.97, y * 0.075, 2.07), 0.008)])
    body = forms.blob(groups, m, 0.018, 9)
    comb = mane or materials.hair("#2a2019")
    hair = [forms.blob(forms.limb(((0.98, 0, 1.26), 0.05), ((1.08, 0, 1.05), 0.065), ((1.10, 0, 0.75), 0.06), ((1.08, 0, 0.50), 0.02)), comb, 0.012, 5)]
    ridge = forms.limb(((-1.02, 0, 1.97), 0.035), ((-0.86, 0, 1.86), 0.045), ((-0.66, 0, 1.62), 0.05), ((-0.48, 0, 1.44), 0.03))
    ridge += [[((-0.86, -0.10, 1.80), 0.03), ((-0.70, -0.13, 1.52), 0.03), ((-0.84, 0, 1.84), 0.04), ((-0.64, -0.02, 1.6), 0.04)]]
    hair.append(forms.blob(ridge, comb, 0.011, 5))
    return _put([body, *hair], at, turn_deg, scale)


def bird(at=(0, 0, 0), turn_deg=0, material=None, wings=0.9, span=0.9, scale=1.0, lift_deg=25):
    """A flying bird that heads camera-left; wings=0 is a perched one, 0.2 long."""
    m = material or materials.paper("#e6e2d8", 0.25)
    groups = forms.limb(((0.16, 0, 0.0), 0.012), ((0.06, 0, 0.0), 0.038), ((-0.06, 0, 0.01), 0.052), ((-0.13, 0, 0.035), 0.030), ((-0.17, 0, 0.04), 0.032))
    things = [forms.blob(groups, m, 0.006, 6), forms.rod((-0.195, 0, 0.04), (-0.24, 0, 0.03), 0.010, materials.clay("#c08a30"), 0.001)]
    things.append(forms.hull([((0.13, 0.015, 0.0), 0.006), ((0.13, -0.015, 0.0), 0.006), ((0.27, 0.05, -0.005), 0.004), ((0.27, -0.05, -0.005), 0.004)], m))
    if wings:
        up = math.tan(math.radians(lift_deg))
        for s in (1, -1):
            def wing(u, v, s=s):
                y = u * span / 2
                chord = 0.17 * (1 - 0.75 * u**1.6)
                return -0.07 + 0.12 * u**1.5 + v * chord - 0.06 * math.sin(u * 2.4), s * (0.02 + y), 0.02 + y * up * (1 - 0.8 * u) * 1.6 * wings + 0.02 * math.sin(v * 3.1)
            things.append(forms.sheet(wing, m, 24, 8, 0.006))
    return _put(things, at, turn_deg, scale)


def ribbon(points, width, material, wave=0.05, waves=3.0, twist=0.6, across=(0, 0, 1)):
    """A band of cloth in the wind through points, width tapering to its end; across is its width's direction."""
    path = [V(p) for p in points]
    for _ in range(3):
        fine = [path[0]]
        for a, b in zip(path, path[1:]):
            fine += [a.lerp(b, 0.25), a.lerp(b, 0.75)]
        path = [*fine, path[-1]]
    w = width if hasattr(width, "__len__") else (width, width * 0.6)

    def at_uv(u, v):
        f = v * (len(path) - 1)
        i = min(int(f), len(path) - 2)
        p = path[i].lerp(path[i + 1], f - i)
        d = (path[i + 1] - path[i]).normalized()
        side = V(across) - d * d.dot(V(across))
        side = Matrix.Rotation(twist * v, 3, d) @ side.normalized()
        normal = d.cross(side)
        k = w[0] + (w[1] - w[0]) * v
        return p + side * (u - 0.5) * k + normal * (wave * v**0.7 * math.sin(v * waves * 6.28 + u * 2.2) + 0.25 * wave * math.sin(u * 14 + v * 5) * v)
    return forms.sheet(at_uv, material, 24, 70, 0.004)
