package lampwright.search;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import lampwright.search.filter.Filter;
import lampwright.search.filter.FilterWriter;
import lampwright.search.filter.Trait;

/**
 * Another question that finds something where one found nothing.
 *
 * @param lacking the filters that it has no more
 * @param offered the filter that it has for them; absent where it has none
 * @param asked the text of the question that found nothing
 * @param text of the other question
 * @param filters all filters of the other question
 * @param total how many it finds
 */
public record Instead(
    List<Filter> lacking,
    Optional<Filter> offered,
    String asked,
    String text,
    List<Filter> filters,
    long total) {

  public Instead {
    lacking = List.copyOf(lacking);
    filters = List.copyOf(filters);
  }

  /** What there is none of: {@code No setup within 20 km of Old pier}. */
  public String lack() {
    if (lacking.isEmpty()) {
      return "No such setup says “" + asked + "”";
    }
    if (isOfManyTraits()) {
      return "No setup has all of these marks";
    }
    return "No setup "
        + lacking.stream().map(FilterWriter::phrase).collect(Collectors.joining(" and "));
  }

  /** What there is: {@code within 45 km}. */
  public String offer() {
    if (lacking.isEmpty()) {
      return "without these words";
    }
    if (offered.isEmpty()) {
      return isOfManyTraits() ? "without any" : "without this mark";
    }
    return switch (offered.get()) {
      case Filter.Near near -> "within " + FilterWriter.number(near.km()) + " km";
      case Filter.Buildable buildable -> "within " + FilterWriter.stops(buildable.stops());
      case Filter.Range range when range.isExact() && range.trait() == Trait.LIGHTS ->
          "with " + FilterWriter.bounds(range);
      case Filter filter -> FilterWriter.phrase(filter);
    };
  }

  /** Both in one sentence. */
  public String words() {
    return lack() + "; " + total + " " + offer() + ".";
  }

  /** The same with each filter put in other words. */
  public Instead with(UnaryOperator<Filter> translation) {
    return new Instead(
        lacking.stream().map(translation).toList(),
        offered.map(translation),
        asked,
        text,
        filters.stream().map(translation).toList(),
        total);
  }

  /** Whether what is lacking is of several traits. */
  public boolean isOfManyTraits() {
    return lacking.stream().map(Filter::trait).distinct().count() > 1;
  }
}
