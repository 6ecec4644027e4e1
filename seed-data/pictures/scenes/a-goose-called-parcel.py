"""A white goose stands on a crate with green baize like an alderman, before a mossy painted cloth; a straw on her beak."""
import math

import forms
import materials as m
import more_indoors as more
import props

CAPTION = "A white goose, neck long, stands pompously on a crate covered with green baize, looking to the left, a straw stuck to her orange beak; behind her a painted cloth of moss and umber with a soft glow."
CAMERA = dict(portrait=True, zoom=0.98, aim_move=(-0.02, 0, -0.12))
WORLD = dict(seen=0.1)
FINISH = dict(samples=16, contrast=0.2, saturation=1.1, vignette=0.3, bloom=0.05)


def build(document):
    """The cloth, the crate, the goose."""
    b = m.Build("painted cloth", "#5a5a3a", 0.95, specular=0.1)
    tones = (m.linear("#3f2f1e"), m.linear("#77814a"))
    b.links.new(b.ramp(b.noise(1.6, 6, None, 0.7), 0.34, 0.66, tones), b.shader.inputs["Base Color"])
    b.bump(b.noise(3, 3, b.stretch(2, 2, 0.5)), 0.3, 0.03)
    forms.upright(document["surfaces"][0], b.material, 0.05)
    forms.box((0, 0, -0.05), (6, 8, 0.1), m.wood("#3d2c1d", "x"), bevel=0)
    props.crate((0.02, 0, 0.0), (0.78, 0.5, 0.53), m.wood("#6a4f34"), -8)
    green = m.cloth("#1f5a3c", 300, 0.5)

    def baize(u, v):
        x, y = (u - 0.5) * 1.0, (v - 0.5) * 0.74
        over = max(abs(x) - 0.40, 0), max(-y - 0.26, 0, y - 0.26)
        drop = sum(over)
        wave = 0.02 * math.sin(x * 16) * (over[1] > 0) + 0.02 * math.sin(y * 18) * (over[0] > 0)
        px = math.copysign(min(abs(x), 0.40), x) + math.copysign(wave, x) * (over[0] > 0) + 0.0
        py = math.copysign(min(abs(y), 0.26), y) - abs(wave) * (over[1] > 0) * (1 if y < 0 else -1)
        return px, py, 0.548 - drop * 2.0
    cloth = forms.sheet(baize, green, 90, 70, 0.008)
    forms.place(cloth, (0.02, 0, 0), -8)
    more.goose((0.06, 0.0, 0.553), 38, 1.02)
    straw = m.clay("#d9b65a", 0.6)
    c, s = math.cos(math.radians(38)), math.sin(math.radians(38))

    def world(x, y, z):
        return 0.06 + 1.02 * (x * c - y * s), 1.02 * (x * s + y * c), 0.553 + 1.02 * z
    forms.rod(world(-0.30, -0.015, 0.782), world(-0.43, -0.08, 0.700), 0.0024, straw)
