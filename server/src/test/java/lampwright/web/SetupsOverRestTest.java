package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.UncheckedIOException;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SetupsOverRestTest {

  private static final String SETUPS = "/api/studios/demo/setups";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor author;

  @BeforeAll
  void anAuthorComesWithAToken() {
    author = house.withToken("author@demo.example");
  }

  private HttpResponse<String> create(Map<String, Object> document) {
    return author.post(SETUPS, Documents.json(document));
  }

  private String created(String title) {
    HttpResponse<String> answer = create(Documents.setup(title));
    assertEquals(201, answer.statusCode(), answer.body());
    return answer.headers().firstValue("Location").orElseThrow();
  }

  @Test
  void whatWasCreatedIsReadBackAsItWasSent() {
    Map<String, Object> document = Documents.setup("Read me back");
    HttpResponse<String> answer = create(document);
    assertEquals(201, answer.statusCode());
    HttpResponse<String> read = author.get(answer.headers().firstValue("Location").orElseThrow());
    assertEquals(200, read.statusCode());
    assertEquals("\"1\"", read.headers().firstValue("ETag").orElseThrow());
    assertEquals("1/125", Told.at(Visitor.object(read), "document", "exposure", "time"));
    assertEquals(5.6, Told.at(Visitor.object(read), "document", "exposure", "f_number"));
    assertEquals(Visitor.object(answer), Visitor.object(read));
  }

  @Test
  void whoCreatesASetupFindsItByTheNextSearch() {
    created("Zephyrine at the turnstile");
    List<?> items = Visitor.items(author.get(SETUPS + "?q=zephyrine"));
    assertEquals(1, items.size());
    assertEquals("Zephyrine at the turnstile", Told.at(items, 0, "title"));
  }

  @Test
  void aChangeMakesANewRevisionAndTheIndexForgetsTheOldWords() {
    String place = created("Quagmire in the morning");
    HttpResponse<String> changed =
        author
            .with("If-Match", "\"1\"")
            .put(place, Documents.json(Documents.setup("Drained in the evening")));
    assertEquals(200, changed.statusCode(), changed.body());
    assertEquals("\"2\"", changed.headers().firstValue("ETag").orElseThrow());
    assertEquals(List.of(), Visitor.items(author.get(SETUPS + "?q=quagmire")));
    assertEquals(1, Visitor.items(author.get(SETUPS + "?q=drained")).size());
  }

  @Test
  void aChangeThatNamesNoRevisionOrAnOldOneIsRefusedAndChangesNothing() {
    String place = created("Held to its revision");
    String other = Documents.json(Documents.setup("Something else"));
    assertEquals(428, author.put(place, other).statusCode());
    assertEquals(412, author.with("If-Match", "\"7\"").put(place, other).statusCode());
    assertEquals(412, author.with("If-Match", "W/\"1\"").put(place, other).statusCode());
    assertEquals(428, author.delete(place).statusCode());
    assertEquals("\"1\"", author.get(place).headers().firstValue("ETag").orElseThrow());
  }

  @Test
  void whoKnowsTheRevisionIsNotSentItAgain() {
    String place = created("Known already");
    HttpResponse<String> again = author.with("If-None-Match", "\"1\"").get(place);
    assertEquals(304, again.statusCode());
    assertEquals("", again.body());
  }

  @Test
  void aDeletedSetupIsGoneAndNotFound() {
    String place = created("Soon evaporated");
    assertEquals(204, author.with("If-Match", "\"1\"").delete(place).statusCode());
    assertEquals(404, author.get(place).statusCode());
    assertEquals(List.of(), Visitor.items(author.get(SETUPS + "?q=evaporated")));
  }

  @Test
  void pagesOfAListHoldEachSetupOnce() {
    for (int i = 0; i < 7; i++) {
      created("Numbered print " + i);
    }
    double total = Told.number(Visitor.object(author.get(SETUPS)), "total");
    Set<Object> seen = new LinkedHashSet<>();
    String next = SETUPS + "?limit=3";
    while (!next.isEmpty()) {
      HttpResponse<String> page = author.get(next);
      Visitor.items(page).forEach(item -> assertTrue(seen.add(Told.at(item, "id"))));
      next =
          page.headers()
              .firstValue("Link")
              .map(link -> link.substring(1, link.indexOf('>')))
              .orElse("");
    }
    assertEquals(total, seen.size());
  }

  @Test
  void crewAndReadersReadButDoNotWrite() {
    String place = created("For all to read");
    author
        .with("If-Match", "\"1\"")
        .put(place + "/state", "{\"state\":\"proven\",\"archived\":false}");
    for (String email : List.of("crew@demo.example", "reader@demo.example")) {
      Visitor member = house.withToken(email);
      assertEquals(200, member.get(place).statusCode());
      assertEquals(
          403, member.post(SETUPS, Documents.json(Documents.setup("Not theirs"))).statusCode());
      assertEquals(403, member.with("If-Match", "\"1\"").delete(place).statusCode());
    }
  }

  @Test
  void aStudioThatOneDoesNotBelongToIsNotThere() {
    assertEquals(404, author.get("/api/studios/zzzz9zzzz9zzzz9z/setups").statusCode());
    assertEquals(
        404,
        author
            .post(
                "/api/studios/zzzz9zzzz9zzzz9z/setups",
                Documents.json(Documents.setup("Elsewhere")))
            .statusCode());
  }

  static Stream<Arguments> wrongDocuments() {
    Map<String, Object> setup = Documents.setup("Wrong somewhere");
    Map<String, Object> light = Documents.light("key");
    return Stream.of(
        wrong("an unknown field", Documents.with(setup, "flavour", "plain"), "/flavour"),
        wrong("a wrong type", Documents.with(setup, "moods", "quiet"), "/moods"),
        wrong("no lights", Documents.with(setup, "lights", List.of()), "/lights"),
        wrong(
            "f/0",
            Documents.with(setup, "exposure", Map.of("f_number", 0, "time", "1/125", "iso", 100)),
            "/exposure/f_number"),
        wrong(
            "a time that no shutter has",
            Documents.with(setup, "exposure", Map.of("f_number", 4, "time", "fast", "iso", 100)),
            "/exposure/time"),
        wrong(
            "a negative diameter",
            withLight(
                setup,
                Documents.with(
                    light,
                    "modifier",
                    Map.of(
                        "name",
                        "box",
                        "kind",
                        "softbox",
                        "face",
                        Map.of("shape", "disc", "diameter_m", -1)))),
            "/lights/0/modifier/face/diameter_m"),
        wrong(
            "a light upon its target",
            withLight(
                setup, Documents.with(light, "place", Map.of("x_m", 0, "y_m", 0, "z_m", 1.6))),
            "/lights/0/place"),
        wrong(
            "a light of which no level is known",
            withLight(setup, without(light, "stops_down")),
            "/lights/0/stops_down"),
        wrong(
            "two lights of one name",
            Documents.with(setup, "lights", List.of(light, light)),
            "/lights/1/id"),
        wrong("a missing title", without(setup, "title"), "/title"));
  }

  private static Arguments wrong(String what, Map<String, Object> document, String pointer) {
    return Arguments.argumentSet(what, document, pointer);
  }

  private static Map<String, Object> withLight(
      Map<String, Object> setup, Map<String, Object> light) {
    return Documents.with(setup, "lights", List.of(light));
  }

  private static Map<String, Object> without(Map<String, Object> object, String field) {
    Map<String, Object> other = Documents.with(object, field, "");
    other.remove(field);
    return other;
  }

  @ParameterizedTest
  @MethodSource("wrongDocuments")
  void aWrongDocumentIsAnsweredWithAPointerAndChangesNothing(
      Map<String, Object> document, String pointer) {
    double before = Told.number(Visitor.object(author.get(SETUPS)), "total");
    HttpResponse<String> answer = create(document);
    assertEquals(422, answer.statusCode(), answer.body());
    assertEquals(
        "application/problem+json",
        answer.headers().firstValue("Content-Type").orElseThrow().replaceAll(";.*", ""));
    List<?> errors = Told.list(Visitor.object(answer), "errors");
    assertTrue(
        errors.stream().anyMatch(error -> pointer.equals(Told.at(error, "pointer"))),
        answer.body());
    assertEquals(before, Told.number(Visitor.object(author.get(SETUPS)), "total"));
  }

  /**
   * A sender that does not listen while it sends may be cut off before it hears the 413; BodiesTest
   * listens.
   */
  @Test
  void aBodyOfFiftyMegabytesIsRefusedUnreadAndChangesNothing() {
    double before = Told.number(Visitor.object(author.get(SETUPS)), "total");
    byte[] large = new byte[50_000_000];
    try {
      HttpResponse<String> answer =
          author
              .with("Content-Type", "application/json")
              .send("POST", SETUPS, BodyPublishers.ofByteArray(large));
      assertEquals(413, answer.statusCode());
    } catch (UncheckedIOException cutOff) {
      // Refused as well: nothing must have come of it.
    }
    assertEquals(before, Told.number(Visitor.object(author.get(SETUPS)), "total"));
  }

  @Test
  void brokenEncodingAndBrokenJsonAreTheSendersFault() {
    byte[] notUtf8 = {'{', '"', (byte) 0xC3, (byte) 0x28, '"', ':', '1', '}'};
    Visitor sender = author.with("Content-Type", "application/json");
    assertEquals(
        400, sender.send("POST", SETUPS, BodyPublishers.ofByteArray(notUtf8)).statusCode());
    assertEquals(400, author.post(SETUPS, "{\"title\": ").statusCode());
    assertEquals(400, author.post(SETUPS, "").statusCode());
  }

  @Test
  void unknownSearchPartsAndLimitsOutOfBoundsAreNamed() {
    for (String query : List.of("limit=0", "limit=101", "limit=many", "colour=blue", "cursor=x")) {
      HttpResponse<String> answer = author.get(SETUPS + "?" + query);
      assertEquals(422, answer.statusCode(), query);
      String pointer = "/" + query.substring(0, query.indexOf('='));
      assertTrue(answer.body().contains("\"pointer\":\"" + pointer + "\""), answer.body());
    }
  }

  @Test
  void twoSetupsHaveDifferentIds() {
    assertNotEquals(created("One of two"), created("Two of two"));
  }
}
