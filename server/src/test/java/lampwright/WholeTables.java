package lampwright;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** All that is in a database of ours, so that two can be compared; and in a folder of pictures. */
final class WholeTables {

  private WholeTables() {}

  /** A way to ask a database as one whom row-level security does not bind. */
  interface Asking {
    List<String> ask(String sql) throws SQLException;
  }

  /**
   * Of each table how many rows it has, and a hash over all their columns. Without what says which
   * database it is, and without the numbers that its PostgreSQL gave to transactions.
   */
  static Map<String, String> rows(Asking database) throws SQLException {
    Map<String, String> rows = new TreeMap<>();
    for (String table :
        database.ask(
            "select table_name from information_schema.tables where table_schema = 'lampwright'"
                + " and table_name not in ('catalogue', 'flyway_schema_history')")) {
      rows.put(
          table,
          database
              .ask(
                  """
                  select count(*) || ' ' || coalesce(md5(string_agg(line, '' order by line)), '')
                  from (select (to_jsonb(t) - 'transaction_id')::text as line
                    from lampwright."%s" t) as lines
                  """
                      .formatted(table))
              .getFirst());
    }
    return rows;
  }

  /** Every key and check, every trigger, and whether row-level security holds. */
  static List<String> guards(Asking database) throws SQLException {
    List<String> guards = new ArrayList<>();
    guards.addAll(
        database.ask(
            """
            select conrelid::regclass || ' ' || conname || ' ' || pg_get_constraintdef(oid)
              || ' ' || convalidated || condeferrable
            from pg_constraint where connamespace = 'lampwright'::regnamespace order by 1
            """));
    guards.addAll(
        database.ask(
            """
            select tgrelid::regclass || ' ' || tgname || ' ' || tgenabled::text
            from pg_trigger t join pg_class c on c.oid = t.tgrelid
            where not tgisinternal and c.relnamespace = 'lampwright'::regnamespace order by 1
            """));
    guards.addAll(
        database.ask(
            """
            select relname || ' ' || relrowsecurity || relforcerowsecurity
            from pg_class where relkind = 'r' and relnamespace = 'lampwright'::regnamespace
            order by 1
            """));
    return guards;
  }

  /** Every file below a folder of one database's pictures, by what it is called there. */
  static Map<String, String> pictures(Path pictures) throws IOException, NoSuchAlgorithmException {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> tree = Files.walk(pictures)) {
      for (Path file : tree.filter(Files::isRegularFile).toList()) {
        if (!file.toString().contains("arriving")) {
          files.put(
              String.valueOf(file.getFileName()),
              HexFormat.of()
                  .formatHex(
                      MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file))));
        }
      }
    }
    return files;
  }
}
