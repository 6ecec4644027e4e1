package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.document.Json;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

/** A setup made from another, and what was really used of it, as a program asks for them. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class UsedOverRestTest {

  private static final String SETUPS = "/api/studios/demo/setups";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor author;

  @BeforeAll
  void anAuthorComesWithAToken() {
    author = house.withToken("author@demo.example");
  }

  private String created(String query, Map<String, Object> document) {
    HttpResponse<String> answer = author.post(SETUPS + query, Documents.json(document));
    assertEquals(201, answer.statusCode(), answer.body());
    return String.valueOf(Told.at(Visitor.object(answer), "id"));
  }

  private String created(String title) {
    return created("", Documents.setup(title));
  }

  private Map<?, ?> read(String path) {
    HttpResponse<String> answer = author.get(SETUPS + "/" + path);
    assertEquals(200, answer.statusCode(), answer.body());
    return Visitor.object(answer);
  }

  private HttpResponse<String> tell(String id, int revision, Map<String, Object> used) {
    return author
        .with("If-Match", "\"" + revision + "\"")
        .post(SETUPS + "/" + id + "/used", Json.print(used));
  }

  private static Map<String, Object> ofKey(String field, Object value) {
    return Map.of("lights", List.of(Map.of("light", "key", field, value)));
  }

  private static void isRefused(HttpResponse<String> answer, int status, String pointer) {
    assertEquals(status, answer.statusCode(), answer.body());
    assertEquals(pointer, Told.at(Visitor.object(answer), "errors", 0, "pointer"));
  }

  @Test
  void aSetupNamesWhatItWasMadeFromAndThatListsIt() {
    String parent = created("Quay with five heads");
    author
        .with("If-Match", "\"1\"")
        .put(SETUPS + "/" + parent, Documents.json(Documents.setup("Quay, told better")));
    String now = created("?parent=" + parent, Documents.setup("Quay with two heads"));
    String then =
        created("?parent=" + parent + "&parent_revision=1", Documents.setup("Quay with one head"));
    assertEquals(
        Map.of("id", parent, "revision", 2.0, "title", "Quay, told better"),
        read(now).get("parent"));
    assertEquals(
        Map.of("id", parent, "revision", 1.0, "title", "Quay with five heads"),
        read(then).get("parent"));
    assertFalse(read(parent).containsKey("parent"));
    List<?> children = Told.list(read(parent + "/children"), "items");
    assertEquals(List.of(then, now), children.stream().map(c -> Told.at(c, "id")).toList());
    assertEquals("Quay with one head", Told.at(children, 0, "title"));
    assertEquals(1.0, Told.at(children, 0, "parent_revision"));
  }

  @Test
  void aChangeOfTheChildLeavesItsParentAndAChangeOfTheParentLeavesTheChild() {
    String parent = created("Steps in the rain");
    String child = created("?parent=" + parent, Documents.setup("Steps, small kit"));
    HttpResponse<String> changed =
        author
            .with("If-Match", "\"1\"")
            .put(SETUPS + "/" + child, Documents.json(Documents.setup("Steps, smaller kit")));
    assertEquals(parent, Told.at(Visitor.object(changed), "parent", "id"));
    author.with("If-Match", "\"1\"").delete(SETUPS + "/" + parent);
    assertEquals("Steps in the rain", Told.at(read(child), "parent", "title"));
    assertEquals(404, author.get(SETUPS + "/" + parent + "/children").statusCode());
  }

  @Test
  void aParentThatTheStudioDoesNotHaveIsRefusedAndNothingIsKept() {
    String document = Documents.json(Documents.setup("Nobody's child"));
    double before = Told.number(Visitor.object(author.get(SETUPS)), "total");
    String deleted = created("Gone");
    author.with("If-Match", "\"1\"").delete(SETUPS + "/" + deleted);
    for (String parent : List.of("zzzz9zzzz9zzzz9z", "", "no%20id", deleted)) {
      isRefused(author.post(SETUPS + "?parent=" + parent, document), 422, "/parent");
    }
    String parent = created("There");
    for (String revision : List.of("2", "0", "-1", "one", "")) {
      isRefused(
          author.post(SETUPS + "?parent=" + parent + "&parent_revision=" + revision, document),
          422,
          "/parent_revision");
    }
    isRefused(author.post(SETUPS + "?parent_revision=1", document), 422, "/parent_revision");
    assertEquals(before + 1, Told.number(Visitor.object(author.get(SETUPS)), "total"));
  }

  @Test
  void whatWasUsedIsTheNextRevisionAndIsComparedInStops() {
    String id = created("Dune at noon");
    HttpResponse<String> told =
        tell(
            id,
            1,
            Map.of(
                "lights",
                List.of(Map.of("light", "key", "stops_down", 3.5)),
                "exposure",
                Map.of("iso", 200.0),
                "note",
                "The fog came."));
    assertEquals(200, told.statusCode(), told.body());
    assertEquals("\"2\"", told.headers().firstValue("ETag").orElseThrow());
    Map<?, ?> answer = Visitor.object(told);
    assertEquals(2.0, answer.get("revision"));
    assertEquals(1.0, answer.get("planned_revision"));
    assertEquals("The fog came.", answer.get("note"));
    assertEquals(1, Told.number(answer, "camera", "iso_stops"), 1e-9);
    // Half a stop less power, and ISO 200 in place of 100 makes the picture a stop brighter.
    assertEquals(-0.5, Told.number(answer, "compared", 0, "power_difference_stops"), 1e-9);
    assertEquals(-0.5, Told.number(answer, "compared", 0, "difference_stops"), 1e-9);
    assertEquals(0.5, Told.number(answer, "compared", 0, "from_shooting_difference_stops"), 1e-9);
    assertEquals(answer, read(id + "/used"));
    assertEquals(3.5, Told.at(read(id), "document", "lights", 0, "stops_down"));
    assertEquals(200.0, Told.at(read(id), "document", "exposure", "iso"));
  }

  @Test
  void aReadingIsComparedWithWhatThePlanExpectsOfTheMeter() {
    // Guide number 64 m at 2 m and three stops down: f/32 less three stops is f/11.3.
    String id = created("Wall at night");
    Map<?, ?> answer = Visitor.object(tell(id, 1, ofKey("reading", Map.of("f_number", 8.0))));
    double expected = Told.number(answer, "compared", 0, "planned_f_number");
    assertEquals(128, expected * expected, 1e-6);
    assertEquals(-1, Told.number(answer, "compared", 0, "difference_stops"), 1e-9);
    assertEquals("computed", Told.at(answer, "compared", 0, "planned_known"));
    assertEquals("metered", Told.at(answer, "compared", 0, "used_known"));
  }

  @Test
  void whatIsToldLaterIsHeldAgainstTheSamePlanUntilSomebodyPlansAnew() {
    String id = created("Told in two parts");
    tell(id, 1, ofKey("stops_down", 4.0));
    Map<?, ?> both = Visitor.object(tell(id, 2, Map.of("exposure", Map.of("f_number", 8.0))));
    assertEquals(1.0, both.get("planned_revision"));
    assertEquals(-1, Told.number(both, "compared", 0, "difference_stops"), 1e-9);
    author
        .with("If-Match", "\"3\"")
        .put(SETUPS + "/" + id, Documents.json(Documents.setup("Planned anew")));
    HttpResponse<String> before = author.get(SETUPS + "/" + id + "/used");
    assertEquals(3.0, Visitor.object(before).get("revision"));
    assertEquals("\"4\"", before.headers().firstValue("ETag").orElseThrow());
    Map<?, ?> anew = Visitor.object(tell(id, 4, Map.of()));
    assertEquals(4.0, anew.get("planned_revision"));
    assertEquals(true, Told.at(anew, "compared", 0, "as_planned"));
  }

  @Test
  void aStaleRevisionOrAnUnknownLightIsRefusedAndChangesNothing() {
    String id = created("Held to its revision");
    String path = SETUPS + "/" + id + "/used";
    assertEquals(404, author.get(path).statusCode());
    assertEquals(428, author.post(path, "{}").statusCode());
    assertEquals(412, tell(id, 7, Map.of()).statusCode());
    isRefused(
        tell(id, 1, Map.of("lights", List.of(Map.of("light", "moon", "stops_down", 1.0)))),
        422,
        "/lights/0/light");
    isRefused(tell(id, 1, ofKey("stops_down", 13.0)), 422, "/lights/0/stops_down");
    isRefused(tell(id, 1, Map.of("colour", "blue")), 422, "/colour");
    assertEquals(404, tell("zzzz9zzzz9zzzz9z", 1, Map.of()).statusCode());
    assertEquals(1.0, read(id).get("revision"));
  }

  @Test
  void crewReadWhatWasUsedButOnlyWhoMayChangeASetupTellsIt() {
    String id = created("For all to read");
    tell(id, 1, ofKey("stops_down", 4.0));
    Visitor crew = house.withToken("crew@demo.example");
    assertEquals(200, crew.get(SETUPS + "/" + id + "/used").statusCode());
    assertEquals(200, crew.get(SETUPS + "/" + id + "/children").statusCode());
    assertEquals(
        403, crew.with("If-Match", "\"2\"").post(SETUPS + "/" + id + "/used", "{}").statusCode());
  }
}
