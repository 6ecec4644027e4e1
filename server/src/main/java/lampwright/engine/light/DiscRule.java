package lampwright.engine.light;

/**
 * Points and weights whose weighted mean is a disc's: exact for polynomials of degree 5 (seven
 * points) and 9 (twenty-one), from source abramowitz-stegun, 25.4.61.
 */
final class DiscRule {

  static final DiscRule SEVEN = seven();
  static final DiscRule TWENTY_ONE = twentyOne();

  private final double[] x;
  private final double[] y;
  private final double[] weights;

  private DiscRule(int order, double middleWeight) {
    x = new double[order];
    y = new double[order];
    weights = new double[order];
    weights[0] = middleWeight;
  }

  private static DiscRule seven() {
    DiscRule rule = new DiscRule(7, 1.0 / 4);
    rule.ring(1, 6, Math.sqrt(2.0 / 3), 1.0 / 8);
    return rule;
  }

  private static DiscRule twentyOne() {
    DiscRule rule = new DiscRule(21, 1.0 / 9);
    double root = Math.sqrt(6);
    rule.ring(1, 10, Math.sqrt((6 - root) / 10), (16 + root) / 360);
    rule.ring(11, 10, Math.sqrt((6 + root) / 10), (16 - root) / 360);
    return rule;
  }

  private void ring(int first, int count, double share, double weight) {
    for (int i = 0; i < count; i++) {
      double angle = 2 * Math.PI * i / count;
      x[first + i] = share * StrictMath.cos(angle);
      y[first + i] = share * StrictMath.sin(angle);
      weights[first + i] = weight;
    }
  }

  int order() {
    return weights.length;
  }

  /** A point's place over the radius. */
  double x(int i) {
    return x[i];
  }

  double y(int i) {
    return y[i];
  }

  double weight(int i) {
    return weights[i];
  }
}
