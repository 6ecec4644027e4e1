package lampwright.engine.power;

import java.util.Optional;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;
import lampwright.engine.unit.WattSeconds;

/**
 * What one head's flashes cost: energy, time to recycle, flashes to a charge. For a charger of
 * constant power; cold, age and stand-by take their share, so counts are upper bounds.
 *
 * @param fullEnergy energy of a flash at full power
 * @param fullRecycle time to recycle after a flash at full power
 * @param recycleFloor the head is never faster than this
 * @param fullFlashesPerCharge flashes at full power to a battery charge; empty for mains
 */
public record FlashBudget(
    WattSeconds fullEnergy,
    Seconds fullRecycle,
    Seconds recycleFloor,
    Optional<Double> fullFlashesPerCharge) {

  /** Checks the count. */
  public FlashBudget {
    fullFlashesPerCharge.ifPresent(
        count -> Bounds.requireZeroOrMore("Flashes per charge", count, ""));
  }

  /** Returns the energy of a flash so many stops down, {@code P 2^-s}. */
  public WattSeconds energyAt(Stops stopsDown) {
    return fullEnergy.down(stopsDown);
  }

  /** Returns the time to recycle, {@code T 2^-s} but not below the floor. */
  public Seconds recycleAt(Stops stopsDown) {
    double scaled = fullRecycle.value() * stopsDown.negated().toFactor();
    return new Seconds(Math.max(scaled, recycleFloor.value()));
  }

  /** Returns the flashes to a charge, {@code n 2^s}; empty for mains. */
  public Optional<Double> flashesPerChargeAt(Stops stopsDown) {
    return fullFlashesPerCharge.map(count -> count * stopsDown.toFactor());
  }

  /**
   * Returns the greatest pace in frames a second; the slowest head of a setup decides.
   *
   * @throws IllegalArgumentException where the head needs no time at all
   */
  public double framesPerSecondAt(Stops stopsDown) {
    double recycle = recycleAt(stopsDown).value();
    Bounds.requirePositive("Recycle time", recycle, "s");
    return 1 / recycle;
  }
}
