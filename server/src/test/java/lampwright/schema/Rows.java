package lampwright.schema;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;

/** Plain SQL over one connection, for tests that look behind the store. */
final class Rows implements AutoCloseable {

  private final Connection connection;

  private Rows(Connection connection) {
    this.connection = connection;
  }

  static Rows as(String jdbcUrl, String user, String password) throws SQLException {
    return new Rows(DriverManager.getConnection(jdbcUrl, user, password));
  }

  static Rows as(WorkingDatabase database) throws SQLException {
    return as(database.jdbcUrl(), database.user(), database.password());
  }

  void run(String... statements) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      for (String sql : statements) {
        statement.execute(sql);
      }
    }
  }

  List<String> column(String sql) throws SQLException {
    List<String> values = new ArrayList<>();
    try (Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery(sql)) {
      while (rows.next()) {
        values.add(rows.getString(1));
      }
    }
    return values;
  }

  String one(String sql) throws SQLException {
    return column(sql).getFirst();
  }

  @Override
  public void close() throws SQLException {
    connection.close();
  }
}
