package lampwright.search;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import lampwright.language.Said;
import lampwright.search.filter.Trait;

/** What a search comes to. */
public sealed interface SearchResult {

  /**
   * A page of hits.
   *
   * @param items the page, best first
   * @param total how many setups match in all
   * @param facets how many there are by each trait that was asked for
   * @param next the cursor of the next page, absent on the last
   * @param byWordsAlone whether what the question means could not be told, so that only its words
   *     were looked for
   * @param instead where nothing was found: what would be found by asking for less
   */
  record Answer(
      List<Hit> items,
      long total,
      Facets facets,
      Optional<String> next,
      boolean byWordsAlone,
      List<Instead> instead)
      implements SearchResult {
    public Answer {
      items = List.copyOf(items);
      instead = List.copyOf(instead);
    }
  }

  /** The cursor was not made by this question. Start again at the first page. */
  record UnreadableCursor() implements SearchResult {}

  /**
   * A setup that matches.
   *
   * @param score 0 to 1, higher is better; comparable within one question only; 0 where there is no
   *     text and nothing that it should be like
   * @param reasons why it matched, in plain words: {@code mood: lonely — near “bleak”}
   * @param why the texts that say so, as they were when they were indexed; none where it matched by
   *     its meaning alone
   */
  record Hit(String setup, int revision, double score, List<Said> reasons, List<MarkedText> why) {
    public Hit {
      reasons = List.copyOf(reasons);
      why = List.copyOf(why);
    }
  }

  /**
   * Counts by trait. Each is counted under the filters of the other traits, so that it says what
   * choosing another value would give.
   */
  record Facets(Map<Trait, List<FacetCount>> counts) {

    public Facets {
      counts = Map.copyOf(counts);
    }

    /** The counts of a trait in its order; none where it was not asked for. */
    public List<FacetCount> of(Trait trait) {
      return counts.getOrDefault(trait, List.of());
    }

    /** The same by value. */
    public SequencedMap<String, Long> byValue(Trait trait) {
      SequencedMap<String, Long> byValue = new LinkedHashMap<>();
      of(trait).forEach(count -> byValue.put(count.value(), count.count()));
      return Collections.unmodifiableSequencedMap(byValue);
    }
  }
}
