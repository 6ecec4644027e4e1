package lampwright.web.pages;

import java.util.List;
import java.util.Optional;

/**
 * Something did not work, in plain words.
 *
 * @param status the HTTP status, shown small
 * @param title what happened
 * @param explanation why, as far as the visitor may know, and what to do
 * @param problems single faults, each with what to do; may be empty
 * @param reference the number under which the log has the details
 * @param waysOn where to go from here; at least one
 */
public record ErrorPage(
    Layout layout,
    int status,
    String title,
    String explanation,
    List<String> problems,
    Optional<String> reference,
    List<Link> waysOn) {

  public ErrorPage {
    problems = List.copyOf(problems);
    waysOn = List.copyOf(waysOn);
  }
}
