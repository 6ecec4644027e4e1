package lampwright.benchmarks.crash;

import java.io.IOException;
import java.time.Duration;
import java.util.Optional;
import lampwright.benchmarks.load.Run;

/**
 * How a server came back by itself when its disk was as before.
 *
 * @param write until a write was taken
 * @param picture until a picture was taken after that, where pictures are asked for
 * @param ready until it said that it is ready, after that
 * @param kept how much of what was acknowledged is there
 */
record Recovery(
    Duration write, Optional<Duration> picture, Duration ready, String kept, boolean isKept) {

  /**
   * Watches it.
   *
   * @param setup to add a picture to; empty where none is added
   */
  static Recovery watch(Run server, Entry entry, Crowd crowd, Optional<String> setup)
      throws IOException, InterruptedException {
    Duration write = Stage.until(() -> entry.write("As before").status() == 201);
    Optional<Duration> picture = Optional.empty();
    if (setup.isPresent()) {
      picture = Optional.of(Stage.until(() -> entry.addPicture(setup.get()).equals("201")));
    }
    Duration ready = server.awaitReady(Stage.READY);
    boolean isKept = crowd.isKept(entry);
    return new Recovery(write, picture, ready, crowd.kept(entry), isKept);
  }

  String words() {
    return "a write after %d ms%s, ready %d ms later; %s, all found: %s"
        .formatted(
            write.toMillis(),
            picture.map(taken -> ", a picture %d ms later".formatted(taken.toMillis())).orElse(""),
            ready.toMillis(),
            kept,
            isKept);
  }

  boolean isWhole() {
    return Stage.isInTime(write) && picture.map(Stage::isInTime).orElse(true) && isKept;
  }
}
