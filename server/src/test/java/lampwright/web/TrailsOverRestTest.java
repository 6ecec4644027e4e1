package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
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

/** Trails over REST: put together, walked, handed in, signed off, reported. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
public class TrailsOverRestTest {

  private static final String STUDIO = "/api/studios/demo";
  private static final String TRAILS = STUDIO + "/trails";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor owner;
  private Visitor author;
  private Visitor crew;
  private Visitor reader;
  private String setup = "";

  @BeforeAll
  void aSetupIsProven() {
    owner = house.withToken("owner@demo.example");
    author = house.withToken("author@demo.example");
    crew = house.withToken("crew@demo.example");
    reader = house.withToken("reader@demo.example");
    String place =
        made(author, STUDIO + "/setups", Documents.json(Documents.setup("One head at dusk")));
    assertEquals(
        200,
        author
            .with("If-Match", "\"1\"")
            .put(place + "/state", "{\"state\":\"proven\",\"archived\":false}")
            .statusCode());
    setup = place.substring(place.lastIndexOf('/') + 1);
  }

  private static String made(Visitor who, String path, String json) {
    HttpResponse<String> answer = who.post(path, json);
    assertEquals(201, answer.statusCode(), answer.body());
    return answer.headers().firstValue("Location").orElseThrow();
  }

  /** One stage to read, one to build. */
  public static String trail(String name, String setup) {
    return Json.print(
        Map.of(
            "name",
            name,
            "clears_for",
            "set one head",
            "stages",
            List.of(
                Map.of("kind", "reading", "id", "read", "title", "Read", "text", "Twice."),
                Map.of(
                    "kind",
                    "build",
                    "id",
                    "build",
                    "title",
                    "Build",
                    "setup",
                    setup,
                    "task",
                    "Build it."))));
  }

  /** A run-through with one reading, logged by somebody. */
  public static String runThrough(Visitor who, String setupPath, String key, double fNumber) {
    Map<String, Object> take = TakesOverRestTest.take(key, fNumber);
    take.put("kind", "run_through");
    String place = made(who, setupPath + "/takes", Json.print(take));
    return place.substring(place.lastIndexOf('/') + 1);
  }

  private String handedIn(Visitor who, String trail, String take) {
    HttpResponse<String> answer =
        who.post(trail + "/stages/build/builds", "{\"take\":\"" + take + "\"}");
    assertEquals(200, answer.statusCode(), answer.body());
    return String.valueOf(Told.at(Visitor.object(answer), "steps", 1, "state"));
  }

  private String waiting(Visitor who, String trail) {
    return Visitor.items(who.get(STUDIO + "/builds")).stream()
        .filter(build -> trail.endsWith(String.valueOf(Told.at(build, "trail"))))
        .map(build -> String.valueOf(Told.at(build, "id")))
        .reduce((_, last) -> last)
        .orElseThrow();
  }

  @Test
  void anAssistantWalksBuildsIsSentBackAndIsSignedOff() {
    String trail = made(author, TRAILS, trail("Walked", setup));
    assertEquals(409, crew.post(trail + "/stages/build/done", "").statusCode());
    HttpResponse<String> early =
        crew.post(
            trail + "/stages/build/builds",
            "{\"take\":\""
                + runThrough(crew, STUDIO + "/setups/" + setup, "early-run-1", 8)
                + "\"}");
    assertEquals(409, early.statusCode(), "the stages before come first");
    Map<?, ?> read = Visitor.object(crew.post(trail + "/stages/read/done", ""));
    assertEquals("done", Told.at(read, "steps", 0, "state"));
    assertEquals("open", Told.at(read, "steps", 1, "state"));

    String off = runThrough(crew, STUDIO + "/setups/" + setup, "off-run-01", 4);
    assertEquals("waits", handedIn(crew, trail, off));
    String build = waiting(author, trail);
    Map<?, ?> shown = Visitor.object(author.get(STUDIO + "/builds/" + build));
    assertTrue(
        Told.number(shown, "take", "readings", 0, "over_stops") < -1, "the reading is far under");
    String judgement = STUDIO + "/builds/" + build + "/judgement";
    HttpResponse<String> silent = author.post(judgement, "{\"signed_off\":false}");
    assertEquals(422, silent.statusCode());
    assertEquals("/words", Told.at(Visitor.object(silent), "errors", 0, "pointer"));
    assertEquals(
        200, author.post(judgement, "{\"signed_off\":false,\"words\":\"Closer.\"}").statusCode());
    assertEquals(409, owner.post(judgement, "{\"signed_off\":true}").statusCode());
    Map<?, ?> back = Visitor.object(crew.get(trail + "/way"));
    assertEquals("sent_back", Told.at(back, "steps", 1, "state"));
    assertEquals("Closer.", Told.at(back, "steps", 1, "judgement", "words"));

    HttpResponse<String> again =
        crew.post(trail + "/stages/build/builds", "{\"take\":\"" + off + "\"}");
    assertEquals(422, again.statusCode(), "the same run-through is not handed in twice");
    handedIn(crew, trail, runThrough(crew, STUDIO + "/setups/" + setup, "right-run-1", 8));
    String second = waiting(owner, trail);
    assertEquals(
        200,
        owner
            .post(STUDIO + "/builds/" + second + "/judgement", "{\"signed_off\":true}")
            .statusCode());
    Map<?, ?> walked = Visitor.object(crew.get(trail + "/way"));
    assertEquals("set one head", Told.at(walked, "cleared_for", "what"));
    assertEquals("Maren Tolliver", Told.at(walked, "cleared_for", "by"));
  }

  @Test
  void nobodySignsThemselvesOffAndOnlyOwnersSeeTheWayOfOthers() {
    String trail = made(owner, TRAILS, trail("Roles", setup));
    author.post(trail + "/stages/read/done", "");
    handedIn(author, trail, runThrough(author, STUDIO + "/setups/" + setup, "own-run-01", 8));
    String build = waiting(owner, trail);
    String path = STUDIO + "/builds/" + build;
    HttpResponse<String> own = author.post(path + "/judgement", "{\"signed_off\":true}");
    assertEquals(403, own.statusCode());
    assertTrue(own.body().contains("Nobody signs off what they built themselves"), own.body());
    assertEquals(200, author.get(path).statusCode(), "one's own");
    assertEquals(404, crew.get(path).statusCode());
    assertEquals(403, crew.post(path + "/judgement", "{\"signed_off\":true}").statusCode());
    assertEquals(404, reader.get(path).statusCode());
    assertEquals(List.of(), Visitor.items(crew.get(STUDIO + "/builds")));
    for (Visitor who : List.of(author, crew, reader)) {
      assertEquals(403, who.get(STUDIO + "/learning").statusCode());
      assertEquals(
          0.0 + (who == author ? 1 : 0),
          Told.number(Visitor.object(who.get(trail + "/way")), "done"),
          "one's own way, not the author's");
    }
    Map<?, ?> report = Visitor.object(owner.get(STUDIO + "/learning"));
    Object ivo =
        Told.list(report, "members").stream()
            .filter(member -> Told.at(member, "name").equals("Ivo Castellane"))
            .findFirst()
            .orElseThrow();
    assertTrue(
        Told.list(ivo, "trails").stream()
            .anyMatch(
                way ->
                    Told.at(way, "name").equals("Roles")
                        && Told.at(way, "steps", 1, "state").equals("waits")));
  }

  @Test
  void whoTakesTheRunThroughBackHandsInAnotherAndWordsAreBounded() {
    String trail = made(author, TRAILS, trail("Taken back", setup));
    crew.post(trail + "/stages/read/done", "");
    String path = STUDIO + "/setups/" + setup;
    String first = runThrough(crew, path, "back-run-1", 4);
    assertEquals("waits", handedIn(crew, trail, first));
    assertEquals(204, crew.with("If-Match", "*").delete(path + "/takes/" + first).statusCode());
    Map<?, ?> way = Visitor.object(crew.get(trail + "/way"));
    assertEquals("open", Told.at(way, "steps", 1, "state"));
    assertEquals("waits", handedIn(crew, trail, runThrough(crew, path, "back-run-2", 8)));
    Visitor desk = house.signedIn("author@demo.example");
    String page = "/studios/demo/builds/" + waiting(author, trail);
    String words =
        "verdict=sign_off&csrf=" + desk.header("X-CSRF-Token") + "&words=" + "a".repeat(2_001);
    HttpResponse<String> tooLong = desk.postForm(page, words);
    assertEquals(422, tooLong.statusCode(), tooLong.body());
  }

  @Test
  void whoMayWriteTrailsAndWhatTheyName() {
    assertEquals(403, crew.post(TRAILS, trail("No", setup)).statusCode());
    assertEquals(403, reader.post(TRAILS, trail("No", setup)).statusCode());
    HttpResponse<String> unknown = author.post(TRAILS, trail("No", "zzzz"));
    assertEquals(422, unknown.statusCode());
    assertEquals("/stages/1/setup", Told.at(Visitor.object(unknown), "errors", 0, "pointer"));
    String place = made(author, TRAILS, trail("Changing", setup));
    assertEquals(428, author.put(place, trail("Changed", setup)).statusCode());
    Visitor first = author.with("If-Match", "\"1\"");
    assertEquals(200, first.put(place, trail("Changed", setup)).statusCode());
    assertEquals(412, first.put(place, trail("Changed", setup)).statusCode());
    assertEquals("Changed", Told.at(Visitor.object(reader.get(place)), "document", "name"));
    assertEquals(204, author.with("If-Match", "\"2\"").delete(place).statusCode());
    assertEquals(404, reader.get(place).statusCode());
  }

  @Test
  void readersReadButDoNotBuild() {
    String trail = made(author, TRAILS, trail("Read", setup));
    assertEquals(200, reader.post(trail + "/stages/read/done", "").statusCode());
    Map<String, Object> sent = new LinkedHashMap<>();
    sent.put("take", "zzzz");
    assertEquals(403, reader.post(trail + "/stages/build/builds", Json.print(sent)).statusCode());
    assertEquals(
        422, crew.post(trail + "/stages/read/builds", "{}").statusCode(), "nothing is named");
    assertEquals(404, crew.post(trail + "/stages/nowhere/done", "").statusCode());
  }

  @Test
  void theDemoStudioHasThreeTrailsWhoseSetupsAreThere() {
    List<?> trails = Visitor.items(reader.get(TRAILS + "?limit=100"));
    List<Object> names = trails.stream().map(trail -> Told.at(trail, "name")).toList();
    // A few setups come with this house; the third trail leads to one that does not.
    assertTrue(names.contains("From what a stop is to two heads indoors"), names.toString());
    assertTrue(names.contains("Outdoors with the ambient held down"), names.toString());
  }
}
