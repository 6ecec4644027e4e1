package lampwright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lampwright.engine.beam.Even;
import lampwright.engine.light.EmittingFace;
import lampwright.engine.light.PlacedSource;
import lampwright.engine.light.Point;
import lampwright.engine.light.Pose;
import lampwright.engine.light.Receptor;
import lampwright.engine.light.UnitVector;
import lampwright.engine.map.Contour;
import lampwright.engine.map.Contours;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;
import lampwright.language.Notation;
import lampwright.wording.Wording;

/**
 * A softbox turned away from the nearer of two, towards the farther one and past it: the levels of
 * both come together. Levels count from the near one's before the turn, each point metered towards
 * the box.
 */
public final class TurnBook {

  private static final int STEPS = 12;
  private static final int DEGREES_A_STEP = 5;
  private static final EmittingFace BOX =
      new EmittingFace.Rectangle(new Metres(0.9), new Metres(1.2));
  private static final Point PLACE = new Point(-0.9, -0.9, 0);
  private static final Point NEAR = new Point(0, 0, 0);
  private static final Point FAR = new Point(1.5, 0, 0);

  /** The map's lower left corner and its grid, in metres. */
  private static final double LEFT_M = -1.5;

  private static final double NEAREST_M = -1.2;
  private static final double SPACING_M = 0.075;
  private static final int COLUMNS = 49;
  private static final int ROWS = 29;
  private static final int LOWEST = -4;
  private static final int HIGHEST = 1;

  /** What stands in the grid where there is no light: below every line. */
  private static final double DARK = LOWEST - 4;

  /** So far before the plane of the box the lines can be told apart. */
  private static final double CLEAR_M = 0.12;

  private static final double UNITS_A_METRE = 95;
  private static final Box FRAME = new Box(FlipSheet.LEFT, 8, FlipSheet.RIGHT, 208);
  private static final double HEIGHT = 216;
  private static final double SUBJECT = 11;
  private static final double ROOM = 30;

  private final Notation notation;
  private final Wording words;
  private final double before = geometry(source(0), NEAR);

  private TurnBook(Notation notation) {
    this.notation = notation;
    this.words = new Wording(notation);
  }

  /** The book in somebody's words. */
  public static FlipBook of(Notation notation) {
    return new TurnBook(notation).book();
  }

  private FlipBook book() {
    return new FlipBook(
        "turn",
        notation.say("glossary.draw.turn.label"),
        IntStream.rangeClosed(0, STEPS).mapToObj(step -> leaf(step * DEGREES_A_STEP)).toList());
  }

  /** The box turned so many degrees from the near one towards the far one. */
  private static PlacedSource source(int turnedDeg) {
    UnitVector aimed = UnitVector.between(PLACE, NEAR);
    double turn = new Degrees(turnedDeg).toRadians();
    double cosine = StrictMath.cos(turn);
    double sine = StrictMath.sin(turn);
    UnitVector axis =
        UnitVector.of(
            aimed.x() * cosine + aimed.y() * sine, aimed.y() * cosine - aimed.x() * sine, 0);
    return new PlacedSource(BOX, new Even(), new Pose(PLACE, axis, new Degrees(0)));
  }

  private static double geometry(PlacedSource source, Point at) {
    return source.geometryAt(at, new Receptor.TowardSource());
  }

  private FlipBook.Leaf leaf(int turnedDeg) {
    PlacedSource source = source(turnedDeg);
    Stops near = Stops.ofRatio(geometry(source, NEAR) / before);
    Stops far = Stops.ofRatio(geometry(source, FAR) / before);
    String turned = words.degrees(new Degrees(turnedDeg));
    String apart = words.stops(near.minus(far).value());
    String says =
        turnedDeg == 0
            ? notation.say("glossary.draw.turn.aimed", apart)
            : words.isNothing(near)
                ? notation.say("glossary.draw.turn.kept", turned, apart)
                : notation.say(
                    "glossary.draw.turn.says", turned, words.stops(near.negated().value()), apart);
    StopRuler ruler =
        StopRuler.of(notation.say("glossary.draw.level"), notation)
            .withNames(
                notation.say("glossary.draw.turn.near"), notation.say("glossary.draw.turn.far"))
            .withDot(near.value())
            .withBar(far.value());
    return new FlipBook.Leaf(
        turned, says, drawing(source, near, far, turned), Optional.of(FlipBook.Ruler.of(ruler)));
  }

  private Svg drawing(PlacedSource source, Stops near, Stops far, String turned) {
    Markup body = new Markup();
    UnitVector axis = source.pose().axis();
    Spot box = spot(PLACE.x(), PLACE.y());
    Spot way = new Spot(axis.x(), -axis.y());
    body.openClipped(FRAME);
    Markup figures = drawLevels(body, source);
    // Three metres reach the frame's edge from everywhere.
    body.path("plan-aim", new Strokes().from(box).to(box.along(way, 3 * UNITS_A_METRE)));
    Spot across = way.turned(90);
    double half = 0.45 * UNITS_A_METRE;
    body.path(
        "plan-light", new Strokes().from(box.along(across, half)).to(box.along(across, -half)));
    body.add(figures).close("svg");
    FlipSheet.box(body, "plan-frame", FRAME);
    drawSubject(body, NEAR, notation.signed(near));
    drawSubject(body, FAR, notation.signed(far));
    return FlipSheet.svg(HEIGHT, notation.say("glossary.draw.turn.title", turned), body);
  }

  private void drawSubject(Markup body, Point at, String level) {
    Spot spot = spot(at.x(), at.y());
    FlipSheet.subject(body, spot, SUBJECT, spot.unitTo(spot(PLACE.x(), PLACE.y())));
    PlanFrame.text(
        body, "flip-figure flip-reading", level, "middle", spot.plus(new Spot(0, -SUBJECT - 11)));
  }

  /** Draws the lines and returns their figures, which lie over whatever else crosses them. */
  private Markup drawLevels(Markup body, PlacedSource source) {
    double[] stops = new double[COLUMNS * ROWS];
    for (int row = 0; row < ROWS; row++) {
      for (int column = 0; column < COLUMNS; column++) {
        stops[row * COLUMNS + column] = stops(source, column, row);
      }
    }
    List<Double> levels =
        IntStream.rangeClosed(LOWEST, HIGHEST).mapToObj(level -> (double) level).toList();
    List<Spot> taken =
        new ArrayList<>(
            List.of(
                spot(NEAR.x(), NEAR.y() + 0.1),
                spot(FAR.x(), FAR.y() + 0.1),
                spot(PLACE.x(), PLACE.y())));
    Markup figures = new Markup();
    for (Contour contour :
        Contours.of(
            stops, COLUMNS, ROWS, SPACING_M, levels, (column, row) -> stops(source, column, row))) {
      Strokes strokes = new Strokes();
      List<Spot> drawn = new ArrayList<>();
      for (List<Spot> line : beforeTheBox(contour, source)) {
        List<Spot> spots = PlanLevels.simplified(line);
        strokes.from(spots.getFirst());
        spots.stream().skip(1).forEach(strokes::to);
        drawn.addAll(spots);
      }
      body.path(contour.level() == 0 ? "plan-contour-zero" : "plan-contour", strokes);
      freest(drawn, taken)
          .ifPresent(
              at -> {
                taken.add(at);
                FlipSheet.level(figures, PlanLevels.figure((int) contour.level()), at);
              });
    }
    return figures;
  }

  private double stops(PlacedSource source, double column, double row) {
    Point at = new Point(LEFT_M + column * SPACING_M, NEAREST_M + row * SPACING_M, 0);
    double geometry = geometry(source, at);
    return geometry > 0 ? Math.max(DARK, Stops.ofRatio(geometry / before).value()) : DARK;
  }

  /** The parts of a line that lie clear of the box's own plane, where all lines run together. */
  private static List<List<Spot>> beforeTheBox(Contour contour, PlacedSource source) {
    List<Contour.Vertex> vertices = new ArrayList<>(contour.vertices());
    if (contour.closed()) {
      vertices.add(vertices.getFirst());
    }
    UnitVector axis = source.pose().axis();
    List<List<Spot>> lines = new ArrayList<>();
    List<Spot> line = new ArrayList<>();
    for (Contour.Vertex vertex : vertices) {
      double x = LEFT_M + vertex.xM();
      double y = NEAREST_M + vertex.yM();
      if ((x - PLACE.x()) * axis.x() + (y - PLACE.y()) * axis.y() >= CLEAR_M) {
        line.add(spot(x, y));
      } else if (line.size() > 1) {
        lines.add(line);
        line = new ArrayList<>();
      } else {
        line.clear();
      }
    }
    if (line.size() > 1) {
      lines.add(line);
    }
    return lines;
  }

  /** Where on a line a figure is farthest from everything else; empty where that is not far. */
  private static Optional<Spot> freest(List<Spot> line, List<Spot> taken) {
    return line.stream()
        .filter(FRAME.grown(-14)::contains)
        .max(Comparator.comparingDouble(at -> room(at, taken)))
        .filter(at -> room(at, taken) >= ROOM);
  }

  private static double room(Spot at, List<Spot> taken) {
    return taken.stream().mapToDouble(at::distanceTo).min().orElse(ROOM);
  }

  private static Spot spot(double xM, double yM) {
    return new Spot(
        FRAME.left() + (xM - LEFT_M) * UNITS_A_METRE,
        FRAME.bottom() - (yM - NEAREST_M) * UNITS_A_METRE);
  }
}
