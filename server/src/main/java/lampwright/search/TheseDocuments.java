package lampwright.search;

import java.util.Arrays;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.search.ConstantScoreScorerSupplier;
import org.apache.lucene.search.ConstantScoreWeight;
import org.apache.lucene.search.DocIdSetIterator;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.QueryVisitor;
import org.apache.lucene.search.ScoreMode;
import org.apache.lucene.search.ScorerSupplier;
import org.apache.lucene.search.Weight;
import org.apache.lucene.util.BitSetIterator;
import org.apache.lucene.util.FixedBitSet;
import org.jspecify.annotations.Nullable;

/** Documents of one view of the index that are known already; they count nothing. */
final class TheseDocuments extends Query {

  private final int[] documents;

  /**
   * @param documents of the whole view, ascending
   */
  TheseDocuments(int[] documents) {
    this.documents = documents;
  }

  @Override
  public Weight createWeight(IndexSearcher searcher, ScoreMode scoreMode, float boost) {
    return new ConstantScoreWeight(this, 0) {

      @Override
      public @Nullable ScorerSupplier scorerSupplier(LeafReaderContext leaf) {
        int end = leaf.docBase + leaf.reader().maxDoc();
        int from = place(leaf.docBase);
        int to = place(end);
        if (from == to) {
          return null;
        }
        FixedBitSet here = new FixedBitSet(leaf.reader().maxDoc());
        for (int i = from; i < to; i++) {
          here.set(documents[i] - leaf.docBase);
        }
        DocIdSetIterator each = new BitSetIterator(here, to - from);
        return ConstantScoreScorerSupplier.fromIterator(each, 0, scoreMode, leaf.reader().maxDoc());
      }

      @Override
      public boolean isCacheable(LeafReaderContext leaf) {
        return false;
      }
    };
  }

  /** Where a document stands in the list, or would. */
  private int place(int document) {
    int at = Arrays.binarySearch(documents, document);
    return at < 0 ? -at - 1 : at;
  }

  @Override
  public void visit(QueryVisitor visitor) {
    visitor.visitLeaf(this);
  }

  @Override
  public String toString(String field) {
    return documents.length + " documents";
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof TheseDocuments these && Arrays.equals(documents, these.documents);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(documents);
  }
}
