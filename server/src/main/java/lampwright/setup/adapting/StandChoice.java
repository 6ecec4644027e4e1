package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lampwright.gear.Several;
import lampwright.gear.Stand;

/**
 * Gives each light the lowest stand that reaches, the lowest light first. Where {@link Supplies}
 * found that the stands suffice, this never runs out.
 */
final class StandChoice {

  private StandChoice() {}

  /** The stands in the setup's order; a light's own where the kit names no stands. */
  static List<Optional<Stand>> of(AdaptationProblem problem, AdaptationPlan plan) {
    List<Optional<Stand>> chosen = new ArrayList<>();
    boolean none = problem.kit().stands().isEmpty();
    problem
        .setup()
        .lights()
        .forEach(light -> chosen.add(none ? light.stand() : Optional.<Stand>empty()));
    if (none) {
      return chosen;
    }
    List<Stand> left = new ArrayList<>();
    for (Several<Stand> several : problem.kit().stands()) {
      for (int i = 0; i < several.count(); i++) {
        left.add(several.item());
      }
    }
    left.sort(Comparator.comparingDouble(stand -> stand.highest().value()));
    IntStream.range(0, chosen.size())
        .filter(i -> plan.lit().get(i).isPresent())
        .boxed()
        .sorted(Comparator.comparingDouble(i -> heightM(plan, i)))
        .filter(i -> Supplies.needsStandAt(heightM(plan, i)))
        .forEach(i -> chosen.set(i, take(left, heightM(plan, i))));
    return chosen;
  }

  private static double heightM(AdaptationPlan plan, int light) {
    return plan.lit().get(light).map(lit -> lit.making().place().z()).orElse(0.0);
  }

  private static Optional<Stand> take(List<Stand> left, double heightM) {
    Optional<Stand> found =
        left.stream().filter(stand -> stand.highest().value() >= heightM).findFirst();
    found.ifPresent(left::remove);
    return found;
  }
}
