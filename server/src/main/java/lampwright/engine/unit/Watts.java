package lampwright.engine.unit;

/**
 * Electrical power that really does work, or heat.
 *
 * @param value watts, 0 or more
 */
public record Watts(double value) implements Comparable<Watts> {

  /** Checks the bound. */
  public Watts {
    Bounds.requireZeroOrMore("Power", value, "W");
  }

  /** Returns so many. */
  public static Watts of(double value) {
    return new Watts(value);
  }

  /** Returns both together. */
  public Watts plus(Watts other) {
    return new Watts(value + other.value);
  }

  @Override
  public int compareTo(Watts other) {
    return Double.compare(value, other.value);
  }

  @Override
  public String toString() {
    return Bounds.rounded(value, 4) + " W";
  }
}
