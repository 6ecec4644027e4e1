package lampwright.engine.beam;

import lampwright.engine.unit.Degrees;

/**
 * How a source's far-away intensity depends on the direction, as a share of the intensity on its
 * axis: 1 on the axis.
 */
public sealed interface Spread
    permits Even, Lobe, TabledLobe, Omnidirectional, CutSpread, CandelaTable {

  /**
   * Returns the intensity in a direction over that on the axis, 0 or more.
   *
   * @param cosine of the angle between direction and axis, -1 to 1
   * @param aroundRadians angle about the axis from the source's own up, clockwise as seen from
   *     behind the source, any finite number; spreads that are the same all around ignore it
   */
  double relativeAt(double cosine, double aroundRadians);

  /**
   * Returns the same for a way from the source, which needs no angle where the spread wants none.
   *
   * @param x to the source's right, in metres, likewise up y and before z
   * @param length of the way, above 0
   */
  default double relativeToward(double x, double y, double z, double length) {
    double cosine = Math.max(-1, Math.min(1, z / length));
    return relativeAt(cosine, isRound() ? 0 : StrictMath.atan2(x, y));
  }

  /**
   * Returns how far from the axis it has light, up to 180 degrees: beyond is less than a billionth
   * of the axis, which adds nothing that counts.
   */
  default Degrees reach() {
    return new Degrees(180);
  }

  /** Returns the same within 1e-5, made ready to be asked very often; to make it takes a while. */
  default Spread tabled() {
    return this;
  }

  /**
   * Asks whether the spread is the same all around its axis, so that the angle about it is idle.
   */
  boolean isRound();

  /**
   * Returns the integral of the relative intensity over all directions, in steradians: the flux is
   * the intensity on the axis times this. Energy is kept between two spreads of one head by equal
   * flux.
   */
  double solidAngleSr();
}
