package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Draws bodies, lenses and what is wished of a camera, in JSON. */
final class DrawCamera {

  private DrawCamera() {}

  /** A body of some format and shutter with a few speeds. */
  static Map<String, Object> body(Draw draw, String name) {
    double lowest = draw.oneOf(List.of(100.0, 200.0));
    Map<String, Object> body =
        body(
            name,
            draw.between(17, 44),
            draw.oneOf(List.of("1/60", "1/160", "1/200", "1/250")),
            lowest,
            lowest * draw.oneOf(List.of(1.0, 2.0, 2.5)));
    if (draw.chance(0.3)) {
      body.put("shutter", "leaf");
      body.put("sync", draw.oneOf(List.of("1/500", "1/1000")));
    } else if (draw.chance(0.6)) {
      body.put("curtain_travel_ms", draw.between(2, 5));
    }
    return body;
  }

  static Map<String, Object> body(
      String name, double widthMm, String sync, double lowest, double highest) {
    Map<String, Object> body = new LinkedHashMap<>();
    body.put("name", name);
    body.put("width_mm", widthMm);
    body.put("height_mm", widthMm * 2 / 3);
    body.put("sync", sync);
    body.put("iso_lowest", lowest);
    body.put("iso_highest", highest);
    return body;
  }

  static Map<String, Object> lens(String name, double mm, double widest, double smallest) {
    return Map.of(
        "name", name,
        "focal_length_mm", mm,
        "widest_f_number", widest,
        "smallest_f_number", smallest);
  }

  /** The setup's own camera, perhaps one of the kit's, perhaps looking at the subject. */
  static void oldCamera(Draw draw, List<Object> bodies, List<Object> lenses) {
    if (draw.chance(0.2)) {
      return;
    }
    Map<String, Object> camera = new LinkedHashMap<>();
    camera.put("body", draw.chance(0.5) ? draw.oneOf(bodies) : body(draw, "old body"));
    camera.put(
        "lens",
        draw.chance(0.5) ? draw.oneOf(lenses) : lens("old lens", draw.between(30, 90), 2.8, 22));
    if (draw.chance(0.5)) {
      camera.put("place", Map.of("x_m", 0.0, "y_m", -draw.between(2, 5), "z_m", 1.6));
      camera.put("aim", Map.of("x_m", 0.0, "y_m", 0.0, "z_m", 1.6));
    }
    draw.setup.put("camera", camera);
  }

  static void densities(Draw draw) {
    List<Object> densities = new ArrayList<>();
    for (int i = 0; i < draw.random.nextInt(0, 3); i++) {
      densities.add(Map.of("name", "grey " + i, "loss_stops", draw.between(1, 4)));
    }
    draw.kit.put("neutral_densities", densities);
  }

  static void wishesOfCamera(Draw draw) {
    if (draw.chance(0.2)) {
      draw.limits.put("ambient_within_stops", draw.between(0.5, 2));
    }
    if (draw.chance(0.15)) {
      draw.limits.put("iso_at_most", 200.0);
    }
    if (draw.chance(0.3)) {
      draw.setup.put(
          "subjects",
          List.of(
              Map.of(
                  "name",
                  "dancer",
                  "place",
                  Map.of("x_m", 0.0, "y_m", 0.0, "z_m", 0.0),
                  "speed_m_per_s",
                  2.0)));
    }
  }
}
