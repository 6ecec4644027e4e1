package lampwright.engine.unit;

/**
 * A speed of a subject.
 *
 * @param value metres a second, 0 or more
 */
public record MetresPerSecond(double value) implements Comparable<MetresPerSecond> {

  /** Checks the bound. */
  public MetresPerSecond {
    Bounds.requireZeroOrMore("Speed", value, "m/s");
  }

  /** Returns so many. */
  public static MetresPerSecond of(double value) {
    return new MetresPerSecond(value);
  }

  @Override
  public int compareTo(MetresPerSecond other) {
    return Double.compare(value, other.value);
  }

  @Override
  public String toString() {
    return Bounds.rounded(value, 4) + " m/s";
  }
}
