package lampwright.tasks;

import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lampwright.people.Ids;
import lampwright.people.Permission;
import lampwright.people.Person;
import lampwright.people.PersonId;
import lampwright.people.StudioId;
import lampwright.search.Follower;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.store.Database;
import lampwright.store.Members;
import lampwright.store.Saving;
import lampwright.store.Setups;
import lampwright.store.StoredSetup;
import lampwright.store.StudioTransaction;

/** Puts setups into a studio's catalogue, reads and changes them. */
public final class Cataloguing {

  /** Long enough for an index that keeps up; a slower one must not hold anybody's work up. */
  private static final Duration WAIT_FOR_INDEX = Duration.ofSeconds(1);

  private static final String FORMER_MEMBER = "a former member";

  private final Database database;
  private final Follower follower;
  private final Ids ids;

  public Cataloguing(Database database, Follower follower, Ids ids) {
    this.database = database;
    this.follower = follower;
    this.ids = ids;
  }

  /**
   * The setup that an address names.
   *
   * @throws Refused NotFound where no setup can have that id
   */
  public static SetupId id(String text) {
    if (!Ids.isId(text)) {
      throw Refused.notFound();
    }
    return new SetupId(text);
  }

  /** Keeps a new setup. */
  public Catalogued create(Caller caller, StudioId studio, SetupDocument document) {
    Catalogued created =
        database.inStudio(
            studio,
            caller.person().id(),
            in -> {
              Leave.ask(in, Permission.WRITE_SETUPS);
              StoredSetup stored =
                  new Setups(in)
                      .create(
                          new SetupId(ids.next()),
                          document.title(),
                          StoredDocuments.print(SetupDocument.FORM, document),
                          "");
              return catalogued(stored, caller.person().name());
            });
    awaitIndex(studio, created.id(), created.revision());
    return created;
  }

  /** A setup as it is now. */
  public Catalogued get(Caller caller, StudioId studio, SetupId id) {
    return database.inStudio(
        studio,
        caller.person().id(),
        in -> {
          Leave.ask(in, Permission.READ_SETUPS);
          return get(in, id);
        });
  }

  static Catalogued get(StudioTransaction in, SetupId id) {
    StoredSetup stored = new Setups(in).find(id).orElseThrow(Refused::notFound);
    return catalogued(stored, names(in).getOrDefault(stored.changedBy(), FORMER_MEMBER));
  }

  /** Those of some setups that the studio has, by their ids; for what a search found. */
  static Map<SetupId, Catalogued> listOf(StudioTransaction in, List<SetupId> wanted) {
    Map<PersonId, String> names = names(in);
    return new Setups(in)
        .listOf(wanted).values().stream()
            .flatMap(stored -> readable(stored, names).stream())
            .collect(Collectors.toMap(Catalogued::id, setup -> setup));
  }

  /** The titles of all setups that a studio has or has deleted; for loading what is missing. */
  public Set<String> titlesEver(Caller caller, StudioId studio) {
    return database.inStudio(
        studio,
        caller.person().id(),
        in -> {
          Leave.ask(in, Permission.READ_SETUPS);
          return new Setups(in).titlesEver();
        });
  }

  /**
   * Puts another document in the place of the one that it was made from.
   *
   * @param basedOn the revision it was made from; empty replaces whatever is there
   */
  public Catalogued replace(
      Caller caller,
      StudioId studio,
      SetupId id,
      Optional<Integer> basedOn,
      SetupDocument document) {
    Catalogued replaced =
        database.inStudio(
            studio,
            caller.person().id(),
            in -> {
              Leave.ask(in, Permission.WRITE_SETUPS);
              Setups setups = new Setups(in);
              int from = basedOn.orElseGet(() -> get(in, id).revision());
              mustBeSaved(
                  setups.replace(
                      id,
                      from,
                      document.title(),
                      StoredDocuments.print(SetupDocument.FORM, document),
                      ""));
              return get(in, id);
            });
    awaitIndex(studio, id, replaced.revision());
    return replaced;
  }

  /** Takes a setup out of the catalogue; its revisions are kept. */
  public void delete(Caller caller, StudioId studio, SetupId id, Optional<Integer> basedOn) {
    int revision =
        database.inStudio(
            studio,
            caller.person().id(),
            in -> {
              Leave.ask(in, Permission.WRITE_SETUPS);
              int from = basedOn.orElseGet(() -> get(in, id).revision());
              return mustBeSaved(new Setups(in).delete(id, from, ""));
            });
    awaitIndex(studio, id, revision);
  }

  static int mustBeSaved(Saving saving) {
    return switch (saving) {
      case Saving.Saved saved -> saved.revision();
      case Saving.Stale stale -> throw Refused.stale(stale.currentRevision());
      case Saving.Absent absent -> throw Refused.notFound();
    };
  }

  /** So that who changed something finds it by the next search. */
  private void awaitIndex(StudioId studio, SetupId id, int revision) {
    try {
      follower.awaitSetupRevision(studio.text(), id.text(), revision, WAIT_FOR_INDEX);
    } catch (InterruptedException e) {
      // The change is kept all the same; only the wait ends.
      Thread.currentThread().interrupt();
    }
  }

  private static Map<PersonId, String> names(StudioTransaction in) {
    return new HashMap<>(
        new Members(in)
            .list().stream()
                .map(lampwright.people.Member::person)
                .collect(Collectors.toMap(Person::id, Person::name)));
  }

  private static Optional<Catalogued> readable(StoredSetup stored, Map<PersonId, String> names) {
    String changedBy = names.getOrDefault(stored.changedBy(), FORMER_MEMBER);
    return StoredDocuments.find(SetupDocument.FORM, stored.document(), stored.id())
        .map(document -> catalogued(stored, changedBy, document));
  }

  private static Catalogued catalogued(StoredSetup stored, String changedBy) {
    return catalogued(
        stored, changedBy, StoredDocuments.read(SetupDocument.FORM, stored.document()));
  }

  private static Catalogued catalogued(
      StoredSetup stored, String changedBy, SetupDocument document) {
    return new Catalogued(stored.id(), stored.revision(), stored.changedAt(), changedBy, document);
  }
}
