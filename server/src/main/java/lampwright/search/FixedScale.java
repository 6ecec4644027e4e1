package lampwright.search;

import org.apache.lucene.search.CollectionStatistics;
import org.apache.lucene.search.Explanation;
import org.apache.lucene.search.TermStatistics;
import org.apache.lucene.search.similarities.BM25Similarity;

/**
 * BM25 whose scores depend on the document and the question alone.
 *
 * <p>The plain kind takes the rarity of a word and the mean length of texts from the whole index:
 * from other studios, and from documents that are deleted but not yet merged away, so that two
 * processes with the same setups would rank differently and a page could skip a hit. Here rarity is
 * counted within the studio when the question is asked ({@link QueryPlan}), and the mean length is
 * a constant.
 */
final class FixedScale extends BM25Similarity {

  private static final float SATURATION = 1.2f;

  /**
   * What is said in few words is about it more. Measured, see benchmarks.md; 0.5 to 0.75 are alike.
   */
  private static final float LENGTH_SHARE = 0.6f;

  /** Words of a middling setup, all its texts together, title and moods counted twice. */
  private static final float MIDDLING_LENGTH = 50;

  FixedScale() {
    super(SATURATION, LENGTH_SHARE);
  }

  /** What one occurrence of a word counts that is taken for a part of one, against a whole one. */
  static float part(float ofOne) {
    return ofOne * (1 + SATURATION) / (ofOne + SATURATION);
  }

  @Override
  protected float avgFieldLength(CollectionStatistics collection) {
    return MIDDLING_LENGTH;
  }

  @Override
  public Explanation idfExplain(CollectionStatistics collection, TermStatistics term) {
    return Explanation.match(1f, "rarity is counted within the studio");
  }

  @Override
  public Explanation idfExplain(CollectionStatistics collection, TermStatistics[] terms) {
    return Explanation.match(1f, "rarity is counted within the studio");
  }
}
