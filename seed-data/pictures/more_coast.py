"""Forms and materials of the water-and-coast scenes: brine, glitter, net, a running dog, sky cards, spoons, leads."""
import math
import random

from mathutils import Matrix, Vector

import forms
import materials as m

V = Vector


def brine(colour="#dfe4e6", ripple=0.02, scale=3.0, mirror=0.75, rough=0.03):
    """A film of water that mirrors nearly everything; mirror 0..1 is how much."""
    b = m.Build("brine", colour, rough, metal=mirror, specular=0.6)
    if ripple:
        b.bump(b.noise(scale, 3, b.stretch(1, 2.2, 1)), ripple, 0.05)
    return b.material


def glitter(colour="#8d9aa2", shine="#ffffff", strength=2.5, scale=2.2, share=0.5, ripple=0.6):
    """Water full of sun: sparks that shine by themselves between dull hollows; share 0..1 is how much shines."""
    b = m.Build("glitter", colour, 0.25, specular=0.6)
    where = b.stretch(1, 0.32, 1)
    b.bump(b.noise(scale, 3, where), ripple, 0.08)
    spark = b.ramp(b.noise(scale * 2.4, 4, where, 0.7), 0.66 - 0.3 * share, 0.74 - 0.3 * share, ((0, 0, 0, 1), (1, 1, 1, 1)))
    b.links.new(spark, b.shader.inputs["Emission"])
    b.set("Emission Strength", strength)
    return b.material


def gauze(colour="#202226", clear=0.6):
    """Veil, net or ghost: a share of it is not there."""
    b = m.Build("gauze", colour, 0.9, specular=0.1)
    hole, mix = b.nodes.new("ShaderNodeBsdfTransparent"), b.nodes.new("ShaderNodeMixShader")
    mix.inputs[0].default_value = clear
    b.links.new(b.shader.outputs[0], mix.inputs[1])
    b.links.new(hole.outputs[0], mix.inputs[2])
    b.links.new(mix.outputs[0], b.nodes["Material Output"].inputs[0])
    return b.material


def salt_heap(at, radius, high, material, seed=1):
    """A raked heap of salt."""
    chance = random.Random(seed)
    profile = [(radius * (1 - t) ** 0.9, high * (1 - (1 - t) ** 1.25)) for t in (k / 14 for k in range(15))]
    thing = forms.lathe(profile, (0, 0, 0), material)
    for v in thing.data.vertices:
        v.co *= 1 + chance.gauss(0, 0.012)
    return forms.place(thing, at)


def running_dog(at, material, inside, turn_deg=0, scale=1.0):
    """A lean dog at full stretch in the air, that heads for camera-left; its middle is about 0.65 above the place."""
    limb = forms.limb
    groups = limb(((-0.24, 0, 0.60), 0.125), ((-0.06, 0, 0.625), 0.118), ((0.10, 0, 0.665), 0.088), ((0.24, 0, 0.70), 0.074), ((0.38, 0, 0.68), 0.085))
    groups += [[((-0.24, 0, 0.53), 0.085), ((-0.06, 0, 0.57), 0.08)], [((-0.2, 0, 0.70), 0.06), ((-0.34, 0, 0.66), 0.08)]]
    groups += limb(((-0.30, 0, 0.68), 0.085), ((-0.45, 0, 0.76), 0.058), ((-0.57, 0, 0.80), 0.050))
    groups += [[((-0.58, 0, 0.805), 0.052), ((-0.66, 0, 0.795), 0.042)], [((-0.64, 0, 0.79), 0.036), ((-0.80, 0, 0.765), 0.020)]]
    groups += limb(((-0.26, 0.06, 0.58), 0.075), ((-0.42, 0.07, 0.49), 0.044), ((-0.66, 0.07, 0.50), 0.024), ((-0.76, 0.07, 0.515), 0.021), ((-0.85, 0.07, 0.53), 0.024))
    groups += limb(((-0.26, -0.06, 0.57), 0.075), ((-0.36, -0.075, 0.44), 0.044), ((-0.60, -0.075, 0.39), 0.024), ((-0.70, -0.075, 0.385), 0.021), ((-0.79, -0.075, 0.385), 0.024))
    groups += limb(((0.36, 0.06, 0.65), 0.105), ((0.47, 0.08, 0.53), 0.062), ((0.66, 0.08, 0.57), 0.030), ((0.80, 0.08, 0.48), 0.021), ((0.90, 0.08, 0.45), 0.024))
    groups += limb(((0.34, -0.06, 0.63), 0.105), ((0.43, -0.085, 0.48), 0.062), ((0.60, -0.085, 0.46), 0.030), ((0.75, -0.085, 0.35), 0.021), ((0.84, -0.085, 0.31), 0.024))
    groups += limb(((0.45, 0, 0.71), 0.028), ((0.62, 0, 0.70), 0.018), ((0.78, 0, 0.74), 0.013), ((0.92, 0, 0.82), 0.007))
    things = [forms.blob(groups, material, 0.009, 6)]
    for s in (1, -1):
        things.append(forms.hull([((-0.575, s * 0.04, 0.845), 0.012), ((-0.47, s * 0.085, 0.90), 0.010), ((-0.42, s * 0.075, 0.885), 0.005), ((-0.50, s * 0.05, 0.835), 0.010)], inside))
    things.append(forms.ball((-0.815, 0, 0.772), 0.014, m.clay("#141210", 0.3)))
    return forms.place(things, at, turn_deg, scale)


def spoon(at, turn_deg, material, long=0.19, fork=False):
    """A spoon, or a fork, that lies on the table; its bowl away from the camera."""
    things = [forms.tube([(0, -long * 0.5, 0.006), (0, 0, 0.010), (0, long * 0.28, 0.005)], [0.006, 0.0035, 0.004], material, 8, 2)]
    if fork:
        things += [forms.rod((x, long * 0.28, 0.006), (x, long * 0.52, 0.007), 0.0025, material, sides=6) for x in (-0.010, -0.003, 0.004, 0.011)]
        things.append(forms.box((0, long * 0.28, 0.006), (0.026, 0.016, 0.004), material))
    else:
        things.append(forms.ball((0, long * 0.40, 0.009), (0.019, 0.032, 0.007), material))
    return forms.place(things, at, turn_deg)


def cloth_table(at, size, material, turn_deg=0, drop=0.5, seed=1):
    """A table under a cloth that hangs in folds."""
    w, d, h = size
    chance = random.Random(seed)
    phase = chance.uniform(0, 6)

    def at_uv(u, v):
        t = 2 * math.pi * u
        c, s = math.cos(t), math.sin(t)
        k = 1 / max(abs(c), abs(s))
        k = min(k, 1.36)
        if v < 0.5:
            r = v * 2
            return c * k * r * w / 2, s * k * r * d / 2, h
        f = (v - 0.5) * 2
        wave = 0.028 * math.sin(t * 17 + phase) * f + 0.02 * math.sin(t * 7 + 1) * f
        return c * k * w / 2 * (1 + 0.02 * f) + c * wave * 1.3, s * k * d / 2 * (1 + 0.02 * f) + s * wave * 1.3, h - f * drop * (1 + 0.16 * (max(abs(c), abs(s)) < 0.80))
    thing = forms.sheet(at_uv, material, 260, 44, 0.006)
    legs = [forms.box((x * (w / 2 - 0.08), y * (d / 2 - 0.08), h / 2 - 0.02), (0.05, 0.05, h - 0.04), m.wood("#3a2a1e", "z")) for x in (1, -1) for y in (1, -1)]
    return forms.place([thing, *legs], at, turn_deg)


def ghost(figure, shift, names=("head", "headwear"), clear=0.78, colour="#9fb0bd"):
    """A paler copy of a figure's head, moved a little."""
    import bpy
    pale = gauze(colour, clear)
    for thing in list(figure.things):
        if thing.name.split(".")[0] in names:
            copy = bpy.data.objects.new("ghost", thing.data.copy())
            copy.data.materials.clear()
            copy.data.materials.append(pale)
            copy.matrix_world = Matrix.Translation(shift) @ thing.matrix_world
            bpy.context.scene.collection.objects.link(copy)


def spray(points, count, spread, size, material, seed=1):
    """Drops about a path of points; spread in metres, one number or one for each axis."""
    s = spread if hasattr(spread, "__len__") else (spread,) * 3
    path = [V(p) for p in points]

    def where(c):
        f = c.random() * (len(path) - 1)
        i = min(int(f), len(path) - 2)
        p = path[i].lerp(path[i + 1], f - i)
        return p.x + c.gauss(0, s[0]), p.y + c.gauss(0, s[1]), max(p.z + c.gauss(0, s[2]), 0.005)
    return forms.specks(material, where, count, size, random.Random(seed))


def shorts(figure, material, slack=0.030, to=0.60):
    """Wide short trousers."""
    groups = figure._torso(slack * 0.5)[:1] + figure._torso(slack * 0.5)[4:5]
    for side in "rl":
        hip, knee = figure.joints["hip_" + side], figure.joints["knee_" + side]
        end = hip.lerp(knee, to)
        groups += [[(hip, 0.090 + slack * 0.6), (end, 0.080 + slack, knee - hip)]]
    return figure._wear(groups, material, warp=figure._creases(0.009, 14))


def veil(figure, material, fall=0.30):
    """A veil over the head that hangs before the face and behind the shoulders."""
    q, R = figure.head_point, figure.R_head

    def at_uv(u, v):
        t = 2 * math.pi * u
        if v < 0.35:
            a = v / 0.35 * math.pi / 2
            r, z = math.sin(a), 0.155 - 0.13 * (1 - math.cos(a)) - 0.03
        else:
            f = (v - 0.35) / 0.65
            r, z = 1 + 0.25 * f + 0.10 * f * math.sin(t * 9), -0.005 - fall * f
        return q(0.108 * r * math.cos(t), -0.012 + 0.135 * r * math.sin(t), z)
    return figure._place(forms.sheet(at_uv, material, 120, 40))


def clouds(dark, bright, strength=1.0, y=220.0, scale=1.0, low=0.42, high=0.66, seed=0.0, z=60.0):
    """A far card of torn cloud, seen only: it gives no light; strength 1 is white for a white colour."""
    b = m.Build("clouds", dark)
    move = b.nodes.new("ShaderNodeMapping")
    move.inputs["Scale"].default_value = (0.010 * scale, 1, 0.028 * scale)
    move.inputs["Location"].default_value = (seed, 0, seed)
    b.links.new(b.where, move.inputs[0])
    shine = b.nodes.new("ShaderNodeEmission")
    b.links.new(b.ramp(b.noise(1.0, 6, move.outputs[0], 0.6), low, high, (m.linear(dark), m.linear(bright))), shine.inputs[0])
    shine.inputs[1].default_value = strength
    b.links.new(shine.outputs[0], b.nodes["Material Output"].inputs[0])
    thing = forms.box((0, y, z), (y * 3, 0.5, z * 2.1), b.material, bevel=0)
    thing.visible_diffuse = thing.visible_shadow = False
    return thing


def bright_patch(at, radius, colour, strength):
    """A soft patch of light in the fog, seen only; it fades to nothing at its edge and faces the camera."""
    b = m.Build("patch", colour)
    clear, shine, mix = b.nodes.new("ShaderNodeBsdfTransparent"), b.nodes.new("ShaderNodeEmission"), b.nodes.new("ShaderNodeMixShader")
    shine.inputs[0].default_value, shine.inputs[1].default_value = m.linear(colour), strength
    fall = b.nodes.new("ShaderNodeTexGradient")
    fall.gradient_type = "QUADRATIC_SPHERE"
    b.links.new(b.where, fall.inputs[0])
    b.links.new(fall.outputs["Fac"], mix.inputs[0])
    b.links.new(clear.outputs[0], mix.inputs[1])
    b.links.new(shine.outputs[0], mix.inputs[2])
    b.links.new(mix.outputs[0], b.nodes["Material Output"].inputs[0])
    thing = forms.raw([(-1, 0, -1), (1, 0, -1), (1, 0, 1), (-1, 0, 1)], [(0, 1, 2, 3)], b.material)
    thing.matrix_world = Matrix.Translation(at) @ Matrix.Scale(radius, 4)
    thing.visible_diffuse = thing.visible_shadow = False
    return thing


def flap(figure, near, far, outer, inner, billow=0.10, waves=2.0):
    """A coat's open front in the wind: near and far are its (top, bottom) edges in the figure's axes; inner is seen from before."""
    (a, b), (c, d) = near, far
    a, b, c, d = V(a), V(b), V(c), V(d)
    normal = (c - a).cross(b - a).normalized()
    if normal.y < 0:
        normal = -normal

    def at_uv(u, v, lift=0.0):
        p = a.lerp(b, v).lerp(c.lerp(d, v), u)
        wave = billow * (math.sin(math.pi * min(u * 1.1, 1)) * 0.9 + 0.55 * u * math.sin(u * waves * 3.0 + v * 3.2))
        return p - normal * (wave + lift) - V((0, 0, 0.06)) * math.sin(v * 7) * u
    for material, lift in ((inner, 0.0), (outer, 0.012)):
        figure._place(forms.sheet(lambda u, v: at_uv(u, v, lift), material, 40, 40))


def noise_line(x, seed=0):
    """A smooth wandering value about -0.5..0.5."""
    from mathutils import noise
    return noise.noise((x, seed * 7.3, 0.5)) + 0.4 * noise.noise((x * 2.7, seed * 3.1, 4.5))


def pigeon(at, turn_deg=0, body="#8f949c", wing="#6d727c", scale=1.0, pitch_deg=0):
    """A resting pigeon that heads camera-left, about 0.30 long, its breast's underside at the place."""
    b, w, dark = m.clay(body, 0.8), m.clay(wing, 0.8), m.clay("#2d3138", 0.8)
    groups = forms.limb(((0.10, 0, 0.060), 0.032), ((0.02, 0, 0.062), 0.054), ((-0.055, 0, 0.075), 0.056), ((-0.088, 0, 0.125), 0.034), ((-0.094, 0, 0.160), 0.027))
    groups += [[((-0.094, 0, 0.160), 0.027), ((-0.110, 0, 0.158), 0.021)]]
    things = [forms.blob(groups, b, 0.006, 6)]
    things.append(forms.hull([((0.09, 0.02, 0.060), 0.012), ((0.09, -0.02, 0.060), 0.012), ((0.20, 0.028, 0.050), 0.005), ((0.20, -0.028, 0.050), 0.005)], dark))
    for s in (1, -1):
        things.append(forms.hull([((-0.045, s * 0.046, 0.088), 0.020), ((0.02, s * 0.052, 0.080), 0.022), ((0.075, s * 0.040, 0.074), 0.016), ((0.15, s * 0.018, 0.066), 0.006)], w))
        things.append(forms.tube([(0.045, s * 0.066, 0.055), (0.058, s * 0.058, 0.085), (0.062, s * 0.040, 0.100)], 0.006, dark, 8, 2))
        things.append(forms.ball((-0.108, s * 0.0215, 0.164), 0.0055, m.clay("#b5562a", 0.2)))
    things.append(forms.rod((-0.126, 0, 0.155), (-0.150, 0, 0.148), 0.008, m.clay("#3a3436", 0.5), 0.003))
    return forms.place(things, at, turn_deg, scale, 0, pitch_deg)
