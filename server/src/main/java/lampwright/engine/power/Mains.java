package lampwright.engine.power;

import lampwright.engine.unit.Amperes;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.VoltAmperes;
import lampwright.engine.unit.Volts;
import lampwright.engine.unit.Watts;

/**
 * A supply and what is lost on it to chargers that draw in pulses.
 *
 * @param voltage its effective voltage, above 0: 230 V, 120 V, 100 V
 * @param powerFactor above 0 to 1; 0.55 to 0.7 for chargers without correction (source
 *     trade-practice)
 */
public record Mains(Volts voltage, double powerFactor) {

  /** Checks both. */
  public Mains {
    Bounds.requirePositive("Voltage", voltage.value(), "V");
    MainsHead.requireShare("Power factor", powerFactor);
  }

  /** Returns the current of such a load, {@code I = P / (V pf)} (source derived). */
  public Amperes current(Watts load) {
    return new Amperes(load.value() / (voltage.value() * powerFactor));
  }

  /** Returns the load that draws such a current, {@code P = I V pf}. */
  public Watts load(Amperes current) {
    return new Watts(current.value() * voltage.value() * powerFactor);
  }

  /**
   * Returns the generator for such a load, {@code S = P margin / pf} (source trade-practice).
   *
   * @param margin 1 or more; 1.5 to 2 is usual, for inverter generators only
   */
  public VoltAmperes generator(Watts load, double margin) {
    Bounds.requireBetween("Margin", margin, "", 1, 10);
    return new VoltAmperes(load.value() / powerFactor * margin);
  }
}
