package lampwright.engine.unit;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * The checks that value types make on entry, and how numbers are written in their messages.
 *
 * <p>Each check refuses what is not a number and what is infinite, and its message names the thing,
 * the value and the bound: "Distance (0 m) must be more than 0."
 */
public final class Bounds {

  private static final double[] SCALES = {1, 10, 100, 1_000, 10_000, 100_000, 1_000_000};

  /** Below it a scaled number is a whole number of an int, with a rest that is exact. */
  private static final double LARGEST_SCALED = 1e9;

  /** Cuts the 53 bits of a double into halves: 2^27 + 1. */
  private static final double HALF_CUT = 134_217_729;

  private Bounds() {}

  /**
   * Refuses numbers that are not finite.
   *
   * @param unit the unit's sign, or an empty text where there is none
   */
  public static void requireFinite(String name, double value, String unit) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(subject(name, value, unit) + " must be a finite number.");
    }
  }

  /** Refuses zero, negative and not finite numbers. */
  public static void requirePositive(String name, double value, String unit) {
    requireFinite(name, value, unit);
    if (value <= 0) {
      throw new IllegalArgumentException(subject(name, value, unit) + " must be more than 0.");
    }
  }

  /** Refuses negative and not finite numbers. */
  public static void requireZeroOrMore(String name, double value, String unit) {
    requireFinite(name, value, unit);
    if (value < 0) {
      throw new IllegalArgumentException(subject(name, value, unit) + " must be 0 or more.");
    }
  }

  /** Refuses numbers outside the bounds, which are allowed themselves. */
  public static void requireBetween(
      String name, double value, String unit, double lowest, double highest) {
    requireFinite(name, value, unit);
    if (value < lowest || value > highest) {
      throw new IllegalArgumentException(
          subject(name, value, unit)
              + " must be from "
              + plain(lowest)
              + " to "
              + plain(highest)
              + ".");
    }
  }

  /** Returns "Name (value unit)", the beginning of every message. */
  public static String subject(String name, double value, String unit) {
    return name + " (" + plain(value) + (unit.isEmpty() ? "" : " " + unit) + ")";
  }

  /** Returns the number as a person would type it: no exponent for everyday sizes, no ".0". */
  public static String plain(double value) {
    if (Double.isFinite(value) && value == Math.floor(value) && Math.abs(value) < 1e15) {
      return Long.toString((long) value);
    }
    return Double.toString(value);
  }

  /**
   * Returns the number rounded half up (away from zero) with at most so many decimals, without
   * trailing zeros: 0.5, 12, -1.33.
   */
  public static String rounded(double value, int decimals) {
    String fixed = fixed(value, decimals);
    if (fixed.indexOf('.') < 0) {
      return fixed;
    }
    int end = fixed.length();
    while (fixed.charAt(end - 1) == '0') {
      end--;
    }
    return fixed.substring(0, fixed.charAt(end - 1) == '.' ? end - 1 : end);
  }

  /**
   * Returns the number with exactly so many decimals, 0 or more, rounded half up: 5.0, 7.5. What
   * counts is the double's exact value, as {@link BigDecimal} has it; nothing is rounded twice.
   */
  public static String fixed(double value, int decimals) {
    if (!Double.isFinite(value)) {
      return Double.toString(value);
    }
    double size = Math.abs(value);
    // Drawings write thousands of numbers, for which BigDecimal is slow, above all in a browser.
    if (decimals >= SCALES.length || size * SCALES[decimals] >= LARGEST_SCALED) {
      BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP);
      return rounded.toPlainString();
    }
    int units = nearest(size, SCALES[decimals]);
    String text = withPoint(units, decimals);
    return value < 0 && units > 0 ? "-" + text : text;
  }

  /** The whole number nearest to a product, by the product's exact value, halves up. */
  private static int nearest(double size, double scale) {
    double product = size * scale;
    int below = (int) product;
    double overHalf = product - below - 0.5;
    return overHalf + lost(size, scale, product) >= 0 ? below + 1 : below;
  }

  /**
   * What the rounding of a product took from it, exactly, by the halves of its factors (T. J.
   * Dekker, "A floating-point technique for extending the available precision", Numerische
   * Mathematik 18 (1971)).
   */
  private static double lost(double a, double b, double product) {
    double aHigh = upperHalf(a);
    double aLow = a - aHigh;
    double bHigh = upperHalf(b);
    double bLow = b - bHigh;
    double rest = aHigh * bHigh - product;
    rest = rest + aHigh * bLow;
    rest = rest + aLow * bHigh;
    return rest + aLow * bLow;
  }

  private static double upperHalf(double value) {
    double wide = HALF_CUT * value;
    double over = wide - value;
    return wide - over;
  }

  private static String withPoint(int units, int decimals) {
    String digits = Integer.toString(units);
    if (decimals == 0) {
      return digits;
    }
    if (digits.length() <= decimals) {
      digits = "0".repeat(decimals + 1 - digits.length()) + digits;
    }
    int point = digits.length() - decimals;
    return digits.substring(0, point) + "." + digits.substring(point);
  }
}
