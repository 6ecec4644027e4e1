package lampwright.setup.comparing;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampwright.engine.unit.Stops;
import lampwright.setup.Light;
import lampwright.setup.SetupDocument;

/** How values, stops and lights are put into words. */
final class Phrases {

  /** Less shows nowhere, as on the pages. */
  static final double SHOWN_STOPS = 0.05;

  private static final int LONGEST_TEXT = 60;

  /** The unit that the end of a field's name stands for, the longer ends first. */
  private static final List<Map.Entry<String, String>> UNITS =
      List.of(
          Map.entry("_m_per_s", "m/s"),
          Map.entry("_ws", "W·s"),
          Map.entry("_deg", "°"),
          Map.entry("_kg", "kg"),
          Map.entry("_um", "µm"),
          Map.entry("_mm", "mm"),
          Map.entry("_stops", "stops"),
          Map.entry("stops_down", "stops"),
          Map.entry("seconds_between_frames", "s"),
          Map.entry("mains_volts", "V"),
          Map.entry("ev100", "EV"),
          Map.entry("_k", "K"),
          Map.entry("_s", "s"),
          Map.entry("_m", "m"));

  private Phrases() {}

  static String unit(String field) {
    return UNITS.stream()
        .filter(unit -> field.endsWith(unit.getKey()))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElse("");
  }

  /** "Rim", or "Rim “rim-left”" where a document has several of the role. */
  static String name(Light light, SetupDocument from, SetupDocument to) {
    String role = capital(light.role().name().toLowerCase(Locale.ROOT));
    boolean isOneOfSeveral =
        Stream.of(from, to)
            .anyMatch(
                setup -> setup.lights().stream().filter(l -> l.role() == light.role()).count() > 1);
    return isOneOfSeveral ? role + " “" + light.id() + "”" : role;
  }

  /** ", +0.7 stop"; empty where it would not show. */
  static String signed(Optional<Stops> stops) {
    return stops
        .filter(Phrases::shows)
        .map(by -> ", " + (by.value() < 0 ? "−" : "+") + amount(by, "1"))
        .orElse("");
  }

  static boolean shows(Stops stops) {
    return stops.abs().value() >= SHOWN_STOPS;
  }

  /** "one stop less", "0.3 stop more". */
  static String moreOrLess(Stops stops) {
    return amount(stops, "one") + (stops.value() < 0 ? " less" : " more");
  }

  private static String amount(Stops stops, String one) {
    double tenths = Math.rint(stops.abs().value() * 10) / 10;
    if (tenths == 1) {
      return one + " stop";
    }
    return number(tenths) + (tenths < 1 ? " stop" : " stops");
  }

  static String tenths(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  /** A number without a fraction that says nothing. */
  static String number(double value) {
    String text =
        value == Math.rint(value) && Math.abs(value) < 1e9
            ? String.format(Locale.ROOT, "%.0f", value + 0.0)
            : String.valueOf(Math.rint(value * 1_000) / 1_000);
    return text.replace('-', '−');
  }

  /** A value of a document in short. */
  static String value(Object plain, String unit) {
    return switch (plain) {
      case Number number ->
          number(number.doubleValue())
              + (unit.isEmpty() ? "" : unit.equals("°") ? unit : " " + unit);
      case String text -> shortened(text);
      case Boolean flag -> flag ? "yes" : "no";
      case List<?> list when list.isEmpty() -> "none";
      case List<?> list ->
          shortened(list.stream().map(item -> value(item, "")).collect(Collectors.joining(", ")));
      case Map<?, ?> map when map.get("name") instanceof String name -> shortened(name);
      case Map<?, ?> map when map.get("text") instanceof String text -> shortened(text);
      case Map<?, ?> map when map.keySet().equals(Set.of("x_m", "y_m", "z_m")) ->
          Stream.of("x_m", "y_m", "z_m")
                  .map(axis -> map.get(axis) instanceof Number at ? number(at.doubleValue()) : "?")
                  .collect(Collectors.joining(", "))
              + " m";
      default -> "";
    };
  }

  static String shortened(String text) {
    int length = text.codePointCount(0, text.length());
    return length <= LONGEST_TEXT
        ? text
        : text.substring(0, text.offsetByCodePoints(0, LONGEST_TEXT - 1)).stripTrailing() + "…";
  }

  /** "focus_distance_m" as "focus distance". */
  static String words(String field) {
    String unit =
        UNITS.stream()
            .map(Map.Entry::getKey)
            .filter(end -> end.startsWith("_") && field.endsWith(end))
            .findFirst()
            .orElse("");
    return field.substring(0, field.length() - unit.length()).replace('_', ' ');
  }

  static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** " from 3 m to 4 m", " added: 4 m", " taken out", or that it is told otherwise. */
  static String fromTo(Optional<Object> before, Optional<Object> after, String unit) {
    String was = before.map(value -> value(value, unit)).orElse("");
    String is = after.map(value -> value(value, unit)).orElse("");
    if (before.isEmpty()) {
      return is.isEmpty() ? " told now" : " now told: " + is;
    }
    if (after.isEmpty()) {
      return was.isEmpty() ? " no longer told" : " no longer told, was " + was;
    }
    return was.isEmpty() || is.isEmpty() || was.equals(is)
        ? " told otherwise"
        : " from " + was + " to " + is;
  }
}
