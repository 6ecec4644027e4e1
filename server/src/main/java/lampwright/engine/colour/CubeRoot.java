package lampwright.engine.colour;

/**
 * Cube roots from {@code exp} and {@code log}, because {@code cbrt} differs between the JVM and
 * JavaScript. Within 2 units in the last place; the sign is kept.
 */
final class CubeRoot {

  private CubeRoot() {}

  /** Returns the cube root of a finite number. */
  static double of(double value) {
    if (value == 0) {
      return value;
    }
    double magnitude = Math.abs(value);
    double guess = StrictMath.exp(StrictMath.log(magnitude) / 3);
    // One step of Newton's takes the few units that exp leaves for large exponents.
    double root = guess - (guess - magnitude / (guess * guess)) / 3;
    return value < 0 ? -root : root;
  }
}
