package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lampwright.engine.unit.Metres;
import lampwright.gear.Kit;
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
  List<String> reasons() {
    List<String> reasons = new ArrayList<>();
    for (int i = 0; i < plan.lit().size(); i++) {
      ofLight(i, reasons);
    }
    if (reasons.isEmpty() && plan.lit().stream().allMatch(Optional::isEmpty)) {
      reasons.add("Every light would be left out, and none is a setup.");
    }
    int count = problem.kit().headCount();
    int lights = problem.setup().lights().size();
    if (count < lights && !unlit().isEmpty()) {
      reasons.add(
          "The kit has "
              + (count == 1 ? "1 head" : count + " heads")
              + " for "
              + (lights == 1 ? "1 light." : lights + " lights."));
    }
    return reasons;
  }

  private void ofLight(int i, List<String> reasons) {
    if (isUnlit(i)) {
      if (!problem.refusals(i).isEmpty()) {
        reasons.addAll(problem.refusals(i));
      } else if (problem.kit().headCount() >= problem.setup().lights().size()) {
        reasons.add("No head of the kit comes near what “" + id(i) + "” needs.");
      } else {
        reasons.add("No head is left for “" + id(i) + "”.");
      }
    }
    plan.lit()
        .get(i)
        .filter(this::isShort)
        .ifPresent(
            lit ->
                reasons.add(
                    String.format(
                        Locale.ROOT,
                        "“%s” is %s too %s with the best that is left for it, %s.",
                        id(i),
                        Losses.stops(Math.abs(lit.miss())),
                        lit.miss() < 0 ? "dark" : "bright",
                        "“" + lit.making().head().name() + "”")));
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
              "Meter “" + id + "” or say its power in the setup.",
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
              String.format(
                  Locale.ROOT, "One more stand that reaches %.1f m for “%s”.", height, id),
              Optional.empty()));
    } else if (helps(KitChange.withHeads(trials.kit(), light.light().head(), 1))) {
      remedies.add(
          new Remedy(
              Remedy.Kind.ONE_MORE_HEAD,
              Optional.of(id),
              "One more head of about " + light.light().head().energy() + " for “" + id + "”.",
              Optional.empty()));
    }
    remedies.add(
        new Remedy(
            Remedy.Kind.GIVE_UP,
            Optional.of(id),
            "Give “" + id + "” up: then everything else is as told.",
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
                                    String.format(
                                        Locale.ROOT,
                                        "“%s” at %.1f m instead of %.1f m, as high as a stand"
                                            + " carries it.",
                                        id(i),
                                        height,
                                        light.place().z()),
                                    Optional.of(left)))));
  }

  private boolean helps(Kit larger) {
    return trials.outsideWith(larger, problem.wishes()) < plan.outside();
  }
}
