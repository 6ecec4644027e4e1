package lampwright.engine.match;

import java.util.Arrays;

/**
 * What choices use, packed: pattern p uses {@code amount[u]} of {@code supply[u]} for u from {@code
 * start[p]} up to {@code start[p + 1]}.
 */
final class UsePatterns {

  /** By how much, of the supply and at least of 1, rounding may exceed a supply. */
  private static final double SLACK = 1e-9;

  final int[] start;
  final int[] supply;
  final double[] amount;

  private UsePatterns(int[] start, int[] supply, double[] amount) {
    this.start = start;
    this.supply = supply;
    this.amount = amount;
  }

  /** Returns how much may be used of a supply, rounding granted. */
  static double slackened(double supply) {
    return supply + SLACK * Math.max(1, supply);
  }

  /** Returns how many there are. */
  int size() {
    return start.length - 1;
  }

  /** Returns those patterns only, in that order. */
  UsePatterns pick(int[] patterns, int count) {
    int[] newStart = new int[count + 1];
    int[] newSupply = new int[supply.length];
    double[] newAmount = new double[supply.length];
    for (int p = 0; p < count; p++) {
      int from = start[patterns[p]];
      int length = start[patterns[p] + 1] - from;
      System.arraycopy(supply, from, newSupply, newStart[p], length);
      System.arraycopy(amount, from, newAmount, newStart[p], length);
      newStart[p + 1] = newStart[p] + length;
    }
    return new UsePatterns(newStart, newSupply, newAmount);
  }

  /** Returns the patterns without the uses of other supplies than these. */
  UsePatterns of(boolean[] isMeant) {
    int[] newStart = new int[start.length];
    int[] newSupply = new int[supply.length];
    double[] newAmount = new double[supply.length];
    int used = 0;
    for (int p = 0; p < size(); p++) {
      for (int u = start[p]; u < start[p + 1]; u++) {
        if (isMeant[supply[u]]) {
          newSupply[used] = supply[u];
          newAmount[used++] = amount[u];
        }
      }
      newStart[p + 1] = used;
    }
    return new UsePatterns(newStart, newSupply, newAmount);
  }

  /** Gathers the patterns of choices one after another; neighbours may share one. */
  static final class Gathering {
    private final double[] supplies;
    private final int[] start;
    private int[] supply;
    private double[] amount;
    private int count;
    private Uses last = Uses.NOTHING;
    private boolean isFirst = true;
    private boolean lastFits;

    Gathering(double[] supplies, int choices) {
      this.supplies = supplies;
      start = new int[choices + 1];
      supply = new int[4 * choices];
      amount = new double[4 * choices];
    }

    /** Takes the next choice's; answers whether there is enough for it alone. */
    boolean add(Uses uses) {
      if (uses != last || isFirst) {
        isFirst = false;
        last = uses;
        lastFits = isWithin(uses);
        if (lastFits) {
          append(uses);
        }
      }
      return lastFits;
    }

    private boolean isWithin(Uses uses) {
      boolean fits = true;
      for (int u = 0; u < uses.count(); u++) {
        if (uses.supply(u) >= supplies.length) {
          throw new IllegalArgumentException(
              "Supply "
                  + uses.supply(u)
                  + " must be one of the "
                  + supplies.length
                  + " there are.");
        }
        fits &= uses.amount(u) <= slackened(supplies[uses.supply(u)]);
      }
      return fits;
    }

    private void append(Uses uses) {
      int from = start[count];
      int to = from + uses.count();
      if (to > supply.length) {
        supply = Arrays.copyOf(supply, 2 * to);
        amount = Arrays.copyOf(amount, 2 * to);
      }
      for (int u = 0; u < uses.count(); u++) {
        supply[from + u] = uses.supply(u);
        amount[from + u] = uses.amount(u);
      }
      count++;
      start[count] = to;
    }

    /** Returns which pattern the last choice that fits has. */
    int last() {
      return count - 1;
    }

    UsePatterns patterns() {
      return new UsePatterns(Arrays.copyOf(start, count + 1), supply, amount);
    }
  }
}
