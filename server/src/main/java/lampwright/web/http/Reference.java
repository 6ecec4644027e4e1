package lampwright.web.http;

import io.javalin.http.Context;
import java.security.SecureRandom;

/** Gives each request a number under which the log has it and a visitor can ask about it. */
final class Reference {

  // No letters that are mistaken for digits when read out over a telephone.
  private static final String DIGITS = "0123456789abcdefghjkmnpqrstvwxyz";
  private static final int LENGTH = 10;
  private static final String REFERENCE = "lampwright.reference";

  private final SecureRandom random;

  Reference(SecureRandom random) {
    this.random = random;
  }

  void give(Context context) {
    context.attribute(REFERENCE, make());
  }

  String make() {
    StringBuilder reference = new StringBuilder(LENGTH);
    for (int i = 0; i < LENGTH; i++) {
      reference.append(DIGITS.charAt(random.nextInt(DIGITS.length())));
    }
    return reference.toString();
  }

  static String of(Context context) {
    String reference = context.attribute(REFERENCE);
    return reference == null ? "none" : reference;
  }
}
