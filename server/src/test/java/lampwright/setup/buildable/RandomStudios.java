package lampwright.setup.buildable;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import lampwright.document.Form;
import lampwright.document.Reading;
import lampwright.gear.Kit;
import lampwright.setup.SetupDocument;

/** Invented setups as studios have them, of one to eight lights, and kits from small to large. */
public final class RandomStudios {

  private static final List<Map<String, Object>> HEADS =
      List.of(
          head("battery head 200", 200, 42, 7, 0.1, "battery", 1.7, 2.0),
          head("battery head 500", 500, 64, 8, 0.1, "battery", 2.2, 1.6),
          head("battery head 1200", 1200, 90, 9, 0.1, "battery", 4.0, 1.9),
          head("mains head 400", 400, 58, 6, 0.1, "mains", 0.9, 1.2),
          head("small flash", 75, 28, 7, 1.0 / 3, "battery", 1.2, 2.5),
          head("old mains head", 800, 75, 5, 0.5, "mains", 2.0, 3.0));

  private static final List<Map<String, Object>> MODIFIERS =
      List.of(
          modifier("softbox 60 x 90", "softbox", rectangle(0.6, 0.9), 2.0),
          modifier("softbox 90 x 120", "softbox", rectangle(0.9, 1.2), 2.3),
          modifier("strip 30 x 120", "strip", rectangle(0.3, 1.2), 2.4),
          with(modifier("strip 30 x 120 with grid", "strip", rectangle(0.3, 1.2), 3.2), "grid"),
          modifier("octagon 120", "octagon", octagon(1.2), 2.5),
          modifier("octagon 190", "octagon", octagon(1.9), 3.0),
          modifier("umbrella 100", "umbrella", disc(1.0), 1.6),
          modifier("umbrella 180", "umbrella", disc(1.8), 2.6),
          modifier("dish 55", "dish", disc(0.55), 1.2),
          with(modifier("grid 20", "reflector", point(), 1.4), "grid"),
          modifier("long reflector", "reflector", point(), -1.2),
          modifier("snoot", "snoot", point(), 2.2),
          modifier("barn doors", "barn_doors", point(), 0.3),
          modifier("scrim 200", "scrim", rectangle(2, 2), 3.4));

  private static final List<Map<String, Object>> GELS =
      List.of(
          Map.of("name", "full warm", "shift_mired", 131.0, "loss_stops", 0.66),
          Map.of("name", "half warm", "shift_mired", 81.0, "loss_stops", 0.4),
          Map.of("name", "half cold", "shift_mired", -78.0, "loss_stops", 0.9));

  private static final List<Map<String, Object>> BODIES =
      List.of(
          body("full frame body", 36, 24, "1/200", "focal_plane", 100, 6400, 3.1),
          body("crop body", 23.5, 15.6, "1/250", "focal_plane", 200, 6400, 0),
          body("medium body", 44, 33, "1/125", "focal_plane", 64, 3200, 0),
          body("leaf body", 54, 40, "1/800", "leaf", 50, 1600, 0));

  private static final List<Map<String, Object>> LENSES =
      List.of(
          lens("wide zoom", 24, 2.8, 22),
          lens("normal", 50, 1.8, 16),
          lens("long", 85, 1.7, 16),
          lens("medium normal", 80, 2.8, 32));

  private static final List<String> ROLES = List.of("key", "fill", "rim", "background", "hair");
  private static final List<String> TIMES =
      List.of("1/60", "1/100", "1/125", "1/160", "1/200", "1/250", "1/30", "1/8", "1/320");
  private static final List<Double> APERTURES =
      List.of(2.0, 2.8, 3.5, 4.0, 5.6, 7.1, 8.0, 9.0, 11.0, 13.0, 16.0);
  private static final List<Double> SPEEDS = List.of(64.0, 100.0, 200.0, 400.0, 800.0);

  private final Random random;

  private RandomStudios(Random random) {
    this.random = random;
  }

  /** The setup of that number; always the same. */
  public static SetupDocument setup(int number) {
    return sound(SetupDocument.FORM, new RandomStudios(new Random(number)).setup());
  }

  /** A kit: 0 of a bag, 1 of a van, 2 of a studio, 3 of lights only, 4 of a rental house. */
  public static Kit kit(int number) {
    return sound(Kit.FORM, kitJson(number));
  }

  static Map<String, Object> kitJson(int number) {
    return switch (number) {
      case 0 ->
          kitOf(
              List.of(several(3, "head", HEADS.get(4)), several(1, "head", HEADS.get(0))),
              modifiers(0, 1, 6, 1, 10, 1),
              GELS.subList(0, 1),
              4,
              List.of(BODIES.get(1)),
              List.of(LENSES.get(1)));
      case 1 ->
          kitOf(
              List.of(several(2, "head", HEADS.get(1)), several(3, "head", HEADS.get(0))),
              modifiers(0, 2, 2, 2, 4, 1, 9, 2, 8, 1),
              List.of(),
              6,
              List.of(BODIES.get(0)),
              List.of(LENSES.get(0), LENSES.get(2)));
      case 2 ->
          kitOf(
              List.of(
                  several(4, "head", HEADS.get(3)),
                  several(2, "head", HEADS.get(2)),
                  several(2, "head", HEADS.get(5))),
              modifiers(1, 2, 3, 2, 2, 2, 5, 1, 7, 1, 9, 2, 11, 1, 8, 1, 13, 1),
              GELS,
              10,
              List.of(BODIES.get(0), BODIES.get(3)),
              List.of(LENSES.get(1), LENSES.get(3)));
      case 3 ->
          kitOf(
              List.of(several(8, "head", burst())),
              modifiers(0, 3, 2, 3, 4, 2, 9, 3),
              List.of(),
              0,
              List.of(),
              List.of());
      default ->
          kitOf(
              HEADS.stream().map(head -> several(4, "head", head)).toList(),
              modifiers(0, 4, 1, 4, 2, 4, 3, 4, 4, 4, 5, 4, 6, 4, 7, 4, 8, 4, 9, 4, 12, 4),
              GELS,
              16,
              List.of(BODIES.get(0), BODIES.get(1)),
              LENSES);
    };
  }

  private static Map<String, Object> kitOf(
      List<Map<String, Object>> heads,
      List<Map<String, Object>> modifiers,
      List<Map<String, Object>> gels,
      int stands,
      List<Map<String, Object>> bodies,
      List<Map<String, Object>> lenses) {
    Map<String, Object> kit = new HashMap<>();
    kit.put("name", "kit");
    kit.put("heads", heads);
    kit.put("modifiers", modifiers);
    kit.put("gels", gels.stream().map(gel -> several(2, "gel", gel)).toList());
    if (stands > 0) {
      kit.put(
          "stands",
          List.of(
              several(stands, "stand", Map.of("name", "stand", "highest_m", 2.6)),
              several(2, "stand", Map.of("name", "high stand", "highest_m", 4.0))));
    }
    kit.put("bodies", bodies);
    kit.put("lenses", lenses);
    kit.put("neutral_densities", List.of(Map.of("name", "three stops", "loss_stops", 3.0)));
    return kit;
  }

  private static Map<String, Object> burst() {
    return changed(HEADS.get(1), "long_burst_efficiency", 0.7);
  }

  private static List<Map<String, Object>> modifiers(int... indexAndCount) {
    List<Map<String, Object>> all = new ArrayList<>();
    for (int i = 0; i < indexAndCount.length; i += 2) {
      all.add(several(indexAndCount[i + 1], "modifier", MODIFIERS.get(indexAndCount[i])));
    }
    return all;
  }

  private Map<String, Object> setup() {
    Map<String, Object> setup = new HashMap<>();
    setup.put("title", "Studio");
    Map<String, Object> exposure = new HashMap<>();
    exposure.put("f_number", random.nextInt(25) == 0 ? 6.0 : pick(APERTURES));
    exposure.put("time", pick(TIMES));
    exposure.put("iso", pick(SPEEDS));
    setup.put("exposure", exposure);
    if (random.nextInt(5) > 0) {
      setup.put(
          "camera",
          Map.of("body", pick(BODIES), "lens", pick(LENSES), "place", place(0.2, -4.5, 1.4)));
    }
    if (random.nextBoolean()) {
      setup.put("ambient", Map.of("ev100", 2.0 + random.nextInt(24) / 2.0));
    }
    if (random.nextInt(5) == 0) {
      setup.put(
          "plan",
          Map.of(
              "seconds_between_frames",
              pick(List.of(0.5, 1.0, 2.0, 4.0)),
              "frames",
              (double) (50 + random.nextInt(600))));
    }
    List<Map<String, Object>> lights = new ArrayList<>();
    int many = random.nextInt(8);
    int count = 1 + Math.min(many, random.nextInt(8));
    for (int i = 0; i < count; i++) {
      lights.add(light(i));
    }
    setup.put("lights", lights);
    return setup;
  }

  private Map<String, Object> light(int number) {
    Map<String, Object> light = new HashMap<>();
    Map<String, Object> head = pick(HEADS);
    light.put("id", "light-" + number);
    light.put("role", pick(ROLES));
    light.put("head", head);
    if (random.nextInt(12) == 0) {
      light.put("heads", 2.0);
    }
    if (random.nextInt(5) > 0) {
      light.put("modifier", pick(MODIFIERS));
    }
    if (random.nextInt(6) == 0) {
      light.put("gels", List.of(pick(GELS)));
    }
    double distance = StrictMath.exp(random.nextDouble() * StrictMath.log(9));
    double around = random.nextDouble() * 2 * Math.PI;
    double height = 1.5 + Math.min(distance * 0.6, 2.4) * (random.nextDouble() - 0.25);
    double ground =
        Math.sqrt(Math.max(0.25, distance * distance - (height - 1.5) * (height - 1.5)));
    double x = ground * StrictMath.sin(around);
    double y = -ground * StrictMath.cos(around);
    light.put("place", place(x, y, height));
    Map<String, Object> target = new HashMap<>();
    target.put("name", "face");
    target.put("at", place(0, 0, 1.5));
    int held = random.nextInt(10);
    if (held == 0) {
      target.put("held", "on_surface");
      target.put(
          "surface_facing_deg",
          StrictMath.toDegrees(around > Math.PI ? around - 2 * Math.PI : around) * 0.6);
    } else if (held == 1 && StrictMath.cos(around) > 0.2) {
      target.put("held", "toward_camera");
    }
    light.put("target", target);
    if (random.nextInt(8) == 0) {
      light.put("aim", place(0.3 * random.nextGaussian(), 0.3 * random.nextGaussian(), 1.4));
    }
    double range = ((Number) head.getOrDefault("range_stops", 6.0)).doubleValue();
    double step = ((Number) head.getOrDefault("step_stops", 0.1)).doubleValue();
    light.put("stops_down", step * random.nextInt((int) (Math.min(range, 6) / step)));
    return light;
  }

  private <T> T pick(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }

  private static Map<String, Object> place(double x, double y, double z) {
    return Map.of("x_m", x, "y_m", y, "z_m", z);
  }

  private static Map<String, Object> head(
      String name,
      double ws,
      double guide,
      double range,
      double step,
      String feed,
      double t05,
      double recycle) {
    Map<String, Object> head = new HashMap<>();
    head.put("name", name);
    head.put("energy_ws", ws);
    head.put("output", Map.of("kind", "guide_number", "guide_number_m", guide));
    head.put("range_stops", range);
    head.put("step_stops", step);
    head.put("feed", feed);
    head.put("duration_t05_ms", t05);
    head.put("recycle_s", recycle);
    if (feed.equals("battery")) {
      head.put("flashes_per_charge", 300.0);
    }
    return head;
  }

  private static Map<String, Object> modifier(
      String name, String kind, Map<String, Object> face, double loss) {
    Map<String, Object> modifier = new HashMap<>();
    modifier.put("name", name);
    modifier.put("kind", kind);
    modifier.put("face", face);
    modifier.put("loss_stops", loss);
    return modifier;
  }

  private static Map<String, Object> with(Map<String, Object> modifier, String flag) {
    return changed(modifier, flag, true);
  }

  private static Map<String, Object> changed(Map<String, Object> of, String key, Object value) {
    Map<String, Object> copy = new HashMap<>(of);
    copy.put(key, value);
    return copy;
  }

  private static Map<String, Object> point() {
    return Map.of("shape", "point");
  }

  private static Map<String, Object> disc(double diameter) {
    return Map.of("shape", "disc", "diameter_m", diameter);
  }

  private static Map<String, Object> octagon(double across) {
    return Map.of("shape", "octagon", "across_flats_m", across);
  }

  private static Map<String, Object> rectangle(double width, double height) {
    return Map.of("shape", "rectangle", "width_m", width, "height_m", height);
  }

  private static Map<String, Object> body(
      String name,
      double width,
      double height,
      String sync,
      String shutter,
      double low,
      double high,
      double travelMs) {
    Map<String, Object> body = new HashMap<>();
    body.put("name", name);
    body.put("width_mm", width);
    body.put("height_mm", height);
    body.put("pixels_wide", 8192.0);
    body.put("sync", sync);
    body.put("shutter", shutter);
    body.put("iso_lowest", low);
    body.put("iso_highest", high);
    if (travelMs > 0) {
      body.put("curtain_travel_ms", travelMs);
    }
    return body;
  }

  private static Map<String, Object> lens(String name, double mm, double widest, double smallest) {
    return Map.of(
        "name",
        name,
        "focal_length_mm",
        mm,
        "widest_f_number",
        widest,
        "smallest_f_number",
        smallest);
  }

  private static Map<String, Object> several(int count, String noun, Object item) {
    return Map.of("count", (double) count, noun, item);
  }

  static <T> T sound(Form<T> form, Object json) {
    return switch (form.read(json)) {
      case Reading.Sound<T> sound -> sound.value();
      case Reading.Faulty<T> faulty -> throw new AssertionError(faulty.problems() + "\n" + json);
    };
  }
}
