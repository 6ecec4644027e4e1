package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class KitsOverRestTest {

  private static final String KITS = "/api/studios/demo/kits";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor author;

  @BeforeAll
  void anAuthorComesWithAToken() {
    author = house.withToken("author@demo.example");
  }

  @Test
  void aKitIsMadeReadChangedAndTakenAway() {
    HttpResponse<String> made = author.post(KITS, Documents.json(Documents.kit("Borrowed head")));
    assertEquals(201, made.statusCode(), made.body());
    String place = made.headers().firstValue("Location").orElseThrow();
    assertEquals(Visitor.object(made), Visitor.object(author.get(place)));

    String other = Documents.json(Documents.kit("Borrowed head, returned"));
    assertEquals(428, author.put(place, other).statusCode());
    HttpResponse<String> changed = author.with("If-Match", "\"1\"").put(place, other);
    assertEquals(200, changed.statusCode());
    assertEquals("\"2\"", changed.headers().firstValue("ETag").orElseThrow());
    assertEquals(412, author.with("If-Match", "\"1\"").put(place, other).statusCode());

    assertEquals(204, author.with("If-Match", "\"2\"").delete(place).statusCode());
    assertEquals(404, author.get(place).statusCode());
  }

  @Test
  void theListNamesEachKitWithItsHeads() {
    List<?> kits = Visitor.items(author.get(KITS));
    assertTrue(kits.size() >= 2);
    assertTrue(kits.stream().allMatch(kit -> Told.number(kit, "heads") >= 1));
  }

  @Test
  void aWrongHeadIsPointedAt() {
    Map<String, Object> kit =
        Documents.with(
            Documents.kit("Wrong"),
            "heads",
            List.of(Map.of("head", Map.of("name", "head", "energy_ws", -400))));
    HttpResponse<String> answer = author.post(KITS, Documents.json(kit));
    assertEquals(422, answer.statusCode());
    assertTrue(answer.body().contains("/heads/0/head/energy_ws"), answer.body());
    assertTrue(answer.body().contains("/heads/0/head/output"), answer.body());
  }

  @Test
  void theCrewReadsKitsButDoesNotChangeThem() {
    Visitor crew = house.withToken("crew@demo.example");
    assertEquals(200, crew.get(KITS).statusCode());
    assertEquals(403, crew.post(KITS, Documents.json(Documents.kit("Theirs"))).statusCode());
  }

  @Test
  void aKitOfMoreHeadsThanAVanHoldsIsRefusedBecauseEachIsTriedOnEachLight() {
    Map<String, Object> kit = Documents.kit("Every head of the hire house");
    Object head = Told.at(kit, "heads", 0, "head");
    List<?> many =
        List.of(
            Map.of("count", 99, "head", head),
            Map.of("count", 99, "head", head),
            Map.of("count", 3, "head", head));
    HttpResponse<String> answer =
        author.post(KITS, Documents.json(Documents.with(kit, "heads", many)));
    assertEquals(422, answer.statusCode());
    assertTrue(
        answer.body().contains("Heads (201 in all) must be at most 200 in all."), answer.body());
  }
}
