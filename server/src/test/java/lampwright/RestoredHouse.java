package lampwright;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import lampwright.postgres.RunningPostgres;

/**
 * A server on a machine that had nothing: a backup restored into an empty data folder, its index
 * checked, and then opened.
 */
final class RestoredHouse implements AutoCloseable {

  private final Path top;
  private final Settings settings;
  private final String said;
  private final boolean indexEqualsDatabase;
  private final Foundation foundation;
  private final Map<String, String> rows;
  private final List<String> guards;
  private final House house;

  private RestoredHouse(Path top, Path backup) throws Exception {
    this.top = top;
    settings =
        Settings.read(
            Map.of(
                "LAMPWRIGHT_DATA", top.resolve("data").toString(),
                "LAMPWRIGHT_DEMO", "few",
                "LAMPWRIGHT_DEMO_PASSWORD", TestHouse.PASSWORD,
                "LAMPWRIGHT_MEANING", "false",
                "LAMPWRIGHT_PORT", "0"));
    ByteArrayOutputStream console = new ByteArrayOutputStream();
    PrintStream out = new PrintStream(console, true, StandardCharsets.UTF_8);
    Backups.run(settings, "restore", backup.toString(), out);
    indexEqualsDatabase = IndexCheck.run(settings, out);
    said = console.toString(StandardCharsets.UTF_8);
    foundation = Foundation.lay(settings);
    rows = WholeTables.rows(this::sql);
    guards = WholeTables.guards(this::sql);
    house = House.open(settings, foundation.database(), Clock.systemUTC(), out);
  }

  static RestoredHouse of(Path backup) throws Exception {
    Path top = Files.createTempDirectory("lampwright-restored");
    // PostgreSQL runs as another user where we are root, and has to pass through.
    Files.setPosixFilePermissions(top, PosixFilePermissions.fromString("rwx--x--x"));
    return new RestoredHouse(top, backup);
  }

  Settings settings() {
    return settings;
  }

  String said() {
    return said;
  }

  boolean indexEqualsDatabase() {
    return indexEqualsDatabase;
  }

  /** What each table's rows were before anybody came. */
  Map<String, String> rows() {
    return rows;
  }

  /** The keys, triggers and policies that hold the rows. */
  List<String> guards() {
    return guards;
  }

  Visitor visitor() {
    return new Visitor(URI.create("http://127.0.0.1:" + house.port()));
  }

  /** Plain SQL as the superuser; the first column. */
  List<String> sql(String statement) throws SQLException {
    RunningPostgres running = RunningPostgres.find(settings.data()).orElseThrow();
    try (Connection connection =
            DriverManager.getConnection(running.jdbcUrl(), running.user(), running.password());
        Statement sql = connection.createStatement();
        ResultSet found = sql.executeQuery(statement)) {
      List<String> column = new ArrayList<>();
      while (found.next()) {
        column.add(String.valueOf(found.getString(1)));
      }
      return column;
    }
  }

  @Override
  public void close() throws IOException {
    house.close();
    foundation.close();
    try (Stream<Path> tree = Files.walk(top)) {
      for (Path path : tree.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(path);
      }
    }
  }
}
