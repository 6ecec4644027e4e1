package lampwright.schema;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.Optional;
import java.util.OptionalInt;
import lampwright.postgres.EmbeddedPostgres;
import lampwright.postgres.RunningPostgres;
import org.flywaydb.core.api.FlywayException;

/**
 * A database as who owns its tables opens it: to read all of it at one moment, or to fill an empty
 * one. The server never works so.
 */
public final class OwnedDatabase {

  private final Address owner;

  private OwnedDatabase(Address owner) {
    this.owner = owner;
  }

  /** In the server's own PostgreSQL, which this process runs. */
  public static OwnedDatabase in(EmbeddedPostgres postgres) {
    return new OwnedDatabase(WorkingDatabase.ownerOf(postgres));
  }

  /** In the server's own PostgreSQL, which the server runs. */
  public static OwnedDatabase in(RunningPostgres postgres) {
    return new OwnedDatabase(
        WorkingDatabase.ownerOf(postgres.jdbcUrl(), postgres.user(), postgres.password()));
  }

  /**
   * In a PostgreSQL of one's own.
   *
   * @param setting that the address stands in, for messages
   * @throws DatabaseRefused when it is no address
   */
  public static OwnedDatabase at(String setting, String url) {
    return new OwnedDatabase(Address.parse(setting, url));
  }

  /**
   * Reads all of it as of now.
   *
   * @throws DatabaseRefused when there is none, or this user does not see all of it
   */
  public Snapshot snapshot() {
    return Snapshot.begin(owner);
  }

  /**
   * Whether it has nothing of ours, not even tables.
   *
   * @throws DatabaseRefused when it cannot be asked
   */
  public boolean isEmpty() {
    try (Connection connection = owner.connect()) {
      return !hasSchema(connection);
    } catch (SQLException e) {
      throw owner.refused(e);
    }
  }

  private static boolean hasSchema(Connection connection) throws SQLException {
    return SchemaTables.find(connection, "select to_regnamespace('lampwright')::text").isPresent();
  }

  /**
   * Prepares an empty database for the rows of a backup: brings its tables to the version that the
   * backup was made of.
   *
   * @throws DatabaseRefused when it is not empty, or this program does not know that version;
   *     nothing is changed then
   */
  public Loading load(int version) {
    boolean hasSchema;
    try (Connection connection = owner.connect()) {
      OwnerRights.check(owner, connection);
      OptionalInt there = SchemaTables.version(connection);
      hasSchema = hasSchema(connection);
      mustBeEmptyFor(version, there, connection);
    } catch (SQLException e) {
      throw owner.refused(e);
    }
    try {
      int newest = Migrations.newest(owner.jdbcUrl(), owner.user(), owner.password());
      if (version > newest) {
        throw new DatabaseRefused(
            "The backup has tables of version %d, and this Lampwright knows them up to %d. Restore it with the Lampwright that made it, or a newer one."
                .formatted(version, newest));
      }
      Migrations.apply(owner.jdbcUrl(), owner.user(), owner.password(), version);
    } catch (FlywayException e) {
      throw WorkingDatabase.notMigrated(owner, e);
    }
    return Loading.begin(owner, !hasSchema);
  }

  private void mustBeEmptyFor(int version, OptionalInt there, Connection connection)
      throws SQLException {
    if (there.isEmpty()) {
      return;
    }
    if (there.getAsInt() > version) {
      throw new DatabaseRefused(
          "%s: %s has tables of version %d, newer than the backup's %d. Restore into a database without the schema lampwright."
              .formatted(owner.setting(), owner.database(), there.getAsInt(), version));
    }
    // The owner sees no row while row-level security is forced, so only a look past it counts.
    boolean auto = connection.getAutoCommit();
    connection.setAutoCommit(false);
    try {
      OwnedDatabase.seeEveryRow(connection);
      mustBeEmpty(owner, connection);
    } finally {
      connection.rollback();
      connection.setAutoCommit(auto);
    }
  }

  private static void seeEveryRow(Connection connection) throws SQLException {
    try (var statement = connection.createStatement()) {
      statement.execute("set local lock_timeout = '10s'");
      for (TableShape table : SchemaTables.list(connection)) {
        statement.execute("alter table " + table.quoted() + " no force row level security");
      }
    }
  }

  static void mustBeEmpty(Address owner, Connection connection) throws SQLException {
    Optional<String> filled = SchemaTables.findFilled(connection);
    if (filled.isPresent()) {
      throw new DatabaseRefused(
          "%s: %s is not empty, its table %s has rows, and nothing was changed. Restore into an empty data folder or database."
              .formatted(owner.setting(), owner.database(), filled.get()));
    }
  }

  /**
   * Brings its tables to this program's version, as a start of the server does.
   *
   * @throws DatabaseRefused when that fails
   */
  public void migrate() {
    WorkingDatabase.migrate(owner);
  }
}
