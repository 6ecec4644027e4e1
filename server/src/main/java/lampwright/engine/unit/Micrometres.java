package lampwright.engine.unit;

/**
 * A very small length: a pixel, a blur, a wave of light.
 *
 * @param value micrometres, 0 or more
 */
public record Micrometres(double value) implements Comparable<Micrometres> {

  /** Checks the bound. */
  public Micrometres {
    Bounds.requireZeroOrMore("Length", value, "µm");
  }

  /** Returns so many. */
  public static Micrometres of(double value) {
    return new Micrometres(value);
  }

  /** Returns the length in millimetres. */
  public Millimetres toMillimetres() {
    return new Millimetres(value / 1000);
  }

  @Override
  public int compareTo(Micrometres other) {
    return Double.compare(value, other.value);
  }

  @Override
  public String toString() {
    return Bounds.rounded(value, 4) + " µm";
  }
}
