package lampwright.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import lampwright.search.filter.Filter;
import lampwright.search.filter.FilterWriter;
import lampwright.search.filter.Trait;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.LeafReader;
import org.apache.lucene.index.NumericDocValues;
import org.apache.lucene.index.SortedNumericDocValues;
import org.apache.lucene.util.NumericUtils;

/** A trait with a number. */
final class NumberDimension implements Dimension {

  private final Trait trait;

  /** What passes all filters, as the index keeps numbers, so that none needs to be decoded. */
  private final long least;

  private final long most;

  private final Tallies counts = new Tallies();
  private SortedNumericDocValues values = DocValues.emptySortedNumeric();

  /** The same where no setup has more than one. */
  private Optional<NumericDocValues> single = Optional.empty();

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
    single = Optional.ofNullable(DocValues.unwrapSingleton(values));
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
      counts.add(number);
    }
  }

  @Override
  public void countEach(int[] documents, int many) throws IOException {
    if (single.isEmpty() || isFiltered) {
      Dimension.super.countEach(documents, many);
      return;
    }
    NumericDocValues each = single.get();
    for (int i = 0; i < many; i++) {
      if (each.advanceExact(documents[i])) {
        counts.add(each.longValue());
      }
    }
  }

  @Override
  public void leave() {}

  /** How many setups there are of each number, the smallest first. */
  SortedMap<Double, Long> byNumber() {
    return counts.byNumber();
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
