package lampwright.engine.exposure;

import lampwright.engine.unit.Stops;

/**
 * How sure figures are and what the eye sees, as starting values that a studio may change. All are
 * common practice without a source (trade-practice). Independent errors add in quadrature ({@link
 * Stops#inQuadrature}); show one decimal of a stop, never two.
 */
public enum Tolerance {
  /** A hand meter repeats to this, and shows steps of it. */
  METER_REPEATABILITY(0.1),
  /** From flash to flash, to budget for. */
  FLASH_CONSISTENCY(0.2),
  /** A head's dial against its true output over its range. */
  DIAL_ACCURACY(0.3),
  /** A lens closing down to the same aperture again. */
  APERTURE_REPEATABILITY(0.2),
  /** Just visible side by side over a whole picture. */
  VISIBLE_SIDE_BY_SIDE(1.0 / 3),
  /** Predicted from one reading and geometry. */
  GEOMETRIC_PREDICTION(0.3),
  /** The same, nearer than one diagonal of the source. */
  GEOMETRIC_PREDICTION_CLOSE(0.5),
  /** Predicted from watt seconds and a modifier's name only: show it as a range. */
  ENERGY_PREDICTION(1);

  private final double stops;

  Tolerance(double stops) {
    this.stops = stops;
  }

  /** Returns the tolerance, either way. */
  public Stops toStops() {
    return new Stops(stops);
  }
}
