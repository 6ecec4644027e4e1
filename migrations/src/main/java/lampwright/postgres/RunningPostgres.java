package lampwright.postgres;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.Properties;

/**
 * The PostgreSQL of a data folder that another process of ours runs, for who works in it beside
 * that process and stops nothing.
 *
 * @param jdbcUrl the address of the server's database
 * @param user the superuser that owns it
 * @param password the superuser's password
 */
public record RunningPostgres(String jdbcUrl, String user, String password) {

  /** The line of {@code postmaster.pid} that names the port (PostgreSQL, {@code pidfile.h}). */
  private static final int LINE_OF_PORT = 3;

  /** No record's text may reach a log with a password in it. */
  @Override
  public String toString() {
    return "RunningPostgres[" + jdbcUrl + "]";
  }

  /** Whether a data folder has had a database made in it. */
  public static boolean hasDatabase(Path dataFolder) {
    return Files.isDirectory(cluster(dataFolder));
  }

  /** The one that answers now; empty where none does, or it is not to be opened by this user. */
  public static Optional<RunningPostgres> find(Path dataFolder) {
    try {
      List<String> lines =
          Files.readAllLines(cluster(dataFolder).resolve("postmaster.pid"), StandardCharsets.UTF_8);
      if (lines.size() <= LINE_OF_PORT) {
        return Optional.empty();
      }
      int port = Integer.parseInt(lines.get(LINE_OF_PORT).strip());
      RunningPostgres found =
          new RunningPostgres(
              "jdbc:postgresql://127.0.0.1:%d/%s".formatted(port, EmbeddedPostgres.DATABASE),
              Cluster.OWNER,
              Files.readString(dataFolder.resolve("postgres-password"), StandardCharsets.US_ASCII)
                  .strip());
      return Optional.of(found).filter(RunningPostgres::answers);
    } catch (IOException | NumberFormatException absentOrHalfWritten) {
      return Optional.empty();
    }
  }

  private static Path cluster(Path dataFolder) {
    return dataFolder.resolve("postgres").resolve("cluster");
  }

  private boolean answers() {
    Properties properties = new Properties();
    properties.setProperty("user", user);
    properties.setProperty("password", password);
    properties.setProperty("connectTimeout", "5");
    properties.setProperty("socketTimeout", "10");
    try (Connection connection = DriverManager.getConnection(jdbcUrl, properties)) {
      return connection.isValid(5);
    } catch (SQLException e) {
      return false;
    }
  }
}
