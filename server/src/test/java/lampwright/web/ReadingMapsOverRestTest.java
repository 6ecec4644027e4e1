package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ReadingMapsOverRestTest {

  /** A level plane of eight by eight metres, on the ground. */
  static final String FLOOR =
      "{\"plane\":\"level\",\"corner\":{\"x_m\":-4,\"y_m\":-4,\"z_m\":0},\"width_m\":8,\"depth_m\":8}";

  private static final String MAPS = "/api/studios/demo/reading-maps";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor reader;

  @BeforeAll
  void aReaderComesWithAToken() {
    reader = house.withToken("reader@demo.example");
  }

  private HttpResponse<String> map(Map<String, Object> document, String question) {
    String body = "{\"document\":" + Documents.json(document) + ",\"map\":" + question + "}";
    return reader.post(MAPS, body);
  }

  private Map<?, ?> mapped(Map<String, Object> document, String question) {
    HttpResponse<String> answer = map(document, question);
    assertEquals(200, answer.statusCode(), answer.body());
    return Visitor.object(answer);
  }

  /**
   * The light stands two metres before its target, with a guide number of 64 m, three stops down:
   * f/11.31 at the target by the guide number's definition, two stops over f/5.6; a metre further,
   * on the axis, less by the inverse square law, 2 log2(3/2).
   */
  @Test
  void theMapReadsAsTheGuideNumberAndTheInverseSquareLawSay() {
    double bearing = Math.toDegrees(Math.atan2(1.6, 1.2));
    String onFromTheTarget =
        "{\"over\":{\"plane\":\"upright\",\"corner\":{\"x_m\":0,\"y_m\":0,\"z_m\":1.6},"
            + "\"bearing_deg\":"
            + bearing
            + ",\"width_m\":1,\"height_m\":1},\"columns\":2,\"rows\":2,"
            + "\"held\":\"toward_each_light\",\"each_light\":true}";
    Map<?, ?> answer = mapped(Documents.setup("At two metres"), onFromTheTarget);
    List<?> levels = Told.list(answer, "lights", 0, "levels_stops");
    double atTarget = ((Number) levels.get(0)).doubleValue();
    double further = ((Number) levels.get(1)).doubleValue();
    assertEquals(2, atTarget, 0.005);
    assertEquals(2 - 2 * Math.log(1.5) / Math.log(2), further, 0.005);
  }

  @Test
  void contoursGoFromTheBorderOrRoundAndLieInThePlane() {
    String wall =
        "{\"over\":{\"plane\":\"upright\",\"corner\":{\"x_m\":-3,\"y_m\":1,\"z_m\":0},"
            + "\"width_m\":6,\"height_m\":3},\"contours_at_stops\":[-2,0]}";
    Map<?, ?> answer = mapped(Documents.setup("A wall"), wall);
    List<?> contours = Told.list(answer, "contours");
    assertTrue(!contours.isEmpty(), "no contours");
    for (Object contour : contours) {
      assertTrue(Math.abs(Told.number(contour, "level_stops") + 1) == 1, contour.toString());
      for (Object point : Told.list(contour, "points")) {
        assertEquals(1, Told.number(point, "y_m"), 1e-9);
        assertTrue(Told.number(point, "z_m") >= 0 && Told.number(point, "z_m") <= 3 + 1e-9);
      }
    }
    assertEquals(80 * 80, Told.list(answer, "levels_stops").size());
  }

  @Test
  void aSetupOfTheCatalogueIsMappedWithoutBeingSent() {
    Object setup = Visitor.items(reader.get("/api/studios/demo/setups?limit=1")).getFirst();
    HttpResponse<String> answer =
        reader.post(
            "/api/studios/demo/setups/" + Told.at(setup, "id") + "/reading-maps",
            "{\"over\":" + FLOOR + ",\"columns\":20,\"rows\":10,\"held\":\"up\"}");
    assertEquals(200, answer.statusCode(), answer.body());
    assertEquals(200, Told.list(Visitor.object(answer), "levels_stops").size());
  }

  @ParameterizedTest
  @CsvSource({
    "'\"columns\":1', /map/columns",
    "'\"rows\":201', /map/rows",
    "'\"held\":\"sideways\"', /map/held",
    "'\"contours_at_stops\":[99]', /map/contours_at_stops/0",
    "'\"shadows\":true', /map/shadows"
  })
  void aWrongWishIsToldWhereItStands(String wrong, String pointer) {
    HttpResponse<String> answer =
        map(Documents.setup("Wrong"), "{\"over\":" + FLOOR + "," + wrong + "}");
    assertEquals(422, answer.statusCode(), answer.body());
    assertEquals(pointer, Told.at(Visitor.object(answer), "errors", 0, "pointer"));
  }
}
