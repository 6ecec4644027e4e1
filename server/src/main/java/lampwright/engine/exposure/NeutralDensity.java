package lampwright.engine.exposure;

import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Stops;

/**
 * Turns what is printed on grey filters into stops. Printed factors are nominal: "ND8" is sold as
 * three stops, its density of 0.9 is 2.99 (source trade-practice).
 */
public final class NeutralDensity {

  /** Logarithm of two to the base of ten: the density of one stop. */
  private static final double DENSITY_OF_A_STOP = 0.3010299956639812;

  private NeutralDensity() {}

  /**
   * Returns the loss of an optical density, {@code D / 0.30103}.
   *
   * @param density 0 or more
   */
  public static Stops ofOpticalDensity(double density) {
    Bounds.requireZeroOrMore("Optical density", density, "");
    return new Stops(density / DENSITY_OF_A_STOP);
  }

  /**
   * Returns the loss of a filter factor, {@code log2 f}: 64 is six stops.
   *
   * @param factor 1 or more
   */
  public static Stops ofFilterFactor(double factor) {
    Bounds.requireFinite("Filter factor", factor, "");
    if (factor < 1) {
      throw new IllegalArgumentException(
          Bounds.subject("Filter factor", factor, "") + " must be 1 or more.");
    }
    return Stops.ofRatio(factor);
  }
}
