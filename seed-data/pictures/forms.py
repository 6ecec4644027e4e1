"""Plain forms: everything in the pictures is made of these. Points are (x, y, z) in metres; a material comes from materials.py."""
import math

import bmesh
import bpy
import numpy as np
from mathutils import Matrix, Vector, noise

_SPHERE = []


def begin():
    """Forgets what belonged to the last picture."""
    _SPHERE.clear()


def _sphere():
    if not _SPHERE:
        bm = bmesh.new()
        bmesh.ops.create_icosphere(bm, subdivisions=2, radius=1)
        _SPHERE.extend(v.co.copy() for v in bm.verts)
        bm.free()
    return _SPHERE


def add(mesh, material=None, smooth=True, name="form"):
    """An object of a mesh, linked to the scene."""
    if isinstance(mesh, bmesh.types.BMesh):
        bm, mesh = mesh, bpy.data.meshes.new(name)
        bm.to_mesh(mesh)
        bm.free()
    if material:
        mesh.materials.clear()
        mesh.materials.append(material)
    mesh.polygons.foreach_set("use_smooth", [smooth] * len(mesh.polygons))
    thing = bpy.data.objects.new(name, mesh)
    bpy.context.scene.collection.objects.link(thing)
    return thing


def raw(points, faces, material=None, smooth=False, name="form"):
    """An object of points and faces."""
    mesh = bpy.data.meshes.new(name)
    mesh.from_pydata([tuple(p) for p in points], [], faces)
    mesh.update()
    return add(mesh, material, smooth, name)


def place(things, at=(0, 0, 0), turn_deg=0, scale=1.0, pitch_deg=0, roll_deg=0):
    """Moves things made about the origin: scaled, pitched (about x), rolled (about y), turned (about z), then put at a point."""
    matrix = (Matrix.Translation(at) @ Matrix.Rotation(math.radians(turn_deg), 4, "Z")
              @ Matrix.Rotation(math.radians(roll_deg), 4, "Y") @ Matrix.Rotation(math.radians(pitch_deg), 4, "X")
              @ Matrix.Scale(scale, 4))
    for thing in things if isinstance(things, (list, tuple)) else [things]:
        thing.matrix_world = matrix @ thing.matrix_world
    return things


def box(centre, size, material, turn_deg=0, bevel=0.01, pitch_deg=0, roll_deg=0):
    """A box with soft edges."""
    bm = bmesh.new()
    bmesh.ops.create_cube(bm, size=1, matrix=Matrix.Diagonal((*size, 1)))
    bevel = min(bevel, min(size) * 0.45)
    if bevel > 0:
        bmesh.ops.bevel(bm, geom=bm.edges[:], offset=bevel, segments=2, affect="EDGES", profile=0.6)
    thing = add(bm, material, False, "box")
    place(thing, centre, turn_deg, 1, pitch_deg, roll_deg)
    return thing


def tube(points, radii, material, sides=14, rounds=0, closed=False):
    """A tube through points; radii is one number or one for each point; rounds > 0 smooths the path."""
    points = [Vector(p) for p in points]
    radii = list(radii) if hasattr(radii, "__len__") else [radii] * len(points)
    for _ in range(rounds):
        finer, widths = [points[0]], [radii[0]]
        for i in range(len(points) - 1):
            a, b = points[i], points[i + 1]
            finer += [a.lerp(b, 0.25), a.lerp(b, 0.75)]
            widths += [radii[i] * 0.75 + radii[i + 1] * 0.25, radii[i] * 0.25 + radii[i + 1] * 0.75]
        points, radii = [*finer, points[-1]], [*widths, radii[-1]]
    rings, normal = [], None
    for i, p in enumerate(points):
        before, after = points[max(i - 1, 0)], points[min(i + 1, len(points) - 1)]
        along = (after - before).normalized()
        if normal is None:
            normal = along.orthogonal().normalized()
        normal = (normal - along * normal.dot(along)).normalized()
        side = along.cross(normal)
        rings.append([p + (normal * math.cos(t) + side * math.sin(t)) * radii[i]
                      for t in (2 * math.pi * k / sides for k in range(sides))])
    faces = [(i * sides + k, i * sides + (k + 1) % sides, (i + 1) * sides + (k + 1) % sides, (i + 1) * sides + k)
             for i in range(len(rings) - 1) for k in range(sides)]
    faces += [tuple(range(sides))[::-1], tuple((len(rings) - 1) * sides + k for k in range(sides))]
    return raw([p for ring in rings for p in ring], faces, material, True, "tube")


def rod(a, b, radius, material, end_radius=None, sides=20):
    """A straight rod, or a cone, from a to b."""
    return tube([a, b], [radius, radius if end_radius is None else end_radius], material, sides)


def lathe(profile, at, material, sides=56):
    """A turned body: profile is [(radius, height)] from below to above."""
    points, faces = [], []
    for r, z in profile:
        points += [(at[0] + r * math.cos(t), at[1] + r * math.sin(t), at[2] + z)
                   for t in (2 * math.pi * k / sides for k in range(sides))]
    for i in range(len(profile) - 1):
        faces += [(i * sides + k, i * sides + (k + 1) % sides, (i + 1) * sides + (k + 1) % sides, (i + 1) * sides + k)
                  for k in range(sides)]
    return raw(points, faces, material, True, "turned")


def ball(centre, radius, material, turn_deg=0):
    """A ball, or an egg where the radius is three numbers."""
    bm = bmesh.new()
    bmesh.ops.create_icosphere(bm, subdivisions=4, radius=1)
    r = radius if hasattr(radius, "__len__") else (radius,) * 3
    bmesh.ops.scale(bm, vec=r, verts=bm.verts)
    return place(add(bm, material, True, "ball"), centre, turn_deg)


def sheet(at_uv, material, across=40, along=40, thickness=0.0, smooth=True):
    """A surface from a function of u and v (both 0..1) to a point."""
    points = [at_uv(i / across, j / along) for j in range(along + 1) for i in range(across + 1)]
    faces = [(j * (across + 1) + i, j * (across + 1) + i + 1, (j + 1) * (across + 1) + i + 1, (j + 1) * (across + 1) + i)
             for j in range(along) for i in range(across)]
    thing = raw(points, faces, material, smooth, "sheet")
    if thickness:
        solid = thing.modifiers.new("thick", "SOLIDIFY")
        solid.thickness, solid.offset = thickness, 0
    return thing


def ground(material, z=0.0, half=30.0, rough=0.0, scale=1.0, centre=(0, 0), fine=160):
    """Level ground; rough is the height of its unevenness, scale how many bumps a metre."""
    def at(u, v):
        x, y = centre[0] + (u - 0.5) * 2 * half, centre[1] + (v - 0.5) * 2 * half
        return x, y, z + (rough * noise.fractal((x * scale, y * scale, 0), 1.0, 2.0, 3) if rough else 0)
    cells = fine if rough else 1
    return sheet(at, material, cells, cells)


def upright(surface, material, thickness=0.3, bevel=0.01):
    """The wall that a document's surface describes, its front where the document says."""
    a = Vector((surface["from"]["x_m"], surface["from"]["y_m"], surface["from"]["z_m"]))
    b = Vector((surface["to"]["x_m"], surface["to"]["y_m"], surface["to"]["z_m"]))
    along = b - a
    back = Vector((-along.y, along.x, 0)).normalized()
    if back.y < 0:
        back = -back
    centre = (a + b) / 2 + back * thickness / 2 + Vector((0, 0, surface["height_m"] / 2))
    return box(centre, (along.length, thickness, surface["height_m"]), material,
               math.degrees(math.atan2(along.y, along.x)), bevel)


def hull_points(parts):
    """Points of spheres (p, r), of discs (p, r, normal) and of bare points (p,), for a hull."""
    for part in parts:
        p = Vector(part[0])
        if len(part) == 1:
            yield p
        elif len(part) == 2:
            for v in _sphere():
                yield p + v * part[1]
        else:
            normal = Vector(part[2]).normalized()
            a = normal.orthogonal().normalized()
            b = normal.cross(a)
            for k in range(24):
                t = 2 * math.pi * k / 24
                yield p + (a * math.cos(t) + b * math.sin(t)) * part[1]


def _hull_into(bm, points):
    verts = [bm.verts.new(p) for p in points]
    result = bmesh.ops.convex_hull(bm, input=verts)
    loose = [v for v in verts if v.is_valid and not v.link_faces]
    bmesh.ops.delete(bm, geom=loose, context="VERTS")
    return result


def hull(parts, material, smooth=True):
    """The convex hull of spheres, discs and points."""
    bm = bmesh.new()
    _hull_into(bm, hull_points(parts))
    return add(bm, material, smooth, "hull")


def blob(groups, material, voxel=0.012, smooth=8, warp=None, name="blob"):
    """Clay: groups of hulls (see limb, egg) fused into one smooth skin; warp(points, normals) may move it (numpy arrays)."""
    bm = bmesh.new()
    for group in groups:
        _hull_into(bm, list(group) if isinstance(group, Egg) else list(hull_points(group)))
    mesh = bpy.data.meshes.new(name)
    bm.to_mesh(mesh)
    bm.free()
    raw_thing = bpy.data.objects.new(name, mesh)
    bpy.context.scene.collection.objects.link(raw_thing)
    modifier = raw_thing.modifiers.new("fuse", "REMESH")
    modifier.mode, modifier.voxel_size, modifier.adaptivity = "VOXEL", voxel, 0.0
    soft = raw_thing.modifiers.new("soft", "SMOOTH")
    soft.factor, soft.iterations = 0.5, smooth
    graph = bpy.context.evaluated_depsgraph_get()
    result = bpy.data.meshes.new_from_object(raw_thing.evaluated_get(graph))
    bpy.data.objects.remove(raw_thing)
    if warp:
        n = len(result.vertices)
        points, normals = np.empty(n * 3, np.float32), np.empty(n * 3, np.float32)
        result.vertices.foreach_get("co", points)
        result.vertices.foreach_get("normal", normals)
        moved = warp(points.reshape(-1, 3), normals.reshape(-1, 3))
        result.vertices.foreach_set("co", np.ascontiguousarray(moved, np.float32).ravel())
        result.update()
    return add(result, material, True, name)


class Egg(list):
    """Points of an egg, for blob."""


def egg(centre, radii, turn=None):
    """An egg as a group for blob; turn is a 3x3 matrix."""
    turn = turn or Matrix.Identity(3)
    return Egg(Vector(centre) + turn @ Vector((v.x * radii[0], v.y * radii[1], v.z * radii[2])) for v in _sphere())


def limb(*balls):
    """A chain of tapered capsules through (point, radius) pairs, as groups for blob."""
    return [[balls[i], balls[i + 1]] for i in range(len(balls) - 1)]


def scatter(thing, matrices):
    """Copies of a thing that share its mesh; the thing itself goes away."""
    copies = []
    for matrix in matrices:
        copy = bpy.data.objects.new(thing.name, thing.data)
        copy.matrix_world = matrix
        bpy.context.scene.collection.objects.link(copy)
        copies.append(copy)
    bpy.data.objects.remove(thing)
    return copies


def at(x, y, z, turn_deg=0, scale=1.0, tilt_deg=0, tilt_about_deg=0):
    """A placement for scatter."""
    axis = (math.cos(math.radians(tilt_about_deg)), math.sin(math.radians(tilt_about_deg)), 0)
    return (Matrix.Translation((x, y, z)) @ Matrix.Rotation(math.radians(tilt_deg), 4, axis)
            @ Matrix.Rotation(math.radians(turn_deg), 4, "Z") @ Matrix.Scale(scale, 4))


def text(words, at, size, material, turn_deg=0, depth=0.006):
    """Words on an upright face that looks to the camera when turn_deg is 0."""
    curve = bpy.data.curves.new("text", "FONT")
    curve.body, curve.size, curve.extrude, curve.align_x = words, size, depth, "CENTER"
    curve.materials.append(material)
    thing = bpy.data.objects.new("text", curve)
    thing.matrix_world = Matrix.Translation(at) @ Matrix.Rotation(math.radians(turn_deg), 4, "Z") @ Matrix.Rotation(math.radians(90), 4, "X")
    bpy.context.scene.collection.objects.link(thing)
    return thing


def specks(material, where, count, size, chance, sides=1):
    """Many tiny grains in one mesh; where(chance) gives a point, chance is a random.Random."""
    bm = bmesh.new()
    bmesh.ops.create_icosphere(bm, subdivisions=sides, radius=1)
    base = [v.co.copy() for v in bm.verts]
    shape = [tuple(v.index for v in f.verts) for f in bm.faces]
    bm.free()
    points, faces = [], []
    for _ in range(count):
        p, r = Vector(where(chance)), size * chance.uniform(0.4, 1.3)
        start = len(points)
        points += [p + v * r for v in base]
        faces += [tuple(start + i for i in f) for f in shape]
    return raw(points, faces, material, True, "specks")
