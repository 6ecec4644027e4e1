package lampwright.tasks;

import java.util.Optional;
import lampwright.document.Reading;
import lampwright.people.Permission;
import lampwright.people.Role;
import lampwright.people.StudioId;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.setup.Used;
import lampwright.setup.used.UsedDocument;
import lampwright.store.Database;
import lampwright.store.Saving;
import lampwright.store.Setups;
import lampwright.store.StoredSetup;
import lampwright.store.StudioTransaction;
import lampwright.store.UsedRevision;

/** Records what was really used of a setup, as a revision of its own; the plan stays beside it. */
public final class Recording {

  private final Database database;
  private final Cataloguing cataloguing;

  /**
   * @param cataloguing waits for the index
   */
  public Recording(Database database, Cataloguing cataloguing) {
    this.database = database;
    this.cataloguing = cataloguing;
  }

  /**
   * Makes the next revision from the current one with what was used. The plan is the current
   * revision; where that tells what was used itself, it is the one that it was planned as, so that
   * the rest can be told later.
   *
   * @param basedOn the revision that was looked at
   * @param message kept with the revision where what was told has no note of its own
   * @throws Refused Invalid at {@code /message} where it has one too, since a revision keeps one;
   *     Stale where there is a newer one, Invalid with pointers into what was told
   */
  public Recorded record(
      Caller caller, StudioId studio, SetupId id, int basedOn, Used used, Message message) {
    if (used.note().isPresent() && !message.text().isEmpty()) {
      throw Refused.invalid(
          "/message", "Message and note are kept as one and the same. Tell one of them.");
    }
    Recorded recorded =
        database.inStudio(
            studio,
            caller.asker(),
            in -> {
              Leave.ask(in, Permission.WRITE_SETUPS);
              return record(in, id, basedOn, used, used.note().orElse(message.text()));
            });
    cataloguing.awaitIndex(studio, id, recorded.revision());
    return recorded;
  }

  /** The same inside a transaction, by whoever was asked for leave. */
  static Recorded record(StudioTransaction in, SetupId id, int basedOn, Used used, String message) {
    Setups setups = new Setups(in);
    StoredSetup current = setups.find(id).orElseThrow(Refused::notFound);
    if (current.revision() != basedOn) {
      throw Refused.stale(current.revision());
    }
    SetupDocument document = used(in.setupDocuments().read(current.document()), used);
    Saving saving =
        setups.replaceByUsed(
            id,
            basedOn,
            setups.findPlanned(id, basedOn).orElse(basedOn),
            document.title(),
            StoredDocuments.print(SetupDocument.FORM, document),
            message);
    return last(in, id, Cataloguing.mustBeSaved(saving)).orElseThrow(Refused::notFound);
  }

  /** What was told last; empty where nothing was. */
  public Optional<Recorded> find(Caller caller, StudioId studio, SetupId id) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          StoredSetup current = Sight.ask(in).get(in, id);
          return last(in, id, current.revision());
        });
  }

  /**
   * What a page shows of it.
   *
   * @param last what was told last
   * @param mayRecord whether the caller may tell it
   */
  public record State(Optional<Recorded> last, boolean mayRecord) {}

  /** What was told last, and whether the caller may tell it. */
  public State state(Caller caller, StudioId studio, Catalogued setup) {
    return database.inStudio(
        studio, caller.asker(), in -> state(in, Leave.ask(in, Permission.READ_SETUPS), setup));
  }

  static State state(StudioTransaction in, Role role, Catalogued setup) {
    return new State(last(in, setup.id(), setup.revision()), role.may(Permission.WRITE_SETUPS));
  }

  private static SetupDocument used(SetupDocument planned, Used used) {
    return switch (UsedDocument.of(planned, used)) {
      case Reading.Sound<SetupDocument>(SetupDocument document) -> document;
      case Reading.Faulty<SetupDocument> faulty -> throw Refused.invalid(faulty.problems());
    };
  }

  private static Optional<Recorded> last(StudioTransaction in, SetupId id, int current) {
    return new Setups(in).findUsed(id).map(found -> recorded(in, id, current, found));
  }

  private static Recorded recorded(
      StudioTransaction in, SetupId id, int current, UsedRevision found) {
    return new Recorded(
        id,
        current,
        found.used().revision().number(),
        found.planned().revision().number(),
        found.used().revision().changedAt(),
        Cataloguing.name(in, found.used().revision().changedBy()),
        found.used().revision().message(),
        in.setupDocuments().read(found.planned().document()),
        in.setupDocuments().read(found.used().document()));
  }
}
