package lampwright.engine.schedule;

import java.util.Random;

/**
 * Schedules by a list: of the jobs whose forerunners are placed, the one that stands first goes as
 * soon as it can. Good lists are those of a schedule that was pushed to its end and back, which
 * never makes it longer (Valls, Ballestín and Quintanilla 2005, from memory).
 */
final class ListScheduling {

  private static final int TRIES = 120;
  private static final long SEED = 1;

  private final Jobs forward;
  private final Jobs backward;

  ListScheduling(Jobs jobs) {
    forward = jobs;
    backward = jobs.reversed();
  }

  /** The best of many lists; stops where it is as short as can be. */
  int[] best(int atLeast) {
    Random random = new Random(SEED);
    int[] tails = forward.tails();
    int[] best = starts(forward, weights(tails, random, 0));
    for (int i = 0; i < TRIES && length(forward, best) > atLeast; i++) {
      int[] tried = pushed(starts(forward, weights(tails, random, i % 4)));
      if (length(forward, tried) < length(forward, best)) {
        best = tried;
      }
    }
    return best;
  }

  /** The longest tail first; more or less so with some noise. */
  private double[] weights(int[] tails, Random random, int noise) {
    double[] weights = new double[tails.length];
    for (int j = 0; j < tails.length; j++) {
      weights[j] = tails[j] + forward.jobs().get(j).minutes() + random.nextDouble() * noise * 6;
    }
    return weights;
  }

  /** To its end, and back to its beginning. */
  private int[] pushed(int[] starts) {
    int last = starts.length - 1;
    double[] byEnd = new double[starts.length];
    for (int j = 0; j <= last; j++) {
      byEnd[last - j] = starts[j] + forward.jobs().get(j).minutes();
    }
    int[] late = starts(backward, byEnd);
    int length = length(backward, late);
    double[] bySoonest = new double[starts.length];
    for (int j = 0; j <= last; j++) {
      int start = length - late[last - j] - forward.jobs().get(j).minutes();
      bySoonest[j] = -start;
    }
    return starts(forward, bySoonest);
  }

  /** Places the heaviest of those whose forerunners are placed, again and again. */
  private static int[] starts(Jobs jobs, double[] weights) {
    int[] starts = new int[jobs.count()];
    boolean[] placed = new boolean[jobs.count()];
    HandsInUse use = new HandsInUse(jobs);
    for (int round = 0; round < jobs.count(); round++) {
      int next = -1;
      for (int j = 0; j < jobs.count(); j++) {
        boolean isReady =
            !placed[j] && jobs.jobs().get(j).after().stream().allMatch(a -> placed[a]);
        if (isReady && (next < 0 || weights[j] > weights[next])) {
          next = j;
        }
      }
      Job job = jobs.jobs().get(next);
      int ready = 0;
      for (int before : job.after()) {
        ready = Math.max(ready, starts[before] + jobs.jobs().get(before).minutes());
      }
      starts[next] = use.soonest(job, ready);
      placed[next] = true;
      use.take(job, starts[next]);
    }
    return starts;
  }

  static int length(Jobs jobs, int[] starts) {
    int length = 0;
    for (int j = 0; j < starts.length; j++) {
      length = Math.max(length, starts[j] + jobs.jobs().get(j).minutes());
    }
    return length;
  }
}
