package lampwright.drawing;

import java.util.List;
import java.util.Optional;
import lampwright.engine.light.EmittingFace;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;
import lampwright.language.Notation;
import lampwright.setup.signature.Softness;
import lampwright.wording.Wording;

/**
 * How large a round face looks as it goes away, and how wide the edge of a shadow is then: from
 * above, the edge that throws it in the middle, a wall behind it.
 */
public final class SoftnessBook {

  private static final Metres DIAMETER = new Metres(1);
  private static final Metres GAP = new Metres(0.5);
  private static final List<Double> DISTANCES_M =
      List.of(0.75, 1.0, 1.25, 1.5, 1.75, 2.0, 2.25, 2.5, 3.0, 3.5, 4.0);
  private static final double UNITS_A_METRE = 58;
  private static final double HEIGHT = 182;
  private static final Spot EDGE = new Spot(256, 80);
  private static final double WALL = EDGE.x() + 0.5 * UNITS_A_METRE;
  private static final double WALL_TOP = 14;
  private static final double WALL_BOTTOM = 148;
  private static final double BAND = 9;
  private static final double ARC = 30;

  private final Notation notation;
  private final Wording words;
  private final EmittingFace face = new EmittingFace.Disc(DIAMETER.times(0.5));

  private SoftnessBook(Notation notation) {
    this.notation = notation;
    this.words = new Wording(notation);
  }

  /** The book in somebody's words. */
  public static FlipBook of(Notation notation) {
    return new SoftnessBook(notation).book();
  }

  private FlipBook book() {
    return new FlipBook(
        "softness",
        notation.say("glossary.draw.softness.label", notation.tape(DIAMETER)),
        DISTANCES_M.stream().map(Metres::new).map(this::leaf).toList());
  }

  private FlipBook.Leaf leaf(Metres distance) {
    Degrees looks = face.angularSize(distance);
    Metres penumbra = EmittingFace.penumbra(looks, GAP);
    String far = FlipSheet.unbroken(notation.tape(distance));
    return new FlipBook.Leaf(
        far,
        notation.say(
            "glossary.draw.softness.says",
            far,
            words.degrees(looks),
            words.say(new Softness(looks).words()),
            FlipSheet.unbroken(notation.tape(GAP)),
            FlipSheet.unbroken(notation.tape(penumbra))),
        drawing(distance, looks, penumbra),
        Optional.empty());
  }

  private Svg drawing(Metres distance, Degrees looks, Metres penumbra) {
    Markup body = new Markup();
    double half = DIAMETER.value() / 2 * UNITS_A_METRE;
    Spot middle = EDGE.plus(new Spot(-distance.value() * UNITS_A_METRE, 0));
    Spot upper = middle.plus(new Spot(0, -half));
    Spot lower = middle.plus(new Spot(0, half));
    double halfPenumbra = penumbra.value() / 2 * UNITS_A_METRE;
    Spot brightEnd = new Spot(WALL, EDGE.y() - halfPenumbra);
    Spot darkEnd = new Spot(WALL, EDGE.y() + halfPenumbra);
    body.path("plan-spread", new Strokes().from(EDGE).to(upper).to(lower).close());
    body.path("plan-aim", new Strokes().from(upper).to(darkEnd).from(lower).to(brightEnd));
    body.path(
        "plan-tick",
        new Strokes()
            .from(EDGE.along(EDGE.unitTo(lower), ARC))
            .arc(ARC, EDGE.along(EDGE.unitTo(upper), ARC)));
    FlipSheet.box(body, "flip-shade", new Box(WALL, darkEnd.y(), WALL + BAND, WALL_BOTTOM));
    FlipSheet.box(body, "flip-penumbra", new Box(WALL, brightEnd.y(), WALL + BAND, darkEnd.y()));
    body.path(
        "plan-wall", new Strokes().from(new Spot(WALL, WALL_TOP)).to(new Spot(WALL, WALL_BOTTOM)));
    body.path("plan-surface", new Strokes().from(EDGE).to(new Spot(EDGE.x(), WALL_BOTTOM)));
    body.path("plan-light", new Strokes().from(upper).to(lower));
    FlipSheet.figure(body, notation.tape(penumbra), "start", new Spot(WALL + BAND + 7, EDGE.y()));
    FlipSheet.figure(body, words.degrees(looks), "end", new Spot(EDGE.x() - 8, EDGE.y() + 44));
    drawDistance(body, middle.x(), notation.tape(distance));
    return FlipSheet.svg(
        HEIGHT,
        notation.say("glossary.draw.softness.title", notation.tape(distance), notation.tape(GAP)),
        body);
  }

  /** A line of dimension from the face to the edge, its figure below it. */
  private static void drawDistance(Markup body, double from, String far) {
    double y = WALL_BOTTOM + 12;
    Strokes line = new Strokes().from(new Spot(from, y)).to(new Spot(EDGE.x(), y));
    for (double end : new double[] {from, EDGE.x()}) {
      line.from(new Spot(end, y - 4)).to(new Spot(end, y + 4));
    }
    body.path("plan-tick", line);
    PlanFrame.text(
        body, "flip-figure flip-aim", far, "middle", new Spot((from + EDGE.x()) / 2, y + 14));
  }
}
