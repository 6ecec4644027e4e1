package lampwright.engine;

import static lampwright.engine.WorkedExamples.number;
import static lampwright.engine.WorkedExamples.text;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.io.IOException;
import lampwright.engine.exposure.Ev100;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.light.Pattern;
import lampwright.engine.sun.AmbientFall;
import lampwright.engine.sun.ClearSky;
import lampwright.engine.sun.SunPosition;
import lampwright.engine.sun.SunSearch;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/**
 * The sun over the dancer on the slipway (worked example 1, invented): angles within 0.01 degree,
 * what hangs on them within 1 %, as the file says.
 */
final class WorkedExampleOneSunTest {

  private static final double ANGLE = 0.01;
  private static final Degrees CAMERA = new Degrees(240);

  private final JsonNode inputs;
  private final JsonNode results;
  private final SunPosition sun;

  WorkedExampleOneSunTest() throws IOException {
    JsonNode example = WorkedExamples.read("example_1");
    inputs = example.required("inputs").required("sun");
    results = example.required("results");
    sun = SunChecks.sun(inputs);
  }

  @Test
  void theSunStandsAsPublished() {
    JsonNode expected = results.required("sun");
    assertEquals(number(expected, "elevation_deg"), sun.elevation().value(), ANGLE);
    assertEquals(
        number(expected, "geometric_elevation_deg"), sun.geometricElevation().value(), ANGLE);
    assertEquals(number(expected, "azimuth_deg"), sun.azimuth().value(), ANGLE);
    assertEquals(
        number(expected, "relative_azimuth_deg"), sun.relativeAzimuth(CAMERA).value(), ANGLE);
    assertEquals(text(expected, "phase"), sun.phase().tradeName());
    double shadow = number(expected, "shadow_of_1p7_m");
    assertEquals(shadow, sun.shadow(new Metres(1.7)).orElseThrow().value(), 0.01 * shadow);
  }

  @Test
  void theClearSkyGivesAsPublished() {
    JsonNode expected = results.required("sun");
    ClearSky sky = ClearSky.smooth(sun.geometricElevation());
    double lux = number(expected, "clear_sky_lux");
    assertEquals(lux, sky.horizontal().value(), 0.01 * lux);
    assertEquals(
        number(expected, "clear_sky_ev100"), sky.ev100(MeterConstant.FLAT).value(), 0.0144);
  }

  /** "About 17.9 min under a clear sky (sun at 0.075 degrees)", worked example 1. */
  @Test
  void waitingEighteenMinutesGivesTheLookOfPlanThree() {
    JsonNode kit = results.required("kit_b");
    Ev100 level = new Ev100(number(kit, "wait_until_ambient_ev100_for_plan_3_offset"));
    SunSearch search = new SunSearch(SunChecks.observer(inputs), SunChecks.instant(inputs), 1);
    AmbientFall.Falls falls =
        assertInstanceOf(
            AmbientFall.Falls.class, search.ambientFallsTo(level, MeterConstant.FLAT, Stops.ZERO));
    assertEquals(17.9, falls.waiting().value() / 60, 0.179);
    assertEquals(
        number(kit, "sun_altitude_for_that_deg"), falls.sun().geometricElevation().value(), ANGLE);
  }

  /** A sun behind and to camera right is a kicker; common practice, no source (TRADE-FACTS). */
  @Test
  void theLowSunBehindTheDancerIsAKicker() {
    assertEquals(147.47, sun.fromSubject(CAMERA).azimuth().value(), ANGLE);
    assertEquals(Pattern.KICKER, Pattern.of(sun.fromSubject(CAMERA)));
  }
}
