package lampwright.learning.drill;

import java.util.List;
import java.util.Optional;
import lampwright.engine.light.LightAtTarget;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;
import lampwright.setup.Light;
import lampwright.setup.figures.LightFigures;

/**
 * A light of a setup as a drill lets it stand: at a distance that is read with one decimal, its
 * level known.
 *
 * @param distanceM from its target, as shown
 */
record Standing(LightFigures figures, double distanceM) {

  /** Nearer a stand is in the way, farther it is another picture. */
  private static final double NEAREST_M = 0.5;

  private static final double FARTHEST_M = 12;

  /** So near must the rule of the trade come to the engine, in stops. */
  private static final double AGREES = 0.1;

  static List<Standing> in(Material material) {
    return material.figures().lights().stream()
        .filter(figures -> figures.level().isPresent() && figures.atTarget().geometry() > 0)
        .map(figures -> new Standing(figures, Fair.shown(figures.distance().value(), 1)))
        .filter(standing -> isPossible(standing.distanceM()))
        .toList();
  }

  static boolean isPossible(double distanceM) {
    return distanceM >= NEAREST_M && distanceM <= FARTHEST_M;
  }

  Light light() {
    return figures.light();
  }

  /**
   * By how many stops it loses when it goes to a distance along its line, by its true shape; empty
   * where the inverse square law would say something else, as it does close to a large face.
   */
  Optional<Stops> loses(double toM) {
    LightAtTarget now = figures.atTarget();
    double from = now.withDistance(new Metres(distanceM)).geometry();
    double to = now.withDistance(new Metres(toM)).geometry();
    if (from <= 0 || to <= 0) {
      return Optional.empty();
    }
    Stops lost = Stops.ofRatio(from / to);
    double byRule = 2 * Stops.ofRatio(toM / distanceM).value();
    return Math.abs(lost.value() - byRule) <= AGREES ? Optional.of(lost) : Optional.empty();
  }
}
