package lampwright.engine.map;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import lampwright.engine.map.Contour.Vertex;
import lampwright.engine.unit.Bounds;

/**
 * Contours of a grid of values by marching squares: a saddle is joined or parted by the mean of its
 * corners, a value exactly at a level counts as above it (source derived). The values run straight
 * along each side of a cell; or where they are known between the nodes too, a line crosses a side
 * where they do, also where they leap. Lines of different levels never cross. The order is always
 * the same: level by level as given, open lines before closed ones.
 */
public final class Contours {

  /** Differences of larger values would not be finite. */
  private static final double LARGEST = 1e300;

  private static final int NONE = -1;

  /** A side in so many parts: in one of them a crossing is found, and straight within it. */
  private static final int PARTS = 64;

  private final double[] values;
  private final int columns;
  private final int rows;
  private final double spacingM;
  private final Optional<Between> between;

  /** What was asked between the nodes, by side and part: levels that meet at a leap ask alike. */
  private final Map<Long, Double> asked = new HashMap<>();

  /** Sides of cells along the rows come first in the numbering of sides. */
  private final int sidesAlongRows;

  private Contours(
      double[] values, int columns, int rows, double spacingM, Optional<Between> between) {
    this.values = values;
    this.columns = columns;
    this.rows = rows;
    this.spacingM = spacingM;
    this.between = between;
    this.sidesAlongRows = (columns - 1) * rows;
  }

  /** What the values of a grid are between its nodes. */
  @FunctionalInterface
  public interface Between {

    /**
     * Returns the value at a place; at a node nearly the grid's own.
     *
     * @param column from 0, with its fraction
     * @param row likewise
     */
    double valueAt(double column, double row);

    /**
     * Returns where on the way from a node to its neighbour the values may leap, as shares of it:
     * what is looked at first.
     */
    default List<Double> leaps(int column, int row, int toColumn, int toRow) {
      return List.of();
    }
  }

  /**
   * Returns the contours of all levels, as if the values ran straight between the nodes.
   *
   * @param values row after row, each finite (not more than 1e300); where there is no light at all
   *     put a floor under the stops
   * @param columns two or more
   * @param rows two or more
   * @param spacingM distance of neighbouring nodes in metres, above 0; 1 gives columns and rows
   * @param levels in the values' unit
   */
  public static List<Contour> of(
      double[] values, int columns, int rows, double spacingM, List<Double> levels) {
    return of(values, columns, rows, spacingM, levels, Optional.empty());
  }

  /**
   * Returns the contours of all levels; each crosses a side where the value between its nodes is
   * the level, within a sixty-fourth of the side.
   *
   * @param values as above
   * @param between asked where a line crosses a side, two to ten times each
   */
  public static List<Contour> of(
      double[] values,
      int columns,
      int rows,
      double spacingM,
      List<Double> levels,
      Between between) {
    return of(values, columns, rows, spacingM, levels, Optional.of(between));
  }

  private static List<Contour> of(
      double[] values,
      int columns,
      int rows,
      double spacingM,
      List<Double> levels,
      Optional<Between> between) {
    Bounds.requireBetween("Columns", columns, "", 2, 1e4);
    Bounds.requireBetween("Rows", rows, "", 2, 1e4);
    Bounds.requirePositive("Spacing", spacingM, "m");
    if (values.length != columns * rows) {
      throw new IllegalArgumentException(
          "Values (" + values.length + ") must be columns times rows, " + columns * rows + ".");
    }
    for (double value : values) {
      Bounds.requireBetween("Value of the grid", value, "", -LARGEST, LARGEST);
    }
    Contours grid = new Contours(values, columns, rows, spacingM, between);
    List<Contour> found = new ArrayList<>();
    for (double level : levels) {
      Bounds.requireBetween("Level", level, "", -LARGEST, LARGEST);
      grid.trace(level, found);
    }
    return List.copyOf(found);
  }

  private void trace(double level, List<Contour> found) {
    int[] next = new int[sidesAlongRows + columns * (rows - 1)];
    boolean[] entered = new boolean[next.length];
    Arrays.fill(next, NONE);
    for (int row = 0; row < rows - 1; row++) {
      for (int column = 0; column < columns - 1; column++) {
        if (isCrossed(row * columns + column, level)) {
          joinCell(column, row, level, next, entered);
        }
      }
    }
    for (int side = 0; side < next.length; side++) {
      if (next[side] != NONE && !entered[side]) {
        follow(side, level, false, next, found);
      }
    }
    for (int side = 0; side < next.length; side++) {
      if (next[side] != NONE) {
        follow(side, level, true, next, found);
      }
    }
  }

  /** Asks whether a line passes through the cell of this first node; through most none does. */
  private boolean isCrossed(int node, double level) {
    boolean above = isAbove(node, level);
    return above != isAbove(node + 1, level)
        || above != isAbove(node + columns, level)
        || above != isAbove(node + columns + 1, level);
  }

  /** Leads each side of the cell where values fall, going around by the left, to one of rise. */
  private void joinCell(int column, int row, double level, int[] next, boolean[] entered) {
    int node = row * columns + column;
    int[] nodes = {node, node + 1, node + columns + 1, node + columns};
    int[] sides = {
      row * (columns - 1) + column,
      sidesAlongRows + node + 1,
      (row + 1) * (columns - 1) + column,
      sidesAlongRows + node
    };
    int crossings = 0;
    for (int k = 0; k < 4; k++) {
      if (isAbove(nodes[k], level) != isAbove(nodes[(k + 1) % 4], level)) {
        crossings++;
      }
    }
    for (int k = 0; k < 4; k++) {
      if (isAbove(nodes[k], level) && !isAbove(nodes[(k + 1) % 4], level)) {
        int rise = crossings == 4 ? acrossSaddle(k, nodes, level) : riseOf(nodes, level);
        next[sides[k]] = sides[rise];
        entered[sides[rise]] = true;
      }
    }
  }

  /** Cuts off the low corner where the high ones are joined, else the high corner. */
  private int acrossSaddle(int fall, int[] nodes, double level) {
    double mean = 0;
    for (int node : nodes) {
      mean += values[node] / 4;
    }
    return mean >= level ? (fall + 1) % 4 : (fall + 3) % 4;
  }

  private int riseOf(int[] nodes, double level) {
    int rise = 0;
    while (isAbove(nodes[rise], level) || !isAbove(nodes[(rise + 1) % 4], level)) {
      rise++;
    }
    return rise;
  }

  private boolean isAbove(int node, double level) {
    return values[node] >= level;
  }

  /** Walks a line to its end or around, and takes its sides out of the map. */
  private void follow(int start, double level, boolean closed, int[] next, List<Contour> found) {
    List<Vertex> vertices = new ArrayList<>();
    int side = start;
    while (side != NONE) {
      Vertex vertex = crossing(side, level);
      if (vertices.isEmpty() || !vertices.getLast().equals(vertex)) {
        vertices.add(vertex);
      }
      int following = next[side];
      next[side] = NONE;
      side = following;
      if (side == start) {
        break;
      }
    }
    // Through a node exactly at the level several crossings are one corner.
    if (closed && vertices.size() > 1 && vertices.getFirst().equals(vertices.getLast())) {
      vertices.removeLast();
    }
    if (vertices.size() > 1) {
      found.add(new Contour(level, vertices, closed));
    }
  }

  /** Returns where the level crosses a side; the same from both of its cells. */
  private Vertex crossing(int side, double level) {
    boolean alongRow = side < sidesAlongRows;
    int rest = side - sidesAlongRows;
    int column = alongRow ? side % (columns - 1) : rest % columns;
    int row = alongRow ? side / (columns - 1) : rest / columns;
    double here = values[row * columns + column];
    double there = values[row * columns + column + (alongRow ? 1 : columns)];
    double share =
        between
            .map(known -> sought(known, side, column, row, alongRow, level))
            .orElse((level - here) / (there - here));
    return alongRow
        ? new Vertex((column + share) * spacingM, row * spacingM)
        : new Vertex(column * spacingM, (row + share) * spacingM);
  }

  /**
   * Returns where along a side the level is. For all levels the parts are the same, so that their
   * lines keep apart even where they meet at a leap.
   */
  private double sought(
      Between known, int side, int column, int row, boolean alongRow, double level) {
    int toColumn = alongRow ? column + 1 : column;
    int toRow = alongRow ? row : row + 1;
    double here = values[row * columns + column];
    Bracket bracket = new Bracket(here, values[toRow * columns + toColumn], level);
    IntToDoubleFunction ask =
        part ->
            asked.computeIfAbsent(
                (long) side * PARTS + part,
                _ -> {
                  double way = (double) part / PARTS;
                  return known.valueAt(
                      alongRow ? column + way : column, alongRow ? row : row + way);
                });
    for (double leap : known.leaps(column, row, toColumn, toRow)) {
      bracket.narrow((int) (leap * PARTS), ask);
      bracket.narrow((int) (leap * PARTS) + 1, ask);
    }
    for (int step = 1; !bracket.isNarrow(); step++) {
      // Mostly the straight way is nearly right; halving now and then ends the search anyway.
      bracket.narrow(step % 3 == 0 ? bracket.middle() : bracket.straight(), ask);
    }
    return bracket.crossing() / PARTS;
  }

  /** The parts of a side between which a level is crossed, and the values at both ends. */
  private static final class Bracket {

    private final double level;
    private final boolean above;
    private int from;
    private int to = PARTS;
    private double atFrom;
    private double atTo;

    Bracket(double here, double there, double level) {
      this.level = level;
      this.above = here >= level;
      this.atFrom = here;
      this.atTo = there;
    }

    boolean isNarrow() {
      return to - from == 1;
    }

    int middle() {
      return (from + to) / 2;
    }

    double crossing() {
      return from + (to - from) * (level - atFrom) / (atTo - atFrom);
    }

    int straight() {
      return Math.max(from + 1, Math.min((int) crossing(), to - 1));
    }

    /** Looks between two parts; what lies not within is known already. */
    void narrow(int part, IntToDoubleFunction ask) {
      if (part <= from || part >= to) {
        return;
      }
      double value = ask.applyAsDouble(part);
      if (value >= level == above) {
        from = part;
        atFrom = value;
      } else {
        to = part;
        atTo = value;
      }
    }
  }
}
