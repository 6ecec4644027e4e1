package lampwright.engine.unit;

/**
 * What the capacitors of a head hold for each volt.
 *
 * @param value microfarads, 0 or more
 */
public record Microfarads(double value) implements Comparable<Microfarads> {

  /** Checks the bound. */
  public Microfarads {
    Bounds.requireZeroOrMore("Capacitance", value, "µF");
  }

  /** Returns so many. */
  public static Microfarads of(double value) {
    return new Microfarads(value);
  }

  @Override
  public int compareTo(Microfarads other) {
    return Double.compare(value, other.value);
  }

  @Override
  public String toString() {
    return Bounds.rounded(value, 4) + " µF";
  }
}
