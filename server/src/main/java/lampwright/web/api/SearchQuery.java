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
import java.util.stream.Collectors;
import lampwright.document.Problem;
import lampwright.people.StudioId;
import lampwright.search.Question;
import lampwright.setup.Standing;
import lampwright.tasks.Refused;

/**
 * A search as it stands in an address: {@code
 * ?q=&mood=&place=&place_kind=&state=&archived=&limit=&cursor=}.
 */
public final class SearchQuery {

  private static final String TEXT = "q";
  private static final String MOOD = "mood";
  private static final String PLACE = "place";
  private static final String PLACE_KIND = "place_kind";
  private static final String STATE = "state";
  private static final String ARCHIVED = "archived";
  private static final String LIMIT = "limit";
  private static final String CURSOR = "cursor";
  private static final Set<String> KNOWN =
      Set.of(TEXT, MOOD, PLACE, PLACE_KIND, STATE, ARCHIVED, LIMIT, CURSOR);
  private static final Set<String> STATES =
      Arrays.stream(Standing.State.values())
          .map(Standing.State::word)
          .collect(Collectors.toUnmodifiableSet());
  private static final Set<String> FLAGS = Set.of("true", "false");
  private static final int USUAL_LIMIT = 20;

  private SearchQuery() {}

  /**
   * Reads it.
   *
   * @throws Refused Invalid for an unknown name or a limit out of bounds
   */
  public static Question question(Context context, StudioId studio) {
    List<Problem> problems = new ArrayList<>();
    for (String name : context.queryParamMap().keySet()) {
      if (!KNOWN.contains(name)) {
        problems.add(
            new Problem(
                "/" + name,
                "There is no search by this name. Known are: q, mood, place,"
                    + " place_kind, state, archived, limit, cursor."));
      }
    }
    int limit = limit(context, problems);
    Question.StandingWanted standing = standing(context, problems);
    if (!problems.isEmpty()) {
      throw Refused.invalid(problems);
    }
    return new Question(
        studio.text(),
        first(context, TEXT).orElse(""),
        new LinkedHashSet<>(context.queryParams(MOOD)),
        first(context, PLACE),
        first(context, PLACE_KIND),
        limit,
        first(context, CURSOR),
        Optional.empty(),
        standing);
  }

  private static Question.StandingWanted standing(Context context, List<Problem> problems) {
    Optional<String> state = first(context, STATE);
    Optional<String> archived = first(context, ARCHIVED);
    if (state.isPresent() && !STATES.contains(state.get())) {
      problems.add(new Problem("/" + STATE, "State must be draft or proven. Maybe proven?"));
    }
    if (archived.isPresent() && !FLAGS.contains(archived.get())) {
      problems.add(new Problem("/" + ARCHIVED, "Archived must be true or false. Maybe false?"));
    }
    return new Question.StandingWanted(state, archived.filter("true"::equals).isPresent(), false);
  }

  private static Optional<String> first(Context context, String name) {
    return context.queryParams(name).stream().filter(value -> !value.isBlank()).findFirst();
  }

  private static int limit(Context context, List<Problem> problems) {
    Optional<String> written = first(context, LIMIT);
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
