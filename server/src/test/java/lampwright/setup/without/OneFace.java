package lampwright.setup.without;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import lampwright.setup.Documents;
import lampwright.setup.SetupDocument;

/** Setups whose lights stand around one face, 1.5 m up, before a camera at the same height. */
public final class OneFace {

  private OneFace() {}

  public static Map<String, Object> point(double x, double y, double z) {
    return Map.of("x_m", x, "y_m", y, "z_m", z);
  }

  /** A light that is for the face, metered at it. */
  public static Map<String, Object> light(
      String id, String role, double x, double y, String held, double f) {
    return with(light(id, role, x, y, held), "reading", Map.of("f_number", f));
  }

  /** A rim of which nobody knows how strong it is: its reading has an unknown ambient in it. */
  public static Map<String, Object> unknownRim() {
    return with(
        light("rim", "rim", 1, 3, "toward_light"),
        "reading",
        Map.of("f_number", 8.0, "includes_ambient", true));
  }

  private static Map<String, Object> light(
      String id, String role, double x, double y, String held) {
    Map<String, Object> light = new LinkedHashMap<>();
    light.put("id", id);
    light.put("role", role);
    light.put(
        "head",
        Map.of(
            "name",
            "head",
            "energy_ws",
            500.0,
            "output",
            Map.of("kind", "guide_number", "guide_number_m", 64.0),
            "recycle_s",
            1.6));
    light.put("place", point(x, y, 1.5));
    light.put("target", Map.of("name", "face", "at", point(0, 0, 1.5), "held", held));
    return light;
  }

  public static Map<String, Object> with(Map<String, Object> light, String key, Object value) {
    Map<String, Object> more = new LinkedHashMap<>(light);
    more.put(key, value);
    return more;
  }

  /** Shot at f/8, 1/125, ISO 100. */
  public static SetupDocument setup(Map<String, Object> more, Map<?, ?>... lights) {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("title", "One face");
    document.put("exposure", Map.of("f_number", 8.0, "time", "1/125", "iso", 100.0));
    document.put("camera", Map.of("place", point(0, -5, 1.5)));
    document.put("lights", Stream.of(lights).toList());
    document.putAll(more);
    return Documents.setup(document);
  }

  /** Key from camera-left a stop over a fill from the camera, both metered toward the camera. */
  public static SetupDocument keyAStopOverFill() {
    return setup(
        Map.of(),
        light("key", "key", -2, -2, "toward_camera", 8),
        light("fill", "fill", 0, -3, "toward_camera", 8 / Math.sqrt(2)));
  }
}
