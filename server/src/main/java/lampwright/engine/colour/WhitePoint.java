package lampwright.engine.colour;

/**
 * The white that lightness and hue are measured against for the two-degree observer (source
 * cie-15).
 */
public enum WhitePoint {
  /** Daylight of the usual screen and of sRGB. */
  D65(0.31270, 0.32900),
  /** Daylight of viewing booths and print. */
  D50(0.34570, 0.35850);

  private final double x;
  private final double y;

  WhitePoint(double x, double y) {
    this.x = x;
    this.y = y;
  }

  /** Returns its tristimulus values at a luminance of 1. */
  public Xyz toXyz() {
    return new Xyz(x / y, 1, (1 - x - y) / y);
  }
}
