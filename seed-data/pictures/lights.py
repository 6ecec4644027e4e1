"""The document's lights, ambient and camera as Cycles lights, world and camera, calibrated.

Level 0 means: an 18 % grey card that faces the light comes out at linear 0.18, which is sRGB 118 (middle grey). In Cycles a
card of reflectance r under irradiance E has radiance r*E/pi, so level 0 is E = pi at the target.
"""
import datetime
import math

import bpy
from mathutils import Vector

FLASH_K = 5600


def point(p):
    """A document's point as a vector."""
    return Vector((p["x_m"], p["y_m"], p["z_m"]))


def kelvin(temperature_k):
    """Linear sRGB of a black body, luminance 1, by the CIE locus approximation of Kim et al. (2002)."""
    t = min(max(temperature_k, 1667), 25000)
    if t <= 4000:
        x = -0.2661239e9 / t**3 - 0.2343589e6 / t**2 + 0.8776956e3 / t + 0.179910
    else:
        x = -3.0258469e9 / t**3 + 2.1070379e6 / t**2 + 0.2226347e3 / t + 0.240390
    if t <= 2222:
        y = -1.1063814 * x**3 - 1.34811020 * x**2 + 2.18555832 * x - 0.20219683
    elif t <= 4000:
        y = -0.9549476 * x**3 - 1.37418593 * x**2 + 2.09137015 * x - 0.16748867
    else:
        y = 3.0817580 * x**3 - 5.87338670 * x**2 + 3.75112997 * x - 0.37001483
    X, Y, Z = x / y, 1.0, (1 - x - y) / y
    return [max(c, 0.002) for c in (3.2406 * X - 1.5372 * Y - 0.4986 * Z,
                                    -0.9689 * X + 1.8758 * Y + 0.0415 * Z,
                                    0.0557 * X - 0.2040 * Y + 1.0570 * Z)]


def colour(temperature_k, white_balance_k):
    """Colour of a source as the camera sees it at its white balance, luminance 1."""
    rgb = [a / b for a, b in zip(kelvin(temperature_k), kelvin(white_balance_k))]
    luminance = 0.2126 * rgb[0] + 0.7152 * rgb[1] + 0.0722 * rgb[2]
    return [c / luminance for c in rgb]


def seconds(text):
    """A shutter time such as 1/125 or 2 in seconds."""
    top, _, below = str(text).replace("s", "").strip().partition("/")
    return float(top) / float(below or 1)


def exposure_ev(exposure):
    """The EV at ISO 100 at which an incident reading gives exactly this exposure."""
    return (2 * math.log2(exposure["f_number"]) - math.log2(seconds(exposure["time"]))
            - math.log2(exposure["iso"] / 100) + exposure.get("neutral_density_stops", 0))


def ambient_level(document):
    """Stops of the ambient against the exposure; None without a figure."""
    ambient = document.get("ambient") or {}
    return ambient["ev100"] - exposure_ev(document["exposure"]) if "ev100" in ambient else None


def level(light, document):
    """Stops of one light at its target against the exposure, from its reading or else from its power."""
    exposure = document["exposure"]
    grey = exposure.get("neutral_density_stops", 0)
    pops = math.log2(light.get("pops", 1))
    reading = light.get("reading")
    if reading:
        stops = 2 * math.log2(reading["f_number"] / exposure["f_number"]) + reading.get("tenths", 0) / 10 - grey + pops
        stops -= math.log2(reading.get("iso", exposure["iso"]) / exposure["iso"])
        if reading.get("includes_ambient") and ambient_level(document) is not None:
            stops = math.log2(max(2**stops - 2**ambient_level(document), 2 ** (stops - 3)))
        return stops
    output = light.get("output") or light["head"]["output"]
    distance = (point(light["place"]) - point(light["target"]["at"])).length
    if "guide_number_m" in output:
        f_number, iso = output["guide_number_m"] / distance, 100
    else:
        f_number, iso = output["f_number"] * output["distance_m"] / distance, output.get("iso", 100)
    modifier_loss = 0 if "output" in light else (light.get("modifier") or {}).get("loss_stops", 0)
    return (2 * math.log2(f_number / exposure["f_number"]) + math.log2(exposure["iso"] / iso)
            - modifier_loss - sum(g.get("loss_stops", 0) for g in light.get("gels", []))
            - light.get("stops_down", 0) - grey + math.log2(light.get("heads", 1)) + pops)


def measured_direction(light, document):
    """Where the meter at the target faces: the light, the camera, or out of the surface."""
    target = light["target"]
    held = target.get("held", "toward_light")
    at = point(target["at"])
    if held == "toward_camera":
        return (point(document["camera"]["place"]) - at).normalized()
    if held == "on_surface":
        facing = math.radians(target.get("surface_facing_deg", 0))
        return Vector((math.sin(facing), -math.cos(facing), 0))
    return (point(light["place"]) - at).normalized()


def per_watt(place, aim, at, normal, face, spread):
    """Irradiance at a point by an area light of one watt in Blender's unit, by summing over its face."""
    forward = (aim - place).normalized()
    turn = forward.to_track_quat("-Z", "Y")
    half = min(spread / 2, math.radians(89.9))
    gain = math.tan(half) / (math.tan(half) - half)
    total, count, steps = 0.0, 0, 12
    for i in range(steps):
        for j in range(steps):
            u, v = (i + 0.5) / steps - 0.5, (j + 0.5) / steps - 0.5
            if face[0] == "disc" and u * u + v * v > 0.25:
                continue
            ray = at - (place + turn @ Vector((u * face[1], v * face[2], 0)))
            d = ray.length
            leaving = ray.normalized().dot(forward)
            count += 1
            if leaving <= 0:
                continue
            bent = math.sqrt(max(1 - leaving**2, 0)) / leaving
            total += (max(1 - bent / math.tan(half), 0) * gain * leaving
                      * max(-ray.normalized().dot(normal), 0.02) / d**2)
    return max(total / max(count, 1) / 4, 1e-9)


def face_of(modifier):
    """(shape, width, height) of a modifier's true face, or None where it is a small hard source."""
    face = (modifier or {}).get("face")
    if not face:
        return None
    if face["shape"] == "disc":
        return "disc", face["diameter_m"], face["diameter_m"]
    return "rectangle", face["width_m"], face["height_m"]


def cone_of(modifier):
    """(angle in degrees, softness of its edge, radius of the source) of a small hard source."""
    if not modifier:
        return 110, 0.9, 0.07
    spread = modifier.get("spread_deg", 70)
    kind = modifier.get("kind", "")
    if modifier.get("grid"):
        return spread * 1.9, 1.0, 0.07
    if kind == "snoot":
        return spread * 1.5, 0.35, 0.035
    if kind == "barn_doors":
        return min(spread * 1.5, 150), 0.45, 0.06
    return min(spread * 1.7, 160), 0.8, 0.08


def add_light(light, document, trim=0.0):
    """One light of the document at its place; trim is in stops and stays 0 unless a scene says why."""
    place, target = point(light["place"]), point(light["target"]["at"])
    aim = point(light["aim"]) if "aim" in light else target
    normal = measured_direction(light, document)
    modifier = light.get("modifier")
    wanted = math.pi * 2 ** (level(light, document) + trim)
    mired = 1e6 / FLASH_K + sum(g.get("shift_mired", 0) for g in light.get("gels", []))
    temperature = light["head"].get("temperature_k", FLASH_K)
    mired += 1e6 / temperature - 1e6 / FLASH_K
    tint = colour(1e6 / max(mired, 20), document["exposure"].get("white_balance_k", FLASH_K))
    face = face_of(modifier)
    if face:
        lamp = bpy.data.lights.new(light["id"], "AREA")
        lamp.shape = "DISK" if face[0] == "disc" else "RECTANGLE"
        lamp.size, lamp.size_y = face[1], face[2]
        spread = modifier.get("spread_deg", 120)
        lamp.spread = math.radians(min(spread * 1.8, 150) if modifier.get("grid") or spread < 90 else 165)
        lamp.energy = wanted / per_watt(place, aim, target, normal, face, lamp.spread)
    else:
        angle, edge, radius = cone_of(modifier)
        lamp = bpy.data.lights.new(light["id"], "SPOT")
        lamp.spot_size, lamp.spot_blend = math.radians(angle), edge
        lamp.shadow_soft_size = radius
        slant = max((place - target).normalized().dot(normal), 0.05)
        lamp.energy = wanted * 4 * math.pi * (place - target).length ** 2 / slant
    lamp.color = tint
    body = bpy.data.objects.new(light["id"], lamp)
    body.location = place
    body.rotation_euler = (aim - place).to_track_quat("-Z", "Y").to_euler()
    body.visible_camera = False
    bpy.context.scene.collection.objects.link(body)
    return body


def sun_place(document):
    """(elevation, azimuth from north) of the sun in degrees at the occasion, to about a degree."""
    occasion = document["occasion"]
    place = occasion.get("place", {})
    offset = occasion.get("utc_offset", "+00:00")
    sign = -1 if offset.startswith("-") else 1
    hours, minutes = offset.lstrip("+-").split(":")
    moment = datetime.datetime.fromisoformat(occasion["date"] + "T" + occasion.get("time", "12:00"))
    moment -= sign * datetime.timedelta(hours=int(hours), minutes=int(minutes))
    day = moment.timetuple().tm_yday + (moment.hour + moment.minute / 60) / 24
    turn = 2 * math.pi * (day - 81) / 365
    declination = math.radians(23.44) * math.sin(turn)
    equation_min = 9.87 * math.sin(2 * turn) - 7.53 * math.cos(turn) - 1.5 * math.sin(turn)
    solar = moment.hour + (moment.minute + equation_min) / 60 + place.get("longitude_deg", 0) / 15
    hour = math.radians((solar - 12) * 15)
    latitude = math.radians(place.get("latitude_deg", 53))
    elevation = math.asin(math.sin(latitude) * math.sin(declination)
                          + math.cos(latitude) * math.cos(declination) * math.cos(hour))
    azimuth = math.atan2(math.sin(hour), math.cos(hour) * math.sin(latitude)
                         - math.tan(declination) * math.cos(latitude)) + math.pi
    return math.degrees(elevation), math.degrees(azimuth) % 360


def add_sun(document, stops, temperature_k=5400, azimuth_deg=None, elevation_deg=None, size_deg=0.6):
    """A sun that gives so many stops against the exposure on a card that faces it."""
    up, azimuth = sun_place(document)
    up = up if elevation_deg is None else elevation_deg
    azimuth = azimuth if azimuth_deg is None else azimuth_deg
    around = math.radians(azimuth - document["camera"].get("bearing_deg", 0))
    up = math.radians(max(up, 1))
    toward = Vector((math.sin(around) * math.cos(up), math.cos(around) * math.cos(up), math.sin(up)))
    lamp = bpy.data.lights.new("sun", "SUN")
    lamp.energy, lamp.angle = math.pi * 2**stops, math.radians(size_deg)
    lamp.color = colour(temperature_k, document["exposure"].get("white_balance_k", FLASH_K))
    body = bpy.data.objects.new("sun", lamp)
    body.rotation_euler = (-toward).to_track_quat("-Z", "Y").to_euler()
    bpy.context.scene.collection.objects.link(body)
    return body


def add_world(document, stops=None, sky=None, seen=0.55, temperature_k=None, ground=0.5):
    """The ambient as world light.

    stops: against the exposure, usually the document's. sky: [(elevation -1..1, (r, g, b))] in any scale, colours to multiply the
    ambient's own colour; usually an even sky. seen: how bright the camera sees the sky against what it gives as light.
    ground: brightness of the lower half against the sky, as light.
    """
    stops = ambient_level(document) if stops is None else stops
    stops = -6 if stops is None else stops
    ambient = document.get("ambient") or {}
    temperature_k = temperature_k or ambient.get("temperature_k", 6500)
    tint = colour(temperature_k, document["exposure"].get("white_balance_k", FLASH_K))
    sky = sky or [(0, (1, 1, 1)), (1, (1, 1, 1))]
    mean = sum(0.2126 * c[0] + 0.7152 * c[1] + 0.0722 * c[2] for _, c in sky) / len(sky)
    base = 2**stops / mean * 2 / (1 + ground)
    world = bpy.data.worlds.new("sky")
    world.use_nodes = True
    bpy.context.scene.world = world
    nodes, links = world.node_tree.nodes, world.node_tree.links
    nodes.clear()
    where = nodes.new("ShaderNodeTexCoord")
    split = nodes.new("ShaderNodeSeparateXYZ")
    links.new(where.outputs["Generated"], split.inputs[0])
    half = nodes.new("ShaderNodeMapRange")
    half.inputs["From Min"].default_value = -1
    links.new(split.outputs["Z"], half.inputs["Value"])

    def ramp(stops_of_ramp):
        node = nodes.new("ShaderNodeValToRGB")
        while len(node.color_ramp.elements) > 1:
            node.color_ramp.elements.remove(node.color_ramp.elements[-1])
        for n, (z, c) in enumerate(stops_of_ramp):
            spot = node.color_ramp.elements[0] if n == 0 else node.color_ramp.elements.new((z + 1) / 2)
            spot.position = (z + 1) / 2
            spot.color = (*[a * b for a, b in zip(c, tint)], 1)
        links.new(half.outputs[0], node.inputs[0])
        return node

    lit = [(-1, tuple(c * ground for c in sky[0][1])), (-0.02, tuple(c * ground for c in sky[0][1])), *sky]
    shown = [(-1, sky[0][1]), *sky]
    backgrounds = []
    for points, strength in ((lit, base), (shown, base * seen)):
        node = nodes.new("ShaderNodeBackground")
        node.inputs["Strength"].default_value = strength
        links.new(ramp(points).outputs[0], node.inputs["Color"])
        backgrounds.append(node)
    path, mix, out = nodes.new("ShaderNodeLightPath"), nodes.new("ShaderNodeMixShader"), nodes.new("ShaderNodeOutputWorld")
    links.new(path.outputs["Is Camera Ray"], mix.inputs[0])
    links.new(backgrounds[0].outputs[0], mix.inputs[1])
    links.new(backgrounds[1].outputs[0], mix.inputs[2])
    links.new(mix.outputs[0], out.inputs[0])
    return world


def add_camera(document, portrait=False, zoom=1.0, move=(0, 0, 0), aim_move=(0, 0, 0), focus_m=None):
    """The document's camera; zoom, move and aim_move are a scene's small license in framing."""
    camera = document["camera"]
    lens = bpy.data.cameras.new("camera")
    lens.lens = camera["lens"]["focal_length_mm"] * zoom
    lens.sensor_width = camera["body"]["width_mm"]
    place = point(camera["place"]) + Vector(move)
    aim = point(camera["aim"]) + Vector(aim_move)
    lens.dof.use_dof = True
    lens.dof.focus_distance = focus_m or camera.get("focus_distance_m") or (aim - place).length
    lens.dof.aperture_fstop = document["exposure"]["f_number"]
    lens.clip_end = 2000
    body = bpy.data.objects.new("camera", lens)
    body.location = place
    body.rotation_euler = (aim - place).to_track_quat("-Z", "Y").to_euler()
    scene = bpy.context.scene
    scene.collection.objects.link(body)
    scene.camera = body
    shape = camera["body"]["height_mm"] / camera["body"]["width_mm"]
    size = (1080, int(round(1080 * shape / 2) * 2))
    scene.render.resolution_x, scene.render.resolution_y = size[::-1] if portrait else size
    return body
