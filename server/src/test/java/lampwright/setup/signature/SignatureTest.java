package lampwright.setup.signature;

import static lampwright.wording.WordsForTests.english;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.setup.Documents;
import lampwright.setup.Role;
import lampwright.setup.WholeExamples;
import lampwright.setup.WorkedExamples;
import org.junit.jupiter.api.Test;

/**
 * Each part of a signature, against the worked examples of the reference and facts of the trade.
 */
class SignatureTest {

  private static final Object ONE_LIGHT = Documents.resource("one-light.json");
  private static final Map<String, Double> GROUND = Map.of("x_m", 0.0, "y_m", 0.0, "z_m", 0.0);

  private static Signature of(Object json) {
    return Signature.of(Documents.setup(json));
  }

  private static Object withSubject(Object json) {
    return Documents.with(json, "/subjects", List.of(Map.of("name", "caretaker", "place", GROUND)));
  }

  private static double example(String pointer) {
    return WorkedExamples.number(pointer);
  }

  /** REFERENCE 17a: six heads. */
  @Test
  void lightsAreCountedByRole() {
    LightCounts lights = of(WholeExamples.dancer()).lights();
    assertEquals(6, lights.total());
    assertEquals(2, lights.of(Role.RIM) + lights.of(Role.KICKER));
    assertEquals(0, lights.of(Role.ACCENT));
    assertTrue(
        english(lights.sentence()).startsWith("6 lights: 1 key, 1 fill, "),
        english(lights.sentence()));
  }

  /** REFERENCE 17a and 17b: azimuth and elevation of the keys, seen from what they are aimed at. */
  @Test
  void theKeyComesFromWhereTheWorkedExamplesHaveIt() {
    KeyLight dancer = of(WholeExamples.dancer()).key().orElseThrow();
    String key = "/example_1/results/kit_a/heads/key/";
    assertEquals(
        example(key + "azimuth_deg"),
        dancer.azimuth().plus(dancer.faceYaw()).toHalfTurns().value(),
        1e-5);
    assertEquals(example(key + "elevation_deg"), dancer.elevation().value(), 1e-5);
    assertTrue(dancer.byRole());
    KeyLight cellist = of(WholeExamples.cellist()).key().orElseThrow();
    assertEquals(
        example("/example_2/results/kit_a/key/elevation_deg"), cellist.elevation().value(), 1e-5);
  }

  /** REFERENCE 14, common practice, no source: 45 aside and 16 up is a low side light. */
  @Test
  void theKeySaysWhereItStandsAndWhatTheTradeCallsThat() {
    KeyLight key = of(withSubject(ONE_LIGHT)).key().orElseThrow();
    assertEquals(-45, key.azimuth().value(), 1e-6);
    assertEquals(KeySide.LEFT, key.side());
    assertEquals(
        "Key from 45° left of the nose, 16° above: between low side and Rembrandt.",
        english(key.sentence()));
  }

  @Test
  void theKeyIsMeasuredFromTheNoseWhereTheFaceIsTurned() {
    Object turned = Documents.with(withSubject(ONE_LIGHT), "/subjects/0/facing_deg", -45.0);
    KeyLight key = of(turned).key().orElseThrow();
    assertEquals(KeySide.NEITHER, key.side());
    assertTrue(
        english(key.sentence()).startsWith("Key from straight before the nose, 16° above: "),
        english(key.sentence()));
    // Common practice, no source (REFERENCE 14): a key beyond the nose, seen from the camera.
    Object less = Documents.with(withSubject(ONE_LIGHT), "/subjects/0/facing_deg", -20.0);
    assertTrue(
        english(of(less).key().orElseThrow().sentence())
            .endsWith(", on the short side of the turned face."),
        english(of(less).key().orElseThrow().sentence()));
  }

  @Test
  void withoutAKeyTheLightThatGivesMostAtTheSubjectTakesItsPlaceAndIsSaidTo() {
    Object lights =
        Documents.with(
            Documents.with(withSubject(ONE_LIGHT), "/lights/0/role", "accent"),
            "/lights/1",
            Documents.at(ONE_LIGHT, "/lights/0"));
    lights = Documents.with(lights, "/lights/1/role", "fill");
    lights = Documents.with(lights, "/lights/1/id", "strong");
    lights = Documents.with(lights, "/lights/1/place/x_m", 1.5);
    lights = Documents.with(lights, "/lights/1/stops_down", 1.0);
    KeyLight key = of(lights).key().orElseThrow();
    assertEquals("strong", key.light().text());
    assertFalse(key.byRole());
    assertTrue(
        english(key.sentence())
            .startsWith("No light is called the key; “strong” gives most at the subject, from 45°"),
        english(key.sentence()));
  }

  @Test
  void withoutASubjectThereIsNoFaceThatTheKeyComesFrom() {
    Signature signature = of(ONE_LIGHT);
    assertEquals(Optional.empty(), signature.key());
    assertEquals(List.of("/subjects"), signature.findMissing(PartName.KEY).orElseThrow().needs());
    assertTrue(signature.softness().isPresent(), "how soft it is needs no subject");
  }

  /** Common practice, no source: a light as wide as it is far away is soft, a bare head is hard. */
  @Test
  void softnessIsHowLargeTheKeyLooksFromTheSubject() {
    assertEquals(Softness.Kind.HARD, of(ONE_LIGHT).softness().orElseThrow().kind());
    double distance = Math.sqrt(1.5 * 1.5 + 1.5 * 1.5 + 0.6 * 0.6);
    Softness asWideAsFar = of(withDisc(distance)).softness().orElseThrow();
    // Twice the angle whose tangent is a half.
    assertEquals(53.1301, asWideAsFar.angularSize().value(), 1e-4);
    assertEquals(Softness.Kind.SOFT, asWideAsFar.kind());
    assertEquals(Softness.Kind.FAIRLY_SOFT, of(withDisc(0.55)).softness().orElseThrow().kind());
    assertEquals(Softness.Kind.HARD, of(withDisc(0.18)).softness().orElseThrow().kind());
    assertEquals(
        "The key’s face looks 53° wide from the subject: soft (30° or more).",
        english(asWideAsFar.sentence()));
  }

  private static Object withDisc(double diameterM) {
    return Documents.with(
        ONE_LIGHT,
        "/lights/0/modifier",
        Map.of(
            "name",
            "disc",
            "kind",
            "softbox",
            "face",
            Map.of("shape", "disc", "diameter_m", diameterM)));
  }

  /** REFERENCE 17b, worked by an independent program: (key + fill) to fill toward the camera. */
  @Test
  void theRatioOfTheCellistIsThatOfTheWorkedExample() {
    KeyToFill ratio = of(WholeExamples.cellist()).ratio().orElseThrow();
    assertEquals(
        example("/example_2/results/kit_a/ratio_key_plus_fill_to_fill"),
        ratio.ratio().litToShadow(),
        1e-5);
    assertEquals("3.2:1", english(ratio.words()));
  }

  /** Common practice, no source: 0, 1, 2, 3 stops over the fill are 2, 3, 5, 9 to 1. */
  @Test
  void stopsOverTheFillAreTheRatiosThatTheTradeQuotes() {
    double[] ratios = {2, 3, 5, 9};
    for (int stops = 0; stops < ratios.length; stops++) {
      KeyToFill ratio = of(keyOverFill(stops)).ratio().orElseThrow();
      assertEquals(stops, ratio.keyOverFill().value(), 1e-6);
      assertEquals(ratios[stops], ratio.ratio().litToShadow(), 1e-5);
    }
  }

  private static Object keyOverFill(int stops) {
    Object setup = Documents.with(ONE_LIGHT, "/lights/1", Documents.at(ONE_LIGHT, "/lights/0"));
    setup = Documents.with(setup, "/lights/1/id", "fill");
    setup = Documents.with(setup, "/lights/1/role", "fill");
    setup = Documents.with(setup, "/lights/1/place/x_m", 1.5);
    return Documents.with(setup, "/lights/1/stops_down", 2.0 + stops);
  }

  @Test
  void aFillForAnotherTargetCountsByWhatOfItReachesTheKeys() {
    Object elsewhere = Documents.with(keyOverFill(1), "/lights/1/target/at/z_m", 1.4);
    elsewhere = Documents.with(elsewhere, "/lights/1/target/name", "chest");
    double stops = of(elsewhere).ratio().orElseThrow().keyOverFill().value();
    assertEquals(1, stops, 0.3);
    assertTrue(Math.abs(stops - 1) > 1e-3, "nothing but the fill's target differs: " + stops);
  }

  @Test
  void withoutAFillThereIsNoRatio() {
    assertEquals(
        new Missing(PartName.RATIO, Why.NO_FILL, List.of("/lights")),
        of(ONE_LIGHT).findMissing(PartName.RATIO).orElseThrow());
  }

  /** TRADE-FACTS, common practice, no source: EV 11 at f/5.6, 1/125 s, ISO 100 is a stop under. */
  @Test
  void theAmbientIsAsFarUnderTheExposureAsTheTradeReckons() {
    Object setup = Documents.with(ONE_LIGHT, "/exposure/iso", 100.0);
    setup = Documents.with(setup, "/ambient", Map.of("ev100", 11.0));
    AmbientOffset ambient = of(setup).ambient().orElseThrow();
    assertEquals(-1, ambient.fromShooting().value(), 1e-6);
    assertEquals(
        "The ambient alone is 1.0 stop under the shooting exposure.", english(ambient.sentence()));
    assertEquals(
        List.of("/ambient"), of(ONE_LIGHT).findMissing(PartName.AMBIENT).orElseThrow().needs());
  }

  /** REFERENCE 17a and 17b: how far their ambients lie from their shooting exposures. */
  @Test
  void theAmbientsOfTheWorkedExamplesLieWhereTheyShould() {
    assertEquals(
        example("/example_1/results/kit_a/ambient_offset_stops"),
        of(WholeExamples.dancer()).ambient().orElseThrow().fromShooting().value(),
        1e-6);
    assertEquals(
        example("/example_2/results/kit_a/ambient_offset_stops"),
        of(WholeExamples.cellist()).ambient().orElseThrow().fromShooting().value(),
        1e-6);
  }

  /** REFERENCE 17a: the ambient's share g of all light on the dancer is 2^-b / (1 + 2^-b). */
  @Test
  void theBalanceIsWhatTheGhostOfTheWorkedExampleFollowsFrom() {
    FlashBalance balance = of(WholeExamples.dancer()).balance().orElseThrow();
    double share = example("/example_1/results/kit_a/ghost_fraction_facing");
    assertEquals(
        Math.log((1 - share) / share) / Math.log(2), balance.flashOverAmbient().value(), 1e-5);
    assertEquals(FlashBalance.Leads.FLASH, balance.leads());
    assertEquals(
        "The ambient is 1.9 stops under the flash at the chest: flash leads.",
        english(balance.sentence()));
  }

  @Test
  void aStrongAmbientLeads() {
    FlashBalance balance =
        of(Documents.with(ONE_LIGHT, "/ambient", Map.of("ev100", 15.0))).balance().orElseThrow();
    assertEquals(FlashBalance.Leads.AMBIENT, balance.leads());
    assertEquals(balance.flashOverAmbient().negated(), balance.ambientOverFlash());
  }

  /** REFERENCE 17a and 17b: where the sun stood, and what one exposure takes. */
  @Test
  void sunAndEnergyAreThoseOfTheWorkedExamples() {
    SunInSetup sun = of(WholeExamples.dancer()).sun().orElseThrow();
    assertEquals(SunInSetup.Height.LOW, sun.height());
    assertEquals(
        example("/example_1/results/sun/elevation_deg"),
        sun.elevation().orElseThrow().value(),
        0.01);
    assertEquals(
        example("/example_1/results/sun/azimuth_deg"), sun.bearing().orElseThrow().value(), 0.01);
    assertEquals(Optional.of(SunInSetup.From.BACK), sun.from());
    assertEquals(
        example("/example_2/results/kit_a/energy_per_exposure_w_s"),
        of(WholeExamples.cellist()).energy().orElseThrow().energy().value(),
        1e-4);
  }

  /** AMS glossary, in REFERENCE 10: the sun is down from 0.833 degrees under the horizon. */
  @Test
  void anHourLaterTheSunOfTheWorkedExampleIsDown() {
    Object later = Documents.with(WholeExamples.dancer(), "/occasion/time", "20:13");
    SunInSetup sun = of(later).sun().orElseThrow();
    assertEquals(SunInSetup.Height.BELOW_HORIZON, sun.height());
    assertEquals(Optional.of(false), sun.lights());
    assertEquals(Optional.empty(), sun.from());
    Object noon = Documents.with(WholeExamples.dancer(), "/occasion/time", "13:00");
    assertEquals(SunInSetup.Height.HIGH, of(noon).sun().orElseThrow().height());
  }

  @Test
  void theSunLightsThePictureWhereTheAmbientComesFromIt() {
    Object lit = Documents.with(WholeExamples.dancer(), "/ambient/source", "sun");
    assertEquals(Optional.of(true), of(lit).sun().orElseThrow().lights());
    Object sky = Documents.with(WholeExamples.dancer(), "/ambient/source", "sky");
    assertEquals(Optional.of(false), of(sky).sun().orElseThrow().lights());
    Object untold = Documents.without(sky, "/ambient/source");
    assertEquals(Optional.empty(), of(untold).sun().orElseThrow().lights());
    assertEquals(List.of("/ambient/source"), of(untold).sun().orElseThrow().needs());
  }

  @Test
  void indoorsThereIsNoSunAndWithoutAPlaceNobodyKnows() {
    Object indoors = Documents.with(WholeExamples.dancer(), "/occasion/place/indoors", true);
    assertEquals(SunInSetup.Height.INDOORS, of(indoors).sun().orElseThrow().height());
    assertEquals(
        List.of(
            "/occasion/place/latitude_deg",
            "/occasion/place/longitude_deg",
            "/occasion/date",
            "/occasion/time",
            "/occasion/utc_offset"),
        of(ONE_LIGHT).findMissing(PartName.SUN).orElseThrow().needs());
  }

  /**
   * TRADE-FACTS, common practice, no source: a flat-out run is held by the flash, not by 1/125 s,
   * where the ambient is held down.
   */
  @Test
  void aFlatOutRunIsHeldByTheFlashAndNotByTheShutter() {
    Object run = Documents.with(WholeExamples.dancer(), "/subjects/0/speed_m_per_s", 7.0);
    run = Documents.without(run, "/subjects/1");
    MovingSubject runner = of(run).freezing().orElseThrow().moving().orElseThrow();
    double flash = runner.flashCircles().orElseThrow();
    double ambient = runner.ambientCircles().orElseThrow();
    assertTrue(flash < ambient / 3, flash + " by the flash, " + ambient + " by the ambient");
    // Two stops more under, the ambient's streak is hidden and the flash alone tells.
    MovingSubject dark =
        of(Documents.with(run, "/ambient/ev100", 8.0)).freezing().orElseThrow().moving().get();
    assertTrue(
        dark.kind().compareTo(runner.kind()) < 0,
        english(dark.sentence()) + english(runner.sentence()));
    assertTrue(english(dark.sentence()).contains("hidden at "), english(dark.sentence()));
  }

  /** REFERENCE 17a: the body's streaks in pixels; a 1500th of the diagonal in its pixels. */
  @Test
  void theDancersStreaksAreThoseOfTheWorkedExample() {
    Object body = Documents.without(WholeExamples.dancer(), "/subjects/1");
    MovingSubject dancer = of(body).freezing().orElseThrow().moving().orElseThrow();
    double ratio =
        example("/example_1/results/kit_a/motion/body_blur_ambient_px")
            / example("/example_1/results/kit_a/motion/body_blur_flash_px");
    assertEquals(
        ratio,
        dancer.ambientCircles().orElseThrow() / dancer.flashCircles().orElseThrow(),
        1e-4 * ratio);
  }

  @Test
  void whatStandsStillNeedsNoFreezing() {
    Freezing freezing = of(withSubject(ONE_LIGHT)).freezing().orElseThrow();
    assertEquals(Freezing.Kind.NOTHING_MOVES, freezing.kind());
  }

  @Test
  void aSubjectOnAPathWithoutASpeedAsksForIt() {
    Object walks =
        Documents.with(
            withSubject(ONE_LIGHT),
            "/subjects/0/path",
            List.of(Map.of("name", "start", "at", GROUND)));
    assertEquals(
        List.of("/subjects/0/speed_m_per_s"),
        of(walks).findMissing(PartName.FREEZING).orElseThrow().needs());
  }

  @Test
  void theLargestModifierIsTheOneWithTheLongestFace() {
    LargestModifier largest = of(WholeExamples.cellist()).largestModifier().orElseThrow();
    assertTrue(largest.size().value() > 0.5, english(largest.sentence()));
    assertEquals(
        List.of("/lights/0/modifier"),
        of(ONE_LIGHT).findMissing(PartName.LARGEST_MODIFIER).orElseThrow().needs());
  }

  @Test
  void withoutAPowerThereIsNoEnergy() {
    Object metered =
        Documents.with(
            Documents.without(ONE_LIGHT, "/lights/0/stops_down"),
            "/lights/0/reading",
            Map.of("f_number", 5.6, "iso", 640.0));
    assertEquals(
        List.of("/lights/0/stops_down"),
        of(metered).findMissing(PartName.ENERGY).orElseThrow().needs());
  }
}
