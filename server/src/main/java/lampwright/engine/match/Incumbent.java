package lampwright.engine.match;

import java.util.Arrays;

/** The best allotment found so far, by the choices' own indices. */
final class Incumbent {

  /** Costs that differ by less than this, of the cost and at least of 1, count as equal. */
  static final double TOLERANCE = 1e-9;

  private final int[] index;
  private final double below;
  private double cost = Double.POSITIVE_INFINITY;
  private double longestWait;

  Incumbent(int rows, double below) {
    index = new int[rows];
    this.below = below;
  }

  /** Returns what a part of the search must be able to undercut to be of interest. */
  double cutoff() {
    double best = Math.min(below, cost);
    return best == Double.POSITIVE_INFINITY ? best : best - TOLERANCE * Math.max(1, Math.abs(best));
  }

  /** Returns the cost to be undercut, infinite where there is none. */
  double target() {
    return Math.min(below, cost);
  }

  /** Takes an allotment within the supplies, where it is better. */
  void offer(PackedRows packed, int[] choiceOfRow) {
    double sum = 0;
    double wait = 0;
    for (int choice : choiceOfRow) {
      sum += packed.cost[choice];
      wait = Math.max(wait, packed.wait[choice]);
    }
    sum += packed.pricePerWait * wait;
    if (sum < target()) {
      cost = sum;
      longestWait = wait;
      for (int row = 0; row < index.length; row++) {
        index[row] = packed.index[choiceOfRow[row]];
      }
    }
  }

  boolean isFound() {
    return cost < Double.POSITIVE_INFINITY;
  }

  double cost() {
    return cost;
  }

  double longestWait() {
    return longestWait;
  }

  /** Returns the allotment, with what is proved about it. */
  Allotment allotment(double atLeast) {
    return new Allotment(Arrays.stream(index).boxed().toList(), cost, Math.min(cost, atLeast));
  }
}
