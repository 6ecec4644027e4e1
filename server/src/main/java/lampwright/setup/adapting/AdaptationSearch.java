package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import lampwright.engine.unit.Stops;
import lampwright.gear.Kit;
import lampwright.language.Said;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FiguresComputation;

/**
 * Finds how a kit can make a setup: the cheapest camera setting with the cheapest way to make each
 * light, both together, by the cost that {@link Weights} states; DEVELOPERS.md has it as
 * mathematics. {@link AdaptationProblem} makes setup and kit ready, {@link SettingSearch} looks
 * through the camera's settings, {@link lampwright.engine.match.AllotmentSearch} allots the kit to
 * the lights at each exposure.
 *
 * <p>With normal flash no setting but the shutter time changes flash against ambient (REFERENCE
 * section 0): a body that syncs slower needs that much more light from every head, by any route.
 */
public final class AdaptationSearch {

  private AdaptationSearch() {}

  /** Finds the best adaptations, however long it takes; deterministic. */
  public static Answer adapt(SetupDocument setup, Kit kit, Wishes wishes) {
    return adapt(setup, kit, wishes, Patience.endless());
  }

  /** Finds the best adaptations that can be found while somebody waits. */
  public static Answer adapt(SetupDocument setup, Kit kit, Wishes wishes, Patience patience) {
    NewConditions conditions = NewConditions.of(setup, wishes);
    List<Said> contradictions = new ArrayList<>(conditions.contradictions());
    contradictions.addAll(Contradictions.of(setup, kit, wishes));
    if (!contradictions.isEmpty()) {
      return nothing(contradictions);
    }
    Figures original = FiguresComputation.of(setup);
    AdaptationProblem problem =
        new AdaptationProblem(setup, original, kit, wishes, conditions.ambient(), Trial.NONE);
    SettingSearch.Found found = SettingSearch.find(problem, patience.search());
    if (found.ways().isEmpty()) {
      return nothing(List.of(Contradictions.ambientNotHeld(wishes)));
    }
    return answer(new Trying(problem, kit, patience.remedies().get()), conditions, found);
  }

  private static Answer nothing(List<Said> contradictions) {
    return new Answer.NotEnoughGear(
        contradictions, List.of(), List.of(), List.of(), new Proof(0, 0, false));
  }

  private record Trying(AdaptationProblem problem, Kit kit, BooleanSupplier stop) {

    Trials of(AdaptationPlan plan) {
      return new Trials(problem, kit, plan, stop);
    }
  }

  private static Answer answer(Trying trying, NewConditions conditions, SettingSearch.Found found) {
    Explaining explaining = new Explaining(trying.problem(), trying.kit(), conditions);
    AdaptationPlan best = found.ways().getFirst();
    Trials trials = trying.of(best);
    Shortage shortage = new Shortage(trials);
    List<LightId> unlit = shortage.unlit();
    List<Remedy> remedies = Remedies.of(trials);
    if (best.lit().stream().allMatch(Optional::isEmpty)) {
      return new Answer.NotEnoughGear(
          shortage.reasons(), unlit, shortage.remedies(remedies), List.of(), found.proof());
    }
    List<Adaptation> adaptations = new ArrayList<>();
    adaptations.add(explaining.of(best, List.of(), remedies));
    for (AdaptationPlan way : found.ways().subList(1, found.ways().size())) {
      adaptations.add(
          explaining.of(
              way,
              Ways.betterIn(way, best, trying.problem().weights()),
              Remedies.of(trying.of(way))));
    }
    return shortage.isNone()
        ? new Answer.Adapted(adaptations, found.proof())
        : new Answer.NotEnoughGear(
            shortage.reasons(), unlit, shortage.remedies(remedies), adaptations, found.proof());
  }

  /**
   * Asks whether a kit makes a setup so that every light is lit and misses its level by so much at
   * most, the ambient's offset differs by so much at most, and no light looks more than twice or
   * less than half as large.
   *
   * @param within 0 or more
   */
  public static boolean isWithin(SetupDocument setup, Figures original, Kit kit, Stops within) {
    Wishes wishes = Wishes.none().withLimits(Limits.none().within(within, 1));
    return best(setup, original, kit, wishes).filter(plan -> plan.outside() == 0).isPresent();
  }

  /**
   * The same while somebody waits.
   *
   * @param stop asked now and then, says yes once that was long enough
   * @return empty where it was told to stop before it could tell
   */
  public static Optional<Boolean> isWithin(
      SetupDocument setup, Figures original, Kit kit, Stops within, BooleanSupplier stop) {
    Wishes wishes = Wishes.none().withLimits(Limits.none().within(within, 1));
    boolean made =
        best(setup, original, kit, wishes, stop).filter(plan -> plan.outside() == 0).isPresent();
    // What was found is there, however soon it ended; what was not may be.
    return made || !stop.getAsBoolean() ? Optional.of(made) : Optional.empty();
  }

  /** The best plan only, without its document; for who asks many setups. */
  static Optional<AdaptationPlan> best(
      SetupDocument setup, Figures original, Kit kit, Wishes wishes) {
    return best(setup, original, kit, wishes, () -> false);
  }

  private static Optional<AdaptationPlan> best(
      SetupDocument setup, Figures original, Kit kit, Wishes wishes, BooleanSupplier stop) {
    NewConditions conditions = NewConditions.of(setup, wishes);
    if (!conditions.contradictions().isEmpty()
        || !Contradictions.of(setup, kit, wishes).isEmpty()) {
      return Optional.empty();
    }
    AdaptationProblem problem =
        new AdaptationProblem(
            setup, original, kit, wishes.withWays(1), conditions.ambient(), Trial.NONE);
    return SettingSearch.find(problem, stop).ways().stream().findFirst();
  }
}
