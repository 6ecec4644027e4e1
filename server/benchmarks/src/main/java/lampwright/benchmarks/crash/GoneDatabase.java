package lampwright.benchmarks.crash;

import java.io.IOException;
import java.time.Duration;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import lampwright.benchmarks.load.Run;

/** The database stopped for seconds, killed, and its connections ended, while clients ask. */
final class GoneDatabase {

  /** So long clients go on after what was done to it. */
  private static final long LOOKED_AT_MILLIS = 3_000;

  private final Stage stage;

  GoneDatabase(Stage stage) {
    this.stage = stage;
  }

  void show(Run server, Entry entry) throws Exception {
    for (Killing killing : new Killing[] {Killing.PAUSE, Killing.DATABASE, Killing.CONNECTIONS}) {
      Crowd crowd = new Crowd(entry, "away" + killing.ordinal());
      Map<String, Integer> ready = new TreeMap<>();
      AtomicBoolean over = new AtomicBoolean();
      Thread asking = Thread.ofVirtual().start(() -> ask(entry.api(), ready, over));
      Crowd.Seen seen =
          crowd.during(
              () -> {
                boolean mustStart = killing.strike(server, new Random(3));
                TimeUnit.MILLISECONDS.sleep(LOOKED_AT_MILLIS);
                return mustStart;
              });
      over.set(true);
      asking.join();
      Duration back = Stage.until(() -> entry.write("When it is back").status() == 201);
      Duration again = server.awaitReady(Stage.READY);
      stage.line(
          killing.words(),
          "%s; readiness said %s; the first write %d ms after, ready %d ms later; %s"
              .formatted(seen.words(), ready, back.toMillis(), again.toMillis(), crowd.kept(entry)),
          seen.isClear() && Stage.isInTime(back) && crowd.isKept(entry));
    }
  }

  private static void ask(Api api, Map<String, Integer> seen, AtomicBoolean over) {
    while (!over.get()) {
      String said;
      try {
        Api.Answer answer = api.get("/health/ready");
        said = answer.status() + (answer.status() == 200 ? "" : " with " + answer.at("reasons"));
      } catch (IOException e) {
        said = "nothing";
      }
      seen.merge(said, 1, Integer::sum);
      try {
        Thread.sleep(200);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
    }
  }
}
