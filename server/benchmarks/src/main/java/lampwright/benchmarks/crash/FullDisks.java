package lampwright.benchmarks.crash;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Duration;
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
        show(trouble, small, server, Set.of("200"), Set.of("201", "503"), Set.of("503"));
      }
    }
  }

  private void index(Path folder) throws Exception {
    String trouble = "full disk of the index";
    Optional<SmallDisk> disk = disk(trouble, folder.resolve("data").resolve("index"), 8);
    if (disk.isPresent()) {
      try (SmallDisk small = disk.get();
          Run server = stage.start(folder.resolve("data"), Map.of())) {
        show(trouble, small, server, Set.of("200"), Set.of("201"), Set.of("201"));
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
        show(trouble, small, server, Set.of("200"), Set.of("201"), Set.of("503"));
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
            Set.of("201", "503"));
      }
    }
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
      Set<String> mayAdd)
      throws Exception {
    var _ = server.awaitReady(Stage.READY);
    Entry entry = Entry.of(server);
    String kept = entry.mustWrite("Before it was full");
    disk.fill();
    Map<String, Integer> pictures = new TreeMap<>();
    Crowd crowd = new Crowd(entry, "full");
    Crowd.Seen seen =
        crowd.during(
            () -> {
              for (int i = 0; i < TRIES; i++) {
                pictures.merge(entry.addPicture(kept), 1, Integer::sum);
              }
              return pictures;
            });
    String searches = entry.search("full").toString();
    String readiness = entry.readiness();
    disk.makeRoom();
    Duration write = Stage.until(() -> entry.write("There is room again").status() == 201);
    Duration picture = Stage.until(() -> entry.addPicture(kept).equals("201"));
    Duration ready = server.awaitReady(Stage.READY);
    boolean isKept = crowd.isKept(entry);
    stage.line(
        trouble,
        "%s; pictures %s; searches %s; readiness %s. With room: a write after %d ms, a picture %d ms later, ready %d ms later; %s, all found: %s"
            .formatted(
                seen.words(),
                pictures,
                searches,
                readiness,
                write.toMillis(),
                picture.toMillis(),
                ready.toMillis(),
                crowd.kept(entry),
                isKept),
        mayRead.containsAll(seen.reads().keySet())
            && mayWrite.containsAll(seen.writes().keySet())
            && mayAdd.containsAll(pictures.keySet())
            && seen.withoutHint() == 0
            && Stage.isInTime(write)
            && Stage.isInTime(picture)
            && isKept);
  }
}
