package lampwright.setup.adapting;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import lampwright.engine.light.Point;
import lampwright.engine.light.UnitVector;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;
import lampwright.setup.Light;

/**
 * Where a light may be moved to: on its line to its target by thirds of a stop, to the tape, or
 * straight down to where a stand carries it.
 */
final class Moves {

  /** A stop either way: farther and the light is another one. */
  private static final int MOST_THIRDS = 3;

  /** What one sets a stand to. */
  private static final double TAPE_M = 0.05;

  private Moves() {}

  static List<Point> of(Light light, Metres nearest) {
    Point target = light.target().at();
    double from = light.place().distanceTo(target).value();
    UnitVector away = UnitVector.between(target, light.place());
    Set<Point> places = new LinkedHashSet<>();
    for (int thirds = -MOST_THIRDS; thirds <= MOST_THIRDS; thirds++) {
      double wanted = from * new Stops(thirds / 3.0).times(-0.5).toFactor();
      double to = Math.floor(wanted / TAPE_M + 0.5) * TAPE_M;
      boolean differs = Math.abs(to - from) > TAPE_M / 2;
      Point place = to > 0 ? target.moved(away, to) : target;
      boolean nearer = to < from;
      if (differs && to > 0 && place.z() >= 0 && (!nearer || to >= nearest.value())) {
        places.add(place);
      }
    }
    return List.copyOf(places);
  }

  /** Straight down to a height. */
  static Point lowered(Light light, double heightM) {
    return new Point(light.place().x(), light.place().y(), heightM);
  }

  /** By how many degrees the light comes from another direction. */
  static double degreesAside(Light light, Point place) {
    Point target = light.target().at();
    return UnitVector.between(target, light.place())
        .angleTo(UnitVector.between(target, place))
        .value();
  }
}
