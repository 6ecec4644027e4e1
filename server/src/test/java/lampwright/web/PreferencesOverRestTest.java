package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.Map;
import lampwright.TestHouse;
import lampwright.Visitor;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** How one reads, over REST and on the pages; each test has a member of the demo to itself. */
class PreferencesOverRestTest {

  private static final String PREFERENCES = "/api/preferences";
  private static final String PAGE = "/preferences";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private static String json(String language, String lengths, String stops) {
    return Documents.json(Map.of("language", language, "lengths", lengths, "stops", stops));
  }

  private static Document page(Visitor visitor, String path) {
    HttpResponse<String> answer = visitor.get(path);
    assertEquals(200, answer.statusCode(), answer.body());
    return Jsoup.parse(answer.body());
  }

  @Test
  void whatAProgramChoosesForItsPersonTheirPagesSpeakFromThenOn() {
    Visitor program = house.withToken("author@demo.example");
    HttpResponse<String> usual = program.get(PREFERENCES);
    assertEquals(Map.of("lengths", "metres", "stops", "tenths"), Visitor.object(usual));
    assertEquals("\"1\"", usual.headers().firstValue("ETag").orElseThrow());
    String german = json("de", "feet", "thirds");
    assertEquals(428, program.put(PREFERENCES, german).statusCode());
    HttpResponse<String> kept = program.with("If-Match", "\"1\"").put(PREFERENCES, german);
    assertEquals(200, kept.statusCode(), kept.body());
    assertEquals("\"2\"", kept.headers().firstValue("ETag").orElseThrow());
    assertEquals(412, program.with("If-Match", "\"1\"").put(PREFERENCES, german).statusCode());
    assertEquals(
        Map.of("language", "de", "lengths", "feet", "stops", "thirds"),
        Visitor.object(program.get(PREFERENCES)));
    Visitor browser = house.signedIn("author@demo.example").with("Accept-Language", "en");
    Document page = page(browser, PAGE);
    assertEquals("de", page.expectFirst("html").attr("lang"));
    assertEquals("Darstellung", page.expectFirst("h1").text());
    assertEquals("7′ 9″", page.expectFirst("[value=feet] ~ .preference-example").text());
    assertEquals("−1⅓", page.expectFirst("[value=thirds] ~ .preference-example").text());
  }

  @Test
  void whatIsNoChoiceIsToldAtItsField() {
    Visitor program = house.withToken("crew@demo.example").with("If-Match", "*");
    HttpResponse<String> wrong = program.put(PREFERENCES, json("tlh", "ells", "tenths"));
    assertEquals(422, wrong.statusCode());
    assertTrue(wrong.body().contains("/language"), wrong.body());
    assertTrue(wrong.body().contains("/lengths"), wrong.body());
  }

  @Test
  void whoHasNotChosenReadsInTheLanguageThatTheirBrowserAsksFor() {
    assertEquals(
        "de",
        page(house.visitor().with("Accept-Language", "de-AT,en;q=0.5"), "/sign-in")
            .expectFirst("html")
            .attr("lang"));
    Visitor reader = house.signedIn("reader@demo.example");
    assertEquals("en", page(reader, PAGE).expectFirst("html").attr("lang"));
    assertEquals(
        "de", page(reader.with("Accept-Language", "de"), PAGE).expectFirst("html").attr("lang"));
  }

  @Test
  void theFormIsKeptAndAFormThatIsTooOldIsNot() {
    Visitor owner = house.signedIn("owner@demo.example");
    Document form = page(owner, PAGE);
    assertEquals("", form.expectFirst("input[name=language][checked]").val());
    String sent =
        "csrf=" + form.expectFirst("main input[name=csrf]").val() + "&revision=1&language=de";
    HttpResponse<String> kept = owner.postForm(PAGE, sent + "&lengths=feet&stops=thirds");
    assertEquals(303, kept.statusCode(), kept.body());
    Document after = page(owner, kept.headers().firstValue("Location").orElseThrow());
    assertEquals("feet", after.expectFirst("input[name=lengths][checked]").val());
    assertEquals(
        "Übernommen. Ab jetzt sind alle Seiten so geschrieben.",
        after.expectFirst("[role=status]").text());
    HttpResponse<String> late = owner.postForm(PAGE, sent + "&lengths=metres&stops=tenths");
    assertEquals(412, late.statusCode());
    Document told = Jsoup.parse(late.body());
    assertEquals("feet", told.expectFirst("input[name=lengths][checked]").val());
    assertTrue(told.expectFirst("[role=alert]").text().contains("inzwischen"), told.text());
    assertEquals(
        422,
        owner.postForm(PAGE, sent.replace("revision=1", "revision=2") + "&stops=x").statusCode());
  }
}
