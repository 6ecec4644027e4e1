package lampwright.web.http;

import java.time.Duration;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalInt;

/**
 * How much is worked on at once, and how much waits for that.
 *
 * @param lanes of each kind of work; a kind that is not in it is not bounded
 * @param longestWait after which a request that waits is refused
 */
public record Capacity(Map<Lane, Bound> lanes, Duration longestWait) {

  private static final Duration LONGEST_WAIT = Duration.ofSeconds(5);

  /**
   * Of one kind of work.
   *
   * @param atOnce requests that are worked on
   * @param waiting requests that wait for a place; further ones are refused at once
   */
  public record Bound(int atOnce, int waiting) {}

  public Capacity {
    lanes = Map.copyOf(lanes);
  }

  /**
   * What a machine can bear. Computing beyond the cores makes all slower; a light request waits for
   * the database more than it computes. Passwords have a queue of their own behind this.
   *
   * @param lightAtOnce light requests at once; empty for as many as suit the cores
   */
  public static Capacity of(int cores, OptionalInt lightAtOnce) {
    int light = lightAtOnce.orElse(Math.max(16, 8 * cores));
    Map<Lane, Bound> lanes = new EnumMap<>(Lane.class);
    lanes.put(Lane.LIGHT, new Bound(light, 8 * light));
    lanes.put(Lane.PASSWORD, new Bound(18, 18));
    lanes.put(Lane.COMPUTING, new Bound(cores, 8 * cores));
    lanes.put(Lane.PRINTING, new Bound(Math.min(2, cores), 8));
    lanes.put(Lane.FILES, new Bound(4 * cores, 8 * cores));
    return new Capacity(lanes, LONGEST_WAIT);
  }
}
