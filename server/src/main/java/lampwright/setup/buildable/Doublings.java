package lampwright.setup.buildable;

/** Logarithms to the base of two for hot loops; right to a few units in the last place. */
final class Doublings {

  private static final double PER_E = 1 / Math.log(2);

  private Doublings() {}

  static double of(double ratio) {
    return Math.log(ratio) * PER_E;
  }
}
