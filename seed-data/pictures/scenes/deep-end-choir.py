"""Five women in dark coats sing in an empty tiled bath, each a little lower than the last; their breath hangs in grey light."""
import figures
import forms
import materials as m
import more_indoors as more
import places

CAPTION = "Five women in dark coats sing on the sloping floor of an empty tiled bath, each standing a little lower than the last. The one in the middle leads with a raised hand; grey light falls from above and their breath hangs in the air."
CAMERA = dict(zoom=1.34, aim_move=(0.02, 0, -0.2))
WORLD = dict(seen=0.4)
FINISH = dict(samples=16, contrast=0.26, saturation=1.15, bloom=0.08, push=0.05)


def build(document):
    """The bath, the slope, the singers."""
    more.bath(7.0, 6.0, 3.4, -6.0, (), wall_green=1.8)
    tile = m.courses("#ccd4d0", (0.15, 0.15), "#7f8a88", 0.3, 0.006, gap=0.006, up="y")
    forms.raw([(-6, -6, 1.08), (0, -6, 0.0), (0, 7, 0.0), (-6, 7, 1.08)], [(0, 1, 2, 3)], tile)
    coats = ("#2a2e36", "#3d2630", "#20242c", "#2c3a34", "#332b26")
    builds = ((-1.90, 0.90, -20, 1.70), (-0.95, 0.40, -10, 1.60), (0.0, 0.0, 0, 1.72), (0.95, 0.20, 10, 1.66), (1.85, 0.60, 20, 1.75))
    poses = (dict(look=(-14, -4, -3), hand_r=(0.14, 0.28, 1.06), hand_l=(-0.10, 0.30, 1.04)),
             dict(look=(-8, -10, 4), hand_r=(0.10, 0.30, 1.22), curl_r=0.8),
             dict(look=(0, -4, 0), hand_r=(0.42, 0.26, 1.62), elbow_r=(0.9, -0.2, -0.4), finger_r=(0.1, 0.3, 1), palm_r=(0, 1, 0.1), curl_r=0.15, hand_l=(-0.22, 0.24, 1.10)),
             dict(look=(6, -16, -8), lean=(-4, 2), hand_r=(0.12, 0.20, 1.02), hand_l=(-0.14, 0.18, 1.02)),
             dict(look=(18, 6, 5), hand_r=(-0.04, 0.26, 1.06), hand_l=(0.04, 0.28, 1.04), elbow_r=(0.9, -0.2, -0.2), elbow_l=(-0.9, -0.2, -0.2)))
    hairs = (("#5a3a24", "bun"), ("#a08a68", "bob"), ("#2a1c16", "crop"), ("#7a3a22", "braid"), ("#8d8a85", "curls"))
    scarves = ("#7a8f94", "#a5603a", "#b7a23f", "#6d8a6a", "#8a3038")
    for i, ((x, y, turn, high), change, (tone, style)) in enumerate(zip(builds, poses, hairs)):
        z = 0.18 * -x if x < 0 else 0.0
        her = figures.Figure((x, y, z), turn, high, "woman", figures.pose("stand", **change), skin=("#c99f84", "#b98a6a", "#d2a88c", "#cba088", "#a87a5c")[i])
        her.coat(m.cloth(coats[i], 220, 0.6), 0.66 - 0.05 * (i % 2), 0.09, slack=0.034, buttons=m.metal("#8d8a80", 0.4) if i != 3 else None)
        her.shoes(m.leather("#1d1a18"), 0.6)
        her.hair(m.hair(tone), style)
        if i == 4:
            her.beanie(m.cloth("#574a5c", 120))
        if i == 1:
            her.hat(m.cloth("#2f3a40"), 0.045, 0.09)
        if i in (0, 2, 4):
            her.scarf(m.cloth(scarves[i]), 0.2 if i else 0)
        more.singing(her)
        mouth = her.matrix @ her.head_point(0.0, 0.17, -0.05)
        places.puff((mouth.x + 0.04, mouth.y - 0.05, mouth.z + 0.05), (0.20, 0.16, 0.13), 9)
