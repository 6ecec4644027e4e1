package lampwright.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import lampwright.search.filter.Filter;
import lampwright.search.filter.Trait;
import org.apache.lucene.search.Query;

/**
 * Explains an empty result: what would be found if one filter was widened or left out. Every total
 * is counted, by going once more through the setups that the text finds.
 */
final class Loosening {

  private static final int MOST_TRAITS = 3;
  private static final int MOST_WORDS = 3;

  /** Distances as people say them. Beyond the last one the filter is left out. */
  private static final double[] ROUND_KM = {
    0.1, 0.2, 0.5, 1, 2, 3, 5, 8, 10, 15, 20, 25, 30, 45, 60, 80, 100, 150, 200, 300, 450, 600, 800,
    1_000, 1_500, 2_000, 3_000, 4_500, 6_000, 8_000, 10_000, 15_000, 20_000
  };

  private final Question question;
  private final Chosen looked;
  private final Query words;

  /**
   * @param looked what the asker may see and looks at, without text and filters
   * @param words the query of the text; everything where there is none
   */
  Loosening(Question question, Chosen looked, Query words) {
    this.question = question;
    this.looked = looked;
    this.words = words;
  }

  List<Instead> list() throws IOException {
    if (question.filters().isEmpty()) {
      return List.of();
    }
    Map<Trait, List<Filter>> byTrait = Narrowing.byTrait(question.filters());
    List<Dimension> dimensions = new ArrayList<>();
    byTrait.forEach((trait, filters) -> dimensions.add(Dimension.of(trait, filters)));
    PageCollector found =
        new PageCollector(
            new PageCollector.Traversal(dimensions, byTrait.keySet(), List.of()),
            Optional.empty(),
            new Ranking.AsListed(),
            1,
            Optional.empty());
    looked.collect(words, found);
    for (Dimension dimension : dimensions) {
      dimension.leave();
    }
    List<Instead> all = new ArrayList<>();
    dimensions.stream()
        .filter(dimension -> found.failedOnly(dimension) > 0)
        // Who sees only what all may see is told nothing of states.
        .filter(dimension -> dimension.trait() != Trait.STATE || !question.standing().onlyForAll())
        .sorted(Comparator.comparingLong(found::failedOnly).reversed())
        .limit(MOST_TRAITS)
        .forEach(
            dimension -> {
              List<Filter> filters = byTrait.getOrDefault(dimension.trait(), List.of());
              all.addAll(of(dimension, filters, found.failedOnly(dimension)));
            });
    addWithoutWords(all);
    if (all.isEmpty() && byTrait.size() > 1) {
      long total = looked.count(words);
      if (total > 0) {
        all.add(
            new Instead(
                question.filters(),
                Optional.empty(),
                question.text(),
                question.text(),
                List.of(),
                total));
      }
    }
    return all;
  }

  private void addWithoutWords(List<Instead> all) throws IOException {
    if (question.text().isBlank()) {
      return;
    }
    Chosen passing = looked;
    for (Filter filter : question.filters()) {
      passing = passing.and(Narrowing.clause(filter));
    }
    long total = passing.count();
    if (total > 0) {
      all.add(
          new Instead(List.of(), Optional.empty(), question.text(), "", question.filters(), total));
    }
  }

  private List<Instead> of(Dimension dimension, List<Filter> filters, long withoutThem) {
    List<Instead> offers = new ArrayList<>();
    if (filters.size() == 1) {
      switch (dimension) {
        case NumberDimension numbers ->
            addRanges(offers, (Filter.Range) filters.getFirst(), numbers.byNumber());
        case PointDimension points ->
            addDistance(offers, (Filter.Near) filters.getFirst(), points.nearestFirst());
        case WordDimension ways -> addWords(offers, filters.getFirst(), ways.counts());
      }
    }
    if (offers.stream().noneMatch(offer -> offer.total() == withoutThem)) {
      offers.add(instead(filters, Optional.empty(), withoutThem));
    }
    return offers;
  }

  private void addRanges(
      List<Instead> offers, Filter.Range range, SortedMap<Double, Long> numbers) {
    for (boolean up : new boolean[] {false, true}) {
      SortedMap<Double, Long> beyond =
          up ? numbers.tailMap(Math.nextUp(range.most())) : numbers.headMap(range.least());
      if (!beyond.isEmpty()) {
        double nearest = up ? beyond.firstKey() : beyond.lastKey();
        Filter.Range wider =
            range.isExact()
                ? Filter.Range.exactly(range.trait(), nearest)
                : widened(range, nearest, up);
        offers.add(instead(List.of(range), Optional.of(wider), count(numbers, wider)));
      }
    }
  }

  private static long count(SortedMap<Double, Long> numbers, Filter.Range range) {
    return numbers.subMap(range.least(), Math.nextUp(range.most())).values().stream()
        .mapToLong(Long::longValue)
        .sum();
  }

  private static Filter.Range widened(Filter.Range range, double nearest, boolean up) {
    Optional<Filter.Bound> bound = Optional.of(Filter.Bound.including(nearest));
    return up
        ? new Filter.Range(range.trait(), range.from(), bound)
        : new Filter.Range(range.trait(), bound, range.to());
  }

  private void addDistance(List<Instead> offers, Filter.Near near, double[] km) {
    for (double round : ROUND_KM) {
      if (round > near.km() && km.length > 0 && km[0] <= round) {
        long total = Arrays.stream(km).takeWhile(distance -> distance <= round).count();
        offers.add(instead(List.of(near), Optional.of(near.withKm(round)), total));
        return;
      }
    }
  }

  private void addWords(List<Instead> offers, Filter filter, List<FacetCount> counts) {
    if (filter instanceof Filter.OneOf) {
      counts.stream()
          .sorted(Comparator.comparingLong(FacetCount::count).reversed())
          .limit(MOST_WORDS)
          .forEach(
              count ->
                  offers.add(instead(List.of(filter), Optional.of(count.filter()), count.count())));
    }
  }

  private Instead instead(List<Filter> without, Optional<Filter> with, long total) {
    List<Filter> filters = new ArrayList<>(question.filters());
    filters.removeAll(without);
    filters.addAll(with.stream().toList());
    return new Instead(without, with, question.text(), question.text(), filters, total);
  }
}
