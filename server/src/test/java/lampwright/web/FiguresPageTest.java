package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.HashMap;
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

class FiguresPageTest {

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  @Test
  void everyShortLineOfEverySetupLeadsToItsFiguresInFull() {
    Visitor author = house.withToken("author@demo.example");
    List<String> setups = demoSetups(author);
    assertFalse(setups.isEmpty());
    for (String id : setups) {
      Document setup = page(author, id);
      Document figures = page(author, id + "/figures");
      List<Element> links = new ArrayList<>(setup.select(".row h3 a"));
      links.addAll(figures.select(".contents a"));
      assertTrue(links.size() > 8, id);
      for (Element link : links) {
        String to = link.attr("href").replaceFirst(".*#", "");
        assertTrue(figures.getElementById(to) != null, () -> id + ": nothing at " + link);
      }
      assertEquals("/studios/demo/setups/" + id, figures.select(".crumb a").attr("href"));
    }
  }

  @Test
  void whatIsMissingIsSaidInWordsAndNotAsAnAddressInTheDocument() {
    Visitor author = house.withToken("author@demo.example");
    for (String id : demoSetups(author)) {
      for (String at : List.of(id, id + "/figures")) {
        for (Element needs : page(author, at).select(".needs, .missing, .short p")) {
          assertFalse(needs.text().matches(".*((?<!m)/[a-z]+|[a-z]_[a-z]).*"), needs.text());
        }
      }
    }
  }

  /**
   * ISO 2720 and the reciprocity of aperture, time and speed: a stop of time is a stop of ambient;
   * a flash is over before the shutter closes.
   */
  @Test
  void aStopOfTimeMovesTheAmbientAloneAndAStopOfApertureBothByIso2720() {
    Visitor author = house.withToken("author@demo.example");
    Map<String, Object> light = Documents.light("key");
    light.put("reading", Map.of("f_number", 8, "known", "metered"));
    Map<String, Object> document = new HashMap<>(Documents.setup("Balance"));
    document.put("lights", List.of(light));
    document.put("ambient", Map.of("ev100", 9, "known", "metered"));
    Document page = page(author, made(author, document));
    assertEquals(List.of("+1.0", "+1.0", "0.0"), dial(page, "Aperture"));
    assertEquals(List.of("0.0", "+1.0", "−1.0"), dial(page, "Time"));
    assertEquals(List.of("+1.0", "+1.0", "0.0"), dial(page, "ISO"));
    assertEquals("to the ambient", row(page, "Time").select(".known").text());
  }

  @Test
  void withoutAnAmbientReadingThePageSaysThatOneIsNeeded() {
    Visitor author = house.withToken("author@demo.example");
    Map<String, Object> document = new HashMap<>(Documents.setup("Dark"));
    document.remove("ambient");
    Document page = page(author, made(author, document));
    assertTrue(page.select(".dials .needs").text().contains("Needs an ambient reading"));
  }

  @Test
  void aStrangerIsAskedToSignIn() {
    Visitor author = house.withToken("author@demo.example");
    String id = demoSetups(author).getFirst();
    HttpResponse<String> answer = house.visitor().get("/studios/demo/setups/" + id + "/figures");
    assertTrue(answer.statusCode() == 303 || answer.statusCode() == 401, "" + answer.statusCode());
  }

  private static Element row(Document page, String dial) {
    return page.select(".dials tbody tr").stream()
        .filter(row -> row.select("th").text().startsWith(dial))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> dial(Document page, String dial) {
    return row(page, dial).select(".cell-value").eachText();
  }

  private static Document page(Visitor author, String at) {
    HttpResponse<String> answer = author.get("/studios/demo/setups/" + at);
    assertEquals(200, answer.statusCode(), at);
    return Jsoup.parse(answer.body());
  }

  private static String made(Visitor author, Map<String, Object> document) {
    HttpResponse<String> answer = author.post("/api/studios/demo/setups", Documents.json(document));
    assertEquals(201, answer.statusCode(), answer.body());
    return String.valueOf(Told.at(Visitor.object(answer), "id"));
  }

  private static List<String> demoSetups(Visitor author) {
    Document found = Jsoup.parse(author.get("/studios/demo/setups").body());
    return found.select(".hit h2 a").eachAttr("href").stream()
        .map(path -> path.replaceFirst(".*/", ""))
        .toList();
  }
}
