package lampwright.store;

import java.sql.SQLException;
import org.jooq.exception.DataAccessException;
import org.jspecify.annotations.Nullable;

/**
 * The database cannot be reached, is stopping, or has no room left. Nothing is wrong with the
 * request, which may be tried again later. A change may have been kept where the connection was
 * lost while it was being committed.
 */
public final class DatabaseUnavailable extends RuntimeException {

  DatabaseUnavailable(Throwable cause) {
    super("The database cannot be used at the moment.", cause);
  }

  /** This exception where the cause is a lost database, else the given one. */
  static RuntimeException orElse(RuntimeException failure) {
    if (failure instanceof DatabaseUnavailable) {
      return failure;
    }
    for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
      if (cause instanceof SQLException e && isLoss(e.getSQLState())) {
        return new DatabaseUnavailable(failure);
      }
    }
    return failure;
  }

  static RuntimeException of(SQLException e) {
    // Hikari's time-out, when no connection could be had, carries the state of what it met last.
    return e instanceof java.sql.SQLTransientConnectionException || isLoss(e.getSQLState())
        ? new DatabaseUnavailable(e)
        : new DataAccessException("The database refused to begin or end a transaction.", e);
  }

  /** Connection lost (08), out of disk, memory or connections (53), shut down or starting (57P). */
  private static boolean isLoss(@Nullable String state) {
    return state != null
        && (state.startsWith("08") || state.startsWith("53") || state.startsWith("57P"));
  }
}
