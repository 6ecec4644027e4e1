package lampwright.engine.light;

/**
 * Gauss-Legendre quadrature on the interval from -1 to 1: exact for polynomials of a degree below
 * twice the order.
 */
final class GaussRule {

  static final GaussRule TWO = new GaussRule(2);
  static final GaussRule THREE = new GaussRule(3);
  static final GaussRule FIVE = new GaussRule(5);
  static final GaussRule EIGHT = new GaussRule(8);

  /** Newton's steps from the usual first guess; the fifth changes nothing at these orders. */
  private static final int STEPS = 8;

  private final double[] nodes;
  private final double[] weights;

  private GaussRule(int order) {
    nodes = new double[order];
    weights = new double[order];
    for (int i = 0; i < order; i++) {
      double node = StrictMath.cos(Math.PI * (i + 0.75) / (order + 0.5));
      double slope = 1;
      for (int step = 0; step < STEPS; step++) {
        double before = 1;
        double value = node;
        for (int k = 2; k <= order; k++) {
          double next = ((2 * k - 1) * node * value - (k - 1) * before) / k;
          before = value;
          value = next;
        }
        slope = order * (node * value - before) / (node * node - 1);
        node -= value / slope;
      }
      nodes[i] = node;
      weights[i] = 2 / ((1 - node * node) * slope * slope);
    }
  }

  int order() {
    return nodes.length;
  }

  double node(int i) {
    return nodes[i];
  }

  /** How far a point lies along the interval, 0 to 1. */
  double share(int i) {
    return (1 + nodes[i]) / 2;
  }

  double weight(int i) {
    return weights[i];
  }
}
