package lampwright.setup.adapting;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lampwright.gear.Body;
import lampwright.gear.Lens;
import lampwright.gear.Modifier;
import lampwright.gear.Pack;
import lampwright.gear.Stand;

/** Adds up what must be carried for a plan. */
final class Carrying {

  private double kg;
  private final Set<String> withoutWeight = new LinkedHashSet<>();

  private Carrying() {}

  static Adaptation.Carried of(
      AdaptationProblem problem, AdaptationPlan plan, List<Optional<Stand>> stands) {
    Carrying carrying = new Carrying();
    Set<Integer> packs = new HashSet<>();
    for (Optional<LightRow.Lit> lit : plan.lit()) {
      lit.ifPresent(
          made -> {
            carrying.add(made.making());
            made.making()
                .onPack()
                .filter(pack -> packs.add(pack.index()))
                .map(pack -> problem.kit().packs().get(pack.index()).pack())
                .ifPresent(carrying::add);
          });
    }
    if (!problem.kit().stands().isEmpty()) {
      stands.forEach(
          stand -> stand.ifPresent(s -> carrying.add(s.name(), s.weightKg(), 1, s.ballastKg())));
    }
    CameraChoice camera = problem.cameras().get(plan.camera());
    camera.body().ifPresent((Body body) -> carrying.add(body.name(), body.weightKg(), 1, 0));
    camera.lens().ifPresent((Lens lens) -> carrying.add(lens.name(), lens.weightKg(), 1, 0));
    return new Adaptation.Carried(carrying.kg, List.copyOf(carrying.withoutWeight));
  }

  private void add(Making making) {
    add(making.head().name(), making.head().weightKg(), making.heads(), 0);
    Modifier modifier = making.modifier();
    if (!modifier.equals(Modifier.standardReflector())) {
      add(modifier.name(), modifier.weightKg(), modifier.piecesFor(making.heads()), 0);
    }
  }

  private void add(Pack pack) {
    add(pack.name(), pack.weightKg(), 1, 0);
  }

  private void add(String name, Optional<Double> each, int count, double more) {
    if (each.isEmpty()) {
      withoutWeight.add(name);
    }
    kg += count * each.orElse(0.0) + more;
  }
}
