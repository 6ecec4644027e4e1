package lampwright.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Comparator;
import java.util.stream.Stream;
import lampwright.postgres.EmbeddedPostgres;
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
      EmbeddedPostgres postgres = EmbeddedPostgres.start(folder.resolve("data"));
      try {
        return new TestServer(folder, postgres, WorkingDatabase.in(postgres));
      } catch (RuntimeException e) {
        postgres.close();
        throw e;
      }
    } catch (IOException e) {
      throw new IllegalStateException("No folder for the test's database", e);
    }
  }

  /** A database of one's own, migrated and empty. */
  synchronized WorkingDatabase copy() throws SQLException {
    copies++;
    String name = "copy_" + copies;
    try (Connection connection = superuser("postgres");
        Statement statement = connection.createStatement()) {
      statement.execute(
          "create database %s template %s".formatted(name, EmbeddedPostgres.DATABASE));
    }
    try (Connection connection = superuser(name);
        Statement statement = connection.createStatement()) {
      statement.execute("update lampwright.catalogue set identity = gen_random_uuid()::text");
    }
    return new WorkingDatabase(postgres.jdbcUrl(name), template.user(), template.password());
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

  @Override
  public void close() throws IOException {
    postgres.close();
    try (Stream<Path> tree = Files.walk(folder)) {
      for (Path path : tree.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }
}
