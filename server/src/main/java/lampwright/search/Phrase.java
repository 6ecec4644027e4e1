package lampwright.search;

import java.util.ArrayList;
import java.util.List;

/**
 * One or more index words that stand behind one another.
 *
 * @param terms the words
 * @param positions where each stands, counted from the first; a left-out stop word leaves a gap
 */
record Phrase(List<String> terms, List<Integer> positions) {

  Phrase {
    terms = List.copyOf(terms);
    positions = List.copyOf(positions);
    if (terms.isEmpty() || terms.size() != positions.size()) {
      throw new IllegalArgumentException("A phrase needs a position for each of its words.");
    }
  }

  /** The phrase of some words; of several at one place only the first counts. Must not be empty. */
  static Phrase of(List<Words.Word> words) {
    List<String> terms = new ArrayList<>();
    List<Integer> positions = new ArrayList<>();
    int first = words.getFirst().position();
    int last = -1;
    for (Words.Word word : words) {
      if (word.position() != last) {
        last = word.position();
        terms.add(word.term());
        positions.add(last - first);
      }
    }
    return new Phrase(terms, positions);
  }

  boolean isOneWord() {
    return terms.size() == 1;
  }
}
