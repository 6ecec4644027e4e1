package lampwright.schema;

import java.io.IOException;
import java.io.OutputStream;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.postgresql.PGConnection;

/**
 * A database as it was at one moment, whatever others write meanwhile, with the rows of every
 * studio. It changes nothing. While it is open no server takes a picture's file away that a row has
 * let go of, so that the files which its rows name stay.
 */
public final class Snapshot implements AutoCloseable {

  /**
   * The advisory lock of PostgreSQL that it holds; who takes a picture's file away must get it,
   * shared, and lets the file be where that does not work at once.
   */
  public static final long LOCK = 0x6261636b7570L;

  private static final String SOMEBODY_HAS_THE_LOCK = "55P03";

  private final Address owner;
  private final Connection connection;
  private final int version;

  private Snapshot(Address owner, Connection connection, int version) {
    this.owner = owner;
    this.connection = connection;
    this.version = version;
  }

  static Snapshot begin(Address owner) {
    Connection connection = owner.connect();
    try {
      return new Snapshot(owner, connection, begin(owner, connection));
    } catch (SQLException e) {
      close(connection, e);
      throw SOMEBODY_HAS_THE_LOCK.equals(e.getSQLState())
          ? new DatabaseRefused(
              "%s: another backup of %s goes on. Wait until it has ended."
                  .formatted(owner.setting(), owner.database()),
              e)
          : owner.refused(e);
    } catch (RuntimeException e) {
      close(connection, e);
      throw e;
    }
  }

  private static int begin(Address owner, Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute("set lock_timeout = '60s'");
      statement.execute("set statement_timeout = 0");
      statement.execute("set idle_in_transaction_session_timeout = 0");
      // Before the transaction: one that begins after this sees what went before the lock.
      statement.execute("select pg_advisory_lock(" + LOCK + ")");
      connection.setAutoCommit(false);
      connection.setTransactionIsolation(Connection.TRANSACTION_REPEATABLE_READ);
      connection.setReadOnly(true);
      int version =
          SchemaTables.version(connection)
              .orElseThrow(
                  () ->
                      new DatabaseRefused(
                          "%s: %s has no tables of Lampwright, so there is nothing to back up. Correct the name of the database."
                              .formatted(owner.setting(), owner.database())));
      mustSeeEveryRow(owner, connection);
      // From here on PostgreSQL refuses what it would have to leave rows out of.
      statement.execute("set local row_security = off");
      return version;
    }
  }

  private static void mustSeeEveryRow(Address owner, Connection connection) throws SQLException {
    if (SchemaTables.find(
            connection,
            "select c.relname from pg_class c join pg_namespace n on n.oid = c.relnamespace"
                + " where n.nspname = 'lampwright' and c.relkind = 'r'"
                + " and row_security_active(c.oid) limit 1")
        .isPresent()) {
      throw new DatabaseRefused(
          "%s: row-level security keeps rows from the user %s, so a backup would not be whole. Let a superuser ALTER ROLE %s BYPASSRLS, or name a user who may see every row in %s for the backup."
              .formatted(
                  owner.setting(), owner.user(), owner.user(), WorkingDatabase.OWNER_URL_SETTING));
    }
  }

  /** The number of the newest migration in it. */
  public int version() {
    return version;
  }

  /** Which database this is, see {@link WorkingDatabase#RUN_OF_HISTORY}. */
  public String identity() {
    return ask(() -> Loading.identity(connection));
  }

  /** Every table of ours, by name. */
  public List<TableShape> tables() {
    return ask(() -> SchemaTables.list(connection));
  }

  /**
   * Writes a table's rows out in the text format of PostgreSQL's {@code COPY}.
   *
   * @return how many rows
   * @throws IOException where the stream does not take them
   */
  public long copy(TableShape table, OutputStream out) throws IOException {
    try {
      return connection
          .unwrap(PGConnection.class)
          .getCopyAPI()
          .copyOut("copy " + table.quotedWithColumns() + " to stdout", out);
    } catch (SQLException e) {
      throw owner.refused(e);
    }
  }

  /** How many files of pictures its rows name. */
  public long countPictures() {
    return ask(() -> PictureRows.count(connection));
  }

  /** Hands on the hash of every picture's file that its rows name. */
  public void forEachPicture(EachPicture each) throws IOException {
    try {
      PictureRows.forEach(connection, each);
    } catch (SQLException e) {
      throw owner.refused(e);
    }
  }

  private interface Question<T> {
    T ask() throws SQLException;
  }

  private <T> T ask(Question<T> question) {
    try {
      return question.ask();
    } catch (SQLException e) {
      throw owner.refused(e);
    }
  }

  private static void close(Connection connection, Throwable reason) {
    try {
      connection.close();
    } catch (SQLException e) {
      reason.addSuppressed(e);
    }
  }

  @Override
  public void close() {
    try (connection) {
      connection.rollback();
    } catch (SQLException e) {
      // It has read only; a connection that broke has let go of its lock.
    }
  }
}
