package lampwright.engine.unit;

/**
 * What a battery holds.
 *
 * @param value watt hours, 0 or more
 */
public record WattHours(double value) implements Comparable<WattHours> {

  /** Checks the bound. */
  public WattHours {
    Bounds.requireZeroOrMore("Battery capacity", value, "W·h");
  }

  /** Returns so many. */
  public static WattHours of(double value) {
    return new WattHours(value);
  }

  /** Returns the same in watt seconds, of which an hour has 3600. */
  public WattSeconds toWattSeconds() {
    return new WattSeconds(value * 3600);
  }

  @Override
  public int compareTo(WattHours other) {
    return Double.compare(value, other.value);
  }

  @Override
  public String toString() {
    return Bounds.rounded(value, 4) + " W·h";
  }
}
