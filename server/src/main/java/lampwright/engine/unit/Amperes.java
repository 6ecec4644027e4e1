package lampwright.engine.unit;

/**
 * An electrical current, as its effective value.
 *
 * @param value amperes, 0 or more
 */
public record Amperes(double value) implements Comparable<Amperes> {

  /** Checks the bound. */
  public Amperes {
    Bounds.requireZeroOrMore("Current", value, "A");
  }

  /** Returns so many. */
  public static Amperes of(double value) {
    return new Amperes(value);
  }

  @Override
  public int compareTo(Amperes other) {
    return Double.compare(value, other.value);
  }

  @Override
  public String toString() {
    return Bounds.rounded(value, 4) + " A";
  }
}
