package lampwright.search;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.search.filter.Filter;
import lampwright.search.filter.Trait;
import org.apache.lucene.document.Document;
import org.apache.lucene.document.Field.Store;
import org.apache.lucene.document.StringField;
import org.apache.lucene.util.BytesRef;

/**
 * What can be suggested of a setup, as terms of the index: each begins with the studio and the
 * words from one of its own on, so that all that a beginning may become stands side by side.
 */
final class SuggestionTerms {

  /** The words of traits. */
  static final String VALUES = "suggested_values";

  static final String TITLES = "suggested_titles";

  /** Names are longer than this only by mistake. */
  private static final int MOST_BEGINNINGS = 12;

  private static final char BETWEEN = '\0';

  /**
   * A value as one of its terms has it.
   *
   * @param beginning the words from which on it was looked up
   * @param key how it is compared
   * @param written how its setups write it
   */
  record Value(String beginning, Trait trait, String key, String written) {

    /** The same, wherever it was looked up. */
    Value anywhere() {
      return new Value("", trait, key, written);
    }
  }

  /** A title as one of its terms has it. */
  record Title(String beginning, String setup) {}

  private SuggestionTerms() {}

  static void add(Document document, IndexEntry entry) {
    entry
        .traits()
        .words()
        .forEach(
            (trait, words) -> {
              // The index knows people by their ids only.
              if (trait != Trait.AUTHOR) {
                words.forEach(word -> addValue(document, entry.studio(), trait, word));
              }
            });
    for (String beginning : beginnings(Filter.key(entry.title()))) {
      document.add(
          new StringField(
              TITLES,
              new BytesRef(entry.studio() + BETWEEN + beginning + BETWEEN + entry.setup()),
              Store.NO));
    }
  }

  private static void addValue(Document document, String studio, Trait trait, String word) {
    String written = Filter.words(word);
    String key = Filter.key(written);
    String rest = BETWEEN + trait.name('_') + BETWEEN + key + BETWEEN + written;
    for (String beginning : beginnings(key)) {
      document.add(
          new StringField(VALUES, new BytesRef(studio + BETWEEN + beginning + rest), Store.NO));
    }
  }

  /** The same words from each of them on. */
  static List<String> beginnings(String key) {
    List<String> beginnings = new ArrayList<>();
    boolean inWord = false;
    for (int at = 0; at < key.length() && beginnings.size() < MOST_BEGINNINGS; at++) {
      boolean ofWord = Character.isLetterOrDigit(key.charAt(at));
      if (ofWord && !inWord) {
        beginnings.add(key.substring(at));
      }
      inWord = ofWord || (inWord && isInsideWords(key.charAt(at)));
    }
    return beginnings;
  }

  private static boolean isInsideWords(char letter) {
    return letter == '\'' || letter == '’';
  }

  /** Where the terms begin that may become of this. */
  static BytesRef from(String studio, String prefix) {
    return new BytesRef((studio + BETWEEN + prefix).getBytes(StandardCharsets.UTF_8));
  }

  static Optional<Value> value(BytesRef term) {
    String[] parts = term.utf8ToString().split("\0", -1);
    return parts.length == 5
        ? Trait.find(parts[2]).map(trait -> new Value(parts[1], trait, parts[3], parts[4]))
        : Optional.empty();
  }

  static Optional<Title> title(BytesRef term) {
    String[] parts = term.utf8ToString().split("\0", -1);
    return parts.length == 3 ? Optional.of(new Title(parts[1], parts[2])) : Optional.empty();
  }
}
