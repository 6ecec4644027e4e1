package lampwright.web.http;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * The kinds of problem that an answer can tell of. The type of a problem is the address of the page
 * that explains its kind; programs may rely on it.
 */
public enum ProblemKind {
  NOT_READABLE(
      400,
      "The request cannot be read",
      "What was sent is broken before its meaning is looked at: the address holds a bad escape, the"
          + " body is no JSON or no UTF-8, or a header is malformed. The detail says where."),
  NOT_SIGNED_IN(
      401,
      "Nobody is signed in",
      "This needs a person. Sign in, or send a token as Authorization: Bearer. Sessions end after"
          + " 14 days without use and after 60 days in any case."),
  WRONG_PASSWORD(
      401,
      "E-mail and password do not belong together",
      "Nobody signs in with this e-mail and this password. Which of the two is wrong is not told."),
  CODE_NEEDED(
      401,
      "The password is right, and a code is needed too",
      "This person has a second factor. Beside the password send the code of six digits that their"
          + " device shows, or one of their recovery codes."),
  WRONG_CODE(
      401,
      "The code is not right",
      "Each code is good once, and for about a minute. Wait for the next one and send that. If none"
          + " is taken, the clock of the device may be wrong."),
  NOT_ALLOWED(
      403,
      "Your role does not cover this",
      "You may see this and may not do what you asked with it. An owner of the studio can change"
          + " your role."),
  NOT_PROVEN(
      403,
      "The change does not come from a page of ours",
      "A change by cookie must prove that the page it comes from was given out to the same session:"
          + " programs send the csrf_token of their session in the header X-CSRF-Token, forms carry"
          + " it in the field csrf. Load the page again and send it once more."),
  NOT_FOUND(
      404,
      "There is nothing here",
      "The address may be mistyped, or what stood here was taken away, or it belongs to a studio"
          + " that you are not a member of."),
  METHOD_NOT_ALLOWED(
      405,
      "This address does not do that",
      "The address is there, but not for this method. The header Allow names those that work."),
  NOT_ACCEPTABLE(
      406,
      "There is no such representation",
      "The header Accept asks for a format that is not given out here."),
  TIMED_OUT(
      408,
      "The request took too long to arrive",
      "The rest of the request did not come in time. Send it again."),
  CLASH(
      409,
      "This clashes with what is there",
      "Something else already stands where this would go. The detail says what."),
  STALE(
      412,
      "Somebody changed this before you",
      "The revision that you started from is no longer the current one. Get the current one, put"
          + " your change into it and send it with its ETag in If-Match."),
  TOO_LARGE(
      413,
      "That is too large",
      "The body is larger than anything that is taken here. The detail says how much is."),
  ADDRESS_TOO_LONG(
      414, "The address is too long", "Shorten what is asked for, or send it in a body."),
  WRONG_CONTENT_TYPE(
      415,
      "This format is not read here",
      "The header Content-Type names a format that this address does not read. The header"
          + " Accept-Post, for a PATCH Accept-Patch, names the one that it does."),
  NO_SUCH_RANGE(
      416,
      "There are not so many bytes",
      "The header Range asks for bytes behind the end. The header Content-Range tells how many"
          + " there are."),
  UNKNOWN_HOST(
      421,
      "This server does not go by that name",
      "The header Host names another server. Whoever runs this one can add the name by"
          + " LAMPWRIGHT_PUBLIC_URL."),
  INVALID(
      422,
      "This cannot be worked with as it stands",
      "It could be read, but something in it is wrong. Each error names its place by a JSON Pointer"
          + " and says what to do. Nothing was changed."),
  KEY_REUSED(
      422,
      "This key was taken for another request",
      "The header Idempotency-Key names a request that is to be carried out once, however often it"
          + " is sent. This key came before with another address, query or body. Take a new key for"
          + " each new thing; keys are remembered for 7 days."),
  PRECONDITION_MISSING(
      428,
      "Say which revision you change",
      "A change needs the header If-Match with the ETag of what you read, so that nobody's work is"
          + " overwritten unseen."),
  TOO_MANY(
      429,
      "Too often",
      "This was tried too often in a short time. Wait for as many seconds as the header Retry-After"
          + " says."),
  HEADERS_TOO_LARGE(
      431, "The headers are too large", "Send fewer or shorter headers, cookies included."),
  OUR_FAULT(
      500,
      "The server failed at this",
      "It is our fault, not yours, and nothing half-done was kept. Try again; if it happens again,"
          + " give the reference to whoever runs the server."),
  UNAVAILABLE(
      503,
      "Not now",
      "The server cannot do this at the moment. Try again after as many seconds as the header"
          + " Retry-After says.");

  private final int status;
  private final String title;
  private final String explanation;

  ProblemKind(int status, String title, String explanation) {
    this.status = status;
    this.title = title;
    this.explanation = explanation;
  }

  public int status() {
    return status;
  }

  public String title() {
    return title;
  }

  /** A paragraph: what it means and what to do. */
  public String explanation() {
    return explanation;
  }

  /** Its name in addresses. */
  public String slug() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The address of the page that explains it. */
  public String type() {
    return "/problems/" + slug();
  }

  public static Optional<ProblemKind> find(String slug) {
    return Arrays.stream(values()).filter(kind -> kind.slug().equals(slug)).findFirst();
  }

  /** The kind that comes nearest to a status of the web framework's own. */
  static ProblemKind of(int status) {
    return Arrays.stream(values())
        .filter(kind -> kind.status == status)
        .findFirst()
        .orElse(status >= 500 ? OUR_FAULT : NOT_READABLE);
  }
}
