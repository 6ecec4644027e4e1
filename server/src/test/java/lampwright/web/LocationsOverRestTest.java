package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.ArrayList;
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
class LocationsOverRestTest {

  private static final String STUDIO = "/api/studios/demo";
  private static final String LOCATIONS = STUDIO + "/locations";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor author;
  private String slipway = "";

  @BeforeAll
  void aLocationIsKept() {
    author = house.withToken("author@demo.example");
    slipway = kept(Documents.location("The slipway"));
  }

  private String kept(Map<String, Object> location) {
    return made(author.post(LOCATIONS, Documents.json(location)));
  }

  private static String made(HttpResponse<String> answer) {
    assertEquals(201, answer.statusCode(), answer.body());
    return answer.headers().firstValue("Location").orElseThrow();
  }

  /** A setup whose place is the location at an address. */
  static Map<String, Object> setupAt(String location) {
    String id = location.substring(location.lastIndexOf('/') + 1);
    return Documents.with(
        Documents.setup("At " + id),
        "occasion",
        Map.of("place", Map.of("name", "the slipway", "location", id)));
  }

  private Map<?, ?> told(String address) {
    HttpResponse<String> answer = author.get(address);
    assertEquals(200, answer.statusCode(), answer.body());
    return Visitor.object(answer);
  }

  @Test
  void aLocationIsMadeReadChangedAndTakenAway() {
    Map<String, Object> document = Documents.location("The quarry");
    String place = kept(document);
    assertEquals(document.get("hazards"), Told.at(told(place), "document", "hazards"));
    String other = Documents.json(Documents.with(document, "altitude_m", 120));
    assertEquals(428, author.put(place, other).statusCode());
    assertEquals(200, author.with("If-Match", "\"1\"").put(place, other).statusCode());
    assertEquals(412, author.with("If-Match", "\"1\"").put(place, other).statusCode());
    assertEquals(120, Told.number(told(place), "document", "altitude_m"));
    assertEquals(204, author.with("If-Match", "\"2\"").delete(place).statusCode());
    assertEquals(404, author.get(place).statusCode());
    assertEquals(404, author.get(place + "/sun").statusCode());
  }

  @Test
  void theCrewReadsLocationsButDoesNotChangeThem() {
    Visitor crew = house.withToken("crew@demo.example");
    assertEquals(200, crew.get(slipway).statusCode());
    String document = Documents.json(Documents.location("Theirs"));
    assertEquals(403, crew.post(LOCATIONS, document).statusCode());
    assertEquals(403, crew.with("If-Match", "\"1\"").put(slipway, document).statusCode());
    assertEquals(403, crew.with("If-Match", "\"1\"").delete(slipway).statusCode());
    assertEquals(401, house.visitor().get(slipway).statusCode());
  }

  @ParameterizedTest
  @CsvSource({
    "latitude_deg,90.0001",
    "latitude_deg,-91",
    "longitude_deg,180.5",
    "longitude_deg,\"NaN\"",
    "altitude_m,20000",
    "time_zone,\"Europe/Nowhere\"",
    "name,\" \""
  })
  void whatIsNoPlaceOnEarthIsPointedAt(String field, String value) {
    String document =
        Documents.json(Documents.with(Documents.location("Wrong"), field, "?"))
            .replace("\"" + field + "\":\"?\"", "\"" + field + "\":" + value);
    HttpResponse<String> answer = author.post(LOCATIONS, document);
    assertEquals(422, answer.statusCode(), answer.body());
    assertEquals("/" + field, Told.at(Visitor.object(answer), "errors", 0, "pointer"));
  }

  /**
   * The examples of RFC 3339, section 5.8; a leap second is one that clocks of ours cannot keep.
   */
  @ParameterizedTest
  @CsvSource({
    "1985-04-12T23:20:50.52Z,201",
    "1996-12-19T16:39:57-08:00,201",
    "1937-01-01T12:00:27.87+00:20,201",
    "1990-12-31T23:59:60Z,422",
    "1996-12-19T16:39:57,422",
    "1996-12-19,422",
    "1996-02-30T16:39:57Z,422"
  })
  void aReadingsTimeIsWrittenAsPublished(String at, int status) {
    Map<String, Object> document =
        Documents.with(
            Documents.location("Timed"),
            "ambient_readings",
            List.of(Map.of("at", at, "ev100", 10)));
    HttpResponse<String> answer = author.post(LOCATIONS, Documents.json(document));
    assertEquals(status, answer.statusCode(), answer.body());
    if (status == 201) {
      assertEquals(
          at, Told.at(Visitor.object(answer), "document", "ambient_readings", 0, "at").toString());
    } else {
      assertTrue(answer.body().contains("/ambient_readings/0/at"), answer.body());
    }
  }

  @Test
  void outletsWithoutMainsContradictThemselves() {
    Map<String, Object> document =
        Documents.with(Documents.location("Dark"), "power", Map.of("mains", false, "outlets", 2));
    HttpResponse<String> answer = author.post(LOCATIONS, Documents.json(document));
    assertEquals(422, answer.statusCode());
    assertEquals("/power/mains", Told.at(Visitor.object(answer), "errors", 0, "pointer"));
  }

  @Test
  void theListIsReadPageByPage() {
    for (int i = 0; i < 3; i++) {
      kept(Documents.location("Page " + i));
    }
    List<Object> seen = new ArrayList<>();
    String address = LOCATIONS + "?limit=2";
    while (!address.isEmpty()) {
      HttpResponse<String> answer = author.get(address);
      Visitor.items(answer).forEach(item -> seen.add(Told.at(item, "id")));
      String link = answer.headers().firstValue("Link").orElse("<>");
      address = link.substring(1, link.indexOf('>'));
    }
    assertEquals(seen.size(), seen.stream().distinct().count());
    assertTrue(seen.size() >= 4, seen.toString());
    for (String cursor : List.of("x", "1-", "99999999999999999999-zzzz", "1-ZZZZ")) {
      assertEquals(422, author.get(LOCATIONS + "?cursor=" + cursor).statusCode(), cursor);
    }
  }

  /** Worked example 1 (REFERENCE 17a): 19:13 by its clocks, elevation within 0.01 degree. */
  @Test
  void theSunOfTheSlipwaysDayComesByWhereItStoodAsPublished() {
    Map<?, ?> ambient = told(slipway + "/ambient?at=2025-09-12T19:13:00%2B01:00");
    assertEquals(3.15466295, Told.number(ambient, "position", "elevation_deg"), 0.01);
    assertEquals(272.528162, Told.number(ambient, "position", "azimuth_deg"), 0.01);
    assertEquals(9.97033347, Told.number(ambient, "clear_sky", "ev100"), 0.0144);

    Map<?, ?> day = told(slipway + "/sun?date=2025-09-12");
    assertEquals("+01:00", Told.at(day, "utc_offset"));
    assertEquals(49, Told.list(day, "track").size());
    // Half an hour before and after the published moment the sun is above and below it.
    assertTrue(Told.number(day, "track", 38, "position", "elevation_deg") > 3.2);
    assertTrue(Told.number(day, "track", 39, "position", "elevation_deg") < 3.1);
    assertEquals("2025-09-12T19:00:00+01:00", Told.at(day, "track", 38, "clock"));
    assertEquals(12, Told.list(day, "turns").size());
    assertTrue(
        Told.list(day, "turns").stream()
            .allMatch(turn -> Told.at(turn, "outcome").equals("crosses")));
    assertEquals("+00:00", Told.at(told(slipway + "/sun?date=2025-12-12"), "utc_offset"));
  }

  @ParameterizedTest
  @CsvSource({"90,0", "-90,180", "0,180", "0,-180", "89.9999,-179.9999"})
  void atThePolesAndAtTheAntimeridianADayHasASunToo(double latitude, double longitude) {
    Map<String, Object> document =
        Documents.with(
            Documents.with(Documents.location("Far"), "latitude_deg", latitude),
            "longitude_deg",
            longitude);
    String place = kept(document);
    for (String date : List.of("0001-01-01", "2025-06-21", "2025-12-21", "9999-12-31")) {
      Map<?, ?> day = told(place + "/sun?utc_offset=%2B00:00&date=" + date);
      assertEquals(49, Told.list(day, "track").size());
    }
    told(place + "/ambient?at=9999-12-31T23:59:59-14:00");
  }

  /** Polar day and night: in Svalbard's latitude the June sun does not set (common knowledge). */
  @Test
  void whereTheSunDoesNotSetThatIsSaid() {
    String place = kept(Documents.with(Documents.location("North"), "latitude_deg", 78));
    assertTrue(
        Told.list(told(place + "/sun?date=2025-06-21"), "turns").stream()
            .allMatch(turn -> Told.at(turn, "outcome").equals("stays_above")));
  }

  @Test
  void readingsAboutAnHourComeNearestFirstBySunAndByClock() {
    Map<?, ?> near = told(slipway + "/ambient?at=2026-09-12T19:13:00%2B01:00");
    assertEquals("/ambient_readings/0", Told.at(near, "by_sun", 0, "pointer"));
    assertEquals(0.0, Told.number(near, "by_clock", 0, "clock_later_min"));
    assertEquals(-365.0, Told.number(near, "by_clock", 0, "days_later"));
    assertEquals("/ambient_readings/2", Told.at(near, "by_clock", 1, "pointer"));
    assertEquals(20.0, Told.number(near, "by_clock", 1, "clock_later_min"));
    assertEquals("setting", Told.at(near, "half"));
    // EV 9 under an overcast sky where a clear one gave the published 9.970: about a stop less.
    assertEquals(-0.97, Told.number(near, "by_sun", 0, "from_clear_sky_stops"), 0.02);
    Object spot = Told.at(near, "by_clock", 1);
    assertFalse(((Map<?, ?>) spot).containsKey("from_clear_sky_stops"), "a spot is no plane");
  }

  @ParameterizedTest
  @CsvSource({
    "/sun?date=2026-02-30,/date",
    "/sun?utc_offset=1,/utc_offset",
    "/sun?from=2026-01-01,/from",
    "/ambient,/at",
    "/ambient?at=now,/at",
    "/setups?limit=101,/limit",
    "/setups?cursor=x,/cursor"
  })
  void whatCannotBeMeantIsPointedAt(String query, String pointer) {
    HttpResponse<String> answer = author.get(slipway + query);
    assertEquals(422, answer.statusCode(), answer.body());
    assertEquals(pointer, Told.at(Visitor.object(answer), "errors", 0, "pointer"));
  }

  @Test
  void aLocationThatSetupsNameStaysUntilTheyNameItNoMore() {
    String place = kept(Documents.location("Named"));
    String setup = made(author.post(STUDIO + "/setups", Documents.json(setupAt(place))));
    List<?> there = Visitor.items(author.get(place + "/setups"));
    assertEquals(1, there.size());
    assertEquals(Told.at(Visitor.object(author.get(setup)), "id"), Told.at(there.getFirst(), "id"));

    HttpResponse<String> clash = author.with("If-Match", "\"1\"").delete(place);
    assertEquals(409, clash.statusCode());
    assertTrue(clash.body().contains("1 setup was made at this location"), clash.body());
    assertEquals(200, author.get(place).statusCode());

    String elsewhere = Documents.json(Documents.setup("Elsewhere"));
    assertEquals(200, author.with("If-Match", "\"1\"").put(setup, elsewhere).statusCode());
    assertEquals(204, author.with("If-Match", "\"1\"").delete(place).statusCode());
    // Now it can be named no more.
    HttpResponse<String> late =
        author.with("If-Match", "\"2\"").put(setup, Documents.json(setupAt(place)));
    assertEquals(422, late.statusCode());
    assertEquals("/occasion/place/location", Told.at(Visitor.object(late), "errors", 0, "pointer"));
  }

  @Test
  void aSetupCannotNameALocationThatIsNot() {
    for (String id : List.of("zzzz9zzzz9zzzz9z", "NO")) {
      HttpResponse<String> answer =
          author.post(STUDIO + "/setups", Documents.json(setupAt("/" + id)));
      assertEquals(422, answer.statusCode());
      assertEquals(
          "/occasion/place/location", Told.at(Visitor.object(answer), "errors", 0, "pointer"));
    }
  }
}
