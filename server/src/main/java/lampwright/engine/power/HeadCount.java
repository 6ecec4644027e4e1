package lampwright.engine.power;

import lampwright.engine.unit.BaseTwo;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Stops;

/** More heads, or more flashes of one head, for one light. */
public final class HeadCount {

  /** Rounding of doubles: a shortfall of log2(3) asks for three, not for four. */
  private static final double ROUNDING = 1e-9;

  private HeadCount() {}

  /** Returns what so many equal heads give over one, {@code log2 n}: 2 are +1, 3 are +1.58. */
  public static Stops stopsOf(int equalHeads) {
    Bounds.requirePositive("Heads", equalHeads, "");
    return Stops.ofRatio(equalHeads);
  }

  /**
   * Returns the equal heads, or flashes in the dark on a subject that keeps still, that make up a
   * shortfall: {@code ceil(2^x)}, at least one. Ambient adds up over an open shutter, and what
   * moves prints each time.
   *
   * @param shortfall up to 30 stops
   */
  public static int neededFor(Stops shortfall) {
    Bounds.requireBetween("Shortfall", shortfall.value(), "stops", -1000, 30);
    return (int) Math.max(1, Math.ceil(BaseTwo.power(shortfall.value()) * (1 - ROUNDING)));
  }
}
