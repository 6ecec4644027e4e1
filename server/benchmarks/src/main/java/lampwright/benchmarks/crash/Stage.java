package lampwright.benchmarks.crash;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import lampwright.benchmarks.load.Run;

/** Where troubles are made: a folder, servers in it, and the table that tells of them. */
final class Stage implements AutoCloseable {

  /** A server that is not there by itself after this has not recovered. */
  static final Duration READY = Duration.ofSeconds(90);

  private final PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
  private final Path folder;
  private boolean sound = true;

  Stage() throws IOException {
    folder = Files.createTempDirectory("lampwright-troubles");
    // PostgreSQL runs as a user of its own where this is root's.
    Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx--x--x"));
    out.printf("| trouble | what is seen | as it must be |%n| --- | --- | --- |%n");
  }

  /** Something that is tried until it holds. */
  interface Attempt {
    boolean holds() throws IOException;
  }

  Path folder() {
    return folder;
  }

  /** A server on a data folder, with more in its environment than {@link Crash#settings}. */
  Run start(Path data, Map<String, String> more) throws IOException {
    Map<String, String> settings = new HashMap<>(Crash.settings(data));
    settings.putAll(more);
    return Run.server(folder.resolve("server.log"), List.of("-XX:+UseSerialGC"), settings);
  }

  void line(String trouble, String seen, boolean holds) {
    sound &= holds;
    out.printf("| %s | %s | %s |%n", trouble, seen, holds ? "yes" : "**no**");
  }

  void skip(String trouble, String why) {
    out.printf("| %s | SKIPPED: %s | not shown |%n", trouble, why);
  }

  boolean isSound() {
    return sound;
  }

  /** How long it took until something held; at most {@link #READY}, and then it does not hold. */
  static Duration until(Attempt attempt) throws InterruptedException {
    long began = System.nanoTime();
    while (true) {
      boolean holds;
      try {
        holds = attempt.holds();
      } catch (IOException notYet) {
        holds = false;
      }
      Duration taken = Duration.ofNanos(System.nanoTime() - began);
      if (holds || taken.compareTo(READY) > 0) {
        return taken;
      }
      TimeUnit.MILLISECONDS.sleep(100);
    }
  }

  static boolean isInTime(Duration taken) {
    return taken.compareTo(READY) <= 0;
  }

  /** Runs a program of the system; whether it went well. */
  static boolean runs(String... command) throws InterruptedException {
    try {
      Process process =
          new ProcessBuilder(command)
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start();
      return process.waitFor() == 0;
    } catch (IOException notThere) {
      return false;
    }
  }

  @Override
  public void close() throws IOException {
    try (Stream<Path> tree = Files.walk(folder)) {
      for (Path path : tree.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(path);
      }
    }
  }
}
