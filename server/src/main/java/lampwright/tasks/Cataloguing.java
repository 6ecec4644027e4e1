package lampwright.tasks;

import java.time.Duration;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lampwright.people.FormerName;
import lampwright.people.Ids;
import lampwright.people.Permission;
import lampwright.people.PersonId;
import lampwright.people.StudioId;
import lampwright.search.Follower;
import lampwright.setup.Parent;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.setup.Standing;
import lampwright.store.Database;
import lampwright.store.Names;
import lampwright.store.Page;
import lampwright.store.Saving;
import lampwright.store.Setups;
import lampwright.store.StoredRevision;
import lampwright.store.StoredSetup;
import lampwright.store.StudioTransaction;

/** Puts setups into a studio's catalogue, reads and changes them. */
public final class Cataloguing {

  /** Long enough for an index that keeps up; a slower one must not hold anybody's work up. */
  private static final Duration WAIT_FOR_INDEX = Duration.ofSeconds(1);

  /** So that a name that only an archive tells is not taken for a member's. */
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

  /**
   * What a new setup is made from.
   *
   * @param setup its id, as it was written
   * @param revision of that setup; empty is the current one
   */
  public record From(String setup, Optional<Integer> revision) {}

  /** Keeps a new setup that comes from no other. */
  public Catalogued create(Caller caller, StudioId studio, SetupDocument document) {
    return create(caller, studio, document, Optional.empty(), Message.none(), Once.unkeyed());
  }

  /**
   * Keeps a new setup.
   *
   * @param from what it was made from, such as the setup of which it is an adaptation
   * @throws Refused Invalid at {@code /parent} where the studio has no such setup, at {@code
   *     /parent_revision} where that setup has no such revision
   */
  public Catalogued create(
      Caller caller,
      StudioId studio,
      SetupDocument document,
      Optional<From> from,
      Message message,
      Once once) {
    return create(caller, studio, new Wanted(document, from, message), once);
  }

  private record Wanted(SetupDocument document, Optional<From> from, Message message) {}

  private Catalogued create(Caller caller, StudioId studio, Wanted wanted, Once once) {
    Catalogued created =
        database.inStudio(
            studio,
            caller.asker(),
            in -> {
              Sight sight = Sight.of(Leave.ask(in, Permission.WRITE_SETUPS));
              return once.make(
                  in,
                  ids,
                  id -> create(in, caller, new SetupId(id), wanted),
                  id -> find(in, sight, new SetupId(id)));
            });
    awaitIndex(studio, created.id(), created.revision());
    return created;
  }

  private static Catalogued create(StudioTransaction in, Caller caller, SetupId id, Wanted wanted) {
    Optional<Parent> parent = wanted.from().map(from -> parent(in, from));
    LocationKeeping.mustHaveLocation(in, wanted.document());
    Setups setups = new Setups(in);
    String title = wanted.document().title();
    String json = StoredDocuments.print(SetupDocument.FORM, wanted.document());
    String message = wanted.message().text();
    StoredSetup stored =
        parent
            .map(of -> setups.createFrom(of.id(), of.revision(), id, title, json, message))
            .orElseGet(() -> setups.create(id, title, json, message, Standing.DRAFT));
    return catalogued(stored, caller.person().name(), parent, wanted.document());
  }

  private static Parent parent(StudioTransaction in, From from) {
    Setups setups = new Setups(in);
    StoredSetup parent =
        Optional.of(from.setup())
            .filter(Ids::isId)
            .flatMap(id -> setups.find(new SetupId(id)))
            .orElseThrow(
                () ->
                    Refused.invalid(
                        "/parent", "Parent must be the id of one of the studio's setups."));
    int revision = from.revision().orElse(parent.revision());
    StoredRevision then =
        setups
            .findRevision(parent.id(), revision)
            .orElseThrow(
                () ->
                    Refused.invalid(
                        "/parent_revision",
                        "Parent revision (%d) must be one that the parent has: 1 to %d."
                            .formatted(revision, parent.revision())));
    return new Parent(parent.id(), revision, then.label());
  }

  /** A setup as it is now. */
  public Catalogued get(Caller caller, StudioId studio, SetupId id) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          return get(in, Sight.ask(in), id);
        });
  }

  /**
   * Which revision of a setup is the current one, without reading it.
   *
   * @throws Refused NotFound where there is none that the caller may see
   */
  public int revision(Caller caller, StudioId studio, SetupId id) {
    return database.inStudio(
        studio,
        caller.asker(),
        in ->
            new Setups(in)
                .findRevisionNow(id, Sight.ask(in).standings())
                .orElseThrow(Refused::notFound));
  }

  static Catalogued get(StudioTransaction in, Sight sight, SetupId id) {
    return find(in, sight, id).orElseThrow(Refused::notFound);
  }

  static Optional<Catalogued> find(StudioTransaction in, Sight sight, SetupId id) {
    return new Setups(in)
        .findTold(id, sight.standings())
        .map(
            told ->
                catalogued(
                    told.stored(),
                    told.changedBy(),
                    told.parent(),
                    in.setupDocuments().read(told.stored().document())));
  }

  /** The titles of the setups that the caller may see and that were changed last, by title. */
  public Map<SetupId, String> titles(Caller caller, StudioId studio, int most) {
    return database.inStudio(
        studio, caller.asker(), in -> new Setups(in).titles(Sight.ask(in).standings(), most));
  }

  /** The titles of those of some setups that the caller may see, by their ids. */
  public Map<SetupId, String> titles(Caller caller, StudioId studio, Collection<SetupId> wanted) {
    return database.inStudio(
        studio,
        caller.asker(),
        in ->
            listOf(in, Sight.ask(in), List.copyOf(wanted)).values().stream()
                .collect(Collectors.toMap(Catalogued::id, found -> found.document().title())));
  }

  /** What somebody is called who may have left the studio. */
  static String name(StudioTransaction in, PersonId person) {
    return new Names(in).find(person);
  }

  /** Those of some setups that are there to be seen, by their ids; for what a search found. */
  static Map<SetupId, Catalogued> listOf(StudioTransaction in, Sight sight, List<SetupId> wanted) {
    Map<PersonId, String> names = names(in);
    Map<SetupId, Parent> parents = new Setups(in).listParents(wanted, sight.standings());
    return new Setups(in)
        .listOf(wanted).values().stream()
            .filter(stored -> sight.covers(stored.standing()))
            .flatMap(
                stored ->
                    readable(in, stored, names, Optional.ofNullable(parents.get(stored.id())))
                        .stream())
            .collect(Collectors.toMap(Catalogued::id, setup -> setup));
  }

  /** A page of stored setups, without those that can no longer be read. */
  static Page<Catalogued> page(StudioTransaction in, Sight sight, Page<StoredSetup> page) {
    Map<PersonId, String> names = names(in);
    Map<SetupId, Parent> parents =
        new Setups(in)
            .listParents(page.items().stream().map(StoredSetup::id).toList(), sight.standings());
    return new Page<>(
        page.items().stream()
            .flatMap(
                stored ->
                    readable(in, stored, names, Optional.ofNullable(parents.get(stored.id())))
                        .stream())
            .toList(),
        page.next());
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
      SetupDocument document,
      Message message) {
    Catalogued replaced =
        database.inStudio(
            studio,
            caller.asker(),
            in -> {
              Sight sight = Sight.of(Leave.ask(in, Permission.WRITE_SETUPS));
              LocationKeeping.mustHaveLocation(in, document);
              Setups setups = new Setups(in);
              int from = basedOn.orElseGet(() -> sight.get(in, id).revision());
              mustBeSaved(
                  setups.replace(
                      id,
                      from,
                      document.title(),
                      StoredDocuments.print(SetupDocument.FORM, document),
                      message.text()));
              return get(in, sight, id);
            });
    awaitIndex(studio, id, replaced.revision());
    return replaced;
  }

  /** Takes a setup out of the catalogue; its revisions are kept. */
  public void delete(
      Caller caller, StudioId studio, SetupId id, Optional<Integer> basedOn, Message message) {
    int revision =
        database.inStudio(
            studio,
            caller.asker(),
            in -> {
              Sight sight = Sight.of(Leave.ask(in, Permission.WRITE_SETUPS));
              int from = basedOn.orElseGet(() -> sight.get(in, id).revision());
              return mustBeSaved(new Setups(in).delete(id, from, message.text()));
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
  void awaitIndex(StudioId studio, SetupId id, int revision) {
    try {
      follower.awaitSetupRevision(studio.text(), id.text(), revision, WAIT_FOR_INDEX);
    } catch (InterruptedException e) {
      // The change is kept all the same; only the wait ends.
      Thread.currentThread().interrupt();
    }
  }

  static Map<PersonId, String> names(StudioTransaction in) {
    return new Names(in).everybody();
  }

  private static Optional<Catalogued> readable(
      StudioTransaction in,
      StoredSetup stored,
      Map<PersonId, String> names,
      Optional<Parent> parent) {
    String changedBy = names.getOrDefault(stored.changedBy(), FormerName.UNNAMED);
    return StoredDocuments.findSetup(in, stored.document(), stored.id())
        .map(document -> catalogued(stored, changedBy, parent, document));
  }

  private static Catalogued catalogued(
      StoredSetup stored, String changedBy, Optional<Parent> parent, SetupDocument document) {
    return new Catalogued(
        stored.id(),
        stored.revision(),
        stored.changedAt(),
        changedBy,
        stored.standing(),
        parent,
        document);
  }
}
