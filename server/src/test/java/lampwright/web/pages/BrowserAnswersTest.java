package lampwright.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lampwright.browser.EngineOnNode;
import lampwright.browser.Requests;
import lampwright.document.Json;
import lampwright.setup.DemoSeeds;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.setup.Standing;
import lampwright.setup.figures.FiguresComputation;
import lampwright.tasks.Catalogued;
import lampwright.wording.Wording;
import lampwright.wording.WordsForTests;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the browser's engine says of a setup is what the setup's page prints. */
class BrowserAnswersTest {

  private static final Templates TEMPLATES = new Templates();

  /** A setup as one person reads it. */
  private record Read(SetupDocument setup, Wording words) {

    Map<String, Object> request() {
      // With the phrases that the editor's page sends: the engine finds each that it needs.
      Map<String, Object> request = Requests.of(setup, words.notation());
      request.put("phrases", EditorData.phrases(words.notation().phrases()));
      return request;
    }

    String page() {
      SetupPage full = SetupPreviews.full();
      Layout layout =
          new Layout(setup.title(), Optional.empty(), Theme.DEVICE, words, PagePreviews.ASSETS);
      SetupPage page =
          new SetupView(setup, FiguresComputation.of(setup), words)
              .page(
                  layout,
                  new Catalogued(
                      new SetupId("k3v9k3v9"),
                      1,
                      Instant.EPOCH,
                      "Imke Tal",
                      Standing.DRAFT,
                      Optional.empty(),
                      setup),
                  new SetupView.Beside(
                      full.kin(),
                      full.signature(),
                      Optional.empty(),
                      List.of(),
                      Optional.empty(),
                      full.kitForm(),
                      full.now(),
                      full.actions(),
                      full.pictures(),
                      full.life(),
                      Optional.empty(),
                      new DrawnSetups()),
                  "/demo/setups",
                  "/demo/figures");
      return TEMPLATES.render("setup", page);
    }
  }

  @Test
  void everyDemoSetupReadsAsOnItsPage(@TempDir Path folder) throws Exception {
    List<Read> all = new ArrayList<>();
    for (SetupDocument setup : new DemoSeeds().setups().values()) {
      boolean isOdd = all.size() % 2 == 1;
      all.add(new Read(setup, isOdd ? WordsForTests.germanFeetAndThirds() : WordsForTests.usual()));
    }
    try (EngineOnNode engine = EngineOnNode.compiled(folder)) {
      List<String> answers = engine.answers(all.stream().map(Read::request).toList());
      for (int i = 0; i < all.size(); i++) {
        assertSame((Map<?, ?>) Json.parse(answers.get(i)), all.get(i));
      }
    }
  }

  private static void assertSame(Map<?, ?> answer, Read read) {
    String title = read.setup().title();
    String html = read.page();
    Document page = Jsoup.parse(html);
    assertEquals(
        strip(page), list(answer, "strip").map(BrowserAnswersTest::figure).toList(), title);
    assertEquals(
        lights(page), list(answer, "lights").map(BrowserAnswersTest::light).toList(), title);
    for (Map<?, ?> light : list(answer, "lights").toList()) {
      assertTrue(html.contains(text(light, "ruler")), () -> title + ": ruler of " + light);
    }
    assertTrue(html.contains(text(answer, "plan")), () -> title + ": plan");
    assertEquals(
        page.select(".cautions li").eachText(),
        list(answer, "cautions").map(BrowserAnswersTest::caution).toList(),
        title);
    assertEquals(
        page.select(".missing > div").eachText(),
        list(answer, "needs").map(need -> words(need, "of", "sentence")).toList(),
        title);
  }

  private static List<String> strip(Document page) {
    return page.select(".strip .figures > div").eachText();
  }

  private static String figure(Map<?, ?> figure) {
    return words(figure, "name", "known", "value", "unit", "uncertainty");
  }

  /** The rows as they are read, without the rulers and the workings. */
  private static List<String> lights(Document page) {
    List<String> rows = new ArrayList<>();
    for (Element body : page.select("table.lights > tbody")) {
      body.select("svg, details, .unseen").remove();
      rows.add(body.text());
    }
    return rows;
  }

  private static String light(Map<?, ?> light) {
    String off = light.get("off") instanceof Map<?, ?> deviation ? deviation(deviation) : "";
    String row = words(light, "role", "gear", "power", "reading", "known", "level", "uncertainty");
    return text(light, "number") + joined(row, off, text(light, "reason"));
  }

  private static String deviation(Map<?, ?> off) {
    boolean isNotable = Boolean.TRUE.equals(off.get("notable"));
    return isNotable ? words(off, "stops", "word") : text(off, "stops");
  }

  private static String caution(Map<?, ?> caution) {
    String danger = text(caution, "danger");
    return joined(danger.isEmpty() ? "" : danger + ".", text(caution, "act"));
  }

  private static String words(Map<?, ?> of, String... fields) {
    List<String> words = new ArrayList<>();
    for (String field : fields) {
      words.add(text(of, field));
    }
    return joined(words.toArray(String[]::new));
  }

  private static String joined(String... words) {
    return String.join(" ", words).strip().replaceAll("\\s+", " ");
  }

  private static String text(Map<?, ?> of, String field) {
    return switch (of.get(field)) {
      case Double number -> String.valueOf(number.intValue());
      case String text -> text;
      case null, default -> throw new AssertionError("no " + field + " in " + of);
    };
  }

  private static Stream<Map<?, ?>> list(Map<?, ?> answer, String part) {
    List<?> items = (List<?>) answer.get(part);
    if (items == null) {
      throw new AssertionError("no " + part + " in " + answer);
    }
    return items.stream().map(item -> (Map<?, ?>) item);
  }
}
