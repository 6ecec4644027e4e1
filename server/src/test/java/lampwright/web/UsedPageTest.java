package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
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
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

/** The setup page of somebody in a browser without scripts: where it comes from, what was used. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class UsedPageTest {

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor author;

  /** With a session's cookie and without the header that programs prove their changes by. */
  private Visitor browser;

  @BeforeAll
  void anAuthorSignsIn() {
    author = house.withToken("author@demo.example");
    browser = house.signedIn("author@demo.example").with("X-CSRF-Token", "");
  }

  private String created(String query, String title) {
    HttpResponse<String> answer =
        author.post("/api/studios/demo/setups" + query, Documents.json(Documents.setup(title)));
    assertEquals(201, answer.statusCode(), answer.body());
    return String.valueOf(Told.at(Visitor.object(answer), "id"));
  }

  private static String path(String id) {
    return "/studios/demo/setups/" + id;
  }

  private Document page(String id) {
    return Jsoup.parse(browser.get(path(id)).body());
  }

  /** What a browser would send of the form: every field as it stands, but for what is typed. */
  private static String filled(Document page, Map<String, String> typed) {
    Map<String, String> fields = new LinkedHashMap<>();
    for (Element field : page.select(".telling form input, .telling form textarea")) {
      fields.put(field.attr("name"), field.val());
    }
    assertTrue(fields.keySet().containsAll(typed.keySet()), fields.keySet().toString());
    fields.putAll(typed);
    return fields.entrySet().stream()
        .map(
            field ->
                field.getKey() + "=" + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
        .collect(Collectors.joining("&"));
  }

  private HttpResponse<String> send(String id, Document page, Map<String, String> typed) {
    return browser.postForm(path(id) + "/used", filled(page, typed));
  }

  private double revision(String id) {
    return Told.number(Visitor.object(author.get("/api/studios/demo/setups/" + id)), "revision");
  }

  @Test
  void anAdaptationLinksToWhatItWasMadeFromAndBack() {
    String parent = created("", "Slip with five heads");
    String child = created("?parent=" + parent, "Slip with two heads");
    Element from = page(child).selectFirst(".kin a");
    assertTrue(from != null);
    assertEquals("Slip with five heads", from.text());
    assertEquals(path(parent), from.attr("href"));
    assertEquals("Adapted as: Slip with two heads", page(parent).select(".kin").text());
    author.with("If-Match", "\"1\"").delete("/api/studios/demo/setups/" + parent);
    assertEquals(
        "Adapted from Slip with five heads, which is no longer here",
        page(child).select(".kin").text());
    assertTrue(page(child).select(".kin a").isEmpty());
  }

  @Test
  void whatIsTypedBecomesTheNextRevisionAndStandsBesideThePlan() {
    String id = created("", "Barn at dawn");
    assertTrue(page(id).select(".used table").isEmpty());
    HttpResponse<String> sent =
        send(
            id,
            page(id),
            Map.of(
                "used-key-power",
                "3,5",
                "used-key-reading",
                "f/8 + 0.5",
                "used-iso",
                "200",
                "used-note",
                "Rain.\r\nFill moved."));
    assertEquals(303, sent.statusCode(), sent.body());
    assertEquals(path(id) + "#used", sent.headers().firstValue("Location").orElseThrow());
    assertEquals(2.0, revision(id));
    Document page = page(id);
    // f/11.3 at ISO 100 is f/16 at ISO 200; the meter gave 1.5 stops less than that.
    assertEquals("f/8 + 0.5 metered", page.select(".used .row-now td:nth-child(5)").text());
    assertEquals("f/16 computed", page.select(".used .row-was td:nth-child(4)").text());
    assertEquals("−1.5 under", page.select(".used .row-now .off").text());
    assertEquals("−0.5 stop", page.select(".used .row-now .change").text());
    assertEquals("Rain. Fill moved.", page.select(".used-note").text());
    assertEquals(List.of("ISO 200 +1.0 stop 100"), page.select(".used tr.differs").eachText());
    // Filled again with what was told, so that it can be corrected.
    assertEquals("8 + 0.5", page.select("#used-key-reading").val());
    assertEquals("3.5", page.select("#used-key-power").val());
    assertEquals("planned 3.0: 1/8", page.select("#used-key-power-hint").text());
    assertEquals("expected f/16", page.select("#used-key-reading-hint").text());
    assertEquals(303, send(id, page, Map.of("used-key-power", "3.2")).statusCode());
    Document corrected = page(id);
    assertEquals("−0.2 stop", corrected.select(".used .row-now .change").text());
    assertEquals("−1.5 under", corrected.select(".used .row-now .off").text());
  }

  @Test
  void aFormThatIsSentAsItStandsSaysThatAllWasAsPlanned() {
    String id = created("", "As planned");
    assertEquals(303, send(id, page(id), Map.of()).statusCode());
    Document page = page(id);
    assertTrue(page.select(".used .row-now").isEmpty());
    assertTrue(page.select(".used-told").text().startsWith("As planned: 1 Key."));
  }

  @Test
  void whatIsWrongIsSaidAtItsFieldAndWhatWasTypedStillStands() {
    String id = created("", "Typed wrongly");
    HttpResponse<String> sent =
        send(id, page(id), Map.of("used-key-power", "13", "used-time", "quick"));
    assertEquals(422, sent.statusCode());
    Document page = Jsoup.parse(sent.body());
    assertTrue(page.select("details.telling").hasAttr("open"));
    assertEquals("13", page.select("#used-key-power").val());
    assertEquals("quick", page.select("#used-time").val());
    assertEquals(
        1, page.select(".errors a[href=#used-time]").size(), page.select(".errors").text());
    HttpResponse<String> again = send(id, page(id), Map.of("used-key-power", "13"));
    Document second = Jsoup.parse(again.body());
    assertTrue(
        second
            .select(".errors a[href=#used-key-power]")
            .text()
            .startsWith("1 Key: Stops down (13"));
    assertEquals("true", second.select("#used-key-power").attr("aria-invalid"));
    assertEquals(1.0, revision(id));
  }

  @Test
  void whoLookedAtAnOlderRevisionIsToldAndLosesNothing() {
    String id = created("", "Changed meanwhile");
    Document before = page(id);
    author
        .with("If-Match", "\"1\"")
        .put(
            "/api/studios/demo/setups/" + id,
            Documents.json(Documents.setup("Changed by somebody else")));
    HttpResponse<String> sent = send(id, before, Map.of("used-key-power", "4"));
    assertEquals(412, sent.statusCode());
    Document page = Jsoup.parse(sent.body());
    assertEquals("Changed by somebody else", page.select("h1").text());
    assertEquals("4", page.select("#used-key-power").val());
    assertEquals(303, send(id, page, Map.of()).statusCode());
    assertEquals(3.0, revision(id));
  }

  @Test
  void aFormWithoutItsProofIsRefusedAndNobodyElseSeesIt() {
    String id = created("", "Proven");
    String unproven = filled(page(id), Map.of("csrf", "AAAA"));
    assertEquals(403, browser.postForm(path(id) + "/used", unproven).statusCode());
    assertEquals(1.0, revision(id));
    author
        .with("If-Match", "\"1\"")
        .put(
            "/api/studios/demo/setups/" + id + "/state",
            "{\"state\":\"proven\",\"archived\":false}");
    Visitor reader = house.signedIn("reader@demo.example");
    assertEquals(200, reader.get(path(id)).statusCode());
    assertTrue(Jsoup.parse(reader.get(path(id)).body()).select(".telling").isEmpty());
    assertEquals(403, reader.postForm(path(id) + "/used", "revision=1").statusCode());
  }

  @Test
  void theFormsOwnAddressLeadsToTheForm() {
    String id = created("", "Led there");
    HttpResponse<String> asked = browser.get(path(id) + "/used");
    assertEquals(303, asked.statusCode());
    assertEquals(path(id) + "#used", asked.headers().firstValue("Location").orElseThrow());
  }
}
