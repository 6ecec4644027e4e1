package lampwright.web.pages;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import lampwright.setup.LightId;
import lampwright.setup.figures.Level;
import lampwright.setup.figures.LightFigures;
import lampwright.setup.takes.TakeReading;
import lampwright.wording.Wording;

/**
 * Where one types what the meter gave for one light: the mark, and the tenths after it in a field
 * of their own, since the number pad of a phone has no sign to put between them.
 *
 * @param id of the field on its page
 * @param name of the field in the form
 * @param tenthsName of the field beside it
 * @param label "Rim left"
 * @param expected "f/4 + 0.9"; empty where the figures do not say
 * @param value "5.6", or all of it, "5.6 + 0.3"
 * @param tenths "3"
 */
public record MeterField(
    String id,
    String name,
    String tenthsName,
    String label,
    String expected,
    String value,
    String tenths) {

  /**
   * @param place what tells this form from others on its page
   */
  static MeterField of(
      LightFigures light, String place, UnaryOperator<String> typed, Wording words) {
    LightId id = light.light().id();
    return new MeterField(
        mark(id) + place,
        mark(id),
        tenths(id),
        TakeFields.name(id),
        light.level().map(Level::reading).map(words::reading).orElse(""),
        typed.apply(mark(id)),
        typed.apply(tenths(id)));
  }

  static String mark(LightId light) {
    return "reading-" + light;
  }

  private static String tenths(LightId light) {
    return "tenths-" + light;
  }

  /** Whether something was typed for a light. */
  static boolean isTold(LightId light, UnaryOperator<String> typed) {
    return !typed.apply(mark(light)).isBlank() || !typed.apply(tenths(light)).isBlank();
  }

  /** What was typed for a light, in the fields of a reading. */
  static Map<String, Object> read(LightId light, UnaryOperator<String> typed) {
    Map<String, Object> reading =
        new LinkedHashMap<>(UsedFields.metered(typed.apply(mark(light)).strip()));
    String tenths = typed.apply(tenths(light)).strip();
    if (!tenths.isEmpty()) {
      reading.put("tenths", tenths.matches("\\d") ? Double.valueOf(tenths) : tenths);
    }
    reading.put("light", light.text());
    return reading;
  }

  /** What a form would send of a reading as it is. */
  static Map<String, String> written(TakeReading reading, Wording words) {
    int tenths = reading.meter().tenths();
    return Map.of(
        mark(reading.light()),
        words.aperture(reading.meter().printed()).substring("f/".length()),
        tenths(reading.light()),
        Optional.of(tenths).filter(of -> of > 0).map(String::valueOf).orElse(""));
  }
}
