package lampwright.engine.unit;

/**
 * A length or a distance. Places have signs and are points; a length has none.
 *
 * @param value metres, 0 or more
 */
public record Metres(double value) implements Comparable<Metres> {

  /** Metres in a foot, exactly (international foot). */
  public static final double PER_FOOT = 0.3048;

  /** Checks the bound. */
  public Metres {
    Bounds.requireZeroOrMore("Length", value, "m");
  }

  /** Returns so many. */
  public static Metres of(double value) {
    return new Metres(value);
  }

  /** Returns a length from feet. */
  public static Metres ofFeet(double feet) {
    return new Metres(feet * PER_FOOT);
  }

  /** Returns the length in feet. */
  public double toFeet() {
    return value / PER_FOOT;
  }

  /** Returns the length in millimetres. */
  public Millimetres toMillimetres() {
    return new Millimetres(value * 1000);
  }

  /** Returns the length times a factor of 0 or more. */
  public Metres times(double factor) {
    return new Metres(value * factor);
  }

  @Override
  public int compareTo(Metres other) {
    return Double.compare(value, other.value);
  }

  @Override
  public String toString() {
    return Bounds.rounded(value, 4) + " m";
  }
}
