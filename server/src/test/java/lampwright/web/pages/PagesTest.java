package lampwright.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Reads every preview as a browser would. The pages are left in {@code target/page-previews}, to be
 * looked at (DEVELOPERS: serve that folder, the pages name their assets from its root).
 */
class PagesTest {

  private static final TemplateEngine ENGINE = TemplateEngine.createPrecompiled(ContentType.Html);

  static Stream<PagePreviews.Preview> previews() {
    return PagePreviews.all().stream();
  }

  static String render(PagePreviews.Preview preview) {
    StringOutput output = new StringOutput();
    ENGINE.render(preview.template(), preview.page(), output);
    return output.toString();
  }

  private static Document read(PagePreviews.Preview preview) {
    return Jsoup.parse(render(preview), "http://localhost/");
  }

  @ParameterizedTest
  @MethodSource("previews")
  void everyFieldHasALabel(PagePreviews.Preview preview) {
    Document page = read(preview);
    for (Element field : page.select("input:not([type=hidden]), select, textarea")) {
      boolean labelled =
          field.closest("label") != null
              || (!field.id().isEmpty() && !page.select("label[for=" + field.id() + "]").isEmpty());
      assertTrue(labelled, () -> "no label: " + field);
    }
    for (Element button : page.select("button")) {
      assertFalse(button.text().isBlank(), () -> "button without words: " + button);
    }
  }

  @ParameterizedTest
  @MethodSource("previews")
  void headingsStartAtOneAndSkipNoLevel(PagePreviews.Preview preview) {
    Document page = read(preview);
    assertEquals(1, page.select("h1").size());
    int before = 0;
    for (Element heading : page.select("h1, h2, h3, h4, h5, h6")) {
      int level = heading.tagName().charAt(1) - '0';
      assertTrue(level <= before + 1, "h" + level + " after h" + before + ": " + heading.text());
      assertFalse(heading.text().isBlank());
      before = level;
    }
  }

  @ParameterizedTest
  @MethodSource("previews")
  void tablesHaveHeadersForColumnsAndRows(PagePreviews.Preview preview) {
    for (Element table : read(preview).select("table:not([role=presentation])")) {
      assertFalse(table.select("thead th[scope=col]").isEmpty());
      for (Element row : table.select("tbody tr:not(.because, .row-was)")) {
        assertEquals(1, row.select("th[scope]").size(), () -> "row without a header: " + row);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("previews")
  void nothingIsInlineThatThePolicyForbids(PagePreviews.Preview preview) {
    Document page = read(preview);
    for (Element element : page.getAllElements()) {
      for (Attribute attribute : element.attributes()) {
        assertFalse(attribute.getKey().equals("style"), () -> "style in " + element);
        assertFalse(attribute.getKey().startsWith("on"), () -> "handler in " + element);
      }
    }
    assertTrue(page.select("style").isEmpty());
    for (Element script : page.select("script")) {
      assertTrue(script.hasAttr("src") && script.data().isEmpty(), () -> "inline: " + script);
    }
  }

  @ParameterizedTest
  @MethodSource("previews")
  void idsAreUniqueAndReferencesLeadSomewhere(PagePreviews.Preview preview) {
    Document page = read(preview);
    Set<String> ids = new HashSet<>();
    for (Element element : page.select("[id]")) {
      assertTrue(ids.add(element.id()), () -> "twice: " + element.id());
    }
    for (Element element : page.select("[aria-labelledby], [aria-describedby], label[for]")) {
      for (String name : List.of("aria-labelledby", "aria-describedby", "for")) {
        for (String id : element.attr(name).split(" ", -1)) {
          assertTrue(id.isEmpty() || ids.contains(id), () -> id + " in " + element);
        }
      }
    }
    for (Element link : page.select("a[href^=#]")) {
      assertTrue(ids.contains(link.attr("href").substring(1)), () -> "leads nowhere: " + link);
    }
  }

  @ParameterizedTest
  @MethodSource("previews")
  void whatPeopleWroteIsNeverMarkup(PagePreviews.Preview preview) {
    Document clean = read(preview);
    Hostile hostile = new Hostile();
    Document page =
        read(
            new PagePreviews.Preview(
                preview.name(), preview.template(), hostile.rewrite(preview.page())));
    assertTrue(hostile.count() >= 5, "too few text slots were filled");
    assertEquals(clean.select("script").size(), page.select("script").size());
    assertTrue(page.select("[onmouseover]").isEmpty());
    assertTrue(page.select("b.planted, i.planted").isEmpty());
    assertTrue(page.text().contains("<script>"), "the text itself must still be readable");
  }

  @ParameterizedTest
  @MethodSource("previews")
  void drawingsSayInWordsWhatTheyShow(PagePreviews.Preview preview) {
    for (Element svg : read(preview).select(":not(svg) > svg")) {
      assertEquals("img", svg.attr("role"));
      Element first = svg.firstElementChild();
      assertTrue(first != null && first.tagName().equals("title") && !first.text().isBlank());
    }
  }

  @Test
  void aDeviationThatShowsIsMarkedBySignWeightAndWord() {
    Document page =
        read(new PagePreviews.Preview("short", "adapted.jte", AdaptedPreviews.notEnough()));
    List<String> marked = page.select("td .off-notable").eachText();
    assertEquals(List.of("+0.4 over", "−0.7 under"), marked);
  }

  @Test
  void figuresPrintTheirWorkingAsATree() {
    Document page = read(new PagePreviews.Preview("setup", "setup.jte", SetupPreviews.full()));
    Element tree = page.selectFirst(".strip .tree");
    assertTrue(tree != null);
    assertEquals(5, tree.select(".step").size());
    assertTrue(tree.select("ul ul .step").text().contains("1/125"));
  }

  @Test
  void afterAnErrorTheFieldSaysWhatIsWrongAndTheSummaryLinksToIt() {
    Document page =
        PagePreviews.all().stream()
            .filter(p -> p.name().equals("first-owner-wrong"))
            .map(PagesTest::read)
            .findFirst()
            .orElseThrow();
    Element field = page.getElementById("email");
    assertTrue(field != null);
    assertEquals("true", field.attr("aria-invalid"));
    assertTrue(field.attr("aria-describedby").contains("email-error"));
    assertEquals(1, page.select(".errors a[href=#email]").size());
  }

  @Test
  void passwordsAreNeverPrintedBack() {
    for (PagePreviews.Preview preview : PagePreviews.all()) {
      for (Element field : read(preview).select("input[type=password]")) {
        assertEquals("", field.attr("value"));
      }
    }
  }

  @Test
  void previewsAreLeftToBeLookedAt() throws IOException {
    Path folder = Path.of("target", "page-previews");
    Path assets = folder.resolve("assets").resolve(PagePreviews.ASSETS.hash());
    for (String name : Assets.NAMES) {
      Path file = assets.resolve(name);
      Files.createDirectories(file.getParent());
      try (var in =
          PagePreviews.ASSETS.find(PagePreviews.ASSETS.hash(), name).orElseThrow().open()) {
        Files.write(file, in.readAllBytes());
      }
    }
    for (PagePreviews.Preview preview : PagePreviews.all()) {
      Files.writeString(folder.resolve(preview.name() + ".html"), render(preview));
    }
    assertTrue(Files.exists(folder.resolve("setup.html")));
  }
}
