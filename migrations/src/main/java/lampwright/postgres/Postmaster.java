package lampwright.postgres;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * One running PostgreSQL server process and the thread that started it. The kernel interrupts the
 * process when that thread ends, and it ends with this JVM, even one that is killed.
 */
final class Postmaster {

  private static final Logger log = LoggerFactory.getLogger("lampwright.postgres.server");
  private static final int LINES_KEPT = 40;
  private static final Duration ORDERLY = Duration.ofSeconds(30);

  private final Process process;
  private final Deque<String> lastLines;

  private Postmaster(Process process, Deque<String> lastLines) {
    this.process = process;
    this.lastLines = lastLines;
  }

  static Postmaster start(Binaries binaries, Account account, Path cluster, int port)
      throws IOException {
    ProcessBuilder builder =
        account.process(
            binaries.program("postgres"),
            "-D",
            account.seen(cluster).toString(),
            "-c",
            "port=" + port,
            "-c",
            "listen_addresses=127.0.0.1",
            "-c",
            "unix_socket_directories=",
            "-c",
            "fsync=on",
            "-c",
            "synchronous_commit=on",
            "-c",
            "shared_buffers=128MB",
            "-c",
            "max_connections=60",
            "-c",
            "jit=off",
            "-c",
            "timezone=UTC",
            "-c",
            "log_timezone=UTC",
            // What people wrote, or their addresses, must not reach a log by way of an error.
            "-c",
            "log_error_verbosity=terse",
            "-c",
            "log_min_error_statement=panic");
    Deque<String> lastLines = new ArrayDeque<>();
    CompletableFuture<Process> started = new CompletableFuture<>();
    Thread.ofPlatform()
        .name("postgres")
        .daemon()
        .start(() -> startAndListen(builder, started, lastLines));
    try {
      return new Postmaster(started.join(), lastLines);
    } catch (CompletionException e) {
      throw new IOException("PostgreSQL could not be started: " + e.getCause(), e);
    }
  }

  private static void startAndListen(
      ProcessBuilder builder, CompletableFuture<Process> started, Deque<String> lastLines) {
    Process process;
    try {
      process = builder.start();
    } catch (IOException e) {
      started.completeExceptionally(e);
      return;
    }
    started.complete(process);
    try (BufferedReader lines =
        new BufferedReader(
            new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        note(line, lastLines);
      }
    } catch (IOException streamClosed) {
      log.debug("PostgreSQL's output ended early", streamClosed);
    }
    awaitQuietly(process);
  }

  private static void note(String line, Deque<String> lastLines) {
    if (line.contains("PANIC:")) {
      log.error(line);
    } else {
      log.debug(line);
    }
    synchronized (lastLines) {
      if (lastLines.size() == LINES_KEPT) {
        lastLines.removeFirst();
      }
      lastLines.addLast(line);
    }
  }

  /** The process's output may end before it does; this thread must not end before it. */
  private static void awaitQuietly(Process process) {
    try {
      process.waitFor();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  boolean isAlive() {
    return process.isAlive();
  }

  /** Returns when it has ended. */
  void awaitEnd() throws InterruptedException {
    var _ = process.waitFor();
  }

  long pid() {
    return process.pid();
  }

  String output() {
    synchronized (lastLines) {
      return String.join("\n", lastLines);
    }
  }

  /** The line of some output that says why PostgreSQL gave up, without its time stamp. */
  static String reasonIn(String output) {
    return output
        .lines()
        .filter(
            line -> line.contains("FATAL:") || line.contains("PANIC:") || line.contains("error:"))
        .reduce((_, last) -> last)
        .or(() -> output.lines().reduce((_, last) -> last))
        .map(line -> line.replaceFirst("^.*(?:FATAL|PANIC|error):\\s*", ""))
        .orElse("PostgreSQL gave no reason");
  }

  /** Stops in order: open transactions are rolled back, everything committed is on disk. */
  void stop(Binaries binaries, Account account) throws IOException {
    signal("INT", binaries, account);
    if (!endsWithin(ORDERLY)) {
      signal("QUIT", binaries, account);
      if (!endsWithin(ORDERLY)) {
        process.destroyForcibly();
      }
    }
  }

  private void signal(String signal, Binaries binaries, Account account) throws IOException {
    Finished.of(
        account.process(binaries.program("pg_ctl"), "kill", signal, Long.toString(process.pid())));
  }

  private boolean endsWithin(Duration time) {
    try {
      return process.waitFor(time.toMillis(), TimeUnit.MILLISECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }
}
