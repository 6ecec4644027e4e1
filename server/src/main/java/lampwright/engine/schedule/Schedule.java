package lampwright.engine.schedule;

import java.util.List;

/**
 * When each job begins.
 *
 * @param starts minutes after the first, by the jobs' numbers
 * @param minutes from the first start to the last end
 * @param atLeast a length that no schedule beats; equal to {@code minutes} where this one is proven
 *     to be the shortest
 */
public record Schedule(List<Integer> starts, int minutes, int atLeast) {

  /** Copies the starts. */
  public Schedule {
    starts = List.copyOf(starts);
  }

  /** Whether no schedule is shorter. */
  public boolean isShortest() {
    return minutes == atLeast;
  }

  /** By how much a better schedule could be shorter at the most. */
  public int gapMinutes() {
    return minutes - atLeast;
  }
}
