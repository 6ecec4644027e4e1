package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.unit.Metres;
import lampwright.gear.Kit;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.figures.LightFigures;

/** The lights that a plan does not make near enough, and what to say of them. */
final class Shortage {

  private final Trials trials;
  private final AdaptationProblem problem;
  private final AdaptationPlan plan;

  Shortage(Trials trials) {
    this.trials = trials;
    this.problem = trials.problem();
    this.plan = trials.plan();
  }

  /** The lights that no head is left for and that may not be left out, in the setup's order. */
  List<LightId> unlit() {
    List<LightId> unlit = new ArrayList<>();
    for (int i = 0; i < plan.lit().size(); i++) {
      if (isUnlit(i)) {
        unlit.add(id(i));
      }
    }
    return unlit;
  }

  private boolean isUnlit(int i) {
    return plan.lit().get(i).isEmpty() && !problem.lights().get(i).mayGiveUp();
  }

  private boolean isShort(LightRow.Lit lit) {
    return Math.abs(lit.miss()) > problem.wishes().limits().madeWithin().value() + 1e-9;
  }

  /** Asks whether every light that may not be left out is made near enough. */
  boolean isNone() {
    return unlit().isEmpty()
        && plan.lit().stream().noneMatch(lit -> lit.filter(this::isShort).isPresent());
  }

  private LightId id(int i) {
    return problem.setup().lights().get(i).id();
  }

  /** Why they are not, one sentence each. */
  List<Said> reasons() {
    List<Said> reasons = new ArrayList<>();
    for (int i = 0; i < plan.lit().size(); i++) {
      ofLight(i, reasons);
    }
    if (reasons.isEmpty() && plan.lit().stream().allMatch(Optional::isEmpty)) {
      reasons.add(Said.of("adapting.short.allLeftOut"));
    }
    int count = problem.kit().headCount();
    int lights = problem.setup().lights().size();
    if (count < lights && !unlit().isEmpty()) {
      reasons.add(
          Said.counted(
              "adapting.short.heads",
              count,
              Said.counted("adapting.short.lights", lights).asFilling()));
    }
    return reasons;
  }

  private void ofLight(int i, List<Said> reasons) {
    if (isUnlit(i)) {
      if (!problem.refusals(i).isEmpty()) {
        reasons.addAll(problem.refusals(i));
      } else if (problem.kit().headCount() >= problem.setup().lights().size()) {
        reasons.add(Said.of("adapting.short.noneNear", Filling.text(id(i))));
      } else {
        reasons.add(Said.of("adapting.short.noHeadLeft", Filling.text(id(i))));
      }
    }
    plan.lit()
        .get(i)
        .filter(this::isShort)
        .ifPresent(
            lit ->
                reasons.add(
                    Said.of(
                        lit.miss() < 0 ? "adapting.short.tooDark" : "adapting.short.tooBright",
                        Filling.text(id(i)),
                        Filling.stops(Math.abs(lit.miss())),
                        Filling.text(lit.making().head().name()))));
  }

  /** What would help, smallest change first. */
  List<Remedy> remedies(List<Remedy> ofLevels) {
    List<Remedy> remedies = new ArrayList<>(ofLevels);
    for (int i = 0; i < plan.lit().size(); i++) {
      if (isUnlit(i)) {
        ofUnlit(i, remedies);
      }
    }
    return remedies;
  }

  private void ofUnlit(int i, List<Remedy> remedies) {
    LightId id = id(i);
    LightFigures light = problem.original().lights().get(i);
    if (light.level().isEmpty()) {
      remedies.add(
          new Remedy(
              Remedy.Kind.KNOW_ITS_LEVEL,
              Optional.of(id),
              Said.of("adapting.remedy.knowItsLevel", Filling.text(id)),
              Optional.empty()));
      return;
    }
    double height = light.light().place().z();
    ofLowering(i, remedies);
    if (helps(KitChange.withStand(trials.kit(), new Metres(Math.max(0.5, height))))
        && !trials.kit().stands().isEmpty()) {
      remedies.add(
          new Remedy(
              Remedy.Kind.OTHER_STAND,
              Optional.of(id),
              Said.of("adapting.remedy.oneMoreStand", Filling.length(height, 1), Filling.text(id)),
              Optional.empty()));
    } else if (helps(KitChange.withHeads(trials.kit(), light.light().head(), 1))) {
      remedies.add(
          new Remedy(
              Remedy.Kind.ONE_MORE_HEAD,
              Optional.of(id),
              Said.of(
                  "adapting.remedy.oneMoreHead",
                  Filling.shown(light.light().head().energy()),
                  Filling.text(id)),
              Optional.empty()));
    }
    remedies.add(
        new Remedy(
            Remedy.Kind.GIVE_UP,
            Optional.of(id),
            Said.of("adapting.remedy.giveUp", Filling.text(id)),
            Optional.empty()));
  }

  /** At the height of the highest stand, where one is left. */
  private void ofLowering(int i, List<Remedy> remedies) {
    Light light = problem.setup().lights().get(i);
    trials.kit().stands().stream()
        .mapToDouble(several -> several.item().highest().value())
        .filter(height -> height < light.place().z())
        .max()
        .ifPresent(
            height ->
                trials
                    .missAt(Moves.lowered(light, height), i)
                    .ifPresent(
                        left ->
                            remedies.add(
                                new Remedy(
                                    Remedy.Kind.LOWER,
                                    Optional.of(id(i)),
                                    Said.of(
                                        "adapting.remedy.lower",
                                        Filling.text(id(i)),
                                        Filling.length(height, 1),
                                        Filling.length(light.place().z(), 1)),
                                    Optional.of(left)))));
  }

  private boolean helps(Kit larger) {
    return trials.outsideWith(larger, problem.wishes()) < plan.outside();
  }
}
