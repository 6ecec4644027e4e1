package lampwright.store;

import static lampwright.schema.generated.Tables.FAILED_TRY;
import static org.jooq.impl.DSL.field;
import static org.jooq.impl.DSL.val;
import static org.jooq.impl.SQLDataType.BIGINT;

import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import lampwright.people.SecretHash;

/** What failed at signing in, counted by all servers on a database together (migration V26). */
public final class FailedTries {

  private final Transaction in;

  public FailedTries(Transaction in) {
    this.in = in;
  }

  /**
   * What a try counts under.
   *
   * @param atOnce so many failures are free
   * @param oneMoreEach and then one more each time that this has passed
   */
  public record Counted(SecretHash name, int atOnce, Duration oneMoreEach) {}

  /**
   * Judges a try that was looked at, and counts it where it was wrong: one after the other, at
   * whichever servers.
   *
   * @param counted the first counts wherever it comes from, the others only from elsewhere than
   *     {@code known}
   * @param known where the person has signed in before
   * @return how long nothing is to be told; empty where it may be
   */
  public Optional<Duration> judge(
      List<Counted> counted, SecretHash known, boolean right, Instant now) {
    long pauseMillis =
        in.sql()
            .select(
                field(
                    "lampwright.judge_try({0}, {1}, {2}, {3}, {4}, {5})",
                    BIGINT,
                    val(counted.stream().map(one -> one.name().hex()).toArray(String[]::new)),
                    val(counted.stream().map(one -> (long) one.atOnce()).toArray(Long[]::new)),
                    val(
                        counted.stream()
                            .map(one -> one.oneMoreEach().toMillis())
                            .toArray(Long[]::new)),
                    val(known.hex()),
                    val(right),
                    val(OffsetDateTime.ofInstant(now, ZoneOffset.UTC))))
            .fetchSingle()
            .value1();
    return Optional.of(Duration.ofMillis(pauseMillis)).filter(Duration::isPositive);
  }

  /** Forgets what failed under some names. */
  public void forget(List<SecretHash> names) {
    in.sql()
        .deleteFrom(FAILED_TRY)
        .where(FAILED_TRY.NAME.in(names.stream().map(SecretHash::bytes).toList()))
        .execute();
  }

  /** Notes where somebody has signed in. */
  public void know(SecretHash place, Instant until) {
    in.sql()
        .insertInto(FAILED_TRY)
        .set(FAILED_TRY.NAME, place.bytes())
        .set(FAILED_TRY.UNTIL, until)
        .onConflict(FAILED_TRY.NAME)
        .doUpdate()
        .set(FAILED_TRY.UNTIL, until)
        .execute();
  }
}
