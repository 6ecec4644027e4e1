package lampwright.engine.match;

import java.util.List;

/**
 * Who does what at the least total cost, each row (a light) getting a column (a head and modifier)
 * of its own. Exact, not a heuristic.
 *
 * <p>The method is the shortest augmenting path with node potentials (source
 * shortest-augmenting-path), in time of the order rows squared times columns. Rows are taken in
 * their order; each is inserted along the cheapest chain of changes, which keeps the assignment of
 * the rows so far the cheapest there is. The same costs always give the same answer; of equally
 * cheap chains the one that ends in the lowest column is taken.
 *
 * <p>Where not every row can have a column, rows are served in their order: a row is left out only
 * where it cannot be served beside the rows before it that are served. So put the most important
 * row first. This also serves as many rows as can be served at all (the sets of rows that can be
 * served together form a matroid, on which the greedy choice is a largest one), and the total is
 * the least for the served rows.
 *
 * <p>Accuracy: costs are added as doubles, so totals that differ by less than about 1e-12 of the
 * largest cost may count as equal. Whole-number costs below 2^40 are exact.
 */
public sealed interface Assignment {

  /** The column of a row that has none. */
  int NONE = -1;

  /** Returns the column of each row, {@link #NONE} where it has none. */
  List<Integer> columnOfRow();

  /** Returns the sum of the costs of the served rows. */
  double cost();

  /**
   * Every row has a column.
   *
   * @param columnOfRow the columns, all different
   * @param cost their sum
   */
  record Complete(List<Integer> columnOfRow, double cost) implements Assignment {

    /** Copies the list. */
    public Complete {
      columnOfRow = List.copyOf(columnOfRow);
    }
  }

  /**
   * Some rows cannot be served.
   *
   * @param columnOfRow the columns, all different but for {@link #NONE}
   * @param cost the sum over the served rows
   * @param unservedRows the rows without a column, in order, at least one
   */
  record Partial(List<Integer> columnOfRow, double cost, List<Integer> unservedRows)
      implements Assignment {

    /** Copies the lists. */
    public Partial {
      columnOfRow = List.copyOf(columnOfRow);
      unservedRows = List.copyOf(unservedRows);
    }
  }

  /**
   * Returns the assignment of least cost.
   *
   * @param cost a row for each light and in it the cost of each column; positive infinity forbids a
   *     pair; other costs are finite, of either sign, in magnitude at most 1e150. There may be more
   *     rows than columns; no rows at all are served at no cost
   * @throws IllegalArgumentException where rows differ in length or a cost is out of bounds
   */
  static Assignment leastCost(double[][] cost) {
    return new ShortestAugmentingPath(cost).solve();
  }
}
