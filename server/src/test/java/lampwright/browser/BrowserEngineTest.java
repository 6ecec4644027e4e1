package lampwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import lampwright.engine.light.Point;
import lampwright.gear.Kit;
import lampwright.language.Notation;
import lampwright.setup.DemoSeeds;
import lampwright.setup.Light;
import lampwright.setup.SetupDocument;
import lampwright.wording.WordsForTests;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The ES module that browsers load answers as the server's own classes do, character by character
 * and number by number. Node stands for the browser. {@code BrowserAnswersTest} has the other half
 * of the setups in each person's notation.
 */
@Order(1)
class BrowserEngineTest {

  private static final Notation USUAL = WordsForTests.usual().notation();
  private static final Notation OTHER = WordsForTests.germanFeetAndThirds().notation();

  /** The rooms that a page has to send for a part: no other says a word in it. */
  private static final List<String> HAPPENED = List.of("reacting.", "wording.");

  private static final List<String> METERED = List.of("drawing.", "taking.", "wording.");

  private static EngineOnNode engine;

  @BeforeAll
  static void compiles(@TempDir Path folder) throws Exception {
    engine = EngineOnNode.compiled(folder);
  }

  @AfterAll
  static void ends() throws Exception {
    engine.close();
  }

  @Test
  void everyDemoSetupIsAnsweredAsOnTheJvm() throws Exception {
    List<Map<String, Object>> requests = new ArrayList<>();
    for (SetupDocument setup : new DemoSeeds().setups().values()) {
      boolean isOdd = requests.size() % 2 == 1;
      requests.add(Requests.of(setup, isOdd ? USUAL : OTHER));
    }
    assertTrue(requests.size() >= 75, () -> "only " + requests.size() + " requests");
    assertEquals(List.of(), engine.compared(requests).differences());
  }

  @Test
  void everyDemoSetupIsToldWhatToChangeNowAsOnTheJvm() throws Exception {
    List<Map<String, Object>> requests = new ArrayList<>();
    DemoSeeds seeds = new DemoSeeds();
    Kit kit = seeds.kit("van-kit");
    for (SetupDocument setup : seeds.setups().values()) {
      int turn = requests.size();
      Light light = setup.lights().get(turn % setup.lights().size());
      Map<String, Object> happening =
          switch (turn % 4) {
            case 0 -> Map.of("ambient_falls_stops", turn % 5 - 1.5);
            case 1 -> Map.of("dead", light.id().text());
            case 2 -> Map.of("moved", moved(light));
            default -> Map.of("ambient_ev100", setup.ambient().orElseThrow().level().value() - 1);
          };
      Map<String, Object> request = happened(setup, turn % 3 == 0 ? OTHER : USUAL, happening);
      if (turn % 8 == 1) {
        request.put("kit", Kit.FORM.write(kit));
      } else if (turn % 8 == 3) {
        request.put("keep", List.of("time"));
      }
      requests.add(request);
    }
    EngineOnNode.Compared compared = engine.compared(requests);
    assertEquals(List.of(), compared.differences());
    long turns = compared.onTheJvm().stream().filter(BrowserEngineTest::hasWays).count();
    assertTrue(turns > requests.size() / 2, () -> "only " + turns + " have ways");
  }

  @Test
  void everyReadingIsComparedAsOnTheJvm() throws Exception {
    List<Map<String, Object>> requests = new ArrayList<>();
    for (SetupDocument setup : new DemoSeeds().setups().values()) {
      int turn = requests.size();
      Map<String, Object> request =
          Requests.ofPlain(
              SetupDocument.FORM.write(setup), turn % 2 == 0 ? OTHER : USUAL, Part.METER);
      double mark = List.of(2.0, 4.0, 5.6, 8.0, 11.0).get(turn % 5);
      request.put(
          "metered",
          Map.of(
              "lights",
              setup.lights().stream()
                  .map(of -> Map.of("light", of.id().text(), "f_number", mark, "tenths", turn % 10))
                  .toList(),
              "marks",
              List.of(Map.of("mark", turn % 4, "reading", Map.of("f_number", mark)))));
      request.put("phrases", phrases(turn % 2 == 0 ? OTHER : USUAL, METERED));
      requests.add(request);
    }
    EngineOnNode.Compared compared = engine.compared(requests);
    assertEquals(List.of(), compared.differences());
    assertTrue(
        compared.onTheJvm().stream().noneMatch(BrowserEngineTest::hasProblems),
        "all could be compared");
  }

  private static Map<String, Object> happened(
      SetupDocument setup, Notation notation, Map<String, Object> happening) {
    Map<String, Object> request =
        Requests.ofPlain(SetupDocument.FORM.write(setup), notation, Part.NOW);
    request.put("happening", happening);
    request.put("phrases", phrases(notation, HAPPENED));
    return request;
  }

  private static Map<String, String> phrases(Notation notation, List<String> rooms) {
    Map<String, String> sent = new HashMap<>(notation.phrases().byKey());
    sent.keySet().removeIf(key -> rooms.stream().noneMatch(key::startsWith));
    return sent;
  }

  /** Half a metre higher and nearer the camera, in a page's own numbers. */
  private static Map<String, Object> moved(Light light) {
    Point at = light.place();
    return Map.of("light", light.id().text(), "place", List.of(at.x(), at.y() - 0.5, at.z() + 0.5));
  }

  private static boolean hasWays(Object answer) {
    return ((Map<?, ?>) answer).get("now") instanceof Map<?, ?> now
        && now.get("ways") instanceof List<?> ways
        && !ways.isEmpty();
  }

  @Test
  void whatCannotHaveHappenedIsToldInTheSameWords() throws Exception {
    SetupDocument setup = new DemoSeeds().setup("dust-of-the-day");
    List<Map<String, Object>> requests =
        List.of(
            happened(setup, USUAL, Map.of("dead", "nobody")),
            happened(setup, USUAL, Map.of()),
            happened(setup, USUAL, Map.of("ambient_ev100", 99.0)));
    EngineOnNode.Compared compared = engine.compared(requests);
    assertEquals(List.of(), compared.differences());
    for (Object answer : compared.onTheJvm()) {
      assertTrue(hasProblems(answer), answer::toString);
    }
  }

  @Test
  void aDocumentThatIsWrongHasTheSameProblemsAsOnTheJvm() throws Exception {
    long seed = 2026;
    Random dice = new Random(seed);
    List<Map<String, Object>> requests = new ArrayList<>();
    for (SetupDocument setup : new DemoSeeds().setups().values()) {
      for (int i = 0; i < 8; i++) {
        Object spoilt = Spoiling.of(SetupDocument.FORM.write(setup), dice);
        requests.add(Requests.ofPlain(spoilt, USUAL, Part.STRIP, Part.LIGHTS, Part.NEEDS));
      }
    }
    EngineOnNode.Compared compared = engine.compared(requests);
    assertEquals(List.of(), compared.differences(), () -> "seed " + seed);
    long wrong = compared.onTheJvm().stream().filter(BrowserEngineTest::hasProblems).count();
    assertTrue(wrong > requests.size() / 2, () -> "only " + wrong + " are wrong, seed " + seed);
  }

  private static boolean hasProblems(Object answer) {
    return !List.of().equals(((Map<?, ?>) answer).get("problems"));
  }
}
