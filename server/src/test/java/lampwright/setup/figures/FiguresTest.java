package lampwright.setup.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import lampwright.engine.Known;
import lampwright.engine.unit.Stops;
import lampwright.setup.Documents;
import lampwright.setup.LightId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What every photographer knows of light, and what the document's parts do to the figures. */
class FiguresTest {

  private static final Object ONE = Documents.resource("one-light.json");

  private static Figures figures(Object json) {
    return FiguresComputation.of(Documents.setup(json));
  }

  private static LightFigures key(Object json) {
    return figures(json).get(new LightId("key"));
  }

  private static double level(Object json) {
    return key(json).level().orElseThrow().fromShooting().value();
  }

  private static Object face(Object json, Map<String, Object> face) {
    return Documents.with(
        json, "/lights/0/modifier", Map.of("name", "m", "kind", "softbox", "face", face));
  }

  /** The light on a line through its target at such a distance. */
  private static Object at(Object json, double distance) {
    return Documents.with(
        json, "/lights/0/place", Map.of("x_m", -distance, "y_m", 0.0, "z_m", 1.6));
  }

  @Test
  void movingALightAwayNeverBrightensIt() {
    List<Object> lights =
        List.of(
            ONE,
            face(ONE, Map.of("shape", "disc", "diameter_m", 1.5)),
            face(ONE, Map.of("shape", "rectangle", "width_m", 0.3, "height_m", 1.8)));
    Random random = new Random(42);
    for (int i = 0; i < 500; i++) {
      double near = 0.06 * StrictMath.pow(8_000, random.nextDouble());
      double far = near * (1 + random.nextDouble());
      for (Object light : lights) {
        if (far <= 500) {
          assertTrue(
              level(at(light, near)) >= level(at(light, far)) - 1e-9, near + " m to " + far + " m");
        }
      }
    }
  }

  @Test
  void halvingTheDistanceOfASmallLightGivesTwoStopsByCommonPracticeNoSource() {
    assertEquals(2, level(at(ONE, 2)) - level(at(ONE, 4)), 1e-9);
  }

  @Test
  void halvingTheDistanceOfABigLightCloseByGivesLessByCommonPracticeNoSource() {
    Object box = face(ONE, Map.of("shape", "rectangle", "width_m", 1.2, "height_m", 1.2));
    double gain = level(at(box, 0.6)) - level(at(box, 1.2));
    assertTrue(gain > 1 && gain < 1.6, "gain " + gain);
  }

  @ParameterizedTest
  @CsvSource({"1, 0", "2, 1", "3, 1.584962500721156", "4, 2"})
  void equalHeadsOnOneTargetAddAsLightByCommonPracticeNoSource(int heads, double gain) {
    double several = level(Documents.with(ONE, "/lights/0/heads", (double) heads));
    assertEquals(gain, several - level(ONE), 1e-9);
  }

  @Test
  void oneStopLessPowerIsExactlyOneStopLess() {
    for (double down = 0; down <= 5; down += 0.1) {
      double here = level(Documents.with(ONE, "/lights/0/stops_down", down));
      double less = level(Documents.with(ONE, "/lights/0/stops_down", down + 1));
      assertEquals(-1, less - here, 1e-12);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "/time | \"1/60\" | 1 | 0",
        "/time | \"1/250\" | -1 | 0",
        "/iso | 1250 | 1 | 1",
        "/f_number | 8 | -1 | -1",
        "/neutral_density_stops | 1 | -1 | -1"
      })
  void aStopOfTimeMovesTheAmbientOnlyAndOfAllElseBoth(
      String setting, String json, double ambient, double flash) {
    Object with = Documents.with(ONE, "/ambient", Map.of("ev100", 9.0));
    Object turned =
        Documents.with(with, "/exposure" + setting, lampwright.document.Json.parse(json));
    assertEquals(
        ambient,
        figures(turned).ambient().orElseThrow().offset().value()
            - figures(with).ambient().orElseThrow().offset().value(),
        1e-9);
    assertEquals(flash, level(turned) - level(with), 1e-9);
  }

  @Test
  void oneStopUnderTheAmbientIsEv11MinusOneByCommonPracticeNoSource() {
    Object json =
        Documents.with(
            Documents.with(ONE, "/exposure/iso", 100.0), "/ambient", Map.of("ev100", 11.0));
    assertEquals(-1, figures(json).ambient().orElseThrow().offset().value(), 1e-9);
  }

  @Test
  void aReadingWinsOverTheModelAndTheDifferenceIsShown() {
    Object json = Documents.with(ONE, "/lights/0/reading", Map.of("f_number", 8.0, "tenths", 5.0));
    LightFigures light = key(json);
    Level level = light.level().orElseThrow();
    assertEquals(Known.METERED, level.known());
    assertEquals(1.5, level.fromShooting().value(), 1e-9);
    double difference = light.computedMinusMetered().orElseThrow().value();
    assertEquals(level(ONE), 1.5 + difference, 1e-9);
    assertTrue(level.uncertainty().value() < key(ONE).level().orElseThrow().uncertainty().value());
  }

  @Test
  void theMetersOwnIsoCounts() {
    Object json = Documents.with(ONE, "/lights/0/reading", Map.of("f_number", 5.6, "iso", 320.0));
    assertEquals(1, level(json), 1e-9);
  }

  @Test
  void theAmbientInAReadingIsSubtracted() {
    // Ambient at the settings' own level gives half of a reading that is one stop over.
    Object ambient =
        Documents.with(
            ONE, "/ambient", Map.of("ev100", 12 - Stops.ofRatio(6.349604207872797).value()));
    Object json =
        Documents.with(
            ambient, "/lights/0/reading", Map.of("f_number", 8.0, "includes_ambient", true));
    assertEquals(0, level(json), 1e-9);
  }

  @Test
  void aReadingThatHoldsNothingButAmbientIsNoLevel() {
    Object json =
        Documents.without(
            Documents.with(
                Documents.with(ONE, "/ambient", Map.of("ev100", 20.0)),
                "/lights/0/reading",
                Map.of("f_number", 5.6, "includes_ambient", true)),
            "/lights/0/stops_down");
    LightFigures light = key(json);
    assertEquals(Optional.empty(), light.level());
    assertEquals(List.of("/lights/0/reading", "/lights/0/stops_down"), light.needs());
  }

  @Test
  void anAbsentInputGivesAnAbsentFigureAndSaysWhatItNeeds() {
    Object noAmbient =
        Documents.without(
            Documents.with(
                ONE, "/lights/0/reading", Map.of("f_number", 5.6, "includes_ambient", true)),
            "/lights/0/stops_down");
    Figures figures = figures(noAmbient);
    assertEquals(Optional.empty(), figures.ambient());
    assertEquals(Optional.empty(), figures.energyPerFrame());
    assertEquals(List.of("/ambient", "/lights/0/stops_down"), figures.needs().subList(0, 2));
    assertEquals(
        List.of(
            "/ambient",
            "/camera/body",
            "/camera/lens",
            "/lights/0/head/recycle_s",
            "/lights/0/head/flashes_per_charge",
            "/exposure/white_balance_k"),
        figures(ONE).needs());
  }

  @Test
  void aLightFromBehindGivesNothingTowardTheCamera() {
    Object behind =
        Documents.with(
            Documents.with(ONE, "/lights/0/place", Map.of("x_m", 0.5, "y_m", 2.0, "z_m", 1.6)),
            "/lights/0/target/held",
            "toward_camera");
    LightFigures light = key(behind);
    assertEquals(Optional.empty(), light.level());
    assertEquals(List.of("/lights/0/target/held"), light.needs());
    assertEquals(List.of(), figures(behind).targets());
  }

  @Test
  void aLightAlongASurfaceGivesNothingOnIt() {
    Object along =
        Documents.with(
            Documents.with(at(ONE, 2), "/lights/0/target/held", "on_surface"),
            "/lights/0/target/surface_facing_deg",
            0.0);
    assertEquals(Optional.empty(), key(along).level());
  }

  @Test
  void gelsTakeTheirLight() {
    Object gelled =
        Documents.with(
            ONE,
            "/lights/0/gels",
            List.of(
                Map.of("name", "a", "shift_mired", 65.0, "loss_stops", 0.4),
                Map.of("name", "b", "shift_mired", 10.0, "loss_stops", 0.3)));
    assertEquals(-0.7, level(gelled) - level(ONE), 1e-9);
  }

  @Test
  void aMeteredHeadWithItsModifierWinsOverTheGuideNumber() {
    Object metered =
        Documents.with(
            at(face(ONE, Map.of("shape", "disc", "diameter_m", 1.0)), 2),
            "/lights/0/output",
            Map.of("f_number", 16.0, "iso", 640.0, "distance_m", 2.0, "stops_down", 1.0));
    // f/16 one stop down; the light stands two stops down, so f/11, two stops above f/5.6.
    assertEquals(2, level(metered), 1e-9);
  }
}
