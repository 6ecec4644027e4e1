package lampwright.web.api;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import lampwright.search.IndexRebuild;
import lampwright.tasks.IndexKeeping;
import lampwright.web.http.Door;

/** This server's search index: how it stands, and having it made anew. */
public final class IndexApi {

  private static final double MILLIS = 1_000;

  private final Door door;
  private final IndexKeeping keeping;

  public IndexApi(Door door, IndexKeeping keeping) {
    this.door = door;
    this.keeping = keeping;
  }

  /**
   * How it stands.
   *
   * @param state as the index stands to the database
   */
  private record Answer(
      int setups,
      int indexed,
      String state,
      double lagS,
      String byMeaning,
      Optional<Rebuild> rebuild,
      Optional<Ended> lastRebuild) {

    static Answer of(IndexKeeping.Told told) {
      return new Answer(
          told.setups(),
          told.indexed(),
          word(told.state()),
          seconds(told.lag()),
          word(told.byMeaning()),
          told.rebuild().map(Rebuild::of),
          told.last()
              .map(
                  last ->
                      new Ended(
                          word(last.ending()), last.setups(), seconds(last.took()), last.at())));
    }
  }

  /** One being made. */
  private record Rebuild(
      long done,
      long total,
      double seconds,
      double perSecond,
      Optional<Double> leftS,
      boolean mayStop) {

    static Rebuild of(IndexRebuild now) {
      return new Rebuild(
          now.done(),
          now.total(),
          IndexApi.seconds(now.since()),
          Math.rint(now.perSecond() * 10) / 10,
          now.left().map(IndexApi::seconds),
          now.mayStop());
    }
  }

  /** One that is over. */
  private record Ended(String ending, long setups, double seconds, Instant at) {}

  private static double seconds(Duration time) {
    return time.toMillis() / MILLIS;
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }

  /** Shows it. */
  public void show(Context context) {
    context.json(Answer.of(keeping.get(door.caller(context), SetupApi.studio(context))));
  }

  /** Has it made anew. */
  public void start(Context context) {
    IndexKeeping.Told told = keeping.start(door.caller(context), SetupApi.studio(context));
    context.status(HttpStatus.ACCEPTED);
    context.json(Answer.of(told));
  }

  /** Ends that. */
  public void stop(Context context) {
    keeping.stop(door.caller(context), SetupApi.studio(context));
    context.status(HttpStatus.NO_CONTENT);
  }
}
