package lampwright.schema;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;

/**
 * Whether a role may do the server's work and no more. A role that row-level security does not bind
 * would show one studio's setups to another, so the server refuses to start as such.
 */
final class WorkingRights {

  private static final String QUESTION =
      """
      select
        exists (select from pg_roles r
          where r.rolsuper and pg_has_role(r.oid, 'member')) as superuser,
        exists (select from pg_roles r
          where r.rolbypassrls and pg_has_role(r.oid, 'member')) as bypasses,
        exists (select from pg_class c join pg_namespace n on n.oid = c.relnamespace
          where n.nspname = 'lampwright' and pg_has_role(c.relowner, 'member')) as owns,
        pg_has_role('lampwright_server', 'usage') as works,
        pg_has_role('lampwright_indexer', 'member') as may_index,
        pg_has_role('lampwright_indexer', 'usage') as always_indexes
      """;

  private WorkingRights() {}

  static void check(Address working, Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet rights = statement.executeQuery(QUESTION)) {
      rights.next();
      if (rights.getBoolean("superuser")) {
        throw tooMuch(working, "is a superuser or may become one");
      }
      if (rights.getBoolean("bypasses")) {
        throw tooMuch(working, "may bypass row-level security");
      }
      if (rights.getBoolean("owns")) {
        throw tooMuch(working, "owns tables of the schema lampwright");
      }
      if (!rights.getBoolean("works") || !rights.getBoolean("may_index")) {
        throw new DatabaseRefused(
            "%s: the user %s lacks the rights of the server. As the owner: GRANT lampwright_server TO %s."
                .formatted(working.setting(), working.user(), working.user()));
      }
      if (rights.getBoolean("always_indexes")) {
        throw tooMuch(working, "inherits lampwright_indexer, which reads every studio");
      }
    }
  }

  private static DatabaseRefused tooMuch(Address working, String problem) {
    return new DatabaseRefused(
        "%s: the user %s %s, so studios would not be kept apart. Name a plain user that was granted lampwright_server only."
            .formatted(working.setting(), working.user(), problem));
  }
}
