package lampwright.engine.lens;

import java.util.Optional;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.MetresPerSecond;
import lampwright.engine.unit.Millimetres;
import lampwright.engine.unit.Seconds;

/**
 * What looks sharp under a stated circle of confusion: a convention, not a wall.
 *
 * @param near nearest sharp distance
 * @param far furthest sharp distance; empty for infinity
 * @param hyperfocal focused there, everything from half of it to infinity is sharp
 * @param circle the circle of confusion that this holds for
 */
public record DepthOfField(
    Metres near, Optional<Metres> far, Metres hyperfocal, Millimetres circle) {

  /** Asks whether a distance lies within. */
  public boolean contains(Metres distance) {
    return distance.compareTo(near) >= 0
        && far.map(limit -> distance.compareTo(limit) <= 0).orElse(true);
  }

  /** Returns the sharp span; empty for infinity. */
  public Optional<Metres> span() {
    return far.map(limit -> new Metres(limit.value() - near.value()));
  }

  /**
   * Returns how long a subject stays sharp while it moves along the axis; empty for ever.
   *
   * @param speed above 0
   */
  public Optional<Seconds> timeInside(MetresPerSecond speed) {
    Bounds.requirePositive("Speed", speed.value(), "m/s");
    return span().map(span -> new Seconds(span.value() / speed.value()));
  }
}
