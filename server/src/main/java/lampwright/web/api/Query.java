package lampwright.web.api;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.document.Pointer;
import lampwright.document.Problem;
import lampwright.document.Problems;
import lampwright.tasks.Listed;
import lampwright.tasks.Refused;

/**
 * The names and values of an address's query, and what is wrong with them. One request, one thread.
 */
final class Query {

  private static final String CURSOR = "cursor";
  private static final String LIMIT = "limit";
  private static final int USUAL_LIMIT = 20;

  private final Context context;
  private final List<Problem> wrong = new ArrayList<>();
  private final Problems problems = new Problems();

  /**
   * @param known what may be asked; anything else is a problem
   */
  Query(Context context, Set<String> known) {
    this.context = context;
    for (String name : context.queryParamMap().keySet()) {
      if (!known.contains(name)) {
        wrong.add(
            new Problem(
                "/" + name,
                "There is no wish by this name. Known are: "
                    + String.join(", ", new TreeSet<>(known))
                    + "."));
      }
    }
  }

  /** One that is written as text; empty where it is left out or faulty. */
  <T> Optional<T> text(String name, Form<T> form) {
    return written(name).flatMap(text -> form.read(text, at(name), problems));
  }

  /** One that is written as a number; empty where it is left out or faulty. */
  <T> Optional<T> number(String name, Form<T> form) {
    return written(name).flatMap(text -> form.read(numberOrText(text), at(name), problems));
  }

  private enum Answer {
    FALSE,
    TRUE
  }

  /** Whether something is wished: true or false; not, where it is left out or faulty. */
  boolean flag(String name) {
    return text(name, Forms.choice(Answer.values())).orElse(Answer.FALSE) == Answer.TRUE;
  }

  private Optional<String> written(String name) {
    return context.queryParams(name).stream().filter(value -> !value.isBlank()).findFirst();
  }

  private static Pointer at(String name) {
    return Pointer.root().field(name);
  }

  private static Object numberOrText(String text) {
    boolean isNumber = text.matches("-?\\d{1,9}(\\.\\d{1,15})?");
    return isNumber ? (Object) Double.valueOf(text) : text;
  }

  /**
   * Refuses the request where something was wrong.
   *
   * @throws Refused Invalid with every problem so far
   */
  void mustBeSound() {
    wrong.addAll(problems.list());
    if (!wrong.isEmpty()) {
      throw Refused.invalid(wrong);
    }
  }

  /** The part of a list that is asked for. */
  Listed.Wish page() {
    int limit = limit();
    mustBeSound();
    return new Listed.Wish(written(CURSOR), limit);
  }

  /** How much of a list is asked for; what is faulty is told by {@link #mustBeSound}. */
  int limit() {
    return number(LIMIT, Forms.count(1, Listed.MOST)).orElse(USUAL_LIMIT);
  }

  /** Says in the header where the next part is. */
  static void linkNext(Context context, Listed<?> page) {
    linkNext(context, page.next());
  }

  /** The same by the cursor of the next part. */
  static void linkNext(Context context, Optional<String> next) {
    next.ifPresent(
        cursor ->
            context.header("Link", "<" + SearchQuery.address(context, cursor) + ">; rel=\"next\""));
  }
}
