package lampwright.engine.match;

import java.util.Arrays;

/**
 * Raises the bound of a {@link Relaxation} by moving the prices: up where the relaxed choices use
 * more than there is, down where they use less (subgradient steps of source lagrangian-relaxation;
 * each direction keeps a part of the one before). The bound is concave in the prices, so this nears
 * its maximum, and any step of it is a bound.
 */
final class PriceAscent {

  /** What a direction keeps of the one before. */
  private static final double KEPT = 0.5;

  /** So many steps without a better bound halve the length. */
  private static final int PATIENCE = 4;

  private static final double SHORTEST = 1e-3;

  private final PackedRows packed;
  private final Relaxation relaxation;
  private final Incumbent incumbent;
  private final double[] now;
  private final double[] direction;
  private final Overuse overuse;
  private final double[] over;

  PriceAscent(PackedRows packed, Relaxation relaxation, Incumbent incumbent) {
    this.packed = packed;
    this.relaxation = relaxation;
    this.incumbent = incumbent;
    now = new double[packed.supply.length];
    direction = new double[packed.supply.length];
    overuse = new Overuse(packed, relaxation, incumbent);
    over = overuse.over;
  }

  /**
   * Sets a node's bound and prices to the best of some steps. Stops early where the bound reaches
   * what is known; relaxed choices that keep within the supplies are offered as an allotment.
   *
   * @param length of the first step, as a share of what would reach the target were the bound
   *     linear
   */
  void climb(Node node, int steps, double length) {
    System.arraycopy(node.prices, 0, now, 0, now.length);
    Arrays.fill(direction, 0);
    double share = length;
    int stalled = 0;
    double best = Double.NEGATIVE_INFINITY;
    for (int step = 0; step < steps; step++) {
      double bound = relaxation.bound(node, now);
      if (bound > best) {
        stalled = bound > best + 1e-6 * Math.max(1, Math.abs(best)) ? 0 : stalled + 1;
        best = bound;
        System.arraycopy(now, 0, node.prices, 0, now.length);
        node.bound = Math.max(node.bound, bound);
      } else {
        stalled++;
      }
      if (bound == Double.POSITIVE_INFINITY || node.bound >= incumbent.cutoff()) {
        return;
      }
      overuse.measure(node);
      if (node.bound >= incumbent.cutoff()) {
        return;
      }
      if (stalled >= PATIENCE) {
        share /= 2;
        stalled = 0;
        System.arraycopy(node.prices, 0, now, 0, now.length);
        Arrays.fill(direction, 0);
      } else if (!move(share * (target(best) - bound))) {
        return;
      }
      if (share < SHORTEST) {
        return;
      }
    }
  }

  private double target(double best) {
    double target = incumbent.target();
    double reach = best + Math.max(0.5, 0.1 * Math.abs(best));
    return Math.min(target, reach);
  }

  /** Moves the prices; answers whether there is anywhere to go. */
  private boolean move(double gain) {
    double squared = 0;
    for (int k : packed.tight) {
      direction[k] = over[k] + KEPT * direction[k];
      if (now[k] == 0 && direction[k] < 0) {
        direction[k] = 0;
      }
      squared += direction[k] * direction[k];
    }
    if (squared == 0) {
      return false;
    }
    double length = gain / squared;
    for (int k : packed.tight) {
      now[k] = Math.max(0, now[k] + length * direction[k]);
    }
    return true;
  }
}
