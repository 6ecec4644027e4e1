package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.document.Json;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Changing and making setups in a browser without scripts, and what the script is given. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class EditorPagesTest {

  private static final String SETUPS = "/studios/demo/setups";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor author;
  private Visitor browser;

  @BeforeAll
  void anAuthorSignsIn() {
    author = house.withToken("author@demo.example");
    browser = house.signedIn("author@demo.example").with("X-CSRF-Token", "");
  }

  private String made(Map<String, Object> document) {
    HttpResponse<String> made = author.post("/api" + SETUPS, Documents.json(document));
    assertEquals(201, made.statusCode(), made.body());
    return String.valueOf(Told.at(Visitor.object(made), "id"));
  }

  private Map<?, ?> stored(String setup) {
    return Visitor.object(author.get("/api" + SETUPS + "/" + setup));
  }

  private static Document page(HttpResponse<String> answer) {
    assertEquals(200, answer.statusCode(), answer.body());
    return Jsoup.parse(answer.body());
  }

  private HttpResponse<String> send(Document page, Map<String, String> typed) {
    return send(browser, page, typed);
  }

  private static HttpResponse<String> send(
      Visitor visitor, Document page, Map<String, String> typed) {
    Element form = page.select("form[data-words]").getFirst();
    Map<String, String> fields = new LinkedHashMap<>();
    for (Element field : form.select("input, textarea")) {
      fields.put(field.attr("name"), field.val());
    }
    fields.putAll(typed);
    return visitor.postForm(
        form.attr("action"),
        fields.entrySet().stream()
            .map(of -> encoded(of.getKey()) + "=" + encoded(of.getValue()))
            .collect(Collectors.joining("&")));
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  @Test
  void theFormSavesANewRevisionAndKeepsWhatItDoesNotAsk() {
    Map<String, Object> document = Documents.setup("Slipway");
    Map<String, Object> light = Documents.light("key");
    light.put("reason", "So that it reads as sky.");
    light.put("place", Map.of("x_m", -1.23456, "y_m", -1.6, "z_m", 1.6));
    document.put("lights", List.of(light));
    String setup = made(document);
    Document page = page(browser.get(SETUPS + "/" + setup + "/edit"));
    assertEquals("−1.235", page.select("#light-key-x_m").val());
    HttpResponse<String> saved =
        send(
            page,
            Map.of(
                "title",
                "Slipway at dawn",
                "moods",
                "cold,  first light ,",
                "light-key-z_m",
                "2,1"));
    assertEquals(303, saved.statusCode(), saved.body());
    assertEquals(SETUPS + "/" + setup, saved.headers().firstValue("Location").orElseThrow());
    Map<?, ?> now = stored(setup);
    assertEquals(2.0, Told.number(now, "revision"));
    assertEquals("Slipway at dawn", Told.at(now, "document", "title"));
    assertEquals(List.of("cold", "first light"), Told.list(now, "document", "moods"));
    assertEquals(2.1, Told.number(now, "document", "lights", 0, "place", "z_m"));
    assertEquals(-1.23456, Told.number(now, "document", "lights", 0, "place", "x_m"));
    assertEquals("So that it reads as sky.", Told.at(now, "document", "lights", 0, "reason"));
    assertEquals(11.0, Told.number(now, "document", "ambient", "ev100"));
  }

  @Test
  void aReadingGoesWithTheLightThatIsMovedAndStaysWithTheOther() {
    Map<String, Object> document = Documents.setup("Metered");
    Map<String, Object> key = Documents.light("key");
    key.put("reading", Map.of("f_number", 5.6));
    Map<String, Object> rim = Documents.light("rim");
    rim.put("reading", Map.of("f_number", 8));
    document.put("lights", List.of(key, rim));
    String setup = made(document);
    Document page = page(browser.get(SETUPS + "/" + setup + "/edit"));
    assertEquals(303, send(page, Map.of("light-key-x_m", "-2")).statusCode());
    Map<?, ?> moved = (Map<?, ?>) Told.at(stored(setup), "document", "lights", 0);
    assertFalse(moved.containsKey("reading"));
    assertEquals(8.0, Told.number(stored(setup), "document", "lights", 1, "reading", "f_number"));
  }

  @Test
  void whatIsWrongIsListedWithLinksAndWhatWasTypedStands() {
    String setup = made(Documents.setup("Wrong"));
    Document page = page(browser.get(SETUPS + "/" + setup + "/edit"));
    HttpResponse<String> wrong =
        send(page, Map.of("title", "", "light-key-x_m", "far", "light-key-stops_down", "9"));
    assertEquals(422, wrong.statusCode());
    Document again = Jsoup.parse(wrong.body());
    for (String field : List.of("title", "light-key-x_m")) {
      assertEquals(1, again.select(".errors a[href=#" + field + "]").size(), field);
      assertFalse(again.select("#" + field + "-error").isEmpty(), field);
    }
    assertEquals("far", again.select("#light-key-x_m").val());
    assertEquals(1.0, Told.number(stored(setup), "revision"));
    HttpResponse<String> power = send(page, Map.of("light-key-stops_down", "9"));
    assertEquals(422, power.statusCode());
    assertFalse(Jsoup.parse(power.body()).select("#light-key-stops_down-error").isEmpty());
  }

  /** The international foot is 0.3048 m exactly (agreement of 1959), the inch a twelfth of it. */
  @Test
  void whoWorksInFeetReadsAndTypesFeet() {
    Map<String, Object> document = Documents.setup("By the foot");
    Map<String, Object> key = Documents.light("key");
    key.put("place", Map.of("x_m", -1.2192, "y_m", -2.01, "z_m", 1.6));
    document.put("lights", List.of(key));
    String setup = made(document);
    Visitor inFeet = house.signedIn("owner@demo.example");
    HttpResponse<String> chosen =
        inFeet
            .with("If-Match", "\"1\"")
            .put(
                "/api/preferences",
                "{\"language\":\"en\",\"lengths\":\"feet\",\"stops\":\"tenths\"}");
    assertEquals(200, chosen.statusCode(), chosen.body());
    Visitor form = inFeet.with("X-CSRF-Token", "");
    Document page = page(form.get(SETUPS + "/" + setup + "/edit"));
    assertEquals("−4′ 0″", page.select("#light-key-x_m").val());
    assertTrue(page.select("label[for=light-key-x_m]").text().endsWith("ft"));
    assertEquals(303, send(form, page, Map.of("light-key-z_m", "7' 6\"")).statusCode());
    Map<?, ?> place = (Map<?, ?>) Told.at(stored(setup), "document", "lights", 0, "place");
    assertEquals(2.286, Told.number(place, "z_m"), 1e-9);
    assertEquals(-2.01, Told.number(place, "y_m"), 1e-9);
  }

  @Test
  void exposureOccasionAndReasonsAreChangedWithoutAScriptToo() {
    String setup = made(Documents.setup("Essentials"));
    Document page = page(browser.get(SETUPS + "/" + setup + "/edit"));
    HttpResponse<String> saved =
        send(
            page,
            Map.of(
                "exposure-time", "1/60",
                "ambient-ev100", "",
                "genre", "dance",
                "occasion-date", "2026-10-03",
                "light-key-reason", "So that it reads as sky."));
    assertEquals(303, saved.statusCode(), saved.body());
    Map<?, ?> document = (Map<?, ?>) Told.at(stored(setup), "document");
    assertEquals("1/60", Told.at(document, "exposure", "time"));
    assertFalse(document.containsKey("ambient"));
    assertEquals("dance", Told.at(document, "genre"));
    assertEquals("2026-10-03", Told.at(document, "occasion", "date"));
    assertEquals("So that it reads as sky.", Told.at(document, "lights", 0, "reason"));
    Document again = page(browser.get(SETUPS + "/" + setup + "/edit"));
    HttpResponse<String> wrong =
        send(again, Map.of("exposure-iso", "many", "occasion-date", "soon"));
    assertEquals(422, wrong.statusCode());
    for (String field : List.of("exposure-iso", "occasion-date")) {
      assertFalse(Jsoup.parse(wrong.body()).select("#" + field + "-error").isEmpty(), field);
    }
  }

  @Test
  void whoSavesSecondIsToldAndMaySaveOverIt() {
    String setup = made(Documents.setup("Shared"));
    Document mine = page(browser.get(SETUPS + "/" + setup + "/edit"));
    Document theirs = page(browser.get(SETUPS + "/" + setup + "/edit"));
    assertEquals(303, send(theirs, Map.of("intent", "Theirs.")).statusCode());
    HttpResponse<String> late = send(mine, Map.of("title", "Mine"));
    assertEquals(412, late.statusCode());
    Document again = Jsoup.parse(late.body());
    assertTrue(again.select(".errors").text().contains("since you opened it"));
    assertEquals("Mine", again.select("#title").val());
    assertEquals(303, send(again, Map.of()).statusCode());
    assertEquals("Mine", Told.at(stored(setup), "document", "title"));
    // A slip in what was typed first does not turn the old page into a new one.
    Document old = page(browser.get(SETUPS + "/" + setup + "/edit"));
    assertEquals(303, send(again, Map.of("revision", "3", "title", "Newer")).statusCode());
    Document slipped = Jsoup.parse(send(old, Map.of("title", "")).body());
    assertEquals(412, send(slipped, Map.of("title", "Older")).statusCode());
  }

  @Test
  void aNewSetupBeginsWithAPersonACameraAndAKeyLight() {
    Document page = page(browser.get(SETUPS + "/new"));
    HttpResponse<String> made = send(page, Map.of("title", "From nothing"));
    assertEquals(303, made.statusCode(), made.body());
    String path = made.headers().firstValue("Location").orElseThrow();
    assertEquals("From nothing", page(browser.get(path)).select("h1").text());
    Map<?, ?> document =
        (Map<?, ?>) Told.at(stored(path.substring(SETUPS.length() + 1)), "document");
    assertEquals("key", Told.at(document, "lights", 0, "id"));
    assertEquals(1, Told.list(document, "subjects").size());
    assertTrue(document.containsKey("camera"));
  }

  @Test
  void aChildBeginsAsItsParentIsWithoutHowThatCameOut() {
    Map<String, Object> document = Documents.setup("Parent");
    document.put("outcome", List.of(Map.of("judgement", "worked", "text", "Yes.")));
    String parent = made(document);
    Document page = page(browser.get(SETUPS + "/new?from=" + parent));
    assertEquals("Parent", page.select("#title").val());
    HttpResponse<String> made = send(page, Map.of("title", "Child"));
    assertEquals(303, made.statusCode(), made.body());
    String path = made.headers().firstValue("Location").orElseThrow();
    Map<?, ?> child = stored(path.substring(SETUPS.length() + 1));
    assertEquals(parent, Told.at(child, "parent", "id"));
    assertFalse(((Map<?, ?>) Told.at(child, "document")).containsKey("outcome"));
  }

  @Test
  void theScriptIsGivenTheDocumentItsRevisionTheGearAndTheWords() {
    author.post(GearForTests.GEAR, Documents.json(GearForTests.head("400 W·s battery head", 64)));
    author.post("/api/studios/demo/locations", Documents.json(Documents.location("The slip")));
    String title = "</script><script>alert(1)</script>\"'&amp;";
    String setup = made(Documents.setup(title));
    Document page = page(browser.get(SETUPS + "/" + setup + "/edit"));
    Object data = Json.parse(page.select("[data-editor]").attr("data-editor"));
    assertEquals(title, Told.at(data, "document", "title"));
    assertEquals(1.0, Told.number(data, "revision"));
    assertEquals(setup, Told.at(data, "setup"));
    assertEquals("metres", Told.at(data, "lengths"));
    assertEquals("400 W·s battery head", Told.at(data, "gear", "head", 0, "name"));
    assertEquals(List.of(), Told.list(data, "gear", "modifier"));
    assertEquals("The slip", Told.at(data, "locations", 0, "name"));
    assertEquals(50.35, Told.number(data, "locations", 0, "latitude_deg"));
    assertFalse(String.valueOf(Told.at(data, "locations", 0)).contains("hazards"));
    assertEquals("Saved as revision {0}.", Told.at(data, "phrases", "editor.state.saved"));
    assertTrue(page.select("script:not([src])").isEmpty(), "Nothing is inline");
  }

  @Test
  void onlyAuthorsAndOwnersComeIn() {
    String setup = made(Documents.setup("Closed"));
    List<String> paths = List.of("/" + setup + "/edit", "/new", "/new?from=" + setup);
    for (String path : paths) {
      for (String who : List.of("crew", "reader")) {
        Visitor member = house.signedIn(who + "@demo.example");
        assertEquals(403, member.get(SETUPS + path).statusCode(), who + " " + path);
      }
      assertEquals(401, house.visitor().get(SETUPS + path).statusCode(), path);
      assertEquals(200, house.signedIn("owner@demo.example").get(SETUPS + path).statusCode(), path);
    }
    assertEquals(404, browser.get(SETUPS + "/zzzz9zzzz9zzzz9z/edit").statusCode());
    assertEquals(404, browser.get(SETUPS + "/new?from=zzzz9zzzz9zzzz9z").statusCode());
    assertEquals(404, browser.get("/studios/other/setups/new").statusCode());
    // Nobody's ids are spoken of to a stranger of the studio, whatever they may do elsewhere.
    assertEquals(404, browser.get("/studios/other/setups/" + setup + "/edit").statusCode());
  }

  @Test
  void theSetupsPageLeadsAuthorsThereAndNobodyElse() {
    String setup = made(Documents.setup("Linked"));
    String path = SETUPS + "/" + setup;
    assertFalse(page(browser.get(path)).select("a[href=" + path + "/edit]").isEmpty());
    assertFalse(
        page(browser.get(path)).select("a[href=" + SETUPS + "/new?from=" + setup + "]").isEmpty());
    Document ofCrew = page(house.signedIn("crew@demo.example").get(path));
    assertTrue(ofCrew.select("a[href$=/edit], a[href*=/new]").isEmpty());
    String all = "a[href=" + SETUPS + "/new]";
    assertEquals(1, page(browser.get(SETUPS)).select(all).size());
    assertTrue(page(house.signedIn("crew@demo.example").get(SETUPS)).select(all).isEmpty());
  }
}
