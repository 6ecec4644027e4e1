package lampwright.engine.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ScheduleSearchTest {

  private static final int STEPS = ScheduleSearch.USUAL_STEPS;

  /**
   * The nine jobs of R. L. Graham, "Bounds on multiprocessing timing anomalies", SIAM Journal on
   * Applied Mathematics 17 (1969), from memory: 12 units on three processors; a list in the jobs'
   * own order needs 15 on four, and 13 where every job is a unit shorter.
   */
  private static Jobs graham(int processors, int shorterBy) {
    int[] minutes = {3, 2, 2, 2, 4, 4, 4, 4, 9};
    List<Job> jobs = new ArrayList<>();
    for (int j = 0; j < minutes.length; j++) {
      List<Integer> after = j == 8 ? List.of(0) : j >= 4 ? List.of(3) : List.of();
      jobs.add(new Job(minutes[j] - shorterBy, 1, after));
    }
    return new Jobs(jobs, processors);
  }

  @Test
  void grahamsJobsTakeTwelveOnThreeProcessorsAndNoLongerOnFour() {
    assertEquals(12, shortest(graham(3, 0)).minutes());
    assertEquals(12, shortest(graham(4, 0)).minutes());
  }

  @Test
  void grahamsShorterJobsTakeTheirLongestChain() {
    Jobs jobs = graham(3, 1);
    assertEquals(10, jobs.longestChain());
    assertEquals(10, shortest(jobs).minutes());
  }

  /** Graham's example where the longest job first is a sixth too long, same source. */
  @Test
  void longestFirstIsNotTheEndOfTheSearch() {
    List<Job> jobs = List.of(alone(3), alone(3), alone(2), alone(2), alone(2));
    assertEquals(6, shortest(new Jobs(jobs, 2)).minutes());
  }

  /** Worked by hand: build 4, then two people for 3 while a third is idle, then meter 2. */
  @Test
  void aJobForTwoWaitsUntilTwoAreFree() {
    List<Job> jobs =
        List.of(alone(4), alone(2), new Job(3, 2, List.of(1)), new Job(2, 1, List.of(0, 2)));
    assertEquals(9, shortest(new Jobs(jobs, 2)).minutes());
    assertEquals(7, shortest(new Jobs(jobs, 3)).minutes());
  }

  @Test
  void oneHandDoesAllInARowAndManyHandsTheLongestChain() {
    Random random = new Random(5);
    for (int i = 0; i < 60; i++) {
      Jobs drawn = draw(random, 14, 8, 1);
      Schedule alone = shortest(new Jobs(drawn.jobs(), 1));
      assertEquals(drawn.minutesInARow(), alone.minutes());
      assertTrue(alone.isShortest());
      assertEquals(drawn.longestChain(), shortest(new Jobs(drawn.jobs(), 14)).minutes());
    }
  }

  @Test
  void everyScheduleIsSoundAndNoShorterThanItsBounds() {
    Random random = new Random(7);
    for (int i = 0; i < 60; i++) {
      Jobs jobs = draw(random, 25, 3, 2);
      Schedule schedule = ScheduleSearch.shortest(jobs, 4_000);
      assertTrue(schedule.minutes() >= jobs.longestChain(), "seed 7, case " + i);
      assertTrue(schedule.minutes() >= jobs.sharedWork(), "seed 7, case " + i);
      assertTrue(schedule.minutes() >= schedule.atLeast(), "seed 7, case " + i);
      mustBeSound(jobs, schedule, "seed 7, case " + i);
    }
  }

  @Test
  void theSearchFindsWhatGoingThroughAllOrdersFinds() {
    Random random = new Random(11);
    for (int i = 0; i < 150; i++) {
      Jobs jobs = draw(random, 6, 2 + i % 2, 2);
      Schedule schedule = shortest(jobs);
      assertTrue(schedule.isShortest());
      assertEquals(allOrders(jobs), schedule.minutes(), "seed 11, case " + i + ": " + jobs);
      mustBeSound(jobs, schedule, "seed 11, case " + i);
    }
  }

  @Test
  void aSearchThatIsCutShortSaysHowFarOffItCanBe() {
    Random random = new Random(13);
    boolean someAreOpen = false;
    for (int i = 0; i < 40; i++) {
      Jobs jobs = draw(random, 25, 3, 3);
      Schedule cut = ScheduleSearch.shortest(jobs, 1);
      Schedule longer = ScheduleSearch.shortest(jobs, 20_000);
      assertTrue(cut.atLeast() <= longer.minutes(), "seed 13, case " + i);
      assertEquals(cut.minutes() - cut.atLeast(), cut.gapMinutes());
      someAreOpen |= !cut.isShortest();
    }
    assertTrue(someAreOpen, "a search of one step proves less than the whole");
  }

  @Test
  void aJobThatWantsMoreHandsThanThereAreIsRefused() {
    List<Job> jobs = List.of(new Job(1, 2, List.of()));
    assertThrows(IllegalArgumentException.class, () -> new Jobs(jobs, 1));
  }

  private static Schedule shortest(Jobs jobs) {
    return ScheduleSearch.shortest(jobs, STEPS);
  }

  private static Job alone(int minutes) {
    return new Job(minutes, 1, List.of());
  }

  private static Jobs draw(Random random, int count, int hands, int mostHands) {
    List<Job> jobs = new ArrayList<>();
    for (int j = 0; j < count; j++) {
      List<Integer> after = new ArrayList<>();
      for (int before = 0; before < j; before++) {
        if (random.nextInt(count) < 2) {
          after.add(before);
        }
      }
      jobs.add(
          new Job(1 + random.nextInt(6), 1 + random.nextInt(Math.min(hands, mostHands)), after));
    }
    return new Jobs(jobs, hands);
  }

  private static void mustBeSound(Jobs jobs, Schedule schedule, String message) {
    for (int j = 0; j < jobs.count(); j++) {
      int start = schedule.starts().get(j);
      for (int before : jobs.jobs().get(j).after()) {
        int over = schedule.starts().get(before) + jobs.jobs().get(before).minutes();
        assertTrue(over <= start, message);
      }
    }
    for (int minute = 0; minute < schedule.minutes(); minute++) {
      int busy = 0;
      for (int j = 0; j < jobs.count(); j++) {
        int start = schedule.starts().get(j);
        boolean isOn = start <= minute && minute < start + jobs.jobs().get(j).minutes();
        busy += isOn ? jobs.jobs().get(j).hands() : 0;
      }
      assertTrue(busy <= jobs.hands(), message);
    }
  }

  /** The least length over all orders, each job as soon as it can: minute by minute, no bounds. */
  private static int allOrders(Jobs jobs) {
    return allOrders(jobs, new ArrayList<>(), new int[jobs.count()], new int[200]);
  }

  private static int allOrders(Jobs jobs, List<Integer> placed, int[] starts, int[] busy) {
    if (placed.size() == jobs.count()) {
      int length = 0;
      for (int j : placed) {
        length = Math.max(length, starts[j] + jobs.jobs().get(j).minutes());
      }
      return length;
    }
    int least = Integer.MAX_VALUE;
    for (int j = 0; j < jobs.count(); j++) {
      Job job = jobs.jobs().get(j);
      if (placed.contains(j) || !placed.containsAll(job.after())) {
        continue;
      }
      int start = 0;
      for (int before : job.after()) {
        start = Math.max(start, starts[before] + jobs.jobs().get(before).minutes());
      }
      while (!fits(jobs, job, start, busy)) {
        start++;
      }
      starts[j] = start;
      add(busy, job, start, job.hands());
      placed.add(j);
      least = Math.min(least, allOrders(jobs, placed, starts, busy));
      placed.removeLast();
      add(busy, job, start, -job.hands());
    }
    return least;
  }

  private static boolean fits(Jobs jobs, Job job, int start, int[] busy) {
    for (int minute = start; minute < start + job.minutes(); minute++) {
      if (busy[minute] + job.hands() > jobs.hands()) {
        return false;
      }
    }
    return true;
  }

  private static void add(int[] busy, Job job, int start, int hands) {
    for (int minute = start; minute < start + job.minutes(); minute++) {
      busy[minute] += hands;
    }
  }
}
