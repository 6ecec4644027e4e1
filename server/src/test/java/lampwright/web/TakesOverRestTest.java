package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The key of the setup gives f/11 by hand: guide number 64 m at 2 m is f/32, three stops down.
 * Remedies are by the inverse square law (common practice, no source).
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
public class TakesOverRestTest {

  private static final String STUDIO = "/api/studios/demo";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor author;
  private Visitor crew;
  private String setup = "";
  private String takes = "";
  private int keys;

  @BeforeAll
  void anAuthorAndTheCrewCome() {
    author = house.withToken("author@demo.example");
    crew = house.withToken("crew@demo.example");
  }

  @BeforeEach
  void aSetupIsShot() {
    setup = made(author.post(STUDIO + "/setups", Documents.json(Documents.setup("On the day"))));
    takes = setup + "/takes";
  }

  private static String made(HttpResponse<String> answer) {
    assertEquals(201, answer.statusCode(), answer.body());
    return answer.headers().firstValue("Location").orElseThrow();
  }

  /** A take with one reading of the key. */
  public static Map<String, Object> take(String key, double fNumber) {
    Map<String, Object> take = new LinkedHashMap<>();
    take.put("at", "2025-09-12T19:13:00+01:00");
    take.put("setup_revision", 1);
    take.put("readings", List.of(Map.of("light", "key", "f_number", fNumber)));
    take.put("client_key", key);
    return take;
  }

  private Map<String, Object> take(double fNumber) {
    keys++;
    return take("phone-key-" + keys, fNumber);
  }

  private HttpResponse<String> log(Map<String, Object> take) {
    return crew.post(takes, Documents.json(take));
  }

  private Object reading(Map<String, Object> take) {
    HttpResponse<String> logged = log(take);
    assertEquals(201, logged.statusCode(), logged.body());
    return Told.at(Visitor.object(logged), "readings", 0);
  }

  private static Map<String, Object> metered(
      Map<String, Object> take, Map<String, Object> reading) {
    return Documents.with(take, "readings", List.of(reading));
  }

  @Test
  void eachReadingComesWithWhatWasExpectedAndWhatHelps() {
    Object reading = reading(take(8));
    assertEquals(11.3137, Told.number(reading, "expected", "f_number"), 0.01);
    assertEquals(8, Told.number(reading, "metered", "f_number"), 0.01);
    assertEquals(-1, Told.number(reading, "over_stops"), 0.01);
    assertTrue(Told.number(reading, "uncertainty_stops") > 0.1);
    assertEquals(1.4, Told.number(reading, "remedy", "distance_m"), 1e-9);
    assertEquals(2, Told.number(reading, "remedy", "stops_down"), 1e-9);
    assertEquals(
        "Key 1.0 stop under: about 0.6 m closer, or 1.0 stop up, to 1/4.",
        Told.at(reading, "sentence"));
  }

  @Test
  void aReadingThatFitsNeedsNoRemedy() {
    Object reading = reading(take(11));
    assertEquals("Key as expected.", Told.at(reading, "sentence"));
    assertFalse(((Map<?, ?>) reading).containsKey("remedy"));
  }

  @Test
  void theMetersOwnIsoIsTakenIntoAccount() {
    Map<String, Object> reading = Map.of("light", "key", "f_number", 11, "iso", 200);
    assertEquals(-1, Told.number(reading(metered(take(8), reading)), "over_stops"), 0.01);
  }

  /** EV 11 for 1/125 at ISO 100 meters f/4; of f/11 that leaves 112 of 128 parts: -0.19 stop. */
  @Test
  void theAmbientIsTakenOffAReadingThatSawIt() {
    Map<String, Object> reading = Map.of("light", "key", "f_number", 11, "includes_ambient", true);
    assertEquals(-0.193, Told.number(reading(metered(take(8), reading)), "over_stops"), 0.01);
  }

  @Test
  void whereTheAmbientDrownsTheLightNothingIsSaidOfIt() {
    Map<String, Object> reading = Map.of("light", "key", "f_number", 2.8, "includes_ambient", true);
    Object told = reading(metered(take(8), reading));
    assertFalse(((Map<?, ?>) told).containsKey("over_stops"));
    assertTrue(Told.at(told, "sentence").toString().contains("not enough is known"));
  }

  @Test
  void theSameTakeSentTwiceIsOneTake() {
    Map<String, Object> take = take(8);
    HttpResponse<String> first = log(take);
    HttpResponse<String> second = log(take);
    assertEquals(201, first.statusCode());
    assertEquals(200, second.statusCode());
    assertEquals(first.body(), second.body());
    HttpResponse<String> other = log(Documents.with(take, "kept", "yes"));
    assertEquals(422, other.statusCode());
    assertEquals("/client_key", Told.at(Visitor.object(other), "errors", 0, "pointer"));
    String place = made(first);
    assertEquals(204, crew.with("If-Match", "\"1\"").delete(place).statusCode());
    assertEquals(422, log(take).statusCode());
  }

  @Test
  void takesSentAtOnceAreNumberedOneAfterTheOtherAndAKeyOnlyOnce() throws Exception {
    List<Callable<HttpResponse<String>>> calls = new ArrayList<>();
    Map<String, Object> twice = take(8);
    for (Map<String, Object> take : List.of(twice, twice, twice, take(8), take(8), take(8))) {
      calls.add(() -> log(take));
    }
    List<Double> numbers = new ArrayList<>();
    try (ExecutorService phones = Executors.newFixedThreadPool(6)) {
      for (Future<HttpResponse<String>> answer : phones.invokeAll(calls)) {
        if (answer.get().statusCode() == 201) {
          numbers.add(Told.number(Visitor.object(answer.get()), "number"));
        } else {
          assertEquals(200, answer.get().statusCode(), answer.get().body());
        }
      }
    }
    assertEquals(List.of(1.0, 2.0, 3.0, 4.0), numbers.stream().sorted().toList());
  }

  @Test
  void numbersCountByTheDayOfThePlacesClocksAndAreNotGivenTwice() {
    String first = made(log(take(8)));
    assertEquals(204, crew.with("If-Match", "\"1\"").delete(first).statusCode());
    assertEquals(2, Told.number(Visitor.object(log(take(8))), "number"));
    // Past midnight by the place's clocks, still the same day by universal time.
    HttpResponse<String> next = log(Documents.with(take(8), "at", "2025-09-13T00:30:00+01:00"));
    assertEquals(1, Told.number(Visitor.object(next), "number"));
    assertEquals("2025-09-13", Told.at(Visitor.object(next), "day"));
    assertEquals(
        "Run-through 3",
        Told.at(Visitor.object(log(Documents.with(take(8), "kind", "run_through"))), "label"));
  }

  @Test
  void theLogIsReadPageByPageByDayAndByWhatWasKept() {
    log(Documents.with(take(8), "at", "2025-09-12T18:00:00+01:00"));
    log(Documents.with(take(8), "kept", "yes"));
    log(Documents.with(take(8), "at", "2025-09-13T18:00:00+01:00"));
    List<Object> days = new ArrayList<>();
    String address = takes + "?limit=2";
    while (!address.isEmpty()) {
      HttpResponse<String> answer = crew.get(address);
      Visitor.items(answer).forEach(item -> days.add(Told.at(item, "document", "at")));
      String link = answer.headers().firstValue("Link").orElse("<>");
      address = link.substring(1, link.indexOf('>'));
    }
    assertEquals(
        List.of(
            "2025-09-13T18:00:00+01:00", "2025-09-12T19:13:00+01:00", "2025-09-12T18:00:00+01:00"),
        days);
    assertEquals(2, Visitor.items(crew.get(takes + "?day=2025-09-12")).size());
    assertEquals(1, Visitor.items(crew.get(takes + "?kept=yes")).size());
    assertEquals(0, Visitor.items(crew.get(takes + "?kept=no")).size());
    assertEquals(422, crew.get(takes + "?kept=perhaps").statusCode());
  }

  @Test
  void aTakeIsJudgedLaterButItsTimeAndItsKeyStay() {
    Map<String, Object> take = take(8);
    String place = made(log(take));
    Map<String, Object> judged =
        Documents.with(Documents.with(take, "kept", "no"), "why", "Blinked.");
    assertEquals(428, crew.put(place, Documents.json(judged)).statusCode());
    Visitor first = crew.with("If-Match", "\"1\"");
    for (Map<String, Object> wrong :
        List.of(
            Documents.with(judged, "at", "2025-09-12T19:14:00+01:00"),
            Documents.with(judged, "client_key", "another-key"))) {
      assertEquals(422, first.put(place, Documents.json(wrong)).statusCode());
    }
    assertEquals(200, first.put(place, Documents.json(judged)).statusCode());
    assertEquals(412, first.put(place, Documents.json(judged)).statusCode());
    assertEquals(1, Visitor.items(crew.get(takes + "?kept=no")).size());
    assertEquals(200, log(take).statusCode(), "the phone may still send what it sent first");
  }

  @ParameterizedTest
  @CsvSource({
    "setup_revision,2,/setup_revision",
    "at,\"2025-09-12T19:13:00\",/at",
    "client_key,\"short\",/client_key",
    "kept,\"perhaps\",/kept",
    "mood,\"good\",/mood"
  })
  void whatCannotBeMeantIsPointedAt(String field, String value, String pointer) {
    String body =
        Documents.json(Documents.with(take(8), field, "?"))
            .replace("\"" + field + "\":\"?\"", "\"" + field + "\":" + value);
    HttpResponse<String> answer = crew.post(takes, body);
    assertEquals(422, answer.statusCode(), answer.body());
    assertEquals(pointer, Told.at(Visitor.object(answer), "errors", 0, "pointer"));
  }

  @Test
  void aReadingOfALightThatIsNotThereOrTwiceIsPointedAt() {
    HttpResponse<String> unknown = log(metered(take(8), Map.of("light", "rim", "f_number", 8)));
    assertEquals("/readings/0/light", Told.at(Visitor.object(unknown), "errors", 0, "pointer"));
    Map<String, Object> one = Map.of("light", "key", "f_number", 8);
    HttpResponse<String> twice = log(Documents.with(take(8), "readings", List.of(one, one)));
    assertEquals("/readings/1/light", Told.at(Visitor.object(twice), "errors", 0, "pointer"));
  }

  @Test
  void readersReadTheLogAndTheCrewDeletesItsOwnTakesOnly() {
    Visitor reader = house.withToken("reader@demo.example");
    assertEquals(404, reader.get(takes).statusCode());
    Proven.by(author, takes);
    assertEquals(200, reader.get(takes).statusCode());
    assertEquals(403, reader.post(takes, Documents.json(take(8))).statusCode());
    assertEquals(401, house.visitor().get(takes).statusCode());
    assertEquals(404, crew.get(STUDIO + "/setups/zzzz9zzzz9zzzz9z/takes").statusCode());
    assertEquals(404, crew.get(takes + "/zzzz9zzzz9zzzz9z").statusCode());
    String authors = made(author.post(takes, Documents.json(take(8))));
    assertEquals(403, crew.with("If-Match", "\"1\"").delete(authors).statusCode());
    String own = made(log(take(8)));
    assertEquals(204, author.with("If-Match", "\"1\"").delete(own).statusCode());
    assertEquals(404, crew.get(own).statusCode());
  }

  @Test
  void theSetupTakesAReadingOverAndItsFiguresFollowTheMeter() {
    String take = made(log(take(8)));
    String chosen = "{\"readings\":[\"key\"]}";
    Visitor first = author.with("If-Match", "\"1\"");
    assertEquals(
        403, crew.with("If-Match", "\"1\"").post(take + "/calibration", chosen).statusCode());
    assertEquals(428, author.post(take + "/calibration", chosen).statusCode());
    HttpResponse<String> answer = first.post(take + "/calibration", chosen);
    assertEquals(200, answer.statusCode(), answer.body());
    assertEquals("\"2\"", answer.headers().firstValue("ETag").orElseThrow());
    Object level = Told.at(Visitor.object(author.get(setup + "/figures")), "lights", 0);
    assertTrue(level.toString().contains("metered"), level.toString());
    assertEquals(412, first.post(take + "/calibration", chosen).statusCode());
    // The next take of the new revision is compared with the meter's word.
    Object next = reading(Documents.with(take(8), "setup_revision", 2));
    assertEquals(0, Told.number(next, "over_stops"), 1e-9);
    assertEquals("metered", Told.at(next, "expected", "known"));
  }

  @Test
  void aReadingOfALightThatWasChangedSinceIsNotTakenOver() {
    String take = made(log(take(8)));
    Map<String, Object> moved =
        Documents.with(
            Documents.setup("On the day"),
            "lights",
            List.of(Documents.with(Documents.light("key"), "stops_down", 4)));
    assertEquals(
        200, author.with("If-Match", "\"1\"").put(setup, Documents.json(moved)).statusCode());
    Visitor second = author.with("If-Match", "\"2\"");
    for (String chosen : List.of("key", "rim")) {
      HttpResponse<String> answer =
          second.post(take + "/calibration", "{\"readings\":[\"" + chosen + "\"]}");
      assertEquals(422, answer.statusCode(), answer.body());
      assertEquals("/readings/0", Told.at(Visitor.object(answer), "errors", 0, "pointer"));
    }
  }
}
