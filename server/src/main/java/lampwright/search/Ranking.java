package lampwright.search;

import java.io.IOException;
import java.util.Map;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.LeafReader;
import org.apache.lucene.index.NumericDocValues;
import org.apache.lucene.index.SortedDocValues;

/** Where a setup stands that words do not put in order: the higher the earlier. */
sealed interface Ranking {

  void enter(LeafReader reader) throws IOException;

  /**
   * The rank of a setup.
   *
   * @param document of the segment that was entered; its dimensions have read it
   */
  long of(int document) throws IOException;

  /** As a list stands without words. */
  final class AsListed implements Ranking {
    private NumericDocValues changes = DocValues.emptyNumeric();

    @Override
    public void enter(LeafReader reader) throws IOException {
      changes = DocValues.getNumeric(reader, EntryDocument.LISTED);
    }

    @Override
    public long of(int document) throws IOException {
      return changes.advanceExact(document) ? changes.longValue() : 0;
    }
  }

  /**
   * By distance, in centimetres, as exactly as points are kept.
   *
   * @param points what the distances come from
   */
  record NearestFirst(PointDimension points) implements Ranking {

    @Override
    public void enter(LeafReader reader) {}

    @Override
    public long of(int document) {
      return -Math.round(points.metres() * 100);
    }
  }

  /** By how far off setups are, in hundredths of a stop; equals as listed, to the second. */
  final class LeastOffFirst implements Ranking {

    /** Farther than any filter asks. */
    private static final int UNTOLD = 1 << 16;

    private static final int LISTED_BITS = 44;
    private static final int SECONDS = 10;

    private final Map<String, Integer> hundredths;
    private final AsListed listed = new AsListed();
    private SortedDocValues setups = DocValues.emptySorted();

    LeastOffFirst(Map<String, Integer> hundredths) {
      this.hundredths = hundredths;
    }

    @Override
    public void enter(LeafReader reader) throws IOException {
      listed.enter(reader);
      setups = DocValues.getSorted(reader, EntryDocument.SETUP);
    }

    @Override
    public long of(int document) throws IOException {
      int off = UNTOLD;
      if (setups.advanceExact(document)) {
        String setup = setups.lookupOrd(setups.ordValue()).utf8ToString();
        off = hundredths.getOrDefault(setup, UNTOLD);
      }
      return (listed.of(document) >> SECONDS) - ((long) off << LISTED_BITS);
    }
  }
}
