package lampwright.engine.unit;

/**
 * A voltage; of mains its effective value.
 *
 * @param value volts, 0 or more
 */
public record Volts(double value) implements Comparable<Volts> {

  /** Checks the bound. */
  public Volts {
    Bounds.requireZeroOrMore("Voltage", value, "V");
  }

  /** Returns so many. */
  public static Volts of(double value) {
    return new Volts(value);
  }

  @Override
  public int compareTo(Volts other) {
    return Double.compare(value, other.value);
  }

  @Override
  public String toString() {
    return Bounds.rounded(value, 4) + " V";
  }
}
