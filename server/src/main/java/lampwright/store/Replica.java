package lampwright.store;

import com.zaxxer.hikari.HikariDataSource;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.atomic.LongAdder;
import java.util.function.Function;
import lampwright.people.WritesSeen;
import lampwright.schema.WorkingDatabase;
import org.jooq.DSLContext;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.slf4j.event.Level;

/**
 * A streaming replica of the database, which takes reading off it. Who reads there brings how often
 * the studio had been written when they came in, as the database itself said; where the replica has
 * not got that far, where it is gone, and where anything at all goes wrong on it, the database is
 * asked in its place. So nobody reads what is older than their own last write, or anybody's that
 * was acknowledged before they asked.
 *
 * <p>It is looked at every second, and no reading waits for one that did not answer the last look.
 */
public final class Replica implements AutoCloseable {

  private static final Logger log = LoggerFactory.getLogger(Replica.class);

  private static final Duration BETWEEN_LOOKS = Duration.ofSeconds(1);

  /**
   * A replica that was made a database of its own is none any more, another's never was, and one
   * that did not follow the database to where it was set back to holds what is not so.
   */
  private static final String WHICH =
      "select pg_is_in_recovery(), identity || "
          + WorkingDatabase.RUN_OF_HISTORY
          + " from lampwright.catalogue";

  private static final String ITSELF =
      "select identity || "
          + WorkingDatabase.RUN_OF_HISTORY
          + ", pg_current_wal_flush_lsn()::text from lampwright.catalogue";

  private static final String LAG =
      "select coalesce(pg_wal_lsn_diff({0}::pg_lsn, pg_last_wal_replay_lsn()), 0)::double"
          + " precision";

  private static final String WRITES =
      """
      select coalesce(string_agg(slot || ':' || writes, ' ' order by slot), ''), pg_is_in_recovery()
      from lampwright.studio_writes where studio_id = {0}
      """;

  private final HikariDataSource pool;
  private final Function<Connection, DSLContext> sql;
  private final Function<Function<DSLContext, Original>, Original> original;
  private final Thread watcher;
  private final LongAdder answered = new LongAdder();
  private final LongAdder behind = new LongAdder();
  private final LongAdder failed = new LongAdder();

  private volatile String trouble = "not looked at yet";
  private volatile double lagBytes = Double.NaN;

  /** What the database says of itself. */
  private record Original(String identity, String position) {}

  /** Something that was read; it may be nothing. */
  record Read<T>(T what) {}

  /**
   * @param pool of connections with the replica
   * @param sql wraps one of them
   * @param original asks the database itself
   */
  private Replica(
      HikariDataSource pool,
      Function<Connection, DSLContext> sql,
      Function<Function<DSLContext, Original>, Original> original) {
    this.pool = pool;
    this.sql = sql;
    this.original = original;
    this.watcher = Thread.ofVirtual().name("replica-watcher").unstarted(this::watch);
  }

  /** Begins to look at it. */
  static Replica open(
      HikariDataSource pool, Function<Connection, DSLContext> sql, Database database) {
    Replica replica =
        new Replica(
            pool, sql, ask -> database.anonymous(transaction -> ask.apply(transaction.sql())));
    replica.watcher.start();
    return replica;
  }

  /** Why it is not read from, in one line; empty where it is. */
  public Optional<String> trouble() {
    return Optional.of(trouble).filter(text -> !text.isEmpty());
  }

  /** How many bytes of the database's log it has not replayed; NaN where that is not known. */
  public double lagBytes() {
    return lagBytes;
  }

  /** How many readings it has answered. */
  public long answered() {
    return answered.sum();
  }

  /** How many the database answered, since the replica had not got so far. */
  public long behind() {
    return behind.sum();
  }

  /** How many the database answered, since something went wrong on the replica. */
  public long failed() {
    return failed.sum();
  }

  /**
   * Reads in a transaction of a member's.
   *
   * @param enter opens it; whatever it or the work throws is for the database to say
   * @return empty where the database must be asked
   */
  <T> Optional<Read<T>> read(
      WritesSeen seen,
      Function<DSLContext, StudioTransaction> enter,
      Function<StudioTransaction, T> work) {
    if (!trouble.isEmpty()) {
      return Optional.empty();
    }
    try (Connection connection = pool.getConnection()) {
      try {
        StudioTransaction in = enter.apply(sql.apply(connection));
        if (!covers(in, seen)) {
          behind.increment();
          return Optional.empty();
        }
        Read<T> read = new Read<>(work.apply(in));
        answered.increment();
        return Optional.of(read);
      } finally {
        connection.rollback();
      }
    } catch (SQLException e) {
      trouble = reason(e);
      failed.increment();
      log.debug("A reading failed on the replica", e);
      return Optional.empty();
    } catch (RuntimeException e) {
      // Perhaps the refusal is right: then the database says so, too.
      failed.increment();
      log.debug("A reading failed on the replica", e);
      return Optional.empty();
    }
  }

  private static boolean covers(StudioTransaction in, WritesSeen seen) {
    var counted = in.sql().resultQuery(WRITES, in.studio().text()).fetchSingle();
    return Boolean.TRUE.equals(counted.get(1, Boolean.class))
        && seen.isCoveredBy(String.valueOf(counted.get(0, String.class)));
  }

  private void watch() {
    try {
      while (!Thread.currentThread().isInterrupted()) {
        String now = look();
        if (!now.equals(trouble)) {
          log.atLevel(now.isEmpty() ? Level.INFO : Level.WARN)
              .log(
                  now.isEmpty()
                      ? "The replica is read from"
                      : "The replica is not read from, and the database answers in its place: {}",
                  now);
        }
        trouble = now;
        Thread.sleep(BETWEEN_LOOKS);
      }
    } catch (InterruptedException e) {
      // Nobody but close interrupts.
      log.debug("The replica is not looked at any more", e);
    }
  }

  /** What is wrong with it; empty for nothing. */
  private String look() {
    try (Connection connection = pool.getConnection()) {
      try {
        Original here = original.apply(Replica::original);
        DSLContext there = sql.apply(connection);
        var which = there.resultQuery(WHICH).fetchSingle();
        if (!Boolean.TRUE.equals(which.get(0, Boolean.class))) {
          return "it is a database of its own, and no replica";
        }
        if (!here.identity().equals(which.get(1, String.class))) {
          return "it is a replica of another database";
        }
        lagBytes = there.resultQuery(LAG, here.position()).fetchSingle().get(0, Double.class) + 0.0;
        return "";
      } finally {
        connection.rollback();
      }
    } catch (DatabaseUnavailable e) {
      // It may be the database itself that does not answer; what was known of the replica stays.
      return trouble;
    } catch (SQLException | RuntimeException e) {
      lagBytes = Double.NaN;
      return reason(e);
    }
  }

  /** What PostgreSQL or the network said, which the pool wraps into a line of its own. */
  private static String reason(Exception e) {
    Throwable first = e;
    while (first.getCause() != null) {
      first = first.getCause();
    }
    return String.valueOf(first.getMessage()).lines().findFirst().orElse("no reason is told");
  }

  private static Original original(DSLContext sql) {
    var found = sql.resultQuery(ITSELF).fetchSingle();
    return new Original(
        String.valueOf(found.get(0, String.class)), String.valueOf(found.get(1, String.class)));
  }

  @Override
  public void close() {
    watcher.interrupt();
    pool.close();
  }
}
