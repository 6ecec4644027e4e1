package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.List;
import lampwright.TestHouse;
import lampwright.Visitor;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** The page on which a day is packed, as its form asks for it. */
class PackPagesTest {

  private static final String PAGE = "/studios/demo/packing";
  private static final String ONE = "setup=overthecut";
  private static final String TWO = "setup=lastboatout";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private static HttpResponse<String> ask(String query) {
    return house.signedIn("crew@demo.example").get(PAGE + query);
  }

  private static Document page(String query) {
    HttpResponse<String> answer = ask(query);
    assertEquals(200, answer.statusCode(), answer.body());
    return Jsoup.parse(answer.body());
  }

  private static String leadsTo(String query) {
    HttpResponse<String> answer = ask(query);
    assertEquals(303, answer.statusCode(), query);
    return answer.headers().firstValue("Location").orElseThrow();
  }

  @Test
  void aDayWithTwoSetupsIsListedOnceForBoth() {
    Document day =
        page("?" + ONE + "&" + TWO + "&ready_by=golden_hour_ends&hands=3&day=2026-11-29");
    assertEquals(List.of("1", "2"), day.select(".pack-setup .disc").eachText());
    assertTrue(
        day.select(".carry-row").eachText().stream()
            .anyMatch(
                row -> row.startsWith("3 × 400 W·s battery head 3 for setup 1, 3 for setup 2")),
        day.select(".carry-row").eachText().toString());
    assertEquals(3, day.select("svg.day-sheet text.day-head").size());
    assertTrue(day.select(".pack-sun").text().contains("sunset 1"), day.select(".pack-sun").text());
    assertTrue(day.select(".cautions").text().contains("never permission"));
    assertTrue(day.select(".lead").text().startsWith("29 November 2026: begin at 13:"));
  }

  @Test
  void whatAFormLeavesBecomesAnAddressThatSaysTheSame() {
    assertEquals(
        PAGE + "?" + ONE + "&" + TWO + "&ready_by=any_time&ready_by=18%3A40&hands=2",
        leadsTo(
            "?"
                + ONE
                + "&ready_by=any_time&at=&"
                + TWO
                + "&ready_by=sunset&at=18:40&q=&hands=2&day=&not_before="));
    assertEquals(
        PAGE + "?" + TWO + "&" + ONE + "&ready_by=sunset&ready_by=any_time",
        leadsTo("?" + ONE + "&ready_by=any_time&" + TWO + "&ready_by=sunset&sooner=1"));
    assertEquals(
        PAGE + "?" + TWO + "&ready_by=sunset",
        leadsTo("?" + ONE + "&ready_by=any_time&" + TWO + "&ready_by=sunset&out=0"));
  }

  @Test
  void aSetupThatIsFoundIsAddedToTheDay() {
    Document found = page("?" + ONE + "&ready_by=sunset&q=ferryman");
    String adds = found.select(".pack-found a").attr("href");
    assertEquals(PAGE + "?" + ONE + "&" + TWO + "&ready_by=sunset&ready_by=sun_as_it_was", adds);
  }

  @Test
  void whatIsWrongStandsBesideItsFieldAndNothingIsPlanned() {
    HttpResponse<String> answer = ask("?" + ONE + "&hands=9");
    assertEquals(422, answer.statusCode());
    Document page = Jsoup.parse(answer.body());
    assertEquals("#hands", page.select(".errors a").attr("href"));
    assertTrue(page.select("svg.day-sheet").isEmpty());
    assertEquals(404, ask("?setup=nosuchsetup00").statusCode());
  }

  @Test
  void aKitThatIsShortIsSaid() {
    Visitor crew = house.signedIn("crew@demo.example");
    String kits = crew.get("/studios/demo/kits").body();
    String satchel =
        Jsoup.parse(kits).select("h2 a:contains(Satchel)").attr("href").replaceFirst(".*/", "");
    Document day = page("?" + ONE + "&kit=" + satchel);
    assertFalse(day.select(".pack-problems").text().isEmpty());
    assertTrue(day.select(".carry-lacks").eachText().getFirst().matches("\\d (is|are) missing"));
    assertEquals(
        PAGE + "?kit=" + satchel,
        Jsoup.parse(crew.get("/studios/demo/kits/" + satchel).body())
            .select(".ways a:contains(Pack)")
            .attr("href"));
  }
}
