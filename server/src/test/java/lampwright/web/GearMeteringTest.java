package lampwright.web;

import static lampwright.web.GearForTests.GEAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

/** What the meter gave on the day goes to the setup and to its heads. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class GearMeteringTest {

  private static final String SETUPS = "/api/studios/demo/setups";
  private static final String KEY = "{\"readings\":[\"key\"]}";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor author;
  private Visitor browser;

  @BeforeAll
  void anAuthorComes() {
    author = house.withToken("author@demo.example");
    browser = house.signedIn("author@demo.example").with("X-CSRF-Token", "");
  }

  private String made(String path, Map<String, Object> document) {
    HttpResponse<String> answer = author.post(path, Documents.json(document));
    assertEquals(201, answer.statusCode(), answer.body());
    return answer.headers().firstValue("Location").orElseThrow();
  }

  /** A setup of one head of a name, with changes to its light. */
  private String setup(String head, Map<String, Object> changes) {
    Map<String, Object> light = Documents.light("key");
    light.put(
        "head",
        Map.of(
            "name",
            head,
            "energy_ws",
            400,
            "output",
            Map.of("kind", "guide_number", "guide_number_m", 64)));
    light.putAll(changes);
    return made(SETUPS, Documents.with(Documents.setup(head), "lights", List.of(light)));
  }

  private String take(String setup, double fNumber) {
    return made(setup + "/takes", TakesOverRestTest.take("take-" + setup.hashCode(), fNumber));
  }

  private void keep(String setup, double fNumber) {
    HttpResponse<String> kept = author.post(take(setup, fNumber) + "/gear-readings", KEY);
    assertEquals(200, kept.statusCode(), kept.body());
  }

  private List<?> readings(String gear) {
    return Visitor.object(author.get(gear)).get("document") instanceof Map<?, ?> document
            && document.get("readings") instanceof List<?> readings
        ? readings
        : List.of();
  }

  /**
   * f/11 at 2 m, three stops below full, is f/32 at full power and so guide number 64 m, as are f/8
   * at 4 m two stops below and f/22 at 2 m one below: guide number = distance times f-number (ISO
   * 1230:1992, from memory).
   */
  @Test
  void aReadingOfTheDayStandsWithItsHeadAndGivesItsGuideNumber() {
    String gear = made(GEAR, GearForTests.head("Metered on the quay", 50));
    String setup = setup("Metered on the quay", Map.of());
    String take = take(setup, 11);
    HttpResponse<String> kept = author.post(take + "/gear-readings", KEY);
    assertEquals(200, kept.statusCode(), kept.body());
    assertEquals(
        Map.of(
            "head", "Metered on the quay", "f_number", 11.0, "distance_m", 2.0, "stops_down", 3.0),
        readings(gear).getFirst());
    assertTrue(author.get(gear + "/revisions").body().contains("Readings of Take 1"));
    Map<String, Object> farther = Map.of("x_m", -2.4, "y_m", -3.2, "z_m", 1.6);
    keep(setup("Metered on the quay", Map.of("place", farther, "stops_down", 2)), 8);
    keep(setup("Metered on the quay", Map.of("stops_down", 1)), 22);
    Map<?, ?> calibrated = Visitor.object(author.post(gear + "/calibration", ""));
    assertEquals(
        64, Told.number(calibrated, "calibration", "heads", 0, "guide_number_m"), 1, "not 50 m");
  }

  @Test
  void whatAHeadHasAlreadyItDoesNotGetTwice() {
    String gear = made(GEAR, GearForTests.head("Told twice", 64));
    String take = take(setup("Told twice", Map.of()), 8);
    assertEquals(200, author.post(take + "/gear-readings", KEY).statusCode());
    assertEquals(200, author.post(take + "/gear-readings", KEY).statusCode());
    assertEquals(1, readings(gear).size(), "it has it already");
    assertEquals(2, Told.number(Visitor.object(author.get(gear)), "revision"));
  }

  @Test
  void onlyWhatTellsOfTheHeadAloneIsTaken() {
    made(GEAR, GearForTests.head("Not alone", 64));
    Map<String, Map<String, Object>> changes =
        Map.of(
            "through a gel",
            Map.of(
                "gels",
                List.of(Map.of("name", "half orange", "shift_mired", 78, "loss_stops", 0.5))),
            "several heads",
            Map.of("heads", 2),
            "beside the light's axis",
            Map.of("aim", Map.of("x_m", 1, "y_m", 0, "z_m", 1.6)),
            "toward the light",
            Map.of(
                "target",
                Map.of(
                    "name",
                    "face",
                    "held",
                    "toward_camera",
                    "at",
                    Map.of("x_m", 0, "y_m", 0, "z_m", 1.6))));
    List<String> wrong = new ArrayList<>();
    changes.forEach(
        (why, change) -> {
          HttpResponse<String> answer =
              author.post(take(setup("Not alone", change), 8) + "/gear-readings", KEY);
          if (answer.statusCode() != 422 || !answer.body().contains(why)) {
            wrong.add(why + ": " + answer.statusCode() + answer.body());
          }
        });
    assertEquals(List.of(), wrong);
  }

  @Test
  void aHeadThatIsNotExactlyOneOfTheStudiosIsPointedAt() {
    String take = take(setup("Nobody's head", Map.of()), 8);
    HttpResponse<String> answer = author.post(take + "/gear-readings", KEY);
    assertEquals(422, answer.statusCode());
    assertEquals("/readings/0", Told.at(Visitor.object(answer), "errors", 0, "pointer"));
    assertEquals(
        403, house.withToken("crew@demo.example").post(take + "/gear-readings", KEY).statusCode());
  }

  @Test
  void onThePageAnAuthorKeepsReadingsWithTheSetupOrItsHeads() {
    String gear = made(GEAR, GearForTests.head("Kept by page", 64));
    String setup = setup("Kept by page", Map.of());
    take(setup, 8);
    String takes = setup.substring("/api".length()) + "/takes";
    Element form = page(browser, takes).expectFirst("form[action$=/readings]");
    assertTrue(
        page(house.signedIn("crew@demo.example"), takes)
            .select("form[action$=/readings]")
            .isEmpty());

    HttpResponse<String> none = send(form, "into=gear");
    assertEquals(422, none.statusCode());
    assertTrue(Jsoup.parse(none.body()).select(".errors").text().contains("Choose a reading"));

    HttpResponse<String> kept = send(form, "into=gear&reading-of-key=yes");
    assertEquals(303, kept.statusCode(), kept.body());
    assertEquals(
        gear.substring("/api".length()), kept.headers().firstValue("Location").orElseThrow());
    assertEquals(1, readings(gear).size());

    assertEquals(303, send(form, "into=setup&reading-of-key=yes").statusCode());
    Map<?, ?> now = Visitor.object(author.get(setup));
    assertEquals(2, Told.number(now, "revision"));
    assertEquals(8, Told.number(now, "document", "lights", 0, "reading", "f_number"));
    assertEquals(
        412, send(form, "into=setup&reading-of-key=yes").statusCode(), "the setup moved on");
  }

  private static Document page(Visitor visitor, String path) {
    HttpResponse<String> answer = visitor.get(path);
    assertEquals(200, answer.statusCode(), path);
    return Jsoup.parse(answer.body());
  }

  private HttpResponse<String> send(Element form, String fields) {
    StringBuilder sent = new StringBuilder(fields);
    form.select("input[type=hidden]")
        .forEach(
            field ->
                sent.append('&')
                    .append(field.attr("name"))
                    .append('=')
                    .append(URLEncoder.encode(field.val(), StandardCharsets.UTF_8)));
    return browser.postForm(form.attr("action"), sent.toString());
  }
}
