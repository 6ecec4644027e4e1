package lampwright.engine.schedule;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Finds the shortest schedule: list scheduling gives a first one, then branch and bound over the
 * orders of starts looks for shorter ones until all are told apart, or so many steps are made.
 *
 * <p>Jobs are placed by rising start, each as soon as its forerunners and the hands allow. An order
 * is given up where a chain or the work that is left shows that it is no shorter than the best, or
 * where a job could begin a minute sooner, since then another order is as short (source derived;
 * the scheme is that of the precedence tree, Patterson and others 1989, from memory).
 * Deterministic.
 */
public final class ScheduleSearch {

  /** Enough for some thirty jobs; a step takes about a microsecond. */
  public static final int USUAL_STEPS = 150_000;

  private final Jobs jobs;
  private final int[] tails;
  private final Integer[] order;
  private final HandsInUse use;
  private final int[] starts;
  private final boolean[] placed;
  private final int[] soonest;
  private final int atLeast;
  private int[] best;
  private int bestLength;
  private int stepsLeft;

  private ScheduleSearch(Jobs jobs, int mostSteps) {
    this.jobs = jobs;
    tails = jobs.tails();
    order = new Integer[jobs.count()];
    Arrays.setAll(order, j -> j);
    Arrays.sort(
        order,
        Comparator.comparingInt((Integer j) -> -tails[j] - jobs.jobs().get(j).minutes())
            .thenComparing(j -> j));
    use = new HandsInUse(jobs);
    starts = new int[jobs.count()];
    placed = new boolean[jobs.count()];
    soonest = new int[jobs.count()];
    atLeast = jobs.leastMinutes();
    best = new ListScheduling(jobs).best(atLeast);
    bestLength = ListScheduling.length(jobs, best);
    stepsLeft = mostSteps;
  }

  /** The shortest schedule that is found within so many steps of the search. */
  public static Schedule shortest(Jobs jobs, int mostSteps) {
    ScheduleSearch search = new ScheduleSearch(jobs, mostSteps);
    search.placeNext(0, 0, -1);
    boolean isThrough = search.stepsLeft > 0;
    List<Integer> starts = new ArrayList<>();
    for (int start : search.best) {
      starts.add(start);
    }
    return new Schedule(starts, search.bestLength, isThrough ? search.bestLength : search.atLeast);
  }

  /**
   * @param from no job that is left begins sooner
   * @param last the job that was placed last, which orders those that begin together
   */
  private void placeNext(int count, int from, int last) {
    if (count == jobs.count()) {
      int length = ListScheduling.length(jobs, starts);
      if (length < bestLength) {
        bestLength = length;
        best = starts.clone();
      }
      return;
    }
    if (bestLength == atLeast || stepsLeft <= 0 || leastFrom(from) >= bestLength) {
      return;
    }
    for (int j : order) {
      Job job = jobs.jobs().get(j);
      if (placed[j] || !job.after().stream().allMatch(before -> placed[before])) {
        continue;
      }
      int ready = ready(job);
      int start = use.soonest(job, Math.max(ready, from));
      boolean isTwin = start == from && last > j && !job.after().contains(last);
      boolean couldBeSooner = start > ready && use.isFree(job, start - 1);
      if (isTwin || couldBeSooner) {
        continue;
      }
      stepsLeft--;
      placed[j] = true;
      starts[j] = start;
      use.take(job, start);
      placeNext(count + 1, start, j);
      use.give(job, start);
      placed[j] = false;
    }
  }

  private int ready(Job job) {
    int ready = 0;
    for (int before : job.after()) {
      ready = Math.max(ready, starts[before] + jobs.jobs().get(before).minutes());
    }
    return ready;
  }

  /** What the whole takes at least, with the placed jobs where they are. */
  private int leastFrom(int from) {
    int least = 0;
    int work = 0;
    for (int j = 0; j < jobs.count(); j++) {
      Job job = jobs.jobs().get(j);
      if (placed[j]) {
        soonest[j] = starts[j];
        continue;
      }
      soonest[j] = from;
      for (int before : job.after()) {
        soonest[j] = Math.max(soonest[j], soonest[before] + jobs.jobs().get(before).minutes());
      }
      least = Math.max(least, soonest[j] + job.minutes() + tails[j]);
      work += job.minutes() * job.hands();
    }
    int shared = (use.workFrom(from) + work + jobs.hands() - 1) / jobs.hands();
    return Math.max(least, from + shared);
  }
}
