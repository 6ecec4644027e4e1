package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.Map;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.picture.Drawn;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

/** A change that names only what it changes (RFC 7396), for each thing that one may change. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ChangesByPatchTest {

  private static final String STUDIO = "/api/studios/demo";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor author;
  private String setup = "";

  @BeforeAll
  void aSetupIsThere() {
    author = house.withToken("author@demo.example");
    setup = made(STUDIO + "/setups", Documents.json(Documents.setup("Patched")));
  }

  private String made(String path, String body) {
    HttpResponse<String> answer = author.post(path, body);
    assertEquals(201, answer.statusCode(), answer.body());
    return answer.headers().firstValue("Location").orElseThrow();
  }

  private HttpResponse<String> patch(String path, int revision, String body) {
    return author.with("If-Match", "\"" + revision + "\"").patch(path, body);
  }

  private void changesOneFieldAndLeavesTheRest(String path, String body, String field) {
    Object before = Told.at(Visitor.object(author.get(path)), "document");
    HttpResponse<String> answer = patch(path, 1, body);
    assertEquals(200, answer.statusCode(), answer.body());
    assertEquals("\"2\"", answer.headers().firstValue("ETag").orElseThrow());
    Object after = Told.at(Visitor.object(author.get(path)), "document");
    Map<Object, Object> expected = new LinkedHashMap<>((Map<?, ?>) before);
    expected.put(field, "Changed");
    assertEquals(expected, after);
    assertEquals(412, patch(path, 1, body).statusCode());
    HttpResponse<String> unknown = patch(path, 2, "{\"colour_of_the_van\":\"green\"}");
    assertEquals(422, unknown.statusCode());
    assertEquals("/colour_of_the_van", Told.at(Visitor.object(unknown), "errors", 0, "pointer"));
    assertEquals(428, author.patch(path, body).statusCode());
    assertEquals("\"2\"", author.get(path).headers().firstValue("ETag").orElseThrow());
  }

  @Test
  void aSetup() {
    String path = made(STUDIO + "/setups", Documents.json(Documents.setup("Patched")));
    changesOneFieldAndLeavesTheRest(path, "{\"title\":\"Changed\"}", "title");
  }

  @Test
  void aKit() {
    String path = made(STUDIO + "/kits", Documents.json(Documents.kit("Patched")));
    changesOneFieldAndLeavesTheRest(path, "{\"name\":\"Changed\"}", "name");
  }

  @Test
  void gear() {
    String path =
        made(STUDIO + "/gear", Documents.json(GearForTests.head("Patched 400 W·s head", 64)));
    HttpResponse<String> answer =
        patch(path, 1, "{\"head\":{\"name\":\"Changed\",\"weight_kg\":2.5},\"count\":3}");
    assertEquals(200, answer.statusCode(), answer.body());
    Object document = Told.at(Visitor.object(answer), "document");
    assertEquals("Changed", Told.at(document, "head", "name"));
    assertEquals(400.0, Told.number(document, "head", "energy_ws"));
    assertEquals(3.0, Told.number(document, "count"));
  }

  @Test
  void aLocation() {
    String path = made(STUDIO + "/locations", Documents.json(Documents.location("Patched")));
    changesOneFieldAndLeavesTheRest(path, "{\"name\":\"Changed\"}", "name");
  }

  @Test
  void aNote() {
    String path = made(setup + "/notes", "{\"text\":\"Patched\"}");
    changesOneFieldAndLeavesTheRest(path, "{\"text\":\"Changed\"}", "text");
  }

  @Test
  void aTake() {
    String take =
        "{\"setup_revision\":1,\"at\":\"2026-04-01T18:00:00+01:00\",\"client_key\":\"patched-1\","
            + "\"changed\":\"Patched\"}";
    changesOneFieldAndLeavesTheRest(
        made(setup + "/takes", take), "{\"changed\":\"Changed\"}", "changed");
  }

  @Test
  void whatIsSaidOfAPicture() {
    HttpResponse<String> kept =
        author
            .with("Content-Type", "image/jpeg")
            .send(
                "POST",
                setup + "/pictures?kind=final",
                BodyPublishers.ofByteArray(Drawn.jpeg(Drawn.scene(60, 40), 0.9)));
    String path = kept.headers().firstValue("Location").orElseThrow();
    HttpResponse<String> changed = patch(path, 1, "{\"caption\":\"Changed\"}");
    assertEquals(200, changed.statusCode(), changed.body());
    assertEquals("Changed", Told.at(Visitor.object(changed), "document", "caption"));
    assertEquals("final", Told.at(Visitor.object(changed), "document", "kind"));
    HttpResponse<String> bare = patch(path, 2, "{\"caption\":null}");
    assertFalse(((Map<?, ?>) Told.at(Visitor.object(bare), "document")).containsKey("caption"));
  }

  @Test
  void whatIsInsideAnObjectIsMergedAndAListIsReplacedWhole() {
    String path = made(STUDIO + "/setups", Documents.json(Documents.setup("Inside")));
    HttpResponse<String> answer =
        patch(path, 1, "{\"exposure\":{\"iso\":200},\"moods\":[\"loud\"],\"ambient\":null}");
    Object document = Told.at(Visitor.object(answer), "document");
    assertEquals(200.0, Told.number(document, "exposure", "iso"));
    assertEquals(5.6, Told.number(document, "exposure", "f_number"));
    assertEquals("[loud]", String.valueOf(Told.at(document, "moods")));
    assertFalse(((Map<?, ?>) document).containsKey("ambient"));
  }

  @Test
  void whatComesOutMustBeAWholeDocument() {
    String path = made(STUDIO + "/setups", Documents.json(Documents.setup("Whole")));
    HttpResponse<String> answer = patch(path, 1, "{\"exposure\":{\"f_number\":null}}");
    assertEquals(422, answer.statusCode());
    assertEquals("/exposure/f_number", Told.at(Visitor.object(answer), "errors", 0, "pointer"));
    assertEquals(422, patch(path, 1, "null").statusCode());
    assertEquals(422, patch(path, 1, "[]").statusCode());
    assertEquals("\"1\"", author.get(path).headers().firstValue("ETag").orElseThrow());
  }

  @Test
  void plainJsonIsNotTakenForAPatch() {
    HttpResponse<String> answer =
        author
            .with("If-Match", "\"1\"")
            .with("Content-Type", "application/json")
            .send("PATCH", setup, BodyPublishers.ofString("{\"title\":\"No\"}"));
    assertEquals(415, answer.statusCode());
    assertEquals(
        "application/merge-patch+json", answer.headers().firstValue("Accept-Patch").orElseThrow());
  }

  @Test
  void whoMayNotWriteMayNotPatch() {
    Proven.by(author, setup);
    HttpResponse<String> answer =
        house
            .withToken("reader@demo.example")
            .with("If-Match", "*")
            .patch(setup, "{\"title\":\"No\"}");
    assertEquals(403, answer.statusCode());
  }
}
