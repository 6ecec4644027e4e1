package lampwright.engine.colour;

import lampwright.engine.unit.Bounds;

/**
 * Tristimulus values of the two-degree observer; y of white is 1.
 *
 * @param x first value
 * @param y luminance against white
 * @param z third value
 */
public record Xyz(double x, double y, double z) {

  /** Where the cube root of lightness gives way to a straight line. */
  private static final double KNEE = 216.0 / 24389;

  private static final double SLOPE = 24389.0 / 27;

  /** Refuses numbers that are not finite. */
  public Xyz {
    Bounds.requireFinite("X", x, "");
    Bounds.requireFinite("Y", y, "");
    Bounds.requireFinite("Z", z, "");
  }

  /**
   * Returns lightness and the two colour axes (source cie-15).
   *
   * @param white the white that these values are relative to; values of another white must be
   *     adapted first
   */
  public Lab toLab(WhitePoint white) {
    Xyz full = white.toXyz();
    double fx = curve(x / full.x);
    double fy = curve(y / full.y);
    double fz = curve(z / full.z);
    return new Lab(116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz));
  }

  /** Returns L* of a luminance against white, 0 for black and 100 for white (source cie-15). */
  public static double lightness(double luminance) {
    return 116 * curve(luminance) - 16;
  }

  /** Returns Oklab; the values must be relative to D65 (source oklab). */
  public Oklab toOklab() {
    double l = CubeRoot.of(0.8189330101 * x + 0.3618667424 * y - 0.1288597137 * z);
    double m = CubeRoot.of(0.0329845436 * x + 0.9293118715 * y + 0.0361456387 * z);
    double s = CubeRoot.of(0.0482003018 * x + 0.2643662691 * y + 0.6338517070 * z);
    return new Oklab(
        0.2104542553 * l + 0.7936177850 * m - 0.0040720468 * s,
        1.9779984951 * l - 2.4285922050 * m + 0.4505937099 * s,
        0.0259040371 * l + 0.7827717662 * m - 0.8086757660 * s);
  }

  private static double curve(double share) {
    return share > KNEE ? CubeRoot.of(share) : (SLOPE * share + 16) / 116;
  }
}
