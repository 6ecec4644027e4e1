package lampwright.engine.unit;

/**
 * Powers and logarithms to the base of two, the only two transcendental functions that stop
 * arithmetic needs.
 *
 * <p>They are built from {@link StrictMath#exp}, {@link StrictMath#log} and exact multiplications
 * by two, because {@code pow} and its relatives differ between the JVM and JavaScript and these do
 * not. Whole numbers of stops, and logarithms of exact powers of two, come out exactly, so that a
 * chain of full stops never drifts.
 */
public final class BaseTwo {

  /** Natural logarithm of two, correctly rounded. */
  private static final double LN_2 = 0.6931471805599453;

  /** Beyond this magnitude a double is zero or infinite anyway. */
  private static final double LARGEST_EXPONENT = 1100;

  private BaseTwo() {}

  /**
   * Returns two to the power of the exponent.
   *
   * <p>Exact for whole exponents, correctly rounded for halves (each mark of a full-stop aperture
   * series is one of these two), elsewhere within 2 units in the last place. Overflows to infinity
   * and underflows to zero.
   *
   * @param exponent any finite number of stops
   */
  public static double power(double exponent) {
    if (exponent > LARGEST_EXPONENT) {
      return Double.POSITIVE_INFINITY;
    }
    if (exponent < -LARGEST_EXPONENT) {
      return 0;
    }
    double whole = Math.floor(exponent + 0.5);
    // Exact: both numbers are multiples of the smaller one's last place and close to each other.
    double rest = exponent - whole;
    if (rest == 0) {
      return wholePower((int) whole);
    }
    // A square root is correctly rounded, exp is not; -0.5 is the only half that can remain.
    double factor = rest == -0.5 ? Math.sqrt(0.5) : StrictMath.exp(rest * LN_2);
    return wholePower((int) whole) * factor;
  }

  /**
   * Returns the logarithm to the base of two.
   *
   * <p>Exact for exact powers of two, elsewhere within about 2 units in the last place (absolutely
   * within 1e-16 close to one).
   *
   * @param value a finite number above 0
   */
  public static double log(double value) {
    Bounds.requirePositive("Ratio", value, "");
    double rest = value;
    int whole = 0;
    // Bring the number into [0.75, 1.5) by exact halvings and doublings, largest steps first.
    for (int step = 512; step >= 1; step /= 2) {
      double large = wholePower(step);
      while (rest >= large * 0.75 && rest >= 1.5) {
        rest /= large;
        whole += step;
      }
      while (rest < 1.5 / large && rest < 0.75) {
        rest *= large;
        whole -= step;
      }
    }
    return rest == 1 ? whole : whole + StrictMath.log(rest) / LN_2;
  }

  /** Returns two to a whole power by repeated squaring; every step is exact. */
  private static double wholePower(int exponent) {
    double square = exponent < 0 ? 0.5 : 2;
    double product = 1;
    for (int left = Math.abs(exponent); left > 0; left /= 2) {
      if (left % 2 == 1) {
        product *= square;
      }
      square *= square;
    }
    return product;
  }
}
