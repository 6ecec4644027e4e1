package lampwright.engine.unit;

/**
 * A span of time.
 *
 * @param value seconds, 0 or more
 */
public record Seconds(double value) implements Comparable<Seconds> {

  /** Checks the bound. */
  public Seconds {
    Bounds.requireZeroOrMore("Time", value, "s");
  }

  /** Returns so many. */
  public static Seconds of(double value) {
    return new Seconds(value);
  }

  /** Returns the time times a factor of 0 or more. */
  public Seconds times(double factor) {
    return new Seconds(value * factor);
  }

  @Override
  public int compareTo(Seconds other) {
    return Double.compare(value, other.value);
  }

  @Override
  public String toString() {
    return Bounds.rounded(value, 4) + " s";
  }
}
