package lampwright.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.search.BulkScorer;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.LeafCollector;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.ScoreMode;
import org.apache.lucene.search.Scorer;
import org.apache.lucene.search.ScorerSupplier;
import org.apache.lucene.search.SimpleCollector;
import org.apache.lucene.search.Weight;
import org.apache.lucene.util.FixedBitSet;

/**
 * The setups of one view of the index that all of some queries let through, a bit for each
 * document. Most searches choose nearly all of a studio, and then go through the postings of their
 * words: a bit is asked faster than a second list of postings is walked beside them. The setups of
 * a studio stand together in each segment, so those of others cost nothing.
 */
final class Chosen {

  private final IndexSearcher searcher;

  /** One for each segment. */
  private final List<FixedBitSet> documents;

  private Chosen(IndexSearcher searcher, List<FixedBitSet> documents) {
    this.searcher = searcher;
    this.documents = documents;
  }

  /** What one query lets through and is not deleted. */
  static Chosen of(IndexSearcher searcher, Query query) throws IOException {
    List<FixedBitSet> documents = matches(searcher, query);
    for (LeafReaderContext leaf : searcher.getIndexReader().leaves()) {
      if (leaf.reader().getLiveDocs() != null) {
        leaf.reader().getLiveDocs().applyMask(documents.get(leaf.ord), 0);
      }
    }
    return new Chosen(searcher, documents);
  }

  /** Those of them that a query lets through too. */
  Chosen and(Query query) throws IOException {
    List<FixedBitSet> both = matches(searcher, query);
    for (int i = 0; i < both.size(); i++) {
      both.get(i).and(documents.get(i));
    }
    return new Chosen(searcher, both);
  }

  /** Those of them that a query does not match. */
  Chosen without(Query query) throws IOException {
    List<FixedBitSet> rest = matches(searcher, query);
    for (int i = 0; i < rest.size(); i++) {
      FixedBitSet kept = documents.get(i).clone();
      kept.andNot(rest.get(i));
      rest.set(i, kept);
    }
    return new Chosen(searcher, rest);
  }

  private static List<FixedBitSet> matches(IndexSearcher searcher, Query query) throws IOException {
    Weight weight = searcher.createWeight(searcher.rewrite(query), ScoreMode.COMPLETE_NO_SCORES, 1);
    List<FixedBitSet> all = new ArrayList<>();
    for (LeafReaderContext leaf : searcher.getIndexReader().leaves()) {
      FixedBitSet here = new FixedBitSet(leaf.reader().maxDoc());
      Scorer scorer = weight.scorer(leaf);
      if (scorer != null) {
        here.or(scorer.iterator());
      }
      all.add(here);
    }
    return all;
  }

  /** The documents of one segment. */
  FixedBitSet in(LeafReaderContext leaf) {
    return documents.get(leaf.ord);
  }

  int count() {
    return documents.stream().mapToInt(FixedBitSet::cardinality).sum();
  }

  /** How many of them a query lets through. */
  int count(Query query) throws IOException {
    List<FixedBitSet> matching = matches(searcher, query);
    long count = 0;
    for (int i = 0; i < matching.size(); i++) {
      count += FixedBitSet.intersectionCount(matching.get(i), documents.get(i));
    }
    return Math.toIntExact(count);
  }

  /** Hands those of them that match a query to a collector. */
  void collect(Query query, SimpleCollector collector) throws IOException {
    Weight weight = searcher.createWeight(searcher.rewrite(query), collector.scoreMode(), 1);
    for (LeafReaderContext leaf : searcher.getIndexReader().leaves()) {
      FixedBitSet here = in(leaf);
      int first = here.length() == 0 ? -1 : here.nextSetBit(0);
      ScorerSupplier matching = first < 0 ? null : weight.scorerSupplier(leaf);
      if (matching != null) {
        matching.setTopLevelScoringClause();
        BulkScorer scorer = matching.bulkScorer();
        LeafCollector each = collector.getLeafCollector(leaf);
        scorer.score(each, here, first, here.prevSetBit(here.length() - 1) + 1);
        each.finish();
      }
    }
  }
}
