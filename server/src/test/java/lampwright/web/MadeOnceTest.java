package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.picture.Drawn;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The same request sent again under its key makes nothing twice, as
 * draft-ietf-httpapi-idempotency-key-header wants it (revision 08 of October 2026, read in
 * ANCHORS.md section 4.1; the draft itself from memory).
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class MadeOnceTest {

  private static final String STUDIO = "/api/studios/demo";
  private static final String KITS = STUDIO + "/kits";
  private static final String KEY = "Idempotency-Key";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor author;

  @BeforeAll
  void anAuthorComesWithAToken() {
    author = house.withToken("author@demo.example");
  }

  private static String place(HttpResponse<String> answer) {
    assertEquals(201, answer.statusCode(), answer.body());
    return answer.headers().firstValue("Location").orElseThrow();
  }

  private long kitsCalled(String name) {
    return Visitor.items(author.get(KITS)).stream()
        .filter(kit -> Told.at(kit, "name").equals(name))
        .count();
  }

  @Test
  void eachKindOfThingIsMadeOnceUnderItsKey() {
    String setup =
        place(author.post(STUDIO + "/setups", Documents.json(Documents.setup("To be noted"))));
    List<List<String>> requests =
        List.of(
            List.of(STUDIO + "/setups", Documents.json(Documents.setup("Once"))),
            List.of(setup + "/copies", "{\"title\":\"Once more\"}"),
            List.of(KITS, Documents.json(Documents.kit("Once"))),
            List.of(STUDIO + "/gear", Documents.json(GearForTests.head("Once", 64))),
            List.of(STUDIO + "/locations", Documents.json(Documents.location("Once"))),
            List.of(setup + "/notes", "{\"text\":\"Once\"}"));
    for (List<String> request : requests) {
      Visitor sender = author.with(KEY, "\"" + request.getFirst() + "\"");
      HttpResponse<String> first = sender.post(request.getFirst(), request.getLast());
      HttpResponse<String> again = sender.post(request.getFirst(), request.getLast());
      assertEquals(place(first), place(again));
      assertEquals(Visitor.object(first), Visitor.object(again));
      assertEquals(first.headers().firstValue("ETag"), again.headers().firstValue("ETag"));
      assertNotEquals(place(first), place(author.post(request.getFirst(), request.getLast())));
    }
  }

  @Test
  void aPictureIsKeptOnceUnderItsKey() {
    String setup =
        place(author.post(STUDIO + "/setups", Documents.json(Documents.setup("Pictured once"))));
    byte[] file = Drawn.jpeg(Drawn.scene(60, 40), 0.9);
    Visitor sender = author.with(KEY, "\"a-picture\"").with("Content-Type", "image/jpeg");
    String path = setup + "/pictures?kind=final";
    String first = place(sender.send("POST", path, BodyPublishers.ofByteArray(file)));
    assertEquals(first, place(sender.send("POST", path, BodyPublishers.ofByteArray(file))));
    assertEquals(1, Visitor.items(author.get(setup + "/pictures")).size());
    byte[] other = Drawn.jpeg(Drawn.scene(61, 40), 0.9);
    assertEquals(422, sender.send("POST", path, BodyPublishers.ofByteArray(other)).statusCode());
    assertEquals(1, Visitor.items(author.get(setup + "/pictures")).size());
  }

  @Test
  void twentyAtOnceUnderOneKeyMakeOne() throws Exception {
    String kit = Documents.json(Documents.kit("Asked for at once"));
    Visitor sender = author.with(KEY, "\"at-once\"");
    List<Callable<String>> twenty = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      twenty.add(() -> place(sender.post(KITS, kit)));
    }
    Set<String> places;
    try (ExecutorService threads = Executors.newVirtualThreadPerTaskExecutor()) {
      places =
          threads.invokeAll(twenty).stream().map(Future::resultNow).collect(Collectors.toSet());
    }
    assertEquals(1, places.size());
    assertEquals(1, kitsCalled("Asked for at once"));
  }

  @Test
  void aKeyTakenForAnotherRequestIsToldAndMakesNothing() {
    Visitor sender = author.with(KEY, "\"taken\"");
    place(sender.post(KITS, Documents.json(Documents.kit("The first"))));
    HttpResponse<String> other = sender.post(KITS, Documents.json(Documents.kit("The second")));
    assertEquals(422, other.statusCode());
    assertEquals("/problems/key-reused", Visitor.object(other).get("type"));
    assertEquals(0, kitsCalled("The second"));
    assertEquals(
        422,
        sender
            .post(STUDIO + "/locations", Documents.json(Documents.location("The third")))
            .statusCode());
  }

  @Test
  void aRefusedRequestLeavesItsKeyFree() {
    Visitor sender = author.with(KEY, "\"after-a-mistake\"");
    assertEquals(422, sender.post(KITS, "{}").statusCode());
    place(sender.post(KITS, Documents.json(Documents.kit("Mended"))));
    assertEquals(1, kitsCalled("Mended"));
  }

  @Test
  void whatWasTakenAwaySinceIsNotMadeAnew() {
    String kit = Documents.json(Documents.kit("Gone"));
    Visitor sender = author.with(KEY, "\"gone\"");
    String place = place(sender.post(KITS, kit));
    author.with("If-Match", "\"1\"").delete(place);
    HttpResponse<String> again = sender.post(KITS, kit);
    assertEquals(409, again.statusCode(), again.body());
    assertEquals(0, kitsCalled("Gone"));
  }

  @Test
  void theAnswerShowsTheThingAsItIsNow() {
    Visitor sender = author.with(KEY, "\"as-it-is-now\"");
    String before = Documents.json(Documents.kit("As it was"));
    String place = place(sender.post(KITS, before));
    author.with("If-Match", "\"1\"").put(place, Documents.json(Documents.kit("As it is")));
    HttpResponse<String> again = sender.post(KITS, before);
    assertEquals(place, place(again));
    assertEquals("\"2\"", again.headers().firstValue("ETag").orElseThrow());
    assertEquals("As it is", Told.at(Visitor.object(again), "document", "name"));
  }

  @Test
  void anotherPersonsKeysAreTheirOwn() {
    String kit = Documents.json(Documents.kit("Of two people"));
    String mine = place(author.with(KEY, "\"both\"").post(KITS, kit));
    String theirs =
        place(house.withToken("owner@demo.example").with(KEY, "\"both\"").post(KITS, kit));
    assertNotEquals(mine, theirs);
  }

  @ParameterizedTest
  @ValueSource(strings = {"\"\"", "a b", "\"open", "\"quo\"te\"", "kéy"})
  void whatIsNoKeyIsRefused(String header) {
    HttpResponse<String> answer =
        author.with(KEY, header).post(KITS, Documents.json(Documents.kit("No key")));
    assertEquals(400, answer.statusCode(), answer.body());
    assertEquals(0, kitsCalled("No key"));
  }

  @Test
  void aKeyLongerThanIsKeptIsRefused() {
    HttpResponse<String> answer =
        author
            .with(KEY, "\"" + "k".repeat(256) + "\"")
            .post(KITS, Documents.json(Documents.kit("No key")));
    assertEquals(400, answer.statusCode(), answer.body());
  }
}
