"""Three ringers in dark coats in a chapel; the middle one strikes, a brass ribbon of blur behind her bell; two hold theirs and count."""
import figures
import forms
import materials as m
import more_indoors as more
import places

CAPTION = "Three handbell ringers in dark coats stand in a row in a lamplit chapel. The middle one strikes, her arm out, a ribbon of brass light trailing to the bell; the left one holds two bells to her chest, an old man counts with his lips."
CAMERA = dict(zoom=1.55, aim_move=(0.03, 0, -0.04))
WORLD = dict(seen=0.1, stops=-2.6)  # the rest of the lamps' light comes from the scene's own lamps
FINISH = dict(samples=16, contrast=0.2, bloom=0.14, saturation=1.12, push=0.5, vignette=0.2)


def build(document):
    """The chapel, its lamps, the ringers."""
    more.chapel(document, ("#3b2f24", "#4a3626"), "#a8906c", ("#7a3a22", "#2f4a4a", "#8a6a2a", "#7a3a22", "#3a4a30", "#8a5a2a"))
    for x in (-2.9, -0.95, 1.0, 2.95):
        forms.rod((x, 5.55, 2.7), (x, 5.55, 2.95), 0.015, m.metal("#b08a4a", 0.3))
        forms.ball((x, 5.55, 3.05), (0.10, 0.10, 0.13), m.glow("#ffb45a", 2.2))
        places.lamp((x, 5.2, 3.0), 16, (1, 0.55, 0.22), 0.1)
    brass = m.metal("#dca848", 0.2, 0.1)
    left = figures.Figure((-1.02, 0.30, 0), 14, 1.62, "woman", figures.pose(
        "stand", lean=(-2, 0), look=(8, 10, -5), hand_r=(0.13, 0.24, 1.22), hand_l=(-0.13, 0.24, 1.22), elbow_r=(0.8, -0.4, -0.5), elbow_l=(-0.8, -0.4, -0.5),
        finger_r=(-0.4, 0.3, 0.8), finger_l=(0.4, 0.3, 0.8), curl_r=0.9, curl_l=0.9), skin="#cfa286")
    mid = figures.Figure((0, 0, 0), -6, 1.78, "woman", figures.pose(
        "ease", lean=(6, -4), twist=12, look=(22, 8, 3), hand_r=(-0.20, 0.44, 1.30), elbow_r=(0.5, 0.4, -0.6), finger_r=(-0.7, 0.7, 0), palm_r=(-0.5, -0.6, -0.2), curl_r=0.9,
        hand_l=(-0.26, 0.10, 1.04), elbow_l=(-0.8, -0.4, -0.3)), skin="#c9987a")
    old = figures.Figure((1.08, 0.36, 0), -14, 1.70, "man", figures.pose(
        "stand", lean=(5, 0), look=(-6, 6, -3), hand_r=(0.12, 0.25, 1.20), hand_l=(-0.14, 0.25, 1.18), elbow_r=(0.8, -0.4, -0.5), elbow_l=(-0.8, -0.4, -0.5),
        finger_r=(-0.4, 0.3, 0.8), finger_l=(0.4, 0.3, 0.8), curl_r=0.9, curl_l=0.9), skin="#c9a084")
    for fig, tone in ((left, "#2b3440"), (mid, "#2a2226"), (old, "#262a2c")):
        fig.trousers(m.cloth("#1f1f22"))
        fig.coat(m.cloth(tone, 220, 0.6), 0.5, 0.06, collar=0.045, buttons=m.metal("#b0904a", 0.3))
        fig.shoes(m.leather("#1a1614"))
    left.hair(m.hair("#8a4a26"), "braid")
    mid.hair(m.hair("#2a1a14"), "bun")
    mid.scarf(m.cloth("#8a2f2a"), 0)
    old.hair(m.hair("#d8d4cc"), "crop")
    old._collar(m.cloth("#f0eee8", 220, 0.2), 0.055, 1.5)
    for fig in (left, old):
        for s, side in ((1, "r"), (-1, "l")):
            grip = fig.at("grip_" + side)
            out = fig.matrix.to_3x3() @ figures.V((s * 0.05, 0.13, 0.25))
            more.handbell(grip + out * 0.85, grip - out * 0.2, 1.0, brass)
    grip = mid.at("grip_r")
    mouth = figures.V((0.40, -0.46, 1.40))
    way = (mouth - grip).normalized()
    more.handbell(grip + way * 0.20, grip, 1.15, brass)
    end = grip + way * 0.24
    path = [(-0.36, -0.04, 1.08), (-0.38, -0.18, 1.20), (-0.30, -0.36, 1.36), (-0.10, -0.48, 1.45), (0.12, -0.52, 1.46), end]
    for k, (wide, strength, solid) in enumerate(((0.055, 0.7, 0.22), (0.034, 1.0, 0.25), (0.014, 1.5, 0.35))):
        pts = [figures.V(p) for p in path]
        for _ in range(3):
            pts = [pts[0], *[q for a, b in zip(pts, pts[1:]) for q in (a.lerp(b, 0.25), a.lerp(b, 0.75))], pts[-1]]
        n = len(pts) - 1

        def at(u, v, wide=wide, k=k):
            p = pts[min(round(u * n), n)]
            w = wide * (0.25 + 0.75 * u)
            return p.x + (v - 0.5) * 0.3 * w, p.y - 0.004 * k, p.z + (v - 0.5) * 2 * w
        forms.sheet(at, more.ghost("#ffb24a", strength, solid), n, 4)
