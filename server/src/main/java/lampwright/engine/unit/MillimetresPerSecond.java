package lampwright.engine.unit;

/**
 * A speed of an image over the sensor.
 *
 * @param value millimetres a second, 0 or more
 */
public record MillimetresPerSecond(double value) implements Comparable<MillimetresPerSecond> {

  /** Checks the bound. */
  public MillimetresPerSecond {
    Bounds.requireZeroOrMore("Image speed", value, "mm/s");
  }

  /** Returns so many. */
  public static MillimetresPerSecond of(double value) {
    return new MillimetresPerSecond(value);
  }

  /** Returns how far the image moves in a time. */
  public Millimetres over(Seconds time) {
    return new Millimetres(value * time.value());
  }

  @Override
  public int compareTo(MillimetresPerSecond other) {
    return Double.compare(value, other.value);
  }

  @Override
  public String toString() {
    return Bounds.rounded(value, 4) + " mm/s";
  }
}
