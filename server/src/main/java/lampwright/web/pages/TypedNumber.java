package lampwright.web.pages;

import java.util.Optional;
import java.util.regex.Pattern;

/** A number as somebody types it into a form: "1.5", "1,5", "−0.3". */
final class TypedNumber {

  private static final Pattern NUMBER = Pattern.compile("[-+]?\\d{1,9}(\\.\\d{1,9})?");

  private TypedNumber() {}

  /** Empty for what is no number. */
  static Optional<Double> read(String typed) {
    String text = typed.strip().replace('−', '-').replace(',', '.');
    return NUMBER.matcher(text).matches() ? Optional.of(Double.valueOf(text)) : Optional.empty();
  }
}
