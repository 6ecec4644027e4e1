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
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

/** One setup, which is read in the step that looks who comes: the same for everybody as ever. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SetupAtAGlanceTest {

  private static final String SETUPS = "/api/studios/demo/setups";
  private static final String NOWHERE = "/zzzzzzzzzzzzzzzz";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor author;
  private Visitor reader;

  @BeforeAll
  void membersComeWithTokens() {
    author = house.withToken("author@demo.example");
    reader = house.withToken("reader@demo.example");
  }

  private static Map<?, ?> told(int status, HttpResponse<String> answer) {
    assertEquals(status, answer.statusCode(), answer.body());
    return Visitor.object(answer);
  }

  private String created(Visitor by, String query) {
    HttpResponse<String> answer =
        by.post(SETUPS + query, Documents.json(Documents.setup("At a glance")));
    assertEquals(201, answer.statusCode(), answer.body());
    return answer.headers().firstValue("Location").orElseThrow();
  }

  @Test
  void everySetupIsToldAsItsLastRevisionIs() {
    List<?> found = Visitor.items(author.get(SETUPS + "?limit=100"));
    assertTrue(found.size() > 5);
    for (Object one : found) {
      String path = SETUPS + "/" + Told.at(one, "id");
      Map<?, ?> now = told(200, author.get(path));
      Map<?, ?> last =
          told(200, author.get(path + "/revisions/" + (int) Told.number(one, "revision")));
      assertEquals(Told.at(last, "document"), Told.at(now, "document"));
      assertEquals(Told.at(last, "changed_by"), Told.at(now, "changed_by"));
      assertEquals(Told.at(last, "changed_at"), Told.at(now, "changed_at"));
      assertEquals(Told.at(one, "state"), Told.at(now, "state"));
    }
  }

  @Test
  void itIsToldAsItIsToldToWhoeverMadeIt() {
    HttpResponse<String> made =
        author.post(SETUPS, Documents.json(Documents.setup("Told to its maker")));
    String path = made.headers().firstValue("Location").orElseThrow();
    assertEquals(told(201, made), told(200, author.get(path)));
    assertEquals(
        told(200, house.withToken("owner@demo.example").get(path)),
        told(200, house.signedIn("author@demo.example").get(path)));
  }

  @Test
  void itTellsWhatItWasMadeFromToWhoMaySeeThat() {
    String proven = "{\"state\":\"proven\",\"archived\":false}";
    String draft = created(author, "");
    String id = draft.substring(draft.lastIndexOf('/') + 1);
    String child = created(author, "?parent=" + id);
    told(200, author.with("If-Match", "\"1\"").put(child + "/state", proven));

    assertEquals(id, Told.at(told(200, author.get(child)), "parent", "id"));
    assertFalse(told(200, reader.get(child)).containsKey("parent"));
    told(404, reader.get(draft));
  }

  @Test
  void whoIsNobodyLearnsNothingNotEvenWhetherItIsThere() {
    String path = created(author, "");
    for (Visitor nobody :
        List.of(
            house.visitor(),
            house.visitor().with("Authorization", "Bearer nothing"),
            house.visitor().with("Cookie", "lampwright_session=nothing"),
            house.signedIn("author@demo.example").with("Authorization", "Bearer nothing"))) {
      for (String any : List.of(path, SETUPS + NOWHERE, SETUPS + "/x", "/api/studios/x/setups/x")) {
        told(401, nobody.get(any));
      }
    }
  }

  @Test
  void whoBelongsElsewhereFindsNothing() {
    String path = created(author, "");
    told(404, author.get(SETUPS + NOWHERE));
    told(404, author.get(SETUPS + "/x"));
    told(404, author.get(path.replace("/demo/", "/other/")));
    String only = "{\"name\":\"For another\",\"studio\":\"demo\",\"at_most\":\"reader\"}";
    Visitor little =
        house
            .visitor()
            .with(
                "Authorization",
                "Bearer "
                    + Told.at(
                        told(201, house.signedIn("author@demo.example").post("/api/tokens", only)),
                        "token"));
    told(404, little.get(path));
    told(200, author.get(path));
  }

  @Test
  void whatWasToldBeforeIsToldNoLongerThanItHolds() throws Exception {
    String path = created(author, "");
    Map<?, ?> before = told(200, author.get(path));
    assertEquals(before, told(200, author.get(path)));
    told(
        200,
        author.with("If-Match", "\"1\"").put(path, Documents.json(Documents.setup("Told anew"))));
    assertEquals("Told anew", Told.at(told(200, author.get(path)), "document", "title"));

    String id = path.substring(path.lastIndexOf('/') + 1);
    house
        .database()
        .sqlAsSuperuser(
            "update lampwright.setup set changed_at = changed_at + interval '1 second', document ="
                + " jsonb_set(document, '{title}', '\"Another in its place\"') where id = '"
                + id
                + "'",
            "select 1");
    for (int twice = 0; twice < 2; twice++) {
      assertEquals(
          "Another in its place", Told.at(told(200, author.get(path)), "document", "title"));
    }
  }

  @Test
  void whatIsKnownIsNotSentAgain() {
    String path = created(author, "");
    assertEquals(304, author.with("If-None-Match", "\"1\"").get(path).statusCode());
    assertEquals(304, author.with("If-None-Match", "W/\"1\"").get(path).statusCode());
    assertEquals(304, author.with("If-None-Match", "\"7\", \"1\"").get(path).statusCode());
    assertEquals(304, author.with("If-None-Match", "*").get(path).statusCode());
    told(200, author.with("If-None-Match", "\"2\"").get(path));
    told(200, author.with("If-None-Match", "1").get(path));
    told(401, house.visitor().with("If-None-Match", "\"1\"").get(path));
    told(404, reader.with("If-None-Match", "\"1\"").get(path));
  }
}
