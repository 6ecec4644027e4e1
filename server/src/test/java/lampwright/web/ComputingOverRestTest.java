package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.document.Json;
import lampwright.setup.SetupDocument;
import lampwright.setup.WorkedExamples;
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

  /**
   * GN 64 m at 2 m is f/32; three stops down f/11.31, exact marks (definition of the guide number).
   */
  @Test
  void aBareHeadGivesItsGuideNumberDividedByItsDistance() {
    HttpResponse<String> answer =
        reader.post(STUDIO + "/figures", Documents.json(Documents.setup("At two metres")));
    assertEquals(200, answer.statusCode(), answer.body());
    Object light = Told.at(Visitor.object(answer), "lights", 0);
    assertEquals(2, Told.number(light, "distance_m"), 1e-12);
    Object level = Told.at(light, "level");
    assertEquals(32 / Math.sqrt(8), Told.number(level, "f_number"), 1e-9);
    assertEquals("computed", Told.at(level, "known"));
    assertEquals(2, Told.number(level, "from_shooting_stops"), 1e-9);
  }

  /** f/5.6, 1/125, ISO 100 asks for EV100 12; common practice, no source (TRADE-FACTS). */
  @Test
  void anAmbientOfEvElevenIsOneStopUnderFiveSixAtAHundredAndTwentyFifth() {
    HttpResponse<String> answer =
        reader.post(STUDIO + "/figures", Documents.json(Documents.setup("One stop under")));
    assertEquals(-1, Told.number(Visitor.object(answer), "ambient", "offset_stops"), 1e-9);
  }

  /** From 2 m in front of the face to 4 m: a quarter, by the inverse square law. */
  @Test
  void aTargetThatIsLitFromBehindOnlyIsToldWithItsSpill() {
    Map<String, Object> setup = Documents.setup("From behind");
    Map<String, Object> key = Documents.light("key");
    key.put("place", Map.of("x_m", 0, "y_m", -2, "z_m", 1.6));
    Map<String, Object> rim = Documents.light("rim");
    rim.put("role", "rim");
    rim.put("place", Map.of("x_m", 0, "y_m", 4, "z_m", 1.6));
    rim.put("target", Map.of("name", "chair", "at", Map.of("x_m", 0, "y_m", 2, "z_m", 1.6)));
    setup.put("camera", Map.of("place", Map.of("x_m", 0, "y_m", -9, "z_m", 1.6)));
    setup.put("lights", List.of(rim, key));
    setup.remove("ambient");
    HttpResponse<String> answer = reader.post(STUDIO + "/figures", Documents.json(setup));
    assertEquals(200, answer.statusCode(), answer.body());
    Described described = new Described(house.visitor().get("/api/openapi.json").body());
    assertEquals("", described.faultsBy("Figures", answer.body()));
    Object figures = Visitor.object(answer);
    assertEquals(1, Told.list(figures, "targets").size());
    double face = Told.number(figures, "targets", 0, "flash_lx_s");
    Object chair = Told.at(figures, "unlit_targets", 0);
    assertEquals("chair", Told.at(chair, "name"));
    assertEquals(List.of("rim"), Told.at(chair, "lights"));
    Object reaches = Told.at(chair, "spill", "reaches");
    assertEquals(0, Told.number(reaches, 0, "exposure_lx_s"));
    assertEquals(face / 4, Told.number(reaches, 1, "exposure_lx_s"), 1e-9 * face);
  }

  @Test
  void everyLevelShowsItsWorkingWithTheKeyOfASource() {
    HttpResponse<String> answer =
        reader.post(
            STUDIO + "/figures?workings=true", Documents.json(Documents.setup("Explain yourself")));
    List<?> parts = Told.list(Visitor.object(answer), "lights", 0, "level", "working", "parts");
    assertFalse(parts.isEmpty());
    assertTrue(answer.body().contains("\"source\":\"guide-number\""), answer.body());
  }

  @Test
  void workingsAreToldOnRequestOnly() {
    String setup = Documents.json(Documents.setup("Be brief"));
    assertFalse(reader.post(STUDIO + "/figures", setup).body().contains("\"working"));
    assertTrue(reader.post(STUDIO + "/figures?workings=true", setup).body().contains("\"working"));
    HttpResponse<String> refused = reader.post(STUDIO + "/figures?workings=perhaps", setup);
    assertEquals(422, refused.statusCode());
    assertEquals("/workings", Told.at(Visitor.object(refused), "errors", 0, "pointer"));
  }

  @Test
  void everyDemoSetupIsAnsweredForEveryDemoKit() {
    List<?> setups = Visitor.items(reader.get(STUDIO + "/setups?limit=100"));
    List<?> kits = Visitor.items(reader.get(STUDIO + "/kits"));
    assertTrue(setups.size() >= 8 && kits.size() >= 2);
    Map<String, Integer> outcomes = new HashMap<>();
    for (Object setup : setups) {
      String path = STUDIO + "/setups/" + Told.at(setup, "id");
      assertEquals(200, reader.get(path + "/figures").statusCode());
      for (Object kit : kits) {
        HttpResponse<String> answer =
            reader.post(path + "/adaptations", Json.print(Map.of("kit", Told.at(kit, "id"))));
        assertEquals(200, answer.statusCode(), answer.body());
        Object best = Told.at(Visitor.object(answer), "adaptations", 0, "document");
        HttpResponse<String> figures = reader.post(STUDIO + "/figures", Json.print(best));
        assertEquals(200, figures.statusCode(), "An adaptation is a complete setup");
        outcomes.merge(Told.at(Visitor.object(answer), "outcome").toString(), 1, Integer::sum);
      }
    }
    assertEquals(setups.size() * kits.size(), outcomes.values().stream().mapToInt(n -> n).sum());
    assertTrue(outcomes.containsKey("adapted"), outcomes.toString());
    assertTrue(outcomes.containsKey("not_enough_gear"), outcomes.toString());
  }

  @Test
  void documentsInTheBodyAreAdaptedWithoutBeingKept() {
    double before = Told.number(Visitor.object(reader.get(STUDIO + "/setups")), "total");
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
    Object made = Told.at(Visitor.object(answer), "adaptations", 0, "lights", 0, "made");
    // A guide number of 45 is 1.016 stops below 64; one stop less power makes up for it.
    assertEquals("200 W·s battery head", Told.at(made, "head"));
    assertEquals(2, Told.number(made, "stops_down"), 1e-9);
    assertEquals(before, Told.number(Visitor.object(reader.get(STUDIO + "/setups")), "total"));
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
  void aWeightSetByHandGoesBeforeThePresets() {
    assertTrue(Math.abs(ambientChange(100)) < 1.0 / 3);
    assertTrue(Math.abs(ambientChange(0)) > 1);
  }

  /** What the best adaptation of the dancer of reference 17a does to the ambient, in stops. */
  private double ambientChange(double weight) {
    HttpResponse<String> answer =
        reader.post(
            STUDIO + "/adaptations",
            Json.print(
                Map.of(
                    "document",
                    SetupDocument.FORM.write(WorkedExamples.dancer()),
                    "kit",
                    WorkedExamples.dancerKitB(),
                    "weights",
                    Map.of("ambient", weight))));
    assertEquals(200, answer.statusCode(), answer.body());
    return Told.number(
        Told.at(Visitor.object(answer), "adaptations", 0, "settings"), "ambient_change_stops");
  }

  @Test
  void aWeightBelowZeroIsPointedAt() {
    HttpResponse<String> answer =
        reader.post(
            STUDIO + "/adaptations",
            Json.print(
                Map.of(
                    "document",
                    Documents.setup("Weighed wrongly"),
                    "kit",
                    Documents.kit("One small head"),
                    "weights",
                    Map.of("iso", -1))));
    assertEquals(422, answer.statusCode(), answer.body());
    assertTrue(answer.body().contains("\"pointer\":\"/weights/iso\""), answer.body());
  }

  @Test
  void aKitThatIsNotThereIsPointedAt() {
    List<?> setups = Visitor.items(reader.get(STUDIO + "/setups?limit=1"));
    String path = STUDIO + "/setups/" + Told.at(setups, 0, "id");
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
