package lampwright.engine.schedule;

import java.util.List;

/**
 * A job that is done without a pause.
 *
 * @param minutes that it takes, 1 or more
 * @param hands people that it takes all the while, 1 or more
 * @param after numbers of the jobs that must be over before it begins
 */
public record Job(int minutes, int hands, List<Integer> after) {

  /** Copies the list and checks both numbers. */
  public Job {
    after = List.copyOf(after);
    if (minutes < 1 || hands < 1) {
      throw new IllegalArgumentException(
          "A job (%d min, %d hands) must take 1 minute and 1 hand or more."
              .formatted(minutes, hands));
    }
  }
}
