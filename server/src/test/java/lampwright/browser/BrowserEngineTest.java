package lampwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import lampwright.language.Notation;
import lampwright.setup.DemoSeeds;
import lampwright.setup.SetupDocument;
import lampwright.wording.WordsForTests;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The ES module that browsers load answers as the server's own classes do, character by character
 * and number by number. Node stands for the browser. {@code BrowserAnswersTest} has the other half
 * of the setups in each person's notation.
 */
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
