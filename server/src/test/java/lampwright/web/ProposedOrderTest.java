package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import lampwright.TestHouse;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** A setup whose author gave no build order is built in one that is proposed, with reasons. */
class ProposedOrderTest {

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private static Document onLocation(Map<String, Object> setup) {
    HttpResponse<String> made =
        house
            .withToken("author@demo.example")
            .post("/api/studios/demo/setups", Documents.json(setup));
    assertEquals(201, made.statusCode(), made.body());
    String page =
        made.headers().firstValue("Location").orElseThrow().substring("/api".length()) + "/field";
    return Jsoup.parse(house.signedIn("author@demo.example").get(page).body());
  }

  /** Ambient, key, then what depends on it: common practice, no source. */
  @Test
  void theAmbientIsMeteredFirstThenTheKeyThenWhatIsMeasuredAgainstIt() {
    Map<String, Object> setup = Documents.setup("Without an order");
    setup.put("ambient", Map.of("ev100", 9.0));
    setup.put(
        "lights",
        List.of(
            Documents.with(Documents.light("spark"), "role", "accent"),
            Documents.with(Documents.light("edge"), "role", "rim"),
            Documents.light("main"),
            Documents.with(Documents.light("soft"), "role", "fill")));
    Document page = onLocation(setup);
    List<String> steps = page.select("[data-step]").eachAttr("data-step");
    assertEquals(List.of("", "main", "soft", "edge", "spark"), steps);
    String told = page.select("[data-steps]").text();
    assertTrue(told.contains("Meter the ambient first"), told);
    assertTrue(told.contains("EV 9.0 at ISO 100"), told);
    assertTrue(
        told.contains("The key now, before the others: they are measured against it."), told);
    assertEquals("1", page.expectFirst("[data-step=main] .disc").text());
  }

  @Test
  void anAuthorsOwnOrderIsNotTouched() {
    Map<String, Object> setup = Documents.setup("With an order");
    setup.put("ambient", Map.of("ev100", 9.0));
    setup.put(
        "lights",
        List.of(Documents.light("main"), Documents.with(Documents.light("edge"), "role", "rim")));
    setup.put("build_order", List.of(Map.of("light", "edge"), Map.of("light", "main")));
    Document page = onLocation(setup);
    assertEquals(List.of("edge", "main"), page.select("[data-step]").eachAttr("data-step"));
    assertTrue(!page.text().contains("Meter the ambient first"));
  }
}
