package lampwright.engine.schedule;

/** How many hands are busy in each minute. */
final class HandsInUse {

  private final int[] busy;
  private final int hands;

  HandsInUse(Jobs jobs) {
    busy = new int[jobs.minutesInARow() + 1];
    hands = jobs.hands();
  }

  /** The soonest start, from a minute on, at which a job finds its hands free to its end. */
  int soonest(Job job, int from) {
    int start = from;
    int free = 0;
    for (int minute = from; free < job.minutes(); minute++) {
      if (minute < busy.length && busy[minute] + job.hands() > hands) {
        start = minute + 1;
        free = 0;
      } else {
        free++;
      }
    }
    return start;
  }

  /** Whether a job would find its hands free in one minute. */
  boolean isFree(Job job, int minute) {
    return busy[minute] + job.hands() <= hands;
  }

  /** Work that is promised from a minute on. */
  int workFrom(int minute) {
    int work = 0;
    for (int m = minute; m < busy.length && busy[m] > 0; m++) {
      work += busy[m];
    }
    return work;
  }

  void take(Job job, int start) {
    change(start, start + job.minutes(), job.hands());
  }

  void give(Job job, int start) {
    change(start, start + job.minutes(), -job.hands());
  }

  private void change(int from, int to, int by) {
    for (int minute = from; minute < to; minute++) {
      busy[minute] += by;
    }
  }
}
