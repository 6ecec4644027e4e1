package lampwright.web;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lampwright.document.Json;

/** Small sound documents for tests over HTTP, and single changes to them. */
public final class Documents {

  private Documents() {}

  /** A setup with one light, of which everything is known. */
  public static Map<String, Object> setup(String title) {
    Map<String, Object> setup = new LinkedHashMap<>();
    setup.put("title", title);
    setup.put("moods", List.of("quiet"));
    setup.put("exposure", Map.of("f_number", 5.6, "time", "1/125", "iso", 100));
    setup.put("lights", List.of(light("key")));
    setup.put("ambient", Map.of("ev100", 11));
    return setup;
  }

  /** A key light, 2 m from its target. */
  public static Map<String, Object> light(String id) {
    Map<String, Object> light = new LinkedHashMap<>();
    light.put("id", id);
    light.put("role", "key");
    light.put(
        "head",
        Map.of(
            "name",
            "400 W·s battery head",
            "energy_ws",
            400,
            "output",
            Map.of("kind", "guide_number", "guide_number_m", 64)));
    light.put("place", Map.of("x_m", -1.2, "y_m", -1.6, "z_m", 1.6));
    light.put("target", Map.of("name", "face", "at", Map.of("x_m", 0, "y_m", 0, "z_m", 1.6)));
    light.put("stops_down", 3);
    return light;
  }

  /** A kit with one head and no camera. */
  public static Map<String, Object> kit(String name) {
    Map<String, Object> kit = new LinkedHashMap<>();
    kit.put("name", name);
    kit.put(
        "heads",
        List.of(
            Map.of(
                "count",
                1,
                "head",
                Map.of(
                    "name",
                    "200 W·s battery head",
                    "energy_ws",
                    200,
                    "output",
                    Map.of("kind", "guide_number", "guide_number_m", 45)))));
    return kit;
  }

  /** The slipway of worked example 1 (REFERENCE 17a), invented, with what was metered there. */
  public static Map<String, Object> location(String name) {
    Map<String, Object> location = new LinkedHashMap<>();
    location.put("name", name);
    location.put("kind", "harbour");
    location.put("latitude_deg", 50.35);
    location.put("longitude_deg", -4.15);
    location.put("time_zone", "Europe/London");
    location.put("access", "By the yard gate, before six.");
    location.put("power", Map.of("mains", true, "outlets", 2, "current_a", 16));
    location.put("hazards", List.of("Wet stone below the tide line."));
    location.put(
        "permissions", List.of(Map.of("text", "The harbour office.", "valid_until", "2031-05-04")));
    location.put(
        "ambient_readings",
        List.of(
            Map.of("at", "2025-09-12T19:13:00+01:00", "ev100", 9, "sky", "overcast"),
            Map.of("at", "2025-09-13T12:00:00+01:00", "ev100", 15),
            Map.of("at", "2025-09-14T19:33:00+01:00", "ev100", 8, "how", "spot")));
    return location;
  }

  /**
   * Eleven readings of one head, of which the fourth is a stop too high: a guide number of 64 m and
   * a box of 1.2 m across with a loss of 1.5 stops at 2 m, to the tenth of a stop; by hand.
   */
  public static Map<String, Object> calibrationSheet() {
    Map<String, Object> sheet = new LinkedHashMap<>();
    sheet.put("heads", List.of(Map.of("name", "400 W·s battery head", "guide_number_m", 76)));
    sheet.put(
        "modifiers",
        List.of(
            Map.of("name", "octagon", "face", Map.of("shape", "disc", "diameter_m", 1.2)),
            Map.of("name", "snoot")));
    sheet.put(
        "readings",
        List.of(
            reading(32, 0, 2, 0),
            reading(22, 0, 2, 1),
            reading(16, 0, 4, 0),
            reading(16, 0, 4, 1),
            reading(8, 0, 4, 2),
            reading(11, 0, 2, 3),
            reading(8, 0, 2, 4),
            with(reading(16, 5, 2, 0), "modifier", "octagon"),
            with(reading(8, 6, 4, 0), "modifier", "octagon"),
            with(reading(11, 5, 2, 1), "modifier", "octagon"),
            with(reading(32, 2, 1, 0), "modifier", "octagon")));
    return sheet;
  }

  private static Map<String, Object> reading(
      double fNumber, int tenths, double distanceM, double stopsDown) {
    Map<String, Object> reading = new LinkedHashMap<>();
    reading.put("head", "400 W·s battery head");
    reading.put("f_number", fNumber);
    reading.put("tenths", tenths);
    reading.put("distance_m", distanceM);
    reading.put("stops_down", stopsDown);
    return reading;
  }

  /** The same object with one field set. */
  public static Map<String, Object> with(Map<String, Object> object, String field, Object value) {
    Map<String, Object> other = new LinkedHashMap<>(object);
    other.put(field, value);
    return other;
  }

  public static String json(Map<String, Object> document) {
    return Json.print(document);
  }
}
