package lampwright.engine.colour;

import java.util.Optional;
import lampwright.engine.unit.Degrees;

/**
 * How much colour a picture has and which.
 *
 * @param meanChroma mean C* of CIELAB
 * @param meanHue direction of all colours together, weighted by chroma; empty where there is no
 *     colour or the colours cancel out
 * @param warmShare share of the chroma whose hue is warm, 20° to 110°; 0 where there is no colour
 */
public record ColourTones(double meanChroma, Optional<Degrees> meanHue, double warmShare) {

  /** Colours that add up to less than this part of their chroma have no direction. */
  private static final double NO_DIRECTION = 1e-6;

  /** Chroma that the rounded matrix gives to greys, and less. */
  private static final double GREY = 0.05;

  private static final double WARM_FROM = 20;
  private static final double WARM_TO = 110;

  /**
   * Returns the colour of pixels.
   *
   * @param a a* of each pixel, at least one
   * @param b b* of each pixel, as many
   */
  public static ColourTones of(double[] a, double[] b) {
    if (a.length == 0 || a.length != b.length) {
      throw new IllegalArgumentException(
          "Pixels (" + a.length + " a*, " + b.length + " b*) must be at least 1, as many of each.");
    }
    double sum = 0;
    double warm = 0;
    double sumA = 0;
    double sumB = 0;
    for (int i = 0; i < a.length; i++) {
      double chroma = Math.sqrt(a[i] * a[i] + b[i] * b[i]);
      sum += chroma;
      // Weighting the unit vector of the hue by chroma gives (a, b) itself.
      sumA += a[i];
      sumB += b[i];
      double hue = Lab.hueDegrees(a[i], b[i]);
      if (hue >= WARM_FROM && hue <= WARM_TO) {
        warm += chroma;
      }
    }
    if (sum < GREY * a.length) {
      return new ColourTones(sum / a.length, Optional.empty(), 0);
    }
    boolean directed = Math.sqrt(sumA * sumA + sumB * sumB) > NO_DIRECTION * sum;
    return new ColourTones(
        sum / a.length,
        directed ? Optional.of(new Degrees(Lab.hueDegrees(sumA, sumB))) : Optional.empty(),
        warm / sum);
  }
}
