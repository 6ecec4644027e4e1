package lampwright.web.http;

import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import lampwright.metrics.Metrics;
import lampwright.metrics.RequestTimes;

/**
 * What goes through the server: how much at once, how often from whom, how long it takes, and
 * whether it is to end.
 */
public final class Traffic {

  private static final Duration OVERLOADED_FOR = Duration.ofSeconds(5);

  private final Admission admission;
  private final MemberLimits limits;
  private final Map<String, Lane> lanes;
  private final Watchers watchers;
  private final RequestTimes times;
  private final Duration drain;
  private final AtomicInteger inFlight = new AtomicInteger();
  private volatile boolean stopping;

  /**
   * @param lanes of routes that are not light, by verb and path; what answers GET answers HEAD
   * @param drain for how long requests are still taken after {@link #stop}
   */
  public Traffic(
      Admission admission,
      MemberLimits limits,
      Map<String, Lane> lanes,
      Watchers watchers,
      RequestTimes times,
      Duration drain) {
    this.admission = admission;
    this.limits = limits;
    this.lanes = Map.copyOf(lanes);
    this.watchers = watchers;
    this.times = times;
    this.drain = drain;
  }

  /** Of a small server with nothing to bound, which ends at once. */
  public static Traffic unbounded(Metrics metrics) {
    return new Traffic(
        new Admission(new Capacity(Map.of(), Duration.ZERO)),
        new MemberLimits(MemberLimits.PerMinute.UNLIMITED),
        Map.of(),
        new Watchers(Optional.empty()),
        metrics.requestTimes(),
        Duration.ZERO);
  }

  /** Requests that are being answered. */
  public int inFlight() {
    return inFlight.get();
  }

  /** Whether no more is to be sent here, since the server ends. */
  public boolean isStopping() {
    return stopping;
  }

  /** Whether somebody was just sent away for want of a place. */
  public boolean isOverloaded() {
    return admission.isOverloaded(OVERLOADED_FOR);
  }

  Lane lane(String verb, String path) {
    return lanes.getOrDefault((verb.equals("HEAD") ? "GET" : verb) + " " + path, Lane.LIGHT);
  }

  Map<String, Lane> lanes() {
    return lanes;
  }

  Admission admission() {
    return admission;
  }

  MemberLimits limits() {
    return limits;
  }

  Watchers watchers() {
    return watchers;
  }

  RequestTimes times() {
    return times;
  }

  Duration drain() {
    return drain;
  }

  void begin() {
    inFlight.incrementAndGet();
  }

  void end() {
    inFlight.decrementAndGet();
  }

  void stop() {
    stopping = true;
  }
}
