package lampwright.postgres;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.util.concurrent.CountDownLatch;

/**
 * A Java process of its own that starts a database, commits a row, says so, and waits to be killed.
 */
final class KilledServer implements AutoCloseable {

  private final Process process;
  private final long postmaster;

  private KilledServer(Process process, long postmaster) {
    this.process = process;
    this.postmaster = postmaster;
  }

  public static void main(String[] arguments) throws Exception {
    EmbeddedPostgres postgres = EmbeddedPostgres.start(Path.of(arguments[0]));
    try (Connection connection =
            DriverManager.getConnection(
                postgres.jdbcUrl(EmbeddedPostgres.DATABASE), postgres.user(), postgres.password());
        Statement statement = connection.createStatement()) {
      statement.execute("create table if not exists " + arguments[1] + " (name text)");
      statement.execute("insert into " + arguments[1] + " values ('key')");
    }
    System.out.println(postgres.pid());
    new CountDownLatch(1).await();
  }

  static KilledServer start(Path data, String table) throws IOException {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                KilledServer.class.getName(),
                data.toString(),
                table)
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    BufferedReader output =
        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    String line = output.readLine();
    if (line == null) {
      throw new IOException("The child ended before its database had started.");
    }
    return new KilledServer(process, Long.parseLong(line));
  }

  long postmaster() {
    return postmaster;
  }

  void kill() throws InterruptedException {
    process.destroyForcibly().waitFor();
  }

  @Override
  public void close() {
    process.destroyForcibly();
  }
}
