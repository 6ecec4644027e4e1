package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import lampwright.RouteWalk;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What whoever writes a program against an API of this kind expects of it and tries out first (the
 * list of ANCHORS.md section 4.1, after RFC 9110, 6585, 8288 and 9457), where no other test has it:
 * bodies are in {@link BodiesTest}, the shapes of refusals in {@link RefusalShapesTest}, merge
 * patches in {@link ChangesByPatchTest}, keys in {@link MadeOnceTest}.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ExpectedOfAnApiTest {

  private static final String STUDIO = "/api/studios/demo";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor author;
  private String setup = "";

  @BeforeAll
  void aSetupIsThere() {
    author = house.withToken("author@demo.example");
    setup = made(STUDIO + "/setups", Documents.json(Documents.setup("Expected")));
  }

  private String made(String path, String body) {
    HttpResponse<String> answer = author.post(path, body);
    assertEquals(201, answer.statusCode(), answer.body());
    return answer.headers().firstValue("Location").orElseThrow();
  }

  /** RFC 9110, section 13.1.1: If-Match compares strongly. */
  @Test
  void aWeakTagOrNoTagMatchesNoChange() {
    String document = Documents.json(Documents.setup("Expected"));
    for (String tags : List.of("W/\"1\"", "\"x\"", "1", "\"1", "\"01\"", "\"+1\"", "W/*")) {
      HttpResponse<String> answer = author.with("If-Match", tags).put(setup, document);
      assertEquals(412, answer.statusCode(), tags);
    }
    assertEquals("\"1\"", author.get(setup).headers().firstValue("ETag").orElseThrow());
  }

  /** RFC 9110, section 13.1.2: If-None-Match compares weakly. */
  @ParameterizedTest
  @ValueSource(strings = {"\"1\"", "W/\"1\"", "\"9\", \"1\"", "*"})
  void whatOneHasAlreadyIsNotSentAgainButItsTagIs(String tags) {
    HttpResponse<String> answer = author.with("If-None-Match", tags).get(setup);
    assertEquals(304, answer.statusCode());
    assertEquals("", answer.body());
    assertEquals("\"1\"", answer.headers().firstValue("ETag").orElseThrow());
  }

  @Test
  void aListThatDependsOnWhoAsksIsNeverAnsweredByATagAlone() {
    String known = made(STUDIO + "/setups", Documents.json(Documents.setup("Known to all")));
    Proven.by(author, known);
    HttpResponse<String> all = author.get(known + "/revisions");
    HttpResponse<String> some =
        house
            .withToken("reader@demo.example")
            .with("If-None-Match", all.headers().firstValue("ETag").orElseThrow())
            .get(known + "/revisions");
    assertEquals(200, some.statusCode());
    assertEquals(2, Visitor.items(all).size());
    assertEquals(1, Visitor.items(some).size());
    for (String list : List.of("/setups", "/kits", "/locations")) {
      assertTrue(author.get(STUDIO + list).headers().firstValue("ETag").isEmpty(), list);
    }
  }

  @Test
  void whatIsRefusedSaysSoInItsStatus() {
    List<String> wrong = new ArrayList<>();
    for (RouteWalk.Step step : RouteWalk.of(house)) {
      if (step.isForPrograms() && step.verb().equals("GET")) {
        HttpResponse<String> answer = author.get(step.path("zzzz"));
        boolean isProblem =
            answer.headers().firstValue("Content-Type").orElse("").contains("problem");
        if (isProblem != (answer.statusCode() >= 400)) {
          wrong.add(step + " -> " + answer.statusCode());
        }
      }
    }
    assertEquals(List.of(), wrong);
  }

  /** RFC 9110, section 9.3.2: HEAD sends what GET would, but its content. */
  @Test
  void headTellsWhatGetWould() {
    for (String path : List.of(setup, setup + "/figures", STUDIO + "/kits", "/health/live")) {
      HttpResponse<String> get = author.get(path);
      HttpResponse<String> head = author.send("HEAD", path, BodyPublishers.noBody());
      assertEquals(get.statusCode(), head.statusCode(), path);
      assertEquals("", head.body());
      for (String header : List.of("Content-Type", "ETag", "Cache-Control")) {
        assertEquals(get.headers().firstValue(header), head.headers().firstValue(header), path);
      }
    }
    assertEquals(
        404, author.send("HEAD", STUDIO + "/setups/zzzz", BodyPublishers.noBody()).statusCode());
  }

  /** RFC 9110, section 9.3.7. */
  @Test
  void optionsNamesWhatAnAddressDoes() {
    HttpResponse<String> answer = author.send("OPTIONS", setup, BodyPublishers.noBody());
    assertEquals(204, answer.statusCode());
    Set<String> allowed =
        new LinkedHashSet<>(
            List.of(answer.headers().firstValue("Allow").orElseThrow().split(", ")));
    assertEquals(Set.of("GET", "HEAD", "PUT", "PATCH", "DELETE"), allowed);
    assertEquals(404, author.send("OPTIONS", "/api/nothing", BodyPublishers.noBody()).statusCode());
  }

  @ParameterizedTest
  @ValueSource(strings = {"TRACE", "CONNECT", "PROPFIND", "BREW"})
  void aMethodThatNobodyServesIsAProblem(String method) throws Exception {
    RawAnswer answer =
        RawAnswer.to(house.port(), method + " " + setup + " HTTP/1.1\r\nContent-Length: 0\r\n");
    assertTrue(answer.status() == 405 || answer.status() == 400 || answer.status() == 501);
    assertFalse(answer.body().contains("Exception"), answer.body());
  }

  @Test
  void anAddressIsOneAddress() {
    assertEquals(404, author.get(setup + "/").statusCode());
    assertEquals(404, author.get(setup.toUpperCase(Locale.ROOT)).statusCode());
    assertEquals(404, author.get("/API/session").statusCode());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "limit=101",
        "limit=0",
        "limit=-1",
        "limit=2147483648",
        "limit=9999999999999999999",
        "limit=1e2",
        "limit=NaN",
        "cursor=%22",
        "cursor=bm9uc2Vuc2U",
        "cursor=1-zzzz;drop"
      })
  void aListRefusesWhatIsNoPageOfIt(String query) {
    for (String list :
        List.of(
            STUDIO + "/setups",
            STUDIO + "/locations",
            setup + "/revisions",
            setup + "/notes",
            setup + "/takes",
            setup + "/pictures")) {
      HttpResponse<String> answer = author.get(list + "?" + query);
      assertEquals(422, answer.statusCode(), list + "?" + query);
      assertEquals(
          "/" + query.substring(0, query.indexOf('=')),
          Told.at(Visitor.object(answer), "errors", 0, "pointer"));
    }
  }

  /** RFC 8288; a page begins where the last one ended, whatever came in meanwhile. */
  @Test
  void whoReadsPageByPageSeesEachThatWasThereOnceWhateverComesInMeanwhile() {
    String setup = made(STUDIO + "/setups", Documents.json(Documents.setup("Paged")));
    List<String> lists = List.of(setup + "/notes", STUDIO + "/locations");
    for (String list : lists) {
      Set<String> there = new LinkedHashSet<>();
      for (int i = 0; i < 7; i++) {
        there.add(oneMore(list, "before " + i));
      }
      List<String> seen = new ArrayList<>();
      String next = list + "?limit=2";
      for (int page = 0; !next.isEmpty(); page++) {
        HttpResponse<String> answer = author.get(next);
        Visitor.items(answer).forEach(item -> seen.add(Told.at(item, "id").toString()));
        next =
            answer
                .headers()
                .firstValue("Link")
                .map(link -> link.replaceFirst("^<(.*)>; rel=\"next\"$", "$1"))
                .orElse("");
        oneMore(list, "meanwhile " + page);
      }
      assertEquals(seen.size(), Set.copyOf(seen).size(), "one came twice");
      assertTrue(seen.containsAll(there), "one was missed");
    }
  }

  private String oneMore(String list, String name) {
    String body =
        list.endsWith("notes")
            ? "{\"text\":\"" + name + "\"}"
            : Documents.json(Documents.location(name));
    String place = made(list, body);
    return place.substring(place.lastIndexOf('/') + 1);
  }

  @Test
  void whatOneMayNotKnowOfLooksLikeWhatIsNotThere() {
    Visitor reader = house.withToken("reader@demo.example");
    for (String below : List.of("", "/figures", "/revisions", "/notes", "/takes", "/pictures")) {
      HttpResponse<String> hidden = reader.get(setup + below);
      HttpResponse<String> absent =
          reader.get(setup.replaceFirst("[^/]+$", "0123456789abcdef") + below);
      assertEquals(404, hidden.statusCode(), below);
      assertEquals(absent.statusCode(), hidden.statusCode());
      assertEquals(
          Visitor.object(absent).get("detail"), Visitor.object(hidden).get("detail"), below);
    }
    HttpResponse<String> studio = author.get("/api/studios/another/kits");
    assertEquals(404, studio.statusCode());
  }

  @Test
  void whatIsPrivateIsKeptByNobodyOnTheWay() {
    for (String path : List.of(setup, setup + "/figures", STUDIO + "/setups", "/api/session")) {
      assertEquals(
          "no-store", author.get(path).headers().firstValue("Cache-Control").orElseThrow(), path);
    }
  }
}
