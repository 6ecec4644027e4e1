package lampwright.engine.match;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * One run of the method that {@link Assignment} describes. Works on its own copy of nothing: the
 * costs are only read.
 *
 * <p>Invariant after each row: {@code rowPotential + columnPotential <= cost} for every allowed
 * pair of a served row, with equality for the pairs in use, and a potential of 0 for every free
 * column and at most 0 for every used one. By weak duality the served rows then cost the least they
 * can.
 */
final class ShortestAugmentingPath {

  /** Keeps sums of costs finite. */
  private static final double LARGEST_COST = 1e150;

  private final double[][] cost;
  private final int columns;
  private final double[] rowPotential;
  private final double[] columnPotential;
  private final int[] columnOfRow;
  private final int[] rowOfColumn;

  ShortestAugmentingPath(double[][] cost) {
    this.cost = cost;
    this.columns = cost.length == 0 ? 0 : cost[0].length;
    for (int row = 0; row < cost.length; row++) {
      check(row);
    }
    this.rowPotential = new double[cost.length];
    this.columnPotential = new double[columns];
    this.columnOfRow = new int[cost.length];
    this.rowOfColumn = new int[columns];
    Arrays.fill(columnOfRow, Assignment.NONE);
    Arrays.fill(rowOfColumn, Assignment.NONE);
  }

  private void check(int row) {
    if (cost[row].length != columns) {
      throw new IllegalArgumentException(
          "Row " + row + " (" + cost[row].length + " costs) must have " + columns + " costs.");
    }
    for (int column = 0; column < columns; column++) {
      double value = cost[row][column];
      if (!(Math.abs(value) <= LARGEST_COST || value == Double.POSITIVE_INFINITY)) {
        throw new IllegalArgumentException(
            "Cost ("
                + value
                + ") in row "
                + row
                + ", column "
                + column
                + " must be finite, at most 1e150, or positive infinity to forbid it.");
      }
    }
  }

  Assignment solve() {
    for (int row = 0; row < cost.length; row++) {
      insert(row);
    }
    return answer();
  }

  /** Finds the cheapest chain from the row to a free column (Dijkstra) and turns it over. */
  private void insert(int start) {
    double[] distance = new double[columns];
    int[] cameFrom = new int[columns];
    boolean[] settled = new boolean[columns];
    Arrays.fill(distance, Double.POSITIVE_INFINITY);
    int row = start;
    double reached = 0;
    int end = Assignment.NONE;
    while (end == Assignment.NONE) {
      int nearest = Assignment.NONE;
      for (int column = 0; column < columns; column++) {
        if (settled[column]) {
          continue;
        }
        // Reduced costs are never negative but for rounding, which must not shorten a path.
        double reduced = cost[row][column] - rowPotential[row] - columnPotential[column];
        double through = row == start ? reduced : reached + Math.max(0, reduced);
        if (through < distance[column]) {
          distance[column] = through;
          cameFrom[column] = row;
        }
        if (distance[column] < Double.POSITIVE_INFINITY
            && (nearest == Assignment.NONE || distance[column] < distance[nearest])) {
          nearest = column;
        }
      }
      if (nearest == Assignment.NONE) {
        return; // no chain at all: the row stays unserved and nothing has been changed
      }
      settled[nearest] = true;
      reached = distance[nearest];
      if (rowOfColumn[nearest] == Assignment.NONE) {
        end = nearest;
      } else {
        row = rowOfColumn[nearest];
      }
    }
    raisePotentials(start, reached, distance, settled);
    turnOver(start, end, cameFrom);
  }

  /** Restores the invariant for the chain about to be used; the chain's own pairs become tight. */
  private void raisePotentials(int start, double reached, double[] distance, boolean[] settled) {
    rowPotential[start] = reached;
    for (int column = 0; column < columns; column++) {
      int owner = rowOfColumn[column];
      if (settled[column] && owner != Assignment.NONE) {
        rowPotential[owner] += reached - distance[column];
        columnPotential[column] += distance[column] - reached;
      }
    }
  }

  /** Gives each row of the chain the column that the chain led to from it. */
  private void turnOver(int start, int end, int[] cameFrom) {
    int column = end;
    int row = Assignment.NONE;
    while (row != start) {
      row = cameFrom[column];
      int left = columnOfRow[row];
      columnOfRow[row] = column;
      rowOfColumn[column] = row;
      column = left;
    }
  }

  /** Returns the answer for the columns found. */
  private Assignment answer() {
    List<Integer> columns = new ArrayList<>();
    List<Integer> unserved = new ArrayList<>();
    double total = 0;
    for (int row = 0; row < columnOfRow.length; row++) {
      int column = columnOfRow[row];
      columns.add(column);
      if (column == Assignment.NONE) {
        unserved.add(row);
      } else {
        total += cost[row][column];
      }
    }
    return unserved.isEmpty()
        ? new Assignment.Complete(columns, total)
        : new Assignment.Partial(columns, total, unserved);
  }
}
