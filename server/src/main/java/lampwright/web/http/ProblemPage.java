package lampwright.web.http;

import io.javalin.http.Context;
import java.util.Optional;

/** How a problem looks as a page. Handed in, since the door knows no page. */
@FunctionalInterface
public interface ProblemPage {

  /**
   * The page as HTML.
   *
   * @param context the request; empty where it was too broken to be one
   */
  String render(ProblemDetails problem, Optional<Context> context);
}
