package lampwright.engine.beam;

/**
 * How a source's far-away intensity depends on the direction, as a share of the intensity on its
 * axis: 1 on the axis.
 */
public sealed interface Spread permits Even, Lobe, Omnidirectional, CutSpread, CandelaTable {

  /**
   * Returns the intensity in a direction over that on the axis, 0 or more.
   *
   * @param cosine of the angle between direction and axis, -1 to 1
   * @param aroundRadians angle about the axis from the source's own up, clockwise as seen from
   *     behind the source, any finite number; spreads that are the same all around ignore it
   */
  double relativeAt(double cosine, double aroundRadians);

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
