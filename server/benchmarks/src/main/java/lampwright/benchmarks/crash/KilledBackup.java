package lampwright.benchmarks.crash;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import lampwright.benchmarks.load.Run;

/**
 * I14: a backup that is killed leaves nothing that looks like one and is in nobody's way; the next
 * one holds all of it, and is brought back into an empty folder.
 */
final class KilledBackup {

  private static final int KILLINGS = 2;

  private final Path folder;
  private final Path data;
  private final Path backups;
  private final Random random;

  KilledBackup(Path folder, Path data, Random random) {
    this.folder = folder;
    this.data = data;
    this.backups = folder.resolve("backups");
    this.random = random;
  }

  private Path whole() {
    return backups.resolve("whole.zip");
  }

  /** Kills some that are being taken from a running server, then takes one to its end. */
  void takeFrom(Run server) throws IOException, InterruptedException {
    var _ = Files.createDirectories(backups);
    for (int i = 0; i < KILLINGS; i++) {
      Path file = backups.resolve("killed-" + i + ".zip");
      Program backup = begin("backup", file);
      awaitFirstBytes(backup);
      TimeUnit.MILLISECONDS.sleep(random.nextInt(150));
      backup.kill();
      if (Files.exists(file) && runs("check-backup", file) != 0) {
        throw new Lost("I14", "A killed backup looks like a whole one: " + file);
      }
    }
    if (runs("backup", whole()) != 0 || runs("check-backup", whole()) != 0) {
      throw new Lost("I14", "No backup after one was killed");
    }
    var _ = server.awaitReady(Duration.ofSeconds(60));
  }

  /** Brings it back; the data folder that it is in then. */
  Path restore() throws IOException, InterruptedException {
    Path restored = folder.resolve("restored");
    Program restoring = Program.start(folder, restored, List.of("restore", whole().toString()));
    String said = restoring.said();
    if (restoring.awaitEnd() != 0) {
      throw new Lost("I14", "The backup is not brought back: " + said);
    }
    return restored;
  }

  private Program begin(String command, Path file) throws IOException {
    return Program.start(folder, data, List.of(command, file.toString()));
  }

  private int runs(String command, Path file) throws IOException, InterruptedException {
    Program program = begin(command, file);
    var _ = program.said();
    return program.awaitEnd();
  }

  private void awaitFirstBytes(Program backup) throws IOException, InterruptedException {
    while (backup.isAlive() && !isBegun()) {
      TimeUnit.MILLISECONDS.sleep(2);
    }
  }

  private boolean isBegun() throws IOException {
    try (Stream<Path> files = Files.walk(backups)) {
      return files.anyMatch(Files::isRegularFile);
    }
  }
}
