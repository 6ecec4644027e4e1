"""Renders pictures of the demo studio from its setups' own lights.

    blender -b -P seed-data/pictures/render.py -- [--draft] [--samples N] [--percent P] [--out DIR] slug [slug ...]

For each slug it reads ../studio/setups/SLUG.json and scenes/SLUG.py, builds the camera, the lights and the ambient from the
document, the figures and the place from the scene, and writes ../studio/pictures/SLUG.jpg (with --draft a third of the size, to
/tmp/pictures, unless --out says where). --percent renders fewer pixels and enlarges them before the grain: for a busy machine.
"""
import importlib.util
import json
import os
import pathlib
import sys
import tempfile
import time

import addon_utils
import bpy
import numpy as np

HERE = pathlib.Path(__file__).resolve().parent
sys.dont_write_bytecode = True
sys.path.insert(0, str(HERE))
import finish  # noqa: E402
import forms  # noqa: E402
import lights  # noqa: E402

SETUPS = HERE.parent / "studio" / "setups"
PICTURES = HERE.parent / "studio" / "pictures"


def load_scene(slug):
    """The scene module of a slug."""
    spec = importlib.util.spec_from_file_location("scene_" + slug.replace("-", "_"), HERE / "scenes" / (slug + ".py"))
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


def start(samples):
    """An empty Cycles scene that keeps the passes which the finish needs."""
    bpy.ops.wm.read_factory_settings(use_empty=True)
    addon_utils.enable("cycles")
    scene = bpy.context.scene
    scene.render.engine = "CYCLES"
    cycles = scene.cycles
    cycles.samples, cycles.use_denoising = samples, False
    cycles.use_adaptive_sampling, cycles.adaptive_threshold, cycles.adaptive_min_samples = True, 0.08, 8
    cycles.max_bounces, cycles.diffuse_bounces, cycles.glossy_bounces = 4, 2, 2
    cycles.transmission_bounces, cycles.transparent_max_bounces, cycles.volume_bounces = 4, 12, 0
    cycles.sample_clamp_indirect = 3
    cycles.caustics_reflective = cycles.caustics_refractive = False
    cycles.volume_step_rate = 4
    scene.render.threads_mode = "AUTO"
    scene.view_settings.view_transform = "Raw"
    scene.render.film_transparent = False
    scene.view_layers[0].cycles.denoising_store_passes = True
    scene.view_layers[0].use_pass_mist = True
    forms.begin()
    return scene


def render(scene, percentage):
    """Renders and returns colour, albedo, normal and mist (0 near, 1 far) as arrays, the top line first."""
    scene.render.resolution_percentage = percentage
    with tempfile.TemporaryDirectory() as folder:
        scene.use_nodes = True
        nodes, links = scene.node_tree.nodes, scene.node_tree.links
        nodes.clear()
        layers = nodes.new("CompositorNodeRLayers")
        out = nodes.new("CompositorNodeOutputFile")
        out.base_path = folder
        out.format.file_format, out.format.color_depth, out.format.color_mode = "OPEN_EXR", "32", "RGBA"
        out.file_slots.clear()
        names = {"colour": "Image", "albedo": "Denoising Albedo", "normal": "Denoising Normal", "mist": "Mist"}
        for name, output in names.items():
            out.file_slots.new(name)
            links.new(layers.outputs[output], out.inputs[name])
        bpy.ops.render.render()
        arrays = {}
        for name in names:
            path = next(pathlib.Path(folder).glob(name + "*.exr"))
            image = bpy.data.images.load(str(path))
            image.colorspace_settings.name = "Raw"
            pixels = np.empty(image.size[0] * image.size[1] * 4, np.float32)
            image.pixels.foreach_get(pixels)
            arrays[name] = pixels.reshape(image.size[1], image.size[0], 4)[::-1, :, :3].copy()
    return arrays["colour"], arrays["albedo"], arrays["normal"], arrays["mist"][..., 0]


def picture(slug, draft, samples, percent, folder):
    """One picture, from its document to its file."""
    began = time.time()
    document = json.loads((SETUPS / (slug + ".json")).read_text(encoding="utf-8"))
    module = load_scene(slug)
    settings = getattr(module, "FINISH", {})
    scene = start(samples or (16 if draft else settings.get("samples", 24)))
    lights.add_camera(document, **getattr(module, "CAMERA", {}))
    trims = getattr(module, "TRIMS", {})
    for light in document.get("lights", []):
        lights.add_light(light, document, trims.get(light["id"], 0.0))
    lights.add_world(document, **getattr(module, "WORLD", {}))
    module.build(document)
    air = scene.world.mist_settings
    air.start, air.depth, air.falloff = settings.get("mist_from", 0), settings.get("mist", (10,))[0] * 4, "LINEAR"
    built = time.time()
    passes = render(scene, percent or (36 if draft else 100))
    rendered = time.time()
    size = (scene.render.resolution_x, scene.render.resolution_y)
    tone = finish.develop(*passes, settings, None if draft else size)
    folder.mkdir(parents=True, exist_ok=True)
    path = folder / (slug + ".jpg")
    finish.save_jpeg(tone, path, settings.get("mark", "right"))
    finish.save_png(tone, pathlib.Path("/tmp/pictures") / (slug + ".png"), settings.get("mark", "right"))
    if not draft:
        finish.write_exif(path, slug, document)
    print(f"PICTURE {slug}: built in {built - began:.1f} s, rendered in {rendered - built:.1f} s, finished in "
          f"{time.time() - rendered:.1f} s, {path.stat().st_size // 1000} kB, {path}", flush=True)


def main(words):
    """Reads the words after -- and makes the pictures."""
    draft, samples, percent, folder, slugs = False, None, None, None, []
    words = list(words)
    while words:
        word = words.pop(0)
        if word == "--draft":
            draft = True
        elif word == "--samples":
            samples = int(words.pop(0))
        elif word == "--percent":
            percent = int(words.pop(0))
        elif word == "--out":
            folder = pathlib.Path(words.pop(0))
        else:
            slugs.append(word)
    folder = folder or (pathlib.Path("/tmp/pictures") if draft else PICTURES)
    for slug in slugs:
        picture(slug, draft, samples, percent, folder)


if __name__ == "__main__":
    try:
        main(sys.argv[sys.argv.index("--") + 1:] if "--" in sys.argv else [])
    except Exception:
        import traceback
        traceback.print_exc()
        sys.stdout.flush()
        sys.stderr.flush()
        os._exit(1)
