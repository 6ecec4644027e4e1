package lampwright.learning.drill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** When a kind of drill comes again. */
class RepetitionTest {

  private static final Instant START = Instant.parse("2030-05-01T08:00:00Z");

  private static Repetition after(Repetition.Answered... answers) {
    Map<DrillKind, Repetition> all = Repetition.of(List.of(answers));
    assertEquals(1, all.size());
    return all.values().iterator().next();
  }

  private static Repetition.Answered answered(boolean isRight, Instant at) {
    return new Repetition.Answered(DrillKind.SYNC, isRight, at);
  }

  /**
   * Pimsleur, "A Memory Schedule", The Modern Language Journal 51(2), 1967: 10 minutes, then later
   * 1 day, 5 days, 25 days, 4 months (as encyclopedias list them; read, not in the paper itself).
   */
  @Test
  void whoAnswersRightlyEachTimeIsAskedAfterTheIntervalsOfPimsleur() {
    List<Long> days = new ArrayList<>();
    List<Repetition.Answered> answers = new ArrayList<>();
    Instant now = START;
    for (int i = 0; i < 5; i++) {
      answers.add(answered(true, now));
      Repetition so = after(answers.toArray(Repetition.Answered[]::new));
      days.add(Duration.between(now, so.due()).toDays());
      now = so.due();
    }
    assertEquals(List.of(1L, 5L, 25L, 120L, 120L), days);
    assertEquals(
        Duration.ofMinutes(10), Duration.between(START, after(answered(false, START)).due()));
  }

  /** Leitner, "So lernt man lernen", 1972, from memory: a wrong card goes back to the first box. */
  @Test
  void whoIsWrongBeginsAgainByLeitner() {
    Instant later = START.plus(Duration.ofDays(2));
    Repetition so = after(answered(true, START), answered(true, later), answered(false, later));
    assertEquals(0, so.box());
    assertEquals(3, so.answered());
    assertEquals(2, so.right());
    assertFalse(so.isDue(later));
    assertTrue(so.isDue(later.plus(Duration.ofMinutes(10))));
  }

  @Test
  void whoAnswersBeforeItIsDueGainsNothing() {
    Repetition once = after(answered(true, START));
    Repetition often =
        after(
            answered(true, START),
            answered(true, START.plusSeconds(5)),
            answered(true, START.plusSeconds(10)));
    assertEquals(once.box(), often.box());
    assertEquals(once.due(), often.due());
    assertEquals(3, often.right());
  }
}
