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
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** The words that a setup was found by are marked in its texts, and its texts stay texts. */
class WhyItWasFoundTest {

  private static final String SETUPS = "/api/studios/demo/setups";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  @Test
  void theWordsAreMarkedAndWhateverAnAuthorWroteStaysText() {
    Visitor author = house.withToken("author@demo.example");
    String script = "<script>alert(1)</script>";
    Map<String, Object> setup =
        Documents.with(
            Documents.with(
                Documents.setup("Marlinspike " + script),
                "intent",
                script + " The marlinspike lies in the rain. ".repeat(6)),
            "retouch_notes",
            List.of("Lift the shadow under the marlinspike. " + script));
    HttpResponse<String> made = author.post(SETUPS, Documents.json(setup));
    assertEquals(201, made.statusCode(), made.body());

    Map<?, ?> found = Visitor.object(author.get(SETUPS + "?q=marlinspike"));
    assertEquals(1, Told.list(found, "items").size());
    assertEquals("title", Told.at(found, "items", 0, "why", 0, "field"));
    String passage = Told.at(found, "items", 0, "why", 0, "passage").toString();
    assertEquals("Marlinspike " + script, passage);
    assertEquals(0.0, Told.at(found, "items", 0, "why", 0, "marked", 0, 0));
    assertEquals(11.0, Told.at(found, "items", 0, "why", 0, "marked", 0, 1));

    Document page = Jsoup.parse(author.get("/studios/demo/setups?q=marlinspike").body());
    Element hit = page.expectFirst(".hit");
    assertEquals("Marlinspike " + script, hit.expectFirst("h2").text());
    assertEquals("Marlinspike", hit.expectFirst("h2 mark").text());
    assertTrue(hit.select("script").isEmpty(), "A script of an author's has become one");
    assertFalse(page.select("mark").isEmpty());
  }
}
