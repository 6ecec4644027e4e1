package lampwright.web.http;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import lampwright.document.Json;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;

/** What a request brings: JSON, a form, a table or plain text, bounded, in strict UTF-8. */
public final class Body {

  /** The most bytes that are read of a body. */
  public static final int MOST_BYTES = 1 << 20;

  /**
   * Of a body that is larger, but not beyond this, the rest is let in, so that who sends it is not
   * cut off before it hears the answer.
   */
  private static final long HEARD_OUT_BYTES = 8L * MOST_BYTES;

  static final String JSON = "application/json";
  static final String MERGE_PATCH = "application/merge-patch+json";
  static final String TEXT = "text/plain";
  static final String TABLE = "text/csv";
  static final String FORM = "application/x-www-form-urlencoded";

  private static final String READ = "lampwright.body";

  private Body() {}

  /**
   * The body's bytes as they come, for a file: whoever reads them sets the bound, of the bytes and
   * of how much is made of them at once.
   *
   * @throws Refused NotReadable where the connection is broken
   */
  public static InputStream stream(Context context) {
    Admission.leave(context);
    try {
      return context.req().getInputStream();
    } catch (IOException e) {
      throw Refused.notReadable("The body cannot be read. Send it again.");
    }
  }

  /**
   * The body as plain JSON values, see {@link lampwright.document.Form}.
   *
   * @throws Refused when it is too large, no JSON, or not said to be JSON
   */
  public static Object json(Context context) {
    return json(JSON, context);
  }

  /**
   * A change by RFC 7396 as plain JSON values, see {@link lampwright.document.MergePatch}.
   *
   * @throws Refused when it is too large, no JSON, or not said to be such a change
   */
  public static Object mergePatch(Context context) {
    return json(MERGE_PATCH, context);
  }

  private static Object json(String accepted, Context context) {
    mustBe(accepted, context);
    String text = text(context);
    try {
      Object plain = Json.parse(text);
      mustBeKeepable(plain);
      return plain;
    } catch (Json.NotJson e) {
      throw Refused.notReadable("The body is not JSON. " + e.getMessage());
    }
  }

  /**
   * The fields of a form; of fields with one name the first.
   *
   * @throws Refused when it is too large, malformed, or not said to be a form
   */
  public static FormFields form(Context context) {
    mustBe(FORM, context);
    return FormFields.parse(text(context));
  }

  /**
   * The body as the text that it is.
   *
   * @throws Refused when it is too large, or not said to be plain text
   */
  public static String plainText(Context context) {
    mustBe(TEXT, context);
    return text(context);
  }

  /**
   * The body as the text of a table (RFC 4180).
   *
   * @throws Refused when it is too large, or not said to be one
   */
  public static String table(Context context) {
    mustBe(TABLE, context);
    return text(context);
  }

  /** Whether the body is said to be a table, in whatever encoding. */
  public static boolean isTable(Context context) {
    String type = context.contentType();
    return type != null && type.strip().toLowerCase(Locale.ROOT).startsWith(TABLE);
  }

  /**
   * The text that was sent, whatever it says it is; for telling one request from another.
   *
   * @throws Refused when it is too large or no UTF-8
   */
  public static String sentText(Context context) {
    return text(context);
  }

  static boolean isForm(Context context) {
    return mediaType(context).equals(FORM);
  }

  private static void mustBe(String accepted, Context context) {
    if (!mediaType(context).equals(accepted)) {
      throw new Refused(new Refusal.WrongContentType(accepted));
    }
  }

  private static String mediaType(Context context) {
    String header = context.contentType();
    if (header == null) {
      return "";
    }
    int end = header.indexOf(';');
    String type = (end < 0 ? header : header.substring(0, end)).strip().toLowerCase(Locale.ROOT);
    String parameters = end < 0 ? "" : header.substring(end).toLowerCase(Locale.ROOT);
    boolean isOtherCharset =
        parameters.contains("charset") && !parameters.replace("\"", "").contains("charset=utf-8");
    return isOtherCharset ? header : type;
  }

  /** Read once: the door looks into a form for its proof before the page reads it. */
  private static String text(Context context) {
    String before = context.attribute(READ);
    if (before != null) {
      return before;
    }
    String text = decoded(bytes(context));
    context.attribute(READ, text);
    return text;
  }

  private static byte[] bytes(Context context) {
    long said = context.req().getContentLengthLong();
    try {
      InputStream in = context.req().getInputStream();
      // A length that is said is believed where it is too much; that saves keeping it.
      if (said > MOST_BYTES) {
        if (said <= HEARD_OUT_BYTES) {
          in.skipNBytes(said);
        }
        throw new Refused(new Refusal.TooLarge(MOST_BYTES));
      }
      byte[] bytes = arrived(context, in);
      if (bytes.length > MOST_BYTES) {
        throw new Refused(new Refusal.TooLarge(MOST_BYTES));
      }
      return bytes;
    } catch (IOException e) {
      throw Refused.notReadable("The body ended before it was complete. Send it again.");
    }
  }

  /** Others are worked on while it comes. */
  private static byte[] arrived(Context context, InputStream in) throws IOException {
    try {
      return Admission.meanwhile(
          context,
          () -> {
            try {
              return in.readNBytes(MOST_BYTES + 1);
            } catch (IOException e) {
              throw new UncheckedIOException(e);
            }
          });
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  static String decoded(byte[] bytes) {
    return StrictUtf8.decoded(
        bytes, "The body is not UTF-8. Encode it as UTF-8 and send it again.");
  }

  /** What JSON can say and no database of ours can keep. */
  private static void mustBeKeepable(Object plain) {
    switch (plain) {
      case String text when text.indexOf('\0') >= 0 ->
          throw Refused.notReadable("A text in the body holds the character U+0000. Take it out.");
      case Double number when number.isInfinite() ->
          throw Refused.notReadable(
              "A number in the body is larger than any that is kept here, 1.8e308.");
      case List<?> list -> list.forEach(Body::mustBeKeepable);
      case Map<?, ?> map ->
          map.forEach(
              (key, value) -> {
                mustBeKeepable(key);
                mustBeKeepable(value);
              });
      default -> {}
    }
  }
}
