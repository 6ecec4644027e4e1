package lampwright.setup.building;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lampwright.setup.Documents;
import lampwright.setup.SetupDocument;

/** Setups whose lights all stand at one height around one face. */
final class LitForTests {

  private LitForTests() {}

  static Map<String, Object> point(double x, double y, double z) {
    return Map.of("x_m", x, "y_m", y, "z_m", z);
  }

  static Map<String, Object> light(String id, double x, double y, String held, double f) {
    Map<String, Object> light = new LinkedHashMap<>();
    light.put("id", id);
    light.put("role", "fill");
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
    light.put("reading", Map.of("f_number", f));
    return light;
  }

  static SetupDocument setup(Map<String, Object> more, Object... lights) {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("title", "Light on light");
    document.put("exposure", Map.of("f_number", 8.0, "time", "1/125", "iso", 100.0));
    document.put("camera", Map.of("place", point(0, -5, 1.5)));
    document.put("lights", List.of(lights));
    document.putAll(more);
    return Documents.setup(document);
  }
}
