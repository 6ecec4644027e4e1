package lampwright.search;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
 * @param query what every setup passes that is looked at at all
 * @param traversal what the collector does
 * @param nearestFirst what distances come from where they are the order
 */
record Narrowing(
    Query query, PageCollector.Traversal traversal, Optional<PointDimension> nearestFirst) {

  private static final double METRES_PER_KM = 1_000;

  static Narrowing of(Question question) {
    BooleanQuery.Builder query = new BooleanQuery.Builder();
    query.add(MatchAllDocsQuery.INSTANCE, Occur.FILTER);
    List<Dimension> filtering = new ArrayList<>();
    Map<Trait, List<Filter>> byTrait = byTrait(question.filters());
    byTrait.forEach(
        (trait, filters) -> {
          if (question.facets().contains(trait)) {
            filtering.add(Dimension.of(trait, filters));
          } else {
            filters.forEach(filter -> query.add(clause(filter), Occur.FILTER));
          }
        });
    Optional<PointDimension> nearestFirst = Optional.empty();
    if (question.order() == Question.Order.NEAR) {
      PointDimension points = new PointDimension(byTrait.getOrDefault(Trait.NEAR, List.of()));
      nearestFirst = Optional.of(points);
      filtering.add(points);
    }
    List<Dimension> counting =
        question.facets().stream()
            .filter(trait -> !byTrait.containsKey(trait))
            .map(trait -> Dimension.of(trait, List.of()))
            .toList();
    return new Narrowing(
        query.build(),
        new PageCollector.Traversal(filtering, question.facets(), counting),
        nearestFirst);
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
