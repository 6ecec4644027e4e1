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
import lampwright.people.SecretHash;
import org.junit.jupiter.api.Test;

class FailedSignInsTest {

  private static final String VICTIM = "imke@light.example";

  private final AtomicReference<Instant> time =
      new AtomicReference<>(Instant.parse("2031-03-01T20:00:00Z"));
  private final InstantSource source = time::get;
  private final Clock clock = source.withZone(ZoneOffset.UTC);
  private final FailedSignIns failures = new FailedSignIns(clock);

  private static FailedSignIns.Try from(String email, String address) {
    return new FailedSignIns.Try(email, address, Optional.empty());
  }

  private static FailedSignIns.Try inKnownBrowser(String address) {
    return new FailedSignIns.Try(VICTIM, address, Optional.of(SecretHash.of("a browser")));
  }

  /** Fails as long as it may. */
  private int fail(FailedSignIns.Try one, int times) {
    int failed = 0;
    for (int i = 0; i < times; i++) {
      try {
        failures.judge(one, false);
        failed++;
      } catch (Refused refused) {
        assertTrue(refused.refusal() instanceof Refusal.TooMany);
      }
    }
    return failed;
  }

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
      fail(from(VICTIM, "192.0.2." + i), 1);
    }
    assertThrows(Refused.class, () -> failures.mustBeFew(from(VICTIM, "192.0.2.200")));
  }

  @Test
  void ofManyTriesSentAtOnceNoMoreAreAnsweredThanOneByOne() {
    FailedSignIns.Try guess = from(VICTIM, "192.0.2.1");
    for (int i = 0; i < 500; i++) {
      assertDoesNotThrow(() -> failures.mustBeFew(guess), "all of them are let in to be looked at");
    }
    assertEquals(8, fail(guess, 499));
    assertThrows(Refused.class, () -> failures.judge(guess, true), "the right one is not told");
    pass(Duration.ofMinutes(1));
    assertEquals(4, fail(guess, 500));
  }

  @Test
  void aStrangerCannotKeepAPersonOutWhereTheyHaveBeenBefore() {
    failures.forgive(from(VICTIM, "198.51.100.7"));
    for (int i = 0; i < 1000; i++) {
      fail(from(VICTIM, "192.0.2." + i % 250), 1);
    }
    assertDoesNotThrow(() -> failures.mustBeFew(from(VICTIM, "198.51.100.7")));
  }

  @Test
  void aStrangerInTheSameNetworkCannotEither() {
    failures.forgive(from(VICTIM, "198.51.100.7"));
    for (int i = 0; i < 60; i++) {
      fail(from("name" + i + "@light.example", "198.51.100.7"), 1);
    }
    assertDoesNotThrow(() -> failures.mustBeFew(from(VICTIM, "198.51.100.7")));
  }

  @Test
  void inABrowserThatIsKnownOnlyWhatFailedThereCounts() {
    for (int i = 0; i < 1000; i++) {
      fail(from(VICTIM, "192.0.2." + i % 250), 1);
    }
    fail(from(VICTIM, "203.0.113.9"), 20);
    assertDoesNotThrow(() -> failures.mustBeFew(inKnownBrowser("203.0.113.9")));
    assertEquals(8, fail(inKnownBrowser("203.0.113.9"), 100));
    assertThrows(Refused.class, () -> failures.mustBeFew(inKnownBrowser("203.0.113.10")));
  }

  @Test
  void guessesAtManyNamesFromOneAddressAreSlowedDown() {
    for (int i = 0; i < 60; i++) {
      fail(from("name" + i + "@light.example", "192.0.2.1"), 1);
    }
    assertThrows(
        Refused.class, () -> failures.mustBeFew(from("another@light.example", "192.0.2.1")));
    assertDoesNotThrow(() -> failures.mustBeFew(from("another@light.example", "192.0.2.2")));
  }

  @Test
  void aDayOfGuessedCodesComesToFewerThanThreeHundred() {
    int guessed = 0;
    for (int minutes = 0; minutes < 24 * 60; minutes++) {
      for (int i = 0; i < 5; i++) {
        FailedSignIns.Try guess = from(VICTIM, "192.0.2." + (minutes * 5 + i) % 250);
        try {
          failures.judgeCode(guess, false);
          guessed++;
        } catch (Refused refused) {
          assertTrue(refused.refusal() instanceof Refusal.TooMany);
        }
      }
      pass(Duration.ofMinutes(1));
    }
    assertTrue(guessed <= 300, guessed + " codes");
    assertDoesNotThrow(() -> failures.mustBeFewCodes(inKnownBrowser("203.0.113.9")));
    assertDoesNotThrow(() -> failures.mustBeFew(from(VICTIM, "192.0.2.1")), "passwords go on");
  }

  private void pass(Duration duration) {
    time.updateAndGet(now -> now.plus(duration));
  }
}
