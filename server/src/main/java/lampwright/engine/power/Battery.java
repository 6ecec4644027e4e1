package lampwright.engine.power;

import lampwright.engine.Source;
import lampwright.engine.Working;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.WattHours;
import lampwright.engine.unit.WattSeconds;

/**
 * What a battery has for flashes. An upper bound: stand-by, age and cold (a fifth to two fifths
 * less at 0 °C) take their share (source trade-practice).
 *
 * @param capacity what it holds when full
 * @param efficiency share that reaches the flash tube, above 0 to 1; 0.5 to 0.8 is usual
 */
public record Battery(WattHours capacity, double efficiency) {

  /** Checks the share. */
  public Battery {
    MainsHead.requireShare("Efficiency", efficiency);
  }

  /**
   * Returns the flashes to a charge, {@code n = Wh 3600 η / E}, unrounded (source derived).
   *
   * @throws IllegalArgumentException where the flash has no energy
   */
  public double flashes(WattSeconds flash) {
    Bounds.requirePositive("Energy of a flash", flash.value(), "W·s");
    return capacity.toWattSeconds().value() * efficiency / flash.value();
  }

  /** Returns the flashes to a charge with their steps. */
  public Working flashesWorking(WattSeconds flash) {
    return Working.of(
        "flashes to a charge",
        flashes(flash),
        "",
        "n = 3600 W η / E",
        Source.DERIVED,
        Working.given("battery capacity", capacity.value(), "W·h"),
        Working.given("share that reaches the tube", efficiency, ""),
        Working.given("energy of a flash", flash.value(), "W·s"));
  }
}
