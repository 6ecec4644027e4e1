package lampwright.metrics;

import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.Timer;
import java.time.Duration;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;

/**
 * How long requests take, by route, verb and class of status. Routes are patterns, never addresses,
 * so that there are only so many.
 */
public final class RequestTimes {

  private static final Duration[] BOUNDS = {
    Duration.ofMillis(5),
    Duration.ofMillis(10),
    Duration.ofMillis(25),
    Duration.ofMillis(50),
    Duration.ofMillis(100),
    Duration.ofMillis(250),
    Duration.ofMillis(500),
    Duration.ofSeconds(1),
    Duration.ofMillis(2_500),
    Duration.ofSeconds(10)
  };

  private final MeterRegistry registry;
  private final Map<Kind, Timer> timers = new ConcurrentHashMap<>();

  private record Kind(String route, String verb, int statusClass) {}

  RequestTimes(MeterRegistry registry) {
    this.registry = registry;
  }

  /**
   * A request was answered.
   *
   * @param route the pattern of its address
   * @param verb one of the verbs that are known
   */
  public void answered(String route, String verb, int status, long nanos) {
    timers
        .computeIfAbsent(new Kind(route, verb, status / 100), this::timer)
        .record(nanos, TimeUnit.NANOSECONDS);
  }

  private Timer timer(Kind kind) {
    return Timer.builder("lampwright.request.duration")
        .description("Time from a request's head to its answer")
        .tag("route", kind.route())
        .tag("method", kind.verb())
        .tag("status", kind.statusClass() + "xx")
        .serviceLevelObjectives(BOUNDS)
        .register(registry);
  }
}
