package lampwright.web.http;

import io.javalin.http.Context;
import java.security.SecureRandom;
import java.util.regex.Pattern;
import org.slf4j.MDC;

/** Gives each request a number under which the log has it and a visitor can ask about it. */
final class Reference {

  // No letters that are mistaken for digits when read out over a telephone.
  private static final String DIGITS = "0123456789abcdefghjkmnpqrstvwxyz";
  private static final int LENGTH = 10;
  private static final int BITS_OF_A_DIGIT = 5;
  private static final String REFERENCE = "lampwright.reference";

  /** What every line of the log that is written for a request carries; {@code logback.xml}. */
  private static final String LOGGED = "request";

  /** W3C Trace Context, version 00: a trace, the span that asks, flags; zeros are none. */
  private static final Pattern TRACE =
      Pattern.compile("00-(?!0{32})[0-9a-f]{32}-(?!0{16})[0-9a-f]{16}-[0-9a-f]{2}");

  private final SecureRandom random;

  Reference(SecureRandom random) {
    this.random = random;
  }

  void give(Context context) {
    String reference = make();
    context.attribute(REFERENCE, reference);
    MDC.put(LOGGED, reference);
    String trace = context.header("traceparent");
    if (trace != null && TRACE.matcher(trace).matches()) {
      MDC.put("trace", trace.substring(3, 35));
    }
  }

  String make() {
    StringBuilder reference = new StringBuilder(LENGTH);
    // One draw: every request has one, and all of them wait for each other here.
    long drawn = random.nextLong();
    for (int i = 0; i < LENGTH; i++) {
      reference.append(
          DIGITS.charAt((int) (drawn >>> (i * BITS_OF_A_DIGIT)) & (DIGITS.length() - 1)));
    }
    return reference.toString();
  }

  static String of(Context context) {
    String reference = context.attribute(REFERENCE);
    return reference == null ? "none" : reference;
  }
}
