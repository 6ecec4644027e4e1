package lampwright.schema;

import java.io.IOException;
import java.io.InputStream;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import org.postgresql.PGConnection;

/**
 * Brings the rows of a backup into empty tables of the same version, all in one transaction: until
 * {@link #commit} nobody sees any of it, and closed before that, it leaves no row.
 *
 * <p>While the rows come in no trigger fires, since what a trigger once wrote comes in as rows, and
 * no foreign key holds, since tables refer to each other in circles; the keys are made again
 * afterwards and prove every row then.
 */
public final class Loading implements AutoCloseable {

  private final Address owner;
  private final Connection connection;
  private final boolean schemaIsOurs;
  private final List<TableShape> tables;

  /** What makes keys and triggers as they were, in order. */
  private final List<String> afterwards = new ArrayList<>();

  /** What forces row-level security again. */
  private final List<String> last = new ArrayList<>();

  private boolean done;

  private Loading(
      Address owner, Connection connection, boolean schemaIsOurs, List<TableShape> tables) {
    this.owner = owner;
    this.connection = connection;
    this.schemaIsOurs = schemaIsOurs;
    this.tables = tables;
  }

  /**
   * Begins in a database that has been migrated to the backup's version.
   *
   * @param schemaIsOurs whether the tables were made for this and go where it fails
   */
  static Loading begin(Address owner, boolean schemaIsOurs) {
    Connection connection = owner.connect();
    Loading loading;
    try {
      connection.setAutoCommit(false);
      loading = new Loading(owner, connection, schemaIsOurs, SchemaTables.list(connection));
    } catch (SQLException e) {
      throw owner.refused(e);
    }
    try {
      loading.clearTheWay();
      return loading;
    } catch (SQLException e) {
      loading.close();
      throw owner.refused(e);
    } catch (RuntimeException e) {
      loading.close();
      throw e;
    }
  }

  private void clearTheWay() throws SQLException {
    run("set local lock_timeout = '10s'");
    run("set local statement_timeout = 0");
    run("set local idle_in_transaction_session_timeout = 0");
    // Definitions must name the schema of what they refer to.
    run("set local search_path = pg_catalog");
    for (TableShape table : tables) {
      run("lock table " + table.quoted() + " in access exclusive mode");
    }
    dropForeignKeys();
    for (String table : names("c.relhastriggers")) {
      run("alter table lampwright." + table + " disable trigger user");
      afterwards.add("alter table lampwright." + table + " enable trigger user");
    }
    for (String table : names("c.relforcerowsecurity")) {
      run("alter table lampwright." + table + " no force row level security");
      last.add("alter table lampwright." + table + " force row level security");
    }
    OwnedDatabase.mustBeEmpty(owner, connection);
    run("delete from lampwright." + SchemaTables.CATALOGUE);
  }

  private void dropForeignKeys() throws SQLException {
    afterwards.addAll(
        SchemaTables.all(
            connection,
            "select format('alter table %s add constraint %I %s', conrelid::regclass, conname,"
                + " pg_get_constraintdef(oid))"
                + FOREIGN_KEYS));
    for (String drop :
        SchemaTables.all(
            connection,
            "select format('alter table %s drop constraint %I', conrelid::regclass, conname)"
                + FOREIGN_KEYS)) {
      run(drop);
    }
  }

  private static final String FOREIGN_KEYS =
      " from pg_constraint where contype = 'f' and connamespace = 'lampwright'::regnamespace"
          + " order by conrelid::regclass::text, conname";

  private List<String> names(String condition) throws SQLException {
    return SchemaTables.all(
        connection,
        "select quote_ident(c.relname) from pg_class c"
            + " join pg_namespace n on n.oid = c.relnamespace"
            + " where n.nspname = 'lampwright' and c.relkind = 'r' and "
            + condition
            + " order by c.relname");
  }

  /** Every table that rows can come into, by name. */
  public List<TableShape> tables() {
    return tables;
  }

  /**
   * Takes a table's rows in, in the text format of PostgreSQL's {@code COPY}.
   *
   * @param table one of {@link #tables}
   * @return how many rows
   * @throws IOException where the stream cannot be read
   * @throws DatabaseRefused where the database does not take them
   */
  public long copy(TableShape table, InputStream rows) throws IOException {
    if (!tables.contains(table)) {
      throw new IllegalArgumentException("Rows come into tables that are there");
    }
    try {
      return connection
          .unwrap(PGConnection.class)
          .getCopyAPI()
          .copyIn("copy " + table.quotedWithColumns() + " from stdin", rows);
    } catch (SQLException e) {
      throw refused("the rows of the table " + table.name() + " could not be loaded", e);
    }
  }

  /**
   * Proves the rows when all are in, by making the keys as they were before; numbers go on after
   * the highest.
   *
   * <p>The database gets an identity of its own, so that it is not taken for the one that was
   * backed up, and no index or folder of pictures of that one for its own. The change log's
   * transactions were numbered by another PostgreSQL; they become 0, before every one of this.
   */
  public void finish() {
    try {
      run("update lampwright.catalogue set identity = gen_random_uuid()::text");
      run("update lampwright.change_log set transaction_id = 0");
      goOnAfterTheHighest();
      for (String statement : afterwards) {
        run(statement);
      }
    } catch (SQLException e) {
      throw refused("the rows of the backup do not fit together", e);
    }
  }

  private void goOnAfterTheHighest() throws SQLException {
    for (String statement :
        SchemaTables.all(
            connection,
            """
            select format(
              'select setval(%L::regclass, coalesce(max(%I), 0) + 1, false) from lampwright.%I',
              pg_get_serial_sequence(format('lampwright.%I', c.relname), a.attname),
              a.attname, c.relname)
            from pg_class c
              join pg_namespace n on n.oid = c.relnamespace
              join pg_attribute a on a.attrelid = c.oid
            where n.nspname = 'lampwright' and c.relkind = 'r'
              and a.attnum > 0 and a.attidentity <> ''
            """)) {
      var _ = SchemaTables.find(connection, statement);
    }
  }

  /** Which database this is from now on, see {@link WorkingDatabase#RUN_OF_HISTORY}. */
  public String identity() {
    try {
      return identity(connection);
    } catch (SQLException e) {
      throw owner.refused(e);
    }
  }

  static String identity(Connection connection) throws SQLException {
    return SchemaTables.find(
            connection,
            "select identity || " + WorkingDatabase.RUN_OF_HISTORY + " from lampwright.catalogue")
        .orElseThrow(() -> new SQLException("The table catalogue has no row"));
  }

  /** Hands on the hash of every picture's file that the rows name. */
  public void forEachPicture(EachPicture each) throws IOException {
    try {
      PictureRows.forEach(connection, each);
    } catch (SQLException e) {
      throw owner.refused(e);
    }
  }

  /** Makes it all there at once. */
  public void commit() {
    try {
      for (String statement : last) {
        run(statement);
      }
      connection.commit();
      done = true;
    } catch (SQLException e) {
      throw refused("the rows could not be committed", e);
    }
  }

  private DatabaseRefused refused(String what, SQLException e) {
    return new DatabaseRefused(
        "%s: %s: %s. Nothing was restored.".formatted(owner.setting(), what, Address.firstLine(e)),
        e);
  }

  private void run(String sql) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute(sql);
    }
  }

  /** Where it was not committed, leaves the database as it was. */
  @Override
  public void close() {
    try (connection) {
      if (done) {
        return;
      }
      connection.rollback();
      if (schemaIsOurs && SchemaTables.findFilled(connection).isEmpty()) {
        run("drop schema lampwright cascade");
        connection.commit();
      }
    } catch (SQLException e) {
      // A connection that broke has rolled back; empty tables may stay, which can be loaded later.
    }
  }
}
