package lampwright.tasks;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.people.FormerName;
import lampwright.people.Permission;
import lampwright.people.PersonId;
import lampwright.people.Role;
import lampwright.people.StudioId;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.store.Database;
import lampwright.store.Saving;
import lampwright.store.SetupHistory;
import lampwright.store.SetupRevision;
import lampwright.store.Setups;
import lampwright.store.StudioTransaction;

/**
 * How a setup came to be what it is, and the way back.
 *
 * <p>Who sees proven setups only sees only those revisions of them, too. The history of a deleted
 * setup is there for who may write setups, and for nobody else: they alone can bring it back.
 */
public final class Histories {

  private final Database database;
  private final Cataloguing cataloguing;

  /**
   * @param cataloguing waits for the index
   */
  public Histories(Database database, Cataloguing cataloguing) {
    this.database = database;
    this.cataloguing = cataloguing;
  }

  /**
   * Part of a history, the newest first.
   *
   * @param current the setup's revision now, that of a deletion included
   * @param isDeleted whether the setup is out of the catalogue now
   * @param mayRestore whether the caller may bring a revision back
   * @param next the number that the next page begins below; absent on the last
   */
  public record Page(
      int current,
      boolean isDeleted,
      boolean mayRestore,
      List<Past> items,
      Optional<Integer> next) {

    public Page {
      items = List.copyOf(items);
    }
  }

  /** A setup as it was at a revision. */
  public record PastDocument(Past line, SetupDocument document) {}

  /**
   * At most so many revisions.
   *
   * @param before only those with a smaller number; empty begins at the newest
   * @throws Refused NotFound where there is no such setup to be seen
   */
  public Page list(
      Caller caller, StudioId studio, SetupId id, Optional<Integer> before, int limit) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Sight sight = sight(in, id);
          SetupHistory history = new SetupHistory(in);
          List<SetupRevision> found =
              history.list(id, sight.standings(), before.orElse(Integer.MAX_VALUE), limit + 1);
          boolean more = found.size() > limit;
          List<SetupRevision> page = more ? found.subList(0, limit) : found;
          Map<PersonId, String> names = Cataloguing.names(in);
          return new Page(
              history.findCurrent(id).orElseThrow(Refused::notFound),
              new Setups(in).find(id).isEmpty(),
              Leave.ask(in, Permission.READ_SETUPS).may(Permission.WRITE_SETUPS),
              page.stream().map(line -> past(line, names)).toList(),
              more ? Optional.of(page.getLast().number()) : Optional.empty());
        });
  }

  /** The newest revisions of a setup that is there to be seen. */
  static List<Past> newest(
      StudioTransaction in, Sight sight, SetupId id, int limit, Map<PersonId, String> names) {
    return new SetupHistory(in)
        .list(id, sight.standings(), Integer.MAX_VALUE, limit).stream()
            .map(line -> past(line, names))
            .toList();
  }

  /**
   * One revision.
   *
   * @throws Refused NotFound where there is none to be seen
   */
  public PastDocument get(Caller caller, StudioId studio, SetupId id, int revision) {
    return database.inStudio(studio, caller.asker(), in -> get(in, sight(in, id), id, revision));
  }

  static PastDocument get(StudioTransaction in, Sight sight, SetupId id, int revision) {
    SetupHistory.Past found =
        new SetupHistory(in)
            .find(id, revision)
            .filter(past -> sight.covers(past.line().standing()))
            .orElseThrow(Refused::notFound);
    return new PastDocument(
        past(found.line(), Cataloguing.names(in)), in.setupDocuments().read(found.document()));
  }

  /** What may be seen of a setup that may be deleted. */
  static Sight sight(StudioTransaction in, SetupId id) {
    Role role = Leave.ask(in, Permission.READ_SETUPS);
    Sight sight = Sight.of(role);
    boolean isDeleted = new Setups(in).find(id).isEmpty();
    if (isDeleted ? !role.may(Permission.WRITE_SETUPS) : sight.find(in, id).isEmpty()) {
      throw Refused.notFound();
    }
    return sight;
  }

  /**
   * Makes a revision with the document that another one had. It brings a deleted setup back; either
   * way the setup stands where it stood last, since an old document says nothing of that.
   *
   * @param basedOn the current revision, which may be that of a deletion; empty takes what is there
   * @param from the revision to bring back
   * @throws Refused Invalid at {@code /revision} where the setup has no such revision
   */
  public Catalogued restore(
      Caller caller,
      StudioId studio,
      SetupId id,
      Optional<Integer> basedOn,
      int from,
      Message message) {
    Catalogued restored =
        database.inStudio(
            studio,
            caller.asker(),
            in -> {
              Sight sight = Sight.of(Leave.ask(in, Permission.WRITE_SETUPS));
              SetupHistory history = new SetupHistory(in);
              int current = history.findCurrent(id).orElseThrow(Refused::notFound);
              int based = basedOn.orElse(current);
              if (based != current) {
                throw Refused.stale(current);
              }
              SetupHistory.Past past =
                  history.find(id, from).orElseThrow(() -> none(from, current));
              Saving saving =
                  new Setups(in)
                      .restore(
                          id, based, from, past.line().title(), past.document(), message.text());
              Cataloguing.mustBeSaved(saving);
              return Cataloguing.get(in, sight, id);
            });
    cataloguing.awaitIndex(studio, id, restored.revision());
    return restored;
  }

  private static Refused none(int from, int current) {
    return Refused.invalid(
        "/revision",
        "Revision (%d) must be one that the setup has: 1 to %d.".formatted(from, current));
  }

  private static Past past(SetupRevision line, Map<PersonId, String> names) {
    return new Past(
        line.number(),
        line.revision().changedAt(),
        names.getOrDefault(line.revision().changedBy(), FormerName.UNNAMED),
        line.revision().message(),
        line.title(),
        line.standing(),
        line.planned(),
        line.restoredFrom(),
        line.revision().deleted());
  }
}
