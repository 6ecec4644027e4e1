package lampwright.setup;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import lampwright.document.Json;

/** The two worked examples of the reference (section 17) as documents, and their results. */
public final class WorkedExamples {

  private static final Object EXAMPLES = read();

  private static final List<String> DANCER_LIGHTS =
      List.of("key", "fill", "rim_left", "rim_right", "hair", "background");

  private WorkedExamples() {}

  private static Object read() {
    try (InputStream in =
        Objects.requireNonNull(
            WorkedExamples.class.getResourceAsStream(
                "/lampwright/reference/worked-examples.json"))) {
      return Json.parse(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A number of the examples, such as {@code /example_1/results/kit_a/ev100_set}. */
  public static double number(String pointer) {
    return ((Number) Documents.at(EXAMPLES, pointer)).doubleValue();
  }

  /** A number or text of the examples. */
  public static Object result(String pointer) {
    return Documents.at(EXAMPLES, pointer);
  }

  /** A text of the examples. */
  public static String text(String pointer) {
    return (String) Documents.at(EXAMPLES, pointer);
  }

  /** The pointer of every result, numbers and texts. */
  public static List<String> results() {
    List<String> pointers = new ArrayList<>();
    for (String example : List.of("/example_1/results", "/example_2/results")) {
      addLeaves(Documents.at(EXAMPLES, example), example, pointers);
    }
    return pointers;
  }

  private static void addLeaves(Object json, String pointer, List<String> pointers) {
    if (json instanceof Map<?, ?> inner) {
      inner.forEach((key, value) -> addLeaves(value, pointer + "/" + key, pointers));
    } else {
      pointers.add(pointer);
    }
  }

  private static Map<String, Object> object(Object... keysAndValues) {
    Map<String, Object> object = new LinkedHashMap<>();
    for (int i = 0; i < keysAndValues.length; i += 2) {
      object.put((String) keysAndValues[i], keysAndValues[i + 1]);
    }
    return object;
  }

  private static Map<String, Object> point(String pointer) {
    return object(
        "x_m",
        number(pointer + "/0"),
        "y_m",
        number(pointer + "/1"),
        "z_m",
        number(pointer + "/2"));
  }

  /** 17a: a dancer on a slipway, lit by kit A, each light as set. */
  public static SetupDocument dancer() {
    String in = "/example_1/inputs";
    List<Object> lights = new ArrayList<>();
    for (int i = 0; i < DANCER_LIGHTS.size(); i++) {
      String name = DANCER_LIGHTS.get(i);
      boolean onWall = name.equals("background");
      Map<String, Object> target =
          onWall
              ? object(
                  "name",
                  "wall",
                  "at",
                  point(in + "/lights/" + i + "/aim"),
                  "held",
                  "on_surface",
                  "surface_facing_deg",
                  0.0)
              : object("name", "chest", "at", point(in + "/subject_m"));
      lights.add(
          object(
              "id", name.replace('_', '-'),
              "role", name.startsWith("rim") ? "rim" : name,
              "head", dancerHead("kit_a", 0.1),
              "modifier", dancerModifier("kit_a", name),
              "place", point(in + "/lights/" + i + "/head_m"),
              "target", target,
              "stops_down", number("/example_1/results/kit_a/heads/" + name + "/stops_down_set")));
    }
    return Documents.setup(
        object(
            "title", "A dancer leaping on a slipway at dusk",
            "exposure", object("f_number", 2.8, "time", "1/500", "iso", 100.0),
            "camera",
                object(
                    "body",
                        object(
                            "name",
                            "back",
                            "width_mm",
                            53.4,
                            "height_mm",
                            40.0,
                            "pixels_wide",
                            number(in + "/kit_a/camera/pixels/0"),
                            "shutter",
                            "leaf",
                            "sync",
                            "1/500",
                            "iso_highest",
                            800.0),
                    "lens", object("name", "normal", "focal_length_mm", 80.0),
                    "place", point(in + "/camera_m"),
                    "focus_distance_m", number(in + "/motion/focus_m")),
            "subjects",
                List.of(
                    object(
                        "name", "dancer",
                        "place", object("x_m", 0.0, "y_m", 0.0, "z_m", 0.0),
                        "speed_m_per_s", number(in + "/motion/lateral_speed_m_s"))),
            "lights", lights,
            "ambient", object("ev100", number(in + "/ambient_ev100"))));
  }

  /**
   * A head of the dancer's kits.
   *
   * @param step of its dial, in stops
   */
  public static Map<String, Object> dancerHead(String kit, double step) {
    String in = "/example_1/inputs/" + kit + "/head";
    return object(
        "name", "head of " + kit,
        "energy_ws", number(in + "/full_w_s"),
        "output", object("kind", "guide_number", "guide_number_m", number(in + "/guide_number_m")),
        "range_stops", number(in + "/range_stops"),
        "step_stops", step,
        "duration_t05_ms", number(in + "/t05_full_s") * 1_000,
        "recycle_s", number(in + "/recycle_full_s"),
        "flashes_per_charge", number(in + "/flashes_full"));
  }

  private static Map<String, Object> dancerModifier(String kit, String light) {
    String in = "/example_1/inputs/" + kit + "/modifiers/" + light;
    Map<String, Object> modifier = new LinkedHashMap<>();
    modifier.put("name", light + " modifier of " + kit);
    switch (text(in + "/shape")) {
      case "rect" -> {
        modifier.put("kind", "softbox");
        modifier.put(
            "face",
            object(
                "shape", "rectangle",
                "width_m", number(in + "/width_m"),
                "height_m", number(in + "/height_m")));
      }
      case "disc" -> {
        modifier.put("kind", light.equals("hair") ? "dish" : "umbrella");
        modifier.put("face", object("shape", "disc", "diameter_m", 2 * number(in + "/radius_m")));
      }
      default -> {
        modifier.put("kind", "reflector");
        modifier.put("spread_deg", light.equals("background") ? 65.0 : 40.0);
      }
    }
    modifier.put("loss_stops", number(in + "/loss_stops"));
    return modifier;
  }

  /** 17a's kit B as JSON. */
  public static Map<String, Object> dancerKitB() {
    List<Object> modifiers = new ArrayList<>();
    for (String light : DANCER_LIGHTS) {
      modifiers.add(object("modifier", dancerModifier("kit_b", light)));
    }
    return object(
        "name", "kit B",
        "bodies",
            List.of(
                object("name", "small body", "width_mm", 36.0, "height_mm", 24.0, "sync", "1/200")),
        "lenses", List.of(object("name", "fifty", "focal_length_mm", 50.0, "widest_f_number", 1.8)),
        "heads", List.of(object("count", 6.0, "head", dancerHead("kit_b", 0.1))),
        "modifiers", modifiers);
  }

  /** 17b: a seated cellist, lit by kit A, each light as set; the heads are metered. */
  public static SetupDocument cellist() {
    String in = "/example_2/inputs";
    return Documents.setup(
        object(
            "title", "A seated cellist in a panelled room",
            "exposure", object("f_number", 8.0, "time", "1/160", "iso", 100.0),
            "camera", object("place", point(in + "/camera_m")),
            "subjects",
                List.of(
                    object("name", "cellist", "place", object("x_m", 0.0, "y_m", 0.0, "z_m", 0.0))),
            "lights",
                List.of(
                    cellistLight("kit_a", "key", object("shape", "disc", "diameter_m", 1.2)),
                    cellistLight(
                        "kit_a",
                        "fill",
                        object("shape", "rectangle", "width_m", 1.0, "height_m", 1.0)),
                    cellistWall("kit_a")),
            "ambient", object("ev100", number("/example_2/results/kit_a/ambient_ev100"))));
  }

  /** 17b with the dials of kit A exactly as wanted, and with kit A's camera. */
  public static SetupDocument exactCellist() {
    Object json = SetupDocument.FORM.write(cellist());
    for (String name : List.of("key", "fill", "wall")) {
      int index = List.of("key", "fill", "wall").indexOf(name);
      json =
          Documents.with(
              json,
              "/lights/" + index + "/stops_down",
              number("/example_2/results/kit_a/" + name + "/stops_down_exact"));
    }
    String camera = "/example_2/inputs/kit_a/camera";
    json =
        Documents.with(
            json,
            "/camera/body",
            object(
                "name",
                "body of kit_a",
                "width_mm",
                number(camera + "/sensor_mm/0"),
                "height_mm",
                number(camera + "/sensor_mm/1"),
                "sync",
                "1/160"));
    return Documents.setup(
        Documents.with(
            json,
            "/camera/lens",
            object("name", "eighty-five", "focal_length_mm", number(camera + "/focal_mm"))));
  }

  /** Kit B of 17b: three mains heads, metered with their boxes on, and a leaf shutter. */
  public static Map<String, Object> cellistKitB() {
    String in = "/example_2/inputs/kit_b";
    List<Object> modifiers = new ArrayList<>();
    List<Object> pairings = new ArrayList<>();
    for (String name : List.of("key", "fill")) {
      Object face =
          object(
              "shape", "rectangle",
              "width_m", number(in + "/" + name + "/width_m"),
              "height_m", number(in + "/" + name + "/height_m"));
      modifiers.add(
          object("modifier", object("name", name + " box", "kind", "softbox", "face", face)));
      pairings.add(
          object(
              "head",
              "mains head",
              "modifier",
              name + " box",
              "reading",
              object(
                  "f_number", number(in + "/" + name + "/f_number_reading"),
                  "distance_m", number(in + "/" + name + "/reading_distance_m"))));
    }
    return object(
        "name",
        "kit B of 17b",
        "bodies",
        List.of(
            object(
                "name", "larger body",
                "width_mm", number(in + "/camera/sensor_mm/0"),
                "height_mm", number(in + "/camera/sensor_mm/1"),
                "shutter", "leaf",
                "sync", "1/1600")),
        "lenses",
        List.of(
            object("name", "eighty", "focal_length_mm", 80.0),
            object("name", "hundred and ten", "focal_length_mm", 110.0)),
        "heads",
        List.of(
            object(
                "count",
                3.0,
                "head",
                cellistHead("kit_b", "wall", number(in + "/wall/guide_number_m")))),
        "modifiers",
        modifiers,
        "pairings",
        pairings);
  }

  /** One of the cellist's two lights on the face, with another kit's head and modifier. */
  public static Map<String, Object> cellistLight(String kit, String name, Object face) {
    String in = "/example_2/inputs/" + kit + "/" + name;
    return object(
        "id", name,
        "role", name,
        "head", cellistHead(kit, name, 1.0),
        "modifier", object("name", name + " modifier", "kind", "softbox", "face", face),
        "output",
            object(
                "f_number", number(in + "/f_number_reading"),
                "distance_m", number(in + "/reading_distance_m"),
                "stops_down", number(in + "/reading_stops_down")),
        "place", point("/example_2/inputs/kit_a/" + name + "/head_m"),
        "target", object("name", "nose bridge", "at", point("/example_2/inputs/subject_m")),
        "stops_down", number("/example_2/results/" + kit + "/" + name + "/stops_down_set"));
  }

  /** The cellist's light on the wall, with another kit's head. */
  public static Map<String, Object> cellistWall(String kit) {
    String wall = "/example_2/inputs/kit_a/wall";
    return object(
        "id", "wall",
        "role", "background",
        "head",
            cellistHead(kit, "wall", number("/example_2/inputs/" + kit + "/wall/guide_number_m")),
        "gels",
            List.of(
                object(
                    "name", "amber",
                    "shift_mired", number(wall + "/gel_shift_mired"),
                    "loss_stops", -log2(number(wall + "/gel_transmission")))),
        "place", point(wall + "/head_m"),
        "target",
            object(
                "name",
                "wall",
                "at",
                point(wall + "/aim"),
                "held",
                "on_surface",
                "surface_facing_deg",
                0.0),
        "stops_down", number("/example_2/results/" + kit + "/wall/stops_down_set"));
  }

  /** The guide number is of no account where a metered output stands beside it. */
  private static Map<String, Object> cellistHead(String kit, String light, double guideNumber) {
    return object(
        "name", "mains head",
        "energy_ws", number("/example_2/inputs/" + kit + "/" + light + "/full_w_s"),
        "output", object("kind", "guide_number", "guide_number_m", guideNumber),
        "feed", "mains",
        "control", "voltage");
  }

  private static double log2(double ratio) {
    return StrictMath.log(ratio) / StrictMath.log(2);
  }
}
