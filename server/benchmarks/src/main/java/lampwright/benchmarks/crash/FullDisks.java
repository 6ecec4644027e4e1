package lampwright.benchmarks.crash;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import lampwright.benchmarks.load.Run;

/** Disks that are full for a while: one for all, then the index's, the pictures', the log's. */
final class FullDisks {

  private static final int TRIES = 12;

  /** Below a quarter of a gibibyte the server says by itself that it is not ready. */
  private static final int PICTURES_MEGABYTES = 300;

  private static final int WHOLE_MEGABYTES = 900;

  /** More than a disk of 200 MB holds, at 16 MB each. */
  private static final int MOST_SEGMENTS = 20;

  /** Of a postmaster's lock file, counted from 0. */
  private static final int PORT_LINE = 3;

  private static final Crowd.Happening NOTHING = () -> "";

  private final Stage stage;

  FullDisks(Stage stage) {
    this.stage = stage;
  }

  /**
   * Shows them.
   *
   * @param isShort whether the index's alone
   */
  void show(boolean isShort) throws Exception {
    Path home = stage.folder().resolve("disks");
    var _ = Files.createDirectories(home);
    index(home.resolve("index-apart"));
    if (!isShort) {
      pictures(home.resolve("pictures-apart"));
      whole(home.resolve("whole"));
      log(home.resolve("log-apart"));
    }
  }

  private Optional<SmallDisk> disk(String trouble, Path folder, int megabytes)
      throws IOException, InterruptedException {
    Optional<SmallDisk> disk = SmallDisk.on(folder, megabytes);
    if (disk.isEmpty()) {
      stage.skip(trouble, "a small disk may not be mounted here");
    }
    return disk;
  }

  private void whole(Path folder) throws Exception {
    String trouble = "full disk, with all on it";
    Optional<SmallDisk> disk = disk(trouble, folder, WHOLE_MEGABYTES);
    if (disk.isPresent()) {
      try (SmallDisk small = disk.get();
          Run server = stage.start(folder.resolve("data"), Map.of())) {
        show(trouble, small, server, Set.of("200"), Set.of("201", "503"), Set.of("503"), NOTHING);
      }
    }
  }

  private void index(Path folder) throws Exception {
    String trouble = "full disk of the index";
    Optional<SmallDisk> disk = disk(trouble, folder.resolve("data").resolve("index"), 8);
    if (disk.isPresent()) {
      try (SmallDisk small = disk.get();
          Run server = stage.start(folder.resolve("data"), Map.of())) {
        show(trouble, small, server, Set.of("200"), Set.of("201"), Set.of("201"), NOTHING);
      }
    }
  }

  private void pictures(Path folder) throws Exception {
    String trouble = "full disk of the pictures";
    Path place = folder.resolve("pictures");
    Optional<SmallDisk> disk = disk(trouble, place, PICTURES_MEGABYTES);
    if (disk.isPresent()) {
      try (SmallDisk small = disk.get();
          Run server =
              stage.start(
                  folder.resolve("data"), Map.of("LAMPWRIGHT_PICTURES", place.toString()))) {
        show(trouble, small, server, Set.of("200"), Set.of("201"), Set.of("503"), NOTHING);
      }
    }
  }

  /** The log's folder is moved to its own disk as PostgreSQL's manual says, by a link. */
  private void log(Path folder) throws Exception {
    String trouble = "full disk of PostgreSQL's log (pg_wal)";
    Path data = folder.resolve("data");
    stage.start(data, Map.of()).close();
    Path place = folder.resolve("wal");
    Optional<SmallDisk> disk = disk(trouble, place, 200);
    if (disk.isEmpty()) {
      return;
    }
    try (SmallDisk small = disk.get()) {
      Path log = data.resolve("postgres").resolve("cluster").resolve("pg_wal");
      if (!Stage.runs("cp", "-a", log.toString(), place.resolve("pg_wal").toString())) {
        throw new IOException("The log cannot be copied");
      }
      deleteAll(log);
      var _ = Files.createSymbolicLink(log, place.resolve("pg_wal"));
      try (Run server = stage.start(data, Map.of())) {
        show(
            trouble,
            small,
            server,
            Set.of("200", "503"),
            Set.of("201", "503"),
            Set.of("201", "503"),
            () -> usedUp(data));
      }
    }
  }

  /**
   * What is open of the log has room for what is written here: it is closed and the next begun, as
   * often as there are any left, until the log's disk has no room for another.
   */
  private static String usedUp(Path data) throws IOException, SQLException {
    try (Connection connection = owner(data)) {
      for (int closed = 0; closed < MOST_SEGMENTS; closed++) {
        try (Statement statement = connection.createStatement()) {
          // An empty segment is not closed.
          var _ = statement.execute("select pg_logical_emit_message(false, 'troubles', 'x')");
          var _ = statement.execute("select pg_switch_wal()");
        } catch (SQLException full) {
          return "no room for another segment of the log after %d; ".formatted(closed);
        }
      }
    }
    throw new IllegalStateException("The log has room for " + MOST_SEGMENTS + " segments");
  }

  /** Beside the server, as the owner of its database. */
  private static Connection owner(Path data) throws IOException, SQLException {
    String port =
        Files.readAllLines(data.resolve("postgres").resolve("cluster").resolve("postmaster.pid"))
            .get(PORT_LINE);
    String password = Files.readString(data.resolve("postgres-password")).strip();
    return DriverManager.getConnection(
        "jdbc:postgresql://127.0.0.1:" + port + "/postgres?socketTimeout=30",
        "lampwright_owner",
        password);
  }

  private static void deleteAll(Path folder) throws IOException {
    var _ =
        Files.walkFileTree(
            folder,
            new SimpleFileVisitor<>() {
              @Override
              public FileVisitResult visitFile(Path file, BasicFileAttributes facts)
                  throws IOException {
                Files.delete(file);
                return FileVisitResult.CONTINUE;
              }

              @Override
              public FileVisitResult postVisitDirectory(Path dir, IOException trouble)
                  throws IOException {
                Files.delete(dir);
                return FileVisitResult.CONTINUE;
              }
            });
  }

  private void show(
      String trouble,
      SmallDisk disk,
      Run server,
      Set<String> mayRead,
      Set<String> mayWrite,
      Set<String> mayAdd,
      Crowd.Happening whenFull)
      throws Exception {
    var _ = server.awaitReady(Stage.READY);
    Entry entry = Entry.of(server);
    String kept = entry.mustWrite("Before it was full");
    disk.fill();
    Map<String, Integer> pictures = new TreeMap<>();
    StringBuilder happened = new StringBuilder();
    Crowd crowd = new Crowd(entry, "full");
    Crowd.Seen seen =
        crowd.during(
            () -> {
              happened.append(whenFull.happens());
              for (int i = 0; i < TRIES; i++) {
                pictures.merge(entry.addPicture(kept), 1, Integer::sum);
              }
              return pictures;
            });
    String searches = entry.search("full").toString();
    String readiness = entry.readiness();
    disk.makeRoom();
    Recovery recovery = Recovery.watch(server, entry, crowd, Optional.of(kept));
    stage.line(
        trouble,
        "%s%s; pictures %s; searches %s; readiness %s. With room: %s"
            .formatted(happened, seen.words(), pictures, searches, readiness, recovery.words()),
        mayRead.containsAll(seen.reads().keySet())
            && mayWrite.containsAll(seen.writes().keySet())
            && mayAdd.containsAll(pictures.keySet())
            && seen.withoutHint() == 0
            && recovery.isWhole());
  }
}
