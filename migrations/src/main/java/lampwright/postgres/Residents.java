package lampwright.postgres;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The PostgreSQL processes that still live in a cluster that nobody holds: left over from a server
 * that was killed. A process lives there when the cluster is its working folder, whatever a stale
 * {@code postmaster.pid} says.
 */
final class Residents {

  private static final Duration PATIENCE = Duration.ofSeconds(40);
  private static final Duration BETWEEN_LOOKS = Duration.ofMillis(50);

  private final Path cluster;

  Residents(Path cluster) {
    this.cluster = cluster;
  }

  /**
   * Ends what lives in the cluster, in order, and clears what dead ones left.
   *
   * @throws DataFolderUnusable when something still lives there after 40 seconds
   */
  void evict(Binaries binaries, Account account) throws IOException {
    long end = System.nanoTime() + PATIENCE.toNanos();
    boolean asked = false;
    while (anyAlive()) {
      Optional<ProcessHandle> postmaster = postmaster();
      if (!asked && postmaster.isPresent()) {
        stop(binaries, account);
        asked = true;
      } else if (System.nanoTime() > end) {
        throw new DataFolderUnusable(
            "The data folder %s is in use by PostgreSQL processes %s that do not stop. End them, or choose another folder by LAMPWRIGHT_DATA."
                .formatted(cluster, pids()));
      }
      pause();
    }
    Files.deleteIfExists(pidFile());
  }

  private void stop(Binaries binaries, Account account) throws IOException {
    // Its status says nothing: the server may already be on its way out. We look again.
    Finished.of(
        account.process(
            binaries.program("pg_ctl"),
            "stop",
            "-D",
            account.seen(cluster).toString(),
            "-m",
            "fast",
            "-w",
            "-t",
            "30"));
  }

  private boolean anyAlive() {
    return Files.isDirectory(Path.of("/proc/self")) ? !pids().isEmpty() : postmaster().isPresent();
  }

  private List<Long> pids() {
    try (Stream<ProcessHandle> all = ProcessHandle.allProcesses()) {
      return all.map(ProcessHandle::pid).filter(this::livesHere).toList();
    }
  }

  private boolean livesHere(long pid) {
    try {
      return Files.isSameFile(Path.of("/proc", Long.toString(pid), "cwd"), cluster);
    } catch (IOException goneOrNotOurs) {
      return false;
    }
  }

  private Optional<ProcessHandle> postmaster() {
    try {
      String first =
          Files.readString(pidFile(), StandardCharsets.UTF_8).lines().findFirst().orElse("");
      return ProcessHandle.of(Long.parseLong(first.strip()))
          .filter(ProcessHandle::isAlive)
          .filter(
              process ->
                  livesHere(process.pid())
                      || process.info().command().orElse("").endsWith("/bin/postgres"));
    } catch (IOException | NumberFormatException absentOrHalfWritten) {
      return Optional.empty();
    }
  }

  private Path pidFile() {
    return cluster.resolve("postmaster.pid");
  }

  private static void pause() throws IOException {
    try {
      Thread.sleep(BETWEEN_LOOKS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("Interrupted while an old PostgreSQL was ending", e);
    }
  }
}
