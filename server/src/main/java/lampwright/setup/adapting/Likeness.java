package lampwright.setup.adapting;

import java.util.Optional;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;
import lampwright.gear.Modifier;

/** How unlike another modifier makes a light, in stops-like units before the light's role. */
final class Likeness {

  /** A bare reflector's size, for comparing how soft a point and a box are. */
  private static final Degrees LEAST_SIZE = new Degrees(1);

  private static final double OTHER_KIND = 0.5;
  private static final double GRID_DIFFERS = 0.5;
  private static final double PER_DOUBLING_OF_SPREAD = 0.3;

  /** For a degree from which a light comes from another direction: 20° are as bad as a stop. */
  static final double PER_DEGREE = 0.05;

  private Likeness() {}

  /**
   * The cost of making a light with another modifier, or from another distance.
   *
   * @param from the distance in the setup
   * @param to the distance now
   */
  static double unlikeness(Modifier own, Metres from, Modifier other, Metres to, Weights weights) {
    double kind = own.kind() == other.kind() ? 0 : OTHER_KIND;
    double grid = own.grid() == other.grid() ? 0 : GRID_DIFFERS;
    double spread = PER_DOUBLING_OF_SPREAD * spreadDiffers(own.spread(), other.spread());
    return weights.softness() * Math.abs(softer(own, from, other, to)) + kind + grid + spread;
  }

  /** By how many doublings the other modifier looks larger from the target. */
  static double softer(Modifier own, Metres from, Modifier other, Metres to) {
    return doublings(own.face().angularSize(from), other.face().angularSize(to));
  }

  /** By how many doublings a size is larger than another, both taken to be a degree at least. */
  static double doublings(Degrees from, Degrees to) {
    double before = Math.max(LEAST_SIZE.value(), from.value());
    return Stops.ofRatio(Math.max(LEAST_SIZE.value(), to.value()) / before).value();
  }

  private static double spreadDiffers(Optional<Degrees> own, Optional<Degrees> other) {
    if (own.isEmpty() || other.isEmpty()) {
      return 0;
    }
    return Math.abs(Stops.ofRatio(other.get().value() / own.get().value()).value());
  }
}
