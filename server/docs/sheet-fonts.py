"""Makes the fonts of the field sheet's PDF from the web fonts among the assets.

A PDF needs TrueType files with every sign in one; the web fonts are WOFF2, cut in two by alphabet, and lack the thirds,
the primes of feet and inches, and arrows. Here the halves are put together and those signs are drawn from the font's own
digits and strokes. Run once after the web fonts change (fontTools 4.66 and brotli):

    python3 server/docs/sheet-fonts.py server/src/main/resources/lampwright
"""
import io
import sys
from fontTools.merge import Merger
from fontTools.pens.recordingPen import DecomposingRecordingPen
from fontTools.pens.transformPen import TransformPen
from fontTools.pens.ttGlyphPen import TTGlyphPen
from fontTools.ttLib import TTFont

LAYOUT = ("GSUB", "GPOS", "GDEF", "DSIG", "STAT", "kern")


def half(folder, family, part, weight):
    font = TTFont(f"{folder}/assets/fonts/atkinson-hyperlegible-{family}-{part}-{weight}-normal.woff2")
    font.flavor = None
    for table in LAYOUT:
        if table in font:
            del font[table]
    out = io.BytesIO()
    font.save(out)
    out.seek(0)
    return out


def add(font, name, code, width, draw):
    pen = TTGlyphPen(font.getGlyphSet())
    draw(pen)
    font["glyf"][name] = pen.glyph()
    font["hmtx"][name] = (width, 0)
    for table in font["cmap"].tables:
        if table.isUnicode():
            table.cmap[code] = name
    if name not in font.getGlyphOrder():
        font.setGlyphOrder(font.getGlyphOrder() + [name])
    glyph = font["glyf"][name]
    glyph.recalcBounds(font["glyf"])
    font["hmtx"][name] = (width, glyph.xMin)


def contours(font, char):
    """The glyph's contours as lists of pen calls."""
    glyphs = font.getGlyphSet()
    pen = DecomposingRecordingPen(glyphs)
    glyphs[font.getBestCmap()[ord(char)]].draw(pen)
    found = []
    for call in pen.value:
        if call[0] == "moveTo":
            found.append([])
        found[-1].append(call)
    return found


def box(contour):
    points = [p for _, args in contour for p in args if p]
    xs, ys = [p[0] for p in points], [p[1] for p in points]
    return min(xs), min(ys), max(xs), max(ys)


def play(found, pen, dx=0, dy=0):
    moved = TransformPen(pen, (1, 0, 0, 1, dx, dy))
    for contour in found:
        for name, args in contour:
            getattr(moved, name)(*args)


def polygon(pen, points):
    pen.moveTo(points[0])
    for point in points[1:]:
        pen.lineTo(point)
    pen.closePath()


def thirds(font):
    """One half with its digits changed: the two of the square above, the three of the cube below."""
    half_glyph = contours(font, "½")
    width = font["hmtx"][font.getBestCmap()[ord("½")]][0]
    stroke = max(half_glyph, key=lambda c: box(c)[3] - box(c)[1])
    middle = (box(stroke)[0] + box(stroke)[2]) / 2
    rest = [c for c in half_glyph if c is not stroke]
    above = [c for c in rest if (box(c)[0] + box(c)[2]) / 2 < middle]
    below = [c for c in rest if c not in above]
    two, three = contours(font, "²"), contours(font, "³")

    def edges(found):
        boxes = [box(c) for c in found]
        return min(b[0] for b in boxes), min(b[1] for b in boxes), max(b[2] for b in boxes), max(b[3] for b in boxes)

    a, b = edges(above), edges(below)

    def placed(found, at):
        e = edges(found)
        return round((at[0] + at[2]) / 2 - (e[0] + e[2]) / 2), round(at[1] - e[1])

    def one_third(pen):
        play([stroke], pen)
        play(above, pen)
        play(three, pen, *placed(three, b))

    def two_thirds(pen):
        play([stroke], pen)
        play(two, pen, *placed(two, a))
        play(three, pen, *placed(three, b))

    add(font, "onethird", 0x2153, width, one_third)
    add(font, "twothirds", 0x2154, width, two_thirds)


def signs(font, mono, weight):
    cap = 668
    thick = 66 if weight == "400" else 106
    width = 632 if mono else 300
    double = 632 if mono else 440
    arrow = 632 if mono else 860

    def stroke(left):
        def draw(pen):
            for x in left:
                polygon(pen, [(x + 60, cap + 30), (x + 60 + thick, cap + 30), (x + thick * 0.55, cap - 230), (x, cap - 230)])
        return draw

    middle = 632 / 2 if mono else width / 2
    add(font, "prime", 0x2032, width, stroke([middle - (60 + thick) / 2]))
    middle = double / 2
    gap = 50 + thick
    add(font, "doubleprime", 0x2033, double, stroke([middle - (60 + thick + gap) / 2, middle - (60 + thick + gap) / 2 + gap]))
    long, head, y = arrow - 120, 190, 330
    half_t = thick / 2

    def right(pen):
        polygon(pen, [(60, y - half_t), (60, y + half_t), (60 + long - head, y + half_t), (60 + long - head, y + head * 0.8),
                      (60 + long, y), (60 + long - head, y - head * 0.8), (60 + long - head, y - half_t)])

    def upright(turn):
        middle_x, low, high = (632 if mono else 560) / 2, 20, 660

        def draw(pen):
            points = [(middle_x - half_t, low), (middle_x - half_t, high - head), (middle_x - head * 0.8, high - head),
                      (middle_x, high), (middle_x + head * 0.8, high - head), (middle_x + half_t, high - head), (middle_x + half_t, low)]
            if turn:
                points = [(x, low + high - py) for x, py in reversed(points)]
            polygon(pen, points)
        return draw

    add(font, "arrowright", 0x2192, arrow, right)
    add(font, "arrowup", 0x2191, 632 if mono else 560, upright(False))
    add(font, "arrowdown", 0x2193, 632 if mono else 560, upright(True))
    # The micro sign is the letter mu where the font has it; else u with a stem below.
    for char, name in (("µ", "micro"),):
        if ord(char) not in font.getBestCmap():
            u = contours(font, "u")
            w = font["hmtx"][font.getBestCmap()[ord("u")]][0]
            left = min(box(c)[0] for c in u)

            def micro(pen):
                play(u, pen)
                polygon(pen, [(left, -180), (left, 200), (left + thick, 200), (left + thick, -180)])
            add(font, name, 0x00B5, w, micro)


def main(folder):
    for family, mono in (("next", False), ("mono", True)):
        for weight in ("400", "600"):
            halves = [half(folder, family, part, weight) for part in ("latin", "latin-ext")]
            font = Merger().merge(halves)
            thirds(font)
            signs(font, mono, weight)
            name = f"{folder}/sheet-fonts/atkinson-hyperlegible-{family}-{weight}.ttf"
            font.save(name)
            print(name, len(font.getBestCmap()))


main(sys.argv[1])
