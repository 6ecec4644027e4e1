package lampwright.setup.adapting;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A camera setting with a way to make each light.
 *
 * @param camera index of the camera among those that may be used
 */
record AdaptationPlan(
    int camera, CameraChoice.Setting setting, CameraCost cameraCost, LightsPlan lights) {

  /** In the setup's order; empty for a light that is given up. */
  List<Optional<LightRow.Lit>> lit() {
    return lights.lit();
  }

  /** What it costs, without what lights outside of their limits count in the search. */
  double cost() {
    return cameraCost.sum() + lights.cost();
  }

  double cost(Matter matter) {
    return cameraCost.cost(matter) + lights.costs().getOrDefault(matter, 0.0);
  }

  /** The costs by matter, those that cost something. */
  Map<Matter, Double> costs() {
    Map<Matter, Double> costs = new EnumMap<>(Matter.class);
    for (Matter matter : Matter.values()) {
      double cost = cost(matter);
      if (cost != 0) {
        costs.put(matter, cost);
      }
    }
    return costs;
  }

  int outside() {
    return lights.outside();
  }

  int unlit() {
    return lights.unlit();
  }

  double waitS() {
    return lights.waitS();
  }
}
