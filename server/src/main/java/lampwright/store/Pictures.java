package lampwright.store;

import static lampwright.schema.generated.Tables.PICTURE;
import static org.jooq.impl.DSL.row;
import static org.jooq.impl.DSL.val;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lampwright.people.PersonId;
import lampwright.schema.Snapshot;
import lampwright.setup.PictureId;
import lampwright.setup.PictureKind;
import lampwright.setup.SetupId;
import org.jooq.Condition;
import org.jooq.JSONB;
import org.jooq.Record;
import org.jooq.impl.DSL;

/** The pictures of the studio that the transaction is in; their bytes are {@link PictureFiles}. */
public final class Pictures {

  /** Any number: a file's own lock that falls on it only waits without need. */
  private static final long ALL_FILES = 0x70696374757265L;

  private final StudioTransaction in;
  private final Documents documents;

  public Pictures(StudioTransaction in) {
    this.in = in;
    this.documents = new Documents(in, Shelf.PICTURES);
  }

  /** Keeps a new picture of a setup as its revision 1. Its file must be there already. */
  public StoredPicture create(
      PictureId id, SetupId setup, String kind, String document, StoredPicture.File file) {
    documents.create(
        id.text(),
        kind,
        document,
        "",
        Map.of(
            PICTURE.SETUP_ID, setup.text(),
            PICTURE.SHA256, file.sha256(),
            PICTURE.BYTES, file.bytes(),
            PICTURE.MEDIA_TYPE, file.mediaType(),
            PICTURE.WIDTH, file.width(),
            PICTURE.HEIGHT, file.height(),
            PICTURE.FACTS, JSONB.jsonb(file.facts()),
            PICTURE.STATISTICS, JSONB.jsonb(file.statistics())));
    new SetupsToIndex(in).becauseOf(id);
    return find(setup, id).orElseThrow();
  }

  /** A picture of a setup. */
  public Optional<StoredPicture> find(SetupId setup, PictureId id) {
    return in.sql()
        .selectFrom(PICTURE)
        .where(isLivingOf(setup))
        .and(PICTURE.ID.eq(id.text()))
        .fetchOptional(Pictures::stored);
  }

  /** At most so many of a setup, the last changed first, from where a page ended. */
  public Page<StoredPicture> list(SetupId setup, Optional<Page.Place> after, int limit) {
    Condition further =
        after
            .<Condition>map(
                place ->
                    row(PICTURE.CHANGED_AT, PICTURE.ID).lessThan(place.changedAt(), place.id()))
            .orElse(DSL.noCondition());
    List<StoredPicture> found =
        in.sql()
            .selectFrom(PICTURE)
            .where(isLivingOf(setup))
            .and(further)
            .orderBy(PICTURE.CHANGED_AT.desc(), PICTURE.ID.desc())
            .limit(limit + 1)
            .fetch(Pictures::stored);
    if (found.size() <= limit) {
      return new Page<>(found, Optional.empty());
    }
    StoredPicture last = found.get(limit - 1);
    return new Page<>(
        found.subList(0, limit), Optional.of(new Page.Place(last.changedAt(), last.id().text())));
  }

  /** Of some setups the finished picture that was changed last, all in one query. */
  public Map<SetupId, StoredPicture> finals(Collection<SetupId> setups) {
    return in.sql()
        .select()
        .distinctOn(PICTURE.SETUP_ID)
        .from(PICTURE)
        .where(PICTURE.STUDIO_ID.eq(in.studio().text()))
        .and(PICTURE.SETUP_ID.in(setups.stream().map(SetupId::text).toList()))
        .and(PICTURE.KIND.eq(PictureKind.FINAL.word()))
        .and(PICTURE.DELETED_AT.isNull())
        .orderBy(PICTURE.SETUP_ID, PICTURE.CHANGED_AT.desc(), PICTURE.ID.desc())
        .fetchMap(found -> new SetupId(found.get(PICTURE.SETUP_ID)), Pictures::stored);
  }

  public int count(SetupId setup) {
    return in.sql().fetchCount(PICTURE, isLivingOf(setup));
  }

  /** Puts another note in the place of the revision that it was made from. */
  public Saving replace(PictureId id, int basedOn, String kind, String document) {
    return indexed(id, documents.replace(id.text(), basedOn, kind, document, "", Map.of()));
  }

  /** Takes a picture away; what was said of it stays in its revisions. */
  public Saving delete(PictureId id, int basedOn) {
    return indexed(id, documents.delete(id.text(), basedOn, ""));
  }

  private Saving indexed(PictureId id, Saving saving) {
    if (saving instanceof Saving.Saved) {
      new SetupsToIndex(in).becauseOf(id);
    }
    return saving;
  }

  /**
   * Holds a file until the transaction ends, together with others: nobody takes it away meanwhile.
   */
  public void holdFile(String sha256) {
    in.sql().fetch("select pg_advisory_xact_lock_shared({0})", val(lock(sha256)));
  }

  /**
   * Holds every file until the transaction ends: nobody takes any away meanwhile. For who is about
   * to name more files than there is room for single locks.
   */
  public void holdAllFiles() {
    in.sql().fetch("select pg_advisory_xact_lock({0})", val(ALL_FILES));
  }

  /**
   * Whether files may be taken away until the transaction ends: not while a backup is made, whose
   * rows may name what no row names any more.
   */
  public static boolean mayTakeAway(AnonymousTransaction in) {
    return in.sql()
        .select(
            DSL.field("pg_try_advisory_xact_lock_shared({0})", Boolean.class, val(Snapshot.LOCK)))
        .fetchSingle()
        .value1();
  }

  /** Holds a file alone until the transaction ends: nobody is about to name it meanwhile. */
  public static void holdFileAlone(AnonymousTransaction in, String sha256) {
    in.sql().fetch("select pg_advisory_xact_lock_shared({0})", val(ALL_FILES));
    in.sql().fetch("select pg_advisory_xact_lock({0})", val(lock(sha256)));
  }

  /** Two files may share a lock; then one waits for the other without need. */
  private static long lock(String sha256) {
    return Long.parseUnsignedLong(sha256.substring(0, 16), 16);
  }

  /** The hashes of all files that any studio's pictures need. */
  public static Set<String> hashes(IndexerTransaction in) {
    return in.sql()
        .selectDistinct(PICTURE.SHA256)
        .from(PICTURE)
        .where(PICTURE.DELETED_AT.isNull())
        .fetchSet(PICTURE.SHA256);
  }

  /** Whether any studio's picture needs a file. */
  public static boolean isNeeded(IndexerTransaction in, String sha256) {
    return in.sql()
            .select(PICTURE.SHA256)
            .from(PICTURE)
            .where(PICTURE.SHA256.eq(sha256))
            .and(PICTURE.DELETED_AT.isNull())
            .limit(1)
            .fetchOne()
        != null;
  }

  private Condition isLivingOf(SetupId setup) {
    return PICTURE
        .STUDIO_ID
        .eq(in.studio().text())
        .and(PICTURE.SETUP_ID.eq(setup.text()))
        .and(PICTURE.DELETED_AT.isNull());
  }

  private static StoredPicture stored(Record found) {
    return new StoredPicture(
        new PictureId(found.get(PICTURE.ID)),
        new SetupId(found.get(PICTURE.SETUP_ID)),
        found.get(PICTURE.REVISION),
        found.get(PICTURE.DOCUMENT).data(),
        new StoredPicture.File(
            found.get(PICTURE.SHA256),
            found.get(PICTURE.BYTES),
            found.get(PICTURE.MEDIA_TYPE),
            found.get(PICTURE.WIDTH),
            found.get(PICTURE.HEIGHT),
            found.get(PICTURE.FACTS).data(),
            found.get(PICTURE.STATISTICS).data()),
        found.get(PICTURE.CREATED_AT),
        found.get(PICTURE.CHANGED_AT),
        new PersonId(found.get(PICTURE.CHANGED_BY)));
  }
}
