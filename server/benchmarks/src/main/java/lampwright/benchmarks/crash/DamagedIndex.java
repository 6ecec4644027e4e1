package lampwright.benchmarks.crash;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import lampwright.benchmarks.load.Run;

/** Index files cut off or with one byte turned over, while the server is stopped and while not. */
final class DamagedIndex {

  private static final int SETUPS = 20;

  private final Stage stage;
  private final Path data;

  DamagedIndex(Stage stage) {
    this.stage = stage;
    this.data = stage.folder().resolve("data");
  }

  /**
   * Shows it.
   *
   * @param isShort whether files are only cut off, and the next start is not looked at
   * @param andDatabase whether the first server then loses its database for a while
   */
  void show(boolean isShort, boolean andDatabase) throws Exception {
    Entry entry;
    try (Run server = stage.start(data, Map.of())) {
      var _ = server.awaitReady(Stage.READY);
      entry = Entry.of(server);
      for (int i = 0; i < SETUPS; i++) {
        var _ = entry.mustWrite("Standing still x" + i);
      }
      if (andDatabase) {
        new GoneDatabase(stage).show(server, entry);
      }
    }
    for (boolean cut : isShort ? List.of(true) : List.of(true, false)) {
      String how = cut ? "index files cut off" : "a byte turned over in index files";
      int damaged = damage(data.resolve("index"), cut);
      try (Run server = stage.start(data, Map.of())) {
        foundAfterStart(how + " while stopped (" + damaged + " files)", server, entry);
        whileItRuns(how, cut, entry.at(server));
      }
      if (!isShort) {
        try (Run server = stage.start(data, Map.of())) {
          foundAfterStart("the next start after that", server, entry);
        }
      }
    }
  }

  private void foundAfterStart(String trouble, Run server, Entry entry)
      throws IOException, InterruptedException {
    Duration ready = server.awaitReady(Stage.READY);
    boolean found = entry.at(server).finds("standing", SETUPS);
    stage.line(trouble, "ready after " + ready.toMillis() + " ms, all found: " + found, found);
  }

  private void whileItRuns(String how, boolean cut, Entry there)
      throws IOException, InterruptedException {
    int damaged = damage(data.resolve("index"), cut);
    Map<String, Integer> seen = there.search("standing");
    Duration mended = Stage.until(() -> there.finds("standing", SETUPS));
    stage.line(
        how + " while it runs (" + damaged + " files)",
        "searches are answered %s, all found again after %d ms".formatted(seen, mended.toMillis()),
        Stage.isInTime(mended) && seen.keySet().stream().noneMatch(one -> one.startsWith("500")));
  }

  private static int damage(Path index, boolean cut) throws IOException {
    List<Path> files;
    try (Stream<Path> tree = Files.walk(index)) {
      files =
          tree.filter(Files::isRegularFile)
              .filter(
                  file -> String.valueOf(file.getFileName()).matches(".*\\.(cfs|fdt|tim|dvd|si)"))
              .toList();
    }
    for (Path file : files) {
      try (FileChannel channel =
          FileChannel.open(file, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
        long middle = channel.size() / 2;
        if (cut) {
          var _ = channel.truncate(middle);
        } else {
          ByteBuffer one = ByteBuffer.allocate(1);
          var _ = channel.read(one, middle);
          one.put(0, (byte) ~one.get(0)).rewind();
          var _ = channel.write(one, middle);
        }
      }
    }
    return files.size();
  }
}
