package lampwright.store;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.Properties;
import lampwright.schema.WorkingDatabase;
import org.postgresql.PGConnection;

/**
 * Hears that something of a kind was committed, by any server process. Only a hint, to look sooner:
 * the log says what. Belongs to one thread. After a {@link DatabaseUnavailable} open another.
 */
public final class ChangeListener implements AutoCloseable {

  static final String CHANNEL = "lampwright_change";
  static final String IMPORTS = "lampwright_import";

  private final Connection connection;

  private ChangeListener(Connection connection) {
    this.connection = connection;
  }

  static ChangeListener on(WorkingDatabase where, String channel) {
    Properties properties = new Properties();
    properties.setProperty("user", where.user());
    properties.setProperty("password", where.password());
    properties.setProperty("ApplicationName", "lampwright listener");
    properties.setProperty("connectTimeout", "5");
    properties.setProperty("tcpKeepAlive", "true");
    try {
      Connection connection = DriverManager.getConnection(where.jdbcUrl(), properties);
      try (Statement statement = connection.createStatement()) {
        statement.execute("listen " + channel);
      } catch (SQLException e) {
        connection.close();
        throw e;
      }
      return new ChangeListener(connection);
    } catch (SQLException e) {
      throw DatabaseUnavailable.of(e);
    }
  }

  /** Waits until something is committed, at most so long; says whether something was. */
  public boolean await(Duration atMost) {
    try {
      int milliseconds = Math.toIntExact(Math.max(1, atMost.toMillis()));
      return connection.unwrap(PGConnection.class).getNotifications(milliseconds).length > 0;
    } catch (SQLException e) {
      throw DatabaseUnavailable.of(e);
    }
  }

  @Override
  public void close() {
    try {
      connection.close();
    } catch (SQLException e) {
      throw DatabaseUnavailable.of(e);
    }
  }
}
