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
