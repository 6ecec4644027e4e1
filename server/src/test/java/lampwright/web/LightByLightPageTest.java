package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Objects;
import lampwright.TestHouse;
import lampwright.Visitor;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The lights of a setup turned off one by one, as their page tells it without a script. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LightByLightPageTest {

  private static final String SETUP = "/studios/demo/setups/lastboatout";
  private static final String LIGHTS = SETUP + "/lights";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor visitor;

  @BeforeAll
  void aReaderSignsIn() {
    visitor = house.signedIn("reader@demo.example").with("Accept", "text/html");
  }

  private Document page(String address) {
    return page(address, 200);
  }

  private Document page(String address, int status) {
    HttpResponse<String> answer = visitor.get(address);
    assertEquals(status, answer.statusCode(), answer.body());
    return Jsoup.parse(answer.body());
  }

  private static String state(Document page) {
    return page.select("#without-state").text();
  }

  private static List<String> burning(Document page) {
    return page.select("[data-switch][checked]").eachAttr("value");
  }

  private static Element link(Document page, String id) {
    return Objects.requireNonNull(page.getElementById(id), id);
  }

  @Test
  void theSetupLeadsToAPageOnWhichEverythingBurns() {
    assertEquals(1, page(SETUP).select(".actions a[href=" + LIGHTS + "]").size());
    Document whole = page(LIGHTS);
    assertEquals("Everything burns", state(whole));
    assertEquals(6, burning(whole).size(), "five lights and the ambient");
    assertEquals(0, whole.select(".without-changed").size());
    assertEquals(
        page(SETUP).select("svg[data-view=plan] .plan-disc-figure").eachText(),
        whole.select("svg[data-view=plan] .plan-disc-figure").eachText());
    assertEquals(0, whole.select("script:not([src]), [style]").size());
  }

  @Test
  void everyLightSaysWhyItIsThereAndWhatGoesWithIt() {
    Document whole = page(LIGHTS);
    assertEquals(6, whole.select(".without-row").size());
    Element fill = whole.select(".without-row").get(3);
    assertEquals("4 Fill for: face", fill.select("h3").text().replaceFirst("^4 ?", "4 "));
    assertTrue(fill.select(".without-reason").text().startsWith("Just enough in the coat"));
    assertTrue(fill.text().contains("The shadow side at the face falls from"), fill.text());
    assertEquals(1, fill.select(".ruler .ruler-dot").size());
    assertEquals(1, fill.select(".ruler .ruler-bar").size());
  }

  @Test
  void aLightThatIsOffIsHollowAndWhatChangedIsTold() {
    Document off = page(link(page(LIGHTS), "light-4-but").attr("href"));
    assertEquals("Without 4 Fill", state(off));
    assertFalse(burning(off).contains("fill"));
    assertEquals(List.of("4"), off.select(".plan-ring-figure").eachText());
    assertTrue(off.select(".without-levels tbody tr").size() >= 3);
    for (String change : off.select(".without-change").eachText()) {
      assertTrue(change.startsWith("−"), change);
    }
    assertTrue(off.select(".without-sides").text().contains("lighting ratio, all: 3.0 : 1"));
    assertEquals("off", off.select("#light-4 .without-off").text());
    Document only = page(link(off, "light-4-only").attr("href"));
    assertEquals("Only 4 Fill", state(only));
    assertEquals("Everything burns", state(page(link(only, "without-all").attr("href"))));
  }

  @Test
  void aFormWithoutScriptLeadsToTheAddressOfWhatIsOff() {
    HttpResponse<String> sent = visitor.get(LIGHTS + "?form=sent&on=wall&on=key&on=fill&on=hands");
    assertEquals(303, sent.statusCode());
    String led = sent.headers().firstValue("Location").orElseThrow();
    assertEquals(LIGHTS + "?off=rim-right&ambient=off", led);
    assertEquals("Without 2 Rim and the ambient", state(page(led)));
  }

  @Test
  void theSetupGrowsFromTheAmbientToTheWhole() {
    Document page = page(link(page(LIGHTS), "without-begin").attr("href"));
    assertEquals("The ambient alone", state(page));
    assertEquals(0, page.select("#without-previous").size());
    assertEquals(List.of("on"), burning(page));
    for (int stage = 2; stage <= 6; stage++) {
      page = page(link(page, "without-next").attr("href"));
      assertEquals(stage + " of 6", page.select(".without-stage span").text());
      assertEquals(stage, burning(page).size());
      assertFalse(page.select(".without-now .without-lines li").isEmpty());
    }
    assertEquals("5 Accent is added", state(page));
    assertTrue(page.select(".without-now").text().contains("The setup is whole."));
    assertEquals(0, page.select("#without-next").size());
    assertTrue(link(page, "without-previous").attr("href").endsWith("?stage=5"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "?off=lantern          | Light (lantern) must be one of wall, rim-right, key, fill, hands.",
        "?form=sent&on=lantern | Light (lantern) must be one of wall, rim-right, key, fill, hands.",
        "?ambient=half         | Ambient (half) must be \"off\". Leave it out where it burns.",
        "?stage=7              | Stage (7) must be from 1 to 6. Maybe 1?",
        "?stage=first          | Stage (first) must be from 1 to 6. Maybe 1?"
      })
  void whatCannotBeTurnedIsToldWithItsName(String query, String message) {
    assertEquals(message, page(LIGHTS + query, 422).select(".problems li").text());
  }

  @Test
  void aSetupThatIsNotThereHasNoLights() {
    page("/studios/demo/setups/nosuchsetup/lights", 404);
  }
}
