package lampwright.tasks;

import java.util.Optional;
import lampwright.document.Pointer;
import lampwright.document.Problems;
import lampwright.gear.Kit;
import lampwright.people.Permission;
import lampwright.people.StudioId;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.setup.reacting.Means;
import lampwright.setup.reacting.Reaction;
import lampwright.setup.reacting.ReactionQuestion;
import lampwright.setup.reacting.Reactions;
import lampwright.store.Database;

/** Says what to change when something happens to a setup that stands. Stores nothing. */
public final class Reacting {

  private static final Pointer HAPPENING = Pointer.root().field("happening");

  private final Database database;

  public Reacting(Database database) {
    this.database = database;
  }

  /** A stored setup and what to change. */
  public record Reacted(Catalogued setup, Reaction reaction) {}

  private record Both(Catalogued setup, Optional<KeptKit> kit) {}

  /**
   * What to change at a stored setup.
   *
   * @param kit the id of the kit whose spare heads and filters stand by
   * @throws Refused Invalid at {@code /kit} where the studio has no such kit, and at {@code
   *     /happening} where it cannot have happened to the setup
   */
  public Reacted to(
      Caller caller,
      StudioId studio,
      SetupId setup,
      ReactionQuestion question,
      Optional<String> kit) {
    Both both =
        database.inStudio(
            studio,
            caller.asker(),
            in -> {
              return new Both(
                  Cataloguing.get(in, Sight.ask(in), setup), kit.map(id -> Adapting.kit(in, id)));
            });
    SetupDocument document = both.setup().document();
    return new Reacted(
        both.setup(), reaction(document, question, both.kit().map(KeptKit::document)));
  }

  /**
   * The same at a document of the caller's own.
   *
   * @throws Refused Invalid at {@code /happening} where it cannot have happened to the setup
   */
  public Reaction to(
      Caller caller,
      StudioId studio,
      SetupDocument setup,
      ReactionQuestion question,
      Optional<Kit> kit) {
    database.inStudio(studio, caller.asker(), in -> Leave.ask(in, Permission.READ_SETUPS));
    return reaction(setup, question, kit);
  }

  private static Reaction reaction(
      SetupDocument setup, ReactionQuestion question, Optional<Kit> kit) {
    Problems problems = new Problems();
    question.check(setup, HAPPENING, problems);
    if (!problems.isEmpty()) {
      throw Refused.invalid(problems.list());
    }
    Means free = kit.map(gear -> Means.of(setup, gear)).orElseGet(Means::ofSetup);
    return Reactions.to(setup, question.happening(), question.means(free));
  }
}
