package lampwright.web.pages;

import java.util.List;

/**
 * Where a member stands with learning.
 *
 * @param next the kind of drill to be asked next
 */
public record LearningPage(Layout layout, Link next, List<Kind> kinds) {

  public LearningPage {
    kinds = List.copyOf(kinds);
  }

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
