package lampwright.engine.beam;

import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Degrees;

/**
 * A beam whose intensity is the cosine of the angle from its axis to a power, {@code cos^m}, and
 * nothing behind (source derived).
 *
 * @param exponent m, above 0: 1 is an even face (120 degrees at half peak), 4.07 a reflector of 65
 */
public record Lobe(double exponent) implements Spread {

  /** The trade's standard reflector, 65 degrees at half its peak (trade-practice). */
  public static final Degrees STANDARD_REFLECTOR = new Degrees(65);

  /** Checks the bound. */
  public Lobe {
    Bounds.requirePositive("Exponent of a lobe", exponent, "");
  }

  /**
   * Returns the lobe with so wide a full angle at half its peak, {@code m = ln 0.5 / ln cos(B/2)}.
   *
   * @param fullAngle above 0, below 180 degrees
   */
  public static Lobe ofBeam(Degrees fullAngle) {
    Bounds.requirePositive("Beam angle", fullAngle.value(), "°");
    if (fullAngle.value() >= 180) {
      throw new IllegalArgumentException(
          Bounds.subject("Beam angle", fullAngle.value(), "°")
              + " must be less than 180. Maybe it is a bare head?");
    }
    return new Lobe(
        StrictMath.log(0.5) / StrictMath.log(StrictMath.cos(fullAngle.toRadians() / 2)));
  }

  @Override
  public double relativeAt(double cosine, double aroundRadians) {
    return cosine <= 0 ? 0 : StrictMath.exp(exponent * StrictMath.log(cosine));
  }

  @Override
  public boolean isRound() {
    return true;
  }

  /** Returns {@code 2 pi / (m + 1)}. */
  @Override
  public double solidAngleSr() {
    return 2 * Math.PI / (exponent + 1);
  }
}
