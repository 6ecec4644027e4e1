package lampwright.web.pages;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import lampwright.document.Problem;
import lampwright.tasks.Refused;
import lampwright.web.http.ProblemDetails;
import lampwright.web.http.ProblemKind;
import lampwright.wording.Wording;

/** What went wrong, as a page: an occurrence, and each kind explained. */
public final class ProblemPages {

  private final Templates templates;
  private final Layouts layouts;

  public ProblemPages(Templates templates, Layouts layouts) {
    this.templates = templates;
    this.layouts = layouts;
  }

  /** An occurrence. */
  public String render(ProblemDetails problem, Optional<Context> context) {
    return templates.render(
        "error",
        page(layouts.outside(context, title(problem.kind(), layouts.words(context))), problem));
  }

  static ErrorPage page(Layout layout, ProblemDetails problem) {
    ProblemKind kind = problem.kind();
    Wording words = layout.words();
    List<String> faults = problem.errors().stream().map(Problem::message).toList();
    return new ErrorPage(
        layout,
        kind.status(),
        title(kind, words),
        faults.isEmpty() ? explanation(problem, words) : words.say("pages.error.nothingChanged"),
        faults.isEmpty() ? particulars(problem, words) : faults,
        Optional.of(problem.reference()),
        List.of(home(layout), new Link(layout.words().say("pages.error.means"), kind.type())));
  }

  private static String title(ProblemKind kind, Wording words) {
    return words.say("problem.title." + Wording.key(kind));
  }

  /** What this occurrence is about, which is told in English; else what its kind is about. */
  private static String explanation(ProblemDetails problem, Wording words) {
    return words.isEnglish() ? problem.detail() : about(problem.kind(), words);
  }

  private static String about(ProblemKind kind, Wording words) {
    return words.say("problem.about." + Wording.key(kind));
  }

  /** What only the occurrence knows, for who was told of its kind. */
  private static List<String> particulars(ProblemDetails problem, Wording words) {
    return switch (problem.kind()) {
      case CLASH, NOT_ALLOWED, NOT_READABLE ->
          words.isEnglish() || problem.detail().equals(problem.kind().explanation())
              ? List.of()
              : List.of(problem.detail());
      default -> List.of();
    };
  }

  private static Link home(Layout layout) {
    return new Link(layout.words().say("pages.error.home"), "/");
  }

  /** A kind, at the address that problem details name as their type. */
  public void explain(Context context) {
    ProblemKind kind = ProblemKind.find(context.pathParam("kind")).orElseThrow(Refused::notFound);
    context.header("Cache-Control", "private, max-age=3600");
    Wording words = layouts.words(context);
    Layout layout = layouts.outside(Optional.of(context), title(kind, words));
    templates.show(
        context,
        "error",
        new ErrorPage(
            layout,
            kind.status(),
            title(kind, words),
            about(kind, words),
            List.of(),
            Optional.empty(),
            List.of(home(layout))));
  }
}
