package lampwright.document;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Words of messages: what a field is called, how a value is shown. */
final class Words {

  /** Ends of field names that state the unit, which a label leaves to the value. */
  private static final List<String> UNITS =
      List.of(
          "_m_per_s",
          "_stops",
          "_mired",
          "_mm",
          "_deg",
          "_ws",
          "_kg",
          "_ms",
          "_lx",
          "_k",
          "_s",
          "_m");

  /** Words of field names that the trade writes in its own way. */
  private static final Map<String, String> TRADE_WORDS =
      Map.of(
          "iso", "ISO",
          "ev100", "EV100",
          "nd", "ND",
          "t05", "t0.5");

  /** Coordinates say nothing without the point that they belong to. */
  private static final Set<String> COORDINATES = Set.of("x_m", "y_m", "z_m");

  private static final String DOCUMENT = "The document";

  private static final int LONGEST_VALUE_SHOWN = 40;

  private Words() {}

  /** A field's name as a person says it: {@code distance_m} is "Distance". */
  static String label(String field) {
    return capitalised(words(field));
  }

  /**
   * The field that a pointer ends in: "Place, z" for a coordinate, "Moods, item 2" for an item of a
   * list.
   */
  static String label(Pointer at) {
    List<String> parts = parts(at);
    if (parts.isEmpty()) {
      return DOCUMENT;
    }
    String last = parts.getLast();
    if (parts.size() > 1 && isIndex(last)) {
      return label(parts.get(parts.size() - 2)) + ", item " + (Long.parseLong(last) + 1);
    }
    if (parts.size() > 1 && COORDINATES.contains(last)) {
      return label(parts.get(parts.size() - 2)) + ", " + words(last);
    }
    return label(last);
  }

  private static List<String> parts(Pointer at) {
    return Arrays.stream(at.text().split("/", -1))
        .skip(1)
        .map(part -> part.replace("~1", "/").replace("~0", "~"))
        .toList();
  }

  private static boolean isIndex(String part) {
    return !part.isEmpty()
        && part.length() < 10
        && part.chars().allMatch(c -> c >= '0' && c <= '9');
  }

  private static String words(String field) {
    String bare = field;
    for (String unit : UNITS) {
      if (bare.length() > unit.length() && bare.endsWith(unit)) {
        bare = bare.substring(0, bare.length() - unit.length());
        break;
      }
    }
    return Arrays.stream(bare.replace("f_number", "f-number").split("_", -1))
        .map(word -> TRADE_WORDS.getOrDefault(word, word))
        .collect(Collectors.joining(" "));
  }

  private static String capitalised(String words) {
    return words.isEmpty()
        ? DOCUMENT
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** A value as a message quotes it: short, without anything that would break the line. */
  static String shown(Object json) {
    return switch (json) {
      case String text -> '"' + shortened(text) + '"';
      case Double number -> number(number);
      case Number number -> number.toString();
      case Boolean truth -> truth.toString();
      case JsonNull nothing -> "null";
      case List<?> list -> "a list";
      case Map<?, ?> map -> "an object";
      default -> "a value";
    };
  }

  private static String shortened(String text) {
    String printable =
        text.codePoints()
            .limit(LONGEST_VALUE_SHOWN)
            .map(c -> isUnprintable(c) ? '?' : c)
            .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
            .toString();
    boolean whole = text.codePointCount(0, text.length()) <= LONGEST_VALUE_SHOWN;
    return whole ? printable : printable + "…";
  }

  private static boolean isUnprintable(int codePoint) {
    return switch (Character.getType(codePoint)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          true;
      default -> false;
    };
  }

  /** A number with its unit: "2 m", "65°", "1 stop"; the unit may be empty. */
  static String quantity(double value, String unit) {
    return switch (unit) {
      case "" -> number(value);
      case "°" -> number(value) + unit;
      case "stops" -> number(value) + (Math.abs(value) == 1 ? " stop" : " stops");
      default -> number(value) + " " + unit;
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
