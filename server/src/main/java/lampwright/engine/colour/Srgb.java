package lampwright.engine.colour;

import lampwright.engine.unit.BaseTwo;
import lampwright.engine.unit.Bounds;

/**
 * A colour as the signals of an sRGB picture. Pictures with another profile must be converted
 * first.
 *
 * @param red signal, 0 to 1
 * @param green signal, 0 to 1
 * @param blue signal, 0 to 1
 */
public record Srgb(double red, double green, double blue) {

  /** Checks the signals. */
  public Srgb {
    Bounds.requireBetween("Red", red, "", 0, 1);
    Bounds.requireBetween("Green", green, "", 0, 1);
    Bounds.requireBetween("Blue", blue, "", 0, 1);
  }

  /** Returns a colour from signals of eight bits, 0 to 255. */
  public static Srgb ofBytes(int red, int green, int blue) {
    return new Srgb(red / 255.0, green / 255.0, blue / 255.0);
  }

  /**
   * Returns the light behind a signal, {@code ((V + 0.055) / 1.055)^2.4}, below 0.04045 {@code V /
   * 12.92} (source iec-61966).
   *
   * @param signal 0 to 1
   */
  public static double linear(double signal) {
    Bounds.requireBetween("Signal", signal, "", 0, 1);
    return signal <= 0.04045
        ? signal / 12.92
        : BaseTwo.power(2.4 * BaseTwo.log((signal + 0.055) / 1.055));
  }

  /**
   * Returns the signal of a light, {@code 1.055 L^(1/2.4) - 0.055}, below 0.0031308 {@code 12.92 L}
   * (source iec-61966).
   *
   * @param linear 0 to 1
   */
  public static double signal(double linear) {
    Bounds.requireBetween("Linear light", linear, "", 0, 1);
    return linear <= 0.0031308
        ? 12.92 * linear
        : 1.055 * BaseTwo.power(BaseTwo.log(linear) / 2.4) - 0.055;
  }

  /** Returns the light behind the signals. */
  public LinearRgb toLinear() {
    return new LinearRgb(linear(red), linear(green), linear(blue));
  }

  /** Returns lightness, chroma and hue under the picture's own white, D65. */
  public Lab toLab() {
    return toLinear().toXyz().toLab(WhitePoint.D65);
  }
}
