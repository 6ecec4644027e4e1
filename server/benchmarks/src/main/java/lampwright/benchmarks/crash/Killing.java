package lampwright.benchmarks.crash;

import java.io.IOException;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import lampwright.benchmarks.load.Run;

/** What is done to server and database in a round. */
enum Killing {
  SERVER("the server killed"),
  DATABASE("the database and its children killed"),
  BOTH("both killed"),
  PAUSE("the database stopped for seconds"),
  CONNECTIONS("all connections of the server ended by the database");

  private final String words;

  Killing(String words) {
    this.words = words;
  }

  String words() {
    return words;
  }

  /** Every third round is one that nothing dies in. */
  static Killing of(int round, Random random) {
    return round % 3 == 2
        ? List.of(PAUSE, CONNECTIONS).get(random.nextInt(2))
        : List.of(SERVER, DATABASE, BOTH).get(random.nextInt(3));
  }

  /**
   * Does it.
   *
   * @return whether the server must be started again
   */
  boolean strike(Run server, Random random) throws IOException, InterruptedException {
    List<ProcessHandle> database = database(server);
    switch (this) {
      case SERVER -> server.kill();
      case DATABASE -> kill(database);
      case BOTH -> {
        kill(database);
        server.kill();
      }
      case PAUSE -> {
        signal("STOP", database);
        TimeUnit.MILLISECONDS.sleep(1_000 + random.nextInt(6_000));
        signal("CONT", database);
      }
      // As pg_terminate_backend does it: the process of a connection gets SIGTERM.
      case CONNECTIONS ->
          signal(
              "TERM",
              database.stream().filter(one -> title(one).contains("lampwright_server")).toList());
    }
    return this == SERVER || this == BOTH;
  }

  private static String title(ProcessHandle process) {
    try {
      return java.nio.file.Files.readString(
          java.nio.file.Path.of("/proc/" + process.pid() + "/cmdline"));
    } catch (IOException gone) {
      return "";
    }
  }

  private static List<ProcessHandle> database(Run server) {
    try (Stream<ProcessHandle> below = server.handle().descendants()) {
      return below
          .filter(one -> one.info().command().filter(c -> c.endsWith("/postgres")).isPresent())
          .toList();
    }
  }

  private static void kill(List<ProcessHandle> processes) {
    processes.forEach(ProcessHandle::destroyForcibly);
  }

  private static void signal(String name, List<ProcessHandle> processes)
      throws IOException, InterruptedException {
    for (ProcessHandle process : processes) {
      var _ =
          new ProcessBuilder("kill", "-" + name, Long.toString(process.pid()))
              .redirectErrorStream(true)
              .start()
              .waitFor();
    }
  }
}
