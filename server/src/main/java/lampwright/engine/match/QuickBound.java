package lampwright.engine.match;

import java.util.Arrays;
import java.util.List;

/**
 * A bound as of {@link Relaxation} in one pass over choices as they come, unsorted. Waits are put
 * into intervals; where the longest wait is in an interval it is taken for the shortest wait that
 * is in it, so the bound is lower than the relaxation's by no more than the price of an interval.
 */
final class QuickBound {

  private static final int INTERVALS = 32;

  /** Rounding, as a share of all that is added. */
  private static final double ROUNDING = 1e-13;

  private final double[] supplies;
  private final double pricePerWait;
  private final double[] shortest = new double[INTERVALS];
  private double[] least = new double[0];

  QuickBound(double[] supplies, double pricePerWait) {
    this.supplies = supplies;
    this.pricePerWait = pricePerWait;
  }

  /**
   * Returns the bound.
   *
   * @param prices of the supplies
   * @param reach where the last interval starts, about
   */
  double bound(List<List<Choice>> rows, double[] prices, double reach) {
    if (least.length < rows.size() * INTERVALS) {
      least = new double[rows.size() * INTERVALS];
    }
    Arrays.fill(least, Double.POSITIVE_INFINITY);
    Arrays.fill(shortest, Double.POSITIVE_INFINITY);
    double perUnit = pricePerWait > 0 && reach > 0 ? (INTERVALS - 1) / reach : 0;
    for (int row = 0; row < rows.size(); row++) {
      take(rows.get(row), prices, row * INTERVALS, perUnit);
    }
    double cheapest = sweep(rows.size());
    if (cheapest == Double.POSITIVE_INFINITY) {
      return cheapest;
    }
    double size = Math.abs(cheapest);
    for (int k = 0; k < supplies.length; k++) {
      double worth = prices[k] * UsePatterns.slackened(supplies[k]);
      cheapest -= worth;
      size += worth;
    }
    return cheapest - ROUNDING * size;
  }

  private void take(List<Choice> row, double[] prices, int at, double perUnit) {
    Uses last = Uses.NOTHING;
    double price = 0;
    for (int c = 0; c < row.size(); c++) {
      Choice choice = row.get(c);
      if (choice.uses() != last) {
        last = choice.uses();
        price = last.at(prices);
      }
      int interval = (int) Math.min(INTERVALS - 1, choice.waiting() * perUnit);
      shortest[interval] = Math.min(shortest[interval], choice.waiting());
      least[at + interval] = Math.min(least[at + interval], choice.cost() + price);
    }
  }

  /** Returns the least over the intervals of the rows' cheapest up to there and the wait. */
  private double sweep(int rows) {
    double cheapest = Double.POSITIVE_INFINITY;
    for (int interval = 0; interval < INTERVALS; interval++) {
      double sum = pricePerWait == 0 ? 0 : pricePerWait * shortest[interval];
      for (int row = 0; row < rows; row++) {
        int at = row * INTERVALS + interval;
        if (interval > 0) {
          least[at] = Math.min(least[at], least[at - 1]);
        }
        sum += least[at];
      }
      if (shortest[interval] < Double.POSITIVE_INFINITY) {
        cheapest = Math.min(cheapest, sum);
      }
    }
    return cheapest;
  }
}
