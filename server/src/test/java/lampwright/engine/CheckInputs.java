package lampwright.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.light.EmittingFace;
import lampwright.engine.light.Point;
import lampwright.engine.light.UnitVector;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;
import tools.jackson.databind.JsonNode;

/** The inputs of one check value, read by the names that carry their units. */
final class CheckInputs {

  private final JsonNode node;
  private final Set<String> unread = new TreeSet<>();

  CheckInputs(JsonNode node) {
    this.node = node;
    unread.addAll(node.propertyNames());
  }

  /** Returns the inputs that no formula asked for: a formula that ignores one is wrong. */
  Set<String> unread() {
    return unread;
  }

  private JsonNode read(String name) {
    unread.remove(name);
    return node.required(name);
  }

  double number(String name) {
    return read(name).doubleValue();
  }

  double number(String name, double otherwise) {
    return node.has(name) ? number(name) : otherwise;
  }

  String text(String name) {
    return read(name).stringValue();
  }

  List<Double> numbers(String name) {
    List<Double> numbers = new ArrayList<>();
    read(name).forEach(each -> numbers.add(each.doubleValue()));
    return numbers;
  }

  Point point(String name) {
    return point(numbers(name));
  }

  List<Point> points(String name) {
    List<Point> points = new ArrayList<>();
    for (JsonNode each : read(name)) {
      points.add(
          Point.of(
              each.required(0).doubleValue(),
              each.required(1).doubleValue(),
              each.required(2).doubleValue()));
    }
    return points;
  }

  /** A direction of any length. */
  UnitVector way(String name) {
    List<Double> parts = numbers(name);
    return UnitVector.of(parts.get(0), parts.get(1), parts.get(2));
  }

  private static Point point(List<Double> parts) {
    return Point.of(parts.get(0), parts.get(1), parts.get(2));
  }

  Stops stops(String name) {
    return new Stops(number(name));
  }

  Metres metres(String name) {
    return new Metres(number(name));
  }

  Seconds seconds(String name) {
    return new Seconds(number(name));
  }

  FNumber fNumber(String name) {
    return new FNumber(number(name));
  }

  Iso iso() {
    return new Iso(number("iso"));
  }

  MeterConstant constant() {
    return new MeterConstant(number("c_lux_s", 250));
  }

  ExposureSettings settings() {
    return new ExposureSettings(
        fNumber("f_number"),
        new ShutterTime(number("shutter_s")),
        new Iso(number("iso", 100)),
        new Stops(number("nd_stops", 0)));
  }

  /** The emitting face of "shape" and its measures. */
  EmittingFace face() {
    return switch (text("shape")) {
      case "point" -> new EmittingFace.PointSource();
      case "disc" -> new EmittingFace.Disc(metres("radius_m"));
      case "rect" -> new EmittingFace.Rectangle(metres("width_m"), metres("height_m"));
      default -> throw new IllegalArgumentException("No such shape: " + text("shape"));
    };
  }
}
