package lampwright.setup.figures;

import static lampwright.wording.WordsForTests.english;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.engine.Known;
import lampwright.engine.unit.Stops;
import lampwright.setup.Documents;
import org.junit.jupiter.api.Test;

/** What a shutter takes from a flash, against section 3 of the reference. */
class ShutterTest {

  private static Object setup(String time, Map<String, Object> body, double halfTimeMs) {
    Object json = Documents.resource("one-light.json");
    json = Documents.with(json, "/exposure/time", time);
    json = Documents.with(json, "/lights/0/stops_down", 0.0);
    json = Documents.with(json, "/lights/0/head/duration_t05_ms", halfTimeMs);
    json = Documents.with(json, "/camera/body/name", "body");
    json = Documents.with(json, "/camera/body/width_mm", 36.0);
    json = Documents.with(json, "/camera/body/height_mm", 24.0);
    for (Map.Entry<String, Object> entry : body.entrySet()) {
      json = Documents.with(json, "/camera/body/" + entry.getKey(), entry.getValue());
    }
    return json;
  }

  private static LightFigures key(Object json) {
    return FiguresComputation.of(Documents.setup(json)).lights().getFirst();
  }

  private static ShutterEffect effect(Object json) {
    return key(json).shutter().orElseThrow();
  }

  private static final Map<String, Object> SLOW_CURTAIN =
      Map.of("sync", "1/250", "curtain_travel_ms", 4.0);

  /** flash.clip_loss_stops.01: t0.5 1/800 at exact 1/500. */
  @Test
  void aLeafTakesSixTenthsOfAStopFromTheWholeFrame() {
    LightFigures key = key(setup("1/500", Map.of("sync", "1/500", "shutter", "leaf"), 1.25));
    ShutterEffect effect = key.shutter().orElseThrow();
    assertEquals(0.59632628, effect.wholeFrame().orElseThrow().value(), 1.2e-6);
    assertEquals(1, effect.warnings().size());
    double metered = key.level().orElseThrow().exposure().value();
    double picture = key.inPicture().orElseThrow().value();
    assertEquals(-0.59632628, Stops.ofRatio(picture / metered).value(), 1.2e-6);
  }

  /** flash.sync_edge_loss_stops.01: exact 1/200, traverse 1/320 s, t0.5 1/600 s. */
  @Test
  void aSlowFlashLosesAnEdgeEvenAtTheMarkedSyncTime() {
    Map<String, Object> body = Map.of("sync", "1/200", "curtain_travel_ms", 3.125);
    LightFigures key = key(setup("1/200", body, 1_000.0 / 600));
    ShutterEffect effect = key.shutter().orElseThrow();
    assertEquals(0.92605572, effect.worstEdge().orElseThrow().value(), 1.9e-6);
    assertEquals(Optional.of(Stops.ZERO), effect.wholeFrame());
    assertEquals(key.level().orElseThrow().exposure(), key.inPicture().orElseThrow());
    assertTrue(
        english(effect.warnings()).getFirst().contains("edge"), effect.warnings().toString());
  }

  /** flash.hss_loss_stops.01: exact 1/500, traverse 1/250 s, efficiency 1. */
  @Test
  void aLongBurstDimsTheWholeFrame() {
    Object json =
        Documents.with(
            setup("1/500", SLOW_CURTAIN, 1.25), "/lights/0/head/long_burst_efficiency", 1.0);
    ShutterEffect effect = effect(json);
    assertTrue(effect.longBurst());
    assertEquals(1.6078629, effect.wholeFrame().orElseThrow().value(), 3.2e-6);
    assertEquals(1, effect.litShare());
  }

  /** flash.lit_fraction.01: exact 1/500, traverse 1/250 s. */
  @Test
  void withoutALongBurstOnlyAPartOfTheFrameIsLit() {
    ShutterEffect effect = effect(setup("1/500", SLOW_CURTAIN, 1.25));
    assertEquals(0.48828125, effect.litShare(), 9.8e-7);
    assertTrue(
        english(effect.warnings()).getFirst().contains("49 %"), effect.warnings().toString());
  }

  @Test
  void aCurtainWhoseTravelIsNotKnownIsTakenAsSlowAsSyncAndSaid() {
    Object json =
        Documents.with(
            setup("1/500", Map.of("sync", "1/250"), 1.25),
            "/lights/0/head/long_burst_efficiency",
            1.0);
    assertEquals(Known.ESTIMATED, effect(json).known());
    assertTrue(key(json).needs().contains("/camera/body/curtain_travel_ms"));
  }

  @Test
  void aFlashOfUnknownDurationHasNoLossAndSaysWhatItNeeds() {
    Object json =
        Documents.without(
            setup("1/500", Map.of("sync", "1/500", "shutter", "leaf"), 1.25),
            "/lights/0/head/duration_t05_ms");
    assertEquals(Optional.empty(), effect(json).wholeFrame());
    assertEquals(List.of("/lights/0/head/duration_t05_ms"), key(json).needs());
  }

  /** n pops are log2 n and cost n times the energy (reference, section 3). */
  @Test
  void fourPopsGiveTwoStopsForFourTimesTheEnergy() {
    Object one = Documents.resource("one-light.json");
    Object four = Documents.with(one, "/lights/0/pops", 4.0);
    assertEquals(
        2,
        key(four).level().orElseThrow().fromShooting().value()
            - key(one).level().orElseThrow().fromShooting().value(),
        1e-12);
    assertEquals(
        4 * key(one).energy().orElseThrow().value(),
        key(four).energy().orElseThrow().value(),
        1e-9);
  }
}
