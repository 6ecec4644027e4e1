package lampwright.search;

import java.io.IOException;
import java.util.HashSet;
import java.util.Set;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.SortedDocValues;
import org.apache.lucene.search.ScoreMode;
import org.apache.lucene.search.SimpleCollector;

/** Takes down what matches, without scores, up to a bound; beyond it only counts. */
final class MatchCollector extends SimpleCollector {

  private final int most;
  private final Set<String> ids = new HashSet<>();
  private SortedDocValues setups = DocValues.emptySorted();
  private long total;

  MatchCollector(int most) {
    this.most = most;
  }

  @Override
  protected void doSetNextReader(LeafReaderContext leaf) throws IOException {
    setups = DocValues.getSorted(leaf.reader(), EntryDocument.SETUP);
  }

  @Override
  public void collect(int document) throws IOException {
    if (setups.advanceExact(document)) {
      total++;
      if (total <= most) {
        ids.add(setups.lookupOrd(setups.ordValue()).utf8ToString());
      }
    }
  }

  @Override
  public ScoreMode scoreMode() {
    return ScoreMode.COMPLETE_NO_SCORES;
  }

  Matching matching(boolean isSettled) {
    return new Matching(total > most ? Set.of() : ids, total, isSettled);
  }
}
