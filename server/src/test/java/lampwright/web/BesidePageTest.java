package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import lampwright.TestHouse;
import lampwright.Visitor;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Two setups side by side, and how one chooses the second. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BesidePageTest {

  private static final String SETUPS = "/studios/demo/setups";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor author;
  private String doorway = "";
  private String window = "";

  @BeforeAll
  void twoSetupsAreWritten() {
    author = house.signedIn("author@demo.example");
    doorway = written(Documents.setup("Doorway at dusk"));
    Map<String, Object> other = Documents.setup("Window at noon");
    other.put(
        "lights",
        List.of(
            Documents.with(Documents.light("key"), "stops_down", 2),
            Documents.with(Documents.light("hair-of-noon"), "role", "hair")));
    other.put("exposure", Map.of("f_number", 8, "time", "1/125", "iso", 100));
    window = written(other);
  }

  private String written(Map<String, Object> setup) {
    HttpResponse<String> answer = author.post("/api" + SETUPS, Documents.json(setup));
    assertEquals(201, answer.statusCode(), answer.body());
    return answer.headers().firstValue("Location").orElseThrow().substring("/api".length());
  }

  private static String id(String path) {
    return path.substring(path.lastIndexOf('/') + 1);
  }

  private Document page(String path) {
    HttpResponse<String> answer = author.with("Accept", "text/html").get(path);
    assertEquals(200, answer.statusCode(), answer.body());
    return Jsoup.parse(answer.body());
  }

  private static List<String> row(Document page, String name) {
    Element row =
        page.select(".two-table tr").stream()
            .filter(one -> one.select("th").text().equals(name))
            .findFirst()
            .orElseThrow(() -> new AssertionError("no row " + name));
    return row.select("td").eachText();
  }

  @Test
  void theSetupLeadsToWhereAnotherIsChosenAndThatToBothSideBySide() {
    Document setup = page(doorway);
    String choose = setup.select(".actions a[href$=/beside]").attr("href");
    Document choice = page(choose + "?q=window+noon");
    String both = choice.select("a:contains(Window at noon)").attr("href");
    assertEquals(doorway + "/beside?with=" + id(window), both);
    assertEquals(
        List.of("Doorway at dusk", "Window at noon"), page(both).select(".two-one h2").eachText());
  }

  @Test
  void figuresStandSideBySideAndSayWhereTheyDiffer() {
    Document page = page(doorway + "/beside?with=" + id(window));
    assertEquals(List.of("f/5.6", "f/8"), row(page, "Aperture"));
    assertEquals(List.of("100", "100"), row(page, "ISO"));
    assertTrue(
        page.select(".two-same th").eachText().contains("ISO"), "what is the same stands back");
    assertTrue(
        !page.select(".two-same th").eachText().contains("Aperture"), "and what differs not");
  }

  @Test
  void lightsWithTheSameTaskShareARulerAndOthersSayThatTheyAreAlone() {
    Document page = page(doorway + "/beside?with=" + id(window));
    assertEquals(2, page.select(".lights tbody").size());
    Element key = page.select(".lights tbody").getFirst();
    assertEquals(2, key.select("tr .disc").size());
    assertTrue(key.select("svg title").text().contains("first"), key.select("svg title").text());
    assertTrue(key.select("svg title").text().contains("second"), key.select("svg title").text());
    Element hair = page.select(".lights tbody").last();
    assertTrue(hair != null && hair.text().contains("only the second has it"), "hair");
    assertTrue(!page.select("svg.plan .plan-light").isEmpty(), "both on one plan");
  }

  @Test
  void theOtherWayRoundTheSecondComesFirst() {
    Document page = page(doorway + "/beside?with=" + id(window));
    Document turned = page(page.select("a:contains(other way round)").attr("href"));
    assertEquals(List.of("f/8", "f/5.6"), row(turned, "Aperture"));
  }

  @Test
  void aSetupThatIsNotThereCannotStandBeside() {
    assertEquals(
        422,
        author.with("Accept", "text/html").get(doorway + "/beside?with=nosuchsetup").statusCode());
  }

  @Test
  void whoMayNotSeeADraftDoesNotSeeItBesideAnother() {
    Visitor reader = house.signedIn("reader@demo.example").with("Accept", "text/html");
    assertEquals(404, reader.get(doorway + "/beside?with=" + id(window)).statusCode());
  }
}
