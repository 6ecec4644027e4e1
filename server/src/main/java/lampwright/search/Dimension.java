package lampwright.search;

import java.io.IOException;
import java.util.List;
import lampwright.search.filter.Filter;
import lampwright.search.filter.Trait;
import org.apache.lucene.index.LeafReader;

/**
 * One trait of the setups that are looked through: whether a setup passes all filters of this
 * trait, and how many there are of each value among those that the collector counts.
 */
sealed interface Dimension permits WordDimension, NumberDimension, PointDimension {

  /**
   * Starts the counting of one trait.
   *
   * @param filters all of this trait
   */
  static Dimension of(Trait trait, List<Filter> filters) {
    return switch (trait.kind()) {
      case WORDS -> new WordDimension(trait, filters);
      case NUMBER -> new NumberDimension(trait, filters);
      case SPOT -> new PointDimension(filters);
      case KIT -> throw new IllegalArgumentException("What a kit makes is decided elsewhere.");
    };
  }

  Trait trait();

  void enter(LeafReader reader) throws IOException;

  /** Reads a setup's values, and tells whether it passes the filters. */
  boolean passes(int document) throws IOException;

  /** Counts the values of the setup that was read last. */
  void count();

  /**
   * Counts the values of setups that pass whatever they are.
   *
   * @param documents of the segment that was entered, ascending
   * @param size how many of them
   */
  default void countEach(int[] documents, int size) throws IOException {
    for (int i = 0; i < size; i++) {
      if (passes(documents[i])) {
        count();
      }
    }
  }

  /** Adds up what was counted since {@link #enter}. */
  void leave() throws IOException;

  /** What was counted, in the order of the trait. */
  List<FacetCount> counts();
}
