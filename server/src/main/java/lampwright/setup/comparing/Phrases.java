package lampwright.setup.comparing;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampwright.engine.unit.Stops;
import lampwright.language.Filling;
import lampwright.language.Said;
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
  static Filling name(Light light, SetupDocument from, SetupDocument to) {
    Said role = Said.of("comparing.role." + light.role().name().toLowerCase(Locale.ROOT));
    boolean isOneOfSeveral =
        Stream.of(from, to)
            .anyMatch(
                setup -> setup.lights().stream().filter(l -> l.role() == light.role()).count() > 1);
    return isOneOfSeveral
        ? part("comparing.oneOfSeveral", role.asFilling(), Filling.text(light.id()))
        : role.asFilling();
  }

  static Filling part(String key, Filling... parts) {
    return Said.of(key, parts).asFilling();
  }

  /** The sentence with ", +0.7 stop" behind it, where that would show. */
  static Said withStops(Said sentence, Optional<Stops> stops) {
    return stops
        .filter(Phrases::shows)
        .map(by -> Said.of("comparing.by", sentence.asFilling(), signed(by)))
        .orElse(sentence);
  }

  static Filling signed(Stops by) {
    return new Filling.SignedBriefly(inTenths(by.value()));
  }

  static boolean shows(Stops stops) {
    return stops.abs().value() >= SHOWN_STOPS;
  }

  /** "one stop less", "0.3 stop more". */
  static Filling moreOrLess(Stops stops) {
    double size = inTenths(stops.abs().value());
    return part(
        stops.value() < 0 ? "comparing.less" : "comparing.more",
        size == 1 ? part("comparing.oneStop") : new Filling.Briefly(size));
  }

  private static double inTenths(double value) {
    return Math.rint(value * 10) / 10;
  }

  /** A number without a fraction that says nothing. */
  static String number(double value) {
    String text =
        value == Math.rint(value) && Math.abs(value) < 1e9
            ? String.format(Locale.ROOT, "%.0f", value + 0.0)
            : String.valueOf(Math.rint(value * 1_000) / 1_000);
    return text.replace('-', '−');
  }

  /** A value of a document in short; empty where it has no short form. */
  static Optional<Filling> value(Object plain, String unit) {
    return switch (plain) {
      case Number number -> Optional.of(number(number.doubleValue(), unit));
      case String text -> text(text);
      case Boolean flag -> Optional.of(part(flag ? "comparing.yes" : "comparing.no"));
      case List<?> list when list.isEmpty() -> Optional.of(part("comparing.none"));
      case List<?> list ->
          text(list.stream().map(Phrases::plain).collect(Collectors.joining(", ")));
      case Map<?, ?> map when map.get("name") instanceof String name -> text(name);
      case Map<?, ?> map when map.get("text") instanceof String text -> text(text);
      case Map<?, ?> map when map.keySet().equals(Set.of("x_m", "y_m", "z_m")) ->
          Optional.of(
              part("comparing.point", axis(map, "x_m"), axis(map, "y_m"), axis(map, "z_m")));
      default -> Optional.empty();
    };
  }

  private static Filling number(double value, String unit) {
    Filling number = new Filling.Rounded(value, 3);
    return switch (unit) {
      case "" -> number;
      case "°" -> part("comparing.degrees", number);
      case "stops" -> part("comparing.stops", number);
      default -> part("comparing.withUnit", number, Filling.text(unit));
    };
  }

  private static Filling axis(Map<?, ?> point, String axis) {
    return point.get(axis) instanceof Number at
        ? new Filling.Rounded(at.doubleValue(), 3)
        : Filling.text("?");
  }

  private static Optional<Filling> text(String text) {
    return text.isEmpty() ? Optional.empty() : Optional.of(Filling.text(shortened(text)));
  }

  /** An item of a list: what people wrote, or a number. */
  private static String plain(Object item) {
    return switch (item) {
      case Number number -> number(number.doubleValue());
      case String text -> shortened(text);
      case Map<?, ?> map when map.get("name") instanceof String name -> shortened(name);
      case Map<?, ?> map when map.get("text") instanceof String text -> shortened(text);
      default -> "";
    };
  }

  static String shortened(String text) {
    int length = text.codePointCount(0, text.length());
    return length <= LONGEST_TEXT
        ? text
        : text.substring(0, text.offsetByCodePoints(0, LONGEST_TEXT - 1)).stripTrailing() + "…";
  }

  /** What a field is called: "focus distance" for {@code focus_distance_m}. */
  static Filling field(String field) {
    return part("comparing.field." + field);
  }

  /** What is told of something: from 3 m to 4 m, that it was added, that it is told otherwise. */
  static Said fromTo(Filling what, Optional<Object> before, Optional<Object> after, String unit) {
    return told(
        what,
        before.isPresent(),
        before.flatMap(value -> value(value, unit)),
        after.isPresent(),
        after.flatMap(value -> value(value, unit)));
  }

  /** The same of values that are put into words already. */
  static Said told(
      Filling what, boolean was, Optional<Filling> before, boolean is, Optional<Filling> after) {
    if (!was) {
      return after
          .map(now -> Said.of("comparing.added", what, now))
          .orElseGet(() -> Said.of("comparing.toldNow", what));
    }
    if (!is) {
      return before
          .map(old -> Said.of("comparing.gone", what, old))
          .orElseGet(() -> Said.of("comparing.toldNoMore", what));
    }
    return before.isEmpty() || after.isEmpty() || before.equals(after)
        ? Said.of("comparing.otherwise", what)
        : Said.of("comparing.fromTo", what, before.get(), after.get());
  }
}
