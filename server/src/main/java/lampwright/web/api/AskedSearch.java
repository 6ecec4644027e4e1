package lampwright.web.api;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import lampwright.document.Problem;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.search.Question;
import lampwright.search.filter.Asked;
import lampwright.search.filter.Filter;
import lampwright.search.filter.FilterReader;
import lampwright.search.filter.ReadFilter;
import lampwright.search.filter.Trait;

/**
 * What an address asks for: the words of {@code q}, the filters of its brackets, of {@code
 * ?filter=} and of the names that some traits have of their own ({@code mood}, {@code place},
 * {@code place_kind}, {@code state}).
 *
 * @param words without brackets
 * @param faulty brackets of {@code q} that say nothing that is known, as they were written
 * @param filters with their places
 * @param faults what is wrong, each at its name in the address
 */
public record AskedSearch(String words, String faulty, List<Filter> filters, List<Fault> faults) {

  static final String TEXT = "q";
  static final String FILTER = "filter";
  static final String MOOD = "mood";
  static final String PLACE = "place";
  static final String PLACE_KIND = "place_kind";
  static final String STATE = "state";

  public AskedSearch {
    filters = List.copyOf(filters);
    faults = List.copyOf(faults);
  }

  /** Something that cannot be asked so. */
  public record Fault(String pointer, Said line) {}

  /** What is wrong, as programs are told. */
  public List<Problem> problems() {
    return faults.stream()
        .map(fault -> new Problem(fault.pointer(), InEnglish.say(fault.line())))
        .toList();
  }

  /** A filter and where the address has it. */
  private record Placed(Filter filter, String name) {}

  /**
   * Reads it.
   *
   * @param locate looks up the places of filters, one answer for each
   */
  public static AskedSearch of(Context context, Function<List<Filter>, List<ReadFilter>> locate) {
    return of(context.queryParamMap(), locate);
  }

  /**
   * Reads one that stands somewhere else than in the address.
   *
   * @param parts its parts by name
   * @param locate looks up the places of filters, one answer for each
   */
  public static AskedSearch of(
      Map<String, List<String>> parts, Function<List<Filter>, List<ReadFilter>> locate) {
    List<Fault> faults = new ArrayList<>();
    List<Placed> placed = new ArrayList<>();
    Asked asked = Asked.of(first(parts, TEXT).orElse(""));
    asked.filters().forEach(filter -> placed.add(new Placed(filter, TEXT)));
    asked.unclear().forEach(one -> faults.add(new Fault("/" + TEXT, one.message())));
    parts.getOrDefault(FILTER, List.of()).stream()
        .filter(content -> !content.isBlank())
        .forEach(content -> read(content, placed, faults));
    readOwnNames(parts, placed, faults);
    if (placed.size() > Question.MOST_FILTERS) {
      faults.add(
          new Fault(
              "/" + FILTER,
              Said.of(
                  "finding.fault.mostFilters",
                  Filling.number(placed.size(), 0),
                  Filling.number(Question.MOST_FILTERS, 0))));
      placed.clear();
    }
    return new AskedSearch(
        asked.words(),
        asked.unclear().stream().map(Asked.Unclear::bracket).collect(Collectors.joining(" ")),
        located(placed, locate, faults),
        faults);
  }

  private static void read(String content, List<Placed> placed, List<Fault> faults) {
    String bare = content.strip();
    boolean bracketed = bare.length() > 1 && bare.startsWith("[") && bare.endsWith("]");
    switch (FilterReader.read(bracketed ? bare.substring(1, bare.length() - 1) : bare)) {
      case ReadFilter.Understood(Filter filter) -> placed.add(new Placed(filter, FILTER));
      case ReadFilter.Unclear(Said line) -> faults.add(new Fault("/" + FILTER, line));
    }
  }

  private static void readOwnNames(
      Map<String, List<String>> parts, List<Placed> placed, List<Fault> faults) {
    List<String> moods =
        parts.getOrDefault(MOOD, List.of()).stream()
            .filter(AskedSearch::saysSomething)
            .distinct()
            .toList();
    if (moods.size() > Filter.MOST_WORDS) {
      faults.add(
          new Fault(
              "/" + MOOD,
              Said.of(
                  "finding.fault.mostMoods",
                  Filling.number(moods.size(), 0),
                  Filling.number(Filter.MOST_WORDS, 0))));
    } else if (!moods.isEmpty()) {
      placed.add(new Placed(new Filter.OneOf(Trait.MOOD, moods), MOOD));
    }
    add(parts, PLACE, Trait.PLACE, placed);
    add(parts, PLACE_KIND, Trait.PLACE_KIND, placed);
    Optional<String> state = first(parts, STATE);
    if (state.isPresent() && !Trait.STATE.vocabulary().contains(state.get())) {
      faults.add(new Fault("/" + STATE, Said.of("finding.fault.state")));
    } else {
      add(parts, STATE, Trait.STATE, placed);
    }
  }

  private static void add(
      Map<String, List<String>> parts, String name, Trait trait, List<Placed> placed) {
    first(parts, name)
        .filter(AskedSearch::saysSomething)
        .ifPresent(word -> placed.add(new Placed(Filter.OneOf.of(trait, word), name)));
  }

  private static List<Filter> located(
      List<Placed> placed, Function<List<Filter>, List<ReadFilter>> locate, List<Fault> faults) {
    List<ReadFilter> found = locate.apply(placed.stream().map(Placed::filter).toList());
    List<Filter> filters = new ArrayList<>();
    for (int i = 0; i < placed.size(); i++) {
      switch (found.get(i)) {
        case ReadFilter.Understood(Filter filter) -> {
          if (!filters.contains(filter)) {
            filters.add(filter);
          }
        }
        case ReadFilter.Unclear(Said line) ->
            faults.add(new Fault("/" + placed.get(i).name(), line));
      }
    }
    return filters;
  }

  private static boolean saysSomething(String words) {
    return !Filter.words(words).isEmpty();
  }

  static Optional<String> first(Context context, String name) {
    return first(context.queryParamMap(), name);
  }

  static Optional<String> first(Map<String, List<String>> parts, String name) {
    return parts.getOrDefault(name, List.of()).stream()
        .filter(value -> !value.isBlank())
        .findFirst();
  }
}
