package lampwright.store;

import static lampwright.schema.generated.Tables.CHANGE_LOG;
import static lampwright.schema.generated.Tables.SETUP;
import static lampwright.schema.generated.Tables.SETUP_MEANING;
import static lampwright.schema.generated.Tables.SETUP_SIGNATURE;
import static org.jooq.impl.DSL.val;

import java.util.List;
import java.util.Optional;
import lampwright.meaning.Meaning;
import lampwright.meaning.SentenceModel;
import lampwright.people.StudioId;
import org.jooq.Condition;
import org.jooq.Record;
import org.jooq.impl.DSL;

/** What setups mean, as far as it was worked out by the model that this server has. */
public final class SetupMeanings {

  private static final long ALONE = 7_301_948_275_510_382L;

  private SetupMeanings() {}

  /** Setups without a meaning, or with one of an older revision; at most so many. */
  public static List<SetupOfStudio> wanting(IndexerTransaction in, int limit) {
    return in.sql()
        .select(SETUP.STUDIO_ID, SETUP.ID, SETUP.REVISION, SETUP.TITLE, SETUP.DOCUMENT)
        .select(SETUP.CHANGED_AT, SETUP.CHANGED_BY, SETUP.CREATED_BY, SETUP.STATE, SETUP.ARCHIVED)
        .select(SETUP_MEANING.MODEL, SETUP_MEANING.NUMBERS)
        .select(SETUP_SIGNATURE.VERSION, SETUP_SIGNATURE.SIGNATURE)
        .from(SETUP)
        .leftJoin(SETUP_MEANING)
        .on(SETUP_MEANING.STUDIO_ID.eq(SETUP.STUDIO_ID))
        .and(SETUP_MEANING.SETUP_ID.eq(SETUP.ID))
        .leftJoin(SETUP_SIGNATURE)
        .on(ChangeLog.isOfCurrentRevision())
        .where(isWanting())
        .orderBy(SETUP.CHANGED_AT.desc())
        .limit(limit)
        .fetch(found -> ChangeLog.ofStudio(new StudioId(found.get(SETUP.STUDIO_ID)), found));
  }

  /** How many setups there are of which {@link #wanting} gives some. */
  public static int countWanting(IndexerTransaction in) {
    return in.sql()
        .selectCount()
        .from(SETUP)
        .leftJoin(SETUP_MEANING)
        .on(SETUP_MEANING.STUDIO_ID.eq(SETUP.STUDIO_ID))
        .and(SETUP_MEANING.SETUP_ID.eq(SETUP.ID))
        .where(isWanting())
        .fetchSingle()
        .value1();
  }

  private static Condition isWanting() {
    return SETUP
        .DELETED_AT
        .isNull()
        .and(
            SETUP_MEANING
                .SETUP_ID
                .isNull()
                .or(SETUP_MEANING.REVISION.ne(SETUP.REVISION))
                .or(SETUP_MEANING.MODEL.ne(SentenceModel.NAME)));
  }

  /**
   * Keeps what a revision of a setup means, and tells the index that there is something new; does
   * nothing where the setup has gone on meanwhile, or away.
   */
  public static void keep(UpkeepTransaction in, StoredSetup of, Meaning meaning) {
    boolean isNow =
        in.sql()
            .fetchExists(
                SETUP,
                SETUP
                    .STUDIO_ID
                    .eq(in.studio().text())
                    .and(SETUP.ID.eq(of.id().text()))
                    .and(SETUP.REVISION.eq(of.revision()))
                    .and(SETUP.DELETED_AT.isNull()));
    if (!isNow) {
      return;
    }
    in.sql()
        .insertInto(SETUP_MEANING)
        .set(SETUP_MEANING.STUDIO_ID, in.studio().text())
        .set(SETUP_MEANING.SETUP_ID, of.id().text())
        .set(SETUP_MEANING.REVISION, of.revision())
        .set(SETUP_MEANING.MODEL, SentenceModel.NAME)
        .set(SETUP_MEANING.NUMBERS, meaning.toBytes())
        .onConflict(SETUP_MEANING.STUDIO_ID, SETUP_MEANING.SETUP_ID)
        .doUpdate()
        .set(SETUP_MEANING.REVISION, of.revision())
        .set(SETUP_MEANING.MODEL, SentenceModel.NAME)
        .set(SETUP_MEANING.NUMBERS, meaning.toBytes())
        .execute();
    in.sql()
        .insertInto(CHANGE_LOG)
        .set(CHANGE_LOG.STUDIO_ID, in.studio().text())
        .set(CHANGE_LOG.KIND, ChangedKind.SETUP.word())
        .set(CHANGE_LOG.SUBJECT_ID, of.id().text())
        .set(CHANGE_LOG.REVISION, of.revision())
        .set(CHANGE_LOG.DELETED, false)
        .execute();
  }

  /**
   * Whether this transaction may work meanings out: one of all servers on the database at a time,
   * until it ends.
   */
  public static boolean mayWork(AnonymousTransaction in) {
    return in.sql()
        .select(DSL.field("pg_try_advisory_xact_lock({0})", Boolean.class, val(ALONE)))
        .fetchSingle()
        .value1();
  }

  /** The meaning in a row that was read with its setup; one of another model is none. */
  static Optional<Meaning> meaning(Record found) {
    return SentenceModel.NAME.equals(found.get(SETUP_MEANING.MODEL))
        ? Optional.of(Meaning.ofBytes(found.get(SETUP_MEANING.NUMBERS)))
        : Optional.empty();
  }
}
