package lampwright.setup.adapting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.light.LightAtTarget;
import lampwright.engine.power.PowerRange;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;
import lampwright.gear.Head;
import lampwright.gear.Kit;
import lampwright.gear.Modifier;
import lampwright.setup.Documents;
import lampwright.setup.Light;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FiguresComputation;
import lampwright.setup.figures.LightComputation;
import org.junit.jupiter.api.Test;

/**
 * The search against trying everything: every camera setting, every way to give heads to lights,
 * every step of every dial. Small random cases; modifiers are the standard reflectors.
 */
class ExhaustiveSearchTest {

  private static final int CASES = 200;
  private static final List<String> ROLES = List.of("key", "fill", "rim", "accent", "background");

  @Test
  void theAnswerCostsNoMoreThanTheBestOfAllWays() {
    int givenUp = 0;
    for (int seed = 0; seed < CASES; seed++) {
      Random random = new Random(seed);
      SetupDocument setup = Documents.setup(setup(random));
      Kit kit = Documents.kit(kit(random));
      Answer answer =
          AdaptationSearch.adapt(
              setup, kit, Optional.empty(), Limits.none(), Weights.Preset.CLOSEST_LOOK.weights());
      List<Adaptation> found =
          switch (answer) {
            case Answer.Adapted adapted -> adapted.adaptations();
            case Answer.NotEnoughGear short_ -> short_.nearest();
          };
      givenUp += answer instanceof Answer.NotEnoughGear ? 1 : 0;
      if (!found.isEmpty()) {
        assertEquals(best(setup, kit), found.getFirst().cost(), 1e-9, "seed " + seed);
        assertEquals(
            found.getFirst().cost(),
            CostForTests.of(setup, found.getFirst()),
            1e-9,
            "seed " + seed);
      }
    }
    assertTrue(givenUp > 10 && givenUp < CASES / 2, givenUp + " cases with too little gear");
  }

  private static double best(SetupDocument setup, Kit kit) {
    Weights weights = Weights.Preset.CLOSEST_LOOK.weights();
    Figures figures = FiguresComputation.of(setup);
    List<Head> heads = GearUnits.of(kit.heads(), 9);
    double least = Double.POSITIVE_INFINITY;
    for (CameraChoice.Setting setting : CameraChoice.of(setup, kit).settings(Limits.none())) {
      ExposureSettings exposure = setting.exposure();
      double[][] cost = new double[setup.lights().size()][heads.size()];
      for (int i = 0; i < setup.lights().size(); i++) {
        Light light = setup.lights().get(i);
        Stops wanted = figures.get(light.id()).level().orElseThrow().fromShooting();
        for (int j = 0; j < heads.size(); j++) {
          cost[i][j] =
              cost(
                  setup,
                  light,
                  heads.get(j),
                  exposure.requiredExposure(MeterConstant.FLAT).plus(wanted),
                  weights);
        }
      }
      ExposureSettings old = setup.exposure().settings();
      double camera =
          weights.ambient() * ambientCount(old.ev100().minus(exposure.ev100()).value())
              + weights.depth() * Math.abs(exposure.aperture().stopsAbove(old.aperture()).value())
              + weights.time() * Math.abs(exposure.time().stopsOver(old.time()).value())
              + weights.iso() * Math.max(0, Stops.ofRatio(exposure.iso().value() / 100).value());
      least = Math.min(least, camera + permuted(setup, cost, 0, 0));
    }
    return least;
  }

  private static double cost(
      SetupDocument setup, Light light, Head head, LuxSeconds wanted, Weights weights) {
    LightAtTarget at =
        LightComputation.atTarget(
            setup, light, head, Modifier.standardReflector(), Optional.empty());
    double least = Double.POSITIVE_INFINITY;
    Stops dial = Stops.ZERO;
    for (Stops down : new PowerRange(head.range(), head.step()).settings()) {
      double miss = Math.abs(at.at(down).stopsOver(wanted).value());
      if (miss < least - 1e-12) {
        least = miss;
        dial = down;
      }
    }
    return Weights.ofRole(light.role()) * least
        + weights.carryPerKg() * head.weightKg().orElse(0.0)
        + weights.pacePerSecond()
            * head.recycle().map(Seconds::value).orElse(0.0)
            * dial.negated().toFactor();
  }

  private static double permuted(SetupDocument setup, double[][] cost, int light, int taken) {
    if (light == cost.length) {
      return 0;
    }
    double least =
        Weights.ofRole(setup.lights().get(light).role()) * Weights.GIVEN_UP_STOPS
            + permuted(setup, cost, light + 1, taken);
    for (int j = 0; j < cost[light].length; j++) {
      if ((taken & (1 << j)) == 0) {
        least =
            Math.min(least, cost[light][j] + permuted(setup, cost, light + 1, taken | (1 << j)));
      }
    }
    return least;
  }

  private static Object setup(Random random) {
    List<Object> lights = new ArrayList<>();
    int count = 1 + random.nextInt(4);
    for (int i = 0; i < count; i++) {
      Map<String, Object> light = new LinkedHashMap<>();
      light.put("id", "light-" + i);
      light.put("role", ROLES.get(random.nextInt(ROLES.size())));
      light.put("head", head(random));
      light.put(
          "place",
          Map.of(
              "x_m", 1 + 5 * random.nextDouble(),
              "y_m", -3 + 6 * random.nextDouble(),
              "z_m", 1 + 2 * random.nextDouble()));
      light.put("target", Map.of("name", "face", "at", Map.of("x_m", 0.0, "y_m", 0.0, "z_m", 1.6)));
      light.put("stops_down", 2 * random.nextDouble());
      lights.add(light);
    }
    return Map.of(
        "title",
        "Random",
        "exposure",
        Map.of("f_number", 4.5, "time", "1/250", "iso", 125.0),
        "ambient",
        Map.of("ev100", 8 + 6 * random.nextDouble()),
        "lights",
        lights);
  }

  private static Object kit(Random random) {
    List<Object> heads = new ArrayList<>();
    int count = 1 + random.nextInt(5);
    for (int i = 0; i < count; i++) {
      heads.add(Map.of("head", head(random)));
    }
    return Map.of(
        "name",
        "Random",
        "bodies",
        List.of(
            Map.of(
                "name", "body",
                "width_mm", 36.0,
                "height_mm", 24.0,
                "sync", "1/160",
                "iso_highest", 250.0)),
        "lenses",
        List.of(
            Map.of(
                "name", "lens",
                "focal_length_mm", 50.0,
                "widest_f_number", 3.3,
                "smallest_f_number", 8.0)),
        "heads",
        heads);
  }

  private static Object head(Random random) {
    return Map.of(
        "name", "head " + random.nextInt(1_000),
        "energy_ws", 100 + 500 * random.nextDouble(),
        "output",
            Map.of(
                "kind",
                "guide_number",
                "guide_number_m",
                10 * StrictMath.pow(8, random.nextDouble())),
        "range_stops", 2.0 + random.nextInt(6),
        "step_stops", List.of(0.1, 1.0 / 3, 0.5, 1.0).get(random.nextInt(4)),
        "recycle_s", 0.5 + 3 * random.nextDouble(),
        "weight_kg", 0.5 + 4 * random.nextDouble());
  }

  /** Each stop once; beyond a stop and a half each twice, as Weights says. */
  private static double ambientCount(double miss) {
    return Math.abs(miss) + Math.max(0, Math.abs(miss) - 1.5);
  }
}
