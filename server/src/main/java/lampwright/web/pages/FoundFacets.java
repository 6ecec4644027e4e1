package lampwright.web.pages;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import lampwright.search.FacetCount;
import lampwright.search.SearchResult;
import lampwright.search.filter.Filter;
import lampwright.search.filter.Trait;
import lampwright.wording.Wording;

/** The ways to narrow a list, from the counts of a search and the filters that hold. */
final class FoundFacets {

  /** Shown at once; the others wait until they are asked for. */
  private static final List<Trait> TELLING =
      List.of(Trait.MOOD, Trait.PLACE_KIND, Trait.LIGHTS, Trait.SEASON, Trait.STATE);

  /** Every trait that is counted on the page. */
  static final Set<Trait> COUNTED =
      Arrays.stream(Trait.values())
          .filter(Trait::isCounted)
          .collect(Collectors.toCollection(() -> EnumSet.noneOf(Trait.class)));

  private static final int MOST_CHOICES = 10;

  private final FindAddress asked;
  private final SearchResult.Facets counts;
  private final long total;
  private final FilterWords words;

  FoundFacets(FindAddress asked, SearchResult.Facets counts, long total, Wording words) {
    this.asked = asked;
    this.counts = counts;
    this.total = total;
    this.words = new FilterWords(words);
  }

  List<Facet> telling() {
    return TELLING.stream().map(this::facet).filter(this::isWorthShowing).toList();
  }

  List<Facet> others() {
    return Arrays.stream(Trait.values())
        .filter(trait -> !TELLING.contains(trait))
        .map(this::facet)
        .filter(this::isWorthShowing)
        .toList();
  }

  /** A single value that all have says nothing that one could choose. */
  private boolean isWorthShowing(Facet facet) {
    return facet.choices().stream().anyMatch(c -> c.active() || c.count() < total)
        || facet.choices().size() > 1;
  }

  private Facet facet(Trait trait) {
    return new Facet(
        words.heading(trait), (trait.kind() == Trait.Kind.NUMBER ? numbers(trait) : words(trait)));
  }

  private List<Facet.Choice> numbers(Trait trait) {
    List<Facet.Choice> choices = new ArrayList<>();
    for (FacetCount count : counts.of(trait)) {
      boolean active = asked.filters().contains(count.filter());
      FindAddress other =
          active ? asked.without(count.filter()) : asked.withoutTrait(trait).with(count.filter());
      choices.add(
          new Facet.Choice(
              number(count), Math.toIntExact(count.count()), other.toString(), active));
    }
    return choices;
  }

  private String number(FacetCount count) {
    return count.filter() instanceof Filter.Range range ? words.choice(range) : count.label();
  }

  /** What is chosen, even where it now leads to nothing, and the largest counts. */
  private List<Facet.Choice> words(Trait trait) {
    List<String> chosen = asked.chosen(trait);
    Map<String, Facet.Choice> choices = new LinkedHashMap<>();
    for (FacetCount count : counts.of(trait)) {
      choices.put(Filter.key(count.value()), choice(trait, count.value(), count.count()));
    }
    List<Facet.Choice> shown = new ArrayList<>();
    for (String word : chosen) {
      Facet.Choice known = choices.remove(Filter.key(word));
      shown.add(known != null ? known : choice(trait, word, 0));
    }
    choices.values().stream().limit(MOST_CHOICES).forEach(shown::add);
    return shown;
  }

  private Facet.Choice choice(Trait trait, String word, long count) {
    boolean active = asked.chosen(trait).stream().anyMatch(one -> isSame(one, word));
    return new Facet.Choice(
        words.value(trait, word),
        Math.toIntExact(count),
        asked.toggled(trait, word).toString(),
        active);
  }

  private static boolean isSame(String one, String other) {
    return Filter.key(one).equals(Filter.key(other));
  }
}
