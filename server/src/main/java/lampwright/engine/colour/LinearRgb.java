package lampwright.engine.colour;

import lampwright.engine.unit.Bounds;

/**
 * Light in the primaries of sRGB; 1, 1, 1 is white. Only such numbers may be averaged. Outside 0 to
 * 1 no sRGB picture can show it.
 *
 * @param red share of the white's red
 * @param green share of the white's green
 * @param blue share of the white's blue
 */
public record LinearRgb(double red, double green, double blue) {

  /** Refuses numbers that are not finite. */
  public LinearRgb {
    Bounds.requireFinite("Red", red, "");
    Bounds.requireFinite("Green", green, "");
    Bounds.requireFinite("Blue", blue, "");
  }

  /** Returns the luminance against white, {@code 0.2126 R + 0.7152 G + 0.0722 B}. */
  public double luminance() {
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  }

  /** Returns the tristimulus values by the standard's matrix of four digits (source iec-61966). */
  public Xyz toXyz() {
    return new Xyz(
        0.4124 * red + 0.3576 * green + 0.1805 * blue,
        luminance(),
        0.0193 * red + 0.1192 * green + 0.9505 * blue);
  }

  /** Returns whether an sRGB picture can show it. */
  public boolean isShowable() {
    return Math.min(red, Math.min(green, blue)) >= 0 && Math.max(red, Math.max(green, blue)) <= 1;
  }

  /** Returns the signals; what cannot be shown is cut off channel by channel. */
  public Srgb toSrgb() {
    return new Srgb(shown(red), shown(green), shown(blue));
  }

  private static double shown(double linear) {
    double cut = Math.max(0, Math.min(1, linear));
    return Math.max(0, Math.min(1, Srgb.signal(cut)));
  }
}
