package lampwright.engine.beam;

import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Stops;

/**
 * A beam whose intensity is the cosine of the angle from its axis to a power, {@code cos^m}, and
 * nothing behind (source derived).
 *
 * @param exponent m, above 0: 1 is an even face (120 degrees at half peak), 4.07 a reflector of 65
 */
public record Lobe(double exponent) implements Spread {

  /** The trade's standard reflector, 65 degrees at half its peak (trade-practice). */
  public static final Degrees STANDARD_REFLECTOR = new Degrees(65);

  private static final double FAINT = 1e-9;

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
  public Degrees reach() {
    return new Degrees(fullAngleAt(FAINT).value() / 2);
  }

  @Override
  public Spread tabled() {
    return new TabledLobe(this);
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

  /**
   * Returns the full angle within which the beam is at least so bright, {@code 2 acos(p^(1/m))}.
   *
   * @param level share of the intensity on the axis, above 0, up to 1
   */
  public Degrees fullAngleAt(double level) {
    Bounds.requirePositive("Level", level, "");
    Bounds.requireBetween("Level", level, "", 0, 1);
    return Degrees.ofRadians(2 * StrictMath.acos(StrictMath.exp(StrictMath.log(level) / exponent)));
  }

  /**
   * Returns the share of the flux within a cone about the axis, {@code 1 - cos^(m+1)}.
   *
   * @param halfAngle from the axis to the cone, 0 to 180 degrees; all of it from 90 on
   */
  public double enclosedShare(Degrees halfAngle) {
    Bounds.requireBetween("Half angle", halfAngle.value(), "°", 0, 180);
    double cosine = StrictMath.cos(halfAngle.toRadians());
    return 1 - relativeAt(cosine, 0) * Math.max(0, cosine);
  }

  /** Returns how much brighter the axis gets when the same flux goes into another lobe instead. */
  public Stops sameFluxGain(Lobe other) {
    return Stops.ofRatio((other.exponent + 1) / (exponent + 1));
  }
}
