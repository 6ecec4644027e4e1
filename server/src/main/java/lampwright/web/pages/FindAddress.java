package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import lampwright.search.filter.Filter;
import lampwright.search.filter.Trait;

/**
 * A search as the find page's addresses say it: {@code ?q=…&filter=…&filter=…}.
 *
 * @param text words, and brackets that could not be read
 * @param nearest whether the nearest come first
 */
record FindAddress(
    String path, String text, List<Filter> filters, boolean archived, boolean nearest) {

  FindAddress {
    filters = List.copyOf(filters);
  }

  FindAddress with(Filter filter) {
    List<Filter> all = new ArrayList<>(filters);
    all.add(filter);
    return withFilters(all);
  }

  FindAddress without(Filter filter) {
    return withFilters(filters.stream().filter(other -> !other.equals(filter)).toList());
  }

  FindAddress withoutTrait(Trait trait) {
    return withFilters(filters.stream().filter(other -> other.trait() != trait).toList());
  }

  FindAddress withFilters(List<Filter> others) {
    boolean still = nearest && others.stream().anyMatch(Filter.Near.class::isInstance);
    return new FindAddress(path, text, others, archived, still);
  }

  FindAddress withText(String other) {
    return new FindAddress(path, other, filters, archived, nearest);
  }

  FindAddress withNearest(boolean wanted) {
    return new FindAddress(path, text, filters, archived, wanted);
  }

  /** The words of a trait of which a setup must have one. */
  List<String> chosen(Trait trait) {
    return filters.stream()
        .filter(filter -> filter.trait() == trait && filter instanceof Filter.OneOf)
        .flatMap(filter -> ((Filter.OneOf) filter).words().stream())
        .distinct()
        .toList();
  }

  /** The search with a word chosen too, or not any more. */
  FindAddress toggled(Trait trait, String word) {
    String key = Filter.key(word);
    boolean active = chosen(trait).stream().anyMatch(one -> Filter.key(one).equals(key));
    List<Filter> all = new ArrayList<>();
    boolean joined = false;
    for (Filter filter : filters) {
      if (filter.trait() == trait && filter instanceof Filter.OneOf one) {
        List<String> words = new ArrayList<>(one.words());
        words.removeIf(other -> Filter.key(other).equals(key));
        if (!active && !joined && words.size() < Filter.MOST_WORDS) {
          words.add(word);
          joined = true;
        }
        if (!words.isEmpty()) {
          all.add(new Filter.OneOf(trait, words));
        }
      } else {
        all.add(filter);
      }
    }
    if (!active && !joined) {
      all.add(Filter.OneOf.of(trait, word));
    }
    return withFilters(all);
  }

  /** What the search box sends along. */
  List<FindPage.Kept> kept() {
    List<FindPage.Kept> kept = new ArrayList<>();
    filters.forEach(filter -> kept.add(new FindPage.Kept("filter", filter.bracket())));
    if (archived) {
      kept.add(new FindPage.Kept("archived", "true"));
    }
    if (nearest) {
      kept.add(new FindPage.Kept("sort", "near"));
    }
    return kept;
  }

  Address address() {
    Address address = Address.of(path);
    if (!text.isEmpty()) {
      address = address.with("q", text);
    }
    for (FindPage.Kept part : kept()) {
      address = address.with(part.name(), part.value());
    }
    return address;
  }

  @Override
  public String toString() {
    return address().toString();
  }
}
