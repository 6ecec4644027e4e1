package lampwright.tasks;

import java.util.List;
import java.util.Optional;
import lampwright.learning.trail.HandedIn;
import lampwright.learning.trail.Stage;
import lampwright.people.Ids;
import lampwright.people.Permission;
import lampwright.people.Role;
import lampwright.people.StudioId;
import lampwright.setup.takes.TakeId;
import lampwright.store.Database;
import lampwright.store.StoredBuild;
import lampwright.store.StudioTransaction;
import lampwright.store.Ways;

/** Lets authors and owners sign off what others built, or send it back. */
public final class SigningOff {

  static final int LONGEST_WORDS = 2_000;

  private final Database database;
  private final TakeLogging takes;

  public SigningOff(Database database, TakeLogging takes) {
    this.database = database;
    this.takes = takes;
  }

  /**
   * A build that was handed in.
   *
   * @param take the run-through
   * @param by the name of who built it
   * @param stage absent where the trail no longer has it
   * @param judgedBy the name of who judged it; absent before
   * @param mayJudge whether the caller may
   */
  public record Build(
      String id,
      TakeId take,
      HandedIn handedIn,
      String by,
      KeptTrail trail,
      Optional<Stage> stage,
      Catalogued setup,
      Optional<String> judgedBy,
      boolean mayJudge) {}

  /** A build with what was metered. */
  public record Shown(Build build, LoggedTake take) {}

  /** What waits to be judged by the caller, the first first; nothing for whom may not. */
  public List<Build> listWaiting(Caller caller, StudioId studio) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Role role = Leave.ask(in, Permission.READ_SETUPS);
          return role.may(Permission.SIGN_OFF)
              ? new Ways(in)
                  .listWaiting().stream()
                      .map(stored -> find(in, caller, role, stored))
                      .flatMap(Optional::stream)
                      .toList()
              : List.<Build>of();
        });
  }

  /**
   * One of them, with its readings against what was to be expected.
   *
   * @throws Refused NotFound for whom it does not concern
   */
  public Shown get(Caller caller, StudioId studio, String id) {
    Build build =
        database.inStudio(
            studio,
            caller.asker(),
            in -> {
              Role role = Leave.ask(in, Permission.READ_SETUPS);
              return build(in, caller, role, find(in, id));
            });
    return new Shown(build, takes.get(caller, studio, build.setup().id(), build.take()));
  }

  private static StoredBuild find(StudioTransaction in, String id) {
    return Optional.of(id)
        .filter(Ids::isId)
        .flatMap(one -> new Ways(in).find(one))
        .orElseThrow(Refused::notFound);
  }

  private static Build build(StudioTransaction in, Caller caller, Role role, StoredBuild stored) {
    return find(in, caller, role, stored).orElseThrow(Refused::notFound);
  }

  /** A build; empty where its trail or its setup is there no more, or not to be seen. */
  private static Optional<Build> find(
      StudioTransaction in, Caller caller, Role role, StoredBuild stored) {
    return TrailKeeping.find(in, stored.trail())
        .flatMap(
            trail ->
                Cataloguing.find(in, Sight.of(role), stored.setup())
                    .map(
                        setup ->
                            new Build(
                                stored.id(),
                                stored.take(),
                                stored.handedIn(),
                                Cataloguing.name(in, stored.handedIn().by()),
                                trail,
                                trail.document().find(stored.handedIn().stage()),
                                setup,
                                stored
                                    .handedIn()
                                    .judgement()
                                    .map(one -> Cataloguing.name(in, one.by())),
                                stored.handedIn().bar(caller.person().id(), role).isEmpty())));
  }

  /**
   * Signs a build off, or sends it back.
   *
   * @param words what to mind; needed where it is sent back
   * @throws Refused NotAllowed for whom may not, and for one's own build whatever one's role; Clash
   *     where it was judged already; Invalid at {@code /words} where somebody is sent back without
   *     a word
   */
  public Build judge(Caller caller, StudioId studio, String id, boolean isSignedOff, String words) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Role role = Leave.ask(in, Permission.READ_SETUPS);
          StoredBuild stored = find(in, id);
          stored.handedIn().bar(caller.person().id(), role).ifPresent(SigningOff::refuse);
          if (!isSignedOff && words.isBlank()) {
            throw Refused.invalid("/words", "Words are missing: say what to do again, and how.");
          }
          if (words.strip().length() > LONGEST_WORDS) {
            throw Refused.invalid(
                "/words",
                "Words (%d letters) must be at most %d letters."
                    .formatted(words.strip().length(), LONGEST_WORDS));
          }
          if (!new Ways(in).judge(id, isSignedOff, words.strip())) {
            refuse(HandedIn.Bar.JUDGED);
          }
          return build(in, caller, role, find(in, id));
        });
  }

  private static void refuse(HandedIn.Bar bar) {
    throw switch (bar) {
      case OWN ->
          Refused.notAllowed(
              "Nobody signs off what they built themselves. Ask another author or an owner.");
      case ROLE -> Refused.notAllowed("Only authors and owners sign builds off.");
      case JUDGED ->
          new Refused(new Refusal.Clash("Somebody has judged this build already. Look again."));
    };
  }
}
