package lampwright.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import lampwright.search.filter.Trait;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.SortedDocValues;
import org.apache.lucene.search.Scorable;
import org.apache.lucene.search.ScoreMode;
import org.apache.lucene.search.SimpleCollector;

/**
 * Goes once through all setups of a studio that match the text, and comes back with the exact total
 * and the counts, and with a page where nothing but the last change orders them. A studio's
 * catalogue is small enough for exact counting to be cheaper than the bookkeeping of shared facet
 * tables, which would be rebuilt at each refresh.
 */
final class PageCollector extends SimpleCollector {

  /** Those that not every setup passes; then those that are only counted. */
  private final List<Dimension> filtering;

  private final List<Dimension> counting;
  private final boolean[] isCounted;
  private final long[] failedOnly;
  private final Optional<Fusion> byScore;
  private final int size;
  private final Optional<Place> after;
  private final Ranking ranking;
  private final PriorityQueue<Place> best = new PriorityQueue<>(Place.ORDER.reversed());

  private Optional<Scorable> scorer = Optional.empty();
  private SortedDocValues setups = DocValues.emptySorted();
  private int base;

  /** Setups of this segment that passed, to be counted one trait after the other. */
  private final int[] passing = new int[256];

  private int waiting;
  private long total;

  /**
   * What is counted and passed.
   *
   * @param filtering whose filters decide what is found
   * @param counted which of them are counted too
   * @param counting what else is counted
   */
  record Traversal(List<Dimension> filtering, Set<Trait> counted, List<Dimension> counting) {
    Traversal {
      filtering = List.copyOf(filtering);
      counted = Set.copyOf(counted);
      counting = List.copyOf(counting);
    }
  }

  /**
   * @param byScore takes what passes with its score; where there is none, this keeps a page of it,
   *     as the list stands
   * @param ranking the order where words do not give it
   * @param size how many places to keep
   * @param after only places behind this one are kept; all are counted
   */
  PageCollector(
      Traversal traversal,
      Optional<Fusion> byScore,
      Ranking ranking,
      int size,
      Optional<Place> after) {
    this.filtering = traversal.filtering();
    this.counting = traversal.counting();
    this.isCounted = new boolean[filtering.size()];
    this.failedOnly = new long[filtering.size()];
    for (int i = 0; i < isCounted.length; i++) {
      isCounted[i] = traversal.counted().contains(filtering.get(i).trait());
    }
    this.byScore = byScore;
    this.ranking = ranking;
    this.size = size;
    this.after = after;
  }

  @Override
  protected void doSetNextReader(LeafReaderContext leaf) throws IOException {
    base = leaf.docBase;
    ranking.enter(leaf.reader());
    setups = DocValues.getSorted(leaf.reader(), EntryDocument.SETUP);
    for (Dimension dimension : filtering) {
      dimension.enter(leaf.reader());
    }
    for (Dimension dimension : counting) {
      dimension.enter(leaf.reader());
    }
  }

  @Override
  public void setScorer(Scorable current) {
    scorer = Optional.of(current);
  }

  @Override
  public void collect(int document) throws IOException {
    boolean passes = countAndPass(document);
    if (byScore.isPresent()) {
      score(byScore.get(), document, passes);
    } else if (passes) {
      keep(document);
    }
  }

  /** Counts it where it counts, and tells whether it passes every filter. */
  private boolean countAndPass(int document) throws IOException {
    int failed = -1;
    for (int i = 0; i < filtering.size(); i++) {
      if (!filtering.get(i).passes(document)) {
        if (failed >= 0) {
          return false;
        }
        failed = i;
      }
    }
    if (failed >= 0) {
      // Each trait's values are counted under the filters of the other traits.
      failedOnly[failed]++;
      if (isCounted[failed]) {
        filtering.get(failed).count();
      }
      return false;
    }
    for (int i = 0; i < filtering.size(); i++) {
      if (isCounted[i]) {
        filtering.get(i).count();
      }
    }
    passing[waiting++] = document;
    if (waiting == passing.length) {
      countWaiting();
    }
    total++;
    return true;
  }

  private void countWaiting() throws IOException {
    for (Dimension dimension : counting) {
      dimension.countEach(passing, waiting);
    }
    waiting = 0;
  }

  @Override
  public void finish() throws IOException {
    countWaiting();
  }

  private void keep(int document) throws IOException {
    long rank = ranking.of(document);
    if (best.size() == size && rank < best.element().rank()) {
      return;
    }
    if (after.isPresent() && rank > after.get().rank()) {
      return;
    }
    if (!setups.advanceExact(document)) {
      return;
    }
    String setup = setups.lookupOrd(setups.ordValue()).utf8ToString();
    Place found = new Place(rank, setup, base + document);
    if (after.isPresent() && Place.ORDER.compare(found, after.get()) <= 0) {
      return;
    }
    best.add(found);
    if (best.size() > size) {
      best.remove();
    }
  }

  private void score(Fusion fusion, int document, boolean passes) throws IOException {
    float score = scorer.isPresent() ? scorer.get().score() : 0;
    fusion.see(score);
    if (passes) {
      fusion.add(base + document, score);
    }
  }

  @Override
  public ScoreMode scoreMode() {
    return byScore.isPresent() ? ScoreMode.COMPLETE : ScoreMode.COMPLETE_NO_SCORES;
  }

  long total() {
    return total;
  }

  /** The kept places, best first. */
  List<Place> page() {
    List<Place> page = new ArrayList<>(best);
    Collections.sort(page, Place.ORDER);
    return page;
  }

  /** How many setups fail the filters of this trait alone. */
  long failedOnly(Dimension dimension) {
    return failedOnly[filtering.indexOf(dimension)];
  }

  SearchResult.Facets facets() throws IOException {
    Map<Trait, List<FacetCount>> counts = new EnumMap<>(Trait.class);
    for (int i = 0; i < filtering.size(); i++) {
      filtering.get(i).leave();
      if (isCounted[i]) {
        counts.put(filtering.get(i).trait(), filtering.get(i).counts());
      }
    }
    for (Dimension dimension : counting) {
      dimension.leave();
      counts.put(dimension.trait(), dimension.counts());
    }
    return new SearchResult.Facets(counts);
  }
}
