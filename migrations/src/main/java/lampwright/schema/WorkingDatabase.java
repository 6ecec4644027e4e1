package lampwright.schema;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.HexFormat;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import lampwright.postgres.EmbeddedPostgres;
import org.flywaydb.core.api.FlywayException;
import org.postgresql.PGConnection;

/**
 * A migrated database, and the role that the server works as in it: one that owns nothing and that
 * row-level security binds. Proved at opening, over a connection of that role.
 *
 * @param jdbcUrl the address for JDBC, without user and password
 * @param user the working role
 * @param password the working role's password
 */
public record WorkingDatabase(String jdbcUrl, String user, String password) {

  /** The setting that names the database. */
  public static final String URL_SETTING = "LAMPWRIGHT_DATABASE_URL";

  /** The setting that names, where they differ, the owner of its tables. */
  public static final String OWNER_URL_SETTING = "LAMPWRIGHT_DATABASE_OWNER_URL";

  /** The role that holds every right of the server. */
  public static final String SERVER_ROLE = "lampwright_server";

  /**
   * SQL of what is put after the catalogue's identity to say which run of its history a database
   * is: another after it was loaded from a dump or set back to a point in time.
   */
  public static final String RUN_OF_HISTORY =
      "'.' || (select system_identifier from pg_control_system())"
          + " || '.' || (select timeline_id from pg_control_checkpoint())";

  /** The setting that names a replica. */
  public static final String REPLICA_URL_SETTING = "LAMPWRIGHT_REPLICA_URL";

  /**
   * A streaming replica of it, which has the same roles with the same passwords.
   *
   * @param url without a user
   * @throws DatabaseRefused where it is no address
   */
  public WorkingDatabase replica(String url) {
    return new WorkingDatabase(
        Address.parseWithoutUser(REPLICA_URL_SETTING, url).jdbcUrl(), user, password);
  }

  /** No record's text may reach a log with a password in it. */
  @Override
  public String toString() {
    return "WorkingDatabase[" + user + " at " + jdbcUrl + "]";
  }

  /** Migrates the server's own PostgreSQL and opens it. */
  public static WorkingDatabase in(EmbeddedPostgres postgres) {
    return openAsOwner(ownerOf(postgres));
  }

  static Address ownerOf(EmbeddedPostgres postgres) {
    return ownerOf(
        postgres.jdbcUrl(EmbeddedPostgres.DATABASE), postgres.user(), postgres.password());
  }

  static Address ownerOf(String jdbcUrl, String user, String password) {
    return Address.parse(
        "The server's own PostgreSQL", "%s?user=%s&password=%s".formatted(jdbcUrl, user, password));
  }

  /**
   * Migrates and opens a database whose owner the URL names. The server works as {@value
   * #SERVER_ROLE}, whose password follows from the owner's, so that several server processes agree.
   *
   * @throws DatabaseRefused when it cannot be worked with
   */
  public static WorkingDatabase at(String url) {
    return openAsOwner(Address.parse(URL_SETTING, url));
  }

  /**
   * Migrates a database as its owner, and opens it as the other role that the first URL names.
   *
   * @throws DatabaseRefused when it cannot be worked with, or that role may do more than work
   */
  public static WorkingDatabase at(String url, String ownerUrl) {
    migrate(Address.parse(OWNER_URL_SETTING, ownerUrl));
    return verified(Address.parse(URL_SETTING, url));
  }

  /**
   * Takes the demo studio away from the server's own PostgreSQL, which must be migrated.
   *
   * @return how many setups went
   */
  public static int removeDemo(EmbeddedPostgres postgres) {
    return removeDemo(ownerOf(postgres));
  }

  /**
   * Takes the demo studio away from a migrated database.
   *
   * @param ownerUrl names the owner of its tables
   * @return how many setups went
   * @throws DatabaseRefused when it cannot be worked with
   */
  public static int removeDemo(String ownerUrl) {
    return removeDemo(Address.parse(OWNER_URL_SETTING, ownerUrl));
  }

  private static int removeDemo(Address owner) {
    try (Connection connection = owner.connect();
        Statement statement = connection.createStatement();
        ResultSet gone = statement.executeQuery("select lampwright.remove_demo()")) {
      gone.next();
      return gone.getInt(1);
    } catch (SQLException e) {
      throw new DatabaseRefused(
          "%s: the demo studio could not be taken away: %s. Start again."
              .formatted(owner.setting(), Address.firstLine(e)),
          e);
    }
  }

  private static WorkingDatabase openAsOwner(Address owner) {
    migrate(owner);
    Address working = owner.as(SERVER_ROLE, passwordFrom(owner));
    try {
      letIn(owner, working);
    } catch (SQLException e) {
      throw new DatabaseRefused(
          "%s: the user %s may not set the password of the role %s. Let a superuser GRANT %s TO %s WITH ADMIN OPTION, or name a user for work in %s and the owner in %s."
              .formatted(
                  owner.setting(),
                  owner.user(),
                  SERVER_ROLE,
                  SERVER_ROLE,
                  owner.user(),
                  URL_SETTING,
                  OWNER_URL_SETTING),
          e);
    }
    return verified(working);
  }

  static void migrate(Address owner) {
    try (Connection connection = owner.connect()) {
      OwnerRights.check(owner, connection);
    } catch (SQLException e) {
      throw owner.refused(e);
    }
    try {
      Migrations.apply(owner.jdbcUrl(), owner.user(), owner.password());
    } catch (FlywayException e) {
      throw notMigrated(owner, e);
    }
  }

  static DatabaseRefused notMigrated(Address owner, FlywayException e) {
    return new DatabaseRefused(
        "%s: the tables in %s could not be brought to this version: %s. Start the version that made them, or put that right."
            .formatted(owner.setting(), owner.database(), reason(e)),
        e);
  }

  private static String reason(FlywayException e) {
    return e.getMessage() != null && e.getMessage().contains("not resolved locally")
        ? "a newer Lampwright has changed them"
        : Address.firstLine(e);
  }

  /** Sets the working role's password where it is not yet what we will say. */
  private static void letIn(Address owner, Address working) throws SQLException {
    if (isOpenTo(working)) {
      return;
    }
    try (Connection connection = owner.open();
        Statement statement = connection.createStatement()) {
      // Processes that start together take turns; a role changed by two at once is an error.
      statement.execute("select pg_advisory_lock(hashtext('" + SERVER_ROLE + "'))");
      if (!isOpenTo(working)) {
        statement.execute("alter role " + SERVER_ROLE + " login");
        // Sends a SCRAM verifier, so that the password itself cannot land in the server's log.
        connection
            .unwrap(PGConnection.class)
            .alterUserPassword(SERVER_ROLE, working.password().toCharArray(), "scram-sha-256");
      }
    }
  }

  private static boolean isOpenTo(Address working) throws SQLException {
    try (Connection connection = working.open()) {
      return connection.isValid(10);
    } catch (SQLException e) {
      if (Address.isWrongPassword(e)) {
        return false;
      }
      throw e;
    }
  }

  /**
   * Not from the database's name: the role belongs to the whole cluster, and two databases of one
   * owner would take its password from each other.
   */
  private static String passwordFrom(Address owner) {
    if (owner.password().isEmpty()) {
      throw new DatabaseRefused(
          "%s names no password for the user %s, and the password of the role %s follows from it. Add one, or name a user for work there and the owner in %s."
              .formatted(owner.setting(), owner.user(), SERVER_ROLE, OWNER_URL_SETTING));
    }
    try {
      Mac mac = Mac.getInstance("HmacSHA256");
      mac.init(new SecretKeySpec(owner.password().getBytes(StandardCharsets.UTF_8), "HmacSHA256"));
      return HexFormat.of()
          .formatHex(mac.doFinal(("password of " + SERVER_ROLE).getBytes(StandardCharsets.UTF_8)));
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("Every Java has HmacSHA256.", e);
    }
  }

  private static WorkingDatabase verified(Address working) {
    try (Connection connection = working.connect()) {
      WorkingRights.check(working, connection);
    } catch (SQLException e) {
      throw working.refused(e);
    }
    return new WorkingDatabase(working.jdbcUrl(), working.user(), working.password());
  }
}
