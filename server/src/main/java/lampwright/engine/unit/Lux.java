package lampwright.engine.unit;

/**
 * Illuminance: light falling on a surface, per area. Adds.
 *
 * @param value lux, 0 or more
 */
public record Lux(double value) implements Comparable<Lux> {

  /** Checks the bound. */
  public Lux {
    Bounds.requireZeroOrMore("Illuminance", value, "lx");
  }

  /** Returns so many. */
  public static Lux of(double value) {
    return new Lux(value);
  }

  /** Returns both lights together. */
  public Lux plus(Lux other) {
    return new Lux(value + other.value);
  }

  /** Returns the light cut or raised by so many stops. */
  public Lux plus(Stops change) {
    return new Lux(value * change.toFactor());
  }

  /** Returns the exposure that this light gives in a time, {@code H = E t}. */
  public LuxSeconds over(Seconds time) {
    return new LuxSeconds(value * time.value());
  }

  @Override
  public int compareTo(Lux other) {
    return Double.compare(value, other.value);
  }

  @Override
  public String toString() {
    return Bounds.rounded(value, 4) + " lx";
  }
}
