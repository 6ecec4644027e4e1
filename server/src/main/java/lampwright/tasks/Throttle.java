package lampwright.tasks;

import java.time.Clock;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Counts failures under a name and says when they were too many: so many at once, and then one more
 * each time an interval has passed. Remembers a bounded number of names, those last failed under.
 */
final class Throttle {

  private final int atOnce;
  private final Duration oneMoreEach;
  private final Clock clock;
  private final Map<String, Long> fullAgainMillis;

  Throttle(int atOnce, Duration oneMoreEach, int mostNames, Clock clock) {
    this.atOnce = atOnce;
    this.oneMoreEach = oneMoreEach;
    this.clock = clock;
    this.fullAgainMillis =
        new LinkedHashMap<>(16, 0.75f, true) {
          @Override
          protected boolean removeEldestEntry(Map.Entry<String, Long> eldest) {
            return size() > mostNames;
          }
        };
  }

  /** How long until another try is free; empty where it is now. */
  synchronized Optional<Duration> pause(String name) {
    long now = clock.millis();
    long full = fullAgainMillis.getOrDefault(name, now);
    // A failure moves the moment at which all tries are free again by one interval.
    long over = full + oneMoreEach.toMillis() - now - atOnce * oneMoreEach.toMillis();
    return over <= 0 ? Optional.empty() : Optional.of(Duration.ofMillis(over));
  }

  /** Counts one failure. */
  synchronized void failed(String name) {
    long now = clock.millis();
    long full = Math.max(now, fullAgainMillis.getOrDefault(name, now));
    fullAgainMillis.put(name, full + oneMoreEach.toMillis());
  }

  /** Forgets the failures under a name. */
  synchronized void forget(String name) {
    fullAgainMillis.remove(name);
  }
}
