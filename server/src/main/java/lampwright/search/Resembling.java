package lampwright.search;

import java.io.IOException;
import org.apache.lucene.index.BinaryDocValues;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.search.DocIdSetIterator;
import org.apache.lucene.search.Explanation;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.QueryVisitor;
import org.apache.lucene.search.ScoreMode;
import org.apache.lucene.search.Scorer;
import org.apache.lucene.search.ScorerSupplier;
import org.apache.lucene.search.Weight;
import org.apache.lucene.util.BytesRef;

/**
 * Matches every document; its score is how alike the setup is, 0 where nothing is kept to tell that
 * by. All that the other clauses let through are compared one by one, so the order is exact.
 */
final class Resembling extends Query {

  private final String field;
  private final Resemblance measure;

  /**
   * @param field where the facts are that the measure reads
   */
  Resembling(String field, Resemblance measure) {
    this.field = field;
    this.measure = measure;
  }

  @Override
  public Weight createWeight(IndexSearcher searcher, ScoreMode scoreMode, float boost) {
    return new Weight(this) {

      @Override
      public ScorerSupplier scorerSupplier(LeafReaderContext leaf) {
        return new ScorerSupplier() {

          @Override
          public Scorer get(long leadCost) throws IOException {
            return new Each(leaf, boost);
          }

          @Override
          public long cost() {
            return leaf.reader().maxDoc();
          }
        };
      }

      @Override
      public Explanation explain(LeafReaderContext leaf, int document) throws IOException {
        return Explanation.match(boost * score(values(leaf), document), "how alike it is");
      }

      @Override
      public boolean isCacheable(LeafReaderContext leaf) {
        return false;
      }
    };
  }

  private BinaryDocValues values(LeafReaderContext leaf) throws IOException {
    return DocValues.getBinary(leaf.reader(), field);
  }

  private float score(BinaryDocValues values, int document) throws IOException {
    if (!values.advanceExact(document)) {
      return 0;
    }
    BytesRef packed = values.binaryValue();
    return (float) measure.of(packed.bytes, packed.offset, packed.length);
  }

  /** All documents of a segment. */
  private final class Each extends Scorer {

    private final DocIdSetIterator all;
    private final BinaryDocValues values;
    private final float boost;

    Each(LeafReaderContext leaf, float boost) throws IOException {
      this.all = DocIdSetIterator.all(leaf.reader().maxDoc());
      this.values = values(leaf);
      this.boost = boost;
    }

    @Override
    public int docID() {
      return all.docID();
    }

    @Override
    public DocIdSetIterator iterator() {
      return all;
    }

    @Override
    public float getMaxScore(int upTo) {
      return boost;
    }

    @Override
    public float score() throws IOException {
      return boost * Resembling.this.score(values, all.docID());
    }
  }

  @Override
  public void visit(QueryVisitor visitor) {
    visitor.visitLeaf(this);
  }

  @Override
  public String toString(String defaultField) {
    return "how alike";
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Resembling that
        && field.equals(that.field)
        && measure.equals(that.measure);
  }

  @Override
  public int hashCode() {
    return measure.hashCode();
  }
}
