package lampwright.learning.trail;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lampwright.learning.drill.DrillKind;
import lampwright.people.PersonId;

/**
 * How far somebody has come on a trail.
 *
 * @param steps one for each stage, in order
 */
public record Way(Trail trail, List<Step> steps) {

  public Way {
    steps = List.copyOf(steps);
  }

  /** How one stage stands. */
  public enum State {
    /** A stage before it is not done. */
    AHEAD,
    /** It is the one to do. */
    OPEN,
    /** Handed in, and nobody has judged it. */
    WAITS,
    /** Judged, to be done again. */
    SENT_BACK,
    DONE
  }

  /**
   * A stage and how it stands.
   *
   * @param right how often each kind was answered rightly, as far as it counts; of a stage of
   *     drills
   * @param last the build that was handed in last; of a stage that is built
   */
  public record Step(
      Stage stage, State state, Map<DrillKind, Integer> right, Optional<HandedIn> last) {
    public Step {
      right = Map.copyOf(right);
    }
  }

  /**
   * What somebody did.
   *
   * @param done stages of which they said so
   * @param right how often they answered each kind rightly
   * @param builds that they handed in for this trail
   */
  public record Facts(Set<StageId> done, Map<DrillKind, Integer> right, List<HandedIn> builds) {
    public Facts {
      done = Set.copyOf(done);
      right = Map.copyOf(right);
      builds = List.copyOf(builds);
    }
  }

  /** The way that follows from what somebody did. */
  public static Way of(Trail trail, Facts facts) {
    List<Step> steps = new ArrayList<>();
    boolean isReached = true;
    for (Stage stage : trail.stages()) {
      Step step = step(stage, facts);
      steps.add(
          isReached || step.state() != State.OPEN
              ? step
              : new Step(stage, State.AHEAD, step.right(), step.last()));
      isReached &= step.state() == State.DONE;
    }
    return new Way(trail, steps);
  }

  private static Step step(Stage stage, Facts facts) {
    return switch (stage) {
      case Stage.ToRead _, Stage.ToStudy _ ->
          new Step(
              stage,
              facts.done().contains(stage.id()) ? State.DONE : State.OPEN,
              Map.of(),
              Optional.empty());
      case Stage.ToAnswer drills -> answered(drills, facts);
      case Stage.ToBuild build -> built(build, facts);
    };
  }

  private static Step answered(Stage.ToAnswer drills, Facts facts) {
    Map<DrillKind, Integer> right = new EnumMap<>(DrillKind.class);
    for (DrillKind kind : drills.kinds()) {
      right.put(kind, Math.min(drills.right(), facts.right().getOrDefault(kind, 0)));
    }
    boolean isDone = right.values().stream().allMatch(count -> count == drills.right());
    return new Step(drills, isDone ? State.DONE : State.OPEN, right, Optional.empty());
  }

  private static Step built(Stage.ToBuild build, Facts facts) {
    List<HandedIn> all =
        facts.builds().stream()
            .filter(one -> one.stage().equals(build.id()))
            .sorted(Comparator.comparing(HandedIn::at))
            .toList();
    Optional<HandedIn> signed =
        all.stream()
            .filter(one -> one.judgement().filter(HandedIn.Judgement::isSignedOff).isPresent())
            .findFirst();
    if (signed.isPresent()) {
      return new Step(build, State.DONE, Map.of(), signed);
    }
    Optional<HandedIn> last = all.isEmpty() ? Optional.empty() : Optional.of(all.getLast());
    State state =
        last.map(one -> one.judgement().isPresent() ? State.SENT_BACK : State.WAITS)
            .orElse(State.OPEN);
    return new Step(build, state, Map.of(), last);
  }

  /** How many stages are done. */
  public int done() {
    return (int) steps.stream().filter(step -> step.state() == State.DONE).count();
  }

  /** Asks whether every stage is done. */
  public boolean isWalked() {
    return done() == steps.size();
  }

  /** The first stage that is not done; empty where all are. */
  public Optional<Step> next() {
    return steps.stream().filter(step -> step.state() != State.DONE).findFirst();
  }

  /** When and by whom the last build was signed off that clears for what the trail clears for. */
  public Optional<Clearance> clearance() {
    return trail
        .clearsFor()
        .filter(_ -> isWalked())
        .flatMap(
            what ->
                steps.stream()
                    .map(Step::last)
                    .flatMap(Optional::stream)
                    .map(HandedIn::judgement)
                    .flatMap(Optional::stream)
                    .max(Comparator.comparing(HandedIn.Judgement::at))
                    .map(last -> new Clearance(what, last.by(), last.at())));
  }

  /** What somebody may do alone, and who said so when. */
  public record Clearance(String what, PersonId by, Instant since) {}
}
