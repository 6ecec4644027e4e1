package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lampwright.search.Question;
import lampwright.search.filter.Filter;
import lampwright.search.filter.Trait;

/**
 * A search as the find page's addresses say it: {@code ?q=…&filter=…&filter=…}.
 *
 * @param text words, and brackets that could not be read
 * @param order of what is found; the usual one where what it goes by was taken off
 * @param like what setups should be like, as the address says it; then the most alike come first
 */
record FindAddress(
    String path,
    String text,
    List<Filter> filters,
    boolean archived,
    Question.Order order,
    Optional<FindPage.Kept> like) {

  FindAddress {
    filters = List.copyOf(filters);
    order = orders(filters, like).contains(order) ? order : Question.Order.BEST;
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
    return new FindAddress(path, text, others, archived, order, like);
  }

  FindAddress withText(String other) {
    return new FindAddress(path, other, filters, archived, order, like);
  }

  FindAddress withOrder(Question.Order wanted) {
    return new FindAddress(path, text, filters, archived, wanted, like);
  }

  FindAddress withoutLike() {
    return new FindAddress(path, text, filters, archived, order, Optional.empty());
  }

  /** The orders that these filters allow. */
  List<Question.Order> orders() {
    return orders(filters, like);
  }

  private static List<Question.Order> orders(List<Filter> filters, Optional<FindPage.Kept> like) {
    List<Question.Order> orders = new ArrayList<>(List.of(Question.Order.BEST));
    if (like.isPresent()) {
      return orders;
    }
    if (filters.stream().anyMatch(Filter.Near.class::isInstance)) {
      orders.add(Question.Order.NEAR);
    }
    if (filters.stream().anyMatch(Filter.Buildable.class::isInstance)) {
      orders.add(Question.Order.OFF);
    }
    return orders;
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
    if (order != Question.Order.BEST) {
      kept.add(new FindPage.Kept("sort", order.name().toLowerCase(Locale.ROOT)));
    }
    like.ifPresent(kept::add);
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
