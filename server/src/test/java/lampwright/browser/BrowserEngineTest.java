package lampwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import lampwright.document.Json;
import lampwright.engine.light.Point;
import lampwright.gear.Kit;
import lampwright.language.Notation;
import lampwright.setup.DemoSeeds;
import lampwright.setup.Light;
import lampwright.setup.SetupDocument;
import lampwright.wording.WordsForTests;
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

  private static EngineOnNode engine;

  @BeforeAll
  static void compiles(@TempDir Path folder) throws Exception {
    engine = EngineOnNode.compiled(folder);
  }

  @Test
  void everyDemoSetupIsAnsweredAsOnTheJvm() throws Exception {
    List<Map<String, Object>> requests = new ArrayList<>();
    for (SetupDocument setup : new DemoSeeds().setups().values()) {
      boolean isOdd = requests.size() % 2 == 1;
      requests.add(Requests.of(setup, isOdd ? USUAL : OTHER));
    }
    assertTrue(requests.size() >= 75, () -> "only " + requests.size() + " requests");
    assertEquals(List.of(), engine.differences(requests));
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
    assertEquals(List.of(), engine.differences(requests));
    List<Map<String, Object>> some = requests.subList(0, 30);
    long turns = some.stream().filter(BrowserEngineTest::hasWays).count();
    assertTrue(turns > some.size() / 2, () -> "only " + turns + " have ways");
  }

  private static Map<String, Object> happened(
      SetupDocument setup, Notation notation, Map<String, Object> happening) {
    Map<String, Object> request =
        Requests.ofPlain(SetupDocument.FORM.write(setup), notation, Part.NOW);
    request.put("happening", happening);
    request.put("phrases", phrases(notation));
    return request;
  }

  /** The rooms that a page has to send for this part: no other says a word in it. */
  private static Map<String, String> phrases(Notation notation) {
    Map<String, String> sent = new HashMap<>(notation.phrases().byKey());
    sent.keySet().removeIf(key -> !key.startsWith("reacting.") && !key.startsWith("wording."));
    return sent;
  }

  /** Half a metre higher and nearer the camera, in a page's own numbers. */
  private static Map<String, Object> moved(Light light) {
    Point at = light.place();
    return Map.of("light", light.id().text(), "place", List.of(at.x(), at.y() - 0.5, at.z() + 0.5));
  }

  private static boolean hasWays(Map<String, Object> request) {
    return Answers.to(Json.parse(Json.print(request))).get("now") instanceof Map<?, ?> now
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
    assertEquals(List.of(), engine.differences(requests));
    for (Map<String, Object> request : requests) {
      assertTrue(hasProblems(request), request::toString);
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
    long wrong = requests.stream().filter(BrowserEngineTest::hasProblems).count();
    assertTrue(wrong > requests.size() / 2, () -> "only " + wrong + " are wrong, seed " + seed);
    assertEquals(List.of(), engine.differences(requests), () -> "seed " + seed);
  }

  private static boolean hasProblems(Map<String, Object> request) {
    return !List.of().equals(Answers.to(request).get("problems"));
  }
}
