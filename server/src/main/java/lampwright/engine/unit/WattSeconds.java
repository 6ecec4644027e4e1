package lampwright.engine.unit;

/**
 * Electrical energy of a flash. It says little about light: see a reading for that.
 *
 * @param value watt seconds (joules), 0 or more
 */
public record WattSeconds(double value) implements Comparable<WattSeconds> {

  /** Checks the bound. */
  public WattSeconds {
    Bounds.requireZeroOrMore("Energy", value, "W·s");
  }

  /** Returns so many. */
  public static WattSeconds of(double value) {
    return new WattSeconds(value);
  }

  /** Returns the energy so many stops down, {@code P 2^-s}. */
  public WattSeconds down(Stops stopsDown) {
    return new WattSeconds(value * stopsDown.negated().toFactor());
  }

  /** Returns both together. */
  public WattSeconds plus(WattSeconds other) {
    return new WattSeconds(value + other.value);
  }

  @Override
  public int compareTo(WattSeconds other) {
    return Double.compare(value, other.value);
  }

  @Override
  public String toString() {
    return Bounds.rounded(value, 4) + " W·s";
  }
}
