package lampwright.tasks;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lampwright.gear.Modifier;
import lampwright.search.FacetCount;
import lampwright.search.Question;
import lampwright.search.Search;
import lampwright.search.SearchResult;
import lampwright.search.filter.Filter;
import lampwright.search.filter.Trait;

/** Filters that find some of the studio's setups but not all, to teach the brackets by. */
final class SearchExamples {

  private static final int MOST = 5;
  private static final double NEAR_KM = 20;

  /** A kind of modifier that hardly any studio is without. */
  private static final String SOFTBOX = DocumentTraits.word(Modifier.Kind.SOFTBOX);

  private static final Set<Trait> COUNTED =
      EnumSet.of(
          Trait.LIGHTS,
          Trait.PLACE_KIND,
          Trait.PLACE,
          Trait.GEAR,
          Trait.SEASON,
          Trait.APERTURE,
          Trait.MOOD);

  private final Search search;
  private final Question everything;
  private final Whereabouts whereabouts;

  /**
   * @param everything the studio's setups as the asker may see them, without words
   */
  SearchExamples(Search search, Question everything, Whereabouts whereabouts) {
    this.search = search;
    this.everything = everything.withFacets(COUNTED).withLimit(1);
    this.whereabouts = whereabouts;
  }

  List<Filter> list() {
    if (!(search.search(everything) instanceof SearchResult.Answer all) || all.total() < 2) {
      return List.of();
    }
    List<Filter> examples = new ArrayList<>();
    for (Filter candidate : candidates(all.facets())) {
      if (examples.size() < MOST && tellsApart(candidate, all.total())) {
        examples.add(candidate);
      }
    }
    return examples;
  }

  private boolean tellsApart(Filter filter, long all) {
    return search.search(everything.withFacets(Set.of()).withFilters(List.of(filter)))
            instanceof SearchResult.Answer some
        && some.total() > 0
        && some.total() < all;
  }

  private List<Filter> candidates(SearchResult.Facets facets) {
    List<Filter> candidates = new ArrayList<>();
    List<FacetCount> lights = facets.of(Trait.LIGHTS);
    if (lights.size() > 1
        && lights.get(0).filter() instanceof Filter.Range from
        && lights.get(1).filter() instanceof Filter.Range to) {
      candidates.add(Filter.Range.between(Trait.LIGHTS, from.least(), to.most()));
    }
    first(facets, Trait.PLACE_KIND).ifPresent(candidates::add);
    facets.of(Trait.PLACE).stream()
        .flatMap(place -> whereabouts.find(place.value(), NEAR_KM).stream())
        .findFirst()
        .ifPresent(candidates::add);
    facets.of(Trait.GEAR).stream()
        .filter(gear -> gear.value().equals(SOFTBOX))
        .findFirst()
        .ifPresent(gear -> candidates.add(Filter.NoneOf.of(Trait.GEAR, gear.value())));
    facets.of(Trait.SEASON).stream()
        .map(FacetCount::filter)
        .reduce((_, last) -> last)
        .ifPresent(candidates::add);
    facets.of(Trait.APERTURE).stream()
        .map(FacetCount::filter)
        .filter(Filter.Range.class::isInstance)
        .map(Filter.Range.class::cast)
        .filter(range -> range.from().isPresent() && range.to().isPresent())
        .findFirst()
        .ifPresent(
            range ->
                candidates.add(
                    Filter.Range.between(
                        Trait.APERTURE, range.from().get().number(), range.to().get().number())));
    List<FacetCount> moods = facets.of(Trait.MOOD);
    if (moods.size() > 1) {
      candidates.add(Filter.OneOf.of(Trait.MOOD, moods.get(0).value(), moods.get(1).value()));
    }
    return candidates;
  }

  private static Optional<Filter> first(SearchResult.Facets facets, Trait trait) {
    return facets.of(trait).stream().map(FacetCount::filter).findFirst();
  }
}
