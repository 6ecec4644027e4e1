package lampwright.engine.map;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.DoubleStream;
import lampwright.engine.map.Contour.Vertex;
import org.junit.jupiter.api.Test;

final class ContoursTest {

  private static final long SEED = 20261125;

  private static double[] grid(int columns, int rows, DoubleBinaryOperator height) {
    double[] values = new double[columns * rows];
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        values[row * columns + column] = height.applyAsDouble(column, row);
      }
    }
    return values;
  }

  /** Geometry: a cone of slope one is cut in circles. */
  @Test
  void aConeGivesCirclesThatRunLeftAroundTheHill() {
    double[] cone = grid(41, 41, (x, y) -> 20 - Math.hypot(x - 20, y - 20));
    for (double level : new double[] {3.3, 8, 12.5, 17}) {
      List<Contour> found = Contours.of(cone, 41, 41, 1, List.of(level));
      assertEquals(1, found.size());
      Contour circle = found.getFirst();
      assertTrue(circle.closed());
      double radius = 20 - level;
      for (Vertex vertex : circle.vertices()) {
        assertEquals(radius, Math.hypot(vertex.xM() - 20, vertex.yM() - 20), 0.5);
      }
      assertEquals(Math.PI * radius * radius, circle.areaM2(), Math.PI * radius);
    }
  }

  @Test
  void aHollowIsRunAroundTheOtherWay() {
    double[] bowl = grid(21, 21, (x, y) -> Math.hypot(x - 10, y - 10));
    assertTrue(Contours.of(bowl, 21, 21, 1, List.of(5.5)).getFirst().areaM2() < 0);
  }

  /** Geometry: a plane is cut in straight lines, which end at the border. */
  @Test
  void aPlaneGivesStraightLinesFromBorderToBorder() {
    double[] plane = grid(12, 9, (x, y) -> 0.7 * x + 1.3 * y);
    List<Contour> found = Contours.of(plane, 12, 9, 0.25, List.of(2.0, 4.1, 9.77));
    assertEquals(3, found.size());
    for (Contour line : found) {
      assertFalse(line.closed());
      for (Vertex vertex : line.vertices()) {
        double level = 0.7 * vertex.xM() / 0.25 + 1.3 * vertex.yM() / 0.25;
        assertEquals(line.level(), level, 1e-12);
      }
      assertTrue(isOnBorder(line.vertices().getFirst(), 12, 9, 0.25));
      assertTrue(isOnBorder(line.vertices().getLast(), 12, 9, 0.25));
    }
  }

  @Test
  void everyCornerLiesOnItsLevelAndEveryLineIsClosedOrEndsAtTheBorder() {
    Random random = new Random(SEED);
    int open = 0;
    int closed = 0;
    for (int trial = 0; trial < 60; trial++) {
      int columns = random.nextInt(2, 40);
      int rows = random.nextInt(2, 40);
      double spacing = random.nextDouble(0.05, 2);
      double[] values = smooth(random, columns, rows);
      List<Double> levels = DoubleStream.iterate(-2.5, at -> at + 0.37).limit(14).boxed().toList();
      for (Contour contour : Contours.of(values, columns, rows, spacing, levels)) {
        String where = "seed " + SEED + ", trial " + trial + ", level " + contour.level();
        for (Vertex vertex : contour.vertices()) {
          double level = bilinear(values, columns, rows, vertex, spacing);
          assertEquals(contour.level(), level, 1e-9, where);
        }
        if (contour.closed()) {
          closed++;
        } else {
          open++;
          assertTrue(isOnBorder(contour.vertices().getFirst(), columns, rows, spacing), where);
          assertTrue(isOnBorder(contour.vertices().getLast(), columns, rows, spacing), where);
        }
      }
    }
    assertTrue(open > 100 && closed > 100, open + " open, " + closed + " closed");
  }

  /** Steps of noise make saddles; lines of different levels must still keep apart. */
  @Test
  void linesOfDifferentLevelsNeverCross() {
    Random random = new Random(SEED);
    for (int trial = 0; trial < 40; trial++) {
      int columns = random.nextInt(2, 10);
      int rows = random.nextInt(2, 10);
      double[] values = grid(columns, rows, (x, y) -> random.nextInt(0, 6));
      List<Double> levels = List.of(0.5, 1.0, 1.5, 2.2, 3.0, 3.7, 4.5);
      List<double[]> segments = new ArrayList<>();
      for (Contour contour : Contours.of(values, columns, rows, 1, levels)) {
        addSegments(contour, segments);
      }
      for (double[] one : segments) {
        for (double[] other : segments) {
          assertFalse(one[4] < other[4] && cross(one, other), "seed " + SEED + ", trial " + trial);
        }
      }
    }
  }

  @Test
  void linesOfDifferentLevelsKeepApartAtALeapToo() {
    Random random = new Random(SEED);
    for (int trial = 0; trial < 20; trial++) {
      double angle = random.nextDouble(0, 2 * Math.PI);
      Contours.Between leap =
          (x, y) -> before(angle, 0, x, y) >= 0 ? 4 - 0.1 * Math.hypot(x - 20, y - 20) : -20;
      List<double[]> segments = new ArrayList<>();
      for (Contour contour :
          Contours.of(
              grid(41, 41, leap::valueAt), 41, 41, 1, List.of(-2.0, 0.0, 1.0, 2.0, 3.3), leap)) {
        addSegments(contour, segments);
      }
      for (double[] one : segments) {
        for (double[] other : segments) {
          assertFalse(one[4] < other[4] && cross(one, other), "seed " + SEED + ", trial " + trial);
        }
      }
    }
  }

  /** A border far below everything closes each line; then signed areas count cells above. */
  @Test
  void enclosedAreasAgreeWithCountingCells() {
    Random random = new Random(SEED);
    for (int trial = 0; trial < 20; trial++) {
      int size = 121;
      double[] values = smooth(random, size, size);
      for (int i = 0; i < size; i++) {
        values[i] = -9;
        values[(size - 1) * size + i] = -9;
        values[i * size] = -9;
        values[i * size + size - 1] = -9;
      }
      double level = random.nextDouble(-0.5, 0.5);
      double enclosed = 0;
      for (Contour contour : Contours.of(values, size, size, 1, List.of(level))) {
        assertTrue(contour.closed());
        enclosed += contour.areaM2();
      }
      double counted = 0;
      int parts = 8;
      for (int i = 0; i < (size - 1) * parts; i++) {
        for (int j = 0; j < (size - 1) * parts; j++) {
          Vertex middle = new Vertex((i + 0.5) / parts, (j + 0.5) / parts);
          counted += bilinear(values, size, size, middle, 1) >= level ? 1 : 0;
        }
      }
      counted /= parts * parts;
      // Straight lines against hyperbolas of the cells: a hundredth of all is ample room.
      assertEquals(counted, enclosed, 0.01 * size * size, "seed " + SEED + ", trial " + trial);
    }
  }

  /**
   * Geometry: light that falls with the square of the distance, and none at all behind a leaning
   * line, has a level along a circle and along a piece of that line.
   */
  @Test
  void aLevelAtALeapRunsAlongTheLeapAndNotInSteps() {
    Random random = new Random(SEED);
    for (int trial = 0; trial < 40; trial++) {
      double angle = random.nextDouble(0, 2 * Math.PI);
      double off = random.nextDouble(-3, 3);
      Contours.Between light =
          (x, y) ->
              before(angle, off, x, y) >= 0
                  ? 2 * (Math.log(10 / Math.hypot(x - 20.3, y - 19.6)) / Math.log(2))
                  : -20;
      double[] values = grid(41, 41, light::valueAt);
      List<Contour> found = Contours.of(values, 41, 41, 1, List.of(-1.0, 0.0, 1.0), light);
      assertEquals(3, found.size());
      for (Contour contour : found) {
        double radius = 10 / Math.pow(2, contour.level() / 2);
        String where = "seed " + SEED + ", trial " + trial + ", level " + contour.level();
        assertTrue(contour.closed(), where);
        for (int i = 0; i < contour.vertices().size(); i++) {
          Vertex one = contour.vertices().get(i);
          Vertex next = contour.vertices().get((i + 1) % contour.vertices().size());
          assertEquals(0, offSegment(one, angle, off, radius), 0.03, where);
          if (offChord(one, angle, off, radius) < 0.03
              && offChord(next, angle, off, radius) < 0.03) {
            Vertex middle = new Vertex((one.xM() + next.xM()) / 2, (one.yM() + next.yM()) / 2);
            assertEquals(0, offSegment(middle, angle, off, radius), 0.03, where);
          }
        }
      }
    }
  }

  private static double before(double angle, double off, double x, double y) {
    return (x - 20.3) * Math.cos(angle) + (y - 19.6) * Math.sin(angle) - off;
  }

  private static double offChord(Vertex vertex, double angle, double off, double radius) {
    double along = (vertex.yM() - 19.6) * Math.cos(angle) - (vertex.xM() - 20.3) * Math.sin(angle);
    double beyond = Math.max(0, Math.abs(along) - Math.sqrt(radius * radius - off * off));
    return Math.hypot(before(angle, off, vertex.xM(), vertex.yM()), beyond);
  }

  /** How far a place is from the rim of a segment of a circle. */
  private static double offSegment(Vertex vertex, double angle, double off, double radius) {
    double offCircle = Math.abs(Math.hypot(vertex.xM() - 20.3, vertex.yM() - 19.6) - radius);
    boolean behind = before(angle, off, vertex.xM(), vertex.yM()) < -0.03;
    double chord = offChord(vertex, angle, off, radius);
    return behind ? chord : Math.min(offCircle, chord);
  }

  /** Light that grows with the distance from a line has its levels along parallels to the line. */
  @Test
  void levelsWhereLightGoesToNothingAreAsStraightAsTheyShouldBe() {
    Random random = new Random(SEED);
    for (int trial = 0; trial < 40; trial++) {
      double angle = random.nextDouble(0, 2 * Math.PI);
      Contours.Between light =
          (x, y) -> Math.max(-20, Math.log(Math.max(1e-9, before(angle, 0, x, y))) / Math.log(2));
      double[] values = grid(41, 41, light::valueAt);
      for (Contour line :
          Contours.of(values, 41, 41, 1, List.of(-4.0, -3.0, -2.0, -1.0, 0.0, 1.0, 2.0), light)) {
        for (Vertex vertex : line.vertices()) {
          assertEquals(
              Math.pow(2, line.level()),
              before(angle, 0, vertex.xM(), vertex.yM()),
              0.03,
              "seed " + SEED + ", trial " + trial + ", level " + line.level());
        }
      }
    }
  }

  @Test
  void saddlesAreJoinedOrPartedByTheMeanOfTheCell() {
    double[] saddle = {2, 0, 0, 2};
    List<Contour> joined = Contours.of(saddle, 2, 2, 1, List.of(0.5));
    List<Contour> parted = Contours.of(saddle, 2, 2, 1, List.of(1.5));
    assertEquals(2, joined.size());
    assertEquals(2, parted.size());
    // Joined: each line cuts off a low corner, (1, 0) or (0, 1). Parted: a high one.
    for (Contour line : joined) {
      double sum = line.vertices().stream().mapToDouble(v -> v.xM() - v.yM()).sum();
      assertEquals(1.5, Math.abs(sum), 1e-12);
    }
    for (Contour line : parted) {
      double sum = line.vertices().stream().mapToDouble(v -> v.xM() + v.yM() - 1).sum();
      assertEquals(1.5, Math.abs(sum), 1e-12);
    }
  }

  @Test
  void valuesExactlyAtALevelCountAsAbove() {
    double[] touching = grid(5, 5, (x, y) -> x == 2 && y == 2 ? 1 : 0);
    assertEquals(List.of(), Contours.of(touching, 5, 5, 1, List.of(1.0)), "only touches");
    double[] even = grid(5, 5, (x, y) -> 1);
    assertEquals(List.of(), Contours.of(even, 5, 5, 1, List.of(1.0)), "a plain at the level");
    double[] plateau = grid(5, 5, (x, y) -> x >= 1 && x <= 3 && y >= 1 && y <= 3 ? 1 : 0);
    List<Contour> around = Contours.of(plateau, 5, 5, 1, List.of(1.0));
    assertEquals(1, around.size());
    assertTrue(around.getFirst().closed());
    assertEquals(4, around.getFirst().areaM2(), 1e-12);
    double[] steps = grid(4, 3, (x, y) -> x);
    List<Contour> line = Contours.of(steps, 4, 3, 1, List.of(2.0));
    assertEquals(
        List.of(new Vertex(2, 0), new Vertex(2, 1), new Vertex(2, 2)),
        line.getFirst().vertices().stream()
            .sorted((a, b) -> Double.compare(a.yM(), b.yM()))
            .toList());
  }

  @Test
  void theSameGridGivesTheSameLinesAndTheSpacingOnlyScalesThem() {
    double[] values = smooth(new Random(SEED), 20, 17);
    List<Double> levels = List.of(-0.4, 0.0, 0.4);
    List<Contour> once = Contours.of(values, 20, 17, 1, levels);
    assertEquals(once, Contours.of(values, 20, 17, 1, levels));
    List<Contour> wide = Contours.of(values, 20, 17, 4, levels);
    for (int i = 0; i < once.size(); i++) {
      assertEquals(16 * once.get(i).areaM2(), wide.get(i).areaM2(), 1e-9);
    }
  }

  @Test
  void nonsenseIsRefused() {
    double[] four = {0, 1, 2, 3};
    List<Double> one = List.of(1.0);
    assertThrows(IllegalArgumentException.class, () -> Contours.of(four, 3, 2, 1, one));
    assertThrows(IllegalArgumentException.class, () -> Contours.of(four, 1, 4, 1, one));
    assertThrows(IllegalArgumentException.class, () -> Contours.of(four, 2, 2, 0, one));
    assertThrows(
        IllegalArgumentException.class, () -> Contours.of(four, 2, 2, 1, List.of(Double.NaN)));
    double[] dark = {0, 1, Double.NEGATIVE_INFINITY, 3};
    IllegalArgumentException refusal =
        assertThrows(IllegalArgumentException.class, () -> Contours.of(dark, 2, 2, 1, one));
    assertTrue(
        refusal.toString().endsWith("Value of the grid (-Infinity) must be a finite number."));
    assertThrows(
        IllegalArgumentException.class, () -> new Contour(1, List.of(new Vertex(0, 0)), false));
  }

  private static double[] smooth(Random random, int columns, int rows) {
    double[] waves = random.doubles(24, 0.05, 0.5).toArray();
    double[] phases = random.doubles(24, 0, 6.28).toArray();
    return grid(
        columns,
        rows,
        (x, y) -> {
          double sum = 0;
          for (int i = 0; i < 12; i++) {
            sum +=
                0.4
                    * Math.sin(waves[i] * x + phases[i])
                    * Math.cos(waves[i + 12] * y + phases[i + 12]);
          }
          return sum;
        });
  }

  private static double bilinear(
      double[] values, int columns, int rows, Vertex vertex, double spacing) {
    double x = vertex.xM() / spacing;
    double y = vertex.yM() / spacing;
    int column = (int) Math.min(Math.floor(x), columns - 2);
    int row = (int) Math.min(Math.floor(y), rows - 2);
    double u = x - column;
    double v = y - row;
    int node = row * columns + column;
    return (1 - u) * (1 - v) * values[node]
        + u * (1 - v) * values[node + 1]
        + (1 - u) * v * values[node + columns]
        + u * v * values[node + columns + 1];
  }

  private static boolean isOnBorder(Vertex vertex, int columns, int rows, double spacing) {
    return vertex.xM() == 0
        || vertex.yM() == 0
        || Math.abs(vertex.xM() - (columns - 1) * spacing) < 1e-9
        || Math.abs(vertex.yM() - (rows - 1) * spacing) < 1e-9;
  }

  private static void addSegments(Contour contour, List<double[]> segments) {
    List<Vertex> vertices = contour.vertices();
    int count = contour.closed() ? vertices.size() : vertices.size() - 1;
    for (int i = 0; i < count; i++) {
      Vertex from = vertices.get(i);
      Vertex to = vertices.get((i + 1) % vertices.size());
      segments.add(new double[] {from.xM(), from.yM(), to.xM(), to.yM(), contour.level()});
    }
  }

  private static boolean cross(double[] one, double[] other) {
    double a = side(one, other[0], other[1]) * side(one, other[2], other[3]);
    double b = side(other, one[0], one[1]) * side(other, one[2], one[3]);
    return a < -1e-18 && b < -1e-18;
  }

  private static double side(double[] line, double x, double y) {
    return (line[2] - line[0]) * (y - line[1]) - (line[3] - line[1]) * (x - line[0]);
  }
}
