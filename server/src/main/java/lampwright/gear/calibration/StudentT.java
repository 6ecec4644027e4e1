package lampwright.gear.calibration;

import org.hipparchus.special.Beta;

/** Student's distribution, for the width of intervals that rest on few readings. */
final class StudentT {

  private static final double WIDEST = 1_000;

  /** After so many halvings of a thousand the bounds are neighbouring doubles. */
  private static final int HALVINGS = 80;

  private StudentT() {}

  /**
   * Returns how many standard errors to each side hold a share of 0.95: 1.96 with ever so many
   * degrees of freedom, 2.776 with 4.
   *
   * @param degreesOfFreedom 1 or more, need not be whole
   */
  static double halfWidthOf95(double degreesOfFreedom) {
    double low = 0;
    double high = WIDEST;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      double outside =
          Beta.regularizedBeta(
              degreesOfFreedom / (degreesOfFreedom + middle * middle), degreesOfFreedom / 2, 0.5);
      if (outside > 0.05) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }
}
