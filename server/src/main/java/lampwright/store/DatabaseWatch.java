package lampwright.store;

import io.micrometer.core.instrument.MeterRegistry;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.atomic.LongAdder;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** What is watched of the database: what takes long leaves a line in the log and is counted. */
public final class DatabaseWatch {

  /** What takes long where nothing else is said. */
  public static final Duration USUALLY_SLOW = Duration.ofMillis(200);

  private static final int LONGEST_TOLD = 2_000;
  private static final long NANOS_PER_MS = 1_000_000;

  private final Logger log = LoggerFactory.getLogger("lampwright.store.slow");
  private final long slowNanos;
  private final Optional<MeterRegistry> meters;
  private final LongAdder slowStatements = new LongAdder();
  private final LongAdder slowConnections = new LongAdder();

  /**
   * @param slow what takes longer is told
   * @param meters take what the pool of connections tells
   */
  public DatabaseWatch(Duration slow, Optional<MeterRegistry> meters) {
    this.slowNanos = slow.toNanos();
    this.meters = meters;
  }

  /** For a short task of the keeper's: the log, and no meters. */
  static DatabaseWatch unmetered() {
    return new DatabaseWatch(USUALLY_SLOW, Optional.empty());
  }

  /** How many statements took long. */
  public long slowStatements() {
    return slowStatements.sum();
  }

  /** How often somebody waited long for a connection. */
  public long slowConnections() {
    return slowConnections.sum();
  }

  Optional<MeterRegistry> meters() {
    return meters;
  }

  /**
   * A statement was carried out.
   *
   * @param transaction as whom
   * @param sql its text with placeholders, never with values
   * @param rows how many it found or changed; empty where that is not known
   */
  void carriedOut(String transaction, String sql, long nanos, Optional<Integer> rows) {
    if (nanos > slowNanos) {
      slowStatements.increment();
      String text = sql.replaceAll("\\s+", " ");
      log.atWarn()
          .addKeyValue("ms", nanos / NANOS_PER_MS)
          .addKeyValue("transaction", transaction)
          .log(
              "A statement took {} ms ({} rows, transaction of {}): {}",
              nanos / NANOS_PER_MS,
              rows.map(String::valueOf).orElse("?"),
              transaction,
              text.length() > LONGEST_TOLD ? text.substring(0, LONGEST_TOLD) + "…" : text);
    }
  }

  /** A transaction has its connection, or has waited for none. */
  void waited(String transaction, long nanos) {
    if (nanos > slowNanos) {
      slowConnections.increment();
      log.atWarn()
          .addKeyValue("ms", nanos / NANOS_PER_MS)
          .addKeyValue("transaction", transaction)
          .log(
              "A transaction of {} waited {} ms for a connection",
              transaction,
              nanos / NANOS_PER_MS);
    }
  }
}
