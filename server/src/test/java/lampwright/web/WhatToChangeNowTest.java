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
import lampwright.document.Json;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What to change when something happens to a setup that stands: over REST and on its page. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class WhatToChangeNowTest {

  private static final String REACTIONS = "/api/studios/demo/reactions";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor reader;
  private Visitor author;
  private String path = "";

  @BeforeAll
  void anAuthorWritesOneThatReadersMayNotSee() {
    reader = house.withToken("reader@demo.example");
    author = house.withToken("author@demo.example");
    HttpResponse<String> written =
        author.post("/api/studios/demo/setups", Documents.json(document()));
    assertEquals(201, written.statusCode(), written.body());
    path = written.headers().firstValue("Location").orElseThrow();
  }

  private static Map<String, Object> document() {
    Map<String, Object> setup = Documents.setup("Two heads at dusk");
    setup.put(
        "lights",
        List.of(Documents.light("key"), Documents.with(Documents.light("hair"), "role", "hair")));
    setup.put("ambient", Map.of("ev100", 8));
    return setup;
  }

  private Map<?, ?> answer(String happening) {
    return answer(happening, "");
  }

  private Map<?, ?> answer(String happening, String more) {
    HttpResponse<String> answer =
        author.post(path + "/reactions", "{\"happening\":" + happening + more + "}");
    assertEquals(200, answer.statusCode(), answer.body());
    return Visitor.object(answer);
  }

  @Test
  void aStopLessOfAmbientIsAStopMoreOfTimeAndTheChangedSetupCanBeKept() {
    Map<?, ?> now = answer("{\"ambient_falls_stops\":1}");
    assertEquals("turns", Told.at(now, "outcome"));
    assertEquals(1, Told.number(now, "ways", 0, "dials"));
    assertEquals("time", Told.at(now, "ways", 0, "turns", 0, "what"));
    assertEquals(1, Told.number(now, "ways", 0, "longer_stops"), 1e-9);
    assertEquals(true, Told.at(now, "ways", 0, "then", "holds_all"));
    Map<?, ?> changed = (Map<?, ?>) Told.at(now, "ways", 0, "then", "document");
    HttpResponse<String> again =
        author.post(
            REACTIONS,
            "{\"document\":" + Json.print(changed) + ",\"happening\":{\"ambient_falls_stops\":0}}");
    assertEquals("change_nothing", Told.at(Visitor.object(again), "outcome"));
  }

  @Test
  void aDialThatMustStayStays() {
    Map<?, ?> now = answer("{\"ambient_falls_stops\":1}", ",\"keep\":[\"time\"]");
    for (Object way : Told.list(now, "ways")) {
      for (Object turn : Told.list(way, "turns")) {
        assertFalse(Told.at(turn, "what").equals("time"), way.toString());
      }
    }
  }

  @Test
  void aKitThatStandsByHasASpareHead() {
    String kit =
        Visitor.items(author.get("/api/studios/demo/kits")).stream()
            .filter(one -> Told.at(one, "name").toString().startsWith("Van kit"))
            .map(one -> Told.at(one, "id").toString())
            .findFirst()
            .orElseThrow();
    Map<?, ?> now = answer("{\"dead\":\"key\"}", ",\"kit\":\"" + kit + "\"");
    assertEquals("head", Told.at(now, "ways", 0, "turns", 0, "what"));
    assertEquals(List.of(), Told.list(now, "ways", 0, "then", "given_up"));
    assertFalse(Told.list(now, "cautions").isEmpty());
    assertEquals(
        422,
        author
            .post(path + "/reactions", "{\"happening\":{\"dead\":\"key\"},\"kit\":\"none\"}")
            .statusCode());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{}                                             | /happening",
        "{\"dead\":\"key\",\"ambient_ev100\":7}         | /happening",
        "{\"dead\":\"nobody\"}                          | /happening/dead",
        "{\"ambient_ev100\":40}                         | /happening/ambient_ev100",
        "{\"ambient_falls_stops\":\"one\"}              | /happening/ambient_falls_stops",
        "{\"moved\":{\"light\":\"key\"}}                | /happening/moved/place",
        "{\"rains\":true}                               | /happening/rains"
      })
  void whatCannotHaveHappenedIsToldWhereItStands(String happening, String pointer) {
    HttpResponse<String> answer =
        author.post(path + "/reactions", "{\"happening\":" + happening + "}");
    assertEquals(422, answer.statusCode(), answer.body());
    assertEquals(pointer, Told.at(Visitor.object(answer), "errors", 0, "pointer"));
  }

  @Test
  void whoMayReadASetupMayAskAndNobodyElse() {
    String happening = "{\"happening\":{\"ambient_falls_stops\":1}}";
    assertEquals(404, reader.post(path + "/reactions", happening).statusCode());
    assertEquals(
        404,
        reader
            .with("Accept", "text/html")
            .get(path.substring("/api".length()) + "/now")
            .statusCode());
    Object proven = Visitor.items(reader.get("/api/studios/demo/setups?limit=1")).getFirst();
    assertEquals(
        200,
        reader
            .post("/api/studios/demo/setups/" + Told.at(proven, "id") + "/reactions", happening)
            .statusCode());
  }

  private Document page(String query, int status) {
    HttpResponse<String> answer =
        house
            .signedIn("author@demo.example")
            .with("Accept", "text/html")
            .get(path.substring("/api".length()) + query);
    assertEquals(status, answer.statusCode(), answer.body());
    return Jsoup.parse(answer.body());
  }

  @Test
  void theSetupsPageAsksAndTheAnswerNeedsNoScript() {
    Document setup = page("", 200);
    assertEquals("If something changes", setup.select(".now-part summary").text());
    assertFalse(setup.select(".now-part").hasAttr("open"));
    String action = setup.select(".now-form").attr("action");
    assertEquals(path.substring("/api".length()) + "/now", action);
    Document answer = page("/now?ambient=&ask=falls-1&light=key&kit=&keep=time", 200);
    assertEquals("The ambient has fallen by 1.0 stop.", answer.select(".now-answer h2").text());
    assertTrue(answer.select(".now-way").getFirst().text().contains("Every light"), answer::text);
    assertTrue(answer.select("#now-ambient").attr("value").isEmpty());
    assertTrue(answer.select("[name=keep]").hasAttr("checked"));
    assertEquals(0, answer.select("script:not([src]), [style]").size());
  }

  @Test
  void whatWasTypedWronglyIsToldAtItsField() {
    Document wrong = page("/now?ask=reads&ambient=dark", 422);
    assertEquals("#now-ambient", wrong.select(".errors a").attr("href"));
    assertEquals("dark", wrong.select("#now-ambient").attr("value"));
    assertEquals(
        "8,5", page("/now?ask=reads&ambient=8,5", 200).select("#now-ambient").attr("value"));
  }
}
