package lampwright.learning.drill;

import java.time.Duration;
import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * When somebody should be asked one kind of drill again. A right answer that was due goes one box
 * on, a wrong one back to the first; who answers before it is due gains nothing by it.
 *
 * <p>Boxes: Leitner, "So lernt man lernen", 1972, from memory. How long each waits: the longer ones
 * of the intervals of Pimsleur, "A Memory Schedule", The Modern Language Journal 51(2), 1967, 73-75
 * (as encyclopedias list them): 10 minutes, 1 day, 5 days, 25 days, 4 months.
 *
 * @param box from 0, which is "again today", to {@link #LAST_BOX}
 * @param due from when on it is to be asked again
 * @param answered how often it was answered
 * @param right how often rightly
 */
public record Repetition(int box, Instant due, int answered, int right) {

  private static final List<Duration> INTERVALS =
      List.of(
          Duration.ofMinutes(10),
          Duration.ofDays(1),
          Duration.ofDays(5),
          Duration.ofDays(25),
          Duration.ofDays(120));

  /** The last box: once in four months. */
  public static final int LAST_BOX = INTERVALS.size() - 1;

  /** An answer that was given. */
  public record Answered(DrillKind kind, boolean isRight, Instant at) {}

  /**
   * What was answered so far, by kind.
   *
   * @param answers in the order in which they were given
   */
  public static Map<DrillKind, Repetition> of(List<Answered> answers) {
    Map<DrillKind, Repetition> byKind = new EnumMap<>(DrillKind.class);
    for (Answered answer : answers) {
      byKind.merge(answer.kind(), first(answer), (before, _) -> before.after(answer));
    }
    return byKind;
  }

  private static Repetition first(Answered answer) {
    return at(answer.isRight() ? 1 : 0, answer.at(), 1, answer.isRight() ? 1 : 0);
  }

  private static Repetition at(int box, Instant from, int answered, int right) {
    return new Repetition(box, from.plus(INTERVALS.get(box)), answered, right);
  }

  /** Asks whether it is to be asked again. */
  public boolean isDue(Instant now) {
    return !now.isBefore(due);
  }

  /** What it is after one more answer. */
  public Repetition after(Answered answer) {
    if (!answer.isRight()) {
      return at(0, answer.at(), answered + 1, right);
    }
    return isDue(answer.at())
        ? at(Math.min(box + 1, LAST_BOX), answer.at(), answered + 1, right + 1)
        : new Repetition(box, due, answered + 1, right + 1);
  }
}
