package lampwright.web.api;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import lampwright.document.Problem;
import lampwright.people.StudioId;
import lampwright.search.Question;
import lampwright.search.filter.Filter;
import lampwright.search.filter.ReadFilter;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;

/** A question that was kept as it stands in an address: {@code q=dusk&filter=mood+calm}. */
public final class SavedQuestion {

  private static final String POINTER = "/question";

  /** What says how an answer is given out, not what is searched for. */
  private static final Set<String> OF_ANSWERS = Set.of("cursor", "limit", "facets");

  private static final Set<String> LIKE = Set.of("like", "like_tones");

  private SavedQuestion() {}

  /** Reads it; see {@link lampwright.tasks.QuestionReader}. */
  public static Question read(
      StudioId studio, String question, Function<List<Filter>, List<ReadFilter>> locate) {
    Map<String, List<String>> parts = parts(question);
    for (String name : parts.keySet()) {
      if (LIKE.contains(name)) {
        throw Refused.invalid(
            POINTER,
            "What is like a setup or a picture cannot be kept as a search. Maybe leave out "
                + name
                + "?");
      }
      if (OF_ANSWERS.contains(name)) {
        throw Refused.invalid(
            POINTER, "Question must say only what is searched for. Maybe leave out " + name + "?");
      }
    }
    try {
      return SearchQuery.question(parts, studio, locate);
    } catch (Refused refused) {
      if (refused.refusal() instanceof Refusal.Invalid(List<Problem> problems)) {
        throw Refused.invalid(
            problems.stream().map(one -> new Problem(POINTER, one.message())).toList());
      }
      throw refused;
    }
  }

  /** Its parts by name, each with what is said, in the order in which they stand. */
  private static Map<String, List<String>> parts(String question) {
    // It becomes part of an address that a browser is led to.
    if (!question.chars().allMatch(letter -> letter > ' ' && letter < 0x7f)) {
      throw notEscaped();
    }
    Map<String, List<String>> parts = new LinkedHashMap<>();
    for (String part : question.split("&", -1)) {
      int equals = part.indexOf('=');
      if (equals > 0) {
        parts
            .computeIfAbsent(decoded(part.substring(0, equals)), _ -> new ArrayList<>())
            .add(decoded(part.substring(equals + 1)));
      } else if (!part.isEmpty()) {
        throw Refused.invalid(
            POINTER, "Question must be as it stands in the address of a search. Maybe q=dusk?");
      }
    }
    return parts;
  }

  private static String decoded(String text) {
    try {
      return URLDecoder.decode(text, StandardCharsets.UTF_8);
    } catch (IllegalArgumentException e) {
      throw notEscaped();
    }
  }

  private static Refused notEscaped() {
    return Refused.invalid(
        POINTER,
        "Question must be escaped as addresses are, with % and two digits. Maybe %25 for %?");
  }
}
