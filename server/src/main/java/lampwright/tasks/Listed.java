package lampwright.tasks;

import java.util.List;
import java.util.Optional;

/**
 * Part of a list.
 *
 * @param next what to ask with for the next part; absent on the last one
 */
public record Listed<T>(List<T> items, Optional<String> next) {

  /** The most that one part holds. */
  public static final int MOST = 100;

  /** Where a part ended and how much of the list is wanted. */
  public record Wish(Optional<String> cursor, int limit) {

    /** All that fits into one part, from the start. */
    public static Wish first() {
      return new Wish(Optional.empty(), MOST);
    }
  }

  public Listed {
    items = List.copyOf(items);
  }
}
