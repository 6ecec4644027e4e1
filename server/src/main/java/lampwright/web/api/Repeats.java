package lampwright.web.api;

import io.javalin.http.Context;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lampwright.tasks.Once;
import lampwright.tasks.Refused;
import lampwright.web.http.Body;
import lampwright.web.http.Digests;

/**
 * The key by which a program says that it sends one and the same request again: the header
 * Idempotency-Key, after the IETF's draft-ietf-httpapi-idempotency-key-header. The draft wants a
 * string in quotes; many programs send a bare word, which is taken too.
 */
final class Repeats {

  private static final String HEADER = "Idempotency-Key";
  private static final Pattern KEY =
      Pattern.compile("\"([\\x21\\x23-\\x5b\\x5d-\\x7e]{1,255})\"|([A-Za-z0-9._~:+/=-]{1,255})");

  private Repeats() {}

  /**
   * For a request whose body is text, which is part of what makes it the same.
   *
   * @throws Refused NotReadable where the header is no such key
   */
  static Once of(Context context) {
    return context.header(HEADER) == null ? Once.unkeyed() : of(context, Body.sentText(context));
  }

  /**
   * For a request whose content is told by something shorter than its body.
   *
   * @param content differs where the requests do
   * @throws Refused NotReadable where the header is no such key
   */
  static Once of(Context context, String content) {
    String header = context.header(HEADER);
    if (header == null) {
      return Once.unkeyed();
    }
    Matcher written = KEY.matcher(header.strip());
    if (!written.matches()) {
      throw Refused.notReadable(
          "The header Idempotency-Key must be 1 to 255 visible characters in quotes, such as"
              + " \"8e03978e-40d5-43dd-bc93-6894a57f9324\".");
    }
    String key = written.group(1) == null ? written.group(2) : written.group(1);
    String query = context.queryString();
    String address = context.path() + "?" + (query == null ? "" : query);
    return Once.keyed(key, Digests.sha256(address + "\n" + content));
  }
}
