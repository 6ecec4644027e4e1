package lampwright.setup.adapting;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A way to make each light at one exposure, whatever camera setting asks for it.
 *
 * @param lit in the setup's order; empty for a light that is given up
 * @param costs by matter, weighted, those that cost something
 * @param cost their sum
 * @param outside how many lights are outside of their limits
 * @param unlit how many lights are left out
 * @param waitS the longest wait from frame to frame, of heads that are on no pack
 */
record LightsPlan(
    List<Optional<LightRow.Lit>> lit,
    Map<Matter, Double> costs,
    double cost,
    int outside,
    int unlit,
    double waitS) {

  static LightsPlan of(AdaptationProblem problem, List<Optional<LightRow.Lit>> lit) {
    Map<Matter, Double> costs = new EnumMap<>(Matter.class);
    Weights weights = problem.weights();
    int outside = 0;
    int unlit = 0;
    double waitS = 0;
    for (int i = 0; i < lit.size(); i++) {
      LightRow.LightProblem light = problem.lights().get(i);
      if (lit.get(i).isEmpty()) {
        add(costs, Matter.LEVELS, light.role() * weights.givenUp());
        outside += light.mayGiveUp() ? 0 : 1;
        unlit++;
        continue;
      }
      LightRow.Lit made = lit.get(i).get();
      addLight(costs, light, made);
      outside += light.isOutside(made.miss()) ? 1 : 0;
      waitS = Math.max(waitS, made.making().dial().waitS(made.step()));
    }
    add(costs, Matter.PACE, weights.pacePerSecond() * waitS);
    double cost = costs.values().stream().mapToDouble(Double::doubleValue).sum();
    return new LightsPlan(lit, costs, cost, outside, unlit, waitS);
  }

  private static void addLight(
      Map<Matter, Double> costs, LightRow.LightProblem light, LightRow.Lit made) {
    Making making = made.making();
    Weights weights = light.weights();
    double touched = light.isUntouched(making, made.step()) ? 0 : weights.touch();
    add(costs, Matter.LEVELS, light.role() * Math.abs(made.miss()));
    add(costs, Matter.EVENNESS, weights.evenness() * light.role() * made.edge());
    add(costs, Matter.SHAPE, making.costs().shape());
    add(costs, Matter.COLOUR, making.costs().colour());
    add(costs, Matter.CARRYING, making.costs().carrying());
    add(costs, Matter.HANDLING, making.costs().handling() + touched);
    making.onPack().ifPresent(pack -> add(costs, Matter.PACE, pack.costOfStep().get(made.step())));
  }

  private static void add(Map<Matter, Double> costs, Matter matter, double cost) {
    if (cost != 0) {
      costs.merge(matter, cost, Double::sum);
    }
  }
}
