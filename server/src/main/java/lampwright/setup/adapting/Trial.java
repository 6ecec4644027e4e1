package lampwright.setup.adapting;

import java.util.Optional;
import lampwright.engine.light.Point;
import lampwright.engine.unit.Stops;
import lampwright.setup.LightId;

/**
 * A change to one light that a remedy tries out.
 *
 * @param place where it is tried; absent for where it may stand anyhow
 * @param dimmed by a scrim or a grey gel in front of it
 */
record Trial(Optional<LightId> light, Optional<Point> place, Stops dimmed) {

  static final Trial NONE = new Trial(Optional.empty(), Optional.empty(), Stops.ZERO);

  static Trial at(LightId light, Point place) {
    return new Trial(Optional.of(light), Optional.of(place), Stops.ZERO);
  }

  static Trial dimmed(LightId light, Stops by) {
    return new Trial(Optional.of(light), Optional.empty(), by);
  }

  boolean isOf(LightId id) {
    return light.filter(id::equals).isPresent();
  }
}
