package lampwright.engine.unit;

/**
 * An angle. What it is measured from, and its sign, stands where it is used.
 *
 * @param value degrees
 */
public record Degrees(double value) implements Comparable<Degrees> {

  /** Checks the bound. */
  public Degrees {
    Bounds.requireFinite("Angle", value, "°");
    value = value + 0.0; // no negative zero
  }

  /** Returns so many. */
  public static Degrees of(double value) {
    return new Degrees(value);
  }

  /** Returns an angle from radians. Own conversion: the library's differs between platforms. */
  public static Degrees ofRadians(double radians) {
    return new Degrees(radians * 180 / Math.PI);
  }

  /** Returns the angle in radians. */
  public double toRadians() {
    return value * Math.PI / 180;
  }

  /** Returns the same direction from above -180 up to and including 180. */
  public Degrees toHalfTurns() {
    double turned = value - 360 * Math.floor(value / 360);
    return new Degrees(turned > 180 ? turned - 360 : turned);
  }

  /** Returns the sum of both angles. */
  public Degrees plus(Degrees other) {
    return new Degrees(value + other.value);
  }

  /** Returns this angle less the other. */
  public Degrees minus(Degrees other) {
    return new Degrees(value - other.value);
  }

  @Override
  public int compareTo(Degrees other) {
    return Double.compare(value, other.value);
  }

  @Override
  public String toString() {
    return Bounds.rounded(value, 4) + "°";
  }
}
