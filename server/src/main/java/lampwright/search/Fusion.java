package lampwright.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.SortedDocValues;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.util.LongHeap;

/**
 * What matches a question with words, and its order: half how well the words match and half how
 * near the meaning is, each as a share of the best (a convex combination of normalised scores: S.
 * Bruch, S. Gai and A. Ingber, "An analysis of fusion functions for hybrid retrieval", 2023).
 */
final class Fusion {

  /**
   * Of a question in everyday words, rightly spelled. Fitted on no set; 0.4 to 0.6 differ little,
   * see benchmarks.md.
   */
  private static final double MEANING_SHARE = 0.5;

  /** So many of those that match best by words are looked at for their meaning too. */
  private static final int MOST_LOOKED_AT = 400;

  private int[] documents = new int[256];
  private float[] scores = new float[256];
  private int count;
  private float best;

  /**
   * The best of both, by which scores become shares. A cursor carries it, so that later pages rank
   * alike whatever is written in between.
   *
   * @param words the largest score by words among all that the asker may see
   * @param meaning the largest cosine among them; 0 where the meaning is not known
   * @param share how much meaning counts, 0 to 1; words count the rest
   */
  record Scale(double words, double meaning, double share) {

    boolean isSound() {
      return words >= 0
          && words < Double.MAX_VALUE
          && meaning >= 0
          && meaning <= 2
          && share >= 0
          && share <= 1;
    }

    double of(double score, double cosine) {
      double byWords = words > 0 ? Math.min(1, score / words) : 0;
      if (meaning <= 0) {
        return byWords;
      }
      return (1 - share) * byWords + share * Math.min(1, cosine / meaning);
    }
  }

  /**
   * How much meaning counts: the less, the more of the question is of the trade, a figure or
   * misspelt, of which the model of sentences makes something else.
   */
  static double share(List<Wish> wishes, List<QueryPlan.Rarity> rarities) {
    int all = 0;
    int understood = 0;
    for (int i = 0; i < wishes.size(); i++) {
      Wish wish = wishes.get(i);
      int words = wish.literal().terms().size() * wish.times();
      all += words;
      understood += wish.everyday() && !rarities.get(i).misspelt() ? words : 0;
    }
    return all == 0 ? 0 : MEANING_SHARE * understood / all;
  }

  /** Takes note of a match that the filters may still hold back. */
  void see(float score) {
    best = Math.max(best, score);
  }

  /** Takes a match that passed all filters. */
  void add(int document, float score) {
    if (count == documents.length) {
      documents = Arrays.copyOf(documents, 2 * count);
      scores = Arrays.copyOf(scores, 2 * count);
    }
    documents[count] = document;
    scores[count] = score;
    count++;
  }

  /** The largest score by words of all that were seen. */
  double best() {
    return best;
  }

  /**
   * The next places of the order.
   *
   * @param size how many at most
   * @param after only places behind this one
   */
  List<Place> page(
      IndexSearcher searcher, Scale scale, NearInMeaning near, int size, Optional<Place> after)
      throws IOException {
    long[] ranks = new long[count];
    for (int i = 0; i < count; i++) {
      ranks[i] = Place.ofScore(scale.of(scores[i], near.nearness(documents[i])));
    }
    long most = after.map(Place::rank).orElse(Long.MAX_VALUE);
    long least = least(ranks, most, size);
    List<Place> places = new ArrayList<>();
    int next = 0;
    for (LeafReaderContext leaf : searcher.getIndexReader().leaves()) {
      SortedDocValues setups = DocValues.getSorted(leaf.reader(), EntryDocument.SETUP);
      int end = leaf.docBase + leaf.reader().maxDoc();
      for (; next < count && documents[next] < end; next++) {
        if (ranks[next] >= least
            && ranks[next] <= most
            && setups.advanceExact(documents[next] - leaf.docBase)) {
          String setup = setups.lookupOrd(setups.ordValue()).utf8ToString();
          places.add(new Place(ranks[next], setup, documents[next]));
        }
      }
    }
    return places.stream()
        .filter(place -> after.isEmpty() || Place.ORDER.compare(place, after.get()) > 0)
        .sorted(Place.ORDER)
        .limit(size)
        .toList();
  }

  /** A rank below which nothing can stand on the page, ties at its start taken into account. */
  private static long least(long[] ranks, long most, int size) {
    LongHeap highest = new LongHeap(size);
    for (long rank : ranks) {
      if (rank < most) {
        highest.insertWithOverflow(rank);
      }
    }
    return highest.size() < size ? Long.MIN_VALUE : highest.top();
  }

  /** The documents that match best by words, ascending by number. */
  int[] bestByWords() {
    if (count <= MOST_LOOKED_AT) {
      return Arrays.copyOf(documents, count);
    }
    float[] sorted = Arrays.copyOf(scores, count);
    Arrays.sort(sorted);
    float least = sorted[count - MOST_LOOKED_AT];
    int[] chosen = new int[count];
    int many = 0;
    for (int i = 0; i < count; i++) {
      if (scores[i] >= least && scores[i] > 0) {
        chosen[many++] = documents[i];
      }
    }
    return Arrays.copyOf(chosen, many);
  }
}
