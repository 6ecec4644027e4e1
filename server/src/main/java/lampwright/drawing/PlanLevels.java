package lampwright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lampwright.drawing.Label.Kind;
import lampwright.drawing.Label.Side;
import lampwright.drawing.Label.Wish;
import lampwright.engine.light.Point;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;
import lampwright.setup.Burning;
import lampwright.setup.Light;
import lampwright.setup.MapQuestion;
import lampwright.setup.Role;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.SetupMap;

/**
 * The lines of level on a plan: the reading map of the whole sheet at the height of the key's
 * target, metered toward the camera, in whole stops from the shooting exposure. Lines run through
 * points of the engine's; those that a straight stroke passes within a quarter of a unit are left
 * out, and so is a loop too small to see.
 *
 * @param heightM of the plane
 * @param lines on the sheet, each with its level
 */
record PlanLevels(Sheet sheet, double heightM, List<Line> lines) {

  private static final int LOWEST = -3;
  private static final int HIGHEST = 2;

  /** Nodes across the sheet: a cell is then about nine units wide. */
  private static final int COLUMNS = 81;

  private static final int MOST_ROWS = 200;

  /** No eye sees a stroke that is farther off than this, in units. */
  private static final double STRAIGHT = 0.25;

  private static final double SHORTEST = 60;

  /** A short line has no room for its figure. */
  private static final double SHORTEST_WITH_FIGURE = 90;

  private static final int PLACES = 24;

  PlanLevels {
    lines = List.copyOf(lines);
  }

  /** One line of a level, its first spot repeated at the end where it is closed. */
  record Line(int level, List<Spot> spots) {

    double length() {
      double length = 0;
      for (int i = 1; i < spots.size(); i++) {
        length += spots.get(i - 1).distanceTo(spots.get(i));
      }
      return length;
    }
  }

  /** The levels of a sheet; empty where nothing tells any light's strength. */
  static Optional<PlanLevels> of(Sheet sheet, SetupDocument setup) {
    return of(sheet, setup, Burning.ALL);
  }

  /** The levels of what burns; empty where no light does, for the ambient is alike everywhere. */
  static Optional<PlanLevels> of(Sheet sheet, SetupDocument setup, Burning burning) {
    double height = height(setup);
    Extent extent = sheet.extent();
    int rows = (int) Math.round((COLUMNS - 1) * extent.height() / extent.width()) + 1;
    MapQuestion question =
        new MapQuestion(
            new MapQuestion.Level(
                new Point(extent.left(), extent.near(), height),
                new Metres(extent.width()),
                new Metres(extent.height())),
            COLUMNS,
            Math.min(MOST_ROWS, rows),
            MapQuestion.Held.TOWARD_CAMERA,
            IntStream.rangeClosed(LOWEST, HIGHEST).mapToObj(Stops::new).toList(),
            false);
    SetupMap map = SetupMap.of(setup, question, burning);
    if (map.lights().isEmpty()) {
      return Optional.empty();
    }
    List<Line> lines = new ArrayList<>();
    for (SetupMap.Line line : map.contours(question.levels())) {
      List<Spot> spots = new ArrayList<>(line.points().stream().map(sheet::spot).toList());
      if (line.closed()) {
        spots.add(spots.getFirst());
      }
      Line drawn = new Line((int) Math.round(line.level().value()), simplified(spots));
      if (drawn.length() >= SHORTEST) {
        lines.add(drawn);
      }
    }
    return Optional.of(new PlanLevels(sheet, height, lines));
  }

  /** At the key's target, or the first light's: where the subject is lit. */
  private static double height(SetupDocument setup) {
    List<Light> lights = setup.lightsInBuildOrder();
    return lights.stream()
        .filter(light -> light.role() == Role.KEY)
        .findFirst()
        .orElse(lights.getFirst())
        .target()
        .at()
        .z();
  }

  /** Without the spots that the strokes between the others pass anyway (Douglas and Peucker). */
  static List<Spot> simplified(List<Spot> spots) {
    boolean[] kept = new boolean[spots.size()];
    kept[0] = true;
    kept[spots.size() - 1] = true;
    // Of a closed line both ends are one; the spot farthest from there parts it first.
    keep(spots, 0, spots.size() - 1, kept);
    List<Spot> left = new ArrayList<>();
    for (int i = 0; i < kept.length; i++) {
      if (kept[i]) {
        left.add(spots.get(i));
      }
    }
    return left;
  }

  private static void keep(List<Spot> spots, int from, int to, boolean[] kept) {
    Segment stroke = new Segment(spots.get(from), spots.get(to));
    double farthest = STRAIGHT;
    int at = -1;
    for (int i = from + 1; i < to; i++) {
      double off = stroke.nearestTo(spots.get(i)).distanceTo(spots.get(i));
      if (off > farthest) {
        farthest = off;
        at = i;
      }
    }
    if (at >= 0) {
      kept[at] = true;
      keep(spots, from, at, kept);
      keep(spots, at, to, kept);
    }
  }

  /** The levels that have a line, from the lowest. */
  List<Integer> levels() {
    return lines.stream().map(Line::level).distinct().sorted().toList();
  }

  void draw(Markup markup) {
    for (int level : levels()) {
      Strokes strokes = new Strokes();
      for (Line line : lines) {
        if (line.level() == level) {
          strokes.from(line.spots().getFirst());
          line.spots().stream().skip(1).forEach(strokes::to);
        }
      }
      markup.path(level == 0 ? "plan-contour-zero" : "plan-contour", strokes);
    }
  }

  /** One figure a level, on its longest line, wherever there is room; the zero's first. */
  List<Label> labels() {
    List<Label> labels = new ArrayList<>();
    List<Integer> order =
        levels().stream()
            .sorted(Comparator.comparingInt((Integer level) -> Math.abs(level)))
            .toList();
    for (int level : order) {
      lines.stream()
          .filter(line -> line.level() == level && line.length() >= SHORTEST_WITH_FIGURE)
          .max(Comparator.comparingDouble(Line::length))
          .ifPresent(line -> labels.add(label(line)));
    }
    return labels;
  }

  private Label label(Line line) {
    List<Wish> wishes = new ArrayList<>();
    double whole = line.length();
    for (int place = 1; place < PLACES; place++) {
      double share = (double) place / PLACES;
      wishes.add(new Wish(at(line, share * whole), Side.MIDDLE, 20 * Math.abs(share - 0.5)));
    }
    Spot middle = at(line, whole / 2);
    Kind kind = line.level() % 2 == 0 ? Kind.LEVEL : Kind.ODD_LEVEL;
    return new Label(figure(line.level()), kind, middle, wishes, 25, 2 * whole);
  }

  private static Spot at(Line line, double way) {
    double gone = 0;
    for (int i = 1; i < line.spots().size(); i++) {
      Segment stroke = new Segment(line.spots().get(i - 1), line.spots().get(i));
      if (gone + stroke.length() >= way && stroke.length() > 0) {
        return stroke.at((way - gone) / stroke.length());
      }
      gone += stroke.length();
    }
    return line.spots().getLast();
  }

  /** "−1", "0", "+2". */
  static String figure(int level) {
    return (level > 0 ? "+" : level < 0 ? "−" : "") + Math.abs(level);
  }

  /** What the lines are, in words. */
  String words() {
    List<String> figures = levels().stream().map(PlanLevels::figure).toList();
    return figures.isEmpty()
        ? ""
        : " "
            + sheet
                .notation()
                .say(
                    "drawing.levels_at",
                    sheet.notation().length(heightM),
                    String.join(", ", figures));
  }
}
