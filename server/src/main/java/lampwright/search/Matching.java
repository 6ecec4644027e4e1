package lampwright.search;

import java.util.Set;

/**
 * Which setups match a question, in no order.
 *
 * @param ids of all of them, or none where there are more than were asked for
 * @param total how many there are
 * @param isSettled whether nothing is missing that the index or the model of sentences will only
 *     know when it is built or loaded
 */
public record Matching(Set<String> ids, long total, boolean isSettled) {

  public Matching {
    ids = Set.copyOf(ids);
  }

  /** Whether all of them are here. */
  public boolean isWhole() {
    return ids.size() == total;
  }
}
