package lampwright.engine.colour;

import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Degrees;

/**
 * A colour as lightness and two axes, CIELAB (source cie-15).
 *
 * @param lightness L*, 0 for black, 100 for white
 * @param a a*, green to red
 * @param b b*, blue to yellow
 */
public record Lab(double lightness, double a, double b) {

  /** Refuses numbers that are not finite. */
  public Lab {
    Bounds.requireFinite("L*", lightness, "");
    Bounds.requireFinite("a*", a, "");
    Bounds.requireFinite("b*", b, "");
  }

  /** Returns C*, how far it is from grey. */
  public double chroma() {
    return Math.sqrt(a * a + b * b);
  }

  /**
   * Returns the hue, 0 to below 360 degrees: 0 is red, 90 yellow, 180 green, 270 blue; grey is 0.
   */
  public Degrees hue() {
    return new Degrees(hueDegrees(a, b));
  }

  /** Returns how different the other looks, CIEDE2000: 1 is just seen, 0 is the same. */
  public double differenceTo(Lab other) {
    return Ciede2000.difference(this, other);
  }

  static double hueDegrees(double a, double b) {
    if (a == 0 && b == 0) {
      return 0;
    }
    double degrees = StrictMath.atan2(b, a) * (180 / Math.PI);
    double turned = degrees < 0 ? degrees + 360 : degrees;
    // A hue a hair below 0 would round to the full turn.
    return turned < 360 ? turned : 0;
  }
}
