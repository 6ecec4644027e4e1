package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.Arrays;
import java.util.List;
import lampwright.TestHouse;
import lampwright.learning.glossary.Term;
import lampwright.learning.glossary.TermGroup;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** The glossary as it is read without a script, and the ways to it. */
class GlossaryPageTest {

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private static Document page(String path) {
    HttpResponse<String> answer = house.signedIn("reader@demo.example").get(path);
    assertEquals(200, answer.statusCode(), answer.body());
    return Jsoup.parse(answer.body());
  }

  @Test
  void everyTermStandsInItsGroupWithWhereToReadOn() {
    Document page = page("/glossary");
    assertEquals(
        Arrays.stream(TermGroup.values())
            .flatMap(group -> group.terms().stream())
            .map(Term::anchor)
            .toList(),
        page.select(".gloss-entry").eachAttr("id"));
    for (Element entry : page.select(".gloss-entry")) {
      assertFalse(entry.select("h3").text().isBlank());
      assertFalse(entry.select(".gloss-see a").isEmpty(), entry.id());
    }
    assertEquals(
        page.select(".gloss-entry h3").eachText(), page.select(".gloss-index ul ul a").eachText());
  }

  @Test
  void withoutAScriptADrawingShowsItsBeginningItsMiddleAndItsEnd() {
    Document page = page("/glossary");
    assertEquals(7, page.select(".flip-book").size());
    for (Element book : page.select(".flip-book")) {
      List<Element> shown = book.select(".flip-leaf:not([hidden])");
      assertEquals(3, shown.size(), book.attr("aria-labelledby"));
      shown.forEach(leaf -> assertFalse(leaf.select(".flip-says").text().isBlank()));
      assertTrue(book.select(".flip-turn").hasAttr("hidden"));
    }
    assertEquals(
        List.of(
            "1 m: the exposure is set here.",
            "2 m: 2.0 stops under the light at 1 m.",
            "4 m: 4.0 stops under the light at 1 m."),
        page.select("#inverse-square .flip-leaf:not([hidden]) .flip-says").eachText().stream()
            .map(text -> text.replace('\u00a0', ' '))
            .toList());
  }

  @Test
  void aGermanReadsItInGerman() {
    HttpResponse<String> answer =
        house.signedIn("reader@demo.example").with("Accept-Language", "de").get("/glossary");
    Document page = Jsoup.parse(answer.body());
    assertEquals("de", page.select("html").attr("lang"));
    assertEquals("Führungslicht", page.select("#key h3").text());
    assertTrue(page.select("#inverse-square .flip-start").text().contains("2,0 Blenden"));
  }

  @Test
  void aSetupsWordsAndTheFootOfEveryPageLeadToIt() {
    Document setup = page("/studios/demo/setups/overthecut");
    assertEquals("/glossary", setup.select(".foot a").attr("href"));
    assertTrue(
        setup.select(".lights tbody th a.term").eachAttr("href").contains(Term.KEY.path()),
        setup.select(".lights tbody th").outerHtml());
    assertTrue(setup.select(".lights thead a.term").eachAttr("href").contains(Term.STOP.path()));
    assertTrue(setup.select(".strip dt a.term").size() >= 2, setup.select(".strip dt").outerHtml());
  }

  @Test
  void aListOfSetupsStaysFreeOfSuchLinks() {
    Document list = page("/studios/demo/setups");
    assertFalse(list.select(".hit-figures dt").isEmpty());
    assertTrue(list.select("main a.term").isEmpty());
  }

  @Test
  void whoIsNotSignedInIsAskedToFirst() {
    HttpResponse<String> answer = house.visitor().get("/glossary");
    assertTrue(answer.body().contains("/sign-in"), answer.body());
    assertFalse(answer.body().contains("gloss-entry"));
  }
}
