package lampwright.tasks;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lampwright.learning.drill.DrillKind;
import lampwright.learning.trail.HandedIn;
import lampwright.learning.trail.Stage;
import lampwright.learning.trail.StageId;
import lampwright.learning.trail.TrailId;
import lampwright.learning.trail.Way;
import lampwright.people.Ids;
import lampwright.people.Permission;
import lampwright.people.PersonId;
import lampwright.people.StudioId;
import lampwright.setup.SetupId;
import lampwright.setup.takes.Take;
import lampwright.setup.takes.TakeId;
import lampwright.store.Database;
import lampwright.store.DrillAnswers;
import lampwright.store.StoredBuild;
import lampwright.store.StoredDrillAnswer;
import lampwright.store.StudioTransaction;
import lampwright.store.Takes;
import lampwright.store.Ways;

/** Lets members walk trails. What somebody did is theirs and the owners'. */
public final class TrailWalking {

  private static final String TAKE = "/take";

  private final Database database;
  private final Ids ids;

  public TrailWalking(Database database, Ids ids) {
    this.database = database;
    this.ids = ids;
  }

  /** All trails, with the caller's way on each. */
  public List<WalkedTrail> list(Caller caller, StudioId studio) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.READ_SETUPS);
          return walked(in, TrailKeeping.all(in), caller.person().id());
        });
  }

  /** One trail, with the caller's way on it. */
  public WalkedTrail get(Caller caller, StudioId studio, TrailId id) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.READ_SETUPS);
          return get(in, caller, id);
        });
  }

  private static WalkedTrail get(StudioTransaction in, Caller caller, TrailId id) {
    return walked(in, List.of(TrailKeeping.get(in, id)), caller.person().id()).getFirst();
  }

  /**
   * A member's ways on trails.
   *
   * @param person the person of the transaction, or anybody where that one is an owner
   */
  static List<WalkedTrail> walked(StudioTransaction in, List<KeptTrail> trails, PersonId person) {
    Ways ways = new Ways(in);
    Map<TrailId, Set<StageId>> done = ways.listDone(person);
    List<StoredBuild> builds = ways.listOf(person);
    Map<DrillKind, Integer> right = right(new DrillAnswers(in).listOf(person));
    return trails.stream()
        .map(
            trail -> {
              Way way =
                  Way.of(
                      trail.document(),
                      new Way.Facts(
                          done.getOrDefault(trail.id(), Set.of()),
                          right,
                          builds.stream()
                              .filter(build -> build.trail().equals(trail.id()))
                              .map(StoredBuild::handedIn)
                              .toList()));
              return new WalkedTrail(trail, way, names(in, way));
            })
        .toList();
  }

  private static Map<DrillKind, Integer> right(List<StoredDrillAnswer> answers) {
    Map<DrillKind, Integer> right = new EnumMap<>(DrillKind.class);
    answers.stream()
        .filter(StoredDrillAnswer::isRight)
        .map(answer -> DrillKind.find(answer.kind()))
        .flatMap(Optional::stream)
        .forEach(kind -> right.merge(kind, 1, Integer::sum));
    return right;
  }

  private static Map<PersonId, String> names(StudioTransaction in, Way way) {
    Map<PersonId, String> names = new HashMap<>();
    way.steps().stream()
        .map(Way.Step::last)
        .flatMap(Optional::stream)
        .map(HandedIn::judgement)
        .flatMap(Optional::stream)
        .map(HandedIn.Judgement::by)
        .forEach(by -> names.computeIfAbsent(by, one -> Cataloguing.name(in, one)));
    return names;
  }

  /**
   * The caller has read or studied a stage.
   *
   * @throws Refused Clash for a stage that is not theirs to do yet, or is done otherwise
   */
  public WalkedTrail done(Caller caller, StudioId studio, TrailId id, StageId stage) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.READ_SETUPS);
          Way.Step step = reached(get(in, caller, id), stage);
          switch (step.stage()) {
            case Stage.ToRead _, Stage.ToStudy _ -> new Ways(in).done(id, stage);
            case Stage.ToAnswer _ ->
                throw new Refused(new Refusal.Clash("This stage is done by answering its drills."));
            case Stage.ToBuild _ ->
                throw new Refused(
                    new Refusal.Clash("This stage is done when somebody has signed it off."));
          }
          return get(in, caller, id);
        });
  }

  private static Way.Step reached(WalkedTrail walked, StageId stage) {
    Way.Step step =
        walked.way().steps().stream()
            .filter(one -> one.stage().id().equals(stage))
            .findFirst()
            .orElseThrow(Refused::notFound);
    if (step.state() == Way.State.AHEAD) {
      throw new Refused(new Refusal.Clash("The stages before this one come first."));
    }
    return step;
  }

  /** A run-through of the caller's own that can be handed in. */
  public record RunThrough(TakeId id, int number, Take document) {}

  /** The caller's run-throughs of a setup that have readings, the last first. */
  public List<RunThrough> runThroughs(Caller caller, StudioId studio, SetupId setup) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Cataloguing.get(in, Sight.ask(in), setup);
          return runThroughs(in, caller, setup);
        });
  }

  private static List<RunThrough> runThroughs(StudioTransaction in, Caller caller, SetupId setup) {
    return new Takes(in, setup)
        .listBy(caller.person().id(), Listed.MOST).stream()
            .flatMap(
                stored ->
                    StoredDocuments.find(Take.FORM, stored.document(), stored.id())
                        .map(take -> new RunThrough(stored.id(), stored.number(), take))
                        .stream())
            .filter(one -> one.document().kind() == Take.Kind.RUN_THROUGH)
            .filter(one -> !one.document().readings().isEmpty())
            .toList();
  }

  /**
   * The caller hands in a run-through for a stage that is built.
   *
   * @throws Refused Invalid at {@code /take} for what is no run-through of theirs with readings, or
   *     was handed in before; Clash for a stage that is not theirs to do yet, is not built, or is
   *     signed off
   */
  public WalkedTrail handIn(
      Caller caller, StudioId studio, TrailId id, StageId stage, TakeId take) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.LOG_TAKES);
          Way.Step step = reached(get(in, caller, id), stage);
          if (!(step.stage() instanceof Stage.ToBuild build)) {
            throw new Refused(new Refusal.Clash("This stage is not one that is built."));
          }
          if (step.state() == Way.State.DONE || step.state() == Way.State.WAITS) {
            throw new Refused(
                new Refusal.Clash("What was handed in for this stage is signed off, or waits."));
          }
          if (runThroughs(in, caller, build.setup()).stream()
              .noneMatch(one -> one.id().equals(take))) {
            throw Refused.invalid(
                TAKE, "Take must be a run-through of this setup that you logged, with readings.");
          }
          if (!new Ways(in).handIn(ids.next(), id, stage, build.setup(), take)) {
            throw Refused.invalid(
                TAKE, "This run-through was handed in before. Meter anew and log another.");
          }
          return get(in, caller, id);
        });
  }
}
