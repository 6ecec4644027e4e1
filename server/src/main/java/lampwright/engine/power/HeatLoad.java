package lampwright.engine.power;

import lampwright.engine.Source;
import lampwright.engine.Working;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.WattSeconds;
import lampwright.engine.unit.Watts;

/**
 * What a head must get rid of as heat, on average. Makers give a limit in flashes a minute, which
 * goes before any figure computed here.
 *
 * @param flash energy of one flash
 * @param flashesPerMinute the pace, 0 or more
 * @param modelling what the modelling lamp draws
 */
public record HeatLoad(WattSeconds flash, double flashesPerMinute, Watts modelling) {

  /** Checks the pace. */
  public HeatLoad {
    Bounds.requireZeroOrMore("Pace", flashesPerMinute, "flashes/min");
  }

  /** Returns the average heat, {@code P = E n / 60 + lamp} (source derived). */
  public Watts average() {
    return new Watts(flash.value() * flashesPerMinute / 60 + modelling.value());
  }

  /** Returns whether the pace keeps the maker's limit, in flashes a minute. */
  public boolean isWithin(double limitPerMinute) {
    Bounds.requirePositive("Maker's limit", limitPerMinute, "flashes/min");
    return flashesPerMinute <= limitPerMinute;
  }

  /** Returns the average heat with its steps. */
  public Working averageWorking() {
    return Working.of(
        "average heat",
        average().value(),
        "W",
        "P = E n / 60 + lamp",
        Source.DERIVED,
        Working.given("energy of a flash", flash.value(), "W·s"),
        Working.given("pace", flashesPerMinute, "flashes/min"),
        Working.given("modelling lamp", modelling.value(), "W"));
  }
}
