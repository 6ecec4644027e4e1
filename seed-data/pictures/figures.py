"""Mannequins: a skeleton posed by points, a clay body of about 7.5 heads, clothes as simple volumes.

A pose is a dict in the figure's own axes, in metres for a figure of 1.75 m: x to ITS right, y forward, z up, the origin on the
ground under it. Keys (all optional): pelvis (x, y, z); lean (forward, to its right) and twist, hips (to its left) in degrees;
look (turn to its left, nod down, tilt to its right) in degrees or look_at a point; hand_r, hand_l (wrists), elbow_r, elbow_l
(where the elbow points to, a direction); foot_r, foot_l (ankles; 0.085 high when flat), knee_r, knee_l (directions); toe_r, toe_l
(turn to its left, pitch down) in degrees; curl_r, curl_l (fingers 0..1); finger_r, finger_l, palm_r, palm_l (directions).
"""
import math
import random

import numpy as np
from mathutils import Matrix, Vector, noise
from mathutils.bvhtree import BVHTree

import forms
import materials

V = Vector
UPPER_ARM, FOREARM, THIGH, SHIN = 0.285, 0.262, 0.435, 0.415

POSES = {
    "stand": {},
    "ease": dict(pelvis=(0.05, 0, 0.94), lean=(-2, -4), hips=-6, foot_r=(0.07, 0.0, 0.085), foot_l=(-0.15, 0.14, 0.085), toe_l=(28, 0),
                 toe_r=(-14, 0), look=(6, 4, 3)),
    "walk": dict(pelvis=(0, 0.02, 0.91), lean=(5, 0), twist=10, hips=-8, foot_r=(0.08, 0.36, 0.11), toe_r=(-5, -14), foot_l=(-0.08, -0.36, 0.16),
                 toe_l=(5, 42), hand_l=(-0.27, 0.26, 0.96), hand_r=(0.28, -0.24, 0.93)),
    "stride": dict(pelvis=(0, 0.05, 0.86), lean=(20, 0), twist=16, hips=-10, foot_r=(0.08, 0.46, 0.085), foot_l=(-0.08, -0.56, 0.18), toe_l=(5, 50),
                   hand_l=(-0.28, 0.40, 1.05), hand_r=(0.30, -0.30, 0.98)),
    "sit": dict(pelvis=(0, 0, 0.55), lean=(6, 0), foot_r=(0.14, 0.46, 0.085), foot_l=(-0.14, 0.44, 0.085), toe_r=(-12, 0), toe_l=(12, 0),
                hand_r=(0.13, 0.36, 0.63), hand_l=(-0.13, 0.36, 0.63), look=(0, 8, 0)),
    "perch": dict(pelvis=(0, 0, 0.74), lean=(4, 0), foot_r=(0.16, 0.40, 0.085), foot_l=(-0.15, 0.24, 0.22), toe_r=(-14, 0), toe_l=(14, 18),
                  hand_r=(0.14, 0.30, 0.80), hand_l=(-0.16, 0.27, 0.82)),
    "leap": dict(pelvis=(0, 0, 1.42), lean=(-10, 0), twist=-14, foot_r=(0.06, 0.86, 1.46), toe_r=(0, 14), foot_l=(-0.10, -0.86, 1.36), toe_l=(0, 166),
                 knee_l=(-0.2, 0.2, -1), knee_r=(0.1, 0.2, 1), hand_l=(-0.26, 0.52, 2.16), hand_r=(0.50, -0.44, 1.92),
                 elbow_l=(-0.6, 0, -0.4), elbow_r=(0.2, -0.6, -0.5), look=(0, -16, 0), finger_l=(-0.1, 0.8, 0.5), finger_r=(0.7, -0.6, 0.1), curl_l=0.1, curl_r=0.1),
    "lean": dict(pelvis=(0.04, -0.08, 0.92), lean=(-8, 5), hips=8, foot_r=(0.10, 0.18, 0.085), foot_l=(-0.02, 0.34, 0.085), toe_l=(20, 0),
                 hand_r=(0.10, 0.20, 1.14), hand_l=(-0.10, 0.22, 1.16), look=(12, 6, 0)),
    "reach": dict(pelvis=(0, 0.02, 0.95), lean=(-4, -6), foot_r=(0.08, 0.06, 0.11), toe_r=(0, 22), foot_l=(-0.10, -0.06, 0.10), toe_l=(10, 14),
                  hand_r=(0.22, 0.30, 1.98), hand_l=(-0.22, 0.24, 1.22), look=(-8, -22, 0)),
    "kneel": dict(pelvis=(0, -0.06, 0.53), lean=(12, 0), foot_r=(0.12, 0.22, 0.085), foot_l=(-0.10, -0.46, 0.10), toe_l=(0, 80), knee_l=(0, 1, -0.6),
                  hand_r=(0.12, 0.40, 0.60), hand_l=(-0.14, 0.34, 0.62), look=(0, 14, 0)),
    "crouch": dict(pelvis=(0, -0.12, 0.40), lean=(30, 0), foot_r=(0.14, 0.04, 0.085), foot_l=(-0.14, 0.04, 0.085), hand_r=(0.10, 0.40, 0.40),
                   hand_l=(-0.10, 0.42, 0.42), look=(0, 5, 0)),
    "pull": dict(pelvis=(0, -0.05, 0.82), lean=(40, 0), foot_r=(0.09, 0.36, 0.085), foot_l=(-0.09, -0.62, 0.17), toe_l=(0, 46), hand_r=(0.30, -0.22, 0.80),
                 hand_l=(-0.30, -0.22, 0.80), elbow_r=(0.4, -0.8, 0.4), elbow_l=(-0.4, -0.8, 0.4), curl_r=0.9, curl_l=0.9, look=(0, -18, 0)),
    "lie": dict(pelvis=(0, 0, 0.14), lean=(-86, 0), foot_r=(0.10, 0.82, 0.10), foot_l=(-0.10, 0.82, 0.10), toe_r=(-10, -60), toe_l=(10, -60),
                hand_r=(0.24, 0.0, 0.10), hand_l=(-0.24, 0.0, 0.10), look=(0, -80, 0), knee_r=(0, 0.2, 1), knee_l=(0, 0.2, 1)),
}

BUILDS = {
    "man": dict(shoulder=0.178, hip=0.088, chest=0.112, waist=(0.060, 0.098), pelvis=0.094, bust=0, limb=1.0, neck=0.056),
    "woman": dict(shoulder=0.156, hip=0.088, chest=0.098, waist=(0.048, 0.084), pelvis=0.096, bust=0.056, limb=0.88, neck=0.046),
    "child": dict(shoulder=0.150, hip=0.085, chest=0.100, waist=(0.056, 0.092), pelvis=0.090, bust=0, limb=0.92, neck=0.046),
}


def pose(name, **changes):
    """A pose by name with some keys changed."""
    return {**POSES[name], **changes}


def own(where, facing_deg, height, world_point):
    """A world point in the own axes of a figure that is not yet made: for hands on things and for looks."""
    x, y, z = (where["x_m"], where["y_m"], where["z_m"]) if isinstance(where, dict) else where
    turned = Matrix.Rotation(math.radians(-180 - facing_deg), 3, "Z") @ (V(world_point) - V((x, y, z)))
    return tuple(turned * (1.75 / height))


def _turn(z=0, forward=0, right=0):
    """A rotation: bent forward, then to its right, then turned to its left; degrees."""
    return (Matrix.Rotation(math.radians(z), 3, "Z") @ Matrix.Rotation(math.radians(right), 3, "Y")
            @ Matrix.Rotation(math.radians(-forward), 3, "X"))


def _bend(root, tip, first, second, hint):
    """Two bones from root toward tip: (middle joint, reached tip)."""
    way = tip - root
    d = min(max(way.length, abs(first - second) + 0.02), (first + second) * 0.998)
    way.normalize()
    tip = root + way * d
    along = (first**2 - second**2 + d**2) / (2 * d)
    off = math.sqrt(max(first**2 - along**2, 0))
    side = hint - way * hint.dot(way)
    if side.length < 1e-4:
        side = way.orthogonal()
    return root + way * along + side.normalized() * off, tip


class Figure:
    """One mannequin in the scene. joints: points in its own axes; at(name) gives them in the world."""

    def __init__(self, where, facing_deg=0, height=1.75, build="man", pose=None, skin="#c69678", grounded=True):
        self.pose = {**(POSES[pose] if isinstance(pose, str) else pose or {})}
        self.b = BUILDS[build]
        self.skin = materials.skin(skin)
        self.head_scale = 1.0 if build != "child" else 1.18
        x, y, z = (where["x_m"], where["y_m"], where["z_m"]) if isinstance(where, dict) else where
        self.matrix = (Matrix.Translation((x, y, z)) @ Matrix.Rotation(math.radians(180 + facing_deg), 4, "Z")
                       @ Matrix.Scale(height / 1.75, 4))
        self.things, self.garments = [], []
        self._solve()
        self._body()

    # --- skeleton ---

    def local(self, world):
        """A world point in the figure's own axes, to aim hands and looks with."""
        return self.matrix.inverted() @ V(world)

    def at(self, joint):
        """A joint in the world, or any point of the figure's own axes."""
        return self.matrix @ (self.joints[joint] if isinstance(joint, str) else V(joint))

    def _solve(self):
        p, b, j = self.pose, self.b, {}
        lean, twist, hips = p.get("lean", (0, 0)), p.get("twist", 0), p.get("hips", 0)
        self.R_hips = _turn(hips, lean[0] * 0.25, lean[1] * 0.2)
        middle = _turn(hips * 0.5 + twist * 0.4, lean[0] * 0.65, lean[1] * 0.6)
        self.R_chest = _turn(twist, lean[0], lean[1])
        j["pelvis"] = V(p.get("pelvis", (0, 0, 0.945)))
        j["waist"] = j["pelvis"] + middle @ V((0, 0.005, 0.155))
        j["chest"] = j["waist"] + self.R_chest @ V((0, 0.012, 0.185))
        j["neck"] = j["chest"] + self.R_chest @ V((0, -0.022, 0.200))
        if "look_at" in p:
            d = V(p["look_at"]) - (j["neck"] + V((0, 0, 0.12)))
            look = (math.degrees(math.atan2(-d.x, d.y)), -math.degrees(math.atan2(d.z, math.hypot(d.x, d.y))), 0)
        else:
            look = p.get("look", (0, 0, 0))
        self.R_head = _turn(look[0], look[1], look[2])
        lift = (self.R_chest @ V((0, 0.02, 1)) * 0.075 + self.R_head @ V((0, 0.02, 0.075)))
        j["head"] = j["neck"] + lift * (1.0 if self.head_scale == 1 else 1.08)
        for side, s in (("r", 1), ("l", -1)):
            j["shoulder_" + side] = j["chest"] + self.R_chest @ V((s * (b["shoulder"] - 0.006), -0.018, 0.126))
            default = V((s * (b["shoulder"] + 0.09), 0.05, 0.90)) + V((j["neck"].x, j["neck"].y, 0)) * 0.8
            wrist = V(p.get("hand_" + side, default))
            hint = V(p.get("elbow_" + side, (s * 0.55, -0.8, -0.35)))
            lift = max((wrist - j["shoulder_" + side]).z, 0) * 0.12
            j["shoulder_" + side] += V((0, 0, min(lift, 0.07)))
            j["elbow_" + side], j["wrist_" + side] = _bend(j["shoulder_" + side], wrist, UPPER_ARM, FOREARM, hint)
            along = (j["wrist_" + side] - j["elbow_" + side]).normalized()
            finger = V(p.get("finger_" + side, along)).normalized()
            palm = V(p.get("palm_" + side, self.R_chest @ V((-s, 0.15, -0.1))))
            palm = palm - finger * palm.dot(finger)
            palm = palm.normalized() if palm.length > 1e-3 else finger.orthogonal().normalized()
            thumb = finger.cross(palm) * s
            setattr(self, "hand_" + side, (finger, palm, thumb))
            j["grip_" + side] = j["wrist_" + side] + finger * 0.085 + palm * 0.03
            j["hip_" + side] = j["pelvis"] + self.R_hips @ V((s * b["hip"], 0, -0.022))
            ankle = V(p.get("foot_" + side, (s * 0.095, 0, 0.085)))
            j["knee_" + side], j["ankle_" + side] = _bend(j["hip_" + side], ankle, THIGH, SHIN, V(p.get("knee_" + side, (s * 0.12, 1, 0))))
            turn, pitch = p.get("toe_" + side, (-s * 9, 0))
            setattr(self, "R_foot_" + side, _turn(turn, pitch))
        self.joints = j

    # --- body ---

    def _place(self, thing):
        thing.matrix_world = self.matrix @ thing.matrix_world
        self.things.append(thing)
        return thing

    def _torso(self, slack=0.0):
        j, b, s = self.joints, self.b, slack
        C, H = self.R_chest, self.R_hips
        w, wr = b["waist"]

        def pair(centre, turn, x, y, z, r):
            return [(centre + turn @ V((k * x, y, z)), r + s) for k in (1, -1)]
        pelvis = pair(j["pelvis"], H, b["hip"] - 0.012, 0, 0.0, b["pelvis"])
        waist = pair(j["waist"], C, w, 0.0, 0, wr)
        ribs = pair(j["chest"], C, b["chest"] * 0.56, 0.005, 0, b["chest"])
        top = pair(j["chest"], C, b["shoulder"] - 0.035, -0.018, 0.125, 0.052)
        groups = [pelvis + waist, waist + ribs, ribs + top,
                  top + [(j["neck"] + C @ V((0, 0, 0.0)), b["neck"] + s * 0.6)],
                  [*pair(j["pelvis"], H, 0.062, -0.045, -0.035, 0.085)] + pelvis]
        if b["bust"]:
            groups.append([*pair(j["chest"], C, 0.056, 0.062, -0.005, b["bust"])] + pair(j["chest"], C, 0.05, 0, 0.07, 0.06))
        else:
            groups.append(pair(j["chest"], C, 0.062, 0.045, 0.035, 0.075))
        return groups

    def _leg(self, side, slack=0.0, to=1.0, boots=False):
        j, k = self.joints, self.b["limb"]
        hip, knee, ankle = j["hip_" + side], j["knee_" + side], j["ankle_" + side]
        down = (ankle - knee).normalized()
        back = -(self.R_foot_for(side) @ V((0, 1, 0)))
        back = (back - down * back.dot(down)).normalized()
        calf = knee.lerp(ankle, 0.30) + back * 0.018
        end = knee.lerp(ankle, to)
        return forms.limb((hip, 0.088 * k + slack), (hip.lerp(knee, 0.45), 0.076 * k + slack), (knee, 0.054 * k + slack)) + \
            forms.limb((knee, 0.054 * k + slack), (calf, 0.055 * k + slack), (knee.lerp(ankle, 0.62), 0.043 * k + slack), (end, 0.036 * k + slack))

    def R_foot_for(self, side):
        """The rotation of a foot."""
        return self.R_foot_r if side == "r" else self.R_foot_l

    def _arm(self, side, slack=0.0, to=1.0):
        j, k = self.joints, self.b["limb"]
        s, e, w = j["shoulder_" + side], j["elbow_" + side], j["wrist_" + side]
        return forms.limb((s, 0.050 * k + slack * 0.8), (s.lerp(e, 0.4), 0.046 * k + slack * 0.9), (e, 0.036 * k + slack)) + \
            forms.limb((e, 0.036 * k + slack), (e.lerp(w, 0.3), 0.040 * k + slack), (e.lerp(w, to), 0.025 * k + slack))

    def _body(self):
        j = self.joints
        groups = self._torso() + [g for s in "rl" for g in self._arm(s) + self._leg(s)]
        self._place(forms.blob(groups, self.skin, 0.013, 10, name="body"))
        self._head()
        for side in "rl":
            self._hand(side)

    def _head(self):
        j, R, k = self.joints, self.R_head, self.head_scale
        c = j["head"]

        def q(x, y, z):
            return c + R @ V((x, y, z)) * k
        eggs = [((0, -0.016, 0.030), (0.073, 0.093, 0.083)), ((0, 0.020, -0.030), (0.058, 0.066, 0.080))]
        groups = [forms.egg(q(*at), [r * k for r in radii], R) for at, radii in eggs]
        groups += [
            [(q(0, 0.066, -0.094), 0.018 * k), (q(0.046, 0.0, -0.062), 0.018 * k), (q(-0.046, 0.0, -0.062), 0.018 * k), (q(0, 0.05, -0.02), 0.03 * k)],
            [(q(0, 0.082, 0.008), 0.007 * k), (q(0, 0.106, -0.028), 0.009 * k), (q(0.011, 0.086, -0.034), 0.009 * k), (q(-0.011, 0.086, -0.034), 0.009 * k)],
            [(q(0.036, 0.070, 0.022), 0.014 * k), (q(-0.036, 0.070, 0.022), 0.014 * k), (q(0, 0.076, 0.026), 0.014 * k)],
            [(q(0.012, 0.082, -0.064), 0.007 * k), (q(-0.012, 0.082, -0.064), 0.007 * k)],
            [(q(0, -0.02, -0.06), self.b["neck"]), (j["neck"] + self.R_chest @ V((0, 0.0, -0.02)), self.b["neck"] * 1.06)],
        ]
        groups += [[(q(s * 0.036, 0.052, -0.026), 0.019 * k)] for s in (1, -1)]
        groups += [forms.egg(q(s * 0.073, -0.008, -0.010), [0.009 * k, 0.018 * k, 0.030 * k], R) for s in (1, -1)]
        inverse = R.transposed()
        hollows = [(V((s * 0.031, 0.088, 0.000)), 0.0135, 0.011) for s in (1, -1)]

        def sockets(points, normals):
            turn = np.array(inverse, np.float32)
            own = (points - np.array(c, np.float32)) @ turn.T / k
            forward = np.array(R @ V((0, 1, 0)), np.float32)
            for centre, width, depth in hollows:
                d2 = ((own - np.array(centre, np.float32)) * np.array((1, 0.6, 1.25), np.float32)) ** 2
                points = points - forward * (depth * k * np.exp(-d2.sum(1) / (2 * width**2)))[:, None]
            return points
        self.head_point = q
        self._place(forms.blob(groups, self.skin, 0.0048, 7, sockets, name="head"))

    def _hand(self, side):
        finger, palm, thumb = getattr(self, "hand_" + side)
        wrist, curl, k = self.joints["wrist_" + side], self.pose.get("curl_" + side, 0.3), 0.94 if self.b["limb"] < 1 else 1.0
        material = self.pose.get("glove") and materials.leather(self.pose["glove"]) or self.skin

        def q(f, t, n):
            return wrist + (finger * f + thumb * t + palm * n) * k
        knuckles = [(0.088, 0.030), (0.092, 0.010), (0.089, -0.010), (0.082, -0.028)]
        groups = [[(q(-0.03, 0, 0), 0.024 * k), (q(0.015, 0.008, 0), 0.021 * k), (q(0.015, -0.010, 0), 0.020 * k)],
                  [(q(0.015, 0.010, 0), 0.019 * k), (q(0.015, -0.010, 0), 0.019 * k), *[(q(f, t, 0), 0.0125 * k) for f, t in knuckles]]]
        for (f, t), length in zip(knuckles, (0.074, 0.082, 0.077, 0.060)):
            at, angle, spread = V((f, t, 0)), math.radians(12 + 62 * curl), (t / 0.09) * (1 - curl) * 0.35
            chain = [(q(*at), 0.0105 * k)]
            for part in (0.45, 0.32, 0.23):
                at = at + V((math.cos(angle), spread, math.sin(angle))) * length * part
                chain.append((q(*at), (0.0098 if part > 0.4 else 0.0090) * k))
                angle += math.radians(8 + 58 * curl)
            groups += forms.limb(*chain)
        groups += forms.limb((q(0.022, 0.022, 0.006), 0.016 * k), (q(0.060, 0.046 - 0.012 * curl, 0.012 + 0.018 * curl), 0.0125 * k),
                             (q(0.090, 0.054 - 0.03 * curl, 0.020 + 0.026 * curl), 0.0098 * k))
        self._place(forms.blob(groups, material, 0.0042, 4, name="hand"))

    # --- clothes ---

    def _wear(self, groups, material, voxel=0.0125, smooth=9, warp=None):
        thing = self._place(forms.blob(groups, material, voxel, smooth, warp, "garment"))
        self.garments.append(thing)
        return thing

    def trousers(self, material, slack=0.018, to=0.94):
        """Trousers; to is how far down the shin they go."""
        groups = self._torso(slack * 0.7)[:1] + self._torso(slack * 0.7)[4:5]
        for side in "rl":
            groups += self._leg(side, slack, to)
            end = self.joints["knee_" + side].lerp(self.joints["ankle_" + side], to)
            groups.append([(self.joints["knee_" + side].lerp(self.joints["ankle_" + side], 0.5), 0.045 + slack), (end, 0.046 + slack * 0.6)])
        return self._wear(groups, material, warp=self._creases(0.006, 17))

    def top(self, material, slack=0.020, sleeves=0.93, collar=0.0, low=-0.02):
        """A shirt or jumper; sleeves 0..1 along the forearm or None, collar is its height, low where it ends under the pelvis."""
        groups = self._torso(slack)[:4] + self._torso(slack)[5:]
        if sleeves is not None:
            for side in "rl":
                groups += self._arm(side, slack * 0.95, sleeves)
        else:
            for side in "rl":
                s, e = self.joints["shoulder_" + side], self.joints["elbow_" + side]
                groups += forms.limb((s, 0.055 * self.b["limb"] + slack), (s.lerp(e, 0.22), 0.050 * self.b["limb"] + slack))
        thing = self._wear(groups, material, warp=self._creases(0.006, 15))
        if collar:
            self._collar(material, collar)
        return thing

    def _collar(self, material, height, width=1.22):
        j, up = self.joints, self.R_chest @ V((0, 0.12, 1))
        base = j["neck"] + self.R_chest @ V((0, 0.004, -0.012))
        r = self.b["neck"] * width
        side, front = self.R_chest @ V((1, 0, 0)), self.R_chest @ V((0, 1, 0))
        for ring in range(2):
            lift, wide = height * ring * 0.6, 1.12 - 0.1 * ring
            circle = [base + up * (lift - 0.012 * math.sin(t)) + (side * math.cos(t) + front * math.sin(t)) * r * wide
                      for t in (2 * math.pi * k / 20 for k in range(21))]
            self._place(forms.tube(circle, height * 0.42, material, 10))

    def _creases(self, amount, scale):
        def warp(points, normals):
            out = np.empty(len(points), np.float32)
            for i, p in enumerate(points):
                out[i] = noise.noise((p[0] * scale, p[1] * scale, p[2] * scale * 0.55))
            return points + normals * (out * amount)[:, None]
        return warp

    def skirt(self, material, length=0.55, flare=0.10, slack=0.03, wind=(0, 0, 0), folds=9, depth=0.016, top=None, spread=None):
        """The lower part of a coat, dress or skirt: length 0..1 from hip to ankle, flare widens the hem (m), wind moves it (m)."""
        j, b = self.joints, self.b
        P, H = j["pelvis"], self.R_hips
        belt = [(j["waist"].lerp(P, 0.35) + H @ V((k * b["waist"][0], 0, 0)), b["waist"][1] + slack * 0.8) for k in (1, -1)]
        seat = [(P + H @ V((k * (b["hip"] - 0.012), -0.01, -0.03)), b["pelvis"] + slack) for k in (1, -1)]
        share = THIGH / (THIGH + SHIN)
        knees, ends = [], []
        upper = min(length / share, 1.0)
        for side in "rl":
            hip, knee, ankle = j["hip_" + side], j["knee_" + side], j["ankle_" + side]
            at = hip.lerp(knee, upper)
            radius = 0.068 + slack + flare * upper * share
            if length <= share:
                ends.append((at, radius, knee - hip))
            else:
                knees.append((at, 0.062 + slack + flare * 0.45))
                ends.append((knee.lerp(ankle, (length - share) / (1 - share)), 0.07 + slack + flare, ankle - knee))
        drift = V(wind)
        lie = (ends[0][2].normalized() + ends[1][2].normalized()).normalized()
        hem = [(p + drift * 0.6, r, lie) for p, r, _ in ends]
        if drift.length > 0.01:
            middle = (hem[0][0] + hem[1][0]) / 2
            hem.append((middle + drift, 0.08 + flare * 0.5, lie))
        groups = [belt + seat]
        groups += [seat + knees, knees + hem] if knees else [seat + hem]
        low = (hem[0][0] + hem[1][0]) / 2
        axis = low - P
        reach = max(axis.length, 0.05)
        axis.normalize()
        right, chance = H @ V((1, 0, 0)), random.Random(len(self.things))
        front = axis.cross(right).normalized()
        right = front.cross(axis)
        phase = chance.uniform(0, 6)

        def warp(points, normals):
            rel = points - np.array(P, np.float32)
            down = np.clip(rel @ np.array(axis, np.float32) / reach, 0, 1.1)
            angle = np.arctan2(rel @ np.array(right, np.float32), rel @ np.array(front, np.float32))
            wave = np.sin(angle * folds + phase + 1.3 * np.sin(angle * 2 + phase) + down * 0.8)
            side = 1 - np.abs(normals @ np.array(axis, np.float32))
            return points + normals * (depth * wave * down**1.4 * side)[:, None]
        return self._wear(groups, material, 0.0135, 7, warp)

    def dress(self, material, length=0.75, sleeves=0.9, flare=0.12, wind=(0, 0, 0), collar=0.0, slack=0.014):
        """A dress: bodice and skirt of one cloth."""
        self.top(material, slack, sleeves, collar)
        return self.skirt(material, length, flare, slack + 0.006, wind, 11)

    def coat(self, material, length=0.6, flare=0.07, wind=(0, 0, 0), collar=0.045, slack=0.034, sleeves=0.97, buttons=None):
        """A heavy coat with a standing collar; buttons is a material."""
        thing = self.top(material, slack, sleeves)
        self.skirt(material, length, flare, slack + 0.008, wind, 6, 0.011)
        if collar:
            self._collar(material, collar, 1.34)
        for side in "rl":
            e, w = self.joints["elbow_" + side], self.joints["wrist_" + side]
            way = (w - e).normalized()
            self._place(forms.tube([w - way * 0.055, w - way * 0.05, w - way * 0.005], [0.040, 0.046, 0.046], material, 18))
        if buttons:
            self.buttons(buttons)
        return thing

    def _surface(self):
        """Trees of what the figure wears, in its own axes."""
        trees = []
        for thing in self.garments or self.things[:1]:
            local = self.matrix.inverted() @ thing.matrix_world
            trees.append(BVHTree.FromPolygons([local @ v.co for v in thing.data.vertices], [p.vertices for p in thing.data.polygons]))
        return trees

    def front(self, point, direction=None):
        """The point of the clothes that is met from before; None where there are none."""
        way = V(direction) if direction else self.R_chest @ V((0, 1, 0))
        hits = [tree.ray_cast(V(point) + way * 0.8, -way, 1.6)[0] for tree in self._trees]
        hits = [h for h in hits if h]
        return max(hits, key=lambda h: h.dot(way)) if hits else None

    def buttons(self, material, count=5, across=0.045):
        """Two rows of buttons down the chest; across 0 is one row."""
        self._trees = self._surface()
        j = self.joints
        for n in range(count):
            middle = j["chest"].lerp(j["pelvis"], -0.2 + 1.1 * n / max(count - 1, 1))
            for k in (1, -1) if across else (0,):
                hit = self.front(middle + self.R_chest @ V((k * across, 0, 0)))
                if hit:
                    self._place(forms.ball(hit, 0.0095, material))

    def belt(self, material, width=0.02, slack=0.035):
        """A belt about the waist."""
        j, (w, r) = self.joints, self.b["waist"]
        centre = j["waist"].lerp(j["pelvis"], 0.25)
        circle = [centre + self.R_chest @ V((math.cos(t) * (w + r + slack), math.sin(t) * (r + slack + 0.008), 0)) for t in (2 * math.pi * k / 36 for k in range(37))]
        return self._place(forms.tube(circle, width, material, 8))

    def apron(self, material, width=0.30, bib=0.20, low=0.42):
        """An apron over the clothes of a standing figure: bib is half a top's width, low where it ends (m above the ground)."""
        self._trees = self._surface()
        j, rows, columns = self.joints, 34, 22
        top, belt = j["chest"] + self.R_chest @ V((0, 0, 0.05)), j["waist"]
        end = V((j["pelvis"].x, j["pelvis"].y, low))
        depth = np.full((rows + 1, columns + 1), np.nan)
        base = {}
        forward, right = V((0, 1, 0)), V((1, 0, 0))
        forward = self.R_hips @ forward
        forward.z = 0
        forward.normalize()
        right = V((forward.y, -forward.x, 0))
        for r in range(rows + 1):
            t = r / rows
            centre = top.lerp(belt, t / 0.35) if t < 0.35 else belt.lerp(end, (t - 0.35) / 0.65)
            half = bib / 2 if t < 0.33 else width * (0.62 + 0.38 * min((t - 0.33) / 0.3, 1))
            for c in range(columns + 1):
                p = centre + right * (c / columns * 2 - 1) * half
                p = p - forward * p.dot(forward)
                base[r, c] = p
                hit = self.front(p, forward)
                if hit:
                    depth[r, c] = hit.dot(forward)
            if t < 0.5 and not np.isnan(depth[r, columns // 2]):
                depth[r] = np.minimum(depth[r], depth[r, columns // 2] + 0.015)
        for r in range(rows + 1):
            row = depth[r]
            known = ~np.isnan(row)
            depth[r] = np.interp(np.arange(columns + 1), np.where(known)[0], row[known]) if known.any() else (depth[r - 1] if r else 0.12)
            if (~known).any() and known.any():
                far = np.abs(np.arange(columns + 1)[:, None] - np.where(known)[0][None]).min(1)
                depth[r] -= far * 0.012
        for r in range(1, rows + 1):
            depth[r] = np.maximum(depth[r], depth[r - 1] - 0.012)
        for _ in range(3):
            depth[1:-1] = np.maximum(depth[1:-1], (depth[:-2] + depth[2:]) / 2)
        points = [base[r, c] + forward * (depth[r, c] + 0.014 + 0.006 * math.sin(c * 1.1) * (r / rows) ** 2) for r in range(rows + 1) for c in range(columns + 1)]
        n = columns + 1
        faces = [(r * n + c, r * n + c + 1, (r + 1) * n + c + 1, (r + 1) * n + c) for r in range(rows) for c in range(columns)]
        thing = forms.raw(points, faces, material, True, "apron")
        solid = thing.modifiers.new("thick", "SOLIDIFY")
        solid.thickness = 0.008
        return self._place(thing)

    def shoes(self, material, boots=0.0):
        """Shoes, or boots where boots is how far up the shin they go (0..1)."""
        j = self.joints
        for side in "rl":
            a, R = j["ankle_" + side], self.R_foot_for(side)

            def q(x, y, z):
                return a + R @ V((x, y, z))
            groups = [[(q(0.012, -0.048, -0.052), 0.032), (q(-0.012, -0.048, -0.052), 0.032), (q(0, -0.01, 0.0), 0.042)],
                      [(q(0, 0.0, -0.005), 0.040), (q(0.020, 0.095, -0.055), 0.028), (q(-0.020, 0.095, -0.055), 0.028)],
                      [(q(0.020, 0.095, -0.055), 0.029), (q(-0.020, 0.095, -0.055), 0.029), (q(0.010, 0.155, -0.060), 0.022), (q(-0.012, 0.155, -0.060), 0.022)],
                      [(q(0, -0.045, -0.05), 0.034), (q(0, 0.095, -0.056), 0.028)]]
            if boots:
                knee = j["knee_" + side]
                up = a.lerp(knee, boots)
                groups += [[(a, 0.048), (a.lerp(knee, boots * 0.5), 0.054)], [(a.lerp(knee, boots * 0.5), 0.054), (up, 0.062, knee - a)]]
            low = min(-0.085, 0)

            def flat(points, normals, a=a, R=R, low=low):
                own = (points - np.array(a, np.float32)) @ np.array(R, np.float32)
                own[:, 2] = np.maximum(own[:, 2], low)
                return own @ np.array(R, np.float32).T + np.array(a, np.float32)
            self._place(forms.blob(groups, material, 0.008, 5, flat, name="shoe"))

    # --- head wear ---

    def _head_thing(self, groups, material, voxel=0.006, smooth=6, warp=None):
        return self._place(forms.blob(groups, material, voxel, smooth, warp, "headwear"))

    def _egg(self, at, radii):
        return forms.egg(self.head_point(*at), [r * self.head_scale for r in radii], self.R_head)

    def hair(self, material, style="short", wind=(0, 0, 0)):
        """Hair: short, crop, bob, bun, tail, long, braid, curls; wind (m, own axes) moves what hangs."""
        q, k, drift = self.head_point, self.head_scale, V(wind)
        groups = [self._egg((0, -0.026, 0.042), (0.080, 0.092, 0.083))]
        if style == "crop":
            groups = [self._egg((0, -0.022, 0.036), (0.0765, 0.092, 0.083))]
        if style in ("short", "bob", "long", "tail", "bun", "braid"):
            groups += [[(q(s * 0.070, -0.020, 0.025), 0.014), (q(s * 0.070, -0.045, -0.03), 0.016), (q(s * 0.035, -0.080, -0.04), 0.020)] for s in (1, -1)]
            groups += [[(q(0.030, 0.045, 0.098), 0.020), (q(-0.052, 0.040, 0.078), 0.018), (q(-0.068, 0.0, 0.06), 0.018), (q(0.01, -0.03, 0.11), 0.02)],
                       [(q(0.035, 0.045, 0.096), 0.018), (q(0.066, 0.020, 0.064), 0.016), (q(0.05, -0.03, 0.09), 0.02)]]
        if style in ("bob", "long"):
            for s in (1, -1):
                low = q(s * 0.074, -0.015, -0.085) + drift * 0.4
                groups.append([(q(s * 0.074, -0.010, 0.02), 0.020), (low, 0.021), (q(s * 0.052, -0.070, -0.08) + drift * 0.4, 0.030)])
            groups.append([(q(0.045, -0.075, 0.0), 0.035), (q(-0.045, -0.075, 0.0), 0.035), (q(0.045, -0.075, -0.085) + drift * 0.4, 0.034), (q(-0.045, -0.075, -0.085) + drift * 0.4, 0.034)])
        if style == "long":
            groups.append([(q(0.045, -0.075, -0.07) + drift * 0.4, 0.032), (q(-0.045, -0.075, -0.07) + drift * 0.4, 0.032), (q(0.03, -0.10, -0.24) + drift, 0.024), (q(-0.03, -0.10, -0.24) + drift, 0.024)])
        if style == "bun":
            groups.append([(q(0, -0.125, 0.055), 0.040), (q(0, -0.108, 0.045), 0.045)])
        if style in ("tail", "braid"):
            d, n = drift, 7
            chain = []
            for i in range(n):
                t = i / (n - 1)
                p = q(0, -0.105 - 0.055 * math.sin(t * 2.2), 0.055 - 0.27 * t) + d * t * t + d * t * 0.4
                chain.append((p, (0.030 * (1 - 0.55 * t)) * (1 + (0.22 if style == "braid" and i % 2 else 0))))
            groups += forms.limb(*chain)
        if style == "curls":
            chance = random.Random(5)
            for _ in range(60):
                a, e = chance.uniform(0, 6.28), chance.uniform(-0.25, 1.5)
                p = V((math.cos(a) * math.cos(e) * 0.084, -0.030 + math.sin(a) * math.cos(e) * 0.092, 0.042 + math.sin(e) * 0.088))
                if p.y < 0.035 or p.z > 0.07:
                    groups.append([(q(*p), chance.uniform(0.016, 0.024))])
        return self._head_thing(groups, material, 0.0052, 4)

    def cap(self, material, band=None):
        """A flat peaked cap."""
        q = self.head_point
        groups = [self._egg((0, -0.018, 0.070), (0.086, 0.104, 0.048)),
                  [(q(0.082, -0.03, 0.082), 0.022), (q(-0.082, -0.03, 0.082), 0.022), (q(0, 0.085, 0.082), 0.020), (q(0, -0.115, 0.078), 0.022), (q(0, -0.02, 0.112), 0.02)]]
        self._head_thing(groups, material, 0.0058, 5)
        peak = [[(q(0.062, 0.062, 0.058), 0.0065), (q(-0.062, 0.062, 0.058), 0.0065), (q(0.045, 0.118, 0.046), 0.0060), (q(-0.045, 0.118, 0.046), 0.0060), (q(0, 0.132, 0.046), 0.0060), (q(0, 0.08, 0.064), 0.008)]]
        self._head_thing(peak, band or material, 0.0036, 3)

    def beanie(self, material):
        """A knitted cap with a rolled edge."""
        q, R, k = self.head_point, self.R_head, self.head_scale
        self._head_thing([self._egg((0, -0.020, 0.052), (0.083, 0.100, 0.086))], material)
        circle = [q(0.081 * math.cos(t), -0.018 + 0.098 * math.sin(t), 0.046 - 0.012 * math.sin(t) * -1) for t in (2 * math.pi * i / 32 for i in range(33))]
        self._place(forms.tube(circle, 0.016 * k, material, 10))

    def hat(self, material, brim=0.10, crown=0.10, band=None):
        """A hat with a brim."""
        k, R = self.head_scale, self.R_head
        profile = [(0.082, 0.002), (0.082 + brim * 0.5, -0.004), (0.082 + brim, 0.006), (0.082 + brim, 0.012), (0.082 + brim * 0.4, 0.006), (0.086, 0.012), (0.082, crown * 0.8), (0.066, crown), (0.0, crown - 0.012)]
        thing = forms.lathe([(r * k, z * k) for r, z in profile], (0, 0, 0), material)
        thing.matrix_world = Matrix.Translation(self.head_point(0, -0.016, 0.058)) @ (R @ _turn(0, -6)).to_4x4() @ Matrix.Diagonal((1.0, 1.18, 1, 1))
        self._place(thing)
        if band:
            ring = forms.lathe([(0.0885 * k, 0.012), (0.0885 * k, 0.034)], (0, 0, 0), band)
            ring.matrix_world = Matrix.Translation(self.head_point(0, -0.016, 0.058)) @ (R @ _turn(0, -6)).to_4x4() @ Matrix.Diagonal((1.0, 1.18, 1, 1))
            self._place(ring)

    def hood(self, material, down=False):
        """A hood, up, with the face free; or down on the shoulders."""
        q, j = self.head_point, self.joints
        if down:
            n = j["neck"]
            groups = [[(n + self.R_chest @ V((s * 0.07, -0.03, 0.0)), 0.035), (n + self.R_chest @ V((s * 0.03, -0.10, 0.0)), 0.045)] for s in (1, -1)]
            groups.append([(n + self.R_chest @ V((0, -0.115, -0.03)), 0.055), (n + self.R_chest @ V((0, -0.07, 0.02)), 0.04)])
            return self._head_thing(groups, material)
        groups = [self._egg((0, -0.038, 0.018), (0.098, 0.108, 0.118)),
                  [(q(0.05, -0.05, -0.09), 0.055), (q(-0.05, -0.05, -0.09), 0.055), (j["neck"] + self.R_chest @ V((0.06, -0.015, -0.02)), 0.055), (j["neck"] + self.R_chest @ V((-0.06, -0.015, -0.02)), 0.055)],
                  [(q(0, -0.13, 0.05), 0.03), (q(0, -0.07, 0.09), 0.05)]]
        self._head_thing(groups, material)
        rim = [q(0.088 * math.sin(t), 0.052 + 0.016 * math.cos(t), 0.008 + 0.108 * math.cos(t)) for t in (2 * math.pi * i / 30 for i in range(31))]
        return self._place(forms.tube(rim, 0.013, material, 10))

    def headscarf(self, material):
        """A cloth over the hair, knotted behind."""
        q = self.head_point
        return self._head_thing([self._egg((0, -0.028, 0.040), (0.084, 0.096, 0.087)),
                                 [(q(0.06, -0.05, -0.03), 0.026), (q(-0.06, -0.05, -0.03), 0.026), (q(0, -0.10, -0.06), 0.028)],
                                 [(q(0, -0.115, -0.055), 0.022), (q(0.02, -0.14, -0.13), 0.012)], [(q(0, -0.115, -0.055), 0.022), (q(-0.025, -0.14, -0.12), 0.012)]], material)

    def scarf(self, material, tails=0.30, wind=(0, 0, 0)):
        """A scarf about the neck; wind moves its tail."""
        j, R, d = self.joints, self.R_chest, V(wind)
        c = j["neck"] + R @ V((0, 0.018, 0.028))
        groups = []
        ring = [c + R @ V((0.078 * math.cos(t), 0.078 * math.sin(t), 0.014 * math.sin(t * 2) - 0.010 * math.sin(t))) for t in (2 * math.pi * i / 14 for i in range(15))]
        groups += forms.limb(*[(p, 0.034) for p in ring])
        if tails:
            start = c + R @ V((0.05, 0.09, -0.01))
            way = (R @ V((0.02, 0.05, -1))) * tails
            points = [start + way * t + d * t * (0.5 + t * 0.7) + V((0, 0, 0.03)) * math.sin(t * 6) * d.length * 2 for t in (0, 0.2, 0.4, 0.6, 0.8, 1.0)]
            across = R @ V((0.034, 0, 0))
            groups += [[(points[i] + across * k, 0.013) for k in (1, -1)] + [(points[i + 1] + across * k, 0.013) for k in (1, -1)] for i in range(5)]
        return self._place(forms.blob(groups, material, 0.008, 5, self._creases(0.004, 30), "scarf"))

    def beard(self, material):
        """A short full beard."""
        q = self.head_point
        return self._head_thing([[(q(0, 0.072, -0.100), 0.024), (q(0.048, 0.012, -0.068), 0.020), (q(-0.048, 0.012, -0.068), 0.020)],
                                 [(q(0.022, 0.080, -0.056), 0.008), (q(0, 0.086, -0.050), 0.007), (q(-0.022, 0.080, -0.056), 0.008)],
                                 [(q(s := 0.06, 0.0, -0.02), 0.013), (q(0.048, 0.012, -0.068), 0.018)], [(q(-s, 0.0, -0.02), 0.013), (q(-0.048, 0.012, -0.068), 0.018)]], material, 0.0048, 4)
