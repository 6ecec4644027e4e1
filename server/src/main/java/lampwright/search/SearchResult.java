package lampwright.search;

import java.util.List;
import java.util.Optional;
import java.util.SequencedMap;

/** What a search comes to. */
public sealed interface SearchResult {

  /**
   * A page of hits.
   *
   * @param items the page, best first
   * @param total how many setups match in all
   * @param facets how many there are by mood and place
   * @param next the cursor of the next page, absent on the last
   */
  record Answer(List<Hit> items, long total, Facets facets, Optional<String> next)
      implements SearchResult {
    public Answer {
      items = List.copyOf(items);
    }
  }

  /** The cursor was not made by this question. Start again at the first page. */
  record UnreadableCursor() implements SearchResult {}

  /**
   * A setup that matches.
   *
   * @param score higher is better; comparable within one question only; 0 where there is no text
   * @param reasons why it matched, in plain words: {@code mood: lonely — near “bleak”}
   */
  record Hit(String setup, int revision, double score, List<String> reasons) {
    public Hit {
      reasons = List.copyOf(reasons);
    }
  }

  /**
   * Counts, the largest first, then by name. Each is counted under the other filters, so that it
   * says what choosing another value would give.
   */
  record Facets(
      SequencedMap<String, Long> moods,
      SequencedMap<String, Long> places,
      SequencedMap<String, Long> placeKinds,
      SequencedMap<String, Long> states) {}
}
