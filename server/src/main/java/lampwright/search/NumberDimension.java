package lampwright.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import lampwright.search.filter.Filter;
import lampwright.search.filter.FilterWriter;
import lampwright.search.filter.Trait;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.LeafReader;
import org.apache.lucene.index.SortedNumericDocValues;
import org.apache.lucene.util.NumericUtils;

/** A trait with a number. */
final class NumberDimension implements Dimension {

  private final Trait trait;

  /** What passes all filters, as the index keeps numbers, so that none needs to be decoded. */
  private final long least;

  private final long most;

  private final Map<Long, Long> counts = new HashMap<>();
  private SortedNumericDocValues values = DocValues.emptySortedNumeric();
  private final boolean isFiltered;
  private boolean known;
  private long number;

  NumberDimension(Trait trait, List<Filter> filters) {
    this.trait = trait;
    this.isFiltered = !filters.isEmpty();
    double from = Double.NEGATIVE_INFINITY;
    double to = Double.POSITIVE_INFINITY;
    for (Filter filter : filters) {
      if (!(filter instanceof Filter.Range range)) {
        throw new IllegalArgumentException(trait.word() + " has no such filter.");
      }
      from = Math.max(from, range.least());
      to = Math.min(to, range.most());
    }
    least = NumericUtils.doubleToSortableLong(from);
    most = NumericUtils.doubleToSortableLong(to);
  }

  @Override
  public Trait trait() {
    return trait;
  }

  @Override
  public void enter(LeafReader reader) throws IOException {
    values = DocValues.getSortedNumeric(reader, EntryDocument.number(trait));
  }

  @Override
  public boolean passes(int document) throws IOException {
    known = values.advanceExact(document);
    if (!known) {
      return !isFiltered;
    }
    number = values.nextValue();
    return !isFiltered || (number >= least && number <= most);
  }

  @Override
  public void count() {
    if (known) {
      counts.merge(number, 1L, Long::sum);
    }
  }

  @Override
  public void leave() {}

  /** How many setups there are of each number, the smallest first. */
  SortedMap<Double, Long> byNumber() {
    SortedMap<Double, Long> byNumber = new TreeMap<>();
    counts.forEach(
        (sortable, count) -> byNumber.put(NumericUtils.sortableLongToDouble(sortable), count));
    return byNumber;
  }

  @Override
  public List<FacetCount> counts() {
    Map<Filter.Range, Long> ranges = new LinkedHashMap<>();
    byNumber().forEach((value, count) -> ranges.merge(trait.rangeAround(value), count, Long::sum));
    List<FacetCount> all = new ArrayList<>();
    ranges.forEach(
        (range, count) ->
            all.add(
                new FacetCount(
                    FilterWriter.bounds(range), FilterWriter.choice(range), range, count)));
    return all;
  }
}
