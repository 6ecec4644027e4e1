package lampwright.web.http;

import io.javalin.http.Context;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntSupplier;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;

/**
 * Conditional requests (RFC 9110, section 13) over revisions: the ETag of what one may change is
 * its revision, in quotes.
 */
public final class Preconditions {

  private static final String IF_MATCH = "If-Match";
  private static final String IF_NONE_MATCH = "If-None-Match";
  private static final String ETAG = "ETag";
  private static final int NOT_MODIFIED = 304;

  private Preconditions() {}

  /** The ETag of a revision. */
  public static String etag(int revision) {
    return "\"" + revision + "\"";
  }

  /** Says which revision the answer shows. */
  public static void show(Context context, int revision) {
    context.header(ETAG, etag(revision));
  }

  /**
   * Says which revision the answer shows, and answers at once where the asker has it already.
   *
   * @return whether that is all there is to answer
   */
  public static boolean isKnown(Context context, int revision) {
    return isKnown(context, etag(revision));
  }

  /** The one revision that the asker says they have already. */
  public static Optional<Integer> known(Context context) {
    return Optional.ofNullable(context.header(IF_NONE_MATCH))
        .map(String::strip)
        .flatMap(Preconditions::revision);
  }

  /** The same by an ETag of the caller's own, in quotes. */
  public static boolean isKnown(Context context, String etag) {
    context.header(ETAG, etag);
    String header = context.header(IF_NONE_MATCH);
    if (header == null) {
      return false;
    }
    // Here a weak tag matches too: an answer that means the same need not be sent again.
    boolean known =
        header.strip().equals("*")
            || tags(header).stream()
                .map(tag -> tag.startsWith("W/") ? tag.substring(2) : tag)
                .anyMatch(etag::equals);
    if (known) {
      context.status(NOT_MODIFIED);
    }
    return known;
  }

  /**
   * Holds a change to what it is based on, before anything is changed.
   *
   * @param current the revision that is current now
   * @throws Refused when the request does not say its revision, or names another
   */
  private static void mustMatch(Context context, int current) {
    if (!matches(header(context), current)) {
      throw Refused.stale(current);
    }
  }

  /**
   * The revision that a change says it is based on. Where any will do ({@code *}) or the header
   * lists several, it is the current one, which must be among them.
   *
   * @param current tells the revision that is current now; asked only where it is needed
   * @throws Refused when the request does not say, or names others
   */
  public static int based(Context context, IntSupplier current) {
    Optional<Integer> named = named(context);
    if (named.isPresent()) {
      return named.get();
    }
    int now = current.getAsInt();
    mustMatch(context, now);
    return now;
  }

  private static Optional<Integer> named(Context context) {
    List<String> tags = tags(header(context));
    return tags.size() == 1 ? revision(tags.getFirst()) : Optional.empty();
  }

  private static String header(Context context) {
    String header = context.header(IF_MATCH);
    if (header == null || header.isBlank()) {
      throw new Refused(new Refusal.PreconditionMissing());
    }
    return header;
  }

  private static boolean matches(String header, int current) {
    return header.strip().equals("*") || tags(header).contains(etag(current));
  }

  private static Optional<Integer> revision(String tag) {
    return tag.matches("\"[1-9][0-9]{0,8}\"")
        ? Optional.of(Integer.parseInt(tag.substring(1, tag.length() - 1)))
        : Optional.empty();
  }

  private static List<String> tags(String header) {
    return Arrays.stream(header.split(",")).map(String::strip).toList();
  }
}
