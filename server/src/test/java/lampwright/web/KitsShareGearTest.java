package lampwright.web;

import static lampwright.web.GearForTests.GEAR;
import static lampwright.web.GearForTests.KITS;
import static lampwright.web.GearForTests.gear;
import static lampwright.web.GearForTests.head;
import static lampwright.web.GearForTests.id;
import static lampwright.web.GearForTests.kept;
import static lampwright.web.GearForTests.kitOf;
import static lampwright.web.GearForTests.octagon;
import static lampwright.web.GearForTests.pack;
import static lampwright.web.GearForTests.told;
import static lampwright.web.GearForTests.withPiece;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class KitsShareGearTest {

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor author;

  @BeforeAll
  void anAuthorComesWithAToken() {
    author = house.withToken("author@demo.example");
  }

  private HttpResponse<String> change(String place, int revision, Map<String, Object> document) {
    return author.with("If-Match", "\"" + revision + "\"").put(place, Documents.json(document));
  }

  private static Object firstPointer(HttpResponse<String> answer) {
    return Told.at(Visitor.object(answer), "errors", 0, "pointer");
  }

  @Test
  void aKitShowsWhatWasWrittenAndWhatItComesTo() {
    String shared = kept(author, GEAR, Documents.with(head("Shared A", 64), "count", 3.0));
    Map<String, Object> written = Documents.kit("Half and half");
    written.put("gear", List.of(Map.of("id", id(shared), "count", 2.0)));
    Map<?, ?> kit = told(author, kept(author, KITS, written));
    assertEquals(2, Told.number(kit, "document", "gear", 0, "count"));
    assertEquals("200 W·s battery head", Told.at(kit, "resolved", "heads", 0, "head", "name"));
    assertEquals("Shared A", Told.at(kit, "resolved", "heads", 1, "head", "name"));
    assertEquals(2, Told.number(kit, "resolved", "heads", 1, "count"));
    assertFalse(((Map<?, ?>) Told.at(kit, "resolved")).containsKey("gear"));
    assertEquals(List.of(), kit.get("missing"));
    assertEquals("Half and half", Told.at(told(author, shared + "/kits"), "items", 0, "name"));
  }

  @Test
  void eachKindComesToItsPlaceInTheKit() {
    String[] all = {
      kept(
          author,
          GEAR,
          gear("body", Map.of("name", "B", "width_mm", 36.0, "height_mm", 24.0, "sync", "1/200"))),
      kept(author, GEAR, gear("lens", Map.of("name", "L", "focal_length_mm", 85.0))),
      kept(author, GEAR, head("H", 60)),
      kept(author, GEAR, pack("P")),
      kept(author, GEAR, octagon("M")),
      kept(author, GEAR, gear("gel", Map.of("name", "G", "shift_mired", 65.0, "loss_stops", 0.5))),
      kept(author, GEAR, gear("neutral_density", Map.of("name", "N", "loss_stops", 3.0))),
      kept(author, GEAR, gear("stand", Map.of("name", "S", "highest_m", 3.0)))
    };
    Object whole = Told.at(told(author, kept(author, KITS, kitOf("All", all))), "resolved");
    for (String list : List.of("bodies", "lenses", "neutral_densities")) {
      assertEquals(1, Told.list(whole, list).size(), list);
    }
    assertEquals("B", Told.at(whole, "bodies", 0, "name"));
    assertEquals("L", Told.at(whole, "lenses", 0, "name"));
    assertEquals("N", Told.at(whole, "neutral_densities", 0, "name"));
    for (String kind : List.of("head", "pack", "modifier", "gel", "stand")) {
      assertEquals(
          kind.substring(0, 1).toUpperCase(java.util.Locale.ROOT),
          Told.at(whole, kind + "s", 0, kind, "name"));
    }
  }

  @Test
  void moreThanIsInOrderIsMissingAndTheKitComesToWhatThereIs() {
    Map<String, Object> three =
        Documents.with(Documents.with(head("Worn", 64), "count", 3.0), "out_of_order", 1.0);
    String worn = kept(author, GEAR, three);
    Map<String, Object> written = kitOf("Wants three", worn);
    written.put("gear", List.of(Map.of("id", id(worn), "count", 3.0)));
    String place = kept(author, KITS, written);
    Map<?, ?> kit = told(author, place);
    assertEquals(2, Told.number(kit, "resolved", "heads", 0, "count"));
    assertEquals("/gear/0", Told.at(kit, "missing", 0, "pointer"));
    assertEquals(
        "Head \"Worn\": 3 asked for, 2 of 3 in order.", Told.at(kit, "missing", 0, "message"));

    assertEquals(200, change(worn, 1, Documents.with(three, "out_of_order", 3.0)).statusCode());
    assertFalse(
        ((Map<?, ?>) Told.at(told(author, place), "resolved")).containsKey("heads"), "all are out");
  }

  @Test
  void whatAKitComesToIsPartOfItsETag() {
    String shared = kept(author, GEAR, head("Tagged", 64));
    String place = kept(author, KITS, kitOf("Tagged kit", shared));
    assertEquals(304, author.with("If-None-Match", "\"1\"").get(place).statusCode());
    assertEquals(200, change(shared, 1, head("Tagged", 45)).statusCode());
    HttpResponse<String> now = author.with("If-None-Match", "\"1\"").get(place);
    assertEquals(200, now.statusCode());
    assertEquals(
        45,
        Told.number(
            Visitor.object(now), "resolved", "heads", 0, "head", "output", "guide_number_m"));
    assertEquals("\"2\"", now.headers().firstValue("ETag").orElseThrow());
    Map<String, Object> noted =
        Documents.with(
            head("Tagged", 45),
            "condition",
            List.of(Map.of("date", "2026-05-01", "note", "Dusty.")));
    assertEquals(200, change(shared, 2, noted).statusCode());
    assertEquals(
        304,
        author.with("If-None-Match", "\"2\"").get(place).statusCode(),
        "a note changes nothing of the kit");
  }

  @Test
  void aHeadHangsOnAPackOfTheStudioAndRestsWhileThatIsRepaired() {
    String store = kept(author, GEAR, pack("Generator"));
    String hanging = kept(author, GEAR, withPiece(head("Hanging", 64), "pack", "Generator"));
    HttpResponse<String> alone =
        author.post(KITS, Documents.json(kitOf("Without its pack", hanging)));
    assertEquals(422, alone.statusCode());
    assertEquals("/gear/0", firstPointer(alone));
    String place = kept(author, KITS, kitOf("With its pack", hanging, store));
    assertEquals(1, Told.list(told(author, place), "resolved", "heads").size());

    Map<String, Object> broken = Documents.with(pack("Generator"), "out_of_order", 1.0);
    assertEquals(200, change(store, 1, broken).statusCode());
    Map<?, ?> kit = told(author, place);
    assertFalse(((Map<?, ?>) Told.at(kit, "resolved")).containsKey("heads"));
    assertEquals(
        List.of("/gear/1", "/gear/0"),
        Told.list(kit, "missing").stream().map(line -> Told.at(line, "pointer")).toList());
  }

  @Test
  void aPairingNamesGearOfTheStudio() {
    String paired = kept(author, GEAR, head("Paired", 64));
    String box = kept(author, GEAR, octagon("Paired box"));
    Map<String, Object> written = kitOf("Pairs", paired, box);
    Map<String, Object> pairing =
        Map.of(
            "head",
            "Paired",
            "modifier",
            "Paired box",
            "reading",
            Map.of("f_number", 11.0, "distance_m", 2.0));
    written.put("pairings", List.of(pairing));
    String place = kept(author, KITS, written);
    assertEquals(1, Told.list(told(author, place), "resolved", "pairings").size());

    HttpResponse<String> renamed = change(paired, 1, head("Renamed", 64));
    assertEquals(409, renamed.statusCode(), renamed.body());
    assertTrue(renamed.body().contains("\\\"Pairs\\\""), renamed.body());
    assertEquals("Paired", Told.at(told(author, paired), "document", "head", "name"));

    assertEquals(409, author.with("If-Match", "\"1\"").delete(box).statusCode());
    Map<String, Object> repaired = Documents.with(octagon("Paired box"), "out_of_order", 1.0);
    assertEquals(200, change(box, 1, repaired).statusCode());
    assertFalse(
        ((Map<?, ?>) Told.at(told(author, place), "resolved")).containsKey("pairings"),
        "there is nothing to pair");
    assertEquals(1, Told.list(told(author, place), "document", "pairings").size());
  }

  @Test
  void twoOfOneNameInAKitAreRefusedBothWays() {
    String one = kept(author, GEAR, head("Twin", 64));
    String two = kept(author, GEAR, head("Twin", 45));
    HttpResponse<String> both = author.post(KITS, Documents.json(kitOf("Twins", one, two)));
    assertEquals(422, both.statusCode());
    assertEquals("/gear/1", firstPointer(both));
    String three = kept(author, GEAR, head("Cousin", 45));
    kept(author, KITS, kitOf("Cousins", one, three));
    HttpResponse<String> clash = change(three, 1, head("Twin", 45));
    assertEquals(409, clash.statusCode());
    assertTrue(clash.body().contains("\\\"Cousins\\\""), clash.body());
  }

  @Test
  void gearThatIsNotThereIsPointedAt() {
    String gone = kept(author, GEAR, head("Gone", 64));
    assertEquals(204, author.with("If-Match", "\"1\"").delete(gone).statusCode());
    for (String address : List.of("/zzzz9zzzz9zzzz9z", gone)) {
      HttpResponse<String> answer =
          author.post(KITS, Documents.json(kitOf("Empty-handed", address)));
      assertEquals(422, answer.statusCode());
      assertEquals("/gear/0/id", firstPointer(answer));
    }
    HttpResponse<String> twice =
        author.post(KITS, Documents.json(kitOf("Twice", "/zzzz9zzzz9zzzz9z", "/zzzz9zzzz9zzzz9z")));
    assertEquals("/gear/1/id", firstPointer(twice));
    assertEquals(422, author.post(KITS, Documents.json(kitOf("No id", "/NO"))).statusCode());
  }

  @Test
  void aKitOfSharedHeadsHoldsNoMoreThanOneOfItsOwn() {
    List<Map<String, Object>> uses = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      String place = kept(author, GEAR, Documents.with(head("Crowd " + i, 64), "count", 99.0));
      uses.add(Map.of("id", id(place), "count", i == 2 ? 3.0 : 99.0));
    }
    Map<String, Object> kit = kitOf("Hire house");
    kit.put("gear", uses);
    HttpResponse<String> answer = author.post(KITS, Documents.json(kit));
    assertEquals(422, answer.statusCode());
    assertEquals("/gear/2", firstPointer(answer));
    assertTrue(answer.body().contains("201 in all"), answer.body());
  }

  @Test
  void gearThatOnlyDeletedKitsUsedCanBeTakenAway() {
    String lonely = kept(author, GEAR, head("Lonely", 64));
    String place = kept(author, KITS, kitOf("Lonely kit", lonely));
    HttpResponse<String> clash = author.with("If-Match", "\"1\"").delete(lonely);
    assertEquals(409, clash.statusCode());
    assertTrue(clash.body().contains("\\\"Lonely kit\\\""), clash.body());
    assertEquals(204, author.with("If-Match", "\"1\"").delete(place).statusCode());
    assertEquals(204, author.with("If-Match", "\"1\"").delete(lonely).statusCode());
  }

  /** Each change is right alone; both together would leave a kit with two heads of one name. */
  @Test
  void twoPeopleCannotPassOneAnother() throws Exception {
    try (ExecutorService people = Executors.newFixedThreadPool(2)) {
      for (int round = 0; round < 15; round++) {
        String left = kept(author, GEAR, head("Left " + round, 64));
        String right = kept(author, GEAR, head("Right " + round, 64));
        String kit = kept(author, KITS, kitOf("Both " + round, left, right));
        Map<String, Object> same = head("Same " + round, 64);
        List<Callable<Integer>> changes =
            List.of(
                () -> change(left, 1, same).statusCode(),
                () -> change(right, 1, same).statusCode());
        assertEquals(List.of(200, 409), sorted(people.invokeAll(changes)), "round " + round);
        assertEquals(2, Told.list(told(author, kit), "resolved", "heads").size());
      }
    }
  }

  /** Whichever comes first, there is never a kit that takes gear which is gone. */
  @Test
  void gearIsNotTakenAwayWhileAKitIsBegunWithIt() throws Exception {
    try (ExecutorService people = Executors.newFixedThreadPool(2)) {
      for (int round = 0; round < 15; round++) {
        String place = kept(author, GEAR, head("Wanted " + round, 64));
        String kit = Documents.json(kitOf("Begun " + round, place));
        List<Callable<Integer>> changes =
            List.of(
                () -> author.with("If-Match", "\"1\"").delete(place).statusCode(),
                () -> author.post(KITS, kit).statusCode());
        List<Integer> outcome = sorted(people.invokeAll(changes));
        assertTrue(
            outcome.equals(List.of(201, 409)) || outcome.equals(List.of(204, 422)),
            "round " + round + ": " + outcome);
      }
    }
  }

  private static List<Integer> sorted(List<Future<Integer>> outcomes) throws Exception {
    List<Integer> codes = new ArrayList<>();
    for (Future<Integer> outcome : outcomes) {
      codes.add(outcome.get());
    }
    return codes.stream().sorted().toList();
  }
}
