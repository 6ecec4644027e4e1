package lampwright;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.Map;
import lampwright.postgres.EmbeddedPostgres;

/**
 * One PostgreSQL and one folder of pictures for several servers, each a process with a data folder
 * of its own; a few setups of the demo are in it.
 */
final class OnePostgres implements AutoCloseable {

  private final ReachableFolder folder;
  private final EmbeddedPostgres postgres;

  private OnePostgres(ReachableFolder folder, EmbeddedPostgres postgres) {
    this.folder = folder;
    this.postgres = postgres;
  }

  /** Starts one, as a server left it that had it by itself. */
  static OnePostgres start(ReachableFolder folder) throws IOException {
    Path left = folder.resolve("left");
    ServerClasses.once().copyDataTo(left);
    return new OnePostgres(folder, EmbeddedPostgres.start(left));
  }

  /** Where the pictures are. */
  Path pictures() {
    return folder.resolve("left").resolve("pictures");
  }

  /** The data folder of a server. */
  Path dataOf(String name) throws IOException {
    return Files.createDirectories(folder.resolve(name).resolve("data"));
  }

  /** What a server is told so that it uses this. */
  Map<String, String> settings() {
    String at = postgres.jdbcUrl(EmbeddedPostgres.DATABASE).replaceFirst("jdbc:postgresql://", "");
    return Map.of(
        "LAMPWRIGHT_DATABASE_URL",
        "postgresql://%s:%s@%s".formatted(postgres.user(), postgres.password(), at),
        "LAMPWRIGHT_PICTURES",
        pictures().toString());
  }

  /** Connects as its owner. */
  Connection connect() throws SQLException {
    return DriverManager.getConnection(
        postgres.jdbcUrl(EmbeddedPostgres.DATABASE), postgres.user(), postgres.password());
  }

  /** Starts a server on it. */
  ServerProcess server(String name) throws IOException {
    return server(name, Map.of());
  }

  /** Starts a server on it that is told more. */
  ServerProcess server(String name, Map<String, String> more) throws IOException {
    Map<String, String> settings = new HashMap<>(settings());
    settings.putAll(more);
    return ServerProcess.start(dataOf(name), settings);
  }

  @Override
  public void close() {
    postgres.close();
  }
}
