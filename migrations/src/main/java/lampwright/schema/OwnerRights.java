package lampwright.schema;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;

/** Whether a user can bring a database to this program's shape, asked before anything is done. */
final class OwnerRights {

  private static final int OLDEST_POSTGRESQL = 15;

  private OwnerRights() {}

  static void check(Address owner, Connection connection) throws SQLException {
    int version = connection.getMetaData().getDatabaseMajorVersion();
    if (version < OLDEST_POSTGRESQL) {
      throw new DatabaseRefused(
          "%s: PostgreSQL at %s is version %d and must be %d or newer. Upgrade it, or name another server."
              .formatted(owner.setting(), owner.host(), version, OLDEST_POSTGRESQL));
    }
    try (Statement statement = connection.createStatement();
        ResultSet rights = statement.executeQuery(QUESTION)) {
      rights.next();
      check(owner, rights);
    }
  }

  private static final String QUESTION =
      """
      select
        (select rolsuper or rolcreaterole from pg_roles where rolname = current_user) as makes_roles,
        (select count(*) = 2 from pg_roles
          where rolname in ('lampwright_server', 'lampwright_indexer')) as has_roles,
        has_database_privilege(current_database(), 'create') as makes_schemas,
        exists (select from pg_namespace where nspname = 'lampwright') as has_schema,
        exists (select from pg_namespace
          where nspname = 'lampwright' and pg_has_role(nspowner, 'member')) as owns_schema
      """;

  private static void check(Address owner, ResultSet rights) throws SQLException {
    boolean hasSchema = rights.getBoolean("has_schema");
    if (hasSchema && !rights.getBoolean("owns_schema")) {
      throw new DatabaseRefused(
          "%s: the user %s does not own the schema lampwright in %s. Name its owner in %s."
              .formatted(
                  owner.setting(),
                  owner.user(),
                  owner.database(),
                  WorkingDatabase.OWNER_URL_SETTING));
    }
    if (!hasSchema && !rights.getBoolean("makes_schemas")) {
      throw new DatabaseRefused(
          "%s: the user %s may not create a schema in %s. GRANT CREATE ON DATABASE to that user, or name the database's owner in %s."
              .formatted(
                  owner.setting(),
                  owner.user(),
                  owner.database(),
                  WorkingDatabase.OWNER_URL_SETTING));
    }
    if (!rights.getBoolean("has_roles") && !rights.getBoolean("makes_roles")) {
      throw new DatabaseRefused(
          "%s: the user %s may not create roles, and the server needs two of its own. ALTER ROLE %s CREATEROLE, or name a user who may in %s."
              .formatted(
                  owner.setting(), owner.user(), owner.user(), WorkingDatabase.OWNER_URL_SETTING));
    }
  }
}
