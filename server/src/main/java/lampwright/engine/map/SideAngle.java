package lampwright.engine.map;

/**
 * The angle over its sine, from its cosine: what each side of a polygon adds to the contour
 * formula. Two polynomials for cosines from 0 to 0.8 and to 1, by Chebyshev's interpolation;
 * relative error below 1e-10. Beyond a right angle by the supplement.
 */
final class SideAngle {

  private static final double SPLIT = 0.8;
  private static final double[] WIDE = fitted(0, SPLIT, 14);
  private static final double[] NARROW = fitted(SPLIT, 1, 8);

  private SideAngle() {}

  /** Returns the ratio for a cosine of -1 to 1; at -1 itself it would be infinite. */
  static double overSine(double cosine) {
    if (cosine >= SPLIT) {
      return value(NARROW, (cosine - (1 + SPLIT) / 2) * (2 / (1 - SPLIT)));
    }
    if (cosine >= 0) {
      return value(WIDE, (cosine - SPLIT / 2) * (2 / SPLIT));
    }
    double sine = Math.sqrt(Math.max(Double.MIN_NORMAL, (1 - cosine) * (1 + cosine)));
    return Math.PI / sine - overSine(-cosine);
  }

  private static double value(double[] coefficients, double x) {
    double sum = coefficients[coefficients.length - 1];
    for (int i = coefficients.length - 2; i >= 0; i--) {
      sum = sum * x + coefficients[i];
    }
    return sum;
  }

  /** The coefficients of the powers of x, which runs from -1 to 1 over the range. */
  private static double[] fitted(double from, double to, int terms) {
    double[] sums = new double[terms];
    for (int k = 0; k < terms; k++) {
      double angle = Math.PI * (k + 0.5) / terms;
      double cosine = (from + to) / 2 + (to - from) / 2 * StrictMath.cos(angle);
      double theta = StrictMath.acos(cosine);
      for (int j = 0; j < terms; j++) {
        double share = (j == 0 ? 1.0 : 2.0) / terms;
        sums[j] += share * StrictMath.cos(j * angle) * theta / StrictMath.sin(theta);
      }
    }
    double[] powers = new double[terms];
    double[] before = new double[terms];
    double[] current = new double[terms];
    before[0] = 1;
    current[1] = 1;
    for (int i = 0; i < terms; i++) {
      powers[i] = sums[0] * before[i] + sums[1] * current[i];
    }
    for (int j = 2; j < terms; j++) {
      double[] next = new double[terms];
      for (int i = 0; i < terms; i++) {
        next[i] = (i > 0 ? 2 * current[i - 1] : 0) - before[i];
        powers[i] += sums[j] * next[i];
      }
      before = current;
      current = next;
    }
    return powers;
  }
}
