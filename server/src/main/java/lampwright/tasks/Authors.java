package lampwright.tasks;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import lampwright.people.FormerName;
import lampwright.people.PersonId;
import lampwright.search.FacetCount;
import lampwright.search.Instead;
import lampwright.search.SearchResult;
import lampwright.search.filter.Filter;
import lampwright.search.filter.Trait;

/**
 * Who made the setups, as the index knows them and as people do: there by ids, here by the names
 * that they have now. Several people may have one name; it then means all of them.
 */
record Authors(Map<PersonId, String> names) {

  Authors {
    names = Map.copyOf(names);
  }

  /** A filter by names as one by ids; a name that nobody has stays and finds nothing. */
  Filter toIds(Filter filter) {
    return translated(filter, this::idsOf);
  }

  /** A filter by ids as one by names. */
  Filter toNames(Filter filter) {
    return translated(filter, id -> List.of(nameOf(id)));
  }

  /**
   * An offer by ids as one by names.
   *
   * @param asked the filters of the question as they were asked, which stay as they are
   */
  Instead toNames(Instead instead, List<Filter> asked) {
    Map<Filter, Filter> askedById = new HashMap<>();
    asked.forEach(filter -> askedById.putIfAbsent(toIds(filter), filter));
    return instead.with(
        filter -> Optional.ofNullable(askedById.get(filter)).orElseGet(() -> toNames(filter)));
  }

  /** Counts of people with one name are added up. */
  SearchResult.Facets toNames(SearchResult.Facets facets) {
    if (facets.of(Trait.AUTHOR).isEmpty()) {
      return facets;
    }
    Map<String, Long> byName = new LinkedHashMap<>();
    facets
        .of(Trait.AUTHOR)
        .forEach(count -> byName.merge(nameOf(count.value()), count.count(), Long::sum));
    List<FacetCount> named = new ArrayList<>();
    byName.forEach(
        (name, count) ->
            named.add(new FacetCount(name, name, Filter.OneOf.of(Trait.AUTHOR, name), count)));
    Map<Trait, List<FacetCount>> all = new LinkedHashMap<>(facets.counts());
    all.put(Trait.AUTHOR, List.copyOf(named));
    return new SearchResult.Facets(all);
  }

  private interface Translation {
    List<String> of(String word);
  }

  private static Filter translated(Filter filter, Translation translation) {
    if (filter.trait() != Trait.AUTHOR) {
      return filter;
    }
    UnaryOperator<List<String>> each =
        words ->
            words.stream()
                .flatMap(word -> translation.of(word).stream())
                .distinct()
                .limit(Filter.MOST_WORDS)
                .toList();
    return switch (filter) {
      case Filter.OneOf one -> new Filter.OneOf(Trait.AUTHOR, each.apply(one.words()));
      case Filter.NoneOf none -> new Filter.NoneOf(Trait.AUTHOR, each.apply(none.words()));
      case Filter.Range _, Filter.Near _, Filter.Buildable _ -> filter;
    };
  }

  private List<String> idsOf(String name) {
    String key = Filter.key(name);
    List<String> ids =
        names.entrySet().stream()
            .filter(person -> Filter.key(person.getValue()).equals(key))
            .map(person -> person.getKey().text())
            .toList();
    return ids.isEmpty() ? List.of(name) : ids;
  }

  private String nameOf(String id) {
    return names.entrySet().stream()
        .filter(person -> person.getKey().text().equals(id))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElse(FormerName.UNNAMED);
  }
}
