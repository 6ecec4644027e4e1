package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.time.Duration;
import java.time.Instant;
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

/** What a day with setups takes, asked by a program. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PackingOverRestTest {

  private static final String PACKING = "/api/studios/demo/packing";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor reader;
  private Visitor author;
  private String setup = "";

  @BeforeAll
  void anAuthorWritesOneSetupThatSaysWhereItIs() {
    reader = house.withToken("reader@demo.example");
    author = house.withToken("author@demo.example");
    Map<String, Object> document = Documents.setup("One head on the hill");
    document.put(
        "occasion",
        Map.of(
            "place",
            Map.of("name", "the hill", "latitude_deg", 51.4779, "longitude_deg", 0),
            "date",
            "2026-06-21",
            "time",
            "20:00",
            "utc_offset",
            "+01:00"));
    HttpResponse<String> kept = author.post("/api/studios/demo/setups", Documents.json(document));
    assertEquals(201, kept.statusCode(), kept.body());
    setup = Told.at(Visitor.object(kept), "id").toString();
  }

  private Map<?, ?> answer(String more) {
    HttpResponse<String> answer =
        author.get(PACKING + "?setup=" + setup + "&day=2026-06-21" + more);
    assertEquals(200, answer.statusCode(), answer.body());
    return Visitor.object(answer);
  }

  private static Instant sun(Map<?, ?> day, String event) {
    return Told.list(day, "sun").stream()
        .filter(one -> Told.at(one, "event").equals(event))
        .map(one -> Instant.parse(Told.at(one, "at").toString()))
        .findFirst()
        .orElseThrow();
  }

  private static void assertNear(String expected, Instant actual) {
    Duration off = Duration.between(Instant.parse(expected), actual).abs();
    assertTrue(off.toSeconds() <= 90, expected + " against " + actual);
  }

  /** Sunrise 04:43 and sunset 21:21 by British clocks, as almanacs print them; from memory. */
  @Test
  void theSunOfMidsummerAtGreenwichIsThatOfTheAlmanac() {
    Map<?, ?> day = answer("");
    assertEquals("+01:00", Told.at(day, "utc_offset"));
    assertNear("2026-06-21T03:43:00Z", sun(day, "sunrise"));
    assertNear("2026-06-21T20:21:00Z", sun(day, "sunset"));
    List<Instant> evening =
        List.of(
            sun(day, "golden_hour_begins"),
            sun(day, "sunset"),
            sun(day, "golden_hour_ends"),
            sun(day, "blue_hour_ends"));
    assertEquals(evening.stream().sorted().toList(), evening);
  }

  @Test
  void aSetupThatWaitsForSunsetStandsReadyTenMinutesBefore() {
    Map<?, ?> day = answer("&ready_by=sunset&hands=2");
    Instant sunset = sun(day, "sunset");
    assertEquals(sunset, Instant.parse(Told.at(day, "setups", 0, "wanted_at").toString()));
    Object build = Told.at(day, "plan", "stages", 0);
    assertEquals("build", Told.at(build, "kind"));
    Instant ready =
        Instant.parse(Told.at(build, "at").toString())
            .plus(Duration.ofMinutes((long) Told.number(build, "minutes")));
    Duration spare = Duration.between(ready, sunset);
    assertTrue(spare.toSeconds() >= 600 && spare.toSeconds() < 660, spare.toString());
    assertEquals(List.of(), Told.list(day, "plan", "shortfalls"));
  }

  @Test
  void aCrewThatComesTooLateIsToldByHowMuch() {
    Map<?, ?> day = answer("&ready_by=20:00&not_before=19:50&hands=2");
    int build = (int) Told.number(day, "plan", "stages", 0, "minutes");
    assertEquals(0, Told.number(day, "plan", "shortfalls", 0, "setup"));
    assertEquals(build, Told.number(day, "plan", "shortfalls", 0, "minutes"));
  }

  @Test
  void everyDayIsToldThatItsPlanIsNoPermission() {
    List<?> cautions = Told.list(answer(""), "cautions");
    assertTrue(cautions.getFirst().toString().startsWith("A plan is never permission"));
    for (String danger : List.of("lift", "ballast", "residual-current", "cold", "flight")) {
      assertTrue(
          cautions.stream().anyMatch(caution -> caution.toString().contains(danger)), danger);
    }
  }

  @Test
  void strangersAreAskedToSignInAndReadersMayAskOfWhatTheyMayRead() {
    assertEquals(401, house.visitor().get(PACKING + "?setup=" + setup).statusCode());
    assertEquals(404, reader.get(PACKING + "?setup=" + setup).statusCode());
    assertEquals(404, author.get(PACKING + "?setup=zzzz").statusCode());
    Object published = Visitor.items(reader.get("/api/studios/demo/setups?limit=1")).getFirst();
    assertEquals(200, reader.get(PACKING + "?setup=" + Told.at(published, "id")).statusCode());
  }

  @ParameterizedTest
  @CsvSource({
    "&hands=9, /hands",
    "&hands=none, /hands",
    "&ready_by=noon, /ready_by",
    "&ready_by=18:00&ready_by=19:00, /ready_by",
    "&kit=none, /kit",
    "&adapted=true, /kit",
    "&day=soon, /day",
    "&not_before=25:00, /not_before",
    "&carry_minutes=0, /carry_minutes",
    "&reserve_minutes=241, /reserve_minutes",
    "&weather=fair, /weather",
  })
  void whatCannotBeAskedIsToldByItsName(String wrong, String pointer) {
    HttpResponse<String> answer = author.get(PACKING + "?setup=" + setup + wrong);
    assertEquals(422, answer.statusCode(), answer.body());
    assertEquals(pointer, Told.at(Visitor.object(answer), "errors", 0, "pointer"));
  }

  @Test
  void aDayWithoutASetupIsNone() {
    HttpResponse<String> answer = author.get(PACKING);
    assertEquals(422, answer.statusCode(), answer.body());
    assertEquals("/setup", Told.at(Visitor.object(answer), "errors", 0, "pointer"));
  }
}
