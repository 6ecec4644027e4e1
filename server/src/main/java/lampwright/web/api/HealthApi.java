package lampwright.web.api;

import io.javalin.http.Context;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Whether the server lives, and whether it can serve: for whoever watches over it. */
public final class HealthApi {

  private static final int UNAVAILABLE = 503;
  private static final double MILLIS = 1_000;

  private final List<Check> checks;
  private final Supplier<Duration> indexLag;

  /**
   * @param indexLag for how long the search index may have lacked a change
   */
  public HealthApi(List<Check> checks, Supplier<Duration> indexLag) {
    this.checks = List.copyOf(checks);
    this.indexLag = indexLag;
  }

  /**
   * One thing that the server needs.
   *
   * @param name what it is
   * @param ask gives the reason why it cannot be used, in a sentence for whoever runs the server;
   *     empty where it can
   */
  public record Check(String name, Supplier<Optional<String>> ask) {}

  private record Answer(String status, List<Reason> reasons, Optional<Double> indexLagS) {}

  private record Reason(String name, String reason) {}

  /** The process answers. */
  public void live(Context context) {
    context.json(new Answer("live", List.of(), Optional.empty()));
  }

  /** All that it needs can be used. */
  public void ready(Context context) {
    List<Reason> reasons =
        checks.stream()
            .flatMap(
                check -> check.ask().get().map(reason -> new Reason(check.name(), reason)).stream())
            .toList();
    if (!reasons.isEmpty()) {
      context.status(UNAVAILABLE).header("Retry-After", "5");
    }
    context.json(
        new Answer(
            reasons.isEmpty() ? "ready" : "not_ready",
            reasons,
            Optional.of(indexLag.get().toMillis() / MILLIS)));
  }
}
