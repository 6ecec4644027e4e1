package lampwright.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import lampwright.postgres.EmbeddedPostgres;
import lampwright.postgres.UnpackedPrograms;
import lampwright.schema.WorkingDatabase;

/** The one PostgreSQL of a test run, with a migrated template that databases are copied from. */
final class TestServer implements AutoCloseable {

  private final Path folder;
  private final EmbeddedPostgres postgres;
  private final WorkingDatabase template;
  private int copies;

  private TestServer(Path folder, EmbeddedPostgres postgres, WorkingDatabase template) {
    this.folder = folder;
    this.postgres = postgres;
    this.template = template;
  }

  static TestServer start() {
    try {
      Path folder = Files.createTempDirectory("lampwright-test");
      // PostgreSQL runs as another user where we are root, and has to pass through.
      Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx--x--x"));
      UnpackedPrograms.linkInto(folder.resolve("data"));
      EmbeddedPostgres postgres = EmbeddedPostgres.start(folder.resolve("data"));
      try {
        TestServer server = new TestServer(folder, postgres, WorkingDatabase.in(postgres));
        server.hurry();
        return server;
      } catch (RuntimeException | SQLException e) {
        postgres.close();
        throw e;
      }
    } catch (IOException | SQLException e) {
      throw new IllegalStateException("No folder for the test's database", e);
    }
  }

  /**
   * What is kept here need not outlive a loss of power; the tests of that have servers of their
   * own. And its thousand connections need not stretch passwords that are random.
   */
  private void hurry() throws SQLException {
    try (Connection connection = superuser("postgres");
        Statement statement = connection.createStatement()) {
      statement.execute("alter system set fsync = off");
      statement.execute("alter system set full_page_writes = off");
      statement.execute("select pg_reload_conf()");
      statement.execute("set scram_iterations = 1");
      setAgain(statement, postgres.user(), postgres.password());
      setAgain(statement, template.user(), template.password());
    }
  }

  private static void setAgain(Statement statement, String user, String password)
      throws SQLException {
    statement.execute("alter role \"%s\" password '%s'".formatted(user, password));
  }

  /** A database of one's own, migrated and empty. */
  WorkingDatabase copy() throws SQLException {
    WorkingDatabase copy = copyOf(EmbeddedPostgres.DATABASE);
    try (Connection connection = superuser(nameOf(copy));
        Statement statement = connection.createStatement()) {
      statement.execute("update lampwright.catalogue set identity = gen_random_uuid()::text");
    }
    return copy;
  }

  /** The same as another that nobody is connected to, with its identity. */
  WorkingDatabase copyOf(WorkingDatabase other) throws SQLException {
    return copyOf(nameOf(other));
  }

  private synchronized WorkingDatabase copyOf(String other) throws SQLException {
    copies++;
    String name = "copy_" + copies;
    try (Connection connection = superuser("postgres");
        Statement statement = connection.createStatement()) {
      statement.execute("create database %s template %s".formatted(name, other));
    }
    return new WorkingDatabase(postgres.jdbcUrl(name), template.user(), template.password());
  }

  static String nameOf(WorkingDatabase database) {
    return database.jdbcUrl().substring(database.jdbcUrl().lastIndexOf('/') + 1);
  }

  String ownerUrl(String jdbcUrl) {
    return "postgresql://%s:%s@%s"
        .formatted(
            postgres.user(), postgres.password(), jdbcUrl.replaceFirst("jdbc:postgresql://", ""));
  }

  Connection superuser(String database) throws SQLException {
    return DriverManager.getConnection(
        postgres.jdbcUrl(database), postgres.user(), postgres.password());
  }

  /**
   * Nobody waits until the files of all the databases are gone: there are hundreds of thousands.
   */
  @Override
  public void close() throws IOException {
    postgres.close();
    new ProcessBuilder("rm", "-rf", folder.toString())
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .redirectError(ProcessBuilder.Redirect.DISCARD)
        .start();
  }
}
