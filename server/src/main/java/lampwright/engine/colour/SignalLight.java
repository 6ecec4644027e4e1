package lampwright.engine.colour;

/** The light behind each of the 256 signals of eight bits, computed once for many pixels. */
public final class SignalLight {

  private final double[] light = new double[256];

  /** Computes {@link Srgb#linear} of every signal. */
  public SignalLight() {
    for (int signal = 0; signal < light.length; signal++) {
      light[signal] = Srgb.linear(signal / 255.0);
    }
  }

  /**
   * Returns the light of a pixel.
   *
   * @param pixel red, green and blue in its lower three bytes (0xRRGGBB); whatever is above them is
   *     ignored
   */
  public LinearRgb of(int pixel) {
    return new LinearRgb(light[pixel >> 16 & 0xff], light[pixel >> 8 & 0xff], light[pixel & 0xff]);
  }
}
