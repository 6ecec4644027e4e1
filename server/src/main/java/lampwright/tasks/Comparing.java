package lampwright.tasks;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import lampwright.people.Ids;
import lampwright.people.StudioId;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.setup.comparing.Change;
import lampwright.setup.comparing.Comparison;
import lampwright.store.Database;
import lampwright.store.SetupHistory;
import lampwright.store.StudioTransaction;

/** Compares revisions of a setup, and setups with each other. */
public final class Comparing {

  private final Database database;

  public Comparing(Database database) {
    this.database = database;
  }

  /** One of the two that are compared. */
  public record Side(SetupId setup, int revision, SetupDocument document) {}

  /** Both, and what differs. */
  public record Compared(Side from, Side to, List<Change> changes) {}

  private record Sides(Side from, Side to) {}

  /**
   * Compares two revisions of a setup, which may be deleted where its history may be seen.
   *
   * @param to the current one where it is empty
   * @throws Refused Invalid at {@code /from} or {@code /to} where there is no such revision to be
   *     seen
   */
  public Compared revisions(
      Caller caller, StudioId studio, SetupId id, int from, Optional<Integer> to) {
    return compared(
        caller,
        studio,
        in -> {
          Sight sight = Histories.sight(in, id);
          int current = new SetupHistory(in).findCurrent(id).orElseThrow(Refused::notFound);
          return new Sides(
              side(in, sight, id, from, "/from"), side(in, sight, id, to.orElse(current), "/to"));
        });
  }

  /**
   * Compares a setup as it is with another as it is.
   *
   * @param other its id, as it was written
   * @throws Refused Invalid at {@code /to_setup} where there is no such setup to be seen
   */
  public Compared setups(Caller caller, StudioId studio, SetupId id, String other) {
    return compared(
        caller,
        studio,
        in -> {
          Sight sight = Sight.ask(in);
          Side from = now(in, sight, id);
          if (!Ids.isId(other) || sight.find(in, new SetupId(other)).isEmpty()) {
            throw Refused.invalid(
                "/to_setup", "To setup must be the id of one of the studio's setups.");
          }
          return new Sides(from, now(in, sight, new SetupId(other)));
        });
  }

  /** Outside of the transaction: computing must not hold a connection. */
  private Compared compared(
      Caller caller, StudioId studio, Function<StudioTransaction, Sides> load) {
    Sides both = database.inStudio(studio, caller.asker(), load);
    return new Compared(
        both.from(), both.to(), Comparison.of(both.from().document(), both.to().document()));
  }

  private static Side now(StudioTransaction in, Sight sight, SetupId id) {
    Catalogued setup = Cataloguing.get(in, sight, id);
    return new Side(id, setup.revision(), setup.document());
  }

  private static Side side(
      StudioTransaction in, Sight sight, SetupId id, int revision, String pointer) {
    return new SetupHistory(in)
        .find(id, revision)
        .filter(past -> sight.covers(past.line().standing()))
        .map(
            past ->
                new Side(id, revision, StoredDocuments.read(SetupDocument.FORM, past.document())))
        .orElseThrow(
            () ->
                Refused.invalid(
                    pointer, "Revision (%d) must be one that the setup has.".formatted(revision)));
  }
}
