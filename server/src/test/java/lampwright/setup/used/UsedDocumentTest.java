package lampwright.setup.used;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.document.Problem;
import lampwright.document.Reading;
import lampwright.engine.Known;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.unit.Stops;
import lampwright.setup.Documents;
import lampwright.setup.Light;
import lampwright.setup.MeterReading;
import lampwright.setup.SetupDocument;
import lampwright.setup.Used;
import org.junit.jupiter.api.Test;

/** What was used becomes a document, and differs from the plan by as many stops as by hand. */
class UsedDocumentTest {

  /** A small light 2.2 m from its target, two stops down, f/5.6 at ISO 640. */
  private static final Object PLAN = Documents.resource("one-light.json");

  private static final Object METERED =
      Documents.with(PLAN, "/lights/0/reading", Map.of("f_number", 8.0));

  private static Used used(Map<String, Object> json) {
    return Documents.sound(Used.FORM, json);
  }

  private static Map<String, Object> ofKey(String field, Object value) {
    return Map.of("lights", List.of(Map.of("light", "key", field, value)));
  }

  private static SetupDocument made(Object plan, Map<String, Object> told) {
    return switch (UsedDocument.of(Documents.setup(plan), used(told))) {
      case Reading.Sound<SetupDocument>(SetupDocument document) -> document;
      case Reading.Faulty<SetupDocument> faulty ->
          throw new AssertionError(faulty.problems().toString());
    };
  }

  private static Light key(Object plan, Map<String, Object> told) {
    return made(plan, told).lights().getFirst();
  }

  private static PlannedAgainstUsed compared(Object plan, Map<String, Object> told) {
    return PlannedAgainstUsed.of(Documents.setup(plan), made(plan, told));
  }

  private static ComparedLight comparedKey(Object plan, Map<String, Object> told) {
    return compared(plan, told).lights().getFirst();
  }

  private static double stops(Optional<Stops> difference) {
    return difference.orElseThrow().value();
  }

  private static List<String> faults(Object plan, Map<String, Object> told) {
    return switch (UsedDocument.of(Documents.setup(plan), used(told))) {
      case Reading.Sound<SetupDocument> sound -> List.of();
      case Reading.Faulty<SetupDocument> faulty ->
          faulty.problems().stream().map(Problem::pointer).toList();
    };
  }

  @Test
  void whatIsNotToldWasAsPlanned() {
    assertEquals(Documents.setup(PLAN), made(PLAN, Map.of()));
    ComparedLight key = comparedKey(PLAN, Map.of());
    assertTrue(key.isAsPlanned());
    assertEquals(0, stops(key.levelDifference()));
  }

  @Test
  void halfAStopLessPowerIsHalfAStopLessLight() {
    ComparedLight key = comparedKey(PLAN, ofKey("stops_down", 2.5));
    assertEquals(-0.5, stops(key.powerDifference()));
    assertEquals(-0.5, stops(key.levelDifference()), 1e-9);
    assertFalse(key.isAsPlanned());
  }

  @Test
  void aReadingCountsAgainstTheOneThatWasExpected() {
    // f/8 and half a stop against f/5.6: from 2^2.5 to 2^3.25, twice their difference in stops.
    Object plan = Documents.with(PLAN, "/lights/0/reading", Map.of("f_number", 5.6));
    ComparedLight key = comparedKey(plan, ofKey("reading", Map.of("f_number", 8.0, "tenths", 5.0)));
    assertEquals(1.5, stops(key.levelDifference()), 1e-9);
    assertEquals(StrictMath.sqrt(32), key.expected().orElseThrow().value(), 1e-9);
    assertEquals(Known.METERED, key.used().level().orElseThrow().known());
  }

  @Test
  void twiceTheDistanceIsTwoStopsLessForASmallLightByCommonPracticeNoSource() {
    double planned = StrictMath.sqrt(1.5 * 1.5 + 1.5 * 1.5 + 0.6 * 0.6);
    ComparedLight key = comparedKey(PLAN, ofKey("distance_m", 2 * planned));
    assertTrue(key.isMoved());
    assertEquals(2 * planned, key.used().distance().value(), 1e-9);
    assertEquals(-2, stops(key.levelDifference()), 1e-9);
    assertEquals(
        key.planned().direction().azimuth().value(),
        key.used().direction().azimuth().value(),
        1e-9);
  }

  @Test
  void aSettingOfTheCameraCountsForFlashButTheTimeForTheAmbientOnly() {
    PlannedAgainstUsed both =
        compared(PLAN, Map.of("exposure", Map.of("f_number", 8.0, "time", "1/60", "iso", 1250.0)));
    // A stop less by f/8, a stop more by ISO 1250, and a stop more ambient by 1/60.
    assertEquals(-1, both.apertureDifference().value(), 1e-9);
    assertEquals(1, both.isoDifference().value(), 1e-9);
    assertEquals(1, both.timeDifference().value(), 1e-9);
    assertEquals(0, both.flashDifference().value(), 1e-9);
    assertEquals(1, both.ambientDifference().value(), 1e-9);
  }

  @Test
  void aReadingMovesAlongWithTheDialAndIsKnownByIt() {
    Light key = key(METERED, ofKey("stops_down", 3.0));
    MeterReading reading = key.reading().orElseThrow();
    assertEquals(FNumber.ofMark(5.6).value(), reading.fNumber().value(), 1e-9);
    assertEquals(Known.SET, reading.known());
    assertEquals(-1, stops(comparedKey(METERED, ofKey("stops_down", 3.0)).levelDifference()), 1e-9);
  }

  @Test
  void aReadingKeepsItsMeaningWhenTheCamerasIsoDiffers() {
    ComparedLight key = comparedKey(METERED, Map.of("exposure", Map.of("iso", 320.0)));
    assertEquals(0, stops(key.levelDifference()), 1e-9);
    assertEquals(-1, stops(key.fromShootingDifference()), 1e-9);
    // At half the speed the meter asks for a stop more light: f/5.6 where it said f/8.
    assertEquals(FNumber.ofMark(5.6).value(), key.expected().orElseThrow().value(), 1e-9);
    assertTrue(key.isAsPlanned());
  }

  @Test
  void aReadingGoesWhereItsLightMovedOrGotAnotherHead() {
    assertEquals(Optional.empty(), key(METERED, ofKey("distance_m", 3.0)).reading());
    Map<String, Object> head =
        Map.of(
            "name",
            "200 W·s battery head",
            "energy_ws",
            200.0,
            "output",
            Map.of("kind", "guide_number", "guide_number_m", 40.0));
    Light other = key(METERED, ofKey("head", head));
    assertEquals(Optional.empty(), other.reading());
    assertEquals("200 W·s battery head", other.head().name());
    // A guide number of 40 m against 56 m: 2 log2(40 / 56).
    assertEquals(
        2 * StrictMath.log(40.0 / 56) / StrictMath.log(2),
        stops(comparedKey(PLAN, ofKey("head", head)).levelDifference()),
        1e-9);
  }

  @Test
  void aReadingWithTheAmbientDoesNotOutliveItsTime() {
    Object with =
        Documents.with(
            Documents.with(PLAN, "/ambient", Map.of("ev100", 3.0)),
            "/lights/0/reading",
            Map.of("f_number", 8.0, "includes_ambient", true));
    Map<String, Object> slower = Map.of("exposure", Map.of("time", "1/60"));
    assertEquals(Optional.empty(), key(with, slower).reading());
    Object powerUnknown = Documents.without(with, "/lights/0/stops_down");
    assertEquals(List.of("/exposure/time"), faults(powerUnknown, slower));
  }

  @Test
  void whatIsWrongIsNamedWhereItWasTold() {
    assertEquals(
        List.of("/lights/0/light"),
        faults(PLAN, Map.of("lights", List.of(Map.of("light", "rim")))));
    assertEquals(List.of("/lights/0/stops_down"), faults(PLAN, ofKey("stops_down", 13.0)));
    assertEquals(List.of("/lights/0/distance_m"), faults(PLAN, ofKey("distance_m", 0.01)));
    assertEquals(
        List.of("/lights/0/place"),
        faults(PLAN, ofKey("place", Map.of("x_m", 0.0, "y_m", 0.0, "z_m", 1.6))));
    assertEquals(
        List.of("/lights/1/light"),
        Documents.problems(
                Used.FORM,
                Map.of("lights", List.of(Map.of("light", "key"), Map.of("light", "key"))))
            .stream()
            .map(Problem::pointer)
            .toList());
  }
}
