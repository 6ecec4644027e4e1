package lampwright.web.pages;

import java.util.List;

/**
 * Where a member stands with learning.
 *
 * @param cleared what they may do alone
 * @param waiting builds of others that they may judge
 * @param next the kind of drill to be asked next
 * @param newTrailPath where a trail is made; empty for who may not
 * @param reportPath how far everybody is; empty for who may not see it
 */
public record LearningPage(
    Layout layout,
    List<String> cleared,
    List<Trail> trails,
    List<Waiting> waiting,
    Link next,
    List<Kind> kinds,
    String newTrailPath,
    String reportPath) {

  public LearningPage {
    cleared = List.copyOf(cleared);
    trails = List.copyOf(trails);
    waiting = List.copyOf(waiting);
    kinds = List.copyOf(kinds);
  }

  /**
   * A trail.
   *
   * @param counted "3 of 8 stages"
   * @param next the stage to do next; empty where all are done
   */
  public record Trail(Link link, String about, String counted, String next) {}

  /**
   * A build that waits.
   *
   * @param link to it, by who built it
   * @param what trail and stage
   */
  public record Waiting(Link link, String what, String since) {}

  /**
   * A kind of drill.
   *
   * @param link to be asked one
   * @param box how far it is, from 0 to {@link #LAST_BOX}; -1 where it was never asked
   * @param counted "7 of 9 right"; empty where it was never asked
   * @param due when it is to be asked again, in words
   * @param isDue whether that is now
   */
  public record Kind(Link link, int box, String counted, String due, boolean isDue) {}

  /** The last box. */
  public static final int LAST_BOX = lampwright.learning.drill.Repetition.LAST_BOX;
}
