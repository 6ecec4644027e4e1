package lampwright.picture;

import java.util.Arrays;
import java.util.List;
import lampwright.engine.colour.Key;
import lampwright.engine.colour.Lab;
import lampwright.engine.colour.LinearRgb;
import lampwright.engine.colour.PictureTones;
import lampwright.engine.colour.SignalLight;
import lampwright.engine.colour.WhitePoint;
import lampwright.engine.unit.BaseTwo;
import lampwright.engine.unit.Stops;

/**
 * Tones and colours of a picture, made from a version of {@link #LONGER_SIDE} pixels.
 *
 * @param lightness percentiles of L* (CIE 15), as {@link #PERCENTS} lists them
 * @param key low where the median is below 30 and half or more lies below 25, high where it is
 *     above 70 and half or more lies above 75
 * @param rmsContrast standard deviation of the luminance over its mean
 * @param spread from the tenth to the ninetieth percentile of luminance, black taken as a
 *     thousandth of white
 * @param warmth mean b* of CIELAB: plus is towards yellow, minus towards blue, 0 neutral
 * @param colours at most six, the most of it first
 */
public record ToneStatistics(
    List<Double> lightness,
    Key key,
    double rmsContrast,
    Stops spread,
    double warmth,
    List<MainColour> colours) {

  /** Which percentiles of lightness are kept. */
  public static final List<Integer> PERCENTS = List.of(2, 10, 25, 50, 75, 90, 98);

  static final int LONGER_SIDE = 256;

  private static final double BLACK = 0.001;

  public ToneStatistics {
    lightness = List.copyOf(lightness);
    colours = List.copyOf(colours);
  }

  /** The middle lightness, L*. */
  public double median() {
    return lightness.get(PERCENTS.indexOf(50));
  }

  /**
   * @param rgb 0xRRGGBB, at least one
   */
  static ToneStatistics of(int[] rgb) {
    double[] lightness = new double[rgb.length];
    double[] luminance = new double[rgb.length];
    double warmth = 0;
    SignalLight light = new SignalLight();
    for (int i = 0; i < rgb.length; i++) {
      LinearRgb linear = light.of(rgb[i]);
      Lab lab = linear.toXyz().toLab(WhitePoint.D65);
      lightness[i] = lab.lightness();
      luminance[i] = linear.luminance();
      warmth += lab.b();
    }
    Arrays.sort(lightness);
    Arrays.sort(luminance);
    PictureTones tones = PictureTones.of(rgb);
    return new ToneStatistics(
        PERCENTS.stream().map(percent -> percentile(lightness, percent)).toList(),
        tones.lightness().key(),
        tones.rmsContrast(),
        new Stops(
            BaseTwo.log(
                Math.max(BLACK, percentile(luminance, 90))
                    / Math.max(BLACK, percentile(luminance, 10)))),
        warmth / rgb.length,
        MainColours.of(rgb, light));
  }

  /** Straight between neighbours. */
  private static double percentile(double[] sorted, int percent) {
    double place = percent / 100.0 * (sorted.length - 1);
    int below = (int) Math.floor(place);
    int above = Math.min(below + 1, sorted.length - 1);
    return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
  }
}
