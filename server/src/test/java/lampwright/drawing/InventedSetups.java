package lampwright.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;
import lampwright.document.Json;
import lampwright.document.Reading;
import lampwright.setup.SetupDocument;
import org.jspecify.annotations.Nullable;

/** Setups made up for tests of drawings, read from JSON as any other document. */
public final class InventedSetups {

  private static final List<String> ROLES =
      List.of("key", "fill", "rim", "kicker", "hair", "background", "accent", "back");

  private final Map<String, Object> document = new LinkedHashMap<>();
  private final List<Object> lights = new ArrayList<>();
  private final List<Object> buildOrder = new ArrayList<>();
  private final List<Object> subjects = new ArrayList<>();
  private final List<Object> surfaces = new ArrayList<>();

  private InventedSetups(String title) {
    document.put("title", title);
    document.put("exposure", Map.of("f_number", 5.6, "time", "1/125", "iso", 100));
    document.put("lights", lights);
    document.put("build_order", buildOrder);
    document.put("subjects", subjects);
    document.put("surfaces", surfaces);
  }

  static InventedSetups titled(String title) {
    return new InventedSetups(title);
  }

  /** So many lights round a walker before a wall, with a camera that knows north. */
  public static SetupDocument round(int lights) {
    InventedSetups setup =
        titled("Lanterns on the weir")
            .camera(0, -4, 1.2, 80)
            .wall("slate wall", -4.6, 4.9, 4.2, 4.9)
            .subject("the ferry girl", 0, 0, -20);
    double[][] places = {
      {-2.6, -2.2},
      {1.8, -3.4},
      {3.2, 2.2},
      {-3.6, 3.4},
      {1.2, 3.7},
      {-3.4, 0.6},
      {2.9, -0.6},
      {-1.2, -1.2},
      {2.2, 1.2},
      {3.4, 3.9},
      {-1.6, 2.6},
      {0.8, -1.4}
    };
    Object[] faces = {
      rectangle(0.9, 1.2),
      disc(1.5),
      null,
      null,
      disc(0.4),
      rectangle(0.3, 1.4),
      disc(0.5),
      null,
      disc(0.6),
      null,
      null,
      rectangle(0.6, 0.6)
    };
    for (int i = 0; i < lights; i++) {
      setup.light(i, places[i][0], places[i][1], 2.2, faces[i]);
    }
    return setup.read();
  }

  /** Up to 12 lights, subjects, marks and walls anywhere, some of them far off. */
  static SetupDocument anywhere(RandomGenerator random) {
    double size = random.nextDouble(2, 14);
    InventedSetups setup = titled("Anywhere");
    if (random.nextDouble() < 0.85) {
      setup.camera(random.nextDouble(-1, 1), -random.nextDouble(2, 30), 1.4, 85);
    }
    for (int i = random.nextInt(0, 3); i > 0; i--) {
      setup.wall("a wall of some stone " + i, at(random, size), size, at(random, size), size * 0.8);
    }
    for (int i = random.nextInt(0, 3); i > 0; i--) {
      setup.subject("walker " + i, at(random, size) / 4, at(random, size) / 4, at(random, 180));
    }
    int lights = random.nextInt(1, 13);
    for (int i = 0; i < lights; i++) {
      double reach = random.nextDouble() < 0.05 ? 12 * size : size;
      Object face =
          switch (random.nextInt(3)) {
            case 0 -> roundOrOctagon(random.nextDouble(0.2, 2));
            case 1 -> rectangle(random.nextDouble(0.2, 2), 1);
            default -> null;
          };
      setup.light(i, at(random, reach), at(random, reach), random.nextDouble(0.3, 5), face);
    }
    return setup.read();
  }

  private static double at(RandomGenerator random, double reach) {
    return Math.rint(random.nextDouble(-reach, reach) * 100) / 100;
  }

  InventedSetups camera(double x, double y, double z, double focalLength) {
    document.put(
        "camera",
        Map.of(
            "body",
            Map.of("name", "full-frame body", "width_mm", 36, "height_mm", 24, "sync", "1/200"),
            "lens",
            Map.of("name", "lens", "focal_length_mm", focalLength),
            "place",
            point(x, y, z),
            "bearing_deg",
            118));
    return this;
  }

  InventedSetups wall(String name, double fromX, double fromY, double toX, double toY) {
    surfaces.add(Map.of("name", name, "from", point(fromX, fromY, 0), "to", point(toX, toY, 0)));
    return this;
  }

  InventedSetups subject(String name, double x, double y, double facing) {
    subjects.add(
        Map.of(
            "name",
            name,
            "place",
            point(x, y, 0),
            "facing_deg",
            facing,
            "path",
            List.of(
                Map.of("name", "start", "at", point(x - 2.1, y + 1.3, 0)),
                Map.of("name", "cue", "at", point(x - 0.9, y + 0.6, 0)),
                Map.of("name", "hit mark", "at", point(x, y, 0)))));
    return this;
  }

  InventedSetups light(int index, double x, double y, double z, @Nullable Object face) {
    Map<String, Object> light = new LinkedHashMap<>();
    light.put("id", "light-" + index);
    light.put("role", ROLES.get(index % ROLES.size()));
    light.put(
        "head",
        Map.of(
            "name",
            "400 W·s battery head",
            "energy_ws",
            400,
            "output",
            Map.of("kind", "guide_number", "guide_number_m", 60)));
    if (face != null) {
      light.put("modifier", Map.of("name", "box", "kind", "softbox", "face", face));
    }
    light.put("place", point(x, y, z));
    light.put("target", Map.of("name", "face", "at", point(0, 0, 1.6)));
    light.put("stops_down", 2);
    lights.add(light);
    return this;
  }

  InventedSetups built(int... order) {
    for (int index : order) {
      buildOrder.add(Map.of("light", "light-" + index));
    }
    return this;
  }

  static Object disc(double diameter) {
    return Map.of("shape", "disc", "diameter_m", diameter);
  }

  private static Object roundOrOctagon(double size) {
    return size > 1.2 ? Map.of("shape", "octagon", "across_flats_m", size) : disc(size);
  }

  static Object rectangle(double width, double height) {
    return Map.of("shape", "rectangle", "width_m", width, "height_m", height);
  }

  private static Map<String, Object> point(double x, double y, double z) {
    return Map.of("x_m", x, "y_m", y, "z_m", z);
  }

  SetupDocument read() {
    return switch (SetupDocument.FORM.read(Json.parse(Json.print(document)))) {
      case Reading.Sound<SetupDocument>(SetupDocument setup) -> setup;
      case Reading.Faulty<SetupDocument>(var problems) ->
          throw new IllegalStateException(problems.toString());
    };
  }
}
