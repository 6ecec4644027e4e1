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
    if (!Double.isFinite(value)) {
      return Double.toString(value);
    }
    BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** Returns the number with exactly so many decimals, rounded half up: 5.0, 7.5. */
  public static String fixed(double value, int decimals) {
    if (!Double.isFinite(value)) {
      return Double.toString(value);
    }
    return new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }
}
