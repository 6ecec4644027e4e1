package lampwright.setup.comparing;

import static lampwright.wording.WordsForTests.english;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lampwright.document.Reading;
import lampwright.setup.SetupDocument;
import lampwright.web.Documents;
import org.junit.jupiter.api.Test;

/**
 * What a comparison says, held against inverse-square and stop arithmetic: common practice, no
 * source. Twice the distance is two stops less, half the power one stop less, each full stop of
 * aperture a factor of the square root of two in the f-number.
 */
class ComparisonTest {

  /** The key is 2 m from the face, at its height, straight along (-1.2, -1.6). */
  private static final Map<String, Object> SETUP = Documents.setup("Doorway");

  private static SetupDocument read(Map<String, Object> setup) {
    return switch (SetupDocument.FORM.read(lampwright.document.Json.parse(Documents.json(setup)))) {
      case Reading.Sound<SetupDocument>(SetupDocument sound) -> sound;
      case Reading.Faulty<SetupDocument> faulty ->
          throw new AssertionError(faulty.problems().toString());
    };
  }

  private static List<String> said(Map<String, Object> from, Map<String, Object> to) {
    return Comparison.of(read(from), read(to)).stream()
        .map(change -> english(change.sentence()))
        .toList();
  }

  private static Map<String, Object> withKey(String field, Object value) {
    return withLights(List.of(Documents.with(Documents.light("key"), field, value)));
  }

  private static Map<String, Object> withLights(List<Map<String, Object>> lights) {
    return Documents.with(SETUP, "lights", lights);
  }

  private static Map<String, Object> at(double times) {
    return Map.of("x_m", -1.2 * times, "y_m", -1.6 * times, "z_m", 1.6);
  }

  private static Map<String, Object> withExposure(String field, Object value) {
    Map<String, Object> exposure =
        new LinkedHashMap<>(Map.of("f_number", 5.6, "time", "1/125", "iso", 100));
    exposure.put(field, value);
    return Documents.with(SETUP, "exposure", exposure);
  }

  @Test
  void equalSetupsDifferInNothing() {
    assertEquals(List.of(), Comparison.of(read(SETUP), read(SETUP)));
  }

  @Test
  void aLightAtTwiceTheDistanceGivesTwoStopsLess() {
    assertEquals(
        List.of("Key moved 2.0 m further, −2 stops at the face"),
        said(SETUP, withKey("place", at(2))));
  }

  @Test
  void aLightAtTheDistanceOverRootTwoGivesOneStopMore() {
    // 2 m / 1.414 = 1.414 m, 0.6 m closer.
    assertEquals(
        List.of("Key moved 0.6 m closer, +1 stop at the face"),
        said(SETUP, withKey("place", at(1 / Math.sqrt(2)))));
  }

  @Test
  void twiceThePowerIsOneStopMore() {
    assertEquals(
        List.of("Key: power from 1/8 to 1/4, +1 stop"), said(SETUP, withKey("stops_down", 2)));
  }

  @Test
  void twiceTheHeadsIsOneStopMore() {
    assertEquals(List.of("Key: heads from 1 to 2, +1 stop"), said(SETUP, withKey("heads", 2)));
  }

  @Test
  void aMoveAndATurnOfThePowerAreToldEachByItself() {
    Map<String, Object> both =
        Documents.with(Documents.with(Documents.light("key"), "place", at(2)), "stops_down", 1);
    assertEquals(
        List.of(
            "Key moved 2.0 m further, −2 stops at the face",
            "Key: power from 1/8 to 1/2, +2 stops"),
        said(SETUP, withLights(List.of(both))));
  }

  @Test
  void anotherHeadIsToldWithItsLevel() {
    // Half the guide number is two stops less.
    Map<String, Object> head =
        Map.of(
            "name",
            "200 W·s battery head",
            "energy_ws",
            200,
            "output",
            Map.of("kind", "guide_number", "guide_number_m", 32));
    assertEquals(
        List.of("Key: 400 W·s battery head exchanged for 200 W·s battery head, −2 stops"),
        said(SETUP, withKey("head", head)));
  }

  @Test
  void aModifierIsToldWithHowLargeItsFaceLooks() {
    // A disc of 1.2 m from 2 m: 2 atan(0.6 / 2) = 33°.
    String said =
        said(
                SETUP,
                withKey(
                    "modifier",
                    Map.of(
                        "name",
                        "octagon",
                        "kind",
                        "softbox",
                        "face",
                        Map.of("shape", "disc", "diameter_m", 1.2))))
            .getFirst();
    assertTrue(said.startsWith("Key: octagon put on, −"), said);
    assertTrue(said.contains("its face looks 33° wide"), said);
  }

  @Test
  void theCamerasDialsSayWhatTheyDoToFlashAndAmbient() {
    assertEquals(
        List.of("Aperture from f/5.6 to f/8: one stop less for everything, ambient too"),
        said(SETUP, withExposure("f_number", 8)));
    assertEquals(
        List.of("Time from 1/125 to 1/60: one stop more for the ambient, the flashes stay"),
        said(SETUP, withExposure("time", "1/60")));
    assertEquals(
        List.of("ISO from 100 to 400: 2 stops more for everything, ambient too"),
        said(SETUP, withExposure("iso", 400)));
    assertEquals(
        List.of("Grey filter from 0 stops to 3 stops: 3 stops less for everything, ambient too"),
        said(SETUP, withExposure("neutral_density_stops", 3)));
  }

  @Test
  void lightsThatCameAndWentAreNamedByTheirRole() {
    Map<String, Object> fill = Documents.with(Documents.light("fill"), "role", "fill");
    Map<String, Object> rim = Documents.with(Documents.light("rim"), "role", "rim");
    assertEquals(
        List.of("Fill taken out", "Rim added"),
        said(
            withLights(List.of(Documents.light("key"), fill)),
            withLights(List.of(Documents.light("key"), rim))));
  }

  @Test
  void twoLightsOfOneRoleAreToldApart() {
    Map<String, Object> first = Documents.light("left");
    Map<String, Object> second = Documents.light("right");
    assertEquals(
        List.of("Key “right”: power from 1/8 to 1/4, +1 stop"),
        said(
            withLights(List.of(first, second)),
            withLights(List.of(first, Documents.with(second, "stops_down", 2)))));
  }

  @Test
  void whereAReadingStillHoldsTheStopsAreLeftOut() {
    Map<String, Object> metered =
        Documents.with(Documents.light("key"), "reading", Map.of("f_number", 8));
    assertEquals(
        List.of("Key moved 2.0 m further"),
        said(
            withLights(List.of(metered)),
            withLights(List.of(Documents.with(metered, "place", at(2))))));
  }

  @Test
  void longTextsAreShortened() {
    String said =
        said(SETUP, Documents.with(SETUP, "intent", "Rain ".repeat(100).strip())).getFirst();
    assertTrue(said.startsWith("Intent now told: Rain Rain"), said);
    assertTrue(said.endsWith("…") && said.length() < 100, said);
  }
}
