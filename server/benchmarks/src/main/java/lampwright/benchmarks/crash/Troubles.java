package lampwright.benchmarks.crash;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import lampwright.benchmarks.load.Run;

/**
 * What a client sees in each trouble, and whether the server comes out of it by itself: a full
 * disk, a database that stands still, damaged files of the index. Prints a line for each, and ends
 * with 1 where the server did not recover or lost something.
 *
 * <p>A full disk needs a small file system of its own, which only root may mount; where that is
 * refused, it says so and goes on.
 */
public final class Troubles {

  private static final Duration READY = Duration.ofSeconds(90);
  private static final int SMALL_DISK_MEGABYTES = 400;
  private static final int TRIES = 6;

  private final PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
  private final Path folder;
  private boolean sound = true;

  private Troubles(Path folder) {
    this.folder = folder;
  }

  public static void main(String[] arguments) throws Exception {
    Path folder = Files.createTempDirectory("lampwright-troubles");
    Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx--x--x"));
    Troubles troubles = new Troubles(folder);
    troubles.out.printf("| trouble | what is seen | as it must be |%n| --- | --- | --- |%n");
    troubles.damagedIndex();
    troubles.fullDisk();
    deleteAll(folder);
    System.exit(troubles.sound ? 0 : 1);
  }

  private Run start(Path data) throws IOException {
    return Run.server(
        folder.resolve("server.log"), List.of("-XX:+UseSerialGC"), Crash.settings(data));
  }

  private void line(String trouble, String seen, boolean holds) {
    sound &= holds;
    out.printf("| %s | %s | %s |%n", trouble, seen, holds ? "yes" : "**no**");
  }

  /**
   * Index files cut off or with one byte turned over, while the server is stopped and while not.
   */
  private void damagedIndex() throws Exception {
    Path data = folder.resolve("data");
    Entry entry;
    try (Run server = start(data)) {
      var _ = server.awaitReady(READY);
      entry = Entry.of(server);
      for (int i = 0; i < 20; i++) {
        entry.mustWrite("Standing still x" + i);
      }
    }
    for (boolean cut : List.of(true, false)) {
      int damaged = damage(data.resolve("index"), cut);
      try (Run server = start(data)) {
        Duration ready = server.awaitReady(READY);
        boolean found = entry.at(server).finds("standing", 20);
        line(
            (cut ? "index files cut off" : "a byte turned over in index files")
                + " while stopped ("
                + damaged
                + " files)",
            "ready after " + ready.toMillis() + " ms, all found: " + found,
            found);
        damaged = damage(data.resolve("index"), cut);
        Entry there = entry.at(server);
        Map<String, Integer> seen = there.search("standing");
        long began = System.nanoTime();
        boolean mended = there.finds("standing", 20);
        while (!mended && System.nanoTime() - began < READY.toNanos()) {
          TimeUnit.MILLISECONDS.sleep(100);
          mended = there.finds("standing", 20);
        }
        line(
            (cut ? "index files cut off" : "a byte turned over in index files")
                + " while it runs ("
                + damaged
                + " files)",
            "searches are answered %s, all found again after %d ms"
                .formatted(seen, (System.nanoTime() - began) / 1_000_000),
            mended && seen.keySet().stream().noneMatch(status -> status.startsWith("500")));
      }
      try (Run server = start(data)) {
        Duration ready = server.awaitReady(READY);
        boolean found = entry.at(server).finds("standing", 20);
        line(
            "the next start after that",
            "ready after " + ready.toMillis() + " ms, all found: " + found,
            found);
      }
    }
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

  /** Database, index and pictures on one disk, which is full for a while. */
  private void fullDisk() throws Exception {
    Path disk = Files.createDirectory(folder.resolve("disk"));
    if (!runs(
        "mount",
        "-t",
        "tmpfs",
        "-o",
        "size=" + SMALL_DISK_MEGABYTES + "m",
        "none",
        disk.toString())) {
      out.println("| full disk | SKIPPED: a small disk may not be mounted here | not shown |");
      return;
    }
    try {
      Files.setPosixFilePermissions(disk, PosixFilePermissions.fromString("rwxr-xr-x"));
      try (Run server = start(disk.resolve("data"))) {
        var _ = server.awaitReady(READY);
        Entry entry = Entry.of(server);
        String kept = entry.mustWrite("Before it was full");
        Path filler = disk.resolve("filler");
        fill(filler);
        Map<String, Integer> writes = new TreeMap<>();
        Map<String, Integer> reads = new TreeMap<>();
        List<String> acknowledged = new ArrayList<>();
        for (int i = 0; i < TRIES * 10; i++) {
          Api.Answer answer = entry.write("While it is full x" + i);
          writes.merge(Integer.toString(answer.status()), 1, Integer::sum);
          if (answer.status() == 201) {
            acknowledged.add(answer.location().orElseThrow());
          }
          reads.merge(Integer.toString(entry.api().get(kept).status()), 1, Integer::sum);
        }
        line(
            "full disk",
            "writes " + writes + ", reads " + reads,
            reads.keySet().equals(Set.of("200")));
        Files.delete(filler);
        long began = System.nanoTime();
        boolean back = false;
        while (!back && System.nanoTime() - began < READY.toNanos()) {
          back = entry.write("When there is room again").status() == 201;
          if (!back) {
            TimeUnit.MILLISECONDS.sleep(200);
          }
        }
        Duration after = Duration.ofNanos(System.nanoTime() - began);
        line("room again", "the first write after " + after.toMillis() + " ms", back);
        Duration ready = server.awaitReady(READY);
        long there = 0;
        for (String address : acknowledged) {
          there += entry.api().get(address).status() == 200 ? 1 : 0;
        }
        line(
            "ready again, and what was acknowledged while full",
            "after %d ms; %d of %d".formatted(ready.toMillis(), there, acknowledged.size()),
            there == acknowledged.size());
      } catch (IllegalStateException notReady) {
        line("full disk", "not ready again: " + notReady.getMessage(), false);
      }
    } finally {
      var _ = runs("umount", "-l", disk.toString());
    }
  }

  private static void fill(Path filler) throws IOException {
    try (FileChannel channel =
        FileChannel.open(filler, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
      ByteBuffer block = ByteBuffer.allocate(64 * 1024);
      while (true) {
        block.clear();
        var _ = channel.write(block);
      }
    } catch (IOException full) {
      if (Files.size(filler) == 0) {
        throw full;
      }
    }
  }

  private static boolean runs(String... command) throws IOException, InterruptedException {
    return new ProcessBuilder(command).redirectErrorStream(true).start().waitFor() == 0;
  }

  private static void deleteAll(Path folder) throws IOException {
    try (Stream<Path> tree = Files.walk(folder)) {
      for (Path path : tree.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(path);
      }
    }
  }

  /** The owner's way in. */
  private record Entry(Api api, String token, String studio) {

    static Entry of(Run server) throws IOException {
      String token = Crash.token(new Api(server.address(), ""), Map.of("name", "troubles"));
      Api api = new Api(server.address(), token);
      return new Entry(api, token, Crash.firstStudio(api));
    }

    Entry at(Run server) {
      return new Entry(new Api(server.address(), token), token, studio);
    }

    Api.Answer write(String title) throws IOException {
      return api.post(studio + "/setups", Writer.document(title), Map.of());
    }

    String mustWrite(String title) throws IOException {
      return write(title).location().orElseThrow();
    }

    boolean finds(String words, int many) throws IOException {
      return api.get(studio + "/setups?facets=none&q=" + words).number("total") == many;
    }

    Map<String, Integer> search(String words) throws IOException {
      Map<String, Integer> seen = new TreeMap<>();
      for (int i = 0; i < TRIES; i++) {
        Api.Answer answer = api.get(studio + "/setups?q=" + words + "&limit=" + (i + 1));
        seen.merge(answer.status() + " with " + answer.number("total"), 1, Integer::sum);
      }
      return seen;
    }
  }
}
