package lampwright.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.WorkedExamples;
import org.junit.jupiter.api.Test;

class MissingWordsTest {

  private static final SetupDocument SETUP = WorkedExamples.dancer();
  private static final Map<LightId, Integer> NUMBERS = SETUP.numbersInBuildOrder();

  private final MissingWords words = new MissingWords(SETUP, WordsForTests.usual());

  @Test
  void theSameInputOfSeveralLightsIsSaidOnceWithTheirNumbersOnThePlan() {
    List<MissingInput> missing =
        words.of(List.of("/lights/0/head/recycle_s", "/lights/1/head/recycle_s", "/camera/place"));
    List<String> numbers =
        SETUP.lights().subList(0, 2).stream()
            .map(Light::id)
            .map(NUMBERS::get)
            .sorted()
            .map(String::valueOf)
            .toList();
    assertEquals(2, missing.size());
    assertEquals(
        "Needs the time to recycle of lights " + String.join(" and ", numbers) + ".",
        missing.getFirst().sentence());
    assertEquals("Needs the camera’s place.", missing.getLast().sentence());
  }

  @Test
  void anInputThatIsNotInTheListIsStillSaidInWords() {
    assertEquals(
        "Needs the sail area of light " + NUMBERS.get(SETUP.lights().getFirst().id()) + ".",
        words.sentence(List.of("/lights/0/stand/sail_area_m2"), ".*"));
    assertEquals("Needs the tilt.", words.sentence(List.of("/camera/tilt_deg"), ".*"));
  }

  @Test
  void nothingIsSaidWhereNothingIsMissing() {
    assertTrue(words.of(List.of()).isEmpty());
    assertEquals("", words.sentence(List.of("/camera/place"), "/ambient"));
  }

  @Test
  void onlyThePointersThatAreAskedForAreSaid() {
    String said = words.sentence(List.of("/camera", "/camera/place", "/ambient"), "/camera");
    assertEquals("Needs a camera.", said);
    assertFalse(said.contains("place"));
  }

  @Test
  void itIsSaidInTheLanguageOfWhoReads() {
    MissingWords german = new MissingWords(SETUP, WordsForTests.germanFeetAndThirds());
    assertEquals(
        "Es fehlt: eine Kamera und eine Messung des Umgebungslichts.",
        german.sentence(List.of("/camera", "/ambient"), ".*"));
  }
}
