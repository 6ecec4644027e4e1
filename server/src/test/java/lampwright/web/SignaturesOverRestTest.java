package lampwright.web;

import static lampwright.wording.WordsForTests.english;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.sql.SQLException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Upload;
import lampwright.Visitor;
import lampwright.document.Json;
import lampwright.picture.Drawn;
import lampwright.setup.DemoSeeds;
import lampwright.setup.SetupDocument;
import lampwright.setup.signature.Signature;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Signatures are stored with every revision, however it is written, and told as they are. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SignaturesOverRestTest {

  private static final String STUDIO = "/api/studios/demo";

  /** What these tests make, and do things to behind the store's back. */
  private static final List<String> OF_TESTS = List.of("Signed", "Nobody there");

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor author;
  private Visitor reader;

  @BeforeAll
  void somebodyComes() {
    author = house.withToken("author@demo.example");
    reader = house.withToken("reader@demo.example");
  }

  private static Map<String, Object> setup() {
    return Documents.with(
        Documents.setup("Signed"),
        "subjects",
        List.of(Map.of("name", "keeper", "place", Map.of("x_m", 0, "y_m", 0, "z_m", 0))));
  }

  private String kept() {
    return author
        .post(STUDIO + "/setups", Documents.json(setup()))
        .headers()
        .firstValue("Location")
        .orElseThrow();
  }

  private static String id(String path) {
    return path.substring(path.lastIndexOf('/') + 1);
  }

  /** Behind the store's back: what the database has for a revision; empty where nothing. */
  private static List<String> stored(String path, int revision) throws SQLException {
    return house
        .database()
        .sqlAsSuperuser(
            "select signature from lampwright.setup_signature where setup_id = '%s' and revision ="
                    .formatted(id(path))
                + " "
                + revision);
  }

  private void assertSigned(String path, int revision) throws SQLException {
    Map<?, ?> then = Visitor.object(author.get(path + "/revisions/" + revision));
    SetupDocument document =
        lampwright.setup.Documents.setup(Json.parse(Json.print(Told.at(then, "document"))));
    Object computed = Signature.FORM.write(Signature.of(document));
    assertEquals(
        List.of(Json.parse(Json.print(computed))),
        stored(path, revision).stream().map(Json::parse).toList(),
        path + " " + revision);
  }

  @Test
  void howeverARevisionIsWrittenItsSignatureIsWrittenToo() throws SQLException {
    String path = kept();
    assertSigned(path, 1);
    Map<String, Object> brighter = new LinkedHashMap<>(setup());
    brighter.put("ambient", Map.of("ev100", 13));
    author.with("If-Match", "\"1\"").put(path, Documents.json(brighter));
    assertSigned(path, 2);
    author.with("If-Match", "\"2\"").patch(path, "{\"ambient\":{\"ev100\":9}}");
    assertSigned(path, 3);
    author.with("If-Match", "\"3\"").post(path + "/used", "{\"note\":\"Fog.\"}");
    assertSigned(path, 4);
    author
        .with("If-Match", "\"4\"")
        .put(path + "/state", "{\"state\":\"proven\",\"archived\":false}");
    assertSigned(path, 5);
    author.with("If-Match", "\"5\"").post(path + "/restorations", "{\"revision\":2}");
    assertSigned(path, 6);
    String copy =
        author.post(path + "/copies", "{}").headers().firstValue("Location").orElseThrow();
    assertSigned(copy, 1);
    author.with("If-Match", "\"6\"").delete(path);
    assertEquals(List.of(), stored(path, 7), "a deletion has no light");
  }

  @Test
  void aSetupOfAnArchiveIsSignedInEachOfItsRevisions() throws SQLException {
    List<String> unsigned =
        house
            .database()
            .sqlAsSuperuser(
                "select r.setup_id || ' ' || r.revision from lampwright.setup_revision r"
                    + " left join lampwright.setup_signature s using (studio_id, setup_id,"
                    + " revision) where not r.deleted and s.version is null and r.title not"
                    + " in ('Signed', 'Nobody there')");
    assertEquals(List.of(), unsigned);
    int of = 0;
    for (Object setup : Visitor.items(author.get(STUDIO + "/setups?limit=100"))) {
      if (OF_TESTS.contains(Told.at(setup, "title"))) {
        continue;
      }
      assertSigned(
          STUDIO + "/setups/" + Told.at(setup, "id"), (int) Told.number(setup, "revision"));
      of++;
    }
    assertTrue(of >= 3, of + " setups");
  }

  @Test
  void theSignatureIsToldWithNumbersWordsAndWhatIsMissing() {
    Map<?, ?> told = Visitor.object(reader.get(STUDIO + "/setups/lastboatout/signature"));
    Signature computed = Signature.of(new DemoSeeds().setup("last-boat-out"));
    assertEquals(computed.lights().total(), Told.number(told, "lights", "total"));
    assertEquals(
        computed.key().orElseThrow().azimuth().value(), Told.number(told, "key", "azimuth_deg"));
    assertEquals(
        english(computed.key().orElseThrow().sentence()), Told.at(told, "key", "sentence"));
    assertEquals(
        computed.balance().orElseThrow().flashOverAmbient().value(),
        Told.number(told, "balance", "flash_over_ambient_stops"));
    assertEquals(computed.missing().size(), Told.list(told, "missing").size());
  }

  /** Half navy, half black, as the CSS Color Module names both. */
  @Test
  void theFinishedPictureIsToldByItsKeyWarmthAndColours() {
    String path = kept();
    byte[] file = Drawn.jpeg(Drawn.image(640, 480, (x, _) -> x < 320 ? 0x000080 : 0x000000), 0.9);
    assertEquals(201, Upload.whole(author, path + "/pictures", file).statusCode());
    Map<?, ?> told = Visitor.object(author.get(path + "/signature"));
    assertEquals("low", Told.at(told, "picture", "key"));
    assertEquals("cool", Told.at(told, "picture", "warmth"));
    assertEquals(
        Set.of("blue", "black"),
        Told.list(told, "picture", "colours").stream()
            .map(colour -> Told.at(colour, "colour"))
            .collect(Collectors.toSet()));
    assertEquals(0.5, Told.number(told, "picture", "colours", 0, "share"), 0.05);
    HttpResponse<String> page =
        house.signedIn("author@demo.example").get(path.substring("/api".length()));
    assertTrue(page.body().contains("Low key, "), page.body());
    assertEquals(null, Visitor.object(author.get(path + "/revisions/1/signature")).get("picture"));
  }

  @Test
  void whatIsMissingIsToldWithPointers() {
    String path =
        author
            .post(STUDIO + "/setups", Documents.json(Documents.setup("Nobody there")))
            .headers()
            .firstValue("Location")
            .orElseThrow();
    Map<?, ?> told = Visitor.object(author.get(path + "/signature"));
    assertEquals("key", Told.at(told, "missing", 0, "part"));
    assertEquals(List.of("/subjects"), Told.list(told, "missing", 0, "needs"));
    assertEquals(null, told.get("key"));
    assertEquals(null, told.get("picture"));
  }

  @Test
  void aSignatureThatIsMissingOrOfAnOlderVersionIsComputedInItsPlace() throws SQLException {
    String path = kept();
    String before = author.get(path + "/signature").body();
    house
        .database()
        .sqlAsSuperuser(
            "update lampwright.setup_signature set version = 999, signature = '{}' where setup_id ="
                + " '"
                + id(path)
                + "'");
    assertEquals(before, author.get(path + "/signature").body());
    house
        .database()
        .sqlAsSuperuser(
            "delete from lampwright.setup_signature where setup_id = '" + id(path) + "'");
    assertEquals(before, author.get(path + "/signature").body());
  }

  @Test
  void theSignatureOfARevisionIsThatOfWhatItWas() {
    String path = kept();
    String first = author.get(path + "/signature").body();
    author.with("If-Match", "\"1\"").patch(path, "{\"ambient\":{\"ev100\":9}}");
    assertEquals(first, author.get(path + "/revisions/1/signature").body());
    Map<?, ?> now = Visitor.object(author.get(path + "/revisions/2/signature"));
    assertEquals(-3, Told.number(now, "ambient", "from_shooting_stops"), 1e-6);
    assertEquals(404, author.get(path + "/revisions/9/signature").statusCode());
    assertEquals(404, author.get(path + "/revisions/none/signature").statusCode());
  }

  @Test
  void whoMayNotKnowOfASetupIsToldThatThereIsNone() {
    String draft = kept();
    assertEquals(200, author.get(draft + "/signature").statusCode());
    for (String path :
        List.of(
            draft + "/signature",
            draft + "/revisions/1/signature",
            STUDIO + "/setups/zzzz/signature")) {
      assertEquals(404, reader.get(path).statusCode(), path);
      assertEquals(401, house.visitor().get(path).statusCode(), path);
    }
  }

  @Test
  void thePageSaysHowTheLightIs() {
    HttpResponse<String> page =
        house.signedIn("reader@demo.example").get("/studios/demo/setups/lastboatout");
    Signature computed = Signature.of(new DemoSeeds().setup("last-boat-out"));
    assertTrue(page.body().contains("How the light is"));
    assertTrue(page.body().contains(english(computed.key().orElseThrow().sentence())));
  }
}
