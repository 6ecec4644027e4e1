package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.document.Json;
import lampwright.setup.signature.LightLikeness;
import lampwright.setup.signature.PackedLight;
import lampwright.setup.signature.Signature;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Setups with light like another's, with the demo's few setups and some planted ones. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LikeThisOverRestTest {

  private static final String SETUPS = "/api/studios/demo/setups";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor author;
  private Visitor reader;

  /** By id. */
  private final Map<String, Map<?, ?>> documents = new LinkedHashMap<>();

  /** Each one's light by id. */
  private final Map<String, PackedLight> lights = new LinkedHashMap<>();

  private String asked = "";

  @BeforeAll
  void someStandWithOtherKeys() {
    author = house.withToken("author@demo.example");
    reader = house.withToken("reader@demo.example");
    for (int i = 0; i < 6; i++) {
      Map<String, Object> light = Documents.light("key");
      light = Documents.with(light, "place", Map.of("x_m", 2.0 - i, "y_m", 1.0, "z_m", 2.0));
      Map<String, Object> planted =
          Documents.with(
              Documents.with(Documents.setup("Planted " + i), "lights", List.of(light)),
              "subjects",
              List.of(Map.of("name", "caretaker", "place", Map.of("x_m", 0, "y_m", 0, "z_m", 0))));
      Proven.by(author, SETUPS + "/" + post(planted));
    }
    for (Object item : items(author, "?limit=100")) {
      String id = Told.at(item, "id").toString();
      Map<?, ?> document =
          (Map<?, ?>) Told.at(Visitor.object(author.get(SETUPS + "/" + id)), "document");
      documents.put(id, document);
      lights.put(id, light(document));
      if (Told.at(item, "title").equals("Planted 2")) {
        asked = id;
      }
    }
    assertTrue(documents.size() > 9, documents.size() + " setups");
  }

  private String post(Map<?, ?> document) {
    HttpResponse<String> created = author.post(SETUPS, Json.print(document));
    assertEquals(201, created.statusCode(), created.body());
    return Told.at(Visitor.object(created), "id").toString();
  }

  private static Map<?, ?> found(Visitor visitor, String query) {
    HttpResponse<String> answer = visitor.get(SETUPS + query);
    assertEquals(200, answer.statusCode(), answer.body());
    return Visitor.object(answer);
  }

  private static List<?> items(Visitor visitor, String query) {
    return Told.list(found(visitor, query), "items");
  }

  private static List<String> ids(Visitor visitor, String query) {
    return items(visitor, query).stream().map(item -> Told.at(item, "id").toString()).toList();
  }

  private static PackedLight light(Map<?, ?> document) {
    return PackedLight.of(Signature.of(lampwright.setup.Documents.setup(document)));
  }

  private Map<?, ?> document(String id) {
    return Objects.requireNonNull(documents.get(id));
  }

  private PackedLight light(String id) {
    return Objects.requireNonNull(lights.get(id));
  }

  /** In the steps in which the search compares scores; equals by id. */
  private List<String> oneByOne(String setup) {
    Comparator<String> mostAlike =
        Comparator.comparingLong(
            id -> -Math.round(LightLikeness.rank(light(setup), light(id)) * 100_000));
    return documents.keySet().stream()
        .filter(id -> !id.equals(setup))
        .sorted(mostAlike.thenComparing(id -> id))
        .toList();
  }

  @Test
  void theOrderIsThatOfEachSetupHeldAgainstTheAskedOne() {
    for (String setup : documents.keySet()) {
      List<String> all = ids(author, "?limit=100&like=" + setup);
      assertEquals(oneByOne(setup), all, setup);
    }
  }

  @Test
  void pagesGoOnWhereTheLastOneEnded() {
    List<String> paged = new ArrayList<>();
    String cursor = "";
    do {
      Map<?, ?> page = found(author, "?limit=4&like=" + asked + cursor);
      Told.list(page, "items").forEach(item -> paged.add(Told.at(item, "id").toString()));
      Object next = page.get("next");
      cursor = next == null ? "" : "&cursor=" + next;
      String other = documents.keySet().iterator().next();
      if (next != null && !other.equals(asked)) {
        isRefused("?limit=4&like=" + other + cursor, "/cursor");
      }
    } while (!cursor.isEmpty());
    assertEquals(oneByOne(asked), paged);
  }

  @Test
  void filtersWordsAndCountsHoldAsWithoutIt() {
    for (String narrow :
        List.of("&filter=lights+1", "&state=proven", "&q=planted", "&q=%22Planted+3%22")) {
      Map<?, ?> plain = found(author, "?limit=100&facets=state,lights" + narrow);
      Map<?, ?> alike = found(author, "?limit=100&facets=state,lights&like=" + asked + narrow);
      List<String> expected = new ArrayList<>(oneByOne(asked));
      List<String> without = new ArrayList<>();
      Told.list(plain, "items").forEach(item -> without.add(Told.at(item, "id").toString()));
      boolean withAsked = without.contains(asked);
      expected.retainAll(without);
      List<String> got = new ArrayList<>();
      Told.list(alike, "items").forEach(item -> got.add(Told.at(item, "id").toString()));
      if (!narrow.contains("q=planted")) {
        assertEquals(expected, got, narrow);
        assertEquals(
            Told.number(plain, "total") - (withAsked ? 1 : 0), Told.number(alike, "total"), narrow);
      } else {
        // What is near to the words in meaning alone is left out.
        assertTrue(expected.containsAll(got) && got.size() == 5, got.toString());
      }
      assertEquals(
          Told.number(alike, "total"),
          ((Map<?, ?>) Told.at(alike, "facets", "state"))
              .values().stream().mapToDouble(count -> ((Number) count).doubleValue()).sum(),
          narrow);
    }
  }

  @Test
  void itSaysWhatIsAlikeAndWhatIsNot() {
    List<?> items = items(author, "?like=" + asked + "&q=planted");
    List<?> reasons = Told.list(items.getFirst(), "reasons");
    assertTrue(reasons.contains("lights: 1 key in both") && reasons.size() > 3, reasons.toString());
  }

  @Test
  void itsOwnChangeAndThatOfAnotherAreFollowed() {
    String copy = post(document(asked));
    assertEquals(copy, ids(author, "?like=" + asked + "&limit=1").getFirst());
    assertEquals(1, Told.number(items(author, "?like=" + asked).getFirst(), "score"));
    List<String> before = ids(author, "?limit=100&like=" + copy);
    Map<String, Object> other = Documents.setup("Lit from behind");
    Map<String, Object> hair =
        Documents.with(
            Documents.with(Documents.light("hair"), "role", "hair"),
            "place",
            Map.of("x_m", 0.0, "y_m", -4.0, "z_m", 3.0));
    HttpResponse<String> replaced =
        author
            .with("If-Match", "*")
            .put(SETUPS + "/" + copy, Json.print(Documents.with(other, "lights", List.of(hair))));
    assertEquals(200, replaced.statusCode(), replaced.body());
    assertNotEquals(copy, ids(author, "?like=" + asked).getFirst());
    assertNotEquals(before, ids(author, "?limit=100&like=" + copy));
    assertEquals(204, author.with("If-Match", "*").delete(SETUPS + "/" + copy).statusCode());
  }

  @Test
  void whoSeesNoDraftsFindsNoneAndAsksWithNone() {
    String draft = post(document(asked));
    assertEquals(draft, ids(author, "?like=" + asked).getFirst());
    assertFalse(ids(reader, "?limit=100&like=" + asked).contains(draft));
    HttpResponse<String> refused = reader.get(SETUPS + "?like=" + draft);
    assertEquals(422, refused.statusCode());
    assertEquals("/like", Told.at(Visitor.object(refused), "errors", 0, "pointer"));
    String missing = draft.substring(1) + draft.charAt(0);
    assertEquals(
        Told.at(Visitor.object(refused), "errors", 0, "message").toString().replace(draft, missing),
        Told.at(Visitor.object(reader.get(SETUPS + "?like=" + missing)), "errors", 0, "message"));
    assertEquals(204, author.with("If-Match", "*").delete(SETUPS + "/" + draft).statusCode());
    isRefused("?like=" + draft, "/like");
  }

  @Test
  void aSetupsPageLeadsToThoseWithLightLikeItsAndTheMarkTakesOneBack() {
    Visitor browser = house.signedIn("author@demo.example");
    String page = "/studios/demo/setups";
    Document sheet = Jsoup.parse(browser.get(page + "/" + asked).body());
    String way = sheet.expectFirst("a[href*=like=]").attr("href");
    assertEquals(page + "?like=" + asked, way);
    Document list = Jsoup.parse(browser.get(way).body());
    assertEquals(oneByOne(asked).size() + " setups", list.expectFirst(".total").text());
    String first = page + "/" + oneByOne(asked).getFirst();
    assertEquals(first, list.expectFirst(".hit h2 a").attr("href"));
    Element mark = list.expectFirst(".active .chip");
    assertEquals("Remove Light like “Planted 2”", mark.attr("aria-label"));
    assertEquals(page, mark.attr("href"));
    assertEquals(asked, list.expectFirst(".search input[name=like]").attr("value"));
    Document faulty = Jsoup.parse(browser.get(page + "?like=nothing").body());
    assertEquals(
        "There is no setup “nothing”. Maybe it was deleted?", faulty.expectFirst(".faults").text());
    assertFalse(faulty.select(".hit").isEmpty());
  }

  @Test
  void whatIsNoSetupIsRefusedAndSoIsAnotherOrder() {
    isRefused("?like=nothing", "/like");
    isRefused("?like=" + "x".repeat(5_000), "/like");
    isRefused("?sort=near&filter=within+20+km+of+53.2,0.3&like=" + asked, "/sort");
  }

  private void isRefused(String query, String pointer) {
    HttpResponse<String> answer = author.get(SETUPS + query);
    assertEquals(422, answer.statusCode(), answer.body());
    assertEquals(pointer, Told.at(Visitor.object(answer), "errors", 0, "pointer"));
  }
}
