package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;

/**
 * Draws gear, lights and wishes in JSON, the same for the same seed. Numbers are not round, so that
 * no two ways cost the same by chance.
 */
final class Draw {
  private static final List<String> ROLES =
      List.of("key", "fill", "rim", "hair", "accent", "background");
  private static final List<String> KINDS =
      List.of("softbox", "octagon", "umbrella", "dish", "strip");

  final Random random;
  final List<Object> heads = new ArrayList<>();
  final List<Object> modifiers = new ArrayList<>();
  final List<Object> gels = new ArrayList<>();
  final Map<String, Object> kit = new LinkedHashMap<>();
  final Map<String, Object> setup = new LinkedHashMap<>();
  final Map<String, Object> limits = new LinkedHashMap<>();
  private final boolean pulses;

  Draw(long seed, boolean pulses) {
    this.random = new Random(seed);
    this.pulses = pulses;
    kit.put("name", "Kit");
    setup.put("title", "Setup");
  }

  boolean chance(double share) {
    return random.nextDouble() < share;
  }

  double between(double least, double most) {
    return least + (most - least) * random.nextDouble();
  }

  <T> T oneOf(List<T> all) {
    return all.get(random.nextInt(all.size()));
  }

  Map<String, Object> head(String name, List<Double> steps, double mostRange) {
    Map<String, Object> head = new LinkedHashMap<>();
    head.put("name", name);
    head.put("energy_ws", between(100, 600));
    double guideNumber = between(15, 60);
    head.put("output", Map.of("kind", "guide_number", "guide_number_m", guideNumber));
    head.put("step_stops", oneOf(steps));
    head.put("range_stops", Math.floor(between(1, mostRange + 1)));
    head.put("recycle_s", between(0.2, 3));
    if (chance(0.5)) {
      head.put("flashes_per_charge", (double) random.nextInt(50, 500));
    }
    if (chance(0.2)) {
      head.put("feed", "mains");
    }
    if (chance(0.3)) {
      head.put("batteries", 2.0);
    }
    if (chance(0.8)) {
      head.put("weight_kg", between(0.5, 5));
    }
    if (chance(0.5)) {
      head.put("mount", oneOf(List.of("A", "B")));
    }
    if (pulses && chance(0.7)) {
      head.put("duration_t05_ms", between(0.3, 3));
      head.put("control", oneOf(List.of("cut", "voltage")));
    }
    if (pulses && chance(0.4)) {
      head.put("long_burst_efficiency", between(0.5, 1));
    }
    return head;
  }

  Map<String, Object> modifier(String name) {
    String kind = oneOf(KINDS);
    Map<String, Object> modifier = new LinkedHashMap<>();
    modifier.put("name", name);
    modifier.put("kind", kind);
    modifier.put(
        "face",
        switch (kind) {
          case "octagon" -> Map.of("shape", "octagon", "across_flats_m", between(0.6, 1.5));
          case "softbox", "strip" ->
              Map.of(
                  "shape",
                  "rectangle",
                  "width_m",
                  between(0.2, 0.9),
                  "height_m",
                  between(0.6, 1.2));
          default -> Map.of("shape", "disc", "diameter_m", between(0.3, 1.2));
        });
    modifier.put("loss_stops", between(-0.5, 2));
    if (chance(0.5)) {
      modifier.put("spread_deg", between(25, 110));
    }
    if (chance(0.3)) {
      modifier.put("grid", true);
    }
    if (chance(0.3)) {
      modifier.put("mount", oneOf(List.of("A", "b")));
    }
    if (chance(0.2)) {
      modifier.put("takes_heads", 2.0);
    }
    if (chance(0.7)) {
      modifier.put("weight_kg", between(0.3, 3));
    }
    return modifier;
  }

  void gear(int kinds, int mostCount, int boxes, List<Double> steps, double mostRange) {
    List<Object> counted = new ArrayList<>();
    for (int i = 0; i < kinds; i++) {
      heads.add(head("head " + i, steps, mostRange));
    }
    if (chance(0.2)) {
      packs();
    }
    for (Object head : heads) {
      counted.add(Map.of("count", (double) random.nextInt(1, mostCount + 1), "head", head));
    }
    kit.put("heads", counted);
    List<Object> countedModifiers = new ArrayList<>();
    for (int i = 0; i < boxes; i++) {
      Object modifier = modifier("box " + i);
      modifiers.add(modifier);
      countedModifiers.add(Map.of("count", (double) random.nextInt(1, 3), "modifier", modifier));
    }
    kit.put("modifiers", countedModifiers);
    if (boxes > 0 && chance(0.15)) {
      Map<String, Object> reading =
          Map.of("f_number", oneOf(List.of(5.6, 8.0, 11.0)), "distance_m", between(1, 3));
      kit.put(
          "pairings", List.of(Map.of("head", "head 0", "modifier", "box 0", "reading", reading)));
    }
  }

  /** Twenty heads in six models, twenty-five modifiers of thirteen kinds. */
  void largeKit() {
    List<Object> countedHeads = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      heads.add(head("head " + i, List.of(0.1), 7));
      countedHeads.add(Map.of("count", i < 2 ? 4.0 : 3.0, "head", heads.get(i)));
    }
    kit.put("heads", countedHeads);
    List<Object> countedModifiers = new ArrayList<>();
    for (int i = 0; i < 13; i++) {
      modifiers.add(modifier("box " + i));
      countedModifiers.add(Map.of("count", i < 12 ? 2.0 : 1.0, "modifier", modifiers.get(i)));
    }
    kit.put("modifiers", countedModifiers);
  }

  @SuppressWarnings("unchecked")
  private void packs() {
    Map<String, Object> pack = new LinkedHashMap<>();
    pack.put("name", "pack");
    pack.put("energy_ws", between(200, 1_200));
    pack.put("outlets", (double) random.nextInt(1, 4));
    if (chance(0.8)) {
      pack.put("recycle_s", between(0.5, 4));
    }
    if (chance(0.5)) {
      pack.put("flashes_per_charge", (double) random.nextInt(50, 400));
    }
    pack.put("feed", oneOf(List.of("battery", "mains")));
    kit.put("packs", List.of(Map.of("count", (double) random.nextInt(1, 3), "pack", pack)));
    ((Map<String, Object>) heads.getFirst()).put("pack", "pack");
    if (heads.size() > 1 && chance(0.5)) {
      ((Map<String, Object>) heads.get(1)).put("pack", "pack");
    }
  }

  void gels() {
    List<Object> counted = new ArrayList<>();
    for (int i = 0; i < random.nextInt(0, 4); i++) {
      Object gel =
          Map.of(
              "name", "gel " + i,
              "shift_mired", between(-200, 200),
              "loss_stops", between(0.2, 1.5));
      gels.add(gel);
      counted.add(Map.of("count", (double) random.nextInt(1, 3), "gel", gel));
    }
    kit.put("gels", counted);
  }

  void stands() {
    List<Object> counted = new ArrayList<>();
    for (int i = 0; i < random.nextInt(1, 4); i++) {
      Object stand = Map.of("name", "stand " + i, "highest_m", between(1.2, 3.5));
      counted.add(Map.of("count", (double) random.nextInt(1, 3), "stand", stand));
    }
    kit.put("stands", counted);
  }

  void lights(int count, List<Double> steps) {
    List<Object> lights = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      lights.add(light(i, steps));
    }
    setup.put("lights", lights);
  }

  private Object light(int i, List<Double> steps) {
    Map<String, Object> light = new LinkedHashMap<>();
    light.put("id", "light-" + i);
    light.put("role", oneOf(ROLES));
    @SuppressWarnings("unchecked")
    Map<String, Object> head =
        chance(0.6) ? (Map<String, Object>) oneOf(heads) : head("own " + i, steps, 4);
    light.put("head", head);
    double step = number(head, "step_stops");
    long all = (long) Math.floor(number(head, "range_stops") / step + 1e-9);
    long down = random.nextLong(all + 1);
    double parts = Math.round(1 / step);
    light.put("stops_down", chance(0.7) ? down / parts : between(0, 1));
    if (chance(0.15)) {
      light.put("heads", 2.0);
    }
    if (chance(0.1)) {
      light.put("pops", 2.0);
    }
    if (chance(0.5)) {
      light.put(
          "modifier",
          !modifiers.isEmpty() && chance(0.7) ? oneOf(modifiers) : modifier("own box " + i));
    }
    if (chance(0.1)) {
      light.put("output", Map.of("f_number", 8.0, "distance_m", between(1, 3)));
    }
    gelsOf(light);
    light.put(
        "place",
        Map.of(
            "x_m", between(1, 3), "y_m", between(-2, 2), "z_m", chance(0.1) ? 0.2 : between(1, 3)));
    light.put("target", Map.of("name", "face", "at", Map.of("x_m", 0.0, "y_m", 0.0, "z_m", 1.6)));
    return light;
  }

  private static double number(Map<String, Object> json, String key) {
    return (Double) Objects.requireNonNull(json.get(key));
  }

  private void gelsOf(Map<String, Object> light) {
    if (chance(0.75)) {
      return;
    }
    Object own = Map.of("name", "own gel", "shift_mired", between(-200, 200), "loss_stops", 0.7);
    if (gels.isEmpty() || chance(0.3)) {
      light.put("gels", List.of(own));
    } else if (gels.size() > 1 && chance(0.4)) {
      light.put("gels", List.of(gels.get(0), gels.get(1)));
    } else {
      light.put("gels", List.of(oneOf(gels)));
    }
  }

  void wishesOfLights(int count) {
    if (chance(0.2)) {
      limits.put("lights_may_move", true);
      limits.put("nearest_m", between(0.5, 2));
    }
    limits.put("heads_per_light_at_most", (double) random.nextInt(1, 4));
    if (chance(0.2)) {
      limits.put("pops_per_light_at_most", (double) random.nextInt(1, 4));
    }
    if (chance(0.3)) {
      limits.put("frames", (double) random.nextInt(50, 900));
    }
    if (chance(0.3)) {
      limits.put("seconds_between_frames", between(0.3, 3));
    }
    if (chance(0.3)) {
      limits.put("may_give_up", List.of("light-" + random.nextInt(count)));
    }
    if (chance(0.5)) {
      limits.put("light_within_stops", between(0, 2));
    }
    if (chance(0.2)) {
      limits.put("softness_within_doublings", between(0.3, 3));
    }
  }
}
