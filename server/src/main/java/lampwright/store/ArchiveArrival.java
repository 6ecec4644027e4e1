package lampwright.store;

import static lampwright.schema.generated.Tables.CHANGE_LOG;
import static lampwright.schema.generated.Tables.PICTURE;
import static lampwright.schema.generated.Tables.SETUP;
import static lampwright.schema.generated.Tables.SETUP_REVISION;
import static lampwright.schema.generated.Tables.TAKE;
import static org.jooq.impl.DSL.val;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import lampwright.archive.ArchiveKind;
import lampwright.archive.Thing;
import lampwright.archive.Version;
import lampwright.document.Json;
import lampwright.people.PersonId;
import lampwright.setup.PictureId;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.setup.takes.Take;
import org.jooq.Field;
import org.jooq.JSONB;
import org.jooq.impl.DSL;

/**
 * Puts the things of an archive, which was found sound, into the transaction's studio as they were:
 * with their ids, times, authors and revisions. Revisions come one by one, each thing's in order.
 */
public final class ArchiveArrival {

  private final StudioTransaction in;
  private final Function<String, PersonId> authors;
  private final Signatures signatures;
  private final Set<String> arrivedSetups = new HashSet<>();

  /**
   * Begins; no other archive comes into the studio until the transaction ends.
   *
   * @param authors who an archive's key is here
   */
  public ArchiveArrival(StudioTransaction in, Function<String, PersonId> authors) {
    this.in = in;
    this.authors = authors;
    this.signatures = new Signatures(in);
    in.sql().execute("set constraints lampwright.setup_comes_from_revision deferred");
  }

  /** Lets no other archive come into the studio until the transaction ends. */
  public static void hold(StudioTransaction in) {
    in.sql()
        .fetch("select pg_advisory_xact_lock(hashtextextended({0}, 5))", val(in.studio().text()));
  }

  /**
   * Adds a revision, and with its first one the thing.
   *
   * @param document what its document says
   * @param file of a picture
   */
  public void add(
      ArchiveKind kind,
      Thing thing,
      Version version,
      Object document,
      Optional<StoredPicture.File> file) {
    Shelf shelf = ArchiveShelf.of(kind).shelf();
    String label = kind.title(document, thing);
    if (version.revision() == 1) {
      begin(kind, thing, version, label, more(kind, thing, version, document, file));
    }
    remember(shelf.history(), version, label, kind == ArchiveKind.SETUPS);
    if (document instanceof SetupDocument setup && !version.deleted()) {
      signatures.keep(new SetupId(version.id()), version.revision(), setup);
    }
    if (version.revision() == thing.revision()) {
      settle(shelf, version, label, kind == ArchiveKind.SETUPS);
      tellOfSetup(kind, thing);
    }
  }

  private void begin(
      ArchiveKind kind, Thing thing, Version first, String label, Map<Field<?>, Object> more) {
    Shelf.Now now = ArchiveShelf.of(kind).shelf().now();
    in.sql()
        .insertInto(now.table())
        .set(now.studio(), in.studio().text())
        .set(now.id(), thing.id())
        .set(now.revision(), 1)
        .set(now.label(), label)
        .set(now.document(), json(first))
        .set(now.createdAt(), thing.createdAt())
        .set(now.createdBy(), author(thing.createdBy()))
        .set(now.changedAt(), first.changedAt())
        .set(now.changedBy(), author(first.changedBy()))
        .set(more)
        .execute();
  }

  private static Map<Field<?>, Object> more(
      ArchiveKind kind,
      Thing thing,
      Version first,
      Object document,
      Optional<StoredPicture.File> file) {
    Map<Field<?>, Object> more = new LinkedHashMap<>();
    thing.setup().ifPresent(setup -> more.put(ArchiveShelf.of(kind).setup().orElseThrow(), setup));
    switch (kind) {
      case SETUPS -> {
        more.put(SETUP.STATE, first.standing().orElseThrow().state().word());
        more.put(SETUP.ARCHIVED, first.standing().orElseThrow().archived());
        thing
            .parent()
            .ifPresent(
                parent -> {
                  more.put(SETUP.PARENT_ID, parent.id());
                  more.put(SETUP.PARENT_REVISION, parent.revision());
                });
      }
      case PICTURES -> {
        StoredPicture.File of = file.orElseThrow();
        more.put(PICTURE.SHA256, of.sha256());
        more.put(PICTURE.BYTES, of.bytes());
        more.put(PICTURE.MEDIA_TYPE, of.mediaType());
        more.put(PICTURE.WIDTH, of.width());
        more.put(PICTURE.HEIGHT, of.height());
        more.put(PICTURE.FACTS, JSONB.jsonb(of.facts()));
        more.put(PICTURE.STATISTICS, JSONB.jsonb(of.statistics()));
      }
      case TAKES -> {
        Take take = (Take) document;
        more.put(TAKE.SETUP_REVISION, take.setupRevision());
        more.put(TAKE.TAKEN_AT, take.at().toInstant());
        more.put(TAKE.DAY, take.day());
        more.put(TAKE.NUMBER, thing.number().orElseThrow());
        more.put(TAKE.CLIENT_KEY, take.clientKey());
      }
      case GEAR, KITS, LOCATIONS, NOTES, TRAILS -> {}
    }
    return more;
  }

  private void remember(Shelf.History history, Version version, String label, boolean ofSetup) {
    Map<Field<?>, Object> more = new LinkedHashMap<>();
    if (ofSetup) {
      more.put(SETUP_REVISION.STATE, version.standing().orElseThrow().state().word());
      more.put(SETUP_REVISION.ARCHIVED, version.standing().orElseThrow().archived());
      version.planned().ifPresent(planned -> more.put(SETUP_REVISION.PLANNED_REVISION, planned));
      version.restoredFrom().ifPresent(from -> more.put(SETUP_REVISION.RESTORED_FROM, from));
    }
    in.sql()
        .insertInto(history.table())
        .set(history.studio(), in.studio().text())
        .set(history.id(), version.id())
        .set(history.revision(), version.revision())
        .set(history.label(), label)
        .set(history.document(), json(version))
        .set(history.changedAt(), version.changedAt())
        .set(history.changedBy(), author(version.changedBy()))
        .set(history.message(), version.message())
        .set(history.deleted(), version.deleted())
        .set(more)
        .execute();
  }

  /** Makes the thing what its last revision says, and tells the change log. */
  private void settle(Shelf shelf, Version last, String label, boolean ofSetup) {
    Shelf.Now now = shelf.now();
    Map<Field<?>, Object> more = new LinkedHashMap<>();
    if (ofSetup) {
      more.put(SETUP.STATE, last.standing().orElseThrow().state().word());
      more.put(SETUP.ARCHIVED, last.standing().orElseThrow().archived());
    }
    in.sql()
        .update(now.table())
        .set(now.revision(), last.revision())
        .set(now.label(), label)
        .set(now.document(), json(last))
        .set(now.changedAt(), last.changedAt())
        .set(now.changedBy(), author(last.changedBy()))
        .set(
            now.deletedAt(), last.deleted() ? val(last.changedAt()) : DSL.castNull(now.deletedAt()))
        .set(more)
        .where(now.studio().eq(in.studio().text()))
        .and(now.id().eq(last.id()))
        .execute();
    in.sql()
        .insertInto(CHANGE_LOG)
        .set(CHANGE_LOG.STUDIO_ID, in.studio().text())
        .set(CHANGE_LOG.KIND, shelf.kind().word())
        .set(CHANGE_LOG.SUBJECT_ID, last.id())
        .set(CHANGE_LOG.REVISION, last.revision())
        .set(CHANGE_LOG.DELETED, last.deleted())
        .execute();
  }

  /** A setup that was here already looks otherwise with a finished picture. */
  private void tellOfSetup(ArchiveKind kind, Thing thing) {
    if (kind == ArchiveKind.SETUPS) {
      arrivedSetups.add(thing.id());
    }
    if (kind == ArchiveKind.PICTURES && !arrivedSetups.contains(thing.setup().orElseThrow())) {
      new SetupsToIndex(in).becauseOf(new PictureId(thing.id()));
    }
  }

  /** After the last: whatever does not fit is told now, and the search hears of it. */
  public void end() {
    in.sql().execute("set constraints all immediate");
    in.sql().execute("notify " + ChangeListener.CHANNEL);
  }

  private String author(String key) {
    return authors.apply(key).text();
  }

  private static JSONB json(Version version) {
    return JSONB.jsonb(Json.print(version.document()));
  }
}
