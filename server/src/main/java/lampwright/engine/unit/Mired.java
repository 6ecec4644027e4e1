package lampwright.engine.unit;

/**
 * A reciprocal colour temperature, or a shift of one; plus is warmer. Near-Planckian light only: it
 * says nothing about green and magenta.
 *
 * @param value reciprocal megakelvins, of either sign for a shift
 */
public record Mired(double value) implements Comparable<Mired> {

  /** No shift. */
  public static final Mired ZERO = new Mired(0);

  /** Checks the bound. */
  public Mired {
    Bounds.requireFinite("Mired", value, "mired");
    value = value + 0.0; // no negative zero
  }

  /** Returns so many. */
  public static Mired of(double value) {
    return new Mired(value);
  }

  /** Returns both shifts together, as gels on one light add. */
  public Mired plus(Mired other) {
    return new Mired(value + other.value);
  }

  /** Returns the difference from the other. */
  public Mired minus(Mired other) {
    return new Mired(value - other.value);
  }

  /**
   * Returns the colour temperature, {@code T = 10^6 / M}.
   *
   * @throws IllegalArgumentException where this is 0 or less: bluer than any temperature
   */
  public Kelvin toKelvin() {
    if (value <= 0) {
      throw new IllegalArgumentException(
          Bounds.subject("Mired", value, "mired")
              + " must be more than 0 to be a colour temperature. Maybe a weaker blue gel?");
    }
    return new Kelvin(1e6 / value);
  }

  @Override
  public int compareTo(Mired other) {
    return Double.compare(value, other.value);
  }

  @Override
  public String toString() {
    return Bounds.rounded(value, 4) + " mired";
  }
}
