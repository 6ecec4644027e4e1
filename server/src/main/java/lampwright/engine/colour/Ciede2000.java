package lampwright.engine.colour;

/** The CIEDE2000 colour difference with its three weights at one (source ciede2000). */
final class Ciede2000 {

  /** 25^7, where chroma begins to count fully. */
  private static final double CHROMA_7 = 6103515625.0;

  /**
   * Hues this much more than opposite still count as opposite; atan2 may differ in its last bit.
   */
  private static final double OPPOSITE = 180 + 1e-9;

  private Ciede2000() {}

  static double difference(Lab one, Lab other) {
    double meanChroma = (one.chroma() + other.chroma()) / 2;
    double stretch = 1 + 0.5 * (1 - chromaShare(meanChroma));
    double a1 = one.a() * stretch;
    double a2 = other.a() * stretch;
    double c1 = Math.sqrt(a1 * a1 + one.b() * one.b());
    double c2 = Math.sqrt(a2 * a2 + other.b() * other.b());
    double h1 = Lab.hueDegrees(a1, one.b());
    double h2 = Lab.hueDegrees(a2, other.b());

    boolean grey = c1 * c2 == 0;
    double apart = h2 - h1;
    double turn = grey ? 0 : turn(apart);
    double meanHue = grey ? h1 + h2 : meanHue(h1, h2);
    double c = (c1 + c2) / 2;
    double l = (one.lightness() + other.lightness()) / 2;

    double t =
        1
            - 0.17 * cos(meanHue - 30)
            + 0.24 * cos(2 * meanHue)
            + 0.32 * cos(3 * meanHue + 6)
            - 0.20 * cos(4 * meanHue - 63);
    double fromMiddle = (l - 50) * (l - 50);
    double scaleL = 1 + 0.015 * fromMiddle / Math.sqrt(20 + fromMiddle);
    double scaleC = 1 + 0.045 * c;
    double scaleH = 1 + 0.015 * c * t;
    double fromBlue = (meanHue - 275) / 25;
    double rotation = -2 * chromaShare(c) * sin(2 * 30 * StrictMath.exp(-(fromBlue * fromBlue)));

    double dl = (other.lightness() - one.lightness()) / scaleL;
    double dc = (c2 - c1) / scaleC;
    double dh = 2 * Math.sqrt(c1 * c2) * sin(turn / 2) / scaleH;
    // The rotation's cross term may push equal colours a rounding error below zero.
    return Math.sqrt(Math.max(0, dl * dl + dc * dc + dh * dh + rotation * dc * dh));
  }

  private static double turn(double apart) {
    if (Math.abs(apart) <= OPPOSITE) {
      return apart;
    }
    return apart > 0 ? apart - 360 : apart + 360;
  }

  private static double meanHue(double h1, double h2) {
    double sum = h1 + h2;
    if (Math.abs(h1 - h2) <= OPPOSITE) {
      return sum / 2;
    }
    return sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
  }

  /** Returns √(C^7 / (C^7 + 25^7)). */
  private static double chromaShare(double chroma) {
    double squared = chroma * chroma;
    double seventh = squared * squared * squared * chroma;
    return Math.sqrt(seventh / (seventh + CHROMA_7));
  }

  private static double sin(double degrees) {
    return StrictMath.sin(degrees * (Math.PI / 180));
  }

  private static double cos(double degrees) {
    return StrictMath.cos(degrees * (Math.PI / 180));
  }
}
