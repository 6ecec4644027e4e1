package lampwright.postgres;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.Properties;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * A PostgreSQL that lives and dies with this process and keeps its files in a data folder.
 *
 * <p>Where it ends though nobody told it to, it is started again, on the same port.
 *
 * <p>It listens on the loopback address only, on a port that it chooses at each start. Whatever was
 * killed before, this process, the database, or both, the next start finds every committed row. A
 * folder serves one process at a time.
 */
public final class EmbeddedPostgres implements AutoCloseable {

  private static final Logger log = LoggerFactory.getLogger(EmbeddedPostgres.class);

  /** The database that the server's tables are in. */
  public static final String DATABASE = "lampwright";

  private static final Duration PATIENCE = Duration.ofSeconds(60);
  private static final Duration RETRIES_END_AFTER = Duration.ofSeconds(10);
  private static final Duration BETWEEN_LOOKS = Duration.ofMillis(20);
  private static final Duration LONGEST_WAIT = Duration.ofSeconds(10);

  private final DataFolder folder;
  private final Binaries binaries;
  private final Account account;
  private final int port;
  private final String password;
  private final Thread keeper =
      Thread.ofPlatform().name("postgres-keeper").daemon().unstarted(this::keepAlive);

  private volatile Postmaster postmaster;
  private volatile boolean closing;

  private EmbeddedPostgres(
      DataFolder folder,
      Binaries binaries,
      Account account,
      Postmaster postmaster,
      int port,
      String password) {
    this.folder = folder;
    this.binaries = binaries;
    this.account = account;
    this.postmaster = postmaster;
    this.port = port;
    this.password = password;
  }

  /**
   * Starts on a data folder, which is made where it is missing. Returns when connections work.
   *
   * @throws DataFolderUnusable when the folder cannot hold a database or another process holds it
   */
  public static EmbeddedPostgres start(Path dataFolder) {
    DataFolder folder = DataFolder.take(dataFolder);
    try {
      return startIn(folder);
    } catch (IOException e) {
      folder.close();
      throw DataFolder.unusable(folder.root(), e);
    } catch (RuntimeException e) {
      folder.close();
      throw e;
    }
  }

  private static EmbeddedPostgres startIn(DataFolder folder) throws IOException {
    Binaries binaries = Binaries.in(folder.postgres());
    Account account = Account.forPrograms(folder.postgres(), binaries);
    String password = new Cluster(folder, binaries, account).password();
    new Residents(folder.cluster()).evict(binaries, account);
    long retriesEnd = System.nanoTime() + RETRIES_END_AFTER.toNanos();
    while (true) {
      int port = freePort();
      Postmaster postmaster = Postmaster.start(binaries, account, folder.cluster(), port);
      EmbeddedPostgres started =
          new EmbeddedPostgres(folder, binaries, account, postmaster, port, password);
      if (started.isReadyWithDatabase()) {
        started.keeper.start();
        return started;
      }
      String output = postmaster.output();
      if (!isPassing(output) || System.nanoTime() > retriesEnd) {
        throw DataFolder.unusable(folder.root(), Postmaster.reasonIn(output));
      }
      pause();
    }
  }

  /** A dying process may hold its lock for a moment more, and somebody may take the port first. */
  private static boolean isPassing(String output) {
    return output.contains("already exists")
        || output.contains("pre-existing shared memory block")
        || output.contains("Address already in use");
  }

  private boolean isReadyWithDatabase() throws IOException {
    try {
      boolean ready = becomesReady();
      if (ready) {
        createDatabase();
      }
      return ready;
    } catch (SQLException e) {
      postmaster.stop(binaries, account);
      throw DataFolder.unusable(folder.root(), String.valueOf(e.getMessage()));
    } catch (IOException e) {
      postmaster.stop(binaries, account);
      throw e;
    }
  }

  private boolean becomesReady() throws IOException, SQLException {
    long end = System.nanoTime() + PATIENCE.toNanos();
    while (postmaster.isAlive()) {
      try (Connection connection = connect("postgres")) {
        return connection.isValid(5);
      } catch (SQLException e) {
        boolean refusesUs = String.valueOf(e.getSQLState()).startsWith("28");
        if (refusesUs || System.nanoTime() > end) {
          throw e;
        }
      }
      pause();
    }
    return false;
  }

  /**
   * Starts it again where it ends though nobody told it to, on the same port, so that whoever was
   * connected finds it there: killed, out of memory, or by its own panic, such as of a full disk.
   */
  private void keepAlive() {
    Duration wait = BETWEEN_LOOKS;
    try {
      while (!closing) {
        postmaster.awaitEnd();
        if (closing) {
          return;
        }
        log.error(
            "PostgreSQL has ended: {}. It is started again.",
            Postmaster.reasonIn(postmaster.output()));
        Thread.sleep(wait);
        wait = revive() ? BETWEEN_LOOKS : min(wait.multipliedBy(2), LONGEST_WAIT);
      }
    } catch (InterruptedException e) {
      // Nobody but close interrupts.
      log.debug("PostgreSQL is not looked after any more", e);
    }
  }

  private boolean revive() {
    try {
      new Residents(folder.cluster()).evict(binaries, account);
      Postmaster next = Postmaster.start(binaries, account, folder.cluster(), port);
      postmaster = next;
      boolean ready = becomesReady();
      if (ready) {
        log.info("PostgreSQL is there again");
      }
      return ready;
    } catch (IOException | SQLException | DataFolderUnusable e) {
      log.error("PostgreSQL could not be started again", e);
      return false;
    }
  }

  private static Duration min(Duration one, Duration other) {
    return one.compareTo(other) < 0 ? one : other;
  }

  private void createDatabase() throws SQLException {
    try (Connection connection = connect("postgres");
        Statement statement = connection.createStatement()) {
      try (ResultSet existing =
          statement.executeQuery("select from pg_database where datname = '" + DATABASE + "'")) {
        if (existing.next()) {
          return;
        }
      }
      statement.execute("create database " + DATABASE);
    }
  }

  private Connection connect(String database) throws SQLException {
    Properties properties = new Properties();
    properties.setProperty("user", user());
    properties.setProperty("password", password);
    properties.setProperty("connectTimeout", "5");
    properties.setProperty("socketTimeout", "30");
    return DriverManager.getConnection(jdbcUrl(database), properties);
  }

  private static int freePort() throws IOException {
    try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      return socket.getLocalPort();
    }
  }

  private static void pause() throws IOException {
    try {
      Thread.sleep(BETWEEN_LOOKS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("Interrupted while PostgreSQL was starting", e);
    }
  }

  /** The address of a database in it, for JDBC. */
  public String jdbcUrl(String database) {
    return "jdbc:postgresql://127.0.0.1:%d/%s".formatted(port, database);
  }

  /** The superuser that owns the database. */
  public String user() {
    return Cluster.OWNER;
  }

  /** The superuser's password. */
  public String password() {
    return password;
  }

  /** The process that serves; for whoever watches it. */
  public long pid() {
    return postmaster.pid();
  }

  /** Whether the process still runs. */
  public boolean isAlive() {
    return postmaster.isAlive();
  }

  /** Stops in order and lets go of the folder. */
  @Override
  public void close() {
    closing = true;
    keeper.interrupt();
    try {
      keeper.join();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    try (folder) {
      postmaster.stop(binaries, account);
    } catch (IOException e) {
      throw DataFolder.unusable(folder.root(), e);
    }
  }
}
