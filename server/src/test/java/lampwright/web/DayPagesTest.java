package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
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

/** The pages of locations, takes and notes in a browser without scripts. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DayPagesTest {

  private static final String LOCATIONS = "/studios/demo/locations";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor author;
  private Visitor browser;
  private Visitor crew;

  @BeforeAll
  void theMembersSignIn() {
    author = house.withToken("author@demo.example");
    browser = house.signedIn("author@demo.example").with("X-CSRF-Token", "");
    crew = house.signedIn("crew@demo.example").with("X-CSRF-Token", "");
  }

  private String id(String collection, Map<String, Object> document) {
    HttpResponse<String> made =
        author.post("/api/studios/demo/" + collection, Documents.json(document));
    assertEquals(201, made.statusCode(), made.body());
    return String.valueOf(Told.at(Visitor.object(made), "id"));
  }

  private static Document page(HttpResponse<String> answer) {
    assertEquals(200, answer.statusCode(), answer.body());
    return Jsoup.parse(answer.body());
  }

  /** What a browser would send of a form: every field as it stands, but for what is typed. */
  private static String filled(Element form, Map<String, String> typed) {
    Map<String, String> fields = new LinkedHashMap<>();
    for (Element field :
        form.select("input:not([type=radio], [type=checkbox]), input[checked], textarea")) {
      fields.put(field.attr("name"), field.val());
    }
    fields.putAll(typed);
    return fields.entrySet().stream()
        .map(of -> encoded(of.getKey()) + "=" + encoded(of.getValue()))
        .collect(Collectors.joining("&"));
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  private static HttpResponse<String> send(Visitor who, Element form, Map<String, String> typed) {
    return who.postForm(form.attr("action"), filled(form, typed));
  }

  @Test
  void aLocationShowsHazardsFirstThenItsSunItsLightAndItsSetups() {
    String id = id("locations", Documents.location("The <b>slipway</b>"));
    String setup = id("setups", LocationsOverRestTest.setupAt("/" + id));
    Document page = page(browser.get(LOCATIONS + "/" + id + "?date=2025-09-12"));
    assertEquals("The <b>slipway</b>", page.select("h1").text());
    assertEquals("Hazards", page.select("h2").getFirst().text());
    assertTrue(page.select(".hazards").text().contains("Wet stone"));
    assertTrue(page.text().contains("Mains, 2 outlets, 16 A a circuit."));
    assertTrue(page.text().contains("until 4 May 2031"));
    assertTrue(page.select("#sun").text().contains("by clocks +01:00"));
    assertEquals(6, page.select("#sun table.metered").getFirst().select("tbody tr").size());
    assertFalse(page.select("a[href=/studios/demo/setups/" + setup + "]").isEmpty());
    assertTrue(page(browser.get(LOCATIONS)).text().contains("1 hazard"));
    assertTrue(
        page(browser.get(LOCATIONS + "/" + id + "?date=soon")).text().contains("Today is shown"));
    Document ofSetup = page(browser.get("/studios/demo/setups/" + setup));
    assertFalse(ofSetup.select("a[href=" + LOCATIONS + "/" + id + "]").isEmpty());
    assertFalse(ofSetup.select("a[href$=" + setup + "/takes]").isEmpty());
  }

  @Test
  void aLocationIsMadeAndChangedByForms() {
    Element form = page(browser.get(LOCATIONS + "/new")).select("form.place-form").getFirst();
    HttpResponse<String> wrong =
        send(browser, form, Map.of("name", "Quarry", "latitude_deg", "91", "longitude_deg", "1"));
    assertEquals(422, wrong.statusCode());
    Document again = Jsoup.parse(wrong.body());
    assertEquals("Quarry", again.select("#name").val());
    assertFalse(again.select("#latitude_deg-error").isEmpty());

    HttpResponse<String> made =
        send(
            browser,
            form,
            Map.of(
                "name", "Quarry",
                "latitude_deg", "50,5",
                "longitude_deg", "−4",
                "mains", "yes",
                "hazards", "Loose stone.\r\n\r\nDeep water."));
    assertEquals(303, made.statusCode(), made.body());
    String path = made.headers().firstValue("Location").orElseThrow();
    Element change = page(browser.get(path + "/change")).select("form.place-form").getFirst();
    assertEquals("Loose stone.\nDeep water.", change.select("#hazards").val());
    assertEquals(303, send(browser, change, Map.of("altitude_m", "120")).statusCode());
    assertTrue(page(browser.get(path)).text().contains("120 m above the sea"));
    HttpResponse<String> late = send(browser, change, Map.of("name", "Typed late"));
    assertEquals(412, late.statusCode());
    assertEquals("Typed late", Jsoup.parse(late.body()).select("#name").val());
  }

  @Test
  void theFormKeepsWhatItDoesNotAsk() {
    String id = id("locations", Documents.location("Kept whole"));
    Element form =
        page(browser.get(LOCATIONS + "/" + id + "/change")).select("form.place-form").getFirst();
    assertEquals(303, send(browser, form, Map.of("mains", "yes", "name", "Renamed")).statusCode());
    Map<?, ?> told = Visitor.object(author.get("/api/studios/demo/locations/" + id));
    assertEquals("Renamed", Told.at(told, "document", "name"));
    assertEquals(3, Told.list(told, "document", "ambient_readings").size());
    assertEquals(1, Told.list(told, "document", "permissions").size());
  }

  @Test
  void theCrewSeesLocationsButNoFormForThem() {
    String id = id("locations", Documents.location("Looked at"));
    assertTrue(page(crew.get(LOCATIONS + "/" + id)).select("a[href$=change]").isEmpty());
    assertEquals(403, crew.get(LOCATIONS + "/new").statusCode());
    assertEquals(403, crew.get(LOCATIONS + "/" + id + "/change").statusCode());
    assertEquals(404, crew.get(LOCATIONS + "/zzzz9zzzz9zzzz9z").statusCode());
    assertEquals(401, house.visitor().get(LOCATIONS).statusCode());
  }

  @Test
  void theCrewLogsATakeAndSeesWhatHelpsBesideIt() {
    String path = "/studios/demo/setups/" + id("setups", Documents.setup("Logged")) + "/takes";
    Element form = page(crew.get(path)).select("form[data-take]").getFirst();
    assertTrue(form.text().contains("f/11 expected"), form.text());
    Map<String, String> typed =
        Map.of("at", "2025-09-12T19:13", "reading-key", "5.6 + 0.5", "kept", "yes");
    assertEquals(303, send(crew, form, typed).statusCode());
    assertEquals(303, send(crew, form, typed).statusCode(), "a second tap logs nothing new");
    Document page = page(crew.get(path));
    assertEquals(1, page.select(".take").size());
    Element take = page.select(".take").getFirst();
    assertTrue(take.text().contains("Take 1 Kept"), take.text());
    assertTrue(take.text().contains("19:13, 12 September 2025"), take.text());
    assertTrue(take.text().contains("Key 1.5 stops under: about"), take.text());

    assertTrue(take.text().contains("−1.5 stops under"), take.text());
    assertEquals(
        "Key: metered 0.5 stops over, expected 2.0 stops over, give or take 0.6",
        take.select(".ruler title").text());

    Element judge = take.select("form").getFirst();
    assertEquals(303, send(crew, judge, Map.of("kept", "no", "why", "Blinked.")).statusCode());
    String after = page(crew.get(path)).select(".take").text();
    assertTrue(after.contains("Take 1 Not kept") && after.contains("Blinked."), after);
    assertTrue(after.contains("f/5.6 + 0.5 metered"), "What is not touched stays: " + after);
  }

  @Test
  void theUsualReasonsAreOneTapAndTheirWordsAreKept() {
    String path = "/studios/demo/setups/" + id("setups", Documents.setup("Why")) + "/takes";
    Element form = page(crew.get(path)).select("form[data-take]").getFirst();
    Map<String, String> typed =
        Map.of("reason-eyes", "yes", "reason-late", "yes", "why", "Wind.", "kept", "no");
    assertEquals(303, send(crew, form, typed).statusCode());
    assertEquals(303, send(crew, form, typed).statusCode(), "also where no time was typed");
    Document page = page(crew.get(path));
    assertEquals(1, page.select(".take").size());
    assertEquals("Eyes shut. Too late. Wind.", page.select(".take .said").text());
    assertEquals("Take 2", page.select("#deciding-number .of-take").text());

    HttpResponse<String> other = send(crew, form, Map.of("why", "Other.", "kept", "yes"));
    assertEquals(422, other.statusCode());
    Document again = Jsoup.parse(other.body());
    assertTrue(again.select(".errors").text().contains("logged already"), again.text());
    assertEquals("Other.", again.select("#why").val());
    Element asNext = again.select("form[data-take]").getFirst();
    assertEquals(303, send(crew, asNext, Map.of("kept", "yes")).statusCode());
    assertEquals(2, page(crew.get(path)).select(".take").size());
  }

  @Test
  void aTakeIsCorrectedReadingByReadingAndTakenBackByWhoLoggedIt() {
    String path = "/studios/demo/setups/" + id("setups", Documents.setup("Mistyped")) + "/takes";
    Element form = page(crew.get(path)).select("form[data-take]").getFirst();
    Map<String, String> typed = Map.of("reading-key", "8", "tenths-key", "3", "kept", "yes");
    assertEquals(303, send(crew, form, typed).statusCode());
    Element take = page(crew.get(path)).select(".take").getFirst();
    assertTrue(take.text().contains("f/8 + 0.3 metered"), take.text());
    Element correction = take.select("form").getFirst();
    assertEquals("8", correction.select("[name=reading-key]").val());
    assertEquals("3", correction.select("[name=tenths-key]").val());
    HttpResponse<String> wrong = send(crew, correction, Map.of("tenths-key", "x"));
    assertEquals(422, wrong.statusCode());
    Document again = Jsoup.parse(wrong.body());
    assertFalse(again.select(".take details[open] .field-error").isEmpty(), again.text());
    assertEquals("x", again.select(".take [name=tenths-key]").val());
    assertEquals(303, send(crew, correction, Map.of("reading-key", "11")).statusCode());
    assertTrue(page(crew.get(path)).text().contains("f/11 + 0.3 metered"));

    Visitor owner = house.signedIn("owner@demo.example").with("X-CSRF-Token", "");
    assertFalse(page(owner.get(path)).select("form[action$=withdrawal]").isEmpty());
    Element withdrawal = page(crew.get(path)).select("form[action$=withdrawal]").getFirst();
    assertEquals(303, send(crew, withdrawal, Map.of()).statusCode());
    Document after = page(crew.get(path + "?withdrawn=1"));
    assertTrue(after.text().contains("Number 1 is taken back."));
    assertTrue(after.select(".take").isEmpty());
    assertEquals("Take 2", after.select("#deciding-number .of-take").text());
  }

  @Test
  void aReadingThatIsNoneIsPointedAtAndWhatWasTypedStands() {
    String path = "/studios/demo/setups/" + id("setups", Documents.setup("Wrong")) + "/takes";
    Element form = page(crew.get(path)).select("form[data-take]").getFirst();
    HttpResponse<String> wrong =
        send(crew, form, Map.of("reading-key", "bright", "why", "Nice.", "kept", "yes"));
    assertEquals(422, wrong.statusCode());
    Document page = Jsoup.parse(wrong.body());
    assertEquals("bright", page.select("#reading-key").val());
    assertEquals("Nice.", page.select("#why").val());
    assertFalse(page.select("#reading-key-error").isEmpty());
    assertEquals(form.select("[name=client-key]").val(), page.select("[name=client-key]").val());
  }

  @Test
  void aNoteIsWrittenAndShownAsItWasTyped() {
    String path = "/studios/demo/setups/" + id("setups", Documents.setup("Noted")) + "/takes";
    Element form = page(crew.get(path)).select(".note-form").getFirst();
    assertEquals(422, send(crew, form, Map.of("text", " ")).statusCode());
    assertEquals(303, send(crew, form, Map.of("text", "Sandbag <i>it</i>.")).statusCode());
    assertEquals("Sandbag <i>it</i>.", page(crew.get(path)).select(".note .said").text());
    Visitor reader = house.signedIn("reader@demo.example").with("X-CSRF-Token", "");
    assertEquals(404, reader.get(path).statusCode());
    Proven.by(author, "/api" + path);
    Document seen = page(reader.get(path));
    assertEquals(1, seen.select(".note").size());
    assertTrue(seen.select("form[data-take], .note-form, .judging").isEmpty());
  }
}
