package lampwright.engine.colour;

/**
 * How the lightness of a picture is spread, on L* from 0 to 100 (source trade-practice).
 *
 * @param mean arithmetic mean of L*
 * @param deviation standard deviation of L* over all pixels, one measure of contrast
 * @param median middle value
 * @param darkest fifth percentile
 * @param lightest ninety-fifth percentile
 * @param darkShare share of pixels below L* 25
 * @param lightShare share of pixels above L* 75
 */
public record LightnessTones(
    double mean,
    double deviation,
    double median,
    double darkest,
    double lightest,
    double darkShare,
    double lightShare) {

  private static final double DARK = 25;
  private static final double LIGHT = 75;
  private static final double LOW_MEDIAN = 30;
  private static final double HIGH_MEDIAN = 70;

  /**
   * Returns the tones of pixels.
   *
   * @param lightness L* of each pixel, at least one
   */
  public static LightnessTones of(double[] lightness) {
    SortedValues values = new SortedValues(lightness);
    return new LightnessTones(
        values.mean(),
        values.deviation(),
        values.percentile(50),
        values.percentile(5),
        values.percentile(95),
        values.shareBelow(DARK),
        values.shareAbove(LIGHT));
  }

  /** Returns light share less dark share: -1 all dark, 1 all light. */
  public double keyIndex() {
    return lightShare - darkShare;
  }

  /** Returns the distance from the darkest to the lightest twentieth. */
  public double range() {
    return lightest - darkest;
  }

  /** Returns low, middle or high key. */
  public Key key() {
    if (median < LOW_MEDIAN && darkShare >= 0.5) {
      return Key.LOW;
    }
    return median > HIGH_MEDIAN && lightShare >= 0.5 ? Key.HIGH : Key.MIDDLE;
  }
}
