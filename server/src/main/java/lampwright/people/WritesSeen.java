package lampwright.people;

import java.util.Arrays;

/**
 * How often a studio had been written when somebody came for something of it: whatever is read for
 * them must hold at least that.
 *
 * @param counts how often in each of eight places, as {@code place:count}, by place
 */
public record WritesSeen(StudioId studio, String counts) {

  private static final int PLACES = 8;

  /**
   * Whether what was counted elsewhere holds all that was seen. Each place is compared by itself:
   * of two writes that were counted in different places either may come first elsewhere.
   *
   * @param elsewhere in the same form
   */
  public boolean isCoveredBy(String elsewhere) {
    long[] needed = places(counts);
    long[] there = places(elsewhere);
    for (int i = 0; i < PLACES; i++) {
      if (there[i] < needed[i]) {
        return false;
      }
    }
    return true;
  }

  private static long[] places(String counts) {
    long[] places = new long[PLACES];
    Arrays.stream(counts.split(" ", -1))
        .filter(count -> !count.isEmpty())
        .map(count -> count.split(":", -1))
        .forEach(count -> places[Integer.parseInt(count[0])] = Long.parseLong(count[1]));
    return places;
  }
}
