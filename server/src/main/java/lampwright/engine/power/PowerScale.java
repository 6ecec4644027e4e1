package lampwright.engine.power;

import lampwright.engine.unit.BaseTwo;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Stops;
import lampwright.engine.unit.WattSeconds;

/**
 * How a head shows its power. Scales depend on the maker (trade-practice); a percentage of the
 * scale instead of the energy is none of these: ask. What is kept is always stops below full.
 */
public enum PowerScale {
  /** Fractions of full power and tenths below them: "1/1", "1/2 − 0.3". */
  FRACTIONS,
  /** Numbers of which one is a stop and 10 is full: "7.5". */
  ONE_STOP_UNITS,
  /** Energy: "76 W·s". */
  WATT_SECONDS,
  /** Percent of full energy: "19 %". */
  PERCENT;

  /** The number that stands for full power on a scale of one-stop units. */
  public static final double TOP_UNIT = 10;

  /**
   * Returns a power as the head shows it, rounded to tenths of a stop, tenths of a unit, whole watt
   * seconds (tenths below 10) or whole percent (tenths below 10).
   *
   * @param stopsDown below full power, 0 or more
   * @param full the head's energy at full power
   */
  public String show(Stops stopsDown, WattSeconds full) {
    Bounds.requireZeroOrMore("Power below full", stopsDown.value(), "stops");
    return switch (this) {
      case FRACTIONS -> fraction(stopsDown);
      case ONE_STOP_UNITS -> Bounds.fixed(TOP_UNIT - stopsDown.value(), 1);
      case WATT_SECONDS -> amount(full.down(stopsDown).value()) + " W·s";
      case PERCENT -> amount(100 * stopsDown.negated().toFactor()) + " %";
    };
  }

  /**
   * Returns the stops below full behind a number on the scale.
   *
   * @param shown the number; for fractions the fraction itself, 0.25 for 1/4
   * @param full the head's energy at full power
   */
  public Stops toStopsDown(double shown, WattSeconds full) {
    return switch (this) {
      case FRACTIONS -> Stops.ofRatio(shown).negated();
      case ONE_STOP_UNITS -> new Stops(TOP_UNIT - shown);
      case WATT_SECONDS -> Stops.ofRatio(full.value() / shown);
      case PERCENT -> Stops.ofRatio(100 / shown);
    };
  }

  private static String fraction(Stops stopsDown) {
    long tenths = (long) Math.floor(stopsDown.value() * 10 + 0.5);
    long full = tenths / 10;
    long left = tenths % 10;
    String fraction = "1/" + Bounds.plain(BaseTwo.power((double) full));
    return left == 0 ? fraction : fraction + " − 0." + left;
  }

  private static String amount(double value) {
    return Bounds.rounded(value, value < 9.95 ? 1 : 0);
  }
}
