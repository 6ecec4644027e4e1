package lampwright.web;

import static lampwright.web.GearForTests.GEAR;
import static lampwright.web.GearForTests.KITS;
import static lampwright.web.GearForTests.head;
import static lampwright.web.GearForTests.id;
import static lampwright.web.GearForTests.kept;
import static lampwright.web.GearForTests.kitOf;
import static lampwright.web.GearForTests.octagon;
import static lampwright.web.GearForTests.told;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

/**
 * The readings are of a head that gives a guide number of 64 m whatever its maker says: by the
 * inverse square law and the definition of the guide number (f-number times metres), f/32 at 2 m,
 * f/16 at 4 m, and a stop less for each stop down.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class GearCalibrationTest {

  private static final String MADE_UP = "400 W·s battery head";
  private static final double MAKERS_M = 76;
  private static final double TRUE_M = 64;

  /** The maker's word counts for a hundredth beside five readings, and marks are exact stops. */
  private static final double WITHIN_STOPS = 0.02;

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor author;

  @BeforeAll
  void anAuthorComesWithAToken() {
    author = house.withToken("author@demo.example");
  }

  private static Map<String, Object> reading(
      String head, double fNumber, double distanceM, double stopsDown) {
    Map<String, Object> reading = new LinkedHashMap<>();
    reading.put("head", head);
    reading.put("f_number", fNumber);
    reading.put("distance_m", distanceM);
    reading.put("stops_down", stopsDown);
    return reading;
  }

  private static List<Map<String, Object>> fiveReadings(String head) {
    return List.of(
        reading(head, 32, 2, 0),
        reading(head, 16, 4, 0),
        reading(head, 22, 2, 1),
        reading(head, 11, 2, 3),
        reading(head, 8, 4, 2));
  }

  private String metered(String name) {
    return kept(author, GEAR, Documents.with(head(name, MAKERS_M), "readings", fiveReadings(name)));
  }

  private Map<?, ?> calibrated(Visitor visitor, String address) {
    HttpResponse<String> answer = visitor.post(address, "");
    assertEquals(200, answer.statusCode(), answer.body());
    return Visitor.object(answer);
  }

  private static double stops(double fNumberOver, double fNumber) {
    return 2 * Math.log(fNumberOver / fNumber) / Math.log(2);
  }

  @Test
  void theKeptReadingsTellTheGuideNumberAndChangeNothing() {
    String place = metered("Told only");
    Map<?, ?> answer = calibrated(house.withToken("reader@demo.example"), place + "/calibration");
    Object found = Told.at(answer, "calibration", "heads", 0);
    assertEquals(0, stops(Told.number(found, "guide_number_m"), TRUE_M), WITHIN_STOPS);
    assertEquals(stops(TRUE_M, MAKERS_M), Told.number(found, "above_makers_stops"), WITHIN_STOPS);
    assertTrue(Told.number(found, "within95_stops") > 0);
    assertEquals(false, answer.get("adopted"));
    assertEquals(1, Told.number(told(author, place), "revision"));
  }

  @Test
  void whatIsAdoptedCountsAsMeteredAndIsTheNextRevision() {
    String place = metered("Adopts");
    String adopt = place + "/calibration?adopt=true";
    assertEquals(428, author.post(adopt, "").statusCode());
    assertEquals(412, author.with("If-Match", "\"7\"").post(adopt, "").statusCode());
    Visitor reader = house.withToken("reader@demo.example").with("If-Match", "\"1\"");
    assertEquals(403, reader.post(adopt, "").statusCode());

    HttpResponse<String> done = author.with("If-Match", "\"1\"").post(adopt, "");
    assertEquals(200, done.statusCode(), done.body());
    assertEquals("\"2\"", done.headers().firstValue("ETag").orElseThrow());
    Object output = Told.at(told(author, place), "document", "head", "output");
    assertEquals("reading", Told.at(output, "kind"));
    assertEquals(2, Told.number(output, "distance_m"));
    assertEquals(0, stops(Told.number(output, "f_number"), 32), WITHIN_STOPS);
    String message = Told.at(told(author, place + "/revisions"), "items", 0, "message").toString();
    assertTrue(message.matches("Output by calibration: f/.* ± \\d\\.\\d\\d stops .*"), message);
    // The same readings are not weighed a second time as a word of their own.
    Map<?, ?> again = calibrated(author, place + "/calibration");
    assertEquals(TRUE_M, Told.number(again, "calibration", "heads", 0, "guide_number_m"), 0.01);
  }

  /** By guide numbers of 76 and 64 the same light needs log2((76/64)^2) = 0.496 stop less. */
  @Test
  void theFigureOfAKitThatUsesItFollows() {
    String place = metered(MADE_UP);
    String kit = kept(author, KITS, kitOf("Follows", place));
    String setup = kept(author, "/api/studios/demo/setups", Documents.setup("Key at two metres"));
    double before = powerWith(kit, setup);
    assertEquals(3 + stops(MAKERS_M, TRUE_M), before, 0.06, "to a tenth on the dial");
    assertEquals(
        200,
        author.with("If-Match", "\"1\"").post(place + "/calibration?adopt=true", "").statusCode());
    assertEquals(3, powerWith(kit, setup), 0.06);
    assertEquals(
        "reading", Told.at(told(author, kit), "resolved", "heads", 0, "head", "output", "kind"));
  }

  private double powerWith(String kit, String setup) {
    HttpResponse<String> answer =
        author.post(setup + "/adaptations", "{\"kit\":\"" + id(kit) + "\"}");
    assertEquals(200, answer.statusCode(), answer.body());
    return Told.number(
        Visitor.object(answer), "adaptations", 0, "document", "lights", 0, "stops_down");
  }

  /** A box that takes 1.5 stops: f/16 and a half where the bare head gives f/32, at 2 m. */
  @Test
  void aModifiersLossIsFoundAndAdoptedWhereItsHeadWasReadBareToo() {
    List<Map<String, Object>> readings =
        List.of(
            reading("Bare", 32, 2, 0),
            Documents.with(
                Documents.with(reading("Bare", 16, 2, 0), "tenths", 5.0), "modifier", "Box"));
    String place = kept(author, GEAR, Documents.with(octagon("Box"), "readings", readings));
    HttpResponse<String> done =
        author.with("If-Match", "\"1\"").post(place + "/calibration?adopt=true", "");
    assertEquals(200, done.statusCode(), done.body());
    Object box = Told.at(told(author, place), "document", "modifier");
    assertEquals(1.5, Told.number(box, "loss_stops"), 0.001);
    assertEquals("octagon", Told.at(box, "kind"));
  }

  @Test
  void whatNoMeterHasAShareInIsNotAdopted() {
    Map<String, Object> onlyBoxed =
        Documents.with(reading("Boxed", 16, 2, 0), "modifier", "Nobody's");
    String boxed =
        kept(author, GEAR, Documents.with(head("Boxed", MAKERS_M), "readings", List.of(onlyBoxed)));
    Map<?, ?> answer = calibrated(author, boxed + "/calibration");
    assertTrue(Told.at(answer, "assumed", 0).toString().startsWith("Face of Nobody's: "));
    HttpResponse<String> refused =
        author.with("If-Match", "\"1\"").post(boxed + "/calibration?adopt=true", "");
    assertEquals(409, refused.statusCode());
    assertTrue(refused.body().contains("standard reflector"), refused.body());

    String unread = kept(author, GEAR, head("Unread", MAKERS_M));
    assertEquals(409, author.post(unread + "/calibration", "").statusCode());
    assertEquals(422, author.post(unread + "/calibration?adopt=perhaps", "").statusCode());
    assertEquals(404, author.post(GEAR + "/zzzz9zzzz9zzzz9z/calibration", "").statusCode());
  }
}
