package lampwright.tasks;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicReference;
import lampwright.people.SecretHash;
import lampwright.store.TestDatabase;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

class FailedSignInsTest {

  private static final String VICTIM = "imke@light.example";

  @RegisterExtension static final TestDatabase database = new TestDatabase();

  private final AtomicReference<Instant> time =
      new AtomicReference<>(Instant.parse("2031-03-01T20:00:00Z"));
  private final InstantSource source = time::get;
  private final Clock clock = source.withZone(ZoneOffset.UTC);
  private final FailedSignIns failures = new FailedSignIns(database.open(), clock);

  /** Another server on the same database. */
  private final FailedSignIns elsewhere = new FailedSignIns(database.open(), clock);

  @BeforeEach
  void nothingHasFailed() throws SQLException {
    database.sql("delete from lampwright.failed_try");
  }

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

  /** For how long a right password would not be told. */
  private Duration pause(FailedSignIns.Try one) {
    try {
      failures.judge(one, true);
      return Duration.ZERO;
    } catch (Refused refused) {
      return assertInstanceOf(Refusal.TooMany.class, refused.refusal()).retryAfter();
    }
  }

  @Test
  void oneTryIsGivenBackEachInterval() {
    FailedSignIns.Try guess = from(VICTIM, "192.0.2.1");
    assertEquals(8, fail(guess, 20));
    assertEquals(Duration.ofSeconds(15), pause(guess));
    assertEquals(Duration.ZERO, pause(from("another@light.example", "192.0.2.9")));
    pass(Duration.ofSeconds(14));
    assertEquals(Duration.ofSeconds(1), pause(guess));
    assertThrows(Refused.class, () -> failures.mustBeFew(guess), "it is not even looked at");
    pass(Duration.ofSeconds(1));
    assertEquals(Duration.ZERO, pause(guess));
    assertDoesNotThrow(() -> failures.mustBeFew(guess));
  }

  @Test
  void aClockThatGoesBackKeepsNobodyOut() {
    FailedSignIns.Try guess = from(VICTIM, "192.0.2.1");
    assertEquals(8, fail(guess, 20));
    pass(Duration.ofHours(-6));
    assertDoesNotThrow(() -> failures.mustBeFew(guess));
    assertEquals(Duration.ZERO, pause(guess));
    assertEquals(8, fail(guess, 20), "and counts from then on as ever");
    assertEquals(Duration.ofSeconds(15), pause(guess));
  }

  @Test
  void oneThatGoesBackByMinutesForgivesNothing() {
    FailedSignIns.Try guess = from(VICTIM, "192.0.2.1");
    assertEquals(8, fail(guess, 20));
    pass(Duration.ofMinutes(-4));
    assertEquals(Duration.ofSeconds(255), pause(guess));
  }

  @Test
  void whatIsOverGoesAwayByItself() throws SQLException {
    for (int i = 0; i < 6; i++) {
      fail(from("name" + i + "@light.example", "192.0.2." + i), 1);
    }
    String rows = "select count(*) from lampwright.failed_try";
    assertEquals(List.of("18"), database.sql(rows));
    pass(Duration.ofHours(1));
    fail(from(VICTIM, "192.0.2.7"), 1);
    fail(from(VICTIM, "192.0.2.7"), 1);
    assertEquals(List.of("3"), database.sql(rows));
    assertEquals(
        List.of(),
        database.sql(
            "select * from lampwright.failed_try where encode(name, 'escape') like '%light%'"));
  }

  @Test
  void whatFailedAtOneServerCountsAtTheOther() {
    FailedSignIns.Try guess = from(VICTIM, "192.0.2.1");
    assertEquals(8, fail(guess, 8));
    assertThrows(Refused.class, () -> elsewhere.judge(guess, true), "the right one is not told");
    assertThrows(Refused.class, () -> elsewhere.mustBeFew(guess), "now it knows by itself");
    elsewhere.forgivePasswords(guess);
    assertEquals(8, fail(guess, 20));
  }

  @Test
  void ofManyTriesSentToTwoServersAtOnceNoMoreAreAnsweredThanOneByOne() throws Exception {
    FailedSignIns.Try guess = from(VICTIM, "192.0.2.1");
    List<Callable<Boolean>> tries = new ArrayList<>();
    for (int i = 0; i < 60; i++) {
      FailedSignIns server = i % 2 == 0 ? failures : elsewhere;
      tries.add(() -> isTold(server, guess));
    }
    int told = 0;
    try (ExecutorService threads = Executors.newVirtualThreadPerTaskExecutor()) {
      for (Future<Boolean> one : threads.invokeAll(tries)) {
        told += one.get() ? 1 : 0;
      }
    }
    assertEquals(8, told);
  }

  private static boolean isTold(FailedSignIns server, FailedSignIns.Try guess) {
    try {
      server.judge(guess, false);
      return true;
    } catch (Refused refused) {
      return false;
    }
  }

  @Test
  void guessesFromManyAddressesAreSlowedDown() {
    for (int i = 0; i < 60; i++) {
      fail(from(VICTIM, "192.0.2." + i), 1);
    }
    assertThrows(Refused.class, () -> failures.judge(from(VICTIM, "192.0.2.200"), true));
  }

  @Test
  void ofManyTriesSentAtOnceNoMoreAreAnsweredThanOneByOne() {
    FailedSignIns.Try guess = from(VICTIM, "192.0.2.1");
    for (int i = 0; i < 100; i++) {
      assertDoesNotThrow(() -> failures.mustBeFew(guess), "all of them are let in to be looked at");
    }
    assertEquals(8, fail(guess, 99));
    assertThrows(Refused.class, () -> failures.judge(guess, true), "the right one is not told");
    pass(Duration.ofMinutes(1));
    assertEquals(4, fail(guess, 100));
  }

  @Test
  void aStrangerCannotKeepAPersonOutWhereTheyHaveBeenBefore() {
    comesInFrom("198.51.100.7");
    for (int i = 0; i < 200; i++) {
      fail(from(VICTIM, "192.0.2." + i), 1);
    }
    assertDoesNotThrow(() -> failures.judge(from(VICTIM, "198.51.100.7"), true));
    assertDoesNotThrow(() -> elsewhere.judge(from(VICTIM, "198.51.100.7"), true));
  }

  @Test
  void aStrangerInTheSameNetworkCannotEither() {
    comesInFrom("198.51.100.7");
    for (int i = 0; i < 60; i++) {
      fail(from("name" + i + "@light.example", "198.51.100.7"), 1);
    }
    assertDoesNotThrow(() -> failures.judge(from(VICTIM, "198.51.100.7"), true));
  }

  private void comesInFrom(String address) {
    database
        .open()
        .anonymous(
            in -> {
              failures.forgive(in, from(VICTIM, address));
              return address;
            });
  }

  @Test
  void inABrowserThatIsKnownOnlyWhatFailedThereCounts() {
    for (int i = 0; i < 200; i++) {
      fail(from(VICTIM, "192.0.2." + i), 1);
    }
    fail(from(VICTIM, "203.0.113.9"), 20);
    assertDoesNotThrow(() -> failures.judge(inKnownBrowser("203.0.113.9"), true));
    assertEquals(8, fail(inKnownBrowser("203.0.113.9"), 40));
    assertThrows(Refused.class, () -> failures.judge(inKnownBrowser("203.0.113.10"), true));
  }

  @Test
  void guessesAtManyNamesFromOneAddressAreSlowedDown() {
    for (int i = 0; i < 60; i++) {
      fail(from("name" + i + "@light.example", "192.0.2.1"), 1);
    }
    assertThrows(
        Refused.class, () -> failures.judge(from("another@light.example", "192.0.2.1"), true));
    assertDoesNotThrow(() -> failures.judge(from("another@light.example", "192.0.2.2"), true));
  }

  @Test
  void aDayOfGuessedCodesComesToFewerThanThreeHundred() {
    int guessed = 0;
    for (int minutes = 0; minutes < 24 * 60; minutes += 2) {
      for (int i = 0; i < 2; i++) {
        FailedSignIns.Try guess = from(VICTIM, "192.0.2." + (minutes + i) % 250);
        try {
          failures.judgeCode(guess, false);
          guessed++;
        } catch (Refused refused) {
          assertTrue(refused.refusal() instanceof Refusal.TooMany);
        }
      }
      pass(Duration.ofMinutes(2));
    }
    assertTrue(guessed > 280 && guessed <= 300, guessed + " codes");
    assertDoesNotThrow(() -> failures.judgeCode(inKnownBrowser("203.0.113.9"), true));
    assertDoesNotThrow(() -> failures.judge(from(VICTIM, "192.0.2.1"), true), "passwords go on");
  }

  private void pass(Duration duration) {
    time.updateAndGet(now -> now.plus(duration));
  }
}
