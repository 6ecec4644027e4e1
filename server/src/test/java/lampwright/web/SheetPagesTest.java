package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import lampwright.TestHouse;
import lampwright.Visitor;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

/** The field sheet as people and programs get it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SheetPagesTest {

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor author;
  private String api = "";
  private String page = "";

  @BeforeAll
  void anAuthorWritesOne() {
    author = house.withToken("author@demo.example");
    Map<String, Object> setup = Documents.setup("Zwei Köpfe \"at\" dusk/../");
    setup.put("lights", List.of(Documents.light("key")));
    HttpResponse<String> written = author.post("/api/studios/demo/setups", Documents.json(setup));
    assertEquals(201, written.statusCode(), written.body());
    api = written.headers().firstValue("Location").orElseThrow();
    page = api.substring("/api".length());
  }

  @Test
  void aReaderPrintsThePageAndTheFileOfAProvenOne() {
    Visitor reader = house.signedIn("reader@demo.example");
    String setups = reader.get("/studios/demo/setups").body();
    String shown = setups.replaceFirst("(?s).*?href=\"(/studios/demo/setups/[a-z0-9]+)\".*", "$1");
    HttpResponse<String> sheet = reader.get(shown + "/sheet");
    assertEquals(200, sheet.statusCode(), shown + sheet.body());
    assertTrue(sheet.body().contains("/sheet.pdf?paper=letter"), sheet.body());
    assertTrue(reader.get(shown).body().contains(shown + "/sheet\""));
    HttpResponse<byte[]> file = reader.bytes(shown + "/sheet.pdf");
    assertEquals(200, file.statusCode());
    assertTrue(new String(file.body(), StandardCharsets.ISO_8859_1).startsWith("%PDF-"));
  }

  @Test
  void theFileHasASafeNameAndIsNotSentTwice() {
    HttpResponse<byte[]> file = author.bytes(api + "/sheet.pdf");
    assertEquals(200, file.statusCode());
    assertEquals(
        "inline; filename=\"field-sheet-zwei-kopfe-at-dusk-1.pdf\"",
        file.headers().firstValue("Content-Disposition").orElse(""));
    assertEquals("application/pdf", file.headers().firstValue("Content-Type").orElse(""));
    String etag = file.headers().firstValue("ETag").orElse("");
    assertEquals(
        304, author.with("If-None-Match", etag).get(api + "/sheet.pdf").statusCode(), etag);
    assertEquals(
        200,
        author.with("If-None-Match", etag).bytes(api + "/sheet.pdf?paper=letter").statusCode());
  }

  @Test
  void whoMayNotSeeTheSetupGetsNoSheet() {
    assertEquals(401, house.visitor().get(api + "/sheet.pdf").statusCode());
    assertEquals(404, author.get(api.replace("/demo/", "/other/") + "/sheet.pdf").statusCode());
    Visitor reader = house.signedIn("reader@demo.example");
    assertEquals(reader.get(page).statusCode(), reader.get(page + "/sheet").statusCode());
    assertFalse(reader.get(page + "/sheet").body().contains("Zwei Köpfe"));
  }

  @Test
  void wrongPaperAndUnknownKitsAreTold() {
    HttpResponse<String> paper = author.get(api + "/sheet.pdf?paper=a3");
    assertEquals(422, paper.statusCode());
    assertTrue(paper.body().contains("/paper"), paper.body());
    assertEquals(422, author.get(api + "/sheet.pdf?kit=none").statusCode());
  }

  @Test
  void anAdaptationHasASheetOfItsOwn() {
    HttpResponse<String> kit =
        author.post("/api/studios/demo/kits", Documents.json(Documents.kit("Night bag")));
    assertEquals(201, kit.statusCode(), kit.body());
    String id = kit.headers().firstValue("Location").orElseThrow().replaceFirst(".*/", "");
    HttpResponse<String> sheet =
        house.signedIn("author@demo.example").get(page + "/sheet?kit=" + id + "&way=1");
    assertEquals(200, sheet.statusCode(), sheet.body());
    assertTrue(sheet.body().contains("With the kit “Night bag”."), sheet.body());
    assertTrue(sheet.body().contains("/adapted?kit=" + id), sheet.body());
  }
}
