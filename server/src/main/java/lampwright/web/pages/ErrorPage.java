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

  /** The page for an address that leads nowhere, or to what this visitor may not know of. */
  public static ErrorPage notFound(Layout layout, Link wayOn) {
    return new ErrorPage(
        layout,
        404,
        "There is no such page",
        "The address may be mistyped, or what stood here was taken away, or it belongs to a studio"
            + " that you are not signed in to.",
        List.of(),
        Optional.empty(),
        List.of(wayOn));
  }

  /** The page for a member whose role does not cover what they asked. */
  public static ErrorPage mayNot(Layout layout, String needs, Link wayOn) {
    return new ErrorPage(
        layout,
        403,
        "Your role does not cover this",
        needs,
        List.of(),
        Optional.empty(),
        List.of(wayOn));
  }

  /** The page for what was read and understood but is wrong. */
  public static ErrorPage wrong(Layout layout, List<String> problems, Link wayOn) {
    return new ErrorPage(
        layout,
        422,
        "This cannot be worked out as it stands",
        "Nothing was changed. Put these right and send it again:",
        problems,
        Optional.empty(),
        List.of(wayOn));
  }

  /** The page for a fault of ours. */
  public static ErrorPage ourFault(Layout layout, String reference, Link wayOn) {
    return new ErrorPage(
        layout,
        500,
        "The server failed at this",
        "It is our fault, not yours, and nothing half-done was kept. Try again; if it happens"
            + " again, give this number to whoever runs the server.",
        List.of(),
        Optional.of(reference),
        List.of(wayOn));
  }
}
