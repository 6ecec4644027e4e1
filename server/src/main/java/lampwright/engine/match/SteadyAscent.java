package lampwright.engine.match;

/**
 * Raises the bound as {@link PriceAscent} does, slower and nearer to its maximum. A single step's
 * choices are a bad guide where many rows are alike, for all of them jump at once. So steps start
 * from the best prices so far, in the direction of a running mean of what the choices were over by
 * (the volume algorithm, source volume-algorithm).
 */
final class SteadyAscent {

  /** The most and the least that a step's own choices weigh in the mean. */
  private static final double MOST = 0.3;

  private static final double LEAST = 0.03;

  /** So many steps without a better bound shorten the next; a good one lengthens it. */
  private static final int PATIENCE = 6;

  private static final double SHORTENING = 0.6;
  private static final double LENGTHENING = 1.2;
  private static final double LONGEST = 2;
  private static final double SHORTEST = 1e-4;

  private final PackedRows packed;
  private final Relaxation relaxation;
  private final Incumbent incumbent;
  private final double[] now;
  private final Overuse overuse;
  private final double[] over;
  private final double[] mean;

  SteadyAscent(PackedRows packed, Relaxation relaxation, Incumbent incumbent) {
    this.packed = packed;
    this.relaxation = relaxation;
    this.incumbent = incumbent;
    now = new double[packed.supply.length];
    overuse = new Overuse(packed, relaxation, incumbent);
    over = overuse.over;
    mean = new double[packed.supply.length];
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
    double share = length;
    int stalled = 0;
    double best = Double.NEGATIVE_INFINITY;
    for (int step = 0; step < steps && share > SHORTEST; step++) {
      double bound = relaxation.bound(node, now);
      boolean isBetter = bound > best;
      if (isBetter) {
        best = bound;
        System.arraycopy(now, 0, node.prices, 0, now.length);
        node.bound = Math.max(node.bound, bound);
      }
      if (bound == Double.POSITIVE_INFINITY || node.bound >= incumbent.cutoff()) {
        return;
      }
      overuse.measure(node);
      if (node.bound >= incumbent.cutoff()) {
        return;
      }
      if (step > 0 && isBetter && agrees()) {
        share = Math.min(LONGEST, share * LENGTHENING);
      }
      stalled = isBetter ? 0 : stalled + 1;
      if (stalled == PATIENCE) {
        share *= SHORTENING;
        stalled = 0;
      }
      average(step == 0);
      if (!move(node.prices, share * (target(best) - best))) {
        return;
      }
    }
  }

  private double target(double best) {
    return Math.min(incumbent.target(), best + Math.max(0.25, 0.05 * Math.abs(best)));
  }

  /** Asks whether the step's own choices would go on in the direction it took. */
  private boolean agrees() {
    double product = 0;
    for (int k : packed.tight) {
      product += mean[k] * over[k];
    }
    return product > 0;
  }

  /** Takes the step's own into the mean, at the weight that makes the mean shortest. */
  private void average(boolean isFirst) {
    double along = 0;
    double squared = 0;
    for (int k : packed.tight) {
      double difference = mean[k] - over[k];
      along += mean[k] * difference;
      squared += difference * difference;
    }
    double shortest = squared == 0 ? MOST : along / squared;
    double weight = isFirst ? 1 : Math.min(MOST, Math.max(LEAST, shortest));
    for (int k : packed.tight) {
      mean[k] += weight * (over[k] - mean[k]);
    }
  }

  /** Moves the prices from the best so far; answers whether there is anywhere to go. */
  private boolean move(double[] from, double gain) {
    double squared = 0;
    for (int k : packed.tight) {
      if (from[k] > 0 || mean[k] > 0) {
        squared += mean[k] * mean[k];
      }
    }
    if (squared < 1e-18) {
      return false;
    }
    double length = gain / squared;
    for (int k : packed.tight) {
      now[k] = Math.max(0, from[k] + length * mean[k]);
    }
    return true;
  }
}
