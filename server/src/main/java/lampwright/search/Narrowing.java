package lampwright.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import lampwright.search.filter.EarthPoint;
import lampwright.search.filter.Filter;
import lampwright.search.filter.Trait;
import org.apache.lucene.document.DoubleField;
import org.apache.lucene.document.LatLonPoint;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.MatchAllDocsQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermInSetQuery;
import org.apache.lucene.util.BytesRef;

/**
 * How the filters of a question are carried out. Those of a trait that is counted must see every
 * setup, since the counts of that trait go beyond its filters; the others go into the query, which
 * then visits less.
 *
 * @param first what every setup passes that is gone through at all
 * @param traversal what the collector does
 * @param ranking where a setup stands that words do not put in order
 */
record Narrowing(List<Filter> first, PageCollector.Traversal traversal, Ranking ranking) {

  private static final double METRES_PER_KM = 1_000;

  static Narrowing of(Question question) {
    List<Filter> first = new ArrayList<>();
    List<Dimension> filtering = new ArrayList<>();
    Map<Trait, List<Filter>> byTrait = byTrait(question.filters());
    byTrait.forEach(
        (trait, filters) -> {
          if (question.facets().contains(trait)) {
            filtering.add(Dimension.of(trait, filters));
          } else {
            first.addAll(filters);
          }
        });
    Ranking ranking =
        switch (question.order()) {
          case BEST -> new Ranking.AsListed();
          case NEAR -> {
            PointDimension points = new PointDimension(byTrait.getOrDefault(Trait.NEAR, List.of()));
            filtering.add(points);
            yield new Ranking.NearestFirst(points);
          }
          case OFF -> new Ranking.LeastOffFirst(question.offs());
        };
    List<Dimension> counting =
        question.facets().stream()
            .filter(trait -> !byTrait.containsKey(trait))
            .map(trait -> Dimension.of(trait, List.of()))
            .toList();
    return new Narrowing(
        List.copyOf(first),
        new PageCollector.Traversal(filtering, question.facets(), counting),
        ranking);
  }

  /** Those of some setups that are gone through. */
  Chosen of(Chosen looked) throws IOException {
    Chosen passing = looked;
    for (Filter filter : first) {
      passing = passing.and(clause(filter));
    }
    return passing;
  }

  static Map<Trait, List<Filter>> byTrait(List<Filter> filters) {
    Map<Trait, List<Filter>> byTrait = new EnumMap<>(Trait.class);
    filters.forEach(
        filter -> byTrait.computeIfAbsent(filter.trait(), _ -> new ArrayList<>()).add(filter));
    return byTrait;
  }

  /** A filter as a query that costs no more than what it lets through. */
  static Query clause(Filter filter) {
    return switch (filter) {
      case Filter.OneOf one -> anyOf(one.trait(), one.words());
      case Filter.NoneOf none ->
          new BooleanQuery.Builder()
              .add(MatchAllDocsQuery.INSTANCE, Occur.FILTER)
              .add(anyOf(none.trait(), none.words()), Occur.MUST_NOT)
              .build();
      case Filter.Range range ->
          DoubleField.newRangeQuery(
              EntryDocument.number(range.trait()), range.least(), range.most());
      case Filter.Buildable _ ->
          throw new IllegalArgumentException("What a kit makes is decided elsewhere.");
      case Filter.Near near -> {
        EarthPoint place = PointDimension.point(near);
        yield LatLonPoint.newDistanceQuery(
            EntryDocument.POINT,
            place.latitudeDeg(),
            place.longitudeDeg(),
            near.km() * METRES_PER_KM);
      }
    };
  }

  private static Query anyOf(Trait trait, List<String> words) {
    return new TermInSetQuery(
        EntryDocument.words(trait),
        words.stream().map(word -> new BytesRef(Filter.key(word))).toList());
  }
}
