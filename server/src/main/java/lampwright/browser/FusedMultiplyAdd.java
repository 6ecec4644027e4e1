package lampwright.browser;

/**
 * A product and a sum with one rounding at the end, {@code Math.fma}, which JavaScript lacks and
 * which the library of the sun's position calls. By Boldo and Melquiond, "Emulation of FMA and
 * correctly rounded sums: proved algorithms using rounding to odd", IEEE Transactions on Computers
 * 57 (2008), from memory: exact halves of product and sum, the rest rounded to odd.
 *
 * <p>The same as {@code Math.fma} as long as no part overflows or falls below the normal numbers,
 * which is far from anything about the sun.
 */
final class FusedMultiplyAdd {

  /** Cuts a double's 53 bits into halves (Veltkamp): 2^27 + 1. */
  private static final double CUT = 134_217_729.0;

  private FusedMultiplyAdd() {}

  static double of(double a, double b, double c) {
    double product = a * b;
    double productRest = productRest(a, b, product);
    double sum = c + productRest;
    double sumRest = sumRest(c, productRest, sum);
    double whole = product + sum;
    double wholeRest = sumRest(product, sum, whole);
    return whole + roundedToOdd(sumRest, wholeRest);
  }

  /** What a product's rounding took, exactly (Dekker). */
  private static double productRest(double a, double b, double product) {
    double aHigh = high(a);
    double aLow = a - aHigh;
    double bHigh = high(b);
    double bLow = b - bHigh;
    double rest = aHigh * bHigh - product;
    rest = rest + aHigh * bLow;
    rest = rest + aLow * bHigh;
    return rest + aLow * bLow;
  }

  private static double high(double value) {
    double wide = CUT * value;
    double over = wide - value;
    return wide - over;
  }

  /** What a sum's rounding took, exactly (Knuth). */
  private static double sumRest(double a, double b, double sum) {
    double ofB = sum - a;
    double ofA = sum - ofB;
    double restOfB = b - ofB;
    double restOfA = a - ofA;
    return restOfA + restOfB;
  }

  /** The sum, and where it is not exact the neighbour whose last bit is 1. */
  private static double roundedToOdd(double a, double b) {
    double sum = a + b;
    double rest = sumRest(a, b, sum);
    long bits = Double.doubleToRawLongBits(sum);
    if (rest == 0 || (bits & 1) == 1) {
      return sum;
    }
    boolean isLargerInSize = rest > 0 == sum > 0;
    return Double.longBitsToDouble(isLargerInSize ? bits + 1 : bits - 1);
  }
}
