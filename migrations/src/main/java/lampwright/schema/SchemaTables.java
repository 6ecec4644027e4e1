package lampwright.schema;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** What tables of ours a database has, and of which version they are. */
final class SchemaTables {

  /** Kept by whoever migrates, and made anew by it. */
  private static final String MIGRATIONS_OWN = "flyway_schema_history";

  /** Has its row from the first migration on. */
  static final String CATALOGUE = "catalogue";

  private SchemaTables() {}

  /** The number of the newest migration in a database; empty where there is none. */
  static OptionalInt version(Connection connection) throws SQLException {
    if (find(connection, "select to_regclass('lampwright." + MIGRATIONS_OWN + "')::text")
        .isEmpty()) {
      return OptionalInt.empty();
    }
    return find(
            connection,
            "select max(version::integer)::text from lampwright."
                + MIGRATIONS_OWN
                + " where success and version is not null")
        .map(version -> OptionalInt.of(Integer.parseInt(version)))
        .orElse(OptionalInt.empty());
  }

  /** Every table of ours, by name; not those that PostgreSQL itself empties after a crash. */
  static List<TableShape> list(Connection connection) throws SQLException {
    List<TableShape> tables = new ArrayList<>();
    try (Statement statement = connection.createStatement();
        ResultSet found =
            statement.executeQuery(
                """
                select c.relname, array_agg(a.attname::text order by a.attnum)
                from pg_class c
                  join pg_namespace n on n.oid = c.relnamespace
                  join pg_attribute a on a.attrelid = c.oid
                where n.nspname = 'lampwright' and c.relkind = 'r' and c.relname <> '%s'
                  and c.relpersistence = 'p'
                  and a.attnum > 0 and not a.attisdropped and a.attgenerated = ''
                group by c.relname
                order by c.relname collate "C"
                """
                    .formatted(MIGRATIONS_OWN))) {
      while (found.next()) {
        tables.add(
            new TableShape(found.getString(1), List.of((String[]) found.getArray(2).getArray())));
      }
    }
    return tables;
  }

  /** A table that has a row, other than what the migrations themselves write. */
  static Optional<String> findFilled(Connection connection) throws SQLException {
    for (TableShape table : list(connection)) {
      if (!table.name().equals(CATALOGUE)
          && find(connection, "select 'a row' from %s limit 1".formatted(table.quoted()))
              .isPresent()) {
        return Optional.of(table.name());
      }
    }
    return Optional.empty();
  }

  /** The first column of the first row; empty where there is no row or it is null. */
  static Optional<String> find(Connection connection, String sql) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet found = statement.executeQuery(sql)) {
      return found.next() ? Optional.ofNullable(found.getString(1)) : Optional.empty();
    }
  }

  /** The first column of every row. */
  static List<String> all(Connection connection, String sql) throws SQLException {
    List<String> column = new ArrayList<>();
    try (Statement statement = connection.createStatement();
        ResultSet found = statement.executeQuery(sql)) {
      while (found.next()) {
        column.add(found.getString(1));
      }
    }
    return column;
  }
}
