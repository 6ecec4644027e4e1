package lampwright.setup.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.engine.unit.Metres;
import lampwright.setup.Documents;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import org.junit.jupiter.api.Test;

/** What reaches other targets and other places than a light's own. */
class SpillAndPathTest {

  private static Map<String, Object> point(double x, double y, double z) {
    return Map.of("x_m", x, "y_m", y, "z_m", z);
  }

  private static Map<String, Object> light(
      String id, String role, Map<String, Object> place, Map<String, Object> at) {
    Map<String, Object> light = new LinkedHashMap<>();
    light.put("id", id);
    light.put("role", role);
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
    light.put("place", place);
    light.put("target", Map.of("name", "target of " + id, "at", at));
    light.put("stops_down", 2.0);
    return light;
  }

  private static Map<String, Object> with(Map<String, Object> light, Object... keysAndValues) {
    Map<String, Object> changed = new LinkedHashMap<>(light);
    for (int i = 0; i < keysAndValues.length; i += 2) {
      changed.put((String) keysAndValues[i], keysAndValues[i + 1]);
    }
    return changed;
  }

  private static SetupDocument setup(Map<String, Object> more, Object... lights) {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("title", "Light that goes on");
    document.put("exposure", Map.of("f_number", 8.0, "time", "1/125", "iso", 100.0));
    document.put("lights", List.of(lights));
    document.putAll(more);
    return Documents.setup(document);
  }

  private static final Map<String, Object> FACE = point(0, 0, 1.5);

  /** The inverse square law: one stop at the root of two times the distance. */
  @Test
  void onTheWayFromThePointLightItFallsOneStopByRootTwo() {
    double further = 4 * Math.sqrt(2) - 4;
    SetupDocument setup =
        setup(
            Map.of(
                "camera",
                Map.of("place", point(0, -100, 1.5)),
                "subjects",
                List.of(
                    Map.of(
                        "name",
                        "walker",
                        "place",
                        point(0, 0, 0),
                        "path",
                        List.of(
                            Map.of("name", "hit mark", "at", point(0, 0, 0)),
                            Map.of("name", "end", "at", point(0, further, 0)))))),
            light("key", "key", point(0, -4, 1.5), FACE));
    PathFigures path = FiguresComputation.of(setup).paths().getFirst();
    assertEquals(1.5, path.lift().value(), 1e-12);
    assertEquals(0, path.hit());
    assertEquals(6, path.stations().size());
    PathFigures.Station end = path.stations().getLast();
    assertEquals(Optional.of("end"), end.mark());
    assertEquals(further, end.gone().value(), 1e-12);
    assertEquals(-1, path.fromHit(end, 0).orElseThrow().value(), 1e-9);
    assertEquals(-1, path.fromHit(end).orElseThrow().value(), 1e-9);
  }

  /** A face of which the receiver's horizon cuts half off gives half its light, not none. */
  @Test
  void aLargeFaceFromTheSideStillLightsAMeterTowardTheCamera() {
    Map<String, Object> box =
        Map.of(
            "name",
            "box",
            "kind",
            "softbox",
            "loss_stops",
            2.0,
            "face",
            Map.of("shape", "rectangle", "width_m", 1.5, "height_m", 1.5));
    SetupDocument setup =
        setup(Map.of(), with(light("key", "key", point(-1.5, 0, 1.5), FACE), "modifier", box));
    Figures figures = FiguresComputation.of(setup);
    TargetFigures face = figures.targets().getFirst();
    double level = figures.lights().getFirst().level().orElseThrow().exposure().value();
    assertTrue(face.sum().flash().value() > 0.05 * level, face.sum().toString());
    // The meter that points at the light gets all of it.
    assertEquals(level, face.sums().towardKey().orElseThrow().flash().value(), 1e-9 * level);
  }

  /**
   * The inverse square law: 6 m from the key there is (4/6)² of what there is at 4 m. The first lit
   * target stays the one that the dials turn about.
   */
  @Test
  void aTargetLitFromBehindOnlyStillTellsWhatReachesIt() {
    SetupDocument setup =
        setup(
            Map.of("camera", Map.of("place", point(0, -100, 1.5))),
            light("rim", "rim", point(0, 6, 1.5), point(0, 2, 1.5)),
            light("key", "key", point(0, -4, 1.5), FACE));
    Figures figures = FiguresComputation.of(setup);
    assertEquals(1, figures.targets().size());
    double face = figures.targets().getFirst().sum().flash().value();
    assertEquals("target of key", figures.targets().getFirst().target().name());
    assertTrue(
        figures.dials().stream()
            .noneMatch(
                dial -> dial.light().isPresent() && dial.light().get().equals(new LightId("rim"))));
    UnlitTarget back = figures.unlit().getFirst();
    assertEquals(1, figures.unlit().size());
    assertEquals("target of rim", back.target().name());
    assertEquals(List.of(new LightId("rim")), back.lights());
    SpillFigures.Reach rim = back.spill().reaches().getFirst();
    assertTrue(rim.forIt());
    assertEquals(0, rim.exposure().value());
    SpillFigures.Reach key = back.spill().reaches().getLast();
    assertFalse(key.forIt());
    assertEquals(face * 4 / 9, key.exposure().value(), 1e-9 * face);
    assertEquals(1, back.spill().share(key), 1e-12);
  }

  @Test
  void aTargetOfWhichNoLightIsKnownIsNotCalledUnlit() {
    Map<String, Object> unknown = with(light("key", "key", point(0, -4, 1.5), FACE));
    unknown.remove("stops_down");
    // Of a reading with the ambient nothing is known of the light until the ambient is.
    unknown.put("reading", Map.of("f_number", 8.0, "includes_ambient", true));
    Figures figures = FiguresComputation.of(setup(Map.of(), unknown));
    assertEquals(List.of(), figures.targets());
    assertEquals(List.of(), figures.unlit());
    assertTrue(figures.needs().contains("/ambient"), figures.needs().toString());
  }

  /** A reading scales the light everywhere: one stop more at its target is one more elsewhere. */
  @Test
  void aReadingCalibratesTheSpill() {
    Map<String, Object> key = light("key", "key", point(-2, -2, 2), FACE);
    Map<String, Object> wall = light("wall", "background", point(1, 1, 2), point(0, 3, 1.5));
    Figures computed = FiguresComputation.of(setup(Map.of(), key, wall));
    double reading = computed.lights().getFirst().level().orElseThrow().reading().value();
    Figures metered =
        FiguresComputation.of(
            setup(
                Map.of(), with(key, "reading", Map.of("f_number", reading * Math.sqrt(2))), wall));
    SpillFigures.Reach before = computed.targets().get(1).spill().reaches().getFirst();
    SpillFigures.Reach after = metered.targets().get(1).spill().reaches().getFirst();
    assertTrue(before.exposure().value() > 0 && !before.forIt());
    assertEquals(1, after.exposure().stopsOver(before.exposure()).value(), 0.01);
    // The sum of the lights for the wall alone is as it was.
    assertEquals(computed.targets().get(1).sum(), metered.targets().get(1).sum());
  }

  /** C is 330 for a dome, 250 for a flat receptor (ISO 2720, quoted): 0.4 stop. */
  @Test
  void aDomeTowardThePointLightReadsWithItsOwnConstant() {
    Map<String, Object> key = light("key", "key", point(-2, -2, 2), FACE);
    Figures flat =
        FiguresComputation.of(setup(Map.of(), with(key, "reading", Map.of("f_number", 8.0))));
    Figures dome =
        FiguresComputation.of(
            setup(Map.of(), with(key, "reading", Map.of("f_number", 8.0, "receptor", "dome"))));
    Level byFlat = flat.lights().getFirst().level().orElseThrow();
    Level byDome = dome.lights().getFirst().level().orElseThrow();
    assertEquals(330.0 / 250, byDome.exposure().value() / byFlat.exposure().value(), 1e-12);
  }

  /** A dome gives half to light from the side: (1 + cos) / 2. */
  @Test
  void aDomeTowardTheCameraGetsHalfOfALightFromTheSide() {
    Figures figures =
        FiguresComputation.of(setup(Map.of(), light("key", "key", point(-3, 0, 1.5), FACE)));
    // The key gives nothing toward the camera, so that target has no sum without an ambient.
    assertTrue(figures.targets().isEmpty());
    Figures lit =
        FiguresComputation.of(
            setup(
                Map.of("ambient", Map.of("ev100", 10.0)),
                light("key", "key", point(-3, 0, 1.5), FACE)));
    double level = lit.lights().getFirst().level().orElseThrow().exposure().value();
    double dome = lit.targets().getFirst().sums().dome().orElseThrow().flash().value();
    assertEquals(0.5 * level, dome, 1e-9 * level);
  }

  /** By similar triangles; and the inverse square law from 0.75 m to 1.25 m. */
  @Test
  void softnessAndFallOffAreThoseOfTheGeometry() {
    Map<String, Object> disc =
        Map.of(
            "name",
            "disc",
            "kind",
            "octagon",
            "loss_stops",
            2.0,
            "face",
            Map.of("shape", "disc", "diameter_m", 1.0));
    LightFigures soft =
        FiguresComputation.of(
                setup(
                    Map.of(), with(light("key", "key", point(0, -2, 1.5), FACE), "modifier", disc)))
            .lights()
            .getFirst();
    assertEquals(0.05, soft.penumbra(new Metres(0.1)).value(), 1e-9);
    LightFigures hard =
        FiguresComputation.of(setup(Map.of(), light("key", "key", point(0, -1, 1.5), FACE)))
            .lights()
            .getFirst();
    assertEquals(0, hard.penumbra(new Metres(0.1)).value());
    assertEquals(
        2 * Math.log(1.25 / 0.75) / Math.log(2),
        hard.fallOffAcross(new Metres(0.5)).orElseThrow().value(),
        1e-9);
  }

  @Test
  void aModelledLossIsSureToAStopOnly() {
    Map<String, Object> box =
        Map.of(
            "name",
            "box",
            "kind",
            "softbox",
            "face",
            Map.of("shape", "rectangle", "width_m", 0.9, "height_m", 1.2));
    Figures figures =
        FiguresComputation.of(
            setup(Map.of(), with(light("key", "key", point(0, -2, 1.5), FACE), "modifier", box)));
    Level level = figures.lights().getFirst().level().orElseThrow();
    assertTrue(
        level.budget().parts().stream()
            .anyMatch(part -> part.name().equals("modelled loss") && part.deviation().value() == 1),
        level.budget().toString());
  }
}
