package lampwright.web.pages;

/**
 * The second step of signing in: the code of the second factor.
 *
 * @param action where the form posts to
 * @param next the page to go on to, sent back with the form; empty for the first page
 * @param againPath where one begins again
 * @param errors what was wrong
 */
public record SignInCodePage(
    Layout layout, String action, String next, String againPath, FormErrors errors) {

  public static final String CODE = "code";
}
