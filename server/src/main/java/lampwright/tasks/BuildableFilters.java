package lampwright.tasks;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.people.StudioId;
import lampwright.search.Instead;
import lampwright.search.Question;
import lampwright.search.Search;
import lampwright.search.SearchResult;
import lampwright.search.filter.Filter;
import lampwright.setup.SetupId;

/**
 * The filters of a question that ask for what a kit makes. The index knows nothing of kits, so they
 * are carried out by naming the setups that pass.
 */
final class BuildableFilters {

  /** What is offered where nothing is made so nearly; common practice, no source. */
  private static final List<Double> WIDER_STOPS = List.of(0.33, 0.5, 1.0, 2.0, 4.0, 64.0);

  /** Less than a tenth of a stop no dial sets and no meter shows; common practice, no source. */
  private static final int UNSEEN_HUNDREDTHS = 5;

  private final Map<Filter.Buildable, KitJudging.Offs> offs;

  private BuildableFilters(Map<Filter.Buildable, KitJudging.Offs> offs) {
    this.offs = offs;
  }

  static BuildableFilters of(
      KitJudging judging, Caller caller, StudioId studio, List<Filter> filters) {
    return of(judging, caller, studio, filters, KitJudging.LONGEST);
  }

  /** The same with another patience, see {@link KitJudging#find}. */
  static BuildableFilters of(
      KitJudging judging, Caller caller, StudioId studio, List<Filter> filters, Duration patience) {
    Map<Filter.Buildable, KitJudging.Offs> offs = new LinkedHashMap<>();
    for (Filter filter : filters) {
      if (filter instanceof Filter.Buildable buildable) {
        offs.put(
            buildable,
            judging
                .find(caller, studio, buildable.kit(), patience)
                .orElseGet(() -> new KitJudging.Offs(Map.of(), 0)));
      }
    }
    return new BuildableFilters(offs);
  }

  /** The most setups that any of the kits still waits for. */
  int waiting() {
    return offs.values().stream().mapToInt(KitJudging.Offs::waiting).max().orElse(0);
  }

  /**
   * The question as the index can answer it; none where its cursor was made for other kits or other
   * tolerances, which the index would not notice.
   */
  Optional<Question> narrow(Question question) {
    if (offs.isEmpty()) {
      return Optional.of(question);
    }
    if (question.cursor().isEmpty()) {
      return Optional.of(narrow(question, offs));
    }
    return question
        .cursor()
        .filter(cursor -> cursor.startsWith(mark()))
        .map(cursor -> narrow(question, offs).withCursor(cursor.substring(mark().length())));
  }

  /** A cursor of the index that only these filters take again. */
  String mark(String cursor) {
    return mark() + cursor;
  }

  private String mark() {
    String brackets = offs.keySet().stream().map(Filter::bracket).collect(Collectors.joining("]"));
    return offs.isEmpty() ? "" : Integer.toHexString(brackets.hashCode()) + "-";
  }

  private static Question narrow(Question question, Map<Filter.Buildable, KitJudging.Offs> asked) {
    List<Filter> others =
        question.filters().stream().filter(f -> !(f instanceof Filter.Buildable)).toList();
    Optional<Set<String>> made =
        asked.entrySet().stream()
            .map(one -> made(one.getKey(), one.getValue()))
            .reduce(
                (one, other) ->
                    one.stream().filter(other::contains).collect(Collectors.toUnmodifiableSet()));
    Question narrowed =
        question.order() == Question.Order.OFF
            ? question.withFilters(others).withOffs(offs(asked))
            : question.withFilters(others);
    return made.map(
            ids ->
                narrowed.withOnlyThese(
                    question.onlyThese().isEmpty()
                        ? ids
                        : ids.stream()
                            .filter(question.onlyThese().get()::contains)
                            .collect(Collectors.toUnmodifiableSet())))
        .orElse(narrowed);
  }

  /** By setup; where several kits are asked for, how far off the least able of them is. */
  private static Map<String, Integer> offs(Map<Filter.Buildable, KitJudging.Offs> asked) {
    Map<String, Integer> offs = new HashMap<>();
    for (KitJudging.Offs one : asked.values()) {
      one.hundredths().forEach((setup, off) -> offs.merge(setup.text(), off, Math::max));
    }
    return offs;
  }

  /** By how many stops a setup is off at most, of the kits that were asked for. */
  OptionalDouble offStops(SetupId setup) {
    return offs.values().stream()
        .map(one -> Optional.ofNullable(one.hundredths().get(setup)))
        .flatMap(Optional::stream)
        .mapToDouble(hundredths -> hundredths / 100.0)
        .max();
  }

  private static Set<String> made(Filter.Buildable filter, KitJudging.Offs offs) {
    return offs.hundredths().keySet().stream()
        .filter(setup -> offs.passes(setup, filter))
        .map(SetupId::text)
        .collect(Collectors.toUnmodifiableSet());
  }

  /** How far off a setup is for each kit: {@code The bag makes it within 0.2 stop}. */
  List<Said> reasons(SetupId setup) {
    List<Said> reasons = new ArrayList<>();
    offs.forEach(
        (filter, of) -> {
          Integer off = of.hundredths().get(setup);
          if (off != null) {
            reasons.add(
                off < UNSEEN_HUNDREDTHS
                    ? Said.of("finding.reason.makes", Filling.text(filter.kit()))
                    : Said.of(
                        "finding.reason.makesOff",
                        Filling.text(filter.kit()),
                        new Filling.Briefly(tenths(off))));
          }
        });
    return reasons;
  }

  private static double tenths(int hundredths) {
    return Math.round(hundredths / 10.0) / 10.0;
  }

  /** Another question that was made without these filters, with them again. */
  Instead with(Instead other) {
    List<Filter> all = new ArrayList<>(other.filters());
    all.addAll(offs.keySet());
    return new Instead(
        other.lacking(), other.offered(), other.asked(), other.text(), all, other.total());
  }

  /** Where nothing was found: the next wider filters by which something is, one for each. */
  List<Instead> instead(Search search, Question question) {
    List<Instead> all = new ArrayList<>();
    for (Filter.Buildable filter : offs.keySet()) {
      for (double stops : WIDER_STOPS) {
        Map<Filter.Buildable, KitJudging.Offs> wider = new LinkedHashMap<>();
        offs.forEach((one, of) -> wider.put(one.equals(filter) ? one.withStops(stops) : one, of));
        long total = stops > filter.stops() ? total(search, narrow(question, wider)) : 0;
        if (total > 0) {
          List<Filter> filters = new ArrayList<>(question.filters());
          filters.replaceAll(one -> one.equals(filter) ? filter.withStops(stops) : one);
          all.add(
              new Instead(
                  List.of(filter),
                  Optional.of(filter.withStops(stops)),
                  question.text(),
                  question.text(),
                  filters,
                  total));
          break;
        }
      }
    }
    return all;
  }

  private static long total(Search search, Question question) {
    return search.search(question.withFacets(Set.of()).withLimit(1))
            instanceof SearchResult.Answer answer
        ? answer.total()
        : 0;
  }
}
