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
import java.util.stream.IntStream;
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

/** What the crew tells of the day waits until an author takes it over. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ProposalsTest {

  private static final String SETUPS = "/api/studios/demo/setups/";
  private static final String PAGES = "/studios/demo/setups/";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor author;
  private Visitor crew;

  @BeforeAll
  void theyComeWithTokens() {
    author = house.withToken("author@demo.example");
    crew = house.withToken("crew@demo.example");
  }

  private String setup(String title) {
    HttpResponse<String> made =
        author.post("/api/studios/demo/setups", Documents.json(Documents.setup(title)));
    assertEquals(201, made.statusCode(), made.body());
    return String.valueOf(Told.at(Visitor.object(made), "id"));
  }

  private static String proposal(int revision, Map<String, ?> used) {
    return Json.print(Map.of("setup_revision", revision, "used", used));
  }

  private static Map<String, ?> keyDown(double stops) {
    return Map.of(
        "lights",
        List.of(Map.of("light", "key", "stops_down", stops)),
        "note",
        "The wall gave more than we thought.");
  }

  private String proposed(String setup, Map<String, ?> used) {
    HttpResponse<String> made = crew.post(SETUPS + setup + "/proposals", proposal(1, used));
    assertEquals(201, made.statusCode(), made.body());
    return made.headers().firstValue("Location").orElseThrow();
  }

  private int revision(String setup) {
    return (int) Told.number(Visitor.object(author.get(SETUPS + setup)), "revision");
  }

  private HttpResponse<String> accept(Visitor who, String place, int revision) {
    return who.with("If-Match", "\"" + revision + "\"").post(place + "/acceptance", "");
  }

  @Test
  void aProposalChangesNothingUntilAnAuthorTakesItOver() {
    String setup = setup("Waits");
    String place = proposed(setup, keyDown(3));
    assertEquals(1, revision(setup));
    assertEquals("waiting", Visitor.object(author.get(place)).get("state"));
    assertEquals(403, accept(crew, place, 1).statusCode(), "nobody takes their own over");

    HttpResponse<String> taken = accept(author, place, 1);
    assertEquals(200, taken.statusCode(), taken.body());
    Map<?, ?> now = Visitor.object(author.get(SETUPS + setup));
    assertEquals(2, Told.number(now, "revision"));
    assertEquals(3, Told.number(now, "document", "lights", 0, "stops_down"));
    Map<?, ?> decided = Visitor.object(crew.get(place));
    assertEquals("accepted", decided.get("state"));
    assertEquals(2, Told.number(decided, "decision", "made_revision"));
    assertTrue(
        author.get(SETUPS + setup + "/revisions").body().contains("The wall gave more"),
        "the note becomes the revision's message");
    assertEquals(409, accept(author, place, 2).statusCode(), "it was decided");
  }

  @Test
  void whatWasLookedAtMustStillBeCurrent() {
    String setup = setup("Moved on");
    String place = proposed(setup, keyDown(3));
    author.with("If-Match", "\"1\"").patch(SETUPS + setup, "{\"title\":\"Moved on, renamed\"}");
    assertEquals(412, accept(author, place, 1).statusCode());
    assertEquals("waiting", Visitor.object(author.get(place)).get("state"));
    assertEquals(200, accept(author, place, 2).statusCode());
    assertEquals(
        "Moved on, renamed",
        Told.at(Visitor.object(author.get(SETUPS + setup)), "document", "title"));
  }

  @Test
  void itMustFitTheSetupAndARevisionThatThereIs() {
    String setup = setup("Fits");
    Map<String, ?> noSuchLight =
        Map.of("lights", List.of(Map.of("light", "moon", "stops_down", 1)));
    HttpResponse<String> wrong = crew.post(SETUPS + setup + "/proposals", proposal(1, noSuchLight));
    assertEquals(422, wrong.statusCode());
    assertTrue(
        Told.at(Visitor.object(wrong), "errors", 0, "pointer").toString().startsWith("/used/"),
        wrong.body());
    assertEquals(
        422, crew.post(SETUPS + setup + "/proposals", proposal(7, keyDown(1))).statusCode());
    assertTrue(Visitor.items(author.get(SETUPS + setup + "/proposals")).isEmpty());
  }

  @Test
  void oneTakesOnesOwnBackAndOnlyAuthorsDeclineOthers() {
    String setup = setup("Taken back");
    String own = proposed(setup, keyDown(2));
    assertEquals(204, crew.with("If-Match", "\"1\"").delete(own).statusCode());
    assertEquals("declined", Visitor.object(crew.get(own)).get("state"));
    HttpResponse<String> authors =
        author.post(SETUPS + setup + "/proposals", proposal(1, keyDown(1)));
    String other = authors.headers().firstValue("Location").orElseThrow();
    assertEquals(403, crew.with("If-Match", "\"1\"").delete(other).statusCode());
    String declined = proposed(setup, keyDown(4));
    assertEquals(204, author.with("If-Match", "\"1\"").delete(declined).statusCode());
    assertEquals(1, revision(setup));
    assertEquals(3, Visitor.items(author.get(SETUPS + setup + "/proposals")).size());
  }

  @Test
  void theSameSentTwiceUnderItsKeyWaitsOnce() {
    String setup = setup("Sent twice");
    Visitor keyed = crew.with("Idempotency-Key", "a-phone-on-the-quay");
    String body = proposal(1, keyDown(2));
    HttpResponse<String> first = keyed.post(SETUPS + setup + "/proposals", body);
    HttpResponse<String> second = keyed.post(SETUPS + setup + "/proposals", body);
    assertEquals(201, first.statusCode());
    assertEquals(first.headers().firstValue("Location"), second.headers().firstValue("Location"));
    assertEquals(1, Visitor.items(crew.get(SETUPS + setup + "/proposals")).size());
  }

  @Test
  void noMoreWaitThanSomebodyCanRead() {
    String setup = setup("Flooded");
    List<Integer> answers =
        IntStream.range(0, 51)
            .mapToObj(
                i -> crew.post(SETUPS + setup + "/proposals", proposal(1, keyDown(1))).statusCode())
            .toList();
    assertEquals(50, answers.stream().filter(status -> status == 201).count());
    assertEquals(409, answers.getLast());
  }

  @Test
  void readersSeeNoneAndOtherStudiosNothing() {
    String setup = setup("Unseen");
    String place = proposed(setup, keyDown(2));
    Visitor reader = house.withToken("reader@demo.example");
    assertEquals(403, reader.get(place).statusCode());
    author
        .with("If-Match", "\"1\"")
        .put(SETUPS + setup + "/state", "{\"state\":\"proven\",\"archived\":false}");
    HttpResponse<String> page = house.signedIn("reader@demo.example").get(PAGES + setup);
    assertEquals(200, page.statusCode());
    assertFalse(page.body().contains("class=\"proposed\""));
    assertTrue(author.get(PAGES + setup).body().contains("class=\"proposed\""));
    assertEquals(404, author.get(place.replace("/demo/", "/elsewhere/")).statusCode());
    assertEquals(
        404,
        author
            .get(SETUPS + setup("Another") + place.substring(place.lastIndexOf("/proposals")))
            .statusCode());
  }

  @Test
  void byThePageTheCrewProposesAndTheAuthorTakesItOverOrDeclines() {
    String setup = setup("By the page");
    Visitor hand = house.signedIn("crew@demo.example").with("X-CSRF-Token", "");
    Visitor head = house.signedIn("author@demo.example").with("X-CSRF-Token", "");
    for (String power : List.of("3", "4")) {
      Document page = Jsoup.parse(hand.get(PAGES + setup).body());
      Element form = page.select(".telling form").getFirst();
      assertEquals("Propose it to an author", form.select("button").text());
      assertEquals(
          303,
          hand.postForm(form.attr("action"), filled(form, Map.of("used-key-power", power)))
              .statusCode());
    }
    Document waits = Jsoup.parse(hand.get(PAGES + setup).body());
    assertEquals(2, waits.select(".proposed").size());
    assertTrue(waits.select("form[action$=/proposals/]").isEmpty());
    assertEquals("Take it back", waits.select(".proposed button").getFirst().text());
    assertEquals(1, revision(setup));

    Document seen = Jsoup.parse(head.get(PAGES + setup).body());
    Element first = seen.select(".proposed").getFirst();
    assertTrue(first.select("h3").text().contains("Proposed by"), first.text());
    assertTrue(first.text().contains("planned"), first.text());
    Element accepting = first.select("form").getFirst();
    assertEquals(
        303, head.postForm(accepting.attr("action"), filled(accepting, Map.of())).statusCode());
    assertEquals(2, revision(setup));
    Document after = Jsoup.parse(head.get(PAGES + setup).body());
    Element second = after.select(".proposed").getFirst();
    assertTrue(second.text().contains("Told of revision 1"), second.text());
    Element declining = second.select("form").getLast();
    assertEquals(
        303, head.postForm(declining.attr("action"), filled(declining, Map.of())).statusCode());
    assertFalse(head.get(PAGES + setup).body().contains("class=\"proposed\""));
    assertEquals(2, revision(setup));
  }

  /** What a browser would send of a form: every field as it stands, but for what is typed. */
  private static String filled(Element form, Map<String, String> typed) {
    Map<String, String> fields = new LinkedHashMap<>();
    for (Element field : form.select("input, textarea")) {
      fields.put(field.attr("name"), field.val());
    }
    fields.putAll(typed);
    return fields.entrySet().stream()
        .map(of -> of.getKey() + "=" + URLEncoder.encode(of.getValue(), StandardCharsets.UTF_8))
        .collect(Collectors.joining("&"));
  }
}
