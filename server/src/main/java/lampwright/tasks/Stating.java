package lampwright.tasks;

import java.util.Optional;
import lampwright.people.Permission;
import lampwright.people.StudioId;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.setup.Standing;
import lampwright.store.Database;
import lampwright.store.Setups;
import lampwright.store.StoredSetup;

/** Says whether a setup is a draft or proven, and puts it by; begins a new draft from it. */
public final class Stating {

  private final Database database;
  private final Cataloguing cataloguing;

  /**
   * @param cataloguing waits for the index, and keeps copies
   */
  public Stating(Database database, Cataloguing cataloguing) {
    this.database = database;
    this.cataloguing = cataloguing;
  }

  /**
   * Says where a setup stands from now on; nothing is changed where it stands so already.
   *
   * @param basedOn the revision that was looked at
   */
  public Catalogued stand(
      Caller caller, StudioId studio, SetupId id, int basedOn, Standing standing, Message message) {
    Catalogued now =
        database.inStudio(
            studio,
            caller.asker(),
            in -> {
              Sight sight = Sight.of(Leave.ask(in, Permission.WRITE_SETUPS));
              StoredSetup current = sight.get(in, id);
              if (current.revision() != basedOn) {
                throw Refused.stale(current.revision());
              }
              if (!current.standing().equals(standing)) {
                Cataloguing.mustBeSaved(
                    new Setups(in).stand(id, basedOn, standing, message.text()));
              }
              return Cataloguing.get(in, sight, id);
            });
    cataloguing.awaitIndex(studio, id, now.revision());
    return now;
  }

  /**
   * Keeps the document of a setup as a new draft, which names the setup's current revision as its
   * parent.
   *
   * @param title of the new one, one that a setup can have; that of the setup where it is empty
   */
  public Catalogued copy(
      Caller caller,
      StudioId studio,
      SetupId id,
      Optional<String> title,
      Message message,
      Once once) {
    Catalogued original = cataloguing.get(caller, studio, id);
    SetupDocument document = title.map(original.document()::withTitle).orElse(original.document());
    return cataloguing.create(
        caller,
        studio,
        document,
        Optional.of(new Cataloguing.From(id.text(), Optional.of(original.revision()))),
        message,
        once);
  }
}
