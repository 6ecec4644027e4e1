package lampwright.web.api;

import io.javalin.http.Context;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;

/** Whether the server lives, and whether it can serve: for whoever watches over it. */
public final class HealthApi {

  private static final int UNAVAILABLE = 503;
  private static final double MILLIS = 1_000;

  private final List<HealthCheck> checks;
  private final Supplier<Duration> indexLag;

  /**
   * @param indexLag for how long the search index may have lacked a change
   */
  public HealthApi(List<HealthCheck> checks, Supplier<Duration> indexLag) {
    this.checks = List.copyOf(checks);
    this.indexLag = indexLag;
  }

  private record Answer(String status, List<Reason> reasons, Optional<Double> indexLagS) {}

  private record Reason(String name, String reason) {}

  /** The process answers. */
  public void live(Context context) {
    context.json(new Answer("live", List.of(), Optional.empty()));
  }

  /** All that it needs can be used. */
  public void ready(Context context) {
    // All at once: together they take no longer than the slowest.
    List<CompletableFuture<Optional<String>>> begun =
        checks.stream().map(HealthCheck::begin).toList();
    List<Reason> reasons = new ArrayList<>();
    for (int i = 0; i < checks.size(); i++) {
      HealthCheck check = checks.get(i);
      check.await(begun.get(i)).ifPresent(reason -> reasons.add(new Reason(check.name(), reason)));
    }
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
