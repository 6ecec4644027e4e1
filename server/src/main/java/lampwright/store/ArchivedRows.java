package lampwright.store;

import static lampwright.schema.generated.Tables.PICTURE;
import static lampwright.schema.generated.Tables.SETUP;
import static lampwright.schema.generated.Tables.SETUP_REVISION;
import static lampwright.schema.generated.Tables.STUDIO;
import static lampwright.schema.generated.Tables.TAKE;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Stream;
import lampwright.archive.ArchiveKind;
import lampwright.archive.PictureFile;
import lampwright.archive.Summary;
import lampwright.archive.Thing;
import lampwright.archive.Version;
import lampwright.document.Json;
import lampwright.people.PersonId;
import lampwright.setup.SetupId;
import lampwright.setup.Standing;
import org.jooq.Condition;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.impl.DSL;

/**
 * What an archive of the transaction's studio, or of one setup of it, holds: every thing and every
 * revision, of deleted ones too, by id.
 */
public final class ArchivedRows {

  private static final int ROWS_AT_A_TIME = 200;

  /** So that the order is the same wherever the database stands. */
  private static final String BY_BYTES = "C";

  private static final Field<String> NAMED_LOCATION =
      DSL.field("{0} #>> '{occasion,place,location}'", String.class, SETUP_REVISION.DOCUMENT);

  private final StudioTransaction in;
  private final Optional<SetupId> only;
  private final Map<PersonId, String> keys;

  private ArchivedRows(StudioTransaction in, Optional<SetupId> only) {
    this.in = in;
    this.only = only;
    this.keys = new ArchivedAuthors(in).keys();
  }

  /** The whole studio's. */
  public static ArchivedRows ofStudio(StudioTransaction in) {
    return new ArchivedRows(in, Optional.empty());
  }

  /** One setup's, with the locations that it ever named. */
  public static ArchivedRows ofSetup(StudioTransaction in, SetupId setup) {
    return new ArchivedRows(in, Optional.of(setup));
  }

  /** Whether it is the whole studio's. */
  public boolean isWhole() {
    return only.isEmpty();
  }

  /** What the studio is called. */
  public String studioName() {
    return in.sql()
        .select(STUDIO.NAME)
        .from(STUDIO)
        .where(STUDIO.ID.eq(in.studio().text()))
        .fetchOptional(STUDIO.NAME)
        .orElseThrow();
  }

  /** Hands out each thing of a kind. */
  public void eachThing(ArchiveKind kind, Consumer<Thing> to) {
    ArchiveShelf of = ArchiveShelf.of(kind);
    Shelf.Now now = of.shelf().now();
    try (Stream<Record> rows =
        in
            .sql()
            .select(now.id(), now.revision(), now.createdAt(), now.createdBy())
            .select(of.now())
            .from(now.table())
            .where(now.studio().eq(in.studio().text()))
            .and(isWanted(kind, of, now.id()))
            .orderBy(now.id().collate(BY_BYTES))
            .fetchSize(ROWS_AT_A_TIME)
            .stream()) {
      rows.forEach(row -> to.accept(thing(kind, now, row)));
    }
  }

  private Thing thing(ArchiveKind kind, Shelf.Now now, Record row) {
    Optional<Thing.Origin> parent =
        kind == ArchiveKind.SETUPS
            ? Optional.ofNullable(row.get(SETUP.PARENT_ID))
                .map(id -> new Thing.Origin(id, row.get(SETUP.PARENT_REVISION)))
            : Optional.empty();
    return new Thing(
        row.get(now.id()),
        row.get(now.revision()),
        row.get(now.createdAt()),
        key(row.get(now.createdBy())),
        parent,
        ArchiveShelf.of(kind).setup().map(row::get),
        kind == ArchiveKind.TAKES ? Optional.of(row.get(TAKE.NUMBER)) : Optional.empty(),
        kind == ArchiveKind.PICTURES ? Optional.of(file(row)) : Optional.empty());
  }

  private static PictureFile file(Record row) {
    return new PictureFile(
        row.get(PICTURE.SHA256),
        row.get(PICTURE.BYTES),
        row.get(PICTURE.MEDIA_TYPE),
        row.get(PICTURE.WIDTH),
        row.get(PICTURE.HEIGHT));
  }

  /** Hands out each revision of a kind's things. */
  public void eachVersion(ArchiveKind kind, Consumer<Version> to) {
    ArchiveShelf of = ArchiveShelf.of(kind);
    Shelf.History history = of.shelf().history();
    try (Stream<Record> rows =
        in
            .sql()
            .select(history.id(), history.revision(), history.changedAt(), history.changedBy())
            .select(history.message(), history.deleted(), history.document())
            .select(of.then())
            .from(history.table())
            .where(history.studio().eq(in.studio().text()))
            .and(isWantedThen(kind, of, history.id()))
            .orderBy(history.id().collate(BY_BYTES), history.revision())
            .fetchSize(ROWS_AT_A_TIME)
            .stream()) {
      rows.forEach(row -> to.accept(version(kind, history, row)));
    }
  }

  private Version version(ArchiveKind kind, Shelf.History history, Record row) {
    boolean ofSetup = kind == ArchiveKind.SETUPS;
    return new Version(
        row.get(history.id()),
        row.get(history.revision()),
        row.get(history.changedAt()),
        key(row.get(history.changedBy())),
        row.get(history.message()),
        row.get(history.deleted()),
        ofSetup ? Optional.of(standing(row)) : Optional.empty(),
        ofSetup ? Optional.ofNullable(row.get(SETUP_REVISION.PLANNED_REVISION)) : Optional.empty(),
        ofSetup ? Optional.ofNullable(row.get(SETUP_REVISION.RESTORED_FROM)) : Optional.empty(),
        Json.parse(row.get(history.document()).data()));
  }

  private static Standing standing(Record row) {
    return new Standing(
        Standing.State.of(row.get(SETUP_REVISION.STATE)), row.get(SETUP_REVISION.ARCHIVED));
  }

  /** The hashes of the files that living pictures need. */
  public Set<String> pictureHashes() {
    return new TreeSet<>(
        in.sql()
            .selectDistinct(PICTURE.SHA256)
            .from(PICTURE)
            .where(PICTURE.STUDIO_ID.eq(in.studio().text()))
            .and(PICTURE.DELETED_AT.isNull())
            .and(only.map(id -> PICTURE.SETUP_ID.eq(id.text())).orElse(DSL.noCondition()))
            .fetchSet(PICTURE.SHA256));
  }

  /** What the one setup was made from. */
  public Optional<Summary.Named> parent() {
    return only.flatMap(
        id ->
            in.sql()
                .select(SETUP.PARENT_ID, SETUP.PARENT_REVISION, SETUP_REVISION.TITLE)
                .from(SETUP)
                .join(SETUP_REVISION)
                .on(SETUP_REVISION.STUDIO_ID.eq(SETUP.STUDIO_ID))
                .and(SETUP_REVISION.SETUP_ID.eq(SETUP.PARENT_ID))
                .and(SETUP_REVISION.REVISION.eq(SETUP.PARENT_REVISION))
                .where(SETUP.STUDIO_ID.eq(in.studio().text()))
                .and(SETUP.ID.eq(id.text()))
                .fetchOptional(
                    found ->
                        new Summary.Named(
                            found.get(SETUP.PARENT_ID),
                            found.get(SETUP.PARENT_REVISION),
                            found.get(SETUP_REVISION.TITLE))));
  }

  private Condition isWanted(ArchiveKind kind, ArchiveShelf of, Field<String> id) {
    return only.map(setup -> isOf(setup, kind, of, id)).orElse(DSL.noCondition());
  }

  private Condition isWantedThen(ArchiveKind kind, ArchiveShelf of, Field<String> id) {
    Shelf.Now now = of.shelf().now();
    return only.map(
            setup ->
                id.in(
                    DSL.select(now.id())
                        .from(now.table())
                        .where(now.studio().eq(in.studio().text()))
                        .and(isOf(setup, kind, of, now.id()))))
        .orElse(DSL.noCondition());
  }

  private Condition isOf(SetupId setup, ArchiveKind kind, ArchiveShelf of, Field<String> id) {
    return switch (kind) {
      case GEAR, KITS, TRAILS -> DSL.falseCondition();
      case SETUPS -> id.eq(setup.text());
      case LOCATIONS ->
          id.in(
              DSL.select(NAMED_LOCATION)
                  .from(SETUP_REVISION)
                  .where(SETUP_REVISION.STUDIO_ID.eq(in.studio().text()))
                  .and(SETUP_REVISION.SETUP_ID.eq(setup.text())));
      case PICTURES, TAKES, NOTES -> of.setup().orElseThrow().eq(setup.text());
    };
  }

  private String key(String person) {
    return keys.getOrDefault(new PersonId(person), person);
  }
}
