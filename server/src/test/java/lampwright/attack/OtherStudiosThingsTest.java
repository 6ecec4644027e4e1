package lampwright.attack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lampwright.RouteWalk;
import lampwright.Visitor;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

/**
 * The owner of one studio reaches for another's things through their own studio's addresses, where
 * every role lets them do everything: by id in the path, in a query, in a document and in a cursor
 * (Web Security Testing Guide, ATHZ-04: insecure direct object references).
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class OtherStudiosThingsTest {

  @RegisterExtension static final AttackedHouse house = new AttackedHouse();

  private Visitor owner;
  private Visitor rival;
  private String ours;

  @BeforeAll
  void bothComeByToken() {
    owner = house.withToken("owner@demo.example");
    rival = house.withToken(AttackedHouse.RIVAL);
    ours = "/api/studios/" + house.rivalStudio(rival);
  }

  private String mixed(String template) {
    return house.path(template).replace("/studios/demo", ours.substring("/api".length()));
  }

  private static boolean namesAThing(RouteWalk.Step step) {
    return step.template().matches(".*/studios/\\{studio}/.*\\{.*");
  }

  /** What stands at every address that can be read of the demo's things, as its owner sees it. */
  private Map<String, String> snapshot() {
    Map<String, String> seen = new LinkedHashMap<>();
    for (RouteWalk.Step step : house.routes()) {
      if (!step.changes()
          && step.template().startsWith("/api/studios/{studio}/")
          && step.template().matches(".*\\{(setup|kit|gear|location|picture|take|note|trail)}")) {
        String path = house.path(step.template());
        seen.put(path, owner.get(path).body());
      }
    }
    return seen;
  }

  @Test
  void noThingOfAnotherStudioIsReadOrChangedThroughOnesOwn() {
    Map<String, String> before = snapshot();
    assertTrue(before.size() >= 8, before.keySet().toString());
    before.forEach((path, body) -> assertTrue(body.contains("\"id\":"), path + ": " + body));
    List<String> wrong = new ArrayList<>();
    int tried = 0;
    for (RouteWalk.Step step : house.routes()) {
      if (!namesAThing(step)) {
        continue;
      }
      tried++;
      HttpResponse<String> answer =
          rival
              .with("If-Match", "*")
              .with("Content-Type", type(step))
              .send(
                  step.verb(),
                  mixed(step.template()) + query(step),
                  BodyPublishers.ofString(step.changes() ? "{}" : ""));
      boolean refused =
          step.changes()
              ? answer.statusCode() >= 400 && answer.statusCode() < 500
              : landing(answer).statusCode() == 404;
      if (!refused
          || answer.body().contains("Rope and rain")
          || answer.body().contains("slipway")) {
        wrong.add(step + " -> " + answer.statusCode() + " " + answer.body());
      }
    }
    assertTrue(tried > 80, tried + " routes");
    assertEquals(List.of(), wrong, String.join("\n", wrong));
    assertEquals(before, snapshot());
  }

  /** Where an address leads that is there for the back button only. */
  private HttpResponse<String> landing(HttpResponse<String> answer) {
    return answer.statusCode() == 303
        ? rival.get(answer.headers().firstValue("Location").orElseThrow())
        : answer;
  }

  private static String type(RouteWalk.Step step) {
    if (!step.isForPrograms()) {
      return "application/x-www-form-urlencoded";
    }
    return step.verb().equals("PATCH") ? "application/merge-patch+json" : "application/json";
  }

  private static String query(RouteWalk.Step step) {
    if (step.template().endsWith("/ambient")) {
      return "?at=2026-01-01T12:00:00Z";
    }
    return step.template().endsWith("{setup}/comparison") ? "?from=1" : "";
  }

  @Test
  void noSearchFindsCountsOrCompletesWhatAnotherStudioWrote() {
    String word = "rope";
    assertFalse(items(owner, AttackedHouse.STUDIO + "/setups?q=" + word).isEmpty());
    for (String query :
        List.of(
            "/setups?q=" + word + "&facets=mood,place,state,author",
            "/setups?like=" + house.thing("setup"),
            "/setups?like_tones=" + house.thing("picture"),
            "/setups?place=" + house.thing("location"),
            "/setups?filter=" + encoded("made from " + house.thing("setup")),
            "/setups?filter=" + encoded("buildable with The van, new within 0.5 stops"),
            "/setups?archived=true&state=draft",
            "/suggestions?q=" + word,
            "/suggestions?q=" + encoded("[buildable with The v"),
            "/packing?setup=" + house.thing("setup"),
            "/drills?setup=" + house.thing("setup"),
            "/setups",
            "/kits",
            "/gear",
            "/gear/export?format=json",
            "/locations",
            "/trails",
            "/builds",
            "/learning",
            "/saved-searches")) {
      HttpResponse<String> answer = rival.get(ours + query);
      String told = query + " -> " + answer.statusCode() + " " + answer.body();
      assertTrue(answer.statusCode() < 500, told);
      for (String secret : List.of("Rope and rain", "slipway", "The van", "Maren", "First day")) {
        // What was asked for is told back where it cannot be found.
        assertFalse(answer.body().replace("“The van, new”", "").contains(secret), told);
      }
      if (answer.statusCode() == 200 && answer.body().contains("\"items\"")) {
        assertTrue(Visitor.items(answer).isEmpty(), told);
      }
      assertFalse(answer.body().matches("(?s).*\"(total|count)\":[1-9].*"), told);
    }
  }

  private static List<?> items(Visitor visitor, String path) {
    HttpResponse<String> answer = visitor.get(path);
    assertEquals(200, answer.statusCode(), answer.body());
    return Visitor.items(answer);
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  @Test
  void noCursorOfAnotherStudioOpensItsPages() {
    for (String list : List.of("/setups", "/kits", "/gear", "/locations", "/trails")) {
      HttpResponse<String> page = owner.get(AttackedHouse.STUDIO + list + "?limit=1");
      Object next = Visitor.object(page).get("next");
      if (next != null) {
        String cursor = URI.create(next.toString()).getRawQuery();
        HttpResponse<String> answer =
            rival.get(ours + list + "?" + (cursor == null ? "cursor=" + next : cursor));
        assertTrue(answer.statusCode() < 500, answer.body());
        assertTrue(
            answer.statusCode() != 200 || Visitor.items(answer).isEmpty(), list + answer.body());
      }
    }
  }

  @Test
  void noDocumentOfOnesOwnTakesInAnothersThing() {
    String setup = house.thing("setup");
    List<HttpResponse<String>> tried = new ArrayList<>();
    tried.add(
        rival.post(
            ours + "/trails",
            ("{\"name\":\"a\",\"clears_for\":\"b\",\"stages\":[{\"kind\":\"build\","
                    + "\"id\":\"build\",\"title\":\"c\",\"setup\":\"%s\",\"task\":\"d\"}]}")
                .formatted(setup)));
    tried.add(
        rival.post(
            ours + "/kits",
            "{\"name\":\"a\",\"gear\":[{\"id\":\"%s\"}]}".formatted(house.thing("gear"))));
    tried.add(rival.post(ours + "/setups?parent=" + setup, SMALL));
    tried.add(
        rival.post(
            ours + "/setups",
            SMALL.replace(
                "\"title\"",
                "\"occasion\":{\"place\":{\"name\":\"x\",\"location\":\"%s\"}},\"title\""
                    .formatted(house.thing("location")))));
    for (HttpResponse<String> answer : tried) {
      assertTrue(
          answer.statusCode() == 404 || answer.statusCode() == 422 || answer.statusCode() == 201,
          answer.statusCode() + " " + answer.body());
      if (answer.statusCode() == 201) {
        // A setup may say where it was made in its own words; nothing of the location comes with
        // it.
        String made = answer.headers().firstValue("Location").orElseThrow();
        assertFalse(rival.get(made).body().contains("slipway"));
        assertEquals(204, rival.with("If-Match", "*").delete(made).statusCode());
      }
    }
    assertEquals(422, tried.getFirst().statusCode(), "a trail over another's setup is refused");
    assertEquals(422, tried.get(1).statusCode(), "a kit of another's gear is refused");
    assertEquals(422, tried.get(2).statusCode(), "a child of another's setup is refused");
  }

  private static final String SMALL =
      "{\"title\":\"Small\",\"exposure\":{\"f_number\":5.6,\"time\":\"1/125\",\"iso\":100},"
          + "\"lights\":[]}";
}
