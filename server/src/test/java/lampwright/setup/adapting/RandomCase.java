package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lampwright.gear.Kit;
import lampwright.setup.Documents;
import lampwright.setup.SetupDocument;

/** An invented setup with an invented kit and wishes, the same for the same seed. */
record RandomCase(SetupDocument setup, Kit kit, Wishes wishes) {

  /** One to three lights at one camera setting, with all that a kit can have. */
  static RandomCase ofOneSetting(long seed) {
    Draw draw = new Draw(seed, false);
    int lights = draw.random.nextInt(1, 4);
    List<Double> steps = List.of(0.5, 1.0, 1.0 / 3);
    draw.gear(draw.random.nextInt(1, 4), 2, draw.random.nextInt(0, 4), steps, 3);
    if (draw.chance(0.3)) {
      draw.gels();
    }
    if (draw.chance(0.3)) {
      draw.stands();
    }
    draw.lights(lights, steps);
    draw.setup.put("exposure", Map.of("f_number", 5.6, "time", "1/125", "iso", 100.0));
    if (draw.chance(0.7)) {
      draw.setup.put("ambient", Map.of("ev100", draw.between(6, 12)));
    }
    draw.kit.put("bodies", List.of(DrawCamera.body("body", 36, "1/200", 200, 200)));
    double fNumber = draw.oneOf(List.of(5.6, 8.0, 11.0));
    draw.kit.put("lenses", List.of(DrawCamera.lens("lens", 50, 2.8, 22)));
    draw.limits.put("keep_f_number", fNumber);
    draw.limits.put("keep_time", draw.oneOf(List.of("1/125", "1/160", "1/2")));
    draw.wishesOfLights(lights);
    if (draw.chance(0.3)) {
      draw.setup.put(
          "camera",
          Map.of(
              "body", DrawCamera.body("old body", 36, "1/200", 100, 6_400),
              "lens", DrawCamera.lens("old lens", 85, 2.8, 22),
              "place", Map.of("x_m", 0.0, "y_m", -4.0, "z_m", 1.6),
              "aim", Map.of("x_m", 0.0, "y_m", 0.0, "z_m", 1.6)));
    }
    return of(draw);
  }

  /** One or two lights at every setting of one to four small cameras. */
  static RandomCase ofSmallCameras(long seed) {
    Draw draw = new Draw(seed, true);
    int lights = draw.random.nextInt(1, 3);
    List<Double> steps = List.of(0.5, 1.0, 1.0 / 3);
    draw.gear(draw.random.nextInt(1, 4), 2, draw.random.nextInt(0, 2), steps, 3);
    draw.lights(lights, steps);
    draw.setup.put(
        "exposure",
        Map.of(
            "f_number", draw.oneOf(List.of(4.0, 5.6, 8.0)),
            "time", draw.oneOf(List.of("1/60", "1/125", "1/250", "1/500")),
            "iso", draw.oneOf(List.of(100.0, 160.0, 400.0))));
    if (draw.chance(0.7)) {
      draw.setup.put("ambient", Map.of("ev100", draw.between(6, 14)));
    }
    List<Object> bodies = new ArrayList<>();
    for (int i = 0; i < draw.random.nextInt(1, 3); i++) {
      bodies.add(DrawCamera.body(draw, "body " + i));
    }
    List<Object> lenses = new ArrayList<>();
    for (int i = 0; i < draw.random.nextInt(1, 3); i++) {
      double widest = draw.between(2, 6);
      lenses.add(
          DrawCamera.lens("lens " + i, draw.between(30, 90), widest, widest * draw.between(1, 2)));
    }
    if (draw.chance(0.9)) {
      draw.kit.put("bodies", bodies);
      draw.kit.put("lenses", lenses);
    }
    DrawCamera.oldCamera(draw, bodies, lenses);
    DrawCamera.densities(draw);
    draw.wishesOfLights(lights);
    draw.limits.remove("lights_may_move");
    DrawCamera.wishesOfCamera(draw);
    return of(draw);
  }

  /**
   * Twelve lights, twenty heads in six models and twenty-five modifiers.
   *
   * @param anySetting an ordinary camera with all its settings; else few of them
   */
  static RandomCase ofTwelveLights(long seed, boolean anySetting) {
    Draw draw = new Draw(seed, false);
    draw.largeKit();
    draw.lights(12, List.of(0.1));
    draw.setup.put("exposure", Map.of("f_number", 5.6, "time", "1/125", "iso", 200.0));
    draw.setup.put("ambient", Map.of("ev100", draw.between(8, 12)));
    Object body = DrawCamera.body("body", 36, "1/160", 100, anySetting ? 6_400 : 200);
    draw.kit.put("bodies", List.of(body));
    draw.kit.put("lenses", List.of(DrawCamera.lens("lens", 50, 1.8, 22)));
    draw.setup.put("camera", Map.of("body", body, "lens", DrawCamera.lens("old", 85, 1.8, 22)));
    if (!anySetting) {
      draw.limits.put("keep_time", draw.oneOf(List.of("1/160", "1/125", "1/60")));
    }
    return new RandomCase(
        Documents.setup(draw.setup),
        Documents.kit(draw.kit),
        Wishes.none()
            .withLimits(Documents.sound(Limits.FORM, draw.limits))
            .withPreset(draw.oneOf(List.of(Weights.Preset.values())))
            .withWays(1));
  }

  private static RandomCase of(Draw draw) {
    Wishes wishes =
        Wishes.none()
            .withLimits(Documents.sound(Limits.FORM, draw.limits))
            .withPreset(draw.oneOf(List.of(Weights.Preset.values())))
            .withWays(1);
    if (draw.chance(0.1)) {
      Map<String, Object> pin = new LinkedHashMap<>();
      pin.put("light", "light-0");
      if (draw.chance(0.3)) {
        pin.put("lit", false);
      } else if (draw.chance(0.5)) {
        pin.put("head", "head 0");
      } else {
        pin.put("modifier", draw.modifiers.isEmpty() ? "standard reflector" : "box 0");
      }
      wishes = wishes.withPins(List.of(Documents.sound(Pin.FORM, pin)));
    }
    if (wishes.pins().isEmpty() && draw.chance(0.1)) {
      double dead = draw.random.nextInt(2);
      Object state = Map.of("head", "head 0", "dead", dead, "charge_share", draw.between(0.1, 1));
      wishes = wishes.withTonight(List.of(Documents.sound(HeadTonight.FORM, state)));
    }
    return new RandomCase(Documents.setup(draw.setup), Documents.kit(draw.kit), wishes);
  }
}
