package lampwright.setup.without;

import java.util.Optional;
import lampwright.engine.unit.Stops;

/**
 * A level before and after a light was turned, in stops from the shooting exposure.
 *
 * @param from absent where it was dark
 * @param to absent where it is dark
 */
public record Shift(Optional<Stops> from, Optional<Stops> to) {

  /** Half of a tenth, a meter's last digit: less does not show on one (source trade-practice). */
  private static final double LEAST_STOPS = 0.05;

  /** By how much it rose; absent where it is dark before or after. */
  public Optional<Stops> change() {
    return from.flatMap(before -> to.map(after -> after.minus(before)));
  }

  /** Asks whether a meter would show it. */
  public boolean isMeasurable() {
    return change()
        .map(change -> Math.abs(change.value()) >= LEAST_STOPS)
        .orElse(from.isPresent() != to.isPresent());
  }
}
