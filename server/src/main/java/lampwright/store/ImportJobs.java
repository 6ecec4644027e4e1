package lampwright.store;

import static lampwright.schema.generated.Tables.IMPORT_JOB;
import static org.jooq.impl.DSL.field;
import static org.jooq.impl.DSL.not;
import static org.jooq.impl.DSL.val;
import static org.jooq.impl.DSL.when;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lampwright.people.PersonId;
import lampwright.people.StudioId;
import org.jooq.Condition;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.impl.DSL;
import org.jooq.impl.SQLDataType;

/**
 * How far a studio's imports are, for whichever server is asked (migration V27). The server that
 * has the archive says again and again that it lives; what it has not said in time, by the
 * database's clock, is over, and cannot come back to life.
 */
public final class ImportJobs {

  /** For so long a server is believed to live after it said so. */
  public static final Duration BELIEVED = Duration.ofSeconds(15);

  private static final Field<Instant> AT_THIS_MOMENT =
      field("clock_timestamp()", IMPORT_JOB.ALIVE_UNTIL.getDataType());

  private final Transaction in;
  private final StudioId studio;

  public ImportJobs(StudioTransaction in) {
    this(in, in.studio());
  }

  public ImportJobs(UpkeepTransaction in) {
    this(in, in.studio());
  }

  private ImportJobs(Transaction in, StudioId studio) {
    this.in = in;
    this.studio = studio;
  }

  /** How far one is. */
  public enum Step {
    CHECKING,
    PLANNED,
    FAULTY,
    RUNNING,
    COMMITTING,
    IMPORTED,
    FAILED;

    String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    /** Whether its server must live for it to go on. */
    public boolean isOpen() {
      return switch (this) {
        case CHECKING, PLANNED, RUNNING, COMMITTING -> true;
        case FAULTY, IMPORTED, FAILED -> false;
      };
    }

    /** Only ever forward, so that what is written late takes nothing back. */
    private List<String> from() {
      return switch (this) {
        case CHECKING -> List.of(CHECKING.word());
        case PLANNED -> List.of(CHECKING.word(), PLANNED.word());
        case FAULTY -> List.of(CHECKING.word());
        case RUNNING -> List.of(RUNNING.word());
        case COMMITTING, IMPORTED -> List.of(COMMITTING.word());
        case FAILED -> List.of(CHECKING.word(), PLANNED.word(), RUNNING.word());
      };
    }
  }

  /**
   * What its server tells of it.
   *
   * @param plan as its server wrote it down
   * @param faults the same
   * @param trouble why nothing was brought in, the same
   */
  public record Standing(
      Step step,
      int done,
      int total,
      Optional<String> plan,
      Optional<String> faults,
      Optional<String> trouble) {}

  /**
   * One import.
   *
   * @param by who sent the archive
   * @param server which has it
   * @param isOrdered whether somebody wants it carried out, and its server has not answered
   * @param refusal what its server answered instead, in a sentence
   */
  public record Job(
      String id,
      PersonId by,
      String server,
      String clashes,
      Instant begunAt,
      Standing standing,
      boolean isOrdered,
      Optional<String> refusal) {}

  /** What an import's server hears when it tells how far it is. */
  public enum Heard {
    GO_ON,
    /** Somebody wants it carried out. */
    CARRY_OUT,
    /** It is no longer there, or was given up: nothing of it may be kept. */
    GONE
  }

  /** Lets nobody else begin one in the studio until the transaction ends. */
  public void hold() {
    in.sql().fetch("select pg_advisory_xact_lock(hashtextextended({0}, 29))", val(studio.text()));
  }

  /** How many wait or are at work, at all servers. */
  public int countOpen() {
    return in.sql().fetchCount(IMPORT_JOB, isHere().and(isOpen()).and(lives()));
  }

  /** Begins one, of the person. */
  public void begin(String id, PersonId by, String server, String clashes, Instant at) {
    in.sql()
        .insertInto(IMPORT_JOB)
        .set(IMPORT_JOB.STUDIO_ID, studio.text())
        .set(IMPORT_JOB.ID, id)
        .set(IMPORT_JOB.PERSON_ID, by.text())
        .set(IMPORT_JOB.SERVER, server)
        .set(IMPORT_JOB.CLASHES, clashes)
        .set(IMPORT_JOB.STATE, Step.CHECKING.word())
        .set(IMPORT_JOB.BEGUN_AT, at)
        .set(IMPORT_JOB.ALIVE_UNTIL, soon())
        .execute();
  }

  /**
   * One that began after a moment, as it is told at last.
   *
   * @param ended the trouble of one whose server has gone
   */
  public Optional<Job> find(String id, Instant after, String ended) {
    settle(id, ended);
    return in.sql()
        .selectFrom(IMPORT_JOB)
        .where(is(id))
        .and(IMPORT_JOB.BEGUN_AT.gt(after))
        .fetchOptional(ImportJobs::job);
  }

  /**
   * Ends one whose server is not believed to live. It waits for a commit that is under way, so what
   * is told of it never turns out otherwise.
   */
  private void settle(String id, String ended) {
    if (in.sql().fetchExists(IMPORT_JOB, is(id).and(isOpen()).andNot(lives()))) {
      Condition isKept = IMPORT_JOB.STATE.eq(Step.COMMITTING.word());
      in.sql()
          .update(IMPORT_JOB)
          .set(IMPORT_JOB.STATE, when(isKept, Step.IMPORTED.word()).otherwise(Step.FAILED.word()))
          .set(IMPORT_JOB.DONE, when(isKept, IMPORT_JOB.TOTAL).otherwise(IMPORT_JOB.DONE))
          .set(IMPORT_JOB.TROUBLE, when(isKept, DSL.castNull(SQLDataType.CLOB)).otherwise(ended))
          .set(IMPORT_JOB.IS_ORDERED, false)
          .where(is(id))
          .and(isOpen())
          .and(not(lives()))
          .execute();
    }
  }

  /** Keeps what a server tells of one that it has, and that it lives. */
  public Heard tell(String id, String server, Standing now) {
    Optional<Boolean> ordered =
        in.sql()
            .update(IMPORT_JOB)
            .set(IMPORT_JOB.STATE, now.step().word())
            .set(IMPORT_JOB.DONE, now.done())
            .set(IMPORT_JOB.TOTAL, now.total())
            .set(IMPORT_JOB.PLAN, now.plan().orElse(null))
            .set(IMPORT_JOB.FAULTS, now.faults().orElse(null))
            .set(IMPORT_JOB.TROUBLE, now.trouble().orElse(null))
            .set(IMPORT_JOB.ALIVE_UNTIL, soon())
            .where(isAlive(id, server))
            .and(IMPORT_JOB.STATE.in(now.step().from()))
            .returning(IMPORT_JOB.IS_ORDERED)
            .fetchOptional(IMPORT_JOB.IS_ORDERED);
    if (ordered.isPresent()) {
      return ordered.get() ? Heard.CARRY_OUT : Heard.GO_ON;
    }
    return in.sql().fetchExists(IMPORT_JOB, isAlive(id, server)) ? Heard.GO_ON : Heard.GONE;
  }

  /** Tells its server to carry it out; says false where it cannot be any more. */
  public boolean order(String id) {
    return in.sql()
            .update(IMPORT_JOB)
            .set(IMPORT_JOB.IS_ORDERED, true)
            .setNull(IMPORT_JOB.REFUSAL)
            .where(is(id))
            .and(IMPORT_JOB.STATE.eq(Step.PLANNED.word()))
            .and(lives())
            .execute()
        == 1;
  }

  /** Tells who ordered it why it is not carried out; it waits as before. */
  public void refuse(String id, String server, String why) {
    in.sql()
        .update(IMPORT_JOB)
        .set(IMPORT_JOB.IS_ORDERED, false)
        .set(IMPORT_JOB.REFUSAL, why)
        .where(isAlive(id, server))
        .execute();
  }

  /** Begins to carry it out; says false where it is not planned, or begun already. */
  public boolean run(String id, String server, int steps) {
    return in.sql()
            .update(IMPORT_JOB)
            .set(IMPORT_JOB.STATE, Step.RUNNING.word())
            .set(IMPORT_JOB.DONE, 0)
            .set(IMPORT_JOB.TOTAL, steps)
            .set(IMPORT_JOB.IS_ORDERED, false)
            .setNull(IMPORT_JOB.REFUSAL)
            .where(isAlive(id, server))
            // Its plan may not have been told, where the database was away meanwhile.
            .and(IMPORT_JOB.STATE.in(Step.CHECKING.word(), Step.PLANNED.word()))
            .execute()
        == 1;
  }

  /**
   * Notes, in the transaction that keeps what it brings in, that it is brought in; says false where
   * it was stopped or given up meanwhile, and the transaction must end without a trace.
   */
  public boolean commit(String id, String server) {
    return in.sql()
            .update(IMPORT_JOB)
            .set(IMPORT_JOB.STATE, Step.COMMITTING.word())
            .set(IMPORT_JOB.ALIVE_UNTIL, soon())
            .where(isAlive(id, server))
            .and(IMPORT_JOB.STATE.eq(Step.RUNNING.word()))
            .execute()
        == 1;
  }

  /** Forgets one, unless it was brought in; says whether it is gone. */
  public boolean discard(String id) {
    return in.sql()
            .deleteFrom(IMPORT_JOB)
            .where(is(id))
            .and(IMPORT_JOB.STATE.notIn(Step.COMMITTING.word(), Step.IMPORTED.word()))
            .execute()
        == 1;
  }

  /** Forgets what began before a moment and is not at work. */
  public void forget(Instant before) {
    in.sql()
        .deleteFrom(IMPORT_JOB)
        .where(isHere())
        .and(IMPORT_JOB.BEGUN_AT.lt(before))
        .and(
            not(lives())
                .or(
                    IMPORT_JOB.STATE.notIn(
                        Step.CHECKING.word(), Step.RUNNING.word(), Step.COMMITTING.word())))
        .execute();
  }

  /** Wakes the servers that have archives, once this is committed. */
  public void wake() {
    in.sql().execute("notify " + ChangeListener.IMPORTS);
  }

  private Condition isHere() {
    return IMPORT_JOB.STUDIO_ID.eq(studio.text());
  }

  private Condition is(String id) {
    return isHere().and(IMPORT_JOB.ID.eq(id));
  }

  private Condition isAlive(String id, String server) {
    return is(id).and(IMPORT_JOB.SERVER.eq(server)).and(isOpen()).and(lives());
  }

  private static Condition isOpen() {
    return IMPORT_JOB.STATE.in(
        Step.CHECKING.word(), Step.PLANNED.word(), Step.RUNNING.word(), Step.COMMITTING.word());
  }

  private static Condition lives() {
    return IMPORT_JOB.ALIVE_UNTIL.gt(AT_THIS_MOMENT);
  }

  private static Field<Instant> soon() {
    return field(
        "clock_timestamp() + {0} * interval '1 second'",
        IMPORT_JOB.ALIVE_UNTIL.getDataType(), val(BELIEVED.toSeconds()));
  }

  private static Job job(Record found) {
    return new Job(
        found.get(IMPORT_JOB.ID),
        new PersonId(found.get(IMPORT_JOB.PERSON_ID)),
        found.get(IMPORT_JOB.SERVER),
        found.get(IMPORT_JOB.CLASHES),
        found.get(IMPORT_JOB.BEGUN_AT),
        new Standing(
            Step.valueOf(found.get(IMPORT_JOB.STATE).toUpperCase(Locale.ROOT)),
            found.get(IMPORT_JOB.DONE),
            found.get(IMPORT_JOB.TOTAL),
            Optional.ofNullable(found.get(IMPORT_JOB.PLAN)),
            Optional.ofNullable(found.get(IMPORT_JOB.FAULTS)),
            Optional.ofNullable(found.get(IMPORT_JOB.TROUBLE))),
        found.get(IMPORT_JOB.IS_ORDERED),
        Optional.ofNullable(found.get(IMPORT_JOB.REFUSAL)));
  }
}
