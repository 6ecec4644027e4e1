package lampwright.engine.match;

import java.util.function.BooleanSupplier;

/**
 * One problem from first prices to proof: bound, first allotments, what they rule out, and the same
 * again on what remains, until little goes any more; then branch and bound.
 */
final class RootSearch {

  private static final int COLD_STEPS = 80;
  private static final int WARM_STEPS = 30;
  private static final int STEPS_BETWEEN_LOOKS = 20;

  /** A tree that is no larger is searched before the prices are polished for a large one. */
  private static final int FEW_NODES = 100;

  private static final int STEADY_STEPS = 100;
  private static final int STEADY_CLIMBS = 4;
  private static final int ROUNDS = 8;
  private static final double LENGTH = 1;

  /** What must go for another round to be worth it. */
  private static final double WORTHWHILE = 0.9;

  private final double[] supplies;
  private final Incumbent incumbent;
  private PackedRows packed;
  private Relaxation relaxation;
  private PriceAscent ascent;
  private GreedyAllotment greedy;
  private Node root;

  RootSearch(PackedRows packed, double[] supplies, Incumbent incumbent) {
    this.supplies = supplies;
    this.incumbent = incumbent;
    this.packed = packed;
    this.relaxation = new Relaxation(packed);
    this.ascent = new PriceAscent(packed, relaxation, incumbent);
    this.greedy = new GreedyAllotment(packed, relaxation, incumbent);
    this.root = Node.root(packed, new double[supplies.length]);
  }

  /**
   * Improves prices in place; they bound all choices well, not only those that remain later.
   *
   * @param areWarm whether the prices come from another problem with the same supplies
   */
  void findPrices(double[] prices, boolean areWarm) {
    root = Node.root(packed, prices);
    int steps = areWarm ? WARM_STEPS : COLD_STEPS;
    look();
    ascent.climb(root, steps, areWarm ? LENGTH / 4 : LENGTH);
    for (int k : packed.tight) {
      prices[k] = root.prices[k];
    }
  }

  private void look() {
    if (relaxation.bound(root, root.prices) < Double.POSITIVE_INFINITY) {
      greedy.look(root);
    }
  }

  /**
   * Searches on.
   *
   * @return what every allotment costs at least, no less than the incumbent's where that is proved
   */
  double finish(BooleanSupplier stop) {
    double bound = root.bound;
    for (int round = 0; round < ROUNDS && root.bound < incumbent.cutoff(); round++) {
      look();
      if (stop.getAsBoolean()) {
        return root.bound;
      }
      int before = root.size;
      rule();
      bound = Math.max(bound, root.bound);
      ascent.climb(root, STEPS_BETWEEN_LOOKS, round == 0 ? LENGTH : LENGTH / 2);
      bound = Math.max(bound, root.bound);
      if (round > 1 && root.size > WORTHWHILE * before) {
        break;
      }
    }
    if (root.bound >= incumbent.cutoff()) {
      return Double.POSITIVE_INFINITY;
    }
    rule();
    double open = tree(stop).search(root, FEW_NODES);
    if (open >= incumbent.cutoff() || stop.getAsBoolean()) {
      return Math.max(bound, open);
    }
    for (int climb = 0; climb < STEADY_CLIMBS; climb++) {
      rule();
      new SteadyAscent(packed, relaxation, incumbent).climb(root, STEADY_STEPS, LENGTH);
      bound = Math.max(bound, root.bound);
      look();
      if (root.bound >= incumbent.cutoff()) {
        return Double.POSITIVE_INFINITY;
      }
    }
    rule();
    return Math.max(bound, tree(stop).search(root, Long.MAX_VALUE));
  }

  private BranchAndBound tree(BooleanSupplier stop) {
    return new BranchAndBound(packed, relaxation, ascent, greedy, incumbent, stop);
  }

  /** Drops what cannot be in anything better than what is known, and packs the rest anew. */
  private void rule() {
    relaxation.boundEach(root, root.prices);
    root.drop(incumbent.cutoff());
    new Dominance(packed).apply(root);
    PackedRows rest = packed.keep(root.list, root.size, supplies);
    double[] prices = root.prices.clone();
    double bound = root.bound;
    packed = rest;
    relaxation = new Relaxation(packed);
    ascent = new PriceAscent(packed, relaxation, incumbent);
    greedy = new GreedyAllotment(packed, relaxation, incumbent);
    root = Node.root(packed, prices);
    root.bound = bound;
    relaxation.boundEach(root, root.prices);
  }
}
