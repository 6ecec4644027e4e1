package lampwright.tasks;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;

class FailedSignInsTest {

  private static final String VICTIM = "imke@light.example";

  private final AtomicReference<Instant> time =
      new AtomicReference<>(Instant.parse("2031-03-01T20:00:00Z"));
  private final InstantSource source = time::get;
  private final Clock clock = source.withZone(ZoneOffset.UTC);
  private final FailedSignIns failures = new FailedSignIns(clock);

  @Test
  void aThrottleGivesBackOneTryAnInterval() {
    Throttle throttle = new Throttle(3, Duration.ofSeconds(10), 100, clock);
    for (int i = 0; i < 3; i++) {
      assertEquals(Optional.empty(), throttle.pause("a"));
      throttle.failed("a");
    }
    assertEquals(Optional.of(Duration.ofSeconds(10)), throttle.pause("a"));
    assertEquals(Optional.empty(), throttle.pause("b"));
    pass(Duration.ofSeconds(9));
    assertEquals(Optional.of(Duration.ofSeconds(1)), throttle.pause("a"));
    pass(Duration.ofSeconds(1));
    assertEquals(Optional.empty(), throttle.pause("a"));
  }

  @Test
  void aThrottleRemembersABoundedNumberOfNames() {
    Throttle throttle = new Throttle(1, Duration.ofHours(1), 2, clock);
    throttle.failed("a");
    throttle.failed("b");
    throttle.failed("c");
    assertEquals(Optional.empty(), throttle.pause("a"));
    assertTrue(throttle.pause("c").isPresent());
  }

  @Test
  void guessesFromManyAddressesAreSlowedDown() {
    for (int i = 0; i < 60; i++) {
      failures.add(VICTIM, "192.0.2." + i);
    }
    assertThrows(Refused.class, () -> failures.mustBeFew(VICTIM, "192.0.2.200"));
  }

  @Test
  void aStrangerCannotKeepAPersonOutWhereTheyHaveBeenBefore() {
    failures.forgive(VICTIM, "198.51.100.7");
    for (int i = 0; i < 1000; i++) {
      failures.add(VICTIM, "192.0.2." + i % 250);
    }
    assertDoesNotThrow(() -> failures.mustBeFew(VICTIM, "198.51.100.7"));
  }

  @Test
  void guessesAtManyNamesFromOneAddressAreSlowedDown() {
    for (int i = 0; i < 60; i++) {
      failures.add("name" + i + "@light.example", "192.0.2.1");
    }
    assertThrows(Refused.class, () -> failures.mustBeFew("another@light.example", "192.0.2.1"));
    assertDoesNotThrow(() -> failures.mustBeFew("another@light.example", "192.0.2.2"));
  }

  private void pass(Duration duration) {
    time.updateAndGet(now -> now.plus(duration));
  }
}
