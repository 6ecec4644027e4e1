package lampwright.learning.drill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.LongStream;
import lampwright.setup.Documents;
import lampwright.setup.SetupDocument;
import org.junit.jupiter.api.Test;

/** Worked examples of handbooks as drills: their answers are right, the neighbours are not. */
class HandbookDrillsTest {

  /** A photographic society's page: a guide number of 32 m gives f/8 at 4 m; so f/16 at 2 m. */
  private static final double GUIDE_NUMBER_M = 32;

  private static SetupDocument setup(String time, double fillReading) {
    Map<String, Object> head =
        Map.of(
            "name",
            "head",
            "energy_ws",
            400.0,
            "output",
            Map.of("kind", "guide_number", "guide_number_m", GUIDE_NUMBER_M),
            "temperature_k",
            5500.0,
            "duration_t05_ms",
            0.4,
            "flashes_per_charge",
            300);
    Map<String, Object> face =
        Map.of("name", "face", "at", point(0, 0, 1.5), "held", "toward_light");
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("title", "From the handbook");
    document.put(
        "exposure", Map.of("f_number", 8.0, "time", time, "iso", 100.0, "white_balance_k", 5500.0));
    document.put(
        "camera",
        Map.of(
            "place",
            point(0, -5, 1.5),
            "body",
            Map.of("name", "body", "width_mm", 36.0, "height_mm", 24.0, "sync", "1/250")));
    document.put("ambient", Map.of("ev100", 12.0));
    document.put("subjects", List.of(Map.of("name", "walker", "place", point(0, 0, 0))));
    document.put(
        "lights",
        List.of(
            Map.of(
                "id",
                "key",
                "role",
                "key",
                "head",
                head,
                "place",
                point(0, -4, 1.5),
                "target",
                face,
                "stops_down",
                2.0),
            Map.of(
                "id",
                "fill",
                "role",
                "fill",
                "head",
                head,
                "place",
                point(1.2, -1.6, 1.5),
                "target",
                face,
                "reading",
                Map.of("f_number", fillReading))));
    return Documents.setup(document);
  }

  private static Map<String, Object> point(double x, double y, double z) {
    return Map.of("x_m", x, "y_m", y, "z_m", z);
  }

  /** The first drill of a kind that asks just this. */
  private static Answer.OfNumber asked(DrillKind kind, SetupDocument setup, String... pieces) {
    Material material = Material.of(setup, Optional.empty());
    Drill drill =
        LongStream.range(1, 5_000)
            .mapToObj(seed -> Drills.make(kind, material, seed))
            .flatMap(Optional::stream)
            .filter(d -> List.of(pieces).stream().allMatch(WrittenDrill.of(d)::says))
            .findFirst()
            .orElseThrow(() -> new AssertionError("Nobody is asked " + List.of(pieces)));
    return assertInstanceOf(Answer.OfNumber.class, drill.answer());
  }

  private static void onlyNear(Answer.OfNumber answer, double right, double less, double more) {
    assertTrue(answer.judge(right) instanceof Answer.Verdict.Right, "right: " + answer.value());
    assertTrue(answer.judge(less) instanceof Answer.Verdict.Wrong, less + " is too little");
    assertTrue(answer.judge(more) instanceof Answer.Verdict.Wrong, more + " is too much");
  }

  /** A page of a photographic society: guide number 32 m gives f/8 at 4 m, so f/16 at 2 m. */
  @Test
  void theGuideNumbersExampleIsTwoStopsFromFourMetresToTwoByItsPage() {
    Answer.OfNumber answer =
        asked(DrillKind.POWER_AFTER_MOVE, setup("1/125", 8), "stands 4.0 m", "go to 2.0 m");
    onlyNear(answer, -2, -2.4, -1.6);
    assertEquals(
        "Distance counted once. It counts squared: twice as far is two stops less, not one.",
        slip(answer, -1));
  }

  /** The same page read the other way: two stops more light stand at half the distance. */
  @Test
  void aFillTwoStopsUpStandsAtHalfItsDistanceByTheSameLaw() {
    Answer.OfNumber answer =
        asked(
            DrillKind.DISTANCE_FOR_RATIO,
            setup("1/125", 2),
            "stands 2.0 m",
            "reads 2.0 stops under",
            "to be 0.0 stops");
    onlyNear(answer, 1, 0.87, 1.15);
  }

  /** Wheeler, Practical Cinematography, p. 122: 5500 K is 182 mired, 3200 K is 312. */
  @Test
  void daylightToLampsIsPlus130MiredByWheeler() {
    Answer.OfNumber answer =
        asked(DrillKind.GEL_SHIFT, setup("1/125", 8), "at 5500 K", "like 3200 K");
    onlyNear(answer, 312 - 182, 119, 143);
    assertEquals("The wrong way: plus mired is warmer, minus is cooler.", slip(answer, -131));
  }

  /** The full-stop scale, ISO 2720: f/8 to f/16 is two stops less; common practice, no source. */
  @Test
  void fromF8ToF16IsTwoStopsLess() {
    Answer.OfNumber answer = asked(DrillKind.STOPS_BETWEEN, setup("1/125", 8), "from f/8 to f/16");
    onlyNear(answer, -2, -2.2, -1.8);
    assertEquals(
        "Half of it is missing: twice the f-number is two stops, because the opening counts by its"
            + " area.",
        slip(answer, -1));
  }

  /** Two equal lights are one stop more: common practice, no source. */
  @Test
  void aLightOneStopWeakerAddsSixTenthsOfAStop() {
    Answer.OfNumber answer =
        asked(DrillKind.LIGHTS_ADD, setup("1/125", 2.8), "reads 1.0 stop less");
    onlyNear(answer, Math.log(1.5) / Math.log(2), 0.4, 0.77);
  }

  /** A filter of factor 4 (0.6) takes two stops: common practice, no source. */
  @Test
  void fromSyncToAThousandthTakesTwoStopsOfGrey() {
    Answer.OfNumber answer =
        asked(DrillKind.SYNC, setup("1/125", 8), "and 1/1000 s, which is faster");
    onlyNear(answer, 2, 1.6, 2.4);
    assertEquals("That is the filter's factor. Each factor of two is one stop.", slip(answer, 4));
  }

  private static String slip(Answer.OfNumber answer, double wrong) {
    Answer.Verdict.Wrong verdict =
        assertInstanceOf(Answer.Verdict.Wrong.class, answer.judge(wrong));
    return WrittenDrill.say(verdict.slip().orElseThrow());
  }
}
