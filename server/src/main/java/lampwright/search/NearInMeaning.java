package lampwright.search;

import java.io.IOException;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import lampwright.meaning.Meaning;
import org.apache.lucene.index.FloatVectorValues;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.search.ConjunctionUtils;
import org.apache.lucene.search.DocIdSetIterator;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.KnnFloatVectorQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.ScoreDoc;
import org.apache.lucene.search.TopDocs;
import org.apache.lucene.search.VectorScorer;
import org.apache.lucene.util.BitSetIterator;
import org.apache.lucene.util.FixedBitSet;

/**
 * The setups whose text as a whole lies near what was asked, however it is worded.
 *
 * <p>Of up to {@link #MOST_EXACT} setups each is looked at: that costs less than a page's figures,
 * and misses none. Of more a graph of neighbours is walked (Y. Malkov and D. Yashunin, "HNSW",
 * 2016) for many more than a page shows, because a walk for just as many misses some.
 */
final class NearInMeaning {

  /** Cosine from which a setup is found by meaning alone. Measured, see benchmarks.md. */
  static final double LEAST = 0.3;

  static final int MOST_EXACT = 20_000;
  private static final int MOST_WALKED = 400;

  private final int[] documents;
  private final float[] cosines;
  private final boolean knowsAll;

  /**
   * @param documents ascending
   * @param cosines one for each
   * @param knowsAll whether no others have a meaning
   */
  private NearInMeaning(int[] documents, float[] cosines, boolean knowsAll) {
    this.documents = documents;
    this.cosines = cosines;
    this.knowsAll = knowsAll;
  }

  static NearInMeaning none() {
    return new NearInMeaning(new int[0], new float[0], true);
  }

  /**
   * Finds them.
   *
   * @param studio lets through what the asker may see
   * @param seen the same
   */
  static NearInMeaning find(IndexSearcher searcher, Query studio, Chosen seen, Meaning asked)
      throws IOException {
    return seen.count() <= MOST_EXACT
        ? each(searcher, seen, asked)
        : walked(searcher, studio, asked);
  }

  /** Looks at each. */
  static NearInMeaning each(IndexSearcher searcher, Chosen seen, Meaning asked) throws IOException {
    Found found = new Found();
    for (LeafReaderContext leaf : searcher.getIndexReader().leaves()) {
      FloatVectorValues values = leaf.reader().getFloatVectorValues(EntryDocument.MEANING);
      if (values == null) {
        continue;
      }
      FixedBitSet here = seen.in(leaf);
      VectorScorer scorer = values.scorer(asked.direction());
      DocIdSetIterator both =
          ConjunctionUtils.intersectIterators(
              List.of(new BitSetIterator(here, here.cardinality()), scorer.iterator()));
      for (int doc = both.nextDoc(); doc != DocIdSetIterator.NO_MORE_DOCS; doc = both.nextDoc()) {
        found.add(leaf.docBase + doc, cosine(scorer.score()));
      }
    }
    return found.whole(true);
  }

  /** Walks from neighbour to neighbour. */
  static NearInMeaning walked(IndexSearcher searcher, Query seen, Meaning asked)
      throws IOException {
    TopDocs top =
        searcher.search(
            new KnnFloatVectorQuery(EntryDocument.MEANING, asked.direction(), MOST_WALKED, seen),
            MOST_WALKED);
    Found found = new Found();
    Arrays.stream(top.scoreDocs)
        .sorted(Comparator.comparingInt((ScoreDoc one) -> one.doc))
        .forEach(one -> found.add(one.doc, cosine(one.score)));
    return found.whole(false);
  }

  /**
   * The same and what was not looked at of some documents more.
   *
   * @param more ascending
   */
  NearInMeaning and(IndexSearcher searcher, int[] more, Meaning asked) throws IOException {
    if (knowsAll) {
      return this;
    }
    int[] unknown =
        Arrays.stream(more)
            .filter(document -> Arrays.binarySearch(documents, document) < 0)
            .toArray();
    int[] all =
        IntStream.concat(Arrays.stream(documents), Arrays.stream(unknown)).sorted().toArray();
    NearInMeaning looked = each(searcher, Chosen.of(searcher, new TheseDocuments(unknown)), asked);
    float[] of = new float[all.length];
    for (int i = 0; i < all.length; i++) {
      int known = Arrays.binarySearch(documents, all[i]);
      of[i] = known < 0 ? (float) looked.nearness(all[i]) : cosines[known];
    }
    return new NearInMeaning(all, of, true);
  }

  /** Lucene keeps scores above zero: (1 + cosine) / 2. */
  private static float cosine(float score) {
    return 2 * score - 1;
  }

  /** Those that are near enough to be found by meaning alone. */
  Query query() {
    return new TheseDocuments(
        IntStream.range(0, documents.length)
            .filter(i -> cosines[i] >= LEAST)
            .map(i -> documents[i])
            .toArray());
  }

  /** The nearest one's cosine; 0 where there is none. */
  double nearest() {
    double nearest = 0;
    for (float one : cosines) {
      nearest = Math.max(nearest, one);
    }
    return nearest;
  }

  /** The cosine of a document's angle to what was asked; 0 where that is not known. */
  double nearness(int document) {
    int at = Arrays.binarySearch(documents, document);
    return at < 0 ? 0 : Math.max(0, cosines[at]);
  }

  /** Gathers them, documents ascending. */
  private static final class Found {

    private int[] documents = new int[64];
    private float[] cosines = new float[64];
    private int count;

    void add(int document, float cosine) {
      if (count == documents.length) {
        documents = Arrays.copyOf(documents, 2 * count);
        cosines = Arrays.copyOf(cosines, 2 * count);
      }
      documents[count] = document;
      cosines[count] = cosine;
      count++;
    }

    NearInMeaning whole(boolean knowsAll) {
      return new NearInMeaning(
          Arrays.copyOf(documents, count), Arrays.copyOf(cosines, count), knowsAll);
    }
  }
}
