package lampwright.engine.power;

import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Kilograms;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.NewtonMetres;

/**
 * The feet of a stand, evenly on a circle around its column, on firm level ground.
 *
 * @param count three or more
 * @param circle radius of the circle, above 0
 */
public record Legs(int count, Metres circle) {

  /** Weight of a kilogram in newtons, by definition. */
  static final double GRAVITY_N_PER_KG = 9.80665;

  /** Checks both. */
  public Legs {
    Bounds.requireBetween("Legs", count, "", 3, 100);
    Bounds.requirePositive("Radius of the legs' circle", circle.value(), "m");
  }

  /**
   * Returns the distance from the column to the nearest line between two feet, over which it goes:
   * {@code r = R cos(π / n)}, half the circle for three legs (source derived).
   */
  public Metres tippingRadius() {
    return circle.times(StrictMath.cos(Math.PI / count));
  }

  /** Returns the moment that such a mass holds, {@code m g r}, its centre over the column. */
  public NewtonMetres holding(Kilograms mass) {
    return new NewtonMetres(mass.value() * GRAVITY_N_PER_KG * tippingRadius().value());
  }

  /** Returns the mass in all that holds such a moment so many times over, {@code SF M / (g r)}. */
  public Kilograms massAgainst(NewtonMetres moment, double safetyFactor) {
    Bounds.requireBetween("Safety factor", safetyFactor, "", 1, 10);
    return new Kilograms(
        safetyFactor * moment.value() / (GRAVITY_N_PER_KG * tippingRadius().value()));
  }
}
