"""From the renderer's linear picture to the JPEG: denoise, haze, bloom, curve, grain, mark, EXIF."""
import concurrent.futures
import datetime
import pathlib
import random
import subprocess

import numpy as np
from PIL import Image, ImageDraw, ImageFont

LUMINANCE = np.array([0.2126, 0.7152, 0.0722], np.float32)


def shift(a, dy, dx):
    """The picture moved by some pixels, its edges held."""
    h, w = a.shape[:2]
    return a[np.clip(np.arange(h) + dy, 0, h - 1)][:, np.clip(np.arange(w) + dx, 0, w - 1)]


def blur(a, radius, times=3):
    """Three box blurs, which is nearly a Gaussian."""
    radius = max(int(radius), 1)
    for _ in range(times):
        for axis in (0, 1):
            pad = [(0, 0)] * a.ndim
            pad[axis] = (radius + 1, radius)
            total = np.cumsum(np.pad(a, pad, mode="edge"), axis=axis, dtype=np.float64)
            n = a.shape[axis]
            high = np.take(total, np.arange(2 * radius + 1, 2 * radius + 1 + n), axis=axis)
            low = np.take(total, np.arange(0, n), axis=axis)
            a = ((high - low) / (2 * radius + 1)).astype(np.float32)
    return a


def _filter_level(light, near, spread, normal, albedo, step):
    """One level of the wavelet filter over some rows that are padded by twice the step on every side."""
    reach = 2 * step
    h, w = light.shape[0] - 2 * reach, light.shape[1] - 2 * reach

    def part(a, y, x):
        return a[reach + y:reach + y + h, reach + x:reach + x + w]
    total, weights = np.zeros((h, w, 3), np.float32), np.zeros((h, w), np.float32)
    here_near, here_normal, here_albedo = part(near, 0, 0), part(normal, 0, 0), part(albedo, 0, 0)
    slack = 1 / part(spread, 0, 0)
    for dy in (-2, -1, 0, 1, 2):
        for dx in (-2, -1, 0, 1, 2):
            y, x = dy * step, dx * step
            unlike = ((part(near, y, x) - here_near) * slack) ** 2
            for i in range(3):
                unlike += (part(normal, y, x)[..., i] - here_normal[..., i]) ** 2 * 17
                unlike += (part(albedo, y, x)[..., i] - here_albedo[..., i]) ** 2 * 250
            weight = np.exp(-unlike) * ((0.375, 0.25, 0.0625)[abs(dy)] * (0.375, 0.25, 0.0625)[abs(dx)])
            total += part(light, y, x) * weight[..., None]
            weights += weight
    return total / weights[..., None], weights


def denoise(colour, albedo, normal, strength=1.0, levels=4):
    """An edge-stopping wavelet filter (Dammertz et al. 2010) on the light without the surface colour."""
    if strength <= 0:
        return colour
    base = np.maximum(albedo, 0.03)
    light = np.log1p(np.minimum(colour / base, 60) * 4).astype(np.float32)
    for level in range(levels):
        step = 2**level
        grey = light @ LUMINANCE
        near = blur(grey, 1, 1)
        spread = (np.sqrt(np.maximum(blur(grey**2, 2, 1) - blur(grey, 2, 1) ** 2, 0)) + 0.012) * (1.6 * strength)
        reach = 2 * step
        padded = [np.pad(a, [(reach, reach), (reach, reach)] + [(0, 0)] * (a.ndim - 2), mode="edge") for a in (light, near, spread, normal, albedo)]
        cuts = np.linspace(0, light.shape[0], 9).astype(int)
        with concurrent.futures.ThreadPoolExecutor(2) as workers:
            bands = workers.map(lambda cut: _filter_level(*[a[cut[0]:cut[1] + 2 * reach] for a in padded], step), zip(cuts, cuts[1:]))
            bands = list(bands)
        light = np.concatenate([b[0] for b in bands])
        if level == 0:
            alone = np.clip((0.5 - np.concatenate([b[1] for b in bands])) / 0.3, 0, 1)
    result = np.expm1(light) / 4 * base
    # Pixels on an edge have no likes to be averaged with: a small tent filter smooths their steps.
    ring = sum(shift(result, y, x) * (0.25, 0.125, 0.0625)[abs(y) + abs(x)] for y in (-1, 0, 1) for x in (-1, 0, 1))
    return result + (ring - result) * alone[..., None]


def fireflies(colour):
    """Single pixels far brighter than their neighbours, brought down to them."""
    grey = colour @ LUMINANCE
    around = np.sort(np.stack([shift(grey, y, x) for y in (-1, 0, 1) for x in (-1, 0, 1) if (y, x) != (0, 0)]), axis=0)
    limit = around[5] * 2 + 0.15
    return colour * np.minimum(1, limit / np.maximum(grey, 1e-6))[..., None]


def curve(x, shoulder=0.42, white=1.0):
    """Straight through middle grey, a soft shoulder above it."""
    x = np.maximum(x, 0)
    room = white - shoulder
    return np.where(x < shoulder, x, shoulder + room * (1 - np.exp(-(x - shoulder) / room)))


def to_srgb(x):
    """The sRGB transfer curve."""
    x = np.clip(x, 0, 1)
    return np.where(x <= 0.0031308, 12.92 * x, 1.055 * np.power(x, 1 / 2.4) - 0.055)


def enlarge(a, size):
    """An array as a picture of another size."""
    if (a.shape[1], a.shape[0]) == tuple(size):
        return a
    return np.stack([np.asarray(Image.fromarray(np.ascontiguousarray(a[..., i], np.float32)).resize(size, Image.LANCZOS)) for i in range(3)], -1)


def develop(colour, albedo, normal, distance, finish, size=None):
    """The whole finish; what finish may hold is listed in README.md."""
    colour = fireflies(colour)
    colour = denoise(colour, albedo, normal, finish.get("denoise", 1.0))
    if finish.get("mist"):
        _, tone = finish["mist"]
        share = 1 - np.exp(-4 * distance)
        share = np.where(distance > 0.999, finish.get("mist_sky", 0.8), share)
        colour = colour * (1 - share[..., None]) + np.array(tone, np.float32) * share[..., None]
    bloom = finish.get("bloom", 0.06)
    if bloom:
        per = colour.shape[1] / 1080
        bright = np.clip(colour, 0, 4)
        colour = colour * (1 - bloom) + bloom * (0.6 * blur(bright, 9 * per) + 0.4 * blur(bright, 34 * per))
    colour = colour * 2 ** finish.get("push", 0.0)
    colour = curve(colour, finish.get("shoulder", 0.42))
    tone = to_srgb(colour)
    grey = (tone @ LUMINANCE)[..., None]
    tone = grey + (tone - grey) * finish.get("saturation", 1.0)
    contrast = finish.get("contrast", 0.12)
    middle = 118 / 255
    tone = tone + contrast * (tone - middle) * (1 - np.abs(2 * np.clip(tone, 0, 1) - 1)) * 2
    lift = np.array(finish.get("shadows", (0.012, 0.012, 0.016)), np.float32)
    tone = tone * (1 - lift) + lift
    tone = tone * np.array(finish.get("tint", (1, 1, 1)), np.float32)
    if size:
        tone = enlarge(tone, size)
    vignette = finish.get("vignette", 0.12)
    h, w = tone.shape[:2]
    y, x = np.mgrid[-1:1:h * 1j, -1:1:w * 1j]
    tone = tone * (1 - vignette * np.clip((x**2 + y**2) / 2, 0, 1) ** 1.5)[..., None]
    chance = np.random.default_rng(7)
    fine = chance.normal(0, 1, (h, w)).astype(np.float32)
    fine = 0.6 * fine + 0.8 * blur(fine, 1) * 2
    amount = finish.get("grain", 0.011) * (0.5 + 2 * np.clip(tone @ LUMINANCE, 0, 1) * (1 - np.clip(tone @ LUMINANCE, 0, 1)))
    return np.clip(tone + (fine * amount)[..., None], 0, 1)


def mark(picture, corner="right"):
    """The word "illustration", small, in a lower corner."""
    w, h = picture.size
    size = max(round(max(w, h) * 0.0175), 9)
    font = ImageFont.truetype("/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf", size)
    text = "illustration"
    box = font.getbbox(text)
    x = w - box[2] - size if corner == "right" else size
    y = h - box[3] - size
    under = np.asarray(picture.crop((x, y, x + box[2], y + box[3])).convert("L")).mean()
    over = Image.new("RGBA", picture.size, (0, 0, 0, 0))
    ink = (20, 20, 24, 190) if under > 128 else (240, 238, 232, 175)
    ImageDraw.Draw(over).text((x, y), text, font=font, fill=ink)
    return Image.alpha_composite(picture.convert("RGBA"), over).convert("RGB")


def save_jpeg(tone, path, corner="right", most_bytes=138_000, least_bytes=70_000):
    """Writes the JPEG at the best quality that stays near 100 kB."""
    picture = mark(Image.fromarray((tone * 255 + 0.5).astype(np.uint8)), corner)
    for quality in range(92, 60, -2):
        picture.save(path, quality=quality, optimize=True, progressive=True, subsampling=2 if quality < 90 else 0)
        if pathlib.Path(path).stat().st_size <= most_bytes:
            break


def save_png(tone, path, corner="right"):
    """The same picture as PNG, to look at."""
    path.parent.mkdir(parents=True, exist_ok=True)
    mark(Image.fromarray((tone * 255 + 0.5).astype(np.uint8)), corner).save(path)


def write_exif(path, slug, document):
    """What the camera would have written, without maker, place or thumbnail."""
    exposure, occasion = document["exposure"], document["occasion"]
    moment = datetime.datetime.fromisoformat(occasion["date"] + "T" + occasion.get("time", "12:00"))
    chance = random.Random(slug)
    moment += datetime.timedelta(seconds=chance.randint(-150, 200))
    body, lens = document["camera"]["body"], document["camera"]["lens"]
    across = 43.27 / (body["width_mm"] ** 2 + body["height_mm"] ** 2) ** 0.5
    values = {
        "FNumber": exposure["f_number"], "ExposureTime": exposure["time"], "ISO": exposure["iso"],
        "FocalLength": lens["focal_length_mm"],
        "FocalLengthIn35mmFormat": round(lens["focal_length_mm"] * across),
        "DateTimeOriginal": moment.strftime("%Y:%m:%d %H:%M:%S"), "OffsetTimeOriginal": occasion.get("utc_offset", "+00:00"),
        "ImageDescription": "Illustration: " + document["title"], "Artist": "Quernhouse Pictures",
        "WhiteBalance": "Manual", "ColorSpace": "sRGB",
    }
    subprocess.run(["exiftool", "-q", "-overwrite_original", "-all=",
                    *[f"-EXIF:{name}={value}" for name, value in values.items()], str(path)], check=True)
