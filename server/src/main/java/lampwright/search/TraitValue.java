package lampwright.search;

import lampwright.search.filter.Filter;
import org.apache.lucene.util.BytesRef;

/**
 * A word of a trait as it is counted: how it is compared, then how it was written. So that the ways
 * to write one word stand side by side in the index, and count as one.
 */
record TraitValue(String key, String written) {

  private static final char BETWEEN = '\0';

  static TraitValue of(String word) {
    String written = Filter.words(word);
    return new TraitValue(Filter.key(written), written);
  }

  static TraitValue of(BytesRef bytes) {
    String both = bytes.utf8ToString();
    int at = both.indexOf(BETWEEN);
    return at < 0
        ? new TraitValue(both, both)
        : new TraitValue(both.substring(0, at), both.substring(at + 1));
  }

  /** Where the values of this key begin in their order. */
  static BytesRef first(String key) {
    return new BytesRef(key);
  }

  /** Behind the values of this key in their order. */
  static BytesRef last(String key) {
    return new BytesRef(key + (char) (BETWEEN + 1));
  }

  BytesRef bytes() {
    return new BytesRef(key.equals(written) ? key : key + BETWEEN + written);
  }
}
