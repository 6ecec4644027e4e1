package lampwright.engine.power;

import lampwright.engine.Source;
import lampwright.engine.Working;
import lampwright.engine.unit.Microfarads;
import lampwright.engine.unit.Volts;
import lampwright.engine.unit.WattSeconds;

/**
 * The capacitors of a head at a voltage. What they hold stays there after the plug is drawn.
 *
 * @param capacitance of all together
 * @param voltage they are charged to
 */
public record Capacitors(Microfarads capacitance, Volts voltage) {

  /** Returns the energy they hold, {@code E = C V² / 2} (source derived). */
  public WattSeconds stored() {
    double volts = voltage.value();
    return new WattSeconds(0.5 * capacitance.value() * 1e-6 * volts * volts);
  }

  /** Returns the energy they hold with its steps. */
  public Working storedWorking() {
    return Working.of(
        "energy in the capacitors",
        stored().value(),
        "W·s",
        "E = C V² / 2",
        Source.DERIVED,
        Working.given("capacitance", capacitance.value(), "µF"),
        Working.given("voltage", voltage.value(), "V"));
  }
}
