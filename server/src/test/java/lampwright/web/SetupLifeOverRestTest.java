package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

/** A setup's history, the way back, its state and copies of it, as a program asks for them. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SetupLifeOverRestTest {

  private static final String SETUPS = "/api/studios/demo/setups";
  private static final String PROVEN = "{\"state\":\"proven\",\"archived\":false}";
  private static final String ARCHIVED = "{\"state\":\"proven\",\"archived\":true}";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor author;
  private Visitor crew;
  private Visitor reader;

  @BeforeAll
  void membersComeWithTokens() {
    author = house.withToken("author@demo.example");
    crew = house.withToken("crew@demo.example");
    reader = house.withToken("reader@demo.example");
  }

  private Visitor on(int revision) {
    return author.with("If-Match", "\"" + revision + "\"");
  }

  private static String document(String title) {
    return Documents.json(Documents.setup(title));
  }

  private String created(String title) {
    HttpResponse<String> answer = author.post(SETUPS + "?message=Begun", document(title));
    assertEquals(201, answer.statusCode(), answer.body());
    return answer.headers().firstValue("Location").orElseThrow();
  }

  private static Map<?, ?> done(int status, HttpResponse<String> answer) {
    assertEquals(status, answer.statusCode(), answer.body());
    return Visitor.object(answer);
  }

  private static void isRefused(int status, String pointer, HttpResponse<String> answer) {
    assertEquals(pointer, Told.at(done(status, answer), "errors", 0, "pointer"));
  }

  private List<Object> messages(String path) {
    List<Object> messages = new ArrayList<>();
    Visitor.items(author.get(path + "/revisions"))
        .forEach(line -> messages.add(Told.at(line, "message")));
    return messages;
  }

  @Test
  void everyChangeKeepsItsMessage() {
    String path = created("Told why");
    on(1).put(path + "?message=Key%20nearer", document("Told why"));
    on(2).post(path + "/used?message=As%20metered", "{}");
    on(3).put(path + "/state?message=Shot%20twice", PROVEN);
    on(4).delete(path + "?message=Not%20ours");
    assertEquals(
        List.of("Not ours", "Shot twice", "As metered", "Key nearer", "Begun"), messages(path));
  }

  @Test
  void aMessageIsOfAtMostAThousandCharactersAndATooLongOneChangesNothing() {
    String path = created("Told at length");
    // Beyond the basic plane, so that characters and UTF-16 units differ.
    String longest = "%F0%9F%92%A1".repeat(1_000);
    done(200, on(1).put(path + "?message=" + longest, document("Told at length")));
    String tooLong = "?message=" + "a".repeat(1_001);
    isRefused(422, "/message", on(2).put(path + tooLong, document("No")));
    isRefused(422, "/message", on(2).delete(path + tooLong));
    isRefused(422, "/message", on(2).post(path + "/used" + tooLong, "{}"));
    isRefused(422, "/message", author.post(SETUPS + tooLong, document("No")));
    assertEquals(2, Visitor.items(author.get(path + "/revisions")).size());
  }

  @Test
  void aNoteOfWhatWasUsedAndAMessageAreNotBothTold() {
    String path = created("Told twice");
    isRefused(
        422, "/message", on(1).post(path + "/used?message=Fog", "{\"note\":\"The fog came.\"}"));
  }

  @Test
  void aHistoryIsPagedNewestFirst() {
    String path = created("Seven times");
    for (int revision = 1; revision < 7; revision++) {
      on(revision).put(path, document("Seven times, " + revision));
    }
    List<Object> seen = new ArrayList<>();
    String next = path + "/revisions?limit=3";
    while (!next.isEmpty()) {
      HttpResponse<String> page = author.get(next);
      Visitor.items(page).forEach(line -> seen.add(Told.at(line, "revision")));
      next =
          page.headers()
              .firstValue("Link")
              .map(link -> link.substring(1, link.indexOf('>')))
              .orElse("");
    }
    assertEquals(List.of(7.0, 6.0, 5.0, 4.0, 3.0, 2.0, 1.0), seen);
    Map<?, ?> newest = (Map<?, ?>) Visitor.items(author.get(path + "/revisions")).getFirst();
    assertEquals("Ivo Castellane", newest.get("changed_by"));
    assertEquals("Seven times, 6", newest.get("title"));
    assertEquals("draft", newest.get("state"));
    assertEquals(false, newest.get("deleted"));
    for (String wrong : List.of("limit=0", "limit=101", "limit=many", "cursor=0", "cursor=x")) {
      isRefused(
          422,
          "/" + wrong.substring(0, wrong.indexOf('=')),
          author.get(path + "/revisions?" + wrong));
    }
  }

  @Test
  void aRevisionNeverChangesAndIsNotSentAgain() {
    String path = created("As it was");
    Map<?, ?> first = done(200, author.get(path + "/revisions/1"));
    on(1).put(path, document("As it is"));
    on(2).delete(path);
    HttpResponse<String> again = author.get(path + "/revisions/1");
    assertEquals(first, Visitor.object(again));
    assertEquals("As it was", Told.at(first, "document", "title"));
    assertEquals("\"1\"", again.headers().firstValue("ETag").orElseThrow());
    assertEquals(
        304, author.with("If-None-Match", "\"1\"").get(path + "/revisions/1").statusCode());
    for (String none : List.of("0", "4", "-1", "one", "99999999999")) {
      assertEquals(404, author.get(path + "/revisions/" + none).statusCode(), none);
    }
  }

  @Test
  void theHistoryOfADeletedSetupIsThereForWhoMayWriteItOnly() {
    String path = created("Taken away");
    on(1).put(path + "/state", PROVEN);
    on(2).delete(path);
    for (Visitor other : List.of(crew, reader)) {
      assertEquals(404, other.get(path + "/revisions").statusCode());
      assertEquals(404, other.get(path + "/revisions/1").statusCode());
    }
    HttpResponse<String> history = author.get(path + "/revisions");
    assertEquals(true, Told.at(Visitor.items(history), 0, "deleted"));
    assertEquals("\"3\"", history.headers().firstValue("ETag").orElseThrow());
  }

  @Test
  void whatWasIsBroughtBackAsANewRevision() {
    String path = created("Zenith at first");
    on(1).put(path, document("Nadir since"));
    HttpResponse<String> restored =
        on(2).post(path + "/restorations?message=It%20was%20better", "{\"revision\":1}");
    assertEquals("Zenith at first", Told.at(done(200, restored), "document", "title"));
    assertEquals("\"3\"", restored.headers().firstValue("ETag").orElseThrow());
    Map<?, ?> line = done(200, author.get(path + "/revisions/3"));
    assertEquals(1.0, line.get("restored_from"));
    assertEquals("It was better", line.get("message"));
    assertEquals(1, Visitor.items(author.get(SETUPS + "?q=zenith")).size());
    assertEquals(List.of(), Visitor.items(author.get(SETUPS + "?q=nadir")));
  }

  @Test
  void aDeletedSetupIsBroughtBackByItsDeletionsRevisionAndStandsWhereItStood() {
    String path = created("Quixotic and gone");
    on(1).put(path + "/state", PROVEN);
    on(2).delete(path);
    assertEquals(404, author.get(path).statusCode());
    assertEquals(412, on(2).post(path + "/restorations", "{\"revision\":1}").statusCode());
    Map<?, ?> restored = done(200, on(3).post(path + "/restorations", "{\"revision\":1}"));
    assertEquals("proven", restored.get("state"));
    assertEquals(4.0, done(200, reader.get(path)).get("revision"));
    assertEquals(1, Visitor.items(reader.get(SETUPS + "?q=quixotic")).size());
  }

  @Test
  void aRestorationIsRefusedWhereItCannotBeAndChangesNothing() {
    String path = created("Held");
    String wanted = "{\"revision\":1}";
    assertEquals(428, author.post(path + "/restorations", wanted).statusCode());
    assertEquals(412, on(7).post(path + "/restorations", wanted).statusCode());
    isRefused(422, "/revision", on(1).post(path + "/restorations", "{\"revision\":2}"));
    isRefused(422, "/revision", on(1).post(path + "/restorations", "{}"));
    assertEquals(
        403, crew.with("If-Match", "\"1\"").post(path + "/restorations", wanted).statusCode());
    assertEquals(404, on(1).post(SETUPS + "/zzzz9zzzz9zzzz9z/restorations", wanted).statusCode());
    assertEquals(1, Visitor.items(author.get(path + "/revisions")).size());
  }

  @Test
  void aNewSetupIsADraftAndTheDemosAreProven() {
    Map<?, ?> draft = done(200, author.get(created("New")));
    assertEquals("draft", draft.get("state"));
    assertEquals(false, draft.get("archived"));
    HttpResponse<String> proven = reader.get(SETUPS + "?limit=100");
    assertTrue(Visitor.items(proven).size() > 3);
    Visitor.items(proven).forEach(item -> assertEquals("proven", Told.at(item, "state")));
  }

  @Test
  void aChangeOfStateIsARevisionWithTheSameDocument() {
    String path = created("Ripening");
    Map<?, ?> now = done(200, on(1).put(path + "/state", PROVEN));
    assertEquals(Map.of("revision", 2.0, "state", "proven", "archived", false), now);
    assertEquals(now, done(200, author.get(path + "/state")));
    assertEquals(
        Told.at(Visitor.object(author.get(path + "/revisions/1")), "document"),
        Told.at(Visitor.object(author.get(path)), "document"));
    done(200, on(2).put(path, document("Ripe")));
    assertEquals("proven", done(200, author.get(path)).get("state"));
  }

  @Test
  void whatStandsSoAlreadyMakesNoRevision() {
    String path = created("Steady");
    done(200, on(1).put(path + "/state", PROVEN));
    assertEquals(2.0, done(200, on(2).put(path + "/state", PROVEN)).get("revision"));
  }

  @Test
  void aChangeOfStateIsRefusedWhereItCannotBe() {
    String path = created("Unmoved");
    assertEquals(428, author.put(path + "/state", PROVEN).statusCode());
    assertEquals(412, on(2).put(path + "/state", PROVEN).statusCode());
    isRefused(422, "/state", on(1).put(path + "/state", "{\"state\":\"x\",\"archived\":false}"));
    isRefused(422, "/archived", on(1).put(path + "/state", "{\"state\":\"draft\"}"));
    assertEquals(403, crew.with("If-Match", "\"1\"").put(path + "/state", PROVEN).statusCode());
    assertEquals("draft", done(200, author.get(path + "/state")).get("state"));
  }

  @Test
  void aReaderKnowsOfNoDraftAnywhere() {
    String path = created("Furtive");
    String child =
        SETUPS + "?parent=" + path.substring(path.lastIndexOf('/') + 1) + "&parent_revision=1";
    String known =
        author.post(child, document("Open")).headers().firstValue("Location").orElseThrow();
    on(1).put(known + "/state", PROVEN);
    for (String part :
        List.of("", "/figures", "/children", "/used", "/sun", "/state", "/revisions")) {
      assertEquals(404, reader.get(path + part).statusCode(), part);
    }
    assertEquals(
        404,
        reader
            .post(path + "/reading-maps", "{\"over\":" + ReadingMapsOverRestTest.FLOOR + "}")
            .statusCode());
    String kit =
        String.valueOf(Told.at(Visitor.items(author.get("/api/studios/demo/kits")), 0, "id"));
    assertEquals(404, reader.post(path + "/adaptations", "{\"kit\":\"" + kit + "\"}").statusCode());
    assertEquals(404, reader.get(page(path)).statusCode());
    assertFalse(done(200, reader.get(known)).containsKey("parent"));
    assertFalse(reader.get(page(known)).body().contains("Furtive"));
    assertEquals(404, reader.get(known + "/revisions/1").statusCode());
    assertEquals(1, Visitor.items(reader.get(known + "/revisions")).size());
    assertEquals(200, crew.get(path).statusCode());
  }

  private static String page(String path) {
    return path.substring("/api".length());
  }

  @Test
  void aReaderOfAParentSeesNoDraftsMadeFromIt() {
    String path = created("Parent of two");
    on(1).put(path + "/state", PROVEN);
    author.post(path + "/copies", "{\"title\":\"Hidden child\"}");
    assertEquals(1, Visitor.items(author.get(path + "/children")).size());
    assertEquals(List.of(), Visitor.items(reader.get(path + "/children")));
    assertFalse(reader.get(page(path)).body().contains("Hidden child"));
  }

  @Test
  void searchesOfAReaderNeitherFindNorCountWhatIsNotForAll() {
    created("Velleity one");
    String proven = created("Velleity two");
    on(1).put(proven + "/state", PROVEN);
    String archived = created("Velleity three");
    on(1).put(archived + "/state", ARCHIVED);
    Map<?, ?> all = done(200, author.get(SETUPS + "?q=velleity"));
    assertEquals(2.0, all.get("total"));
    assertEquals(Map.of("draft", 1.0, "proven", 1.0), Told.at(all, "facets", "state"));
    Map<?, ?> some = done(200, reader.get(SETUPS + "?q=velleity"));
    assertEquals(1.0, some.get("total"));
    assertEquals(Map.of("proven", 1.0), Told.at(some, "facets", "state"));
    assertEquals(Map.of("quiet", 1.0), Told.at(some, "facets", "mood"));
    for (String hidden : List.of("&archived=true", "&state=draft")) {
      Map<?, ?> none = done(200, reader.get(SETUPS + "?q=velleity" + hidden));
      assertEquals(0.0, none.get("total"), hidden);
      assertFalse(none.toString().contains("draft"), hidden);
      assertEquals(1.0, done(200, author.get(SETUPS + "?q=velleity" + hidden)).get("total"));
    }
  }

  @Test
  void listsAreFilteredByStateAndUnknownOnesAreRefused() {
    created("Filtered draft");
    Map<?, ?> drafts = done(200, author.get(SETUPS + "?state=draft&limit=100"));
    Told.list(drafts, "items").forEach(item -> assertEquals("draft", Told.at(item, "state")));
    isRefused(422, "/state", author.get(SETUPS + "?state=perhaps"));
    isRefused(422, "/archived", author.get(SETUPS + "?archived=perhaps"));
  }

  @Test
  void aCopyIsANewDraftThatNamesWhatItIsOf() {
    String path = created("Original");
    on(1).put(path + "/state", PROVEN);
    HttpResponse<String> made = author.post(path + "/copies?message=For%20dusk", "{}");
    Map<?, ?> copy = done(201, made);
    String there = made.headers().firstValue("Location").orElseThrow();
    assertEquals(copy, done(200, author.get(there)));
    assertEquals("draft", copy.get("state"));
    assertEquals("Original", Told.at(copy, "document", "title"));
    assertEquals(2.0, Told.at(copy, "parent", "revision"));
    assertEquals(List.of("For dusk"), messages(there));
    assertEquals(
        "At dusk",
        Told.at(
            done(201, author.post(path + "/copies", "{\"title\":\"At dusk\"}")),
            "document",
            "title"));
    isRefused(422, "/title", author.post(path + "/copies", "{\"title\":\"\"}"));
    isRefused(
        422, "/title", author.post(path + "/copies", "{\"title\":\"" + "a".repeat(161) + "\"}"));
    assertEquals(403, crew.post(path + "/copies", "{}").statusCode());
    assertEquals(404, author.post(SETUPS + "/zzzz9zzzz9zzzz9z/copies", "{}").statusCode());
  }

  @Test
  void revisionsAndSetupsAreCompared() {
    String path = created("Compared");
    Map<String, Object> nearer = Documents.setup("Compared");
    nearer.put("lights", List.of(Documents.with(Documents.light("key"), "stops_down", 2)));
    done(200, on(1).put(path, Documents.json(nearer)));
    Map<?, ?> change = (Map<?, ?>) changes(path + "/comparison?from=1&to=2").getFirst();
    assertEquals("/lights/0/stops_down", change.get("pointer"));
    assertEquals(Map.of("kind", "light", "light", "key", "role", "key"), change.get("about"));
    assertEquals(3.0, change.get("before"));
    assertEquals(2.0, change.get("after"));
    assertEquals("stops", change.get("unit"));
    assertEquals("Key: power from 1/8 to 1/4, +1 stop", change.get("sentence"));
    assertEquals(changes(path + "/comparison?from=1&to=2"), changes(path + "/comparison?from=1"));
    assertEquals(List.of(), changes(path + "/comparison?from=2&to=2"));
    String other = created("Compared with");
    String id = other.substring(other.lastIndexOf('/') + 1);
    List<?> both = changes(path + "/comparison?to_setup=" + id);
    assertEquals("Title from Compared to Compared with", Told.at(both, 0, "sentence"));
    assertEquals("Key: power from 1/4 to 1/8, −1 stop", Told.at(both, 1, "sentence"));
    isRefused(422, "/from", author.get(path + "/comparison"));
    isRefused(422, "/from", author.get(path + "/comparison?from=9"));
    isRefused(422, "/to", author.get(path + "/comparison?from=1&to=x"));
    isRefused(422, "/to_setup", author.get(path + "/comparison?to_setup=zzzz9zzzz9zzzz9z"));
    isRefused(422, "/to_setup", author.get(path + "/comparison?from=1&to_setup=" + id));
    assertEquals(404, reader.get(path + "/comparison?from=1").statusCode());
    on(2).put(path + "/state", PROVEN);
    isRefused(422, "/from", reader.get(path + "/comparison?from=1&to=3"));
    isRefused(422, "/to_setup", reader.get(path + "/comparison?to_setup=" + id));
  }

  private List<?> changes(String path) {
    return Told.list(done(200, author.get(path)), "changes");
  }
}
