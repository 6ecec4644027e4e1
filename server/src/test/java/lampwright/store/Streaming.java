package lampwright.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Comparator;
import java.util.stream.Stream;
import lampwright.postgres.EmbeddedPostgres;
import lampwright.schema.WorkingDatabase;

/** A PostgreSQL, and another that follows it by streaming replication. */
public final class Streaming implements AutoCloseable {

  private final Path folder;
  private final EmbeddedPostgres database;
  private final EmbeddedPostgres replica;
  private final WorkingDatabase where;

  private Streaming(
      Path folder, EmbeddedPostgres database, EmbeddedPostgres replica, WorkingDatabase where) {
    this.folder = folder;
    this.database = database;
    this.replica = replica;
    this.where = where;
  }

  /** A migrated one, its files copied while it is stopped, and both started. */
  public static Streaming start() throws IOException, InterruptedException, SQLException {
    Path folder = Files.createTempDirectory("lampwright-streaming");
    Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx--x--x"));
    Path data = folder.resolve("database");
    try (EmbeddedPostgres postgres = EmbeddedPostgres.start(data)) {
      WorkingDatabase.in(postgres);
    }
    Path copied = folder.resolve("replica");
    int copy = new ProcessBuilder("cp", "-a", data.toString(), copied.toString()).start().waitFor();
    if (copy != 0) {
      throw new IOException("cp ended with " + copy);
    }
    EmbeddedPostgres database = EmbeddedPostgres.start(data);
    try {
      follow(copied.resolve("postgres/cluster"), database);
      return new Streaming(
          folder, database, EmbeddedPostgres.start(copied), WorkingDatabase.in(database));
    } catch (RuntimeException | IOException e) {
      database.close();
      throw e;
    }
  }

  /** As PostgreSQL's documentation tells it, "Log-Shipping Standby Servers". */
  private static void follow(Path cluster, EmbeddedPostgres database) throws IOException {
    Files.createFile(cluster.resolve("standby.signal"));
    String port = database.jdbcUrl("").replaceFirst(".*:(\\d+)/", "$1");
    Files.writeString(
        cluster.resolve("postgresql.auto.conf"),
        "primary_conninfo = 'host=127.0.0.1 port=%s user=%s password=%s'\n"
            .formatted(port, database.user(), database.password()),
        StandardCharsets.UTF_8,
        StandardOpenOption.APPEND);
  }

  /** The database, to work in. */
  public WorkingDatabase where() {
    return where;
  }

  /** The address that a server's settings name the database by, as its owner. */
  public String databaseUrl() {
    return database
        .jdbcUrl(EmbeddedPostgres.DATABASE)
        .replaceFirst(
            "jdbc:postgresql://",
            "postgresql://%s:%s@".formatted(database.user(), database.password()));
  }

  /** The address that a server's settings name the replica by. */
  public String replicaUrl() {
    return replica.jdbcUrl(EmbeddedPostgres.DATABASE).substring("jdbc:".length());
  }

  /** The replica's process. */
  public ProcessHandle replicaProcess() {
    return ProcessHandle.of(replica.pid()).orElseThrow();
  }

  /** The first value that a statement gives in the database, as its superuser; empty for none. */
  public String ask(String sql) throws SQLException {
    return ask(database, sql);
  }

  /** The same of the replica. */
  public String askReplica(String sql) throws SQLException {
    return ask(replica, sql);
  }

  private static String ask(EmbeddedPostgres postgres, String sql) throws SQLException {
    try (Connection connection =
            DriverManager.getConnection(
                postgres.jdbcUrl(EmbeddedPostgres.DATABASE), postgres.user(), postgres.password());
        Statement statement = connection.createStatement()) {
      if (!statement.execute(sql)) {
        return "";
      }
      try (ResultSet rows = statement.getResultSet()) {
        rows.next();
        return String.valueOf(rows.getString(1));
      }
    }
  }

  @Override
  public void close() throws IOException {
    replica.close();
    database.close();
    try (Stream<Path> tree = Files.walk(folder)) {
      for (Path path : tree.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }
}
