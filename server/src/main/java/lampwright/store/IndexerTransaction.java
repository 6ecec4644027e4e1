package lampwright.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import org.jooq.DSLContext;

/**
 * A transaction for the search index: reads the setups of every studio, as of one moment, and can
 * write nothing. Unlike the others it may be kept open by its holder, who closes it.
 */
public final class IndexerTransaction extends Transaction implements AutoCloseable {

  private final Connection connection;

  IndexerTransaction(Connection connection, DSLContext sql, Instant now) {
    super(sql, now);
    this.connection = connection;
    sql.execute("set transaction isolation level repeatable read, read only");
    sql.execute("set local role lampwright_indexer");
  }

  @Override
  public void close() {
    try (connection) {
      connection.rollback();
    } catch (SQLException e) {
      throw DatabaseUnavailable.of(e);
    }
  }
}
