package lampwright.store;

import org.jooq.exception.DataAccessException;

/** Tells whether the database refused what clashes with what it holds. */
public final class Clashing {

  private static final String INTEGRITY = "23";

  private Clashing() {}

  /** Whether a failure is a key or a check that does not hold, SQLSTATE class 23. */
  public static boolean is(RuntimeException failure) {
    return failure instanceof DataAccessException refused
        && refused.sqlState().startsWith(INTEGRITY);
  }
}
