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
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

/** A setup's state and history as people see them, and what its buttons do. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LifePageTest {

  private static final String SETUPS = "/studios/demo/setups";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor author;
  private Visitor reader;

  @BeforeAll
  void membersSignIn() {
    author = house.signedIn("author@demo.example");
    reader = house.signedIn("reader@demo.example");
  }

  /** A setup whose key was turned up a stop in its second revision. */
  private String changed(String title) {
    String path =
        author
            .post("/api" + SETUPS + "?message=Begun", Documents.json(Documents.setup(title)))
            .headers()
            .firstValue("Location")
            .orElseThrow()
            .substring("/api".length());
    Map<String, Object> brighter = Documents.setup(title);
    brighter.put("lights", List.of(Documents.with(Documents.light("key"), "stops_down", 2)));
    author
        .with("If-Match", "\"1\"")
        .put("/api" + path + "?message=Brighter", Documents.json(brighter));
    return path;
  }

  private static Document page(Visitor visitor, String path) {
    HttpResponse<String> answer = visitor.with("Accept", "text/html").get(path);
    assertEquals(200, answer.statusCode(), path);
    return Jsoup.parse(answer.body());
  }

  /** Presses a button that stands in a form, as a browser would. */
  private HttpResponse<String> pressed(Document page, String button) {
    var found = page.select("button:contains(" + button + ")").first();
    assertTrue(found != null, "no button: " + button);
    var form = found.closest("form");
    assertTrue(form != null, "no form around: " + button);
    StringBuilder fields = new StringBuilder(found.attr("name") + "=" + found.val());
    form.select("input[name]").forEach(i -> fields.append("&" + i.attr("name") + "=" + i.val()));
    return author.postForm(form.attr("action"), fields.toString());
  }

  @Test
  void theSetupSaysItsStateAndItsLastRevisionsWithWhyTheyWereMade() {
    Document page = page(author, changed("Told on its page"));
    assertEquals("Draft", page.select(".life .standing").text());
    assertEquals(2, page.select(".life .past li").size());
    assertTrue(page.select(".life .past li:first-child").text().contains("Ivo Castellane"));
    assertTrue(page.select(".life .past li:first-child").text().contains("Brighter"));
  }

  @Test
  void itIsCalledProvenAndArchivedByItsButtons() {
    String path = changed("Moved by buttons");
    assertEquals(404, reader.get(path).statusCode());
    assertEquals(303, pressed(page(author, path), "Call it proven").statusCode());
    Document seen = page(reader, path);
    assertEquals("Proven", seen.select(".life .standing").text());
    assertTrue(seen.select(".life button").isEmpty(), "a reader has buttons");
    assertEquals(303, pressed(page(author, path), "Archive it").statusCode());
    assertEquals("Proven, archived", page(author, path).select(".life .standing").text());
    assertEquals(404, reader.get(path).statusCode());
  }

  @Test
  void twoRevisionsAreComparedInWords() {
    String path = changed("Compared on a page");
    Document history = page(author, path + "/revisions");
    assertEquals(2, history.select("tbody tr").size());
    assertEquals("1", history.select("input[name=from][checked]").val());
    assertEquals("2", history.select("input[name=to][checked]").val());
    assertEquals(path + "/changes", history.select("#compare").attr("action"));
    Document changes = page(author, path + "/changes?from=1&to=2");
    assertEquals("Key: power from 1/8 to 1/4, +1 stop.", changes.select(".row li").text());
    assertTrue(page(author, path + "/changes?from=2&to=2").text().contains("both say the same"));
  }

  @Test
  void anEarlierRevisionIsBroughtBackByItsButtonEvenAfterTheSetupWasTakenAway() {
    String path = changed("Brought back on a page");
    author.with("If-Match", "\"2\"").delete("/api" + path);
    Document history = page(author, path + "/revisions");
    assertTrue(history.text().contains("which was taken away"));
    assertEquals(303, pressed(history, "Bring back").statusCode());
    assertTrue(page(author, path).select(".life .past").text().contains("brought back from"));
  }

  @Test
  void whatCannotBeDoneIsRefused() {
    String path = changed("Refused on a page");
    String csrf = page(author, path).select("input[name=csrf]").val();
    String proof = "csrf=" + csrf + "&revision=";
    assertEquals(412, author.postForm(path + "/state", proof + "1&state=proven").statusCode());
    assertEquals(422, author.postForm(path + "/state", proof + "2&state=x").statusCode());
    assertEquals(422, author.postForm(path + "/restorations", proof + "9&based_on=2").statusCode());
    assertEquals(404, author.get(path + "/changes").statusCode());
    assertEquals(404, reader.get(path + "/revisions").statusCode());
    assertEquals(404, reader.get(path + "/changes?from=1").statusCode());
  }
}
