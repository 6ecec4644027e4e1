"""Matte table-top materials: clay, felt, paper, wood, stone, brick, water. Colours are sRGB 0..255 or "#rrggbb"; each call makes one."""
import bpy


def linear(colour):
    """Linear RGBA of an sRGB colour, "#rrggbb" or three numbers 0..255."""
    if isinstance(colour, str):
        colour = [int(colour[i:i + 2], 16) for i in (1, 3, 5)]
    rgb = [c / 255 for c in colour]
    return [c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in rgb] + [1]


def reflecting(reflectance, warm=0.0):
    """A grey of a given reflectance, as the sRGB colour that the functions take; warm shifts it to brown, or blue below 0."""
    def back(c):
        return 255 * (12.92 * c if c <= 0.0031308 else 1.055 * c ** (1 / 2.4) - 0.055)
    return [back(min(reflectance * k, 1)) for k in (1 + 0.35 * warm, 1, 1 - 0.45 * warm)]


class Build:
    """A Principled material whose parts can be strung together."""

    def __init__(self, name, colour, rough=0.8, metal=0.0, specular=0.3, sheen=0.0):
        self.material = bpy.data.materials.new(name)
        self.material.use_nodes = True
        self.nodes, self.links = self.material.node_tree.nodes, self.material.node_tree.links
        self.shader = self.nodes["Principled BSDF"]
        self.set("Base Color", linear(colour))
        self.set("Roughness", rough)
        self.set("Metallic", metal)
        self.set("Specular", specular)
        self.set("Sheen", sheen)
        self.colour = linear(colour)
        self.bumped = None
        self.where = self.nodes.new("ShaderNodeTexCoord").outputs["Object"]

    def set(self, socket, value):
        """Sets an input of the shader."""
        self.shader.inputs[socket].default_value = value

    def stretch(self, x, y, z):
        """Object coordinates stretched along the axes."""
        node = self.nodes.new("ShaderNodeMapping")
        node.inputs["Scale"].default_value = (x, y, z)
        self.links.new(self.where, node.inputs[0])
        return node.outputs[0]

    def noise(self, scale, detail=4, where=None, rough=0.55):
        """Fractal noise, 0..1."""
        node = self.nodes.new("ShaderNodeTexNoise")
        node.inputs["Scale"].default_value = scale
        node.inputs["Detail"].default_value = detail
        node.inputs["Roughness"].default_value = rough
        self.links.new(where or self.where, node.inputs["Vector"])
        return node.outputs["Fac"]

    def ramp(self, value, low, high, colours):
        """A ramp between two values of the input, from the first colour to the second."""
        node = self.nodes.new("ShaderNodeValToRGB")
        ends = node.color_ramp.elements
        ends[0].position, ends[1].position = low, high
        ends[0].color, ends[1].color = colours
        self.links.new(value, node.inputs[0])
        return node.outputs[0]

    def mottle(self, scale=3.0, amount=0.25, where=None, detail=4):
        """The colour a little darker and lighter in patches."""
        dark = [c * (1 - amount) for c in self.colour[:3]] + [1]
        light = [min(c * (1 + amount), 1) for c in self.colour[:3]] + [1]
        self.links.new(self.ramp(self.noise(scale, detail, where), 0.3, 0.7, (dark, light)), self.shader.inputs["Base Color"])
        return self

    def bump(self, height, strength=0.3, distance=0.01):
        """A bump from any value; several are added up."""
        node = self.nodes.new("ShaderNodeBump")
        node.inputs["Strength"].default_value = strength
        node.inputs["Distance"].default_value = distance
        self.links.new(height, node.inputs["Height"])
        if self.bumped:
            self.links.new(self.bumped, node.inputs["Normal"])
        self.bumped = node.outputs[0]
        self.links.new(self.bumped, self.shader.inputs["Normal"])
        return self


def clay(colour, rough=0.75):
    """Smooth clay: skin, pots, plain props."""
    b = Build("clay", colour, rough, specular=0.25)
    b.mottle(7, 0.06)
    b.bump(b.noise(55, 3), 0.12, 0.004)
    b.set("Subsurface", 0.0)
    return b.material


def skin(tone="#c69678"):
    """Clay for faces and hands."""
    b = Build("skin", tone, 0.58, specular=0.35)
    b.mottle(9, 0.07)
    b.bump(b.noise(90, 3), 0.06, 0.003)
    return b.material


def cloth(colour, weave=260, folds=0.5, sheen=0.25):
    """Felt or wool with soft folds."""
    b = Build("cloth", colour, 0.92, specular=0.12, sheen=sheen)
    b.mottle(12, 0.14)
    b.bump(b.noise(5.5, 2, b.stretch(1.6, 1.6, 0.55), 0.4), folds, 0.05)
    b.bump(b.noise(weave, 2), 0.22, 0.0025)
    return b.material


def silk(colour, folds=0.4):
    """Thin cloth with a soft shine."""
    b = Build("silk", colour, 0.42, specular=0.45, sheen=0.4)
    b.bump(b.noise(6, 2, b.stretch(2, 2, 0.5), 0.4), folds, 0.05)
    return b.material


def leather(colour="#3a2a20"):
    """Boots, straps, bags."""
    b = Build("leather", colour, 0.5, specular=0.4)
    b.bump(b.noise(60, 3), 0.25, 0.004)
    return b.material


def hair(colour="#2b211c"):
    """Combed strands."""
    b = Build("hair", colour, 0.5, specular=0.35)
    b.mottle(40, 0.3, b.stretch(1.5, 1.5, 0.12))
    b.bump(b.noise(60, 3, b.stretch(1.5, 1.5, 0.12)), 0.7, 0.012)
    return b.material


def wood(colour="#7a5a3c", along="x", grain=1.0, rough=0.62, contrast=0.4):
    """Wood with its grain along an axis of the object."""
    b = Build("wood", colour, rough, specular=0.25)
    s = {"x": (0.6, 9, 9), "y": (9, 0.6, 9), "z": (9, 9, 0.6)}[along]
    where = b.stretch(*[k * grain for k in s])
    b.mottle(2.2, contrast, where, 4)
    b.bump(b.noise(6, 3, where), 0.3, 0.006)
    return b.material


def stone(colour="#8d8779", size=1.0, rough=0.9, depth=0.05, wet=0.0):
    """Rough stone; wet 0..1 makes it darker and shining in the hollows."""
    b = Build("stone", [c * (1 - 0.35 * wet) for c in _rgb(colour)], rough, specular=0.3 + 0.3 * wet)
    b.mottle(2.0 / size, 0.3, None, 4)
    b.bump(b.noise(3.0 / size, 5, None, 0.62), 0.8, depth)
    if wet:
        shine = b.ramp(b.noise(1.4 / size, 4), 0.38, 0.62, ((rough, rough, rough, 1), (rough * (1 - wet), rough * (1 - wet), rough * (1 - wet), 1)))
        b.links.new(shine, b.shader.inputs["Roughness"])
    return b.material


def _rgb(colour):
    return [int(colour[i:i + 2], 16) for i in (1, 3, 5)] if isinstance(colour, str) else list(colour)


def courses(colour="#7d786c", block=(0.9, 0.38), mortar="#3f3c36", rough=0.85, bump=0.06, wet=0.0, gap=0.012, up="z"):
    """Masonry or bricks: block is (length, height) in metres; it lies on the x-z or (up="y") the x-y plane of the object."""
    b = Build("courses", colour, rough, specular=0.25 + 0.3 * wet)
    brick = b.nodes.new("ShaderNodeTexBrick")
    split, join = b.nodes.new("ShaderNodeSeparateXYZ"), b.nodes.new("ShaderNodeCombineXYZ")
    b.links.new(b.where, split.inputs[0])
    add = b.nodes.new("ShaderNodeMath")
    b.links.new(split.outputs[0], add.inputs[0])
    if up == "z":
        b.links.new(split.outputs[1], add.inputs[1])
    else:
        add.inputs[1].default_value = 0
    b.links.new(add.outputs[0], join.inputs[0])
    b.links.new(split.outputs[2 if up == "z" else 1], join.inputs[1])
    wobble = b.nodes.new("ShaderNodeVectorMath")
    noise = b.nodes.new("ShaderNodeTexNoise")
    noise.inputs["Scale"].default_value = 6
    b.links.new(b.where, noise.inputs["Vector"])
    shrink = b.nodes.new("ShaderNodeVectorMath")
    shrink.operation = "SCALE"
    shrink.inputs["Scale"].default_value = gap * 1.5
    b.links.new(noise.outputs["Color"], shrink.inputs[0])
    b.links.new(join.outputs[0], wobble.inputs[0])
    b.links.new(shrink.outputs[0], wobble.inputs[1])
    b.links.new(wobble.outputs[0], brick.inputs["Vector"])
    c = linear(colour)
    brick.inputs["Color1"].default_value = [k * 0.72 for k in c[:3]] + [1]
    brick.inputs["Color2"].default_value = [min(k * 1.25, 1) for k in c[:3]] + [1]
    brick.inputs["Mortar"].default_value = linear(mortar)
    brick.inputs["Scale"].default_value = 1
    brick.inputs["Mortar Size"].default_value = gap
    brick.inputs["Mortar Smooth"].default_value = 0.4
    brick.inputs["Brick Width"].default_value, brick.inputs["Row Height"].default_value = block
    mix = b.nodes.new("ShaderNodeMixRGB")
    mix.blend_type = "MULTIPLY"
    mix.inputs[0].default_value = 0.6
    b.links.new(brick.outputs["Color"], mix.inputs[1])
    b.links.new(b.ramp(b.noise(2.5, 4), 0.25, 0.75, ((0.45, 0.45, 0.45, 1), (1.1, 1.1, 1.1, 1))), mix.inputs[2])
    b.links.new(mix.outputs[0], b.shader.inputs["Base Color"])
    deep = b.nodes.new("ShaderNodeMath")
    deep.operation = "MULTIPLY"
    deep.inputs[1].default_value = -1
    b.links.new(brick.outputs["Fac"], deep.inputs[0])
    b.bump(deep.outputs[0], 0.9, bump)
    b.bump(b.noise(7, 4, None, 0.65), 0.6, bump * 0.7)
    if wet:
        dry, shiny = rough, max(rough - 0.6 * wet, 0.12)
        b.links.new(b.ramp(b.noise(1.2, 4), 0.4, 0.65, ((dry,) * 3 + (1,), (shiny,) * 3 + (1,))), b.shader.inputs["Roughness"])
    return b.material


def wet_ground(colour="#3a3a3a", puddles=0.5, rough=0.7, bump=0.02, scale=0.8):
    """Ground with shining puddles: puddles 0..1 is how much of it they take."""
    b = Build("wet ground", colour, rough, specular=0.5)
    b.mottle(3, 0.25, None, 4)
    where = b.noise(scale, 5)
    edge = 0.62 - 0.3 * puddles
    smooth = b.ramp(where, edge - 0.05, edge + 0.05, ((rough,) * 3 + (1,), (0.06,) * 3 + (1,)))
    b.links.new(smooth, b.shader.inputs["Roughness"])
    flat = b.ramp(where, edge - 0.05, edge + 0.05, ((1, 1, 1, 1), (0, 0, 0, 1)))
    grit = b.nodes.new("ShaderNodeMath")
    grit.operation = "MULTIPLY"
    b.links.new(b.noise(14, 4, None, 0.65), grit.inputs[0])
    b.links.new(flat, grit.inputs[1])
    b.bump(grit.outputs[0], 0.8, bump)
    return b.material


def water(colour="#0e1a20", ripple=0.25, scale=2.0, rough=0.06):
    """Dark water with ripples."""
    b = Build("water", colour, rough, specular=0.6)
    b.bump(b.noise(scale, 3, b.stretch(1, 2.2, 1)), ripple, 0.08)
    return b.material


def metal(colour="#8a8d90", rough=0.35, worn=0.2):
    """Bare metal."""
    b = Build("metal", colour, rough, metal=1.0, specular=0.5)
    b.mottle(12, worn)
    b.bump(b.noise(30, 4), 0.08, 0.004)
    return b.material


def rust(colour="#6b3a22"):
    """Rusted iron plates."""
    b = Build("rust", colour, 0.85, specular=0.3)
    b.mottle(2.5, 0.5, None, 5)
    b.bump(b.noise(9, 5, None, 0.7), 0.7, 0.02)
    return b.material


def glass(tint="#dfeef2", rough=0.03):
    """A thin pane: mostly see-through, light passes; for windows, not for bottles."""
    b = Build("pane", tint, rough, specular=0.5)
    clear, mix = b.nodes.new("ShaderNodeBsdfTransparent"), b.nodes.new("ShaderNodeMixShader")
    clear.inputs[0].default_value = linear(tint)
    gloss, edge = b.nodes.new("ShaderNodeBsdfGlossy"), b.nodes.new("ShaderNodeFresnel")
    gloss.inputs["Roughness"].default_value = rough
    edge.inputs[0].default_value = 1.35
    b.links.new(edge.outputs[0], mix.inputs[0])
    b.links.new(clear.outputs[0], mix.inputs[1])
    b.links.new(gloss.outputs[0], mix.inputs[2])
    b.links.new(mix.outputs[0], b.nodes["Material Output"].inputs[0])
    return b.material


def solid_glass(tint="#cfe6df", rough=0.02):
    """A bottle or a tumbler: clear, dark-edged, reflecting; cheap, with shadows that let light through."""
    b = Build("glass", tint, rough)
    clear, gloss, edge, mix = (b.nodes.new(n) for n in ("ShaderNodeBsdfTransparent", "ShaderNodeBsdfGlossy", "ShaderNodeLayerWeight", "ShaderNodeMixShader"))
    clear.inputs[0].default_value = linear(tint)
    gloss.inputs["Roughness"].default_value = rough
    edge.inputs[0].default_value = 0.35
    b.links.new(edge.outputs["Fresnel"], mix.inputs[0])
    b.links.new(clear.outputs[0], mix.inputs[1])
    b.links.new(gloss.outputs[0], mix.inputs[2])
    b.links.new(mix.outputs[0], b.nodes["Material Output"].inputs[0])
    return b.material


def paper(colour="#e8e0cf", through=0.35):
    """Paper or a leaf: matte, a share of the light comes through it."""
    b = Build("paper", colour, 0.9, specular=0.1)
    b.mottle(5, 0.12)
    thin, mix = b.nodes.new("ShaderNodeBsdfTranslucent"), b.nodes.new("ShaderNodeMixShader")
    thin.inputs[0].default_value = linear(colour)
    mix.inputs[0].default_value = through
    b.links.new(b.shader.outputs[0], mix.inputs[1])
    b.links.new(thin.outputs[0], mix.inputs[2])
    b.links.new(mix.outputs[0], b.nodes["Material Output"].inputs[0])
    return b.material


def glow(colour="#ffd9a0", strength=2.0):
    """Something that shines: a lamp, a lit window, a candle; strength 1 looks white."""
    b = Build("glow", colour)
    shine = b.nodes.new("ShaderNodeEmission")
    shine.inputs[0].default_value, shine.inputs[1].default_value = linear(colour), strength
    b.links.new(shine.outputs[0], b.nodes["Material Output"].inputs[0])
    return b.material


def haze(density=0.02, colour="#ffffff", forward=0.3):
    """Air that shows beams; for a closed box around the beams, see places.air."""
    material = bpy.data.materials.new("haze")
    material.use_nodes = True
    nodes, links = material.node_tree.nodes, material.node_tree.links
    nodes.clear()
    scatter, out = nodes.new("ShaderNodeVolumeScatter"), nodes.new("ShaderNodeOutputMaterial")
    scatter.inputs["Color"].default_value = linear(colour)
    scatter.inputs["Density"].default_value = density
    scatter.inputs["Anisotropy"].default_value = forward
    links.new(scatter.outputs[0], out.inputs["Volume"])
    return material
