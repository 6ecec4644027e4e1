package lampwright.store;

import static org.jooq.impl.DSL.field;
import static org.jooq.impl.DSL.val;
import static org.jooq.impl.SQLDataType.VARCHAR;

import java.time.Instant;
import java.util.Objects;
import org.jooq.DSLContext;
import org.jooq.Field;

/**
 * One open transaction, and as whom. It is only valid within the function that {@link Database}
 * hands it to: all that is done with it is kept or lost together.
 */
public abstract sealed class Transaction
    permits AnonymousTransaction, PersonTransaction, IndexerTransaction, UpkeepTransaction {

  private final DSLContext sql;
  private final Instant now;

  Transaction(DSLContext sql, Instant now) {
    this.sql = sql;
    this.now = now;
  }

  DSLContext sql() {
    return sql;
  }

  /** Reads documents of setups, of which some were read before. */
  public final SetupDocuments setupDocuments() {
    return (SetupDocuments) Objects.requireNonNull(sql.data(SetupDocuments.class));
  }

  /** When it began, to the microsecond: the time of all that it writes. */
  public Instant now() {
    return now;
  }

  /** Row-level security reads these until the transaction ends; they cannot outlive it. */
  final void set(String setting, String value) {
    set(setting, val(value));
  }

  /** The same; says what it was set to. */
  final String set(String setting, Field<String> value) {
    return sql.select(field("set_config({0}, {1}, true)", VARCHAR, val(setting), value))
        .fetchSingle()
        .value1();
  }
}
