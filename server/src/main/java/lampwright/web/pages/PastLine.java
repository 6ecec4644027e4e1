package lampwright.web.pages;

/**
 * One revision in a history.
 *
 * @param what became of the setup by it: "Proven", "Archived", "Brought back from revision 2"; may
 *     be empty
 * @param day when
 * @param by who
 * @param message why, in their words; may be empty
 * @param mayBeRestored whether it is another than the current one
 */
public record PastLine(
    int revision, String what, String day, String by, String message, boolean mayBeRestored) {}
