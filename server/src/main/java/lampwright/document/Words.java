package lampwright.document;

import java.util.Locale;
import java.util.Set;

/** Words of messages: what a field is called, how a value is shown. */
final class Words {

  private static final Set<String> UNITS =
      Set.of(
          "m", "mm", "deg", "ws", "stops", "k", "s", "ms", "kg", "mired", "lx", "ev100", "percent");

  private static final int LONGEST_VALUE_SHOWN = 40;

  private Words() {}

  /** A field's name as a person says it: {@code distance_m} is "Distance". */
  static String label(String field) {
    String words = field;
    int last = field.lastIndexOf('_');
    if (last > 0 && UNITS.contains(field.substring(last + 1))) {
      words = field.substring(0, last);
    }
    words = words.replace('_', ' ');
    return words.isEmpty()
        ? "The document"
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** The field that a pointer ends in; list items are called by their list. */
  static String label(Pointer at) {
    String[] parts = at.text().split("/", -1);
    for (int i = parts.length - 1; i > 0; i--) {
      if (!parts[i].isEmpty() && !parts[i].chars().allMatch(Character::isDigit)) {
        return label(parts[i].replace("~1", "/").replace("~0", "~"));
      }
    }
    return "The document";
  }

  static String shown(Object json) {
    return switch (json) {
      case String text ->
          '"'
              + (text.length() > LONGEST_VALUE_SHOWN
                  ? text.substring(0, LONGEST_VALUE_SHOWN) + "…"
                  : text)
              + '"';
      case Double number -> number(number);
      case Number number -> number.toString();
      case Boolean truth -> truth.toString();
      case JsonNull nothing -> "null";
      case java.util.List<?> list -> "a list";
      case java.util.Map<?, ?> map -> "an object";
      default -> "a value";
    };
  }

  /** A number without a needless fraction: 2 rather than 2.0. */
  static String number(double value) {
    if (value == Math.rint(value) && Math.abs(value) < 1e15) {
      return Long.toString((long) value);
    }
    return Double.toString(value);
  }
}
