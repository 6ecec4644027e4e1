package lampwright.engine.unit;

/**
 * A length on the sensor or of a lens.
 *
 * @param value millimetres, 0 or more
 */
public record Millimetres(double value) implements Comparable<Millimetres> {

  /** Checks the bound. */
  public Millimetres {
    Bounds.requireZeroOrMore("Length", value, "mm");
  }

  /** Returns so many. */
  public static Millimetres of(double value) {
    return new Millimetres(value);
  }

  /** Returns the length in metres. */
  public Metres toMetres() {
    return new Metres(value / 1000);
  }

  /** Returns the length in micrometres. */
  public Micrometres toMicrometres() {
    return new Micrometres(value * 1000);
  }

  @Override
  public int compareTo(Millimetres other) {
    return Double.compare(value, other.value);
  }

  @Override
  public String toString() {
    return Bounds.rounded(value, 4) + " mm";
  }
}
