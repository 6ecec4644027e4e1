package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import lampwright.TestHouse;
import lampwright.Visitor;
import lampwright.document.Json;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ComputingOverRestTest {

  private static final String STUDIO = "/api/studios/demo";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor reader;

  @BeforeAll
  void aReaderComesWithAToken() {
    reader = house.withToken("reader@demo.example");
  }

  private static Map<?, ?> first(Object list) {
    return (Map<?, ?>) ((List<?>) list).getFirst();
  }

  private static double number(Map<?, ?> object, String key) {
    return (Double) Objects.requireNonNull(object.get(key), key);
  }

  /**
   * GN 64 m at 2 m is f/32; three stops down f/11.31, exact marks (definition of the guide number).
   */
  @Test
  void aBareHeadGivesItsGuideNumberDividedByItsDistance() {
    HttpResponse<String> answer =
        reader.post(STUDIO + "/figures", Documents.json(Documents.setup("At two metres")));
    assertEquals(200, answer.statusCode(), answer.body());
    Map<?, ?> light = first(Visitor.object(answer).get("lights"));
    assertEquals(2, number(light, "distance_m"), 1e-12);
    Map<?, ?> level = (Map<?, ?>) Objects.requireNonNull(light.get("level"));
    assertEquals(32 / Math.sqrt(8), number(level, "f_number"), 1e-9);
    assertEquals("computed", level.get("known"));
    assertEquals(2, number(level, "from_shooting_stops"), 1e-9);
  }

  /** f/5.6, 1/125, ISO 100 asks for EV100 12; common practice, no source (TRADE-FACTS). */
  @Test
  void anAmbientOfEvElevenIsOneStopUnderFiveSixAtAHundredAndTwentyFifth() {
    HttpResponse<String> answer =
        reader.post(STUDIO + "/figures", Documents.json(Documents.setup("One stop under")));
    Map<?, ?> ambient = (Map<?, ?>) Objects.requireNonNull(Visitor.object(answer).get("ambient"));
    assertEquals(-1, number(ambient, "offset_stops"), 1e-9);
  }

  @Test
  void everyLevelShowsItsWorkingWithTheKeyOfASource() {
    HttpResponse<String> answer =
        reader.post(STUDIO + "/figures", Documents.json(Documents.setup("Explain yourself")));
    Map<?, ?> light = first(Visitor.object(answer).get("lights"));
    Map<?, ?> level = (Map<?, ?>) Objects.requireNonNull(light.get("level"));
    Map<?, ?> working = (Map<?, ?>) Objects.requireNonNull(level.get("working"));
    assertFalse(((List<?>) Objects.requireNonNull(working.get("parts"))).isEmpty());
    assertTrue(answer.body().contains("\"source\":\"guide-number\""), answer.body());
  }

  @Test
  void everyDemoSetupIsAnsweredForEveryDemoKit() {
    List<?> setups = Visitor.items(reader.get(STUDIO + "/setups?limit=100"));
    List<?> kits = Visitor.items(reader.get(STUDIO + "/kits"));
    assertTrue(setups.size() >= 8 && kits.size() >= 2);
    Map<String, Integer> outcomes = new HashMap<>();
    for (Object setup : setups) {
      String path = STUDIO + "/setups/" + ((Map<?, ?>) setup).get("id");
      assertEquals(200, reader.get(path + "/figures").statusCode());
      for (Object kit : kits) {
        HttpResponse<String> answer =
            reader.post(
                path + "/adaptations",
                Json.print(Map.of("kit", Objects.requireNonNull(((Map<?, ?>) kit).get("id")))));
        assertEquals(200, answer.statusCode(), answer.body());
        Map<?, ?> best = first(Visitor.object(answer).get("adaptations"));
        HttpResponse<String> figures =
            reader.post(STUDIO + "/figures", Json.print(best.get("document")));
        assertEquals(200, figures.statusCode(), "An adaptation is a complete setup");
        outcomes.merge((String) Visitor.object(answer).get("outcome"), 1, Integer::sum);
      }
    }
    assertEquals(setups.size() * kits.size(), outcomes.values().stream().mapToInt(n -> n).sum());
    assertTrue(outcomes.containsKey("adapted"), outcomes.toString());
    assertTrue(outcomes.containsKey("not_enough_gear"), outcomes.toString());
  }

  @Test
  void documentsInTheBodyAreAdaptedWithoutBeingKept() {
    Object before = Visitor.object(reader.get(STUDIO + "/setups")).get("total");
    HttpResponse<String> answer =
        reader.post(
            STUDIO + "/adaptations",
            Json.print(
                Map.of(
                    "document",
                    Documents.setup("Only computed"),
                    "kit",
                    Documents.kit("One small head"),
                    "limits",
                    Map.of("keep_f_number", 5.6))));
    assertEquals(200, answer.statusCode(), answer.body());
    Map<?, ?> best = first(Visitor.object(answer).get("adaptations"));
    Map<?, ?> light = first(best.get("lights"));
    Map<?, ?> made = (Map<?, ?>) Objects.requireNonNull(light.get("made"));
    // A guide number of 45 is 1.016 stops below 64; one stop less power makes up for it.
    assertEquals("200 W·s battery head", made.get("head"));
    assertEquals(2, number(made, "stops_down"), 1e-9);
    assertEquals(before, Visitor.object(reader.get(STUDIO + "/setups")).get("total"));
  }

  @Test
  void limitsThatNoCameraSettingFulfilsAreNamed() {
    Map<String, Object> kit =
        Documents.with(
            Documents.kit("With a body"),
            "bodies",
            List.of(
                Map.of("name", "plain body", "width_mm", 36, "height_mm", 24, "sync", "1/200")));
    HttpResponse<String> answer =
        reader.post(
            STUDIO + "/adaptations",
            Json.print(
                Map.of(
                    "document",
                    Documents.setup("Too fast"),
                    "kit",
                    kit,
                    "limits",
                    Map.of("keep_time", "1/500"))));
    assertEquals(200, answer.statusCode(), answer.body());
    assertEquals("not_enough_gear", Visitor.object(answer).get("outcome"));
    assertTrue(answer.body().contains("1/200"), answer.body());
  }

  @Test
  void aKitThatIsNotThereIsPointedAt() {
    List<?> setups = Visitor.items(reader.get(STUDIO + "/setups?limit=1"));
    String path = STUDIO + "/setups/" + ((Map<?, ?>) setups.getFirst()).get("id");
    HttpResponse<String> answer =
        reader.post(path + "/adaptations", "{\"kit\":\"zzzz9zzzz9zzzz9z\"}");
    assertEquals(422, answer.statusCode());
    assertTrue(answer.body().contains("\"pointer\":\"/kit\""), answer.body());
  }

  @Test
  void bothDocumentsHaveAPublishedSchema() {
    for (String name : List.of("setup", "kit")) {
      HttpResponse<String> answer = house.visitor().get("/api/schemas/" + name + ".json");
      assertEquals(200, answer.statusCode());
      assertTrue(answer.body().contains("json-schema.org/draft/2020-12/schema"));
    }
  }
}
