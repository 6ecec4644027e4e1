package lampwright.store;

import java.util.Optional;
import org.jooq.ExecuteContext;
import org.jooq.ExecuteListener;
import org.jooq.Result;

/** Takes the time of one statement, for the watch. */
final class StatementTime implements ExecuteListener {

  private final DatabaseWatch watch;
  private final String transaction;
  private long begunNanos;
  private long tookNanos;

  StatementTime(DatabaseWatch watch, String transaction) {
    this.watch = watch;
    this.transaction = transaction;
  }

  @Override
  public void executeStart(ExecuteContext context) {
    begunNanos = System.nanoTime();
  }

  @Override
  public void executeEnd(ExecuteContext context) {
    tookNanos = System.nanoTime() - begunNanos;
  }

  @Override
  public void exception(ExecuteContext context) {
    if (begunNanos != 0) {
      tookNanos = System.nanoTime() - begunNanos;
    }
  }

  /** By now it is known how many rows there were. */
  @Override
  public void end(ExecuteContext context) {
    String sql = context.sql();
    watch.carriedOut(transaction, sql == null ? "several at once" : sql, tookNanos, rows(context));
  }

  private static Optional<Integer> rows(ExecuteContext context) {
    Result<?> found = context.result();
    return found != null
        ? Optional.of(found.size())
        : Optional.of(context.rows()).filter(rows -> rows >= 0);
  }
}
