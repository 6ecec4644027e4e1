package lampwright.engine;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;
import lampwright.engine.light.EmittingFace;
import lampwright.engine.light.Point;
import lampwright.engine.unit.Metres;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Reads worked-examples.json; results compare within 1e-6 relative, as the file says. */
final class WorkedExamples {

  private WorkedExamples() {}

  static JsonNode read(String example) throws IOException {
    try (InputStream file =
        Objects.requireNonNull(
            WorkedExamples.class.getResourceAsStream(
                "/lampwright/reference/worked-examples.json"))) {
      return JsonMapper.shared().readTree(file).required(example);
    }
  }

  static double number(JsonNode node, String name) {
    return node.required(name).doubleValue();
  }

  static String text(JsonNode node, String name) {
    return node.required(name).stringValue();
  }

  static Point point(JsonNode node, String name) {
    JsonNode place = node.required(name);
    return new Point(
        place.get(0).doubleValue(), place.get(1).doubleValue(), place.get(2).doubleValue());
  }

  static EmittingFace face(JsonNode node) {
    return switch (text(node, "shape")) {
      case "point" -> new EmittingFace.PointSource();
      case "disc" -> new EmittingFace.Disc(new Metres(number(node, "radius_m")));
      case "rect" ->
          new EmittingFace.Rectangle(
              new Metres(number(node, "width_m")), new Metres(number(node, "height_m")));
      default -> throw new IllegalArgumentException("No such shape: " + node);
    };
  }

  /** Within 1e-6 relative; what is zero but for rounding within 1e-9. */
  static void assertResult(JsonNode results, String name, double actual) {
    double expected = number(results, name);
    assertTrue(
        Math.abs(actual - expected) <= 1e-6 * Math.abs(expected) + 1e-9,
        () -> name + ": expected " + expected + ", was " + actual);
  }
}
