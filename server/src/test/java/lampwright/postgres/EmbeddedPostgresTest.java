package lampwright.postgres;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What happens to the rows and to the processes when things are stopped, killed and started. */
class EmbeddedPostgresTest {

  /** One folder for all, since to make one costs seconds; each test has a table of its own. */
  @TempDir static Path home;

  private static Path data = Path.of("/");

  @BeforeAll
  static void letEverybodyPassThrough() throws IOException {
    Files.setPosixFilePermissions(home, PosixFilePermissions.fromString("rwx--x--x"));
    data = home.resolve("data");
    UnpackedPrograms.linkInto(data);
  }

  @Test
  void rowsSurviveARestart() throws SQLException {
    try (EmbeddedPostgres first = EmbeddedPostgres.start(data)) {
      execute(first, "create table restarted (name text)");
      execute(first, "insert into restarted values ('key')");
    }
    try (EmbeddedPostgres second = EmbeddedPostgres.start(data)) {
      assertEquals("1", ask(second, "select count(*) from restarted"));
    }
  }

  @Test
  void everyCommitReachesTheDiskAndEveryPageIsChecked() throws SQLException {
    try (EmbeddedPostgres postgres = EmbeddedPostgres.start(data)) {
      assertEquals("on", ask(postgres, "show fsync"));
      assertEquals("on", ask(postgres, "show synchronous_commit"));
      assertEquals("on", ask(postgres, "show full_page_writes"));
      assertEquals("on", ask(postgres, "show data_checksums"));
      assertEquals("UTF8", ask(postgres, "show server_encoding"));
      assertEquals("127.0.0.1", ask(postgres, "show listen_addresses"));
      assertEquals(
          "scram-sha-256", ask(postgres, "select distinct auth_method from pg_hba_file_rules"));
    }
  }

  @Test
  void nobodyElseMayReadThePasswordOrTheFiles() throws IOException {
    try (EmbeddedPostgres postgres = EmbeddedPostgres.start(data)) {
      assertTrue(postgres.isAlive());
      assertEquals(
          "rw-------",
          PosixFilePermissions.toString(
              Files.getPosixFilePermissions(data.resolve("postgres-password"))));
      assertEquals(
          "rwx------",
          PosixFilePermissions.toString(
              Files.getPosixFilePermissions(data.resolve("postgres/cluster"))));
      assertFalse(Files.exists(data.resolve("postgres/initdb-password")));
    }
  }

  @Test
  void rowsSurviveAKilledPostmaster() throws Exception {
    try (EmbeddedPostgres first = EmbeddedPostgres.start(data)) {
      execute(first, "create table postmaster_killed (name text)");
      execute(first, "insert into postmaster_killed values ('key')");
      kill(first.pid());
    }
    try (EmbeddedPostgres second = EmbeddedPostgres.start(data)) {
      assertEquals("1", ask(second, "select count(*) from postmaster_killed"));
    }
  }

  @Test
  void aKilledPostmasterIsStartedAgainAtTheSameAddress() throws Exception {
    try (EmbeddedPostgres postgres = EmbeddedPostgres.start(data)) {
      execute(postgres, "create table started_again (name text)");
      execute(postgres, "insert into started_again values ('key')");
      String address = postgres.jdbcUrl(EmbeddedPostgres.DATABASE);
      kill(postgres.pid());
      assertEquals("1", askUntilAnswered(postgres, "select count(*) from started_again"));
      assertEquals(address, postgres.jdbcUrl(EmbeddedPostgres.DATABASE));
    }
  }

  private static String askUntilAnswered(EmbeddedPostgres postgres, String sql)
      throws SQLException {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
    while (true) {
      try {
        return ask(postgres, sql);
      } catch (SQLException notYet) {
        if (System.nanoTime() > end) {
          throw notYet;
        }
      }
    }
  }

  @Test
  void rowsSurviveAKilledServerAndNoProcessIsLeft() throws Exception {
    try (KilledServer server = KilledServer.start(data, "server_killed")) {
      server.kill();
      try (EmbeddedPostgres next = EmbeddedPostgres.start(data)) {
        assertEquals("1", ask(next, "select count(*) from server_killed"));
        assertGone(server.postmaster());
      }
    }
  }

  @Test
  void rowsSurviveServerAndPostmasterKilledAtOnce() throws Exception {
    for (int round = 1; round <= 3; round++) {
      try (KilledServer server = KilledServer.start(data, "both_killed")) {
        ProcessHandle.of(server.postmaster()).orElseThrow().destroyForcibly();
        server.kill();
        try (EmbeddedPostgres next = EmbeddedPostgres.start(data)) {
          assertEquals(
              Integer.toString(round),
              ask(next, "select count(*) from both_killed"),
              "round " + round);
        }
      }
    }
  }

  @Test
  void aDatabaseThatNobodyHoldsIsStoppedInOrderFirst() throws Exception {
    try (EmbeddedPostgres first = EmbeddedPostgres.start(data)) {
      execute(first, "create table orphaned (name text)");
      execute(first, "insert into orphaned values ('key')");
    }
    Postmaster orphan = startWithoutHolding();
    try (EmbeddedPostgres second = EmbeddedPostgres.start(data)) {
      assertEquals("1", ask(second, "select count(*) from orphaned"));
      assertFalse(orphan.isAlive());
    }
  }

  @Test
  void aStaleProcessNumberOfSomebodyElseIsNotMistakenForTheDatabase() throws Exception {
    EmbeddedPostgres.start(data).close();
    Path pidFile = data.resolve("postgres/cluster/postmaster.pid");
    long ourselves = ProcessHandle.current().pid();
    Files.writeString(pidFile, ourselves + "\n" + data + "\n");
    try (EmbeddedPostgres next = EmbeddedPostgres.start(data)) {
      assertTrue(next.isAlive());
    }
  }

  @Test
  void aHalfMadeFolderIsMadeAnew() throws Exception {
    Path halfMade = home.resolve("half-made");
    try (DataFolder folder = DataFolder.take(halfMade)) {
      Files.createDirectory(folder.postgres().resolve("cluster.part"));
      Files.createFile(folder.postgres().resolve("cluster.part/PG_VERSION"));
      Files.writeString(folder.passwordFile(), "of the start that was killed");
    }
    try (EmbeddedPostgres next = EmbeddedPostgres.start(halfMade)) {
      assertEquals("1", ask(next, "select 1"));
    }
  }

  @Test
  void aSecondHolderIsRefusedAndTheFirstLivesOn() throws Exception {
    try (KilledServer first = KilledServer.start(data, "held")) {
      DataFolderUnusable refusal =
          assertThrows(DataFolderUnusable.class, () -> EmbeddedPostgres.start(data));
      assertSaysInOneLine(
          refusal, data.toString(), "in use by another Lampwright", "LAMPWRIGHT_DATA");
      assertTrue(ProcessHandle.of(first.postmaster()).isPresent());
    }
  }

  @Test
  void aSecondStartInTheSameProcessIsRefusedToo() {
    try (EmbeddedPostgres first = EmbeddedPostgres.start(data)) {
      assertThrows(DataFolderUnusable.class, () -> EmbeddedPostgres.start(data));
      assertTrue(first.isAlive());
    }
  }

  @Test
  void aFolderBelowAPrivateHomeWorksOrIsRefusedInOneLine() throws IOException {
    Path privateHome = Files.createTempDirectory(home, "private");
    Path hidden = privateHome.resolve("data");
    assertEquals(
        "rwx------", PosixFilePermissions.toString(Files.getPosixFilePermissions(privateHome)));
    try (EmbeddedPostgres postgres = EmbeddedPostgres.start(hidden)) {
      assertTrue(postgres.isAlive());
    } catch (DataFolderUnusable refusal) {
      assertSaysInOneLine(refusal, hidden.toString(), "cannot reach", "LAMPWRIGHT_DATA");
    }
  }

  private Postmaster startWithoutHolding() throws Exception {
    Binaries binaries = Binaries.in(data.resolve("postgres"));
    Account account = Account.forPrograms(data.resolve("postgres"), binaries);
    int port;
    try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      port = socket.getLocalPort();
    }
    Postmaster orphan = Postmaster.start(binaries, account, data.resolve("postgres/cluster"), port);
    while (orphan.isAlive() && !orphan.output().contains("ready to accept connections")) {
      Thread.onSpinWait();
    }
    assertTrue(orphan.isAlive(), orphan.output());
    return orphan;
  }

  private static void kill(long pid) throws Exception {
    ProcessHandle process = ProcessHandle.of(pid).orElseThrow();
    process.destroyForcibly();
    process.onExit().get(60, TimeUnit.SECONDS);
  }

  private static void assertGone(long pid) throws Exception {
    var process = ProcessHandle.of(pid);
    if (process.isPresent()) {
      process.get().onExit().get(60, TimeUnit.SECONDS);
    }
  }

  static void assertSaysInOneLine(Exception refusal, String... parts) {
    String message = String.valueOf(refusal.getMessage());
    assertEquals(1, message.lines().count(), message);
    for (String part : parts) {
      assertTrue(message.contains(part), message);
    }
  }

  private static void execute(EmbeddedPostgres postgres, String sql) throws SQLException {
    try (Connection connection = connect(postgres);
        Statement statement = connection.createStatement()) {
      statement.execute(sql);
    }
  }

  private static String ask(EmbeddedPostgres postgres, String sql) throws SQLException {
    try (Connection connection = connect(postgres);
        Statement statement = connection.createStatement();
        ResultSet answer = statement.executeQuery(sql)) {
      answer.next();
      return answer.getString(1);
    }
  }

  private static Connection connect(EmbeddedPostgres postgres) throws SQLException {
    return DriverManager.getConnection(
        postgres.jdbcUrl(EmbeddedPostgres.DATABASE), postgres.user(), postgres.password());
  }
}
