package lampwright.engine.unit;

/**
 * A mass, such as a stand, a head or a sandbag.
 *
 * @param value kilograms, 0 or more
 */
public record Kilograms(double value) implements Comparable<Kilograms> {

  /** Checks the bound. */
  public Kilograms {
    Bounds.requireZeroOrMore("Mass", value, "kg");
  }

  /** Returns so many. */
  public static Kilograms of(double value) {
    return new Kilograms(value);
  }

  /** Returns both together. */
  public Kilograms plus(Kilograms other) {
    return new Kilograms(value + other.value);
  }

  @Override
  public int compareTo(Kilograms other) {
    return Double.compare(value, other.value);
  }

  @Override
  public String toString() {
    return Bounds.rounded(value, 4) + " kg";
  }
}
