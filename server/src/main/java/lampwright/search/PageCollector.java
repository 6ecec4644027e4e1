package lampwright.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.NumericDocValues;
import org.apache.lucene.index.SortedDocValues;
import org.apache.lucene.search.Scorable;
import org.apache.lucene.search.ScoreMode;
import org.apache.lucene.search.SimpleCollector;

/**
 * Goes once through all setups of a studio that match the text, and comes back with a page, the
 * exact total and the counts. A studio's catalogue is small enough for exact counting to be cheaper
 * than the bookkeeping of shared facet tables, which would be rebuilt at each refresh.
 */
final class PageCollector extends SimpleCollector {

  /** Scores are compared in steps of this size, so that the order of a sum cannot move a page. */
  private static final double STEPS = 10_000;

  /** A place in the order: rank down, then id up. */
  record Place(long rank, String setup, int document) {
    static final Comparator<Place> ORDER =
        Comparator.comparingLong(Place::rank).reversed().thenComparing(Place::setup);

    double score() {
      return rank / STEPS;
    }
  }

  private final Dimension moods;
  private final Dimension places;
  private final Dimension kinds;
  private final Dimension states;
  private final boolean byScore;
  private final int size;
  private final Optional<Place> after;
  private final PriorityQueue<Place> best = new PriorityQueue<>(Place.ORDER.reversed());

  private Optional<Scorable> scorer = Optional.empty();
  private NumericDocValues changes = DocValues.emptyNumeric();
  private SortedDocValues setups = DocValues.emptySorted();
  private int base;
  private long total;

  /**
   * @param byScore by score, or else newest change first
   * @param size how many places to keep
   * @param after only places behind this one are kept; all are counted
   */
  PageCollector(
      Dimension moods,
      Dimension places,
      Dimension kinds,
      Dimension states,
      boolean byScore,
      int size,
      Optional<Place> after) {
    this.moods = moods;
    this.places = places;
    this.kinds = kinds;
    this.states = states;
    this.byScore = byScore;
    this.size = size;
    this.after = after;
  }

  @Override
  protected void doSetNextReader(LeafReaderContext leaf) throws IOException {
    base = leaf.docBase;
    changes = DocValues.getNumeric(leaf.reader(), EntryDocument.CHANGED);
    setups = DocValues.getSorted(leaf.reader(), EntryDocument.SETUP);
    moods.enter(leaf.reader());
    places.enter(leaf.reader());
    kinds.enter(leaf.reader());
    states.enter(leaf.reader());
  }

  @Override
  public void setScorer(Scorable current) {
    scorer = Optional.of(current);
  }

  @Override
  public void collect(int document) throws IOException {
    boolean mood = moods.passes(document);
    boolean place = places.passes(document);
    boolean kind = kinds.passes(document);
    boolean state = states.passes(document);
    // Each filter's values are counted under the other filters.
    int passed = (mood ? 1 : 0) + (place ? 1 : 0) + (kind ? 1 : 0) + (state ? 1 : 0);
    countIf(passed - (mood ? 1 : 0) == 3, moods);
    countIf(passed - (place ? 1 : 0) == 3, places);
    countIf(passed - (kind ? 1 : 0) == 3, kinds);
    countIf(passed - (state ? 1 : 0) == 3, states);
    if (passed == 4) {
      total++;
      keep(document);
    }
  }

  private static void countIf(boolean othersPass, Dimension dimension) {
    if (othersPass) {
      dimension.count();
    }
  }

  private void keep(int document) throws IOException {
    long rank = rank(document);
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

  private long rank(int document) throws IOException {
    if (byScore) {
      return scorer.isPresent() ? Math.round(scorer.get().score() * STEPS) : 0;
    }
    return changes.advanceExact(document) ? changes.longValue() : 0;
  }

  @Override
  public ScoreMode scoreMode() {
    return byScore ? ScoreMode.COMPLETE : ScoreMode.COMPLETE_NO_SCORES;
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

  SearchResult.Facets facets() throws IOException {
    moods.leave();
    places.leave();
    kinds.leave();
    states.leave();
    return new SearchResult.Facets(
        moods.counts(), places.counts(), kinds.counts(), states.counts());
  }
}
