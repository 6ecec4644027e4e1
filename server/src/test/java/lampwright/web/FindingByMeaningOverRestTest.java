package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.document.Json;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/**
 * From a setup that is kept to its meaning in the database and in the index, with nobody waiting.
 */
class FindingByMeaningOverRestTest {

  @RegisterExtension
  static final TestHouse house =
      TestHouse.with(
          Map.of(
              "LAMPWRIGHT_DEMO",
              "few",
              "LAMPWRIGHT_DEMO_PASSWORD",
              TestHouse.PASSWORD,
              "LAMPWRIGHT_MEANING",
              "true"));

  private static final String SETUPS = "/api/studios/demo/setups";

  @Test
  void aSetupIsFoundByWhatItMeansAndByWhatItMeansNowAfterAChange() {
    Visitor author = house.signedIn("author@demo.example");
    Map<String, Object> setup = new LinkedHashMap<>(Documents.setup("Waiting for the others"));
    setup.put("intent", "The cellist tunes her cello by the window.");
    Map<?, ?> kept = Visitor.object(author.post(SETUPS, Json.print(setup)));

    awaitFound(author, "orchestra rehearsal", String.valueOf(kept.get("id")));

    setup.put("intent", "A mare and her foal on the moor.");
    author.with("If-Match", "\"1\"").put(SETUPS + "/" + kept.get("id"), Json.print(setup));
    awaitFound(author, "horse riding", String.valueOf(kept.get("id")));
  }

  /** Waits until a setup is found by its meaning, and by no word of it. */
  private static void awaitFound(Visitor author, String words, String wanted) {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
    Map<?, ?> answer;
    do {
      assertTrue(System.nanoTime() < end, "Not found by its meaning: " + words);
      answer = Visitor.object(author.get(SETUPS + "?limit=100&q=" + encoded(words)));
    } while (Told.list(answer, "items").stream()
        .noneMatch(
            item ->
                wanted.equals(Told.at(item, "id"))
                    && String.valueOf(Told.at(item, "reasons")).startsWith("[near in meaning: ")));
    assertEquals(false, answer.get("by_words_alone"));
  }

  private static String encoded(String words) {
    return URLEncoder.encode(words, StandardCharsets.UTF_8);
  }
}
