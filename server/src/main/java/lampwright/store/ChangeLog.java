package lampwright.store;

import static lampwright.schema.generated.Tables.CATALOGUE;
import static lampwright.schema.generated.Tables.CHANGE_LOG;
import static lampwright.schema.generated.Tables.LOCATION;
import static lampwright.schema.generated.Tables.SETUP;
import static lampwright.schema.generated.Tables.SETUP_MEANING;
import static lampwright.schema.generated.Tables.SETUP_SIGNATURE;
import static org.jooq.impl.DSL.row;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lampwright.people.PersonId;
import lampwright.people.StudioId;
import lampwright.schema.WorkingDatabase;
import lampwright.setup.SetupId;
import org.jooq.Condition;
import org.jooq.Record;
import org.jooq.impl.DSL;

/**
 * What the search index follows: every change of every studio's setups, in an order that nothing is
 * ever added before.
 */
public final class ChangeLog {

  private static final int ROWS_AT_A_TIME = 200;

  /**
   * Lines of transactions that are older than every open one. A later line may be committed first;
   * to read only up to here never passes it by.
   */
  private static final Condition SETTLED =
      DSL.condition(
          "{0} < pg_snapshot_xmin(pg_current_snapshot())::text::bigint", CHANGE_LOG.TRANSACTION_ID);

  private final IndexerTransaction in;

  public ChangeLog(IndexerTransaction in) {
    this.in = in;
  }

  /**
   * Which database this is, and which run of its history: another after it was loaded from a dump
   * or set back to a point in time, when transactions are numbered anew.
   */
  public String catalogueIdentity() {
    return in.sql()
        .select(
            DSL.concat(CATALOGUE.IDENTITY, DSL.field(WorkingDatabase.RUN_OF_HISTORY, String.class)))
        .from(CATALOGUE)
        .fetchSingle()
        .value1();
  }

  /** The last settled line; {@link Bookmark#START} where there is none. */
  public Bookmark newestBookmark() {
    return in.sql()
        .select(CHANGE_LOG.TRANSACTION_ID, CHANGE_LOG.SEQ)
        .from(CHANGE_LOG)
        .where(SETTLED)
        .orderBy(CHANGE_LOG.TRANSACTION_ID.desc(), CHANGE_LOG.SEQ.desc())
        .limit(1)
        .fetchOptional(ChangeLog::bookmark)
        .orElse(Bookmark.START);
  }

  /** Whether the log holds the line of a bookmark; an older backup may have lost it. */
  public boolean reaches(Bookmark bookmark) {
    return bookmark.equals(Bookmark.START)
        || in.sql()
            .fetchExists(
                CHANGE_LOG,
                CHANGE_LOG
                    .SEQ
                    .eq(bookmark.seq())
                    .and(CHANGE_LOG.TRANSACTION_ID.eq(bookmark.transactionId())));
  }

  /** The settled changes of setups after a bookmark, oldest first, at most so many. */
  public List<SetupChange> setupChangesAfter(Bookmark bookmark, int limit) {
    return in.sql()
        .select(CHANGE_LOG.TRANSACTION_ID, CHANGE_LOG.SEQ, CHANGE_LOG.STUDIO_ID)
        .select(CHANGE_LOG.SUBJECT_ID, CHANGE_LOG.REVISION)
        .select(SETUP.ID, SETUP.REVISION, SETUP.TITLE, SETUP.DOCUMENT)
        .select(SETUP.CHANGED_AT, SETUP.CHANGED_BY, SETUP.CREATED_BY, SETUP.STATE, SETUP.ARCHIVED)
        .select(SETUP_MEANING.MODEL, SETUP_MEANING.NUMBERS)
        .select(SETUP_SIGNATURE.VERSION, SETUP_SIGNATURE.SIGNATURE)
        .select(Beside.TONES, LOCATION.LATITUDE_DEG, LOCATION.LONGITUDE_DEG)
        .from(CHANGE_LOG)
        .leftJoin(SETUP)
        .on(SETUP.STUDIO_ID.eq(CHANGE_LOG.STUDIO_ID))
        .and(SETUP.ID.eq(CHANGE_LOG.SUBJECT_ID))
        .and(SETUP.DELETED_AT.isNull())
        .leftJoin(SETUP_MEANING)
        .on(SETUP_MEANING.STUDIO_ID.eq(SETUP.STUDIO_ID))
        .and(SETUP_MEANING.SETUP_ID.eq(SETUP.ID))
        .leftJoin(SETUP_SIGNATURE)
        .on(isOfCurrentRevision())
        .leftJoin(LOCATION)
        .on(Beside.isLocation())
        .where(SETTLED)
        .and(CHANGE_LOG.KIND.eq(ChangedKind.SETUP.word()))
        .and(
            row(CHANGE_LOG.TRANSACTION_ID, CHANGE_LOG.SEQ)
                .greaterThan(bookmark.transactionId(), bookmark.seq()))
        .orderBy(CHANGE_LOG.TRANSACTION_ID, CHANGE_LOG.SEQ)
        .limit(limit)
        .fetch(ChangeLog::change);
  }

  /** How many setups there are in all studios. */
  public long countSetups() {
    return in.sql().fetchCount(SETUP, SETUP.DELETED_AT.isNull());
  }

  /** Every setup of every studio, read as it is consumed. To be closed before the transaction. */
  public Stream<SetupOfStudio> streamSetups() {
    return in
        .sql()
        .select(SETUP.STUDIO_ID, SETUP.ID, SETUP.REVISION, SETUP.TITLE, SETUP.DOCUMENT)
        .select(SETUP.CHANGED_AT, SETUP.CHANGED_BY, SETUP.CREATED_BY, SETUP.STATE, SETUP.ARCHIVED)
        .select(SETUP_MEANING.MODEL, SETUP_MEANING.NUMBERS)
        .select(SETUP_SIGNATURE.VERSION, SETUP_SIGNATURE.SIGNATURE)
        .select(Beside.TONES, LOCATION.LATITUDE_DEG, LOCATION.LONGITUDE_DEG)
        .from(SETUP)
        .leftJoin(SETUP_MEANING)
        .on(SETUP_MEANING.STUDIO_ID.eq(SETUP.STUDIO_ID))
        .and(SETUP_MEANING.SETUP_ID.eq(SETUP.ID))
        .leftJoin(SETUP_SIGNATURE)
        .on(isOfCurrentRevision())
        .leftJoin(LOCATION)
        .on(Beside.isLocation())
        .where(SETUP.DELETED_AT.isNull())
        .orderBy(SETUP.STUDIO_ID, SETUP.ID)
        .fetchSize(ROWS_AT_A_TIME)
        .stream()
        .map(found -> indexed(new StudioId(found.get(SETUP.STUDIO_ID)), found));
  }

  static Condition isOfCurrentRevision() {
    return SETUP_SIGNATURE
        .STUDIO_ID
        .eq(SETUP.STUDIO_ID)
        .and(SETUP_SIGNATURE.SETUP_ID.eq(SETUP.ID))
        .and(SETUP_SIGNATURE.REVISION.eq(SETUP.REVISION));
  }

  private static Bookmark bookmark(Record found) {
    return new Bookmark(found.get(CHANGE_LOG.TRANSACTION_ID), found.get(CHANGE_LOG.SEQ));
  }

  private static SetupChange change(Record found) {
    boolean living = found.get(SETUP.ID) != null;
    StudioId studio = new StudioId(found.get(CHANGE_LOG.STUDIO_ID));
    return new SetupChange(
        bookmark(found),
        studio,
        new SetupId(found.get(CHANGE_LOG.SUBJECT_ID)),
        found.get(CHANGE_LOG.REVISION),
        living ? Optional.of(indexed(studio, found)) : Optional.empty());
  }

  private static SetupOfStudio indexed(StudioId studio, Record found) {
    SetupOfStudio alone = ofStudio(studio, found);
    return alone.with(Beside.tones(found), Beside.location(found));
  }

  /** The setup without what stands beside it. */
  static SetupOfStudio ofStudio(StudioId studio, Record found) {
    return new SetupOfStudio(
        studio,
        setup(found),
        new PersonId(found.get(SETUP.CREATED_BY)),
        SetupMeanings.meaning(found),
        Signatures.stored(found),
        Optional.empty(),
        Optional.empty());
  }

  private static StoredSetup setup(Record found) {
    return new StoredSetup(
        new SetupId(found.get(SETUP.ID)),
        found.get(SETUP.REVISION),
        found.get(SETUP.DOCUMENT).data(),
        found.get(SETUP.TITLE),
        found.get(SETUP.CHANGED_AT),
        new PersonId(found.get(SETUP.CHANGED_BY)),
        Setups.standing(found));
  }
}
