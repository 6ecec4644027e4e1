package lampwright.engine.power;

import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.MetresPerSecond;

/**
 * A wind with its gusts. Force goes with the square of the speed, so gusts decide.
 *
 * @param mean the mean speed, as forecasts and the Beaufort scale give it
 * @param gustFactor gusts over the mean, 1 to 5; 1.5 to 2 is usual (from memory)
 * @param airKgPerM3 density of the air, above 0
 */
public record Wind(MetresPerSecond mean, double gustFactor, double airKgPerM3) {

  /** Density at 15 °C at sea level, from memory; colder air is a little heavier. */
  public static final double USUAL_AIR_KG_PER_M3 = 1.225;

  /** Checks factor and density. */
  public Wind {
    Bounds.requireBetween("Gust factor", gustFactor, "", 1, 5);
    Bounds.requirePositive("Density of air", airKgPerM3, "kg/m³");
  }

  /** Returns a wind with gusts in air at sea level. */
  public static Wind of(MetresPerSecond mean, double gustFactor) {
    return new Wind(mean, gustFactor, USUAL_AIR_KG_PER_M3);
  }

  /** Returns a wind without gusts in air at sea level. */
  public static Wind steady(MetresPerSecond speed) {
    return of(speed, 1);
  }

  /** Returns the speed of the gusts. */
  public MetresPerSecond gust() {
    return new MetresPerSecond(mean.value() * gustFactor);
  }

  /** Returns the force number of the mean. */
  public Beaufort force() {
    return Beaufort.of(mean);
  }

  /** Returns the pressure of a gust before it is shaped, {@code ρ v² / 2}, in pascals. */
  public double pressurePa() {
    double gust = gust().value();
    return 0.5 * airKgPerM3 * gust * gust;
  }
}
