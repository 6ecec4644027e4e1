package lampwright.schema;

import java.io.IOException;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;

/** The files that rows of pictures name, read so that memory stays as it is however many. */
final class PictureRows {

  private static final int ROWS_AT_A_TIME = 1000;

  private PictureRows() {}

  private static boolean areThere(Connection connection) throws SQLException {
    return SchemaTables.find(connection, "select to_regclass('lampwright.picture')::text")
        .isPresent();
  }

  static long count(Connection connection) throws SQLException {
    return areThere(connection)
        ? SchemaTables.find(
                connection,
                "select count(distinct sha256)::text from lampwright.picture where deleted_at is"
                    + " null")
            .map(Long::parseLong)
            .orElse(0L)
        : 0;
  }

  /** By a cursor; the connection must be in a transaction. */
  static void forEach(Connection connection, EachPicture each) throws SQLException, IOException {
    if (!areThere(connection)) {
      return;
    }
    try (Statement statement = connection.createStatement()) {
      statement.setFetchSize(ROWS_AT_A_TIME);
      try (ResultSet found =
          statement.executeQuery(
              "select distinct sha256 from lampwright.picture where deleted_at is null"
                  + " order by sha256")) {
        while (found.next()) {
          each.accept(found.getString(1));
        }
      }
    }
  }
}
