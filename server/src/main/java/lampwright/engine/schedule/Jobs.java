package lampwright.engine.schedule;

import java.util.ArrayList;
import java.util.List;

/**
 * Jobs by their numbers, from 0, each after all that it waits for, and how many hands there are.
 *
 * <p>The least length of a schedule is bounded from below by the longest chain of jobs, and by the
 * work of any set of jobs: they begin no sooner than the first of them can, take at least their
 * work divided among the hands, and what must follow the last of them still takes its time (source
 * derived: no pair of hands works twice at once).
 */
public record Jobs(List<Job> jobs, int hands) {

  /** Copies the jobs and checks that each waits only for earlier ones and that hands suffice. */
  public Jobs {
    jobs = List.copyOf(jobs);
    for (int j = 0; j < jobs.size(); j++) {
      int number = j;
      if (jobs.get(j).hands() > hands || jobs.get(j).after().stream().anyMatch(a -> a >= number)) {
        throw new IllegalArgumentException(
            "Job %d must take %d hands or fewer and wait only for earlier jobs."
                .formatted(j, hands));
      }
    }
  }

  /** How many jobs there are. */
  public int count() {
    return jobs.size();
  }

  /** All one after the other. */
  public int minutesInARow() {
    return jobs.stream().mapToInt(Job::minutes).sum();
  }

  /** Of each job the soonest start that the chain before it allows. */
  int[] heads() {
    int[] heads = new int[count()];
    for (int j = 0; j < count(); j++) {
      for (int before : jobs.get(j).after()) {
        heads[j] = Math.max(heads[j], heads[before] + jobs.get(before).minutes());
      }
    }
    return heads;
  }

  /** Of each job the time that the longest chain after it takes, the job itself not counted. */
  int[] tails() {
    int[] tails = new int[count()];
    for (int j = count() - 1; j >= 0; j--) {
      for (int before : jobs.get(j).after()) {
        tails[before] = Math.max(tails[before], tails[j] + jobs.get(j).minutes());
      }
    }
    return tails;
  }

  /** The longest chain of jobs that wait for one another. */
  public int longestChain() {
    int[] heads = heads();
    int longest = 0;
    for (int j = 0; j < count(); j++) {
      longest = Math.max(longest, heads[j] + jobs.get(j).minutes());
    }
    return longest;
  }

  /** The work of all divided among the hands, rounded up. */
  public int sharedWork() {
    int work = jobs.stream().mapToInt(job -> job.minutes() * job.hands()).sum();
    return (work + hands - 1) / hands;
  }

  /** A length that no schedule beats. */
  public int leastMinutes() {
    int[] heads = heads();
    int[] tails = tails();
    int least = longestChain();
    for (int head : heads) {
      for (int tail : tails) {
        least = Math.max(least, leastOf(heads, tails, head, tail));
      }
    }
    return least;
  }

  /** By the work of the jobs that begin no sooner than a head and are followed by a tail. */
  private int leastOf(int[] heads, int[] tails, int head, int tail) {
    int work = 0;
    for (int j = 0; j < heads.length; j++) {
      if (heads[j] >= head && tails[j] >= tail) {
        work += jobs.get(j).minutes() * jobs.get(j).hands();
      }
    }
    return work == 0 ? 0 : head + (work + hands - 1) / hands + tail;
  }

  /** The same jobs backward in time: what waited for a job now comes before it. */
  Jobs reversed() {
    int last = count() - 1;
    List<List<Integer>> after = new ArrayList<>();
    jobs.forEach(_ -> after.add(new ArrayList<>()));
    for (int j = 0; j <= last; j++) {
      for (int before : jobs.get(j).after()) {
        after.get(last - before).add(last - j);
      }
    }
    List<Job> backward = new ArrayList<>();
    for (int j = 0; j <= last; j++) {
      Job job = jobs.get(last - j);
      backward.add(new Job(job.minutes(), job.hands(), after.get(j)));
    }
    return new Jobs(backward, hands);
  }
}
