package lampwright.web.pages;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import lampwright.document.Problem;
import lampwright.tasks.Refused;
import lampwright.web.http.ProblemDetails;
import lampwright.web.http.ProblemKind;

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
        "error", page(layouts.outside(context, problem.kind().title()), problem));
  }

  static ErrorPage page(Layout layout, ProblemDetails problem) {
    ProblemKind kind = problem.kind();
    List<String> faults = problem.errors().stream().map(Problem::message).toList();
    return new ErrorPage(
        layout,
        kind.status(),
        kind.title(),
        faults.isEmpty() ? problem.detail() : layout.words().say("pages.error.nothingChanged"),
        faults,
        Optional.of(problem.reference()),
        List.of(home(layout), new Link(layout.words().say("pages.error.means"), kind.type())));
  }

  private static Link home(Layout layout) {
    return new Link(layout.words().say("pages.error.home"), "/");
  }

  /** A kind, at the address that problem details name as their type. */
  public void explain(Context context) {
    ProblemKind kind = ProblemKind.find(context.pathParam("kind")).orElseThrow(Refused::notFound);
    context.header("Cache-Control", "private, max-age=3600");
    Layout layout = layouts.outside(Optional.of(context), kind.title());
    templates.show(
        context,
        "error",
        new ErrorPage(
            layout,
            kind.status(),
            kind.title(),
            kind.explanation(),
            List.of(),
            Optional.empty(),
            List.of(home(layout))));
  }
}
