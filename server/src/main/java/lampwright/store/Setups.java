package lampwright.store;

import static lampwright.schema.generated.Tables.FORMER_MEMBER;
import static lampwright.schema.generated.Tables.MEMBER;
import static lampwright.schema.generated.Tables.PERSON;
import static lampwright.schema.generated.Tables.SETUP;
import static lampwright.schema.generated.Tables.SETUP_REVISION;

import java.time.Instant;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lampwright.people.PersonId;
import lampwright.place.LocationId;
import lampwright.setup.Child;
import lampwright.setup.Parent;
import lampwright.setup.SetupId;
import lampwright.setup.Standing;
import org.jooq.Condition;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.impl.DSL;

/** The setups of the studio that the transaction is in. */
public final class Setups {

  private final StudioTransaction in;
  private final Documents documents;
  private final Signatures signatures;

  public Setups(StudioTransaction in) {
    this.in = in;
    this.documents = new Documents(in, Shelf.SETUPS);
    this.signatures = new Signatures(in);
  }

  /**
   * Holds one until the transaction ends, so that what is counted or numbered beside it comes one
   * after the other; says whether the studio has it.
   */
  public boolean hold(SetupId id) {
    return in.sql()
        .select(SETUP.ID)
        .from(SETUP)
        .where(SETUP.STUDIO_ID.eq(in.studio().text()))
        .and(SETUP.ID.eq(id.text()))
        .and(SETUP.DELETED_AT.isNull())
        .forNoKeyUpdate()
        .fetchOptional()
        .isPresent();
  }

  /**
   * Keeps a new setup as its revision 1.
   *
   * @param document JSON, checked before
   */
  public StoredSetup create(SetupId id, String title, String document, String message) {
    return create(id, title, document, message, Standing.DRAFT);
  }

  /** The same where it does not begin as a draft. */
  public StoredSetup create(
      SetupId id, String title, String document, String message, Standing standing) {
    return create(id, title, document, message, columns(standing));
  }

  private StoredSetup create(
      SetupId id, String title, String document, String message, Map<Field<?>, Object> more) {
    StoredSetup created = setup(documents.create(id.text(), title, document, message, more));
    signatures.keep(id, created.revision(), document);
    return created;
  }

  /** Signs the revision that a change made. */
  private Saving signed(SetupId id, String document, Saving saving) {
    if (saving instanceof Saving.Saved(int revision)) {
      signatures.keep(id, revision, document);
    }
    return saving;
  }

  /**
   * Keeps a new setup that was made from a revision of another of this studio.
   *
   * @param document JSON, checked before
   * @throws org.jooq.exception.IntegrityConstraintViolationException where the studio has no such
   *     revision; {@link #findRevision} tells before
   */
  public StoredSetup createFrom(
      SetupId parent,
      int parentRevision,
      SetupId id,
      String title,
      String document,
      String message) {
    return create(
        id,
        title,
        document,
        message,
        Map.of(
            SETUP.PARENT_ID, parent.text(),
            SETUP.PARENT_REVISION, parentRevision,
            SETUP.STATE, Standing.DRAFT.state().word()));
  }

  public Optional<StoredSetup> find(SetupId id) {
    return documents.find(id.text()).map(Setups::setup);
  }

  /**
   * A setup with what stands beside it, in one round trip: it is what is asked for most.
   *
   * @param standings only where it stands so; of what it was made from the same
   */
  public Optional<ToldSetup> findTold(SetupId id, Set<Standing> standings) {
    return in.sql()
        .select(SETUP.ID, SETUP.REVISION, SETUP.TITLE, SETUP.DOCUMENT, SETUP.CHANGED_AT)
        .select(SETUP.CHANGED_BY, SETUP.STATE, SETUP.ARCHIVED)
        .select(SETUP.PARENT_ID, SETUP.PARENT_REVISION, SETUP_REVISION.TITLE)
        .select(Names.COLUMNS)
        .from(SETUP)
        .leftJoin(PERSON)
        .on(PERSON.ID.eq(SETUP.CHANGED_BY))
        .and(Names.isKnown(in))
        .leftJoin(MEMBER)
        .on(Names.isMember(in))
        .leftJoin(FORMER_MEMBER)
        .on(Names.wasMember(in))
        .leftJoin(SETUP_REVISION)
        .on(SETUP_REVISION.STUDIO_ID.eq(SETUP.STUDIO_ID))
        .and(SETUP_REVISION.SETUP_ID.eq(SETUP.PARENT_ID))
        .and(SETUP_REVISION.REVISION.eq(SETUP.PARENT_REVISION))
        .and(SetupHistory.stoodSo(standings))
        .where(isLiving(id, standings))
        .fetchOptional(Setups::told);
  }

  private static ToldSetup told(Record found) {
    return new ToldSetup(
        new StoredSetup(
            new SetupId(found.get(SETUP.ID)),
            found.get(SETUP.REVISION),
            found.get(SETUP.DOCUMENT).data(),
            found.get(SETUP.TITLE),
            found.get(SETUP.CHANGED_AT),
            new PersonId(found.get(SETUP.CHANGED_BY)),
            standing(found)),
        Names.of(found),
        Optional.ofNullable(found.get(SETUP_REVISION.TITLE))
            .map(
                title ->
                    new Parent(
                        new SetupId(found.get(SETUP.PARENT_ID)),
                        found.get(SETUP.PARENT_REVISION),
                        title)));
  }

  /**
   * Which revision of a setup is the current one.
   *
   * @param standings only where it stands so
   */
  public Optional<Integer> findRevisionNow(SetupId id, Set<Standing> standings) {
    return in.sql()
        .select(SETUP.REVISION)
        .from(SETUP)
        .where(isLiving(id, standings))
        .fetchOptional(SETUP.REVISION);
  }

  private Condition isLiving(SetupId id, Set<Standing> standings) {
    return SETUP
        .STUDIO_ID
        .eq(in.studio().text())
        .and(SETUP.ID.eq(id.text()))
        .and(SETUP.DELETED_AT.isNull())
        .and(SetupHistory.standsSo(SETUP.STATE, SETUP.ARCHIVED, standings));
  }

  /** Those of some setups that the studio has, by their ids. */
  public Map<SetupId, StoredSetup> listOf(Collection<SetupId> ids) {
    return documents.listOf(ids.stream().map(SetupId::text).toList()).stream()
        .map(Setups::setup)
        .collect(Collectors.toMap(StoredSetup::id, setup -> setup));
  }

  /** At most so many setups, the last changed first, from the start or from where a page ended. */
  public Page<StoredSetup> list(Optional<Page.Place> after, int limit) {
    Page<Documents.Stored> page = documents.list(after, limit);
    return new Page<>(page.items().stream().map(Setups::setup).toList(), page.next());
  }

  /**
   * At most so many setups that name a location, the last changed first.
   *
   * @param standings only those that stand so
   */
  public Page<StoredSetup> listAt(
      LocationId location, Set<Standing> standings, Optional<Page.Place> after, int limit) {
    Page<Documents.Stored> page =
        documents.list(
            SETUP
                .LOCATION_ID
                .eq(location.text())
                .and(SetupHistory.standsSo(SETUP.STATE, SETUP.ARCHIVED, standings)),
            after,
            limit);
    return new Page<>(page.items().stream().map(Setups::setup).toList(), page.next());
  }

  /** How many setups name a location. */
  public int countAt(LocationId location) {
    return in.sql()
        .fetchCount(
            SETUP,
            SETUP
                .STUDIO_ID
                .eq(in.studio().text())
                .and(SETUP.LOCATION_ID.eq(location.text()))
                .and(SETUP.DELETED_AT.isNull()));
  }

  /** All setups that there are, deleted ones too. */
  public Set<SetupId> idsEver() {
    return documents.idsEver().stream().map(SetupId::new).collect(Collectors.toSet());
  }

  public int count() {
    return documents.count();
  }

  /**
   * The titles of those that stand so, by title.
   *
   * @param most so many at most, the last changed ones
   */
  public Map<SetupId, String> titles(Set<Standing> standings, int most) {
    Map<SetupId, String> titles = new LinkedHashMap<>();
    in.sql()
        .select(SETUP.ID, SETUP.TITLE)
        .from(SETUP)
        .where(SETUP.STUDIO_ID.eq(in.studio().text()))
        .and(SETUP.DELETED_AT.isNull())
        .and(SetupHistory.standsSo(SETUP.STATE, SETUP.ARCHIVED, standings))
        .orderBy(SETUP.CHANGED_AT.desc(), SETUP.ID)
        .limit(most)
        .fetch()
        .sortAsc(SETUP.TITLE)
        .forEach(found -> titles.put(new SetupId(found.value1()), found.value2()));
    return titles;
  }

  /** The current revision of each setup that stands so. */
  public Map<SetupId, Integer> revisions(Set<Standing> standings) {
    return in.sql()
        .select(SETUP.ID, SETUP.REVISION)
        .from(SETUP)
        .where(SETUP.STUDIO_ID.eq(in.studio().text()))
        .and(SETUP.DELETED_AT.isNull())
        .and(SetupHistory.standsSo(SETUP.STATE, SETUP.ARCHIVED, standings))
        .fetchMap(found -> new SetupId(found.get(SETUP.ID)), found -> found.get(SETUP.REVISION));
  }

  /**
   * Who changed a setup last.
   *
   * @param title as it is now
   */
  public record LastChange(SetupId id, String title, PersonId by, Instant at) {}

  /** The last changes of those of some living setups that stand so, the newest first. */
  public List<LastChange> lastChanges(Collection<SetupId> of, Set<Standing> standings) {
    return of.isEmpty()
        ? List.of()
        : in.sql()
            .select(SETUP.ID, SETUP.TITLE, SETUP.CHANGED_BY, SETUP.CHANGED_AT)
            .from(SETUP)
            .where(SETUP.STUDIO_ID.eq(in.studio().text()))
            .and(SETUP.ID.eq(DSL.any(of.stream().map(SetupId::text).toArray(String[]::new))))
            .and(SETUP.DELETED_AT.isNull())
            .and(SetupHistory.standsSo(SETUP.STATE, SETUP.ARCHIVED, standings))
            .orderBy(SETUP.CHANGED_AT.desc(), SETUP.ID)
            .fetch(
                found ->
                    new LastChange(
                        new SetupId(found.get(SETUP.ID)),
                        found.get(SETUP.TITLE),
                        new PersonId(found.get(SETUP.CHANGED_BY)),
                        found.get(SETUP.CHANGED_AT)));
  }

  /** Puts another document in the place of the revision that it was made from. */
  public Saving replace(SetupId id, int basedOn, String title, String document, String message) {
    return signed(
        id, document, documents.replace(id.text(), basedOn, title, document, message, Map.of()));
  }

  /**
   * The same where the document tells what was really used.
   *
   * @param planned the revision that was planned
   */
  public Saving replaceByUsed(
      SetupId id, int basedOn, int planned, String title, String document, String message) {
    return signed(
        id,
        document,
        documents.replace(
            id.text(),
            basedOn,
            title,
            document,
            message,
            Map.of(SETUP_REVISION.PLANNED_REVISION, planned)));
  }

  /** The revision that was planned, where a revision tells what was really used of it. */
  public Optional<Integer> findPlanned(SetupId id, int revision) {
    return in.sql()
        .select(SETUP_REVISION.PLANNED_REVISION)
        .from(SETUP_REVISION)
        .where(SETUP_REVISION.STUDIO_ID.eq(in.studio().text()))
        .and(SETUP_REVISION.SETUP_ID.eq(id.text()))
        .and(SETUP_REVISION.REVISION.eq(revision))
        .and(SETUP_REVISION.PLANNED_REVISION.isNotNull())
        .fetchOptional(SETUP_REVISION.PLANNED_REVISION);
  }

  /** The last that tells what was really used, beside what was planned. */
  public Optional<UsedRevision> findUsed(SetupId id) {
    return in.sql()
        .select(SETUP_REVISION.REVISION, SETUP_REVISION.PLANNED_REVISION)
        .from(SETUP_REVISION)
        .where(SETUP_REVISION.STUDIO_ID.eq(in.studio().text()))
        .and(SETUP_REVISION.SETUP_ID.eq(id.text()))
        .and(SETUP_REVISION.PLANNED_REVISION.isNotNull())
        .orderBy(SETUP_REVISION.REVISION.desc())
        .limit(1)
        .fetchOptional()
        .map(
            found ->
                new UsedRevision(
                    findRevision(id, found.get(SETUP_REVISION.PLANNED_REVISION)).orElseThrow(),
                    findRevision(id, found.get(SETUP_REVISION.REVISION)).orElseThrow()));
  }

  /**
   * Where those of some setups come from that come from another.
   *
   * @param standings only where the other stood so then
   */
  public Map<SetupId, Parent> listParents(Collection<SetupId> of, Set<Standing> standings) {
    return in.sql()
        .select(SETUP.ID, SETUP.PARENT_ID, SETUP.PARENT_REVISION, SETUP_REVISION.TITLE)
        .from(SETUP)
        .join(SETUP_REVISION)
        .on(SETUP_REVISION.STUDIO_ID.eq(SETUP.STUDIO_ID))
        .and(SETUP_REVISION.SETUP_ID.eq(SETUP.PARENT_ID))
        .and(SETUP_REVISION.REVISION.eq(SETUP.PARENT_REVISION))
        .where(SETUP.STUDIO_ID.eq(in.studio().text()))
        .and(SETUP.ID.in(of.stream().map(SetupId::text).toList()))
        .and(SetupHistory.stoodSo(standings))
        .fetchMap(
            found -> new SetupId(found.get(SETUP.ID)),
            found ->
                new Parent(
                    new SetupId(found.get(SETUP.PARENT_ID)),
                    found.get(SETUP.PARENT_REVISION),
                    found.get(SETUP_REVISION.TITLE)));
  }

  /**
   * At most so many setups that were made from a setup, the last changed first.
   *
   * @param standings only those that stand so
   */
  public List<Child> listChildren(SetupId of, Set<Standing> standings, int limit) {
    return in.sql()
        .select(SETUP.ID, SETUP.REVISION, SETUP.TITLE, SETUP.CHANGED_AT, SETUP.PARENT_REVISION)
        .from(SETUP)
        .where(SETUP.STUDIO_ID.eq(in.studio().text()))
        .and(SETUP.PARENT_ID.eq(of.text()))
        .and(SETUP.DELETED_AT.isNull())
        .and(SetupHistory.standsSo(SETUP.STATE, SETUP.ARCHIVED, standings))
        .orderBy(SETUP.CHANGED_AT.desc(), SETUP.ID.desc())
        .limit(limit)
        .fetch(
            found ->
                new Child(
                    new SetupId(found.get(SETUP.ID)),
                    found.get(SETUP.REVISION),
                    found.get(SETUP.TITLE),
                    found.get(SETUP.CHANGED_AT),
                    found.get(SETUP.PARENT_REVISION)));
  }

  /** Says where a setup stands from now on; its document stays. */
  public Saving stand(SetupId id, int basedOn, Standing standing, String message) {
    Saving saving = documents.mark(id.text(), basedOn, message, columns(standing));
    return find(id).map(now -> signed(id, now.document(), saving)).orElse(saving);
  }

  /**
   * Brings back what a setup was at a revision, also where it was deleted since; it stands where it
   * stood last.
   *
   * @param basedOn the current revision, which may be a deletion
   * @param from the revision that the document is of
   */
  public Saving restore(
      SetupId id, int basedOn, int from, String title, String document, String message) {
    return signed(
        id,
        document,
        documents.restore(
            id.text(),
            basedOn,
            title,
            document,
            message,
            Map.of(SETUP_REVISION.RESTORED_FROM, from)));
  }

  private static Map<Field<?>, Object> columns(Standing standing) {
    return Map.of(
        SETUP.STATE, standing.state().word(),
        SETUP.ARCHIVED, standing.archived());
  }

  /** Takes a setup away; its revisions stay, and the deletion becomes one. */
  public Saving delete(SetupId id, int basedOn, String message) {
    return documents.delete(id.text(), basedOn, message);
  }

  /** Every change, the last first; of a deleted setup too. Empty where there never was one. */
  public List<Revision> listRevisions(SetupId id) {
    return documents.revisions().list(id.text());
  }

  /** A setup as it once was; of a deleted setup too. */
  public Optional<StoredRevision> findRevision(SetupId id, int number) {
    return documents.revisions().find(id.text(), number);
  }

  private static StoredSetup setup(Documents.Stored stored) {
    return new StoredSetup(
        new SetupId(stored.id()),
        stored.revision(),
        stored.document(),
        stored.label(),
        stored.changedAt(),
        stored.changedBy(),
        standing(stored.more()));
  }

  static Standing standing(Record found) {
    return new Standing(Standing.State.of(found.get(SETUP.STATE)), found.get(SETUP.ARCHIVED));
  }
}
