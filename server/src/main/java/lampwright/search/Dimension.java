package lampwright.search;

import java.io.IOException;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.SequencedMap;
import java.util.Set;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.LeafReader;
import org.apache.lucene.index.SortedSetDocValues;
import org.apache.lucene.util.BytesRef;

/** The values of one filter: tells whether a document passes, and counts what the others let by. */
final class Dimension {

  /** Values that a person can still look through. */
  private static final int MOST_VALUES = 100;

  private static final Comparator<Map.Entry<String, Long>> LARGEST_FIRST =
      Map.Entry.<String, Long>comparingByValue().reversed().thenComparing(Map.Entry::getKey);

  private final String field;
  private final Set<String> wanted;
  private final Map<String, Long> counts = new HashMap<>();

  private SortedSetDocValues values = DocValues.emptySortedSet();
  private boolean[] wantedHere = {};
  private int[] countsHere = {};
  private int[] ofDocument = new int[8];
  private int size;

  /**
   * @param wanted a document must have one of these values; empty: any
   */
  Dimension(String field, Set<String> wanted) {
    this.field = field;
    this.wanted = wanted;
  }

  void enter(LeafReader reader) throws IOException {
    leave();
    values = DocValues.getSortedSet(reader, field);
    int different = Math.toIntExact(values.getValueCount());
    countsHere = new int[different];
    wantedHere = new boolean[different];
    for (String value : wanted) {
      long number = values.lookupTerm(new BytesRef(value));
      if (number >= 0) {
        wantedHere[(int) number] = true;
      }
    }
  }

  /** Adds up what was counted since {@link #enter}. */
  void leave() throws IOException {
    for (int number = 0; number < countsHere.length; number++) {
      if (countsHere[number] > 0) {
        counts.merge(values.lookupOrd(number).utf8ToString(), (long) countsHere[number], Long::sum);
      }
    }
    countsHere = new int[0];
  }

  /** Reads a document's values, and tells whether it passes this filter. */
  boolean passes(int document) throws IOException {
    size = 0;
    boolean found = wanted.isEmpty();
    if (values.advanceExact(document)) {
      int many = values.docValueCount();
      if (many > ofDocument.length) {
        ofDocument = new int[many * 2];
      }
      for (; size < many; size++) {
        int number = (int) values.nextOrd();
        ofDocument[size] = number;
        found |= wantedHere[number];
      }
    }
    return found;
  }

  /** Counts the values of the document that was read last. */
  void count() {
    for (int i = 0; i < size; i++) {
      countsHere[ofDocument[i]]++;
    }
  }

  SequencedMap<String, Long> counts() {
    SequencedMap<String, Long> sorted = new LinkedHashMap<>();
    counts.entrySet().stream()
        .sorted(LARGEST_FIRST)
        .limit(MOST_VALUES)
        .forEach(entry -> sorted.put(entry.getKey(), entry.getValue()));
    return Collections.unmodifiableSequencedMap(sorted);
  }
}
