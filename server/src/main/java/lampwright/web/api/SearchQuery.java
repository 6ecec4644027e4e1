package lampwright.web.api;

import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import lampwright.document.Problem;
import lampwright.people.StudioId;
import lampwright.search.Question;
import lampwright.search.filter.Filter;
import lampwright.search.filter.Nearest;
import lampwright.search.filter.ReadFilter;
import lampwright.search.filter.Trait;
import lampwright.tasks.Refused;

/**
 * A search as it stands in an address: {@code
 * ?q=&filter=&mood=&place=&place_kind=&state=&archived=&facets=&sort=&like=&limit=&cursor=}.
 */
public final class SearchQuery {

  private static final String ARCHIVED = "archived";
  private static final String FACETS = "facets";
  private static final String SORT = "sort";
  private static final String LIKE = "like";
  private static final String LIKE_TONES = "like_tones";
  private static final String LIMIT = "limit";
  private static final String CURSOR = "cursor";
  private static final List<String> KNOWN =
      List.of(
          AskedSearch.TEXT,
          AskedSearch.FILTER,
          AskedSearch.MOOD,
          AskedSearch.PLACE,
          AskedSearch.PLACE_KIND,
          AskedSearch.STATE,
          ARCHIVED,
          FACETS,
          SORT,
          LIKE,
          LIKE_TONES,
          LIMIT,
          CURSOR);
  private static final String NOTHING = "none";
  private static final Set<String> FLAGS = Set.of("true", "false");
  private static final int USUAL_LIMIT = 20;

  private SearchQuery() {}

  /**
   * Reads it.
   *
   * @param locate looks up the places of filters, one answer for each
   * @throws Refused Invalid for an unknown name, a filter that says nothing that is known, a limit
   *     out of bounds
   */
  public static Question question(
      Context context, StudioId studio, Function<List<Filter>, List<ReadFilter>> locate) {
    return question(context.queryParamMap(), studio, locate);
  }

  /** The same for a search whose parts stand somewhere else than in the address. */
  static Question question(
      Map<String, List<String>> parts,
      StudioId studio,
      Function<List<Filter>, List<ReadFilter>> locate) {
    List<Problem> problems = new ArrayList<>();
    for (String name : parts.keySet()) {
      if (!KNOWN.contains(name)) {
        problems.add(
            new Problem(
                "/" + name,
                "There is no search by this name. Known are: " + String.join(", ", KNOWN) + "."));
      }
    }
    int limit = limit(parts, problems);
    boolean archived = archived(parts, problems);
    Set<Trait> facets = facets(parts, problems);
    AskedSearch asked = AskedSearch.of(parts, locate);
    problems.addAll(asked.problems());
    Question.Order order = order(parts, asked.filters(), problems);
    if (first(parts, LIKE).isPresent() && first(parts, LIKE_TONES).isPresent()) {
      problems.add(
          new Problem(
              "/" + LIKE_TONES, "Like_tones cannot stand beside like. Maybe leave it out?"));
    }
    if (!problems.isEmpty()) {
      throw Refused.invalid(problems);
    }
    return new Question(
        studio.text(),
        asked.words(),
        asked.filters(),
        facets,
        order,
        limit,
        first(parts, CURSOR),
        Optional.empty(),
        new Question.StandingWanted(archived, false));
  }

  /** The id of the setup that others should be like, as it was written. */
  public static Optional<String> like(Context context) {
    return first(context.queryParamMap(), LIKE);
  }

  /** The tones of the picture that others should look like, as they were written. */
  public static Optional<String> likeTones(Context context) {
    return first(context.queryParamMap(), LIKE_TONES);
  }

  private static boolean archived(Map<String, List<String>> parts, List<Problem> problems) {
    Optional<String> archived = first(parts, ARCHIVED);
    if (archived.isPresent() && !FLAGS.contains(archived.get())) {
      problems.add(new Problem("/" + ARCHIVED, "Archived must be true or false. Maybe false?"));
    }
    return archived.filter("true"::equals).isPresent();
  }

  private static Set<Trait> facets(Map<String, List<String>> parts, List<Problem> problems) {
    List<String> names =
        parts.getOrDefault(FACETS, List.of()).stream()
            .flatMap(list -> Arrays.stream(list.split(",")))
            .map(String::strip)
            .filter(name -> !name.isEmpty())
            .toList();
    if (names.isEmpty()) {
      return Question.USUAL_FACETS;
    }
    Set<Trait> facets = new LinkedHashSet<>();
    for (String name : names) {
      Optional<Trait> trait = Trait.find(name).filter(Trait::isCounted);
      if (trait.isPresent()) {
        facets.add(trait.get());
      } else if (!name.equals(NOTHING)) {
        problems.add(new Problem("/" + FACETS, uncounted(name)));
      }
    }
    return facets;
  }

  private static String uncounted(String name) {
    List<String> known =
        Arrays.stream(Trait.values())
            .filter(Trait::isCounted)
            .map(trait -> trait.name('_'))
            .toList();
    return "Nothing can be counted by this name. "
        + Nearest.find(name, known)
            .map(near -> "Maybe " + near + "?")
            .orElseGet(() -> "Known are: " + String.join(", ", known) + ", none.");
  }

  private static Question.Order order(
      Map<String, List<String>> parts, List<Filter> filters, List<Problem> problems) {
    Optional<String> written = first(parts, SORT);
    if (written.isEmpty() || written.get().equals("best")) {
      return Question.Order.BEST;
    }
    if (first(parts, LIKE).isPresent() || first(parts, LIKE_TONES).isPresent()) {
      problems.add(
          new Problem(
              "/" + SORT, "Sort must be best with like: the most alike come first. Maybe best?"));
      return Question.Order.BEST;
    }
    return switch (written.get()) {
      case "near" ->
          order(
              Question.Order.NEAR,
              filters.stream().anyMatch(Filter.Near.class::isInstance),
              "To put the nearest first, say where. Maybe filter=within 20 km of a location?",
              problems);
      case "off" ->
          order(
              Question.Order.OFF,
              filters.stream().anyMatch(Filter.Buildable.class::isInstance),
              "To put the least off first, name a kit. Maybe filter=buildable with its name?",
              problems);
      default -> {
        problems.add(new Problem("/" + SORT, "Sort must be best, near or off. Maybe best?"));
        yield Question.Order.BEST;
      }
    };
  }

  private static Question.Order order(
      Question.Order wanted, boolean may, String needs, List<Problem> problems) {
    if (may) {
      return wanted;
    }
    // A place or a kit that could not be read is told already.
    if (problems.isEmpty()) {
      problems.add(new Problem("/" + SORT, needs));
    }
    return Question.Order.BEST;
  }

  private static Optional<String> first(Map<String, List<String>> parts, String name) {
    return AskedSearch.first(parts, name);
  }

  private static int limit(Map<String, List<String>> parts, List<Problem> problems) {
    Optional<String> written = first(parts, LIMIT);
    if (written.isEmpty()) {
      return USUAL_LIMIT;
    }
    if (written.get().matches("[1-9]\\d{0,2}")) {
      int limit = Integer.parseInt(written.get());
      if (limit <= Question.LARGEST_LIMIT) {
        return limit;
      }
    }
    problems.add(
        new Problem(
            "/" + LIMIT,
            "Limit must be a whole number from 1 to " + Question.LARGEST_LIMIT + ". Maybe 20?"));
    return USUAL_LIMIT;
  }

  /** The address of the same search from a cursor on. */
  public static String address(Context context, String cursor) {
    StringBuilder address = new StringBuilder(context.path()).append('?');
    for (Map.Entry<String, List<String>> part : context.queryParamMap().entrySet()) {
      if (!part.getKey().equals(CURSOR)) {
        for (String value : part.getValue()) {
          address.append(encoded(part.getKey())).append('=').append(encoded(value)).append('&');
        }
      }
    }
    return address.append(CURSOR).append('=').append(encoded(cursor)).toString();
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
