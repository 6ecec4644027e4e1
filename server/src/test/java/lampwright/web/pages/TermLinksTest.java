package lampwright.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import lampwright.learning.glossary.Term;
import lampwright.wording.Wording;
import lampwright.wording.WordsForTests;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** Words of the pages that lead to the glossary. */
class TermLinksTest {

  private static final List<Wording> READERS =
      List.of(WordsForTests.usual(), WordsForTests.germanFeetAndThirds());

  @Test
  void everyNamedWordLeadsToItsTermInEveryLanguage() {
    for (Wording words : READERS) {
      for (TermLinks.Named named : TermLinks.NAMED) {
        String said = words.say(named.phrase());
        assertEquals(Optional.of(named.term()), TermLinks.find(words, said), said);
      }
    }
  }

  @Test
  void otherWordsLeadNowhere() {
    assertEquals(Optional.empty(), TermLinks.find(WordsForTests.usual(), "aperture"));
    assertEquals(Optional.empty(), TermLinks.find(WordsForTests.usual(), ""));
  }

  @Test
  void everyLinkOfEveryPageLeadsToAnEntryThatIsThere() {
    Set<String> entries = new HashSet<>();
    page("glossary").forEach(found -> entries.add("/glossary#" + found.id()));
    Set<String> linked = new TreeSet<>();
    for (PagePreviews.Preview preview : PagePreviews.all()) {
      for (Element link : Jsoup.parse(PagesTest.render(preview)).select("a[href^=/glossary#]")) {
        assertTrue(entries.contains(link.attr("href")), preview + ": " + link);
        assertTrue(link.hasClass("term"), preview + ": " + link);
        linked.add(link.attr("href"));
      }
    }
    assertTrue(
        linked.containsAll(
            Set.of(Term.KEY.path(), Term.STOP_RULER.path(), Term.LIGHTING_RATIO.path())),
        linked.toString());
    assertFalse(entries.isEmpty());
  }

  private static List<Element> page(String name) {
    PagePreviews.Preview preview =
        PagePreviews.all().stream().filter(p -> p.name().equals(name)).findFirst().orElseThrow();
    return Jsoup.parse(PagesTest.render(preview)).select(".gloss-entry[id]");
  }
}
