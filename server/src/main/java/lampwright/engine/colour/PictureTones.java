package lampwright.engine.colour;

import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Stops;

/**
 * Tones and colours of a whole picture in sRGB. Make it small first, by averaging linear light.
 *
 * @param lightness how L* is spread
 * @param colour how much colour, and which
 * @param dynamicStops stops from the darkest to the lightest hundredth of the luminances, black
 *     taken as a thousandth of white
 * @param rmsContrast standard deviation of the luminance over its mean, 0 for an all black picture
 * @param michelson (lightest - darkest) / (lightest + darkest) of the same hundredths, 0 to 1
 */
public record PictureTones(
    LightnessTones lightness,
    ColourTones colour,
    Stops dynamicStops,
    double rmsContrast,
    double michelson) {

  /** Darker than this a screen shows nothing. */
  private static final double BLACK = 0.001;

  /**
   * Returns the tones of a picture.
   *
   * @param pixels one number a pixel, red, green and blue in its lower three bytes (0xRRGGBB);
   *     whatever is above them is ignored; at least one
   */
  public static PictureTones of(int[] pixels) {
    Bounds.requirePositive("Number of pixels", pixels.length, "");
    SignalLight light = new SignalLight();
    double[] luminance = new double[pixels.length];
    double[] lightness = new double[pixels.length];
    double[] a = new double[pixels.length];
    double[] b = new double[pixels.length];
    for (int i = 0; i < pixels.length; i++) {
      Xyz xyz = light.of(pixels[i]).toXyz();
      Lab lab = xyz.toLab(WhitePoint.D65);
      luminance[i] = xyz.y();
      lightness[i] = lab.lightness();
      a[i] = lab.a();
      b[i] = lab.b();
    }
    SortedValues sorted = new SortedValues(luminance);
    double darkest = sorted.percentile(1);
    double lightest = sorted.percentile(99);
    double mean = sorted.mean();
    double sum = lightest + darkest;
    return new PictureTones(
        LightnessTones.of(lightness),
        ColourTones.of(a, b),
        Stops.ofRatio(Math.max(lightest, BLACK) / Math.max(darkest, BLACK)),
        mean == 0 ? 0 : sorted.deviation() / mean,
        sum == 0 ? 0 : (lightest - darkest) / sum);
  }
}
