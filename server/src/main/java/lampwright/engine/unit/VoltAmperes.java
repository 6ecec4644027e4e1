package lampwright.engine.unit;

/**
 * Apparent power: what wires and a generator must carry, whatever the power factor.
 *
 * @param value volt amperes, 0 or more
 */
public record VoltAmperes(double value) implements Comparable<VoltAmperes> {

  /** Checks the bound. */
  public VoltAmperes {
    Bounds.requireZeroOrMore("Apparent power", value, "VA");
  }

  /** Returns so many. */
  public static VoltAmperes of(double value) {
    return new VoltAmperes(value);
  }

  @Override
  public int compareTo(VoltAmperes other) {
    return Double.compare(value, other.value);
  }

  @Override
  public String toString() {
    return Bounds.rounded(value, 4) + " VA";
  }
}
