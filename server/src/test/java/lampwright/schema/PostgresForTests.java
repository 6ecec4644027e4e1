package lampwright.schema;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.SQLException;
import java.util.Comparator;
import java.util.stream.Stream;
import lampwright.postgres.EmbeddedPostgres;
import lampwright.postgres.UnpackedPrograms;

/** A PostgreSQL in a temporary folder, with a fresh database for who asks. */
final class PostgresForTests implements AutoCloseable {

  private final Path folder;
  private final EmbeddedPostgres postgres;
  private int databases;

  private PostgresForTests(Path folder, EmbeddedPostgres postgres) {
    this.folder = folder;
    this.postgres = postgres;
  }

  static PostgresForTests start() throws IOException {
    Path folder = Files.createTempDirectory("lampwright-test");
    Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx--x--x"));
    UnpackedPrograms.linkInto(folder.resolve("data"));
    PostgresForTests started =
        new PostgresForTests(folder, EmbeddedPostgres.start(folder.resolve("data")));
    started.hurry();
    return started;
  }

  /** What is kept here need not outlive a loss of power. */
  private void hurry() throws IOException {
    try (Rows owner = asSuperuser(EmbeddedPostgres.DATABASE)) {
      owner.run(
          "alter system set fsync = off",
          "alter system set full_page_writes = off",
          "select pg_reload_conf()");
    } catch (SQLException e) {
      close();
      throw new IOException(e);
    }
  }

  /** The name of an empty database that nobody else uses. */
  String newDatabase() throws SQLException {
    databases++;
    String name = "test_" + databases;
    try (Rows owner = asSuperuser(EmbeddedPostgres.DATABASE)) {
      owner.run("create database " + name);
    }
    return name;
  }

  /** The name of a new database that holds what another does, to which nobody is connected. */
  String copyOf(String database) throws SQLException {
    databases++;
    String name = "test_" + databases;
    try (Rows owner = asSuperuser(EmbeddedPostgres.DATABASE)) {
      owner.run("create database %s template %s".formatted(name, database));
    }
    return name;
  }

  Rows asSuperuser(String database) throws SQLException {
    return Rows.as(postgres.jdbcUrl(database), postgres.user(), postgres.password());
  }

  EmbeddedPostgres embedded() {
    return postgres;
  }

  String superuser() {
    return postgres.user();
  }

  /** What a person would write into the setting. */
  String url(String user, String password, String database) {
    return postgres
        .jdbcUrl(database)
        .replace("jdbc:postgresql://", "postgresql://" + user + ":" + password + "@");
  }

  String url(String database) {
    return url(postgres.user(), postgres.password(), database);
  }

  String jdbcUrl(String database) {
    return postgres.jdbcUrl(database);
  }

  String password() {
    return postgres.password();
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
