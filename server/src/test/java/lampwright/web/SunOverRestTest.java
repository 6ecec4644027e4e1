package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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
class SunOverRestTest {

  private static final String STUDIO = "/api/studios/demo";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor author;
  private String slipway = "";

  @BeforeAll
  void aSetupWithASunIsKept() {
    author = house.withToken("author@demo.example");
    slipway = kept(outdoors());
  }

  /** Time, place and bearing of worked example 1 (REFERENCE 17a), invented. */
  private static Map<String, Object> outdoors() {
    Map<String, Object> setup =
        Documents.with(
            Documents.setup("Sun on the slipway"),
            "occasion",
            Map.of(
                "place",
                Map.of("name", "the slipway", "latitude_deg", 50.35, "longitude_deg", -4.15),
                "date",
                "2025-09-12",
                "time",
                "19:13",
                "utc_offset",
                "+01:00"));
    setup = Documents.with(setup, "camera", Map.of("bearing_deg", 240));
    return Documents.with(
        setup,
        "subjects",
        List.of(
            Map.of(
                "name", "dancer", "place", Map.of("x_m", 0, "y_m", 0, "z_m", 0), "height_m", 1.7)));
  }

  private String kept(Map<String, Object> setup) {
    HttpResponse<String> made = author.post(STUDIO + "/setups", Documents.json(setup));
    assertEquals(201, made.statusCode(), made.body());
    return made.headers().firstValue("Location").orElseThrow() + "/sun";
  }

  private Map<?, ?> sun(String address) {
    HttpResponse<String> answer = author.get(address);
    assertEquals(200, answer.statusCode(), answer.body());
    return Visitor.object(answer);
  }

  /** Worked example 1: angles within 0.01 degree, what hangs on them within 1 %. */
  @Test
  void theSunOfTheSlipwayComesOutAsPublished() {
    Object sun = Told.at(sun(slipway), "sun");
    assertEquals(3.15466295, Told.number(sun, "position", "elevation_deg"), 0.01);
    assertEquals(2.92691677, Told.number(sun, "position", "geometric_elevation_deg"), 0.01);
    assertEquals(272.528162, Told.number(sun, "position", "azimuth_deg"), 0.01);
    assertEquals(32.5281621, Told.number(sun, "relative_azimuth_deg"), 0.01);
    assertEquals("golden hour, sun up", Told.at(sun, "position", "phase"));
    assertEquals(30.8446197, Told.number(sun, "shadow_m"), 0.31);
    assertEquals(2507.89557, Told.number(sun, "clear_sky", "lux"), 25);
    assertEquals(9.97033347, Told.number(sun, "clear_sky", "ev100"), 0.0144);
    assertEquals("estimated", Told.at(sun, "clear_sky", "known"));
    assertEquals("kicker", Told.at(sun, "from_subject", "pattern"));
    assertEquals("reda-andreas", Told.at(sun, "working", "source"));
  }

  @Test
  void theNextSpellHereIsInSpring() {
    Map<?, ?> found = sun(slipway + "?from=2025-12-01&days=200");
    assertEquals("returns", Told.at(found, "again", "direction", "outcome"));
    assertEquals(1, Told.list(found, "again", "direction", "spells").size());
    Object nearest = Told.at(found, "again", "direction", "spells", 0, "nearest");
    assertTrue(Told.at(nearest, "clock").toString().matches("2026-0[34]-.*\\+01:00"));
    assertTrue(Told.number(nearest, "miss_deg") < 0.25);
    assertEquals(14, Told.list(found, "again", "height", "times").size());
  }

  @Test
  void elsewhereTheCameraIsTurnedToKeepTheSunWhereItWas() {
    Map<?, ?> found =
        sun(
            slipway
                + "?from=2026-06-01&days=10&latitude_deg=75&longitude_deg=18.9"
                + "&utc_offset=%2B02:00");
    assertEquals("stays_away", Told.at(found, "again", "direction", "outcome"));
    assertEquals("out_of_reach", Told.at(found, "again", "height", "outcome"));
    Object nearest = Told.at(found, "again", "direction", "nearest");
    assertEquals(
        Told.number(nearest, "position", "azimuth_deg") - 32.528,
        Told.number(nearest, "camera_bearing_deg"),
        0.01);
    assertEquals(75, Told.number(found, "again", "latitude_deg"));
  }

  @Test
  void aSetupThatSaysTooLittleIsToldWhatItNeeds() {
    Map<?, ?> found = sun(kept(Documents.setup("No sun known")));
    assertFalse(found.containsKey("sun"), found.toString());
    assertEquals(
        List.of(
            "/occasion/place/latitude_deg",
            "/occasion/place/longitude_deg",
            "/occasion/date",
            "/occasion/time",
            "/occasion/utc_offset",
            "/camera/bearing_deg"),
        Told.list(found, "needs"));
  }

  @Test
  void indoorsThereIsNoSunAndNoNeedOfOne() {
    Map<String, Object> setup =
        Documents.with(
            Documents.setup("Under a roof"),
            "occasion",
            Map.of("place", Map.of("name", "the kitchen", "indoors", true)));
    Map<?, ?> found = sun(kept(setup));
    assertFalse(found.containsKey("sun"), found.toString());
    assertEquals(List.of(), Told.list(found, "needs"));
  }

  @ParameterizedTest
  @CsvSource({
    "days=0,/days",
    "days=401,/days",
    "days=1.5,/days",
    "days=ten,/days",
    "from=2026-02-30,/from",
    "latitude_deg=91&longitude_deg=0,/latitude_deg",
    "latitude_deg=10,/longitude_deg",
    "longitude_deg=1e2,/longitude_deg",
    "utc_offset=1,/utc_offset",
    "when=now,/when"
  })
  void whatCannotBeMeantIsPointedAt(String query, String pointer) {
    HttpResponse<String> answer = author.get(slipway + "?" + query);
    assertEquals(422, answer.statusCode(), answer.body());
    assertEquals(pointer, Told.at(Visitor.object(answer), "errors", 0, "pointer"));
  }

  @Test
  void strangersAndMadeUpIdsAreRefusedLikeEverywhere() {
    assertEquals(401, house.visitor().get(slipway).statusCode());
    assertEquals(404, author.get(STUDIO + "/setups/zzzz9zzzz9zzzz9z/sun").statusCode());
  }

  @ParameterizedTest
  @CsvSource({"0001-01-01", "9999-12-31"})
  void noDateIsAFaultOfOurs(String date) {
    assertEquals(200, author.get(slipway + "?days=2&from=" + date).statusCode());
    Map<String, Object> setup =
        Documents.with(
            outdoors(),
            "occasion",
            Map.of(
                "place",
                Map.of("name", "the pole", "latitude_deg", 90, "longitude_deg", 180),
                "date",
                date,
                "time",
                "23:59",
                "utc_offset",
                "-14:00"));
    assertEquals(200, author.get(kept(setup)).statusCode());
  }
}
