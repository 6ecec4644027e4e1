package lampwright.engine.power;

import lampwright.engine.Source;
import lampwright.engine.Working;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.WattSeconds;
import lampwright.engine.unit.Watts;

/**
 * A head on the mains as it is set: what it draws while it charges, and all the time.
 *
 * @param name what the photographer calls it
 * @param flash energy of one flash
 * @param recycle time it charges after a flash, above 0
 * @param efficiency share of what it draws that reaches the capacitors, above 0 to 1; about 0.8
 * @param modelling what its modelling lamp draws
 */
public record MainsHead(
    String name, WattSeconds flash, Seconds recycle, double efficiency, Watts modelling) {

  /** Checks the time and the share. */
  public MainsHead {
    Bounds.requirePositive("Recycle time", recycle.value(), "s");
    requireShare("Efficiency", efficiency);
  }

  /** Returns the power drawn while it charges, {@code P = E / (T η)} (source derived). */
  public Watts charging() {
    return new Watts(flash.value() / (recycle.value() * efficiency));
  }

  /** Returns the power drawn while it charges, with its steps. */
  public Working chargingWorking() {
    return Working.of(
        "charging power of " + name,
        charging().value(),
        "W",
        "P = E / (T η)",
        Source.DERIVED,
        Working.given("energy of a flash", flash.value(), "W·s"),
        Working.given("recycle time", recycle.value(), "s"),
        Working.given("efficiency", efficiency, ""));
  }

  static void requireShare(String name, double share) {
    Bounds.requirePositive(name, share, "");
    Bounds.requireBetween(name, share, "", 0, 1);
  }
}
