package lampwright.engine.beam;

import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Degrees;

/**
 * What stands before a source and lets only some directions through: it cuts light off and adds
 * none. On its axis it passes everything; what its walls take there is a loss apart.
 */
public sealed interface Opening {

  /**
   * Returns the share of the light that passes in a direction, 0 to 1.
   *
   * @param cosine of the angle between direction and axis, -1 to 1
   * @param aroundRadians angle about the axis, as {@link Spread#relativeAt} takes it
   */
  double passedAt(double cosine, double aroundRadians);

  /** Returns the same for a way, as {@link Spread#relativeToward} takes it. */
  default double passedToward(double x, double y, double z, double length) {
    double cosine = Math.max(-1, Math.min(1, z / length));
    return passedAt(cosine, isRound() ? 0 : StrictMath.atan2(x, y));
  }

  /** Asks whether it cuts the same all around its axis. */
  boolean isRound();

  /** Returns the largest angle from the axis at which anything passes, up to 180 degrees. */
  Degrees widest();

  /**
   * A grid of black-walled square cells, upright with the source: {@code 1 - q tan} along each of
   * the two directions of its walls (source derived). A maker's "20 degrees" is a name, neither its
   * cut-off nor its half-peak angle (trade-practice).
   *
   * @param depthToWidth depth of a cell over its width, q, 0.05 to 50
   */
  record Grid(double depthToWidth) implements Opening {

    /** Checks the bound. */
    public Grid {
      Bounds.requireBetween("Depth of a grid over its cell", depthToWidth, "", 0.05, 50);
    }

    /** Returns the full angle, along the walls, at which nothing passes: {@code 2 atan(1/q)}. */
    public Degrees cutOffFullAngle() {
      return Degrees.ofRadians(2 * StrictMath.atan(1 / depthToWidth));
    }

    @Override
    public double passedAt(double cosine, double aroundRadians) {
      if (cosine <= 0) {
        return 0;
      }
      double tangent = Math.sqrt(Math.max(0, 1 - cosine * cosine)) / cosine;
      double up = Math.abs(tangent * StrictMath.cos(aroundRadians));
      double aside = Math.abs(tangent * StrictMath.sin(aroundRadians));
      return Math.max(0, 1 - depthToWidth * up) * Math.max(0, 1 - depthToWidth * aside);
    }

    @Override
    public double passedToward(double x, double y, double z, double length) {
      return z <= 0
          ? 0
          : Math.max(0, 1 - depthToWidth * Math.abs(y / z))
              * Math.max(0, 1 - depthToWidth * Math.abs(x / z));
    }

    @Override
    public boolean isRound() {
      return false;
    }

    /** Returns the cut-off towards the corners of the cells, {@code atan(sqrt 2 / q)}. */
    @Override
    public Degrees widest() {
      return Degrees.ofRadians(StrictMath.atan(Math.sqrt(2) / depthToWidth));
    }
  }

  /**
   * A tube that cuts the beam off all around, softly: full light up to half a penumbra inside the
   * cut-off, none from half a penumbra outside, falling evenly with the angle between. The even
   * fall is a simplification without a source; the half-peak angle of an even beam is the cut-off.
   *
   * @param cutOff from the axis to the middle of the penumbra, above 0, up to 90 degrees
   * @param penumbra width of the soft edge, 0 to twice the cut-off
   */
  record Snoot(Degrees cutOff, Degrees penumbra) implements Opening {

    /** Checks the bounds. */
    public Snoot {
      Bounds.requirePositive("Cut-off of a snoot", cutOff.value(), "°");
      Bounds.requireBetween("Cut-off of a snoot", cutOff.value(), "°", 0, 90);
      Bounds.requireBetween("Penumbra of a snoot", penumbra.value(), "°", 0, 2 * cutOff.value());
    }

    @Override
    public double passedAt(double cosine, double aroundRadians) {
      double angle = StrictMath.acos(Math.max(-1, Math.min(1, cosine)));
      double inside = cutOff.toRadians() + penumbra.toRadians() / 2 - angle;
      if (inside <= 0) {
        return 0;
      }
      return inside >= penumbra.toRadians() ? 1 : inside / penumbra.toRadians();
    }

    @Override
    public boolean isRound() {
      return true;
    }

    @Override
    public Degrees widest() {
      return new Degrees(Math.min(180, cutOff.value() + penumbra.value() / 2));
    }
  }
}
