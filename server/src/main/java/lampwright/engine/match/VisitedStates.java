package lampwright.engine.match;

import java.util.Arrays;

/**
 * Remembers parts of the search by what they leave: which rows are decided and how much of each
 * supply is left. Of two ways that leave the same, the dearer one with the no shorter wait can lead
 * to nothing better. Like lights and like heads make many such ways.
 *
 * <p>A way is remembered when it is begun; the search is depth-first, so it is finished before
 * another that leaves the same is met. Forgets when it is full.
 */
final class VisitedStates {

  private static final int PLACES = 1 << 14;
  private static final int TRIES = 4;
  private static final int MOST_ROWS = 64;

  /** Sums in another order may differ by so much, of the cost and at least of 1. */
  private static final double ROUNDING = 1e-12;

  private final PackedRows packed;
  private final long[] decided = new long[PLACES];
  private final double[] cost = new double[PLACES];
  private final double[] wait = new double[PLACES];
  private final double[] left;

  VisitedStates(PackedRows packed) {
    this.packed = packed;
    this.left = new double[PLACES * packed.tight.length];
    Arrays.fill(cost, Double.NaN);
  }

  /** Asks whether a way no worse has left the same; remembers this one where none has. */
  boolean isNoBetter(Node node) {
    if (packed.rows > MOST_ROWS) {
      return false;
    }
    long rows = decidedRows(node);
    int first = (int) (hash(node, rows) >>> 32);
    for (int i = 0; i < TRIES; i++) {
      int place = (first + i) & (PLACES - 1);
      if (Double.isNaN(cost[place])) {
        remember(place, node, rows);
        return false;
      }
      if (decided[place] == rows && leavesTheSame(place, node)) {
        double slack = ROUNDING * Math.max(1, Math.abs(cost[place]));
        if (node.cost >= cost[place] - slack && node.wait >= wait[place]) {
          return true;
        }
        if (node.cost <= cost[place] && node.wait <= wait[place]) {
          remember(place, node, rows);
        }
        return false;
      }
    }
    remember(first & (PLACES - 1), node, rows);
    return false;
  }

  private static long decidedRows(Node node) {
    long rows = 0;
    for (int row = 0; row < node.choiceOfRow.length; row++) {
      if (node.choiceOfRow[row] != Node.FREE) {
        rows |= 1L << row;
      }
    }
    return rows;
  }

  private long hash(Node node, long rows) {
    long hash = rows * 0x9E3779B97F4A7C15L;
    for (int k : packed.tight) {
      long bits = Double.doubleToLongBits(node.left[k]);
      hash = (hash ^ bits ^ (bits >>> 29)) * 0xBF58476D1CE4E5B9L;
      hash ^= hash >>> 31;
    }
    return hash * 0x94D049BB133111EBL;
  }

  private boolean leavesTheSame(int place, Node node) {
    int at = place * packed.tight.length;
    for (int k : packed.tight) {
      if (left[at++] != node.left[k]) {
        return false;
      }
    }
    return true;
  }

  private void remember(int place, Node node, long rows) {
    decided[place] = rows;
    cost[place] = node.cost;
    wait[place] = node.wait;
    int at = place * packed.tight.length;
    for (int k : packed.tight) {
      left[at++] = node.left[k];
    }
  }
}
