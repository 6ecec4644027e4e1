package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.swagger.v3.parser.OpenAPIV3Parser;
import io.swagger.v3.parser.core.models.ParseOptions;
import io.swagger.v3.parser.core.models.SwaggerParseResult;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import lampwright.RouteWalk;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.picture.Drawn;
import lampwright.picture.ExifWriter;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

/** The API's description of itself against what the server really does. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class OpenApiTest {

  private static final String STUDIO = "/api/studios/demo";
  private static final String IN_STUDIO = "/api/studios/{studio}";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Described described;
  private Visitor author;

  @BeforeAll
  void theDescriptionIsRead() {
    described = new Described(house.visitor().get("/api/openapi.json").body());
    author = house.withToken("author@demo.example");
  }

  @Test
  void whatIsDescribedIsWhatIsServed() {
    Set<String> served =
        RouteWalk.of(house).stream()
            .filter(step -> step.isForPrograms() && !step.verb().equals("HEAD"))
            .map(RouteWalk.Step::toString)
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(served, described.operations());
  }

  @Test
  void aParserOfAnotherHouseReadsItWithoutAMessage() {
    SwaggerParseResult read = parse(described.text());
    assertEquals(List.of(), read.getMessages());
    assertTrue(read.isOpenapi31());
    String broken = described.text().replaceFirst("\"responses\":", "\"answers\":");
    assertFalse(parse(broken).getMessages().isEmpty(), "the parser checks nothing");
  }

  private static SwaggerParseResult parse(String text) {
    return new OpenAPIV3Parser().readContents(text, List.of(), new ParseOptions());
  }

  @Test
  void itNamesNoHost() {
    assertFalse(described.text().matches("(?s).*https?://.*"), "an absolute address");
    assertTrue(described.text().contains("\"servers\":[{\"url\":\"/\"}]"));
  }

  @Test
  void anUndescribedFieldIsSeen() {
    assertEquals("", described.faultsBy("Health", "{\"status\":\"live\",\"reasons\":[]}"));
    assertFalse(
        described
            .faultsBy("Health", "{\"status\":\"live\",\"reasons\":[],\"mood\":\"\"}")
            .isEmpty());
  }

  @Test
  void everyOperationAnswersAsDescribed() {
    Visitor anybody = house.visitor();
    for (String path : List.of("/health/live", "/health/ready", "/metrics", "/api/openapi.json")) {
      described.mustFit("GET " + path, 200, anybody.get(path));
    }
    for (String file : List.of("setup.json", "kit.json", "gear.json", "location.json")) {
      described.mustFit("GET /api/schemas/{file}", 200, anybody.get("/api/schemas/" + file));
    }
    people();
    new AccountAsDescribed(house, described).mustFit();
    documents("setup", Documents.json(Documents.setup("Described")));
    documents("kit", Documents.json(Documents.kit("Described")));
    described.mustFit(
        "GET " + IN_STUDIO + "/setups", 200, author.get(STUDIO + "/setups?q=light&limit=2"));
    kinAndUse();
    life();
    new PlacesAndTakesAsDescribed(house, described, author).mustFit();
    new GearAsDescribed(house, described, author).mustFit();
    new SavedSearchesAsDescribed(described, author).mustFit();
    new DrillsAsDescribed(described, author).mustFit();
    new MembersAsDescribed(house, described).mustFit();
    new TrailsAsDescribed(house, described, author).mustFit();
    pictures();
    new ArchivesAsDescribed(house, described, author).mustFit();
    new IndexAsDescribed(house, described, author).mustFit();
    new AuditAsDescribed(house, described, author).mustFit();
    computing();
    assertEquals(described.operations(), described.done());
  }

  private void people() {
    described.mustFit(
        "POST /api/session", 201, house.signIn("crew@demo.example", TestHouse.PASSWORD));
    described.mustFit("GET /api/session", 200, author.get("/api/session"));
    Visitor crew = house.signedIn("crew@demo.example");
    described.mustFit("GET /api/session", 200, crew.get("/api/session"));
    described.mustFit("GET /api/preferences", 200, crew.get("/api/preferences"));
    described.mustFit(
        "GET /api/preferences", 304, crew.with("If-None-Match", "\"1\"").get("/api/preferences"));
    String feet = "{\"language\":\"de\",\"lengths\":\"feet\",\"stops\":\"thirds\"}";
    described.mustFit("PUT /api/preferences", 428, crew.put("/api/preferences", feet));
    Visitor first = crew.with("If-Match", "\"1\"");
    described.mustFit(
        "PUT /api/preferences", 422, first.put("/api/preferences", "{\"lengths\":\"ells\"}"));
    described.mustFit("PUT /api/preferences", 200, first.put("/api/preferences", feet));
    described.mustFit("PUT /api/preferences", 412, first.put("/api/preferences", feet));
    described.mustFit("GET /api/studios", 200, crew.get("/api/studios"));
    HttpResponse<String> made =
        described.mustFit(
            "POST /api/tokens", 201, crew.post("/api/tokens", "{\"name\":\"described\"}"));
    described.mustFit("GET /api/tokens", 200, crew.get("/api/tokens"));
    described.mustFit("GET /api/tokens", 403, author.get("/api/tokens"));
    described.mustFit("DELETE /api/tokens/{token}", 204, crew.delete(location(made)));
    described.mustFit("DELETE /api/tokens/{token}", 404, crew.delete(location(made)));
    new LeavingAsDescribed(house, described).mustFit();
    described.mustFit("DELETE /api/session", 204, crew.delete("/api/session"));
  }

  private void documents(String kind, String document) {
    String all = IN_STUDIO + "/" + kind + "s";
    String one = all + "/{" + kind + "}";
    String path = STUDIO + "/" + kind + "s";
    String made = location(described.mustFit("POST " + all, 201, author.post(path, document)));
    described.mustFit("GET " + all, 200, author.get(path));
    described.mustFit("GET " + one, 200, author.get(made));
    Visitor first = author.with("If-Match", "\"1\"");
    described.mustFit("GET " + one, 304, author.with("If-None-Match", "\"1\"").get(made));
    described.mustFit("PUT " + one, 428, author.put(made, document));
    described.mustFit("PUT " + one, 200, first.put(made, document));
    described.mustFit("PUT " + one, 412, first.put(made, document));
    described.mustFit("PUT " + one, 422, author.with("If-Match", "\"2\"").put(made, "{}"));
    Visitor second = author.with("If-Match", "\"2\"");
    described.mustFit("PATCH " + one, 428, author.patch(made, "{}"));
    described.mustFit("PATCH " + one, 412, first.patch(made, "{}"));
    described.mustFit("PATCH " + one, 422, second.patch(made, "{\"none\":1}"));
    described.mustFit("PATCH " + one, 415, second.send("PATCH", made, BodyPublishers.noBody()));
    described.mustFit("PATCH " + one, 200, second.patch(made, "{}"));
    described.mustFit("DELETE " + one, 428, author.delete(made));
    described.mustFit("DELETE " + one, 412, first.delete(made));
    described.mustFit("DELETE " + one, 204, author.with("If-Match", "\"3\"").delete(made));
    described.mustFit("GET " + one, 404, author.get(made));
    described.mustFit("POST " + all, 422, author.post(path, "{}"));
    described.mustFit("POST " + all, 400, author.post(path, "{"));
    described.mustFit("POST " + all, 415, author.postForm(path, "a=b"));
    Visitor reader = house.withToken("reader@demo.example");
    described.mustFit("POST " + all, 403, reader.post(path, document));
    described.mustFit("POST " + all, 401, house.visitor().post(path, document));
    described.mustFit("POST " + all, 413, author.post(path, "\"" + "a".repeat(1 << 20) + "\""));
  }

  private void kinAndUse() {
    String setups = STUDIO + "/setups";
    String document = Documents.json(Documents.setup("Described"));
    String create = "POST " + IN_STUDIO + "/setups";
    String parent = location(author.post(setups, document));
    String from = setups + "?parent=" + parent.substring(parent.lastIndexOf('/') + 1);
    String child = location(described.mustFit(create, 201, author.post(from, document)));
    described.mustFit(create, 422, author.post(setups + "?parent=zzzz", document));
    described.mustFit(create, 422, author.post(from + "&parent_revision=9", document));
    described.mustFit("GET " + IN_STUDIO + "/setups/{setup}", 200, author.get(child));
    String children = "GET " + IN_STUDIO + "/setups/{setup}/children";
    described.mustFit(children, 200, author.get(parent + "/children"));
    described.mustFit(children, 404, author.get(setups + "/zzzz/children"));
    String used = IN_STUDIO + "/setups/{setup}/used";
    String path = child + "/used";
    Visitor first = author.with("If-Match", "\"1\"");
    described.mustFit("GET " + used, 404, author.get(path));
    described.mustFit("POST " + used, 428, author.post(path, "{}"));
    described.mustFit("POST " + used, 422, first.post(path, "{\"lights\":[{}]}"));
    String told = "{\"lights\":[{\"light\":\"key\",\"stops_down\":3.5}],\"note\":\"Fog.\"}";
    described.mustFit("POST " + used, 200, first.post(path, told));
    described.mustFit("POST " + used, 412, first.post(path, told));
    described.mustFit("GET " + used, 200, author.get(path));
    described.mustFit("GET " + used, 304, author.with("If-None-Match", "\"2\"").get(path));
  }

  private void life() {
    String one = IN_STUDIO + "/setups/{setup}";
    String document = Documents.json(Documents.setup("Described"));
    String path = location(author.post(STUDIO + "/setups?message=Begun", document));
    Visitor first = author.with("If-Match", "\"1\"");
    String proven = "{\"state\":\"proven\",\"archived\":false}";
    described.mustFit("PUT " + one + "/state", 428, author.put(path + "/state", proven));
    described.mustFit("PUT " + one + "/state", 422, first.put(path + "/state", "{}"));
    described.mustFit("PUT " + one + "/state", 200, first.put(path + "/state", proven));
    described.mustFit("PUT " + one + "/state", 412, first.put(path + "/state", proven));
    described.mustFit("GET " + one + "/state", 200, author.get(path + "/state"));
    described.mustFit(
        "GET " + one + "/state", 304, author.with("If-None-Match", "\"2\"").get(path + "/state"));
    String revisions = "GET " + one + "/revisions";
    described.mustFit(revisions, 200, author.get(path + "/revisions?limit=1"));
    described.mustFit(revisions, 422, author.get(path + "/revisions?limit=0"));
    described.mustFit(revisions, 404, author.get(STUDIO + "/setups/zzzz/revisions"));
    String revision = revisions + "/{revision}";
    described.mustFit(revision, 200, author.get(path + "/revisions/1"));
    described.mustFit(revision, 404, author.get(path + "/revisions/9"));
    String restore = "POST " + one + "/restorations";
    Visitor second = author.with("If-Match", "\"2\"");
    String wanted = "{\"revision\":1}";
    described.mustFit(restore, 428, author.post(path + "/restorations", wanted));
    described.mustFit(restore, 422, second.post(path + "/restorations", "{\"revision\":9}"));
    described.mustFit(restore, 200, second.post(path + "/restorations", wanted));
    described.mustFit(restore, 412, second.post(path + "/restorations", wanted));
    String compare = "GET " + one + "/comparison";
    described.mustFit(compare, 200, author.get(path + "/comparison?from=1"));
    described.mustFit(compare, 422, author.get(path + "/comparison"));
    described.mustFit("POST " + one + "/copies", 201, author.post(path + "/copies", "{}"));
    described.mustFit(
        "POST " + one + "/copies", 422, author.post(path + "/copies", "{\"title\":\"\"}"));
  }

  private void pictures() {
    String all = IN_STUDIO + "/setups/{setup}/pictures";
    String one = all + "/{picture}";
    String path =
        location(author.post(STUDIO + "/setups", Documents.json(Documents.setup("Described"))))
            + "/pictures";
    Visitor sender = author.with("Content-Type", "image/jpeg");
    byte[] file = Drawn.withExif(Drawn.jpeg(Drawn.scene(60, 40), 0.9), ExifWriter.full(1));
    HttpResponse<String> made =
        sender.send("POST", path + "?kind=final", BodyPublishers.ofByteArray(file));
    String place = location(described.mustFit("POST " + all, 201, made));
    String shown = "/shown-pictures";
    HttpResponse<String> read =
        sender.send("POST", STUDIO + shown, BodyPublishers.ofByteArray(file));
    described.mustFit("POST " + IN_STUDIO + shown, 200, read);
    described.mustFit("POST " + IN_STUDIO + shown, 415, author.post(STUDIO + shown, "{}"));
    described.mustFit(
        "POST " + all, 422, sender.send("POST", path, BodyPublishers.ofByteArray(file)));
    described.mustFit("POST " + all, 415, author.post(path, "{}"));
    described.mustFit("GET " + all, 200, author.get(path));
    described.mustFit("GET " + one, 200, author.get(place));
    described.mustFit("GET " + one, 304, author.with("If-None-Match", "\"1\"").get(place));
    for (String version : List.of("/comparison", "/thumbnail", "/screen", "/original")) {
      described.mustFit("GET " + one + version, 200, author.get(place + version));
    }
    described.mustFit("GET " + one + "/screen", 422, author.get(place + "/screen?width=1"));
    Visitor first = author.with("If-Match", "\"1\"");
    String note = "{\"kind\":\"final\",\"caption\":\"The quay\",\"may_show_place\":true}";
    described.mustFit("PUT " + one, 428, author.put(place, note));
    described.mustFit("PUT " + one, 422, first.put(place, "{}"));
    described.mustFit("PUT " + one, 200, first.put(place, note));
    described.mustFit("PUT " + one, 412, first.put(place, note));
    described.mustFit("PATCH " + one, 412, first.patch(place, "{}"));
    described.mustFit("PATCH " + one, 200, author.with("If-Match", "*").patch(place, "{}"));
    described.mustFit("DELETE " + one, 412, first.delete(place));
    described.mustFit("DELETE " + one, 204, author.with("If-Match", "\"3\"").delete(place));
    described.mustFit("GET " + one, 404, author.get(place));
  }

  private void computing() {
    String figures = IN_STUDIO + "/setups/{setup}/figures";
    String adaptations = IN_STUDIO + "/setups/{setup}/adaptations";
    List<?> kits = Visitor.items(author.get(STUDIO + "/kits"));
    for (Object setup : Visitor.items(author.get(STUDIO + "/setups?limit=100"))) {
      String path = STUDIO + "/setups/" + Told.at(setup, "id");
      described.mustFit("GET " + IN_STUDIO + "/setups/{setup}", 200, author.get(path));
      described.mustFit("GET " + figures, 200, author.get(path + "/figures"));
      described.mustFit("GET " + IN_STUDIO + "/setups/{setup}/sun", 200, author.get(path + "/sun"));
      described.mustFit(
          "GET " + IN_STUDIO + "/setups/{setup}/sun", 422, author.get(path + "/sun?days=0"));
      String suggestions = "GET " + IN_STUDIO + "/suggestions";
      described.mustFit(suggestions, 200, author.get(STUDIO + "/suggestions?q=h"));
      described.mustFit(suggestions, 422, author.get(STUDIO + "/suggestions?limit=0"));
      String signature = "GET " + IN_STUDIO + "/setups/{setup}/signature";
      described.mustFit(signature, 200, author.get(path + "/signature"));
      described.mustFit(signature, 404, author.get(STUDIO + "/setups/zzzz/signature"));
      String ofRevision = "GET " + IN_STUDIO + "/setups/{setup}/revisions/{revision}/signature";
      described.mustFit(ofRevision, 200, author.get(path + "/revisions/1/signature"));
      described.mustFit(ofRevision, 404, author.get(path + "/revisions/99/signature"));
      described.mustFit("GET " + figures, 200, author.get(path + "/figures?workings=true"));
      described.mustFit("GET " + figures, 422, author.get(path + "/figures?workings=perhaps"));
      for (Object kit : kits) {
        String wish = "{\"kit\":\"" + Told.at(kit, "id") + "\"}";
        described.mustFit("POST " + adaptations, 200, author.post(path + "/adaptations", wish));
      }
      described.mustFit("POST " + adaptations, 422, author.post(path + "/adaptations", "{}"));
      String map = "POST " + IN_STUDIO + "/setups/{setup}/reading-maps";
      String wish = "{\"over\":" + ReadingMapsOverRestTest.FLOOR + ",\"each_light\":true}";
      described.mustFit(map, 200, author.post(path + "/reading-maps", wish));
      described.mustFit(map, 422, author.post(path + "/reading-maps", "{}"));
    }
    reacting();
    sheet();
    packing();
    String document = Documents.json(Documents.setup("Described"));
    described.mustFit(
        "POST " + IN_STUDIO + "/figures", 200, author.post(STUDIO + "/figures", document));
    String both =
        "{\"document\":" + document + ",\"kit\":" + Documents.json(Documents.kit("Own")) + "}";
    described.mustFit(
        "POST " + IN_STUDIO + "/adaptations", 200, author.post(STUDIO + "/adaptations", both));
    Visitor writer = author.with("Content-Type", "text/plain");
    String tables = STUDIO + "/candela-tables";
    String operation = "POST " + IN_STUDIO + "/candela-tables";
    described.mustFit(
        operation,
        200,
        writer.send("POST", tables, BodyPublishers.ofString(CandelaTablesOverRestTest.FILE)));
    described.mustFit(operation, 422, writer.send("POST", tables, BodyPublishers.ofString("")));
    calibrating();
    mapping(document);
  }

  private void sheet() {
    String sheet = "GET " + IN_STUDIO + "/setups/{setup}/sheet.pdf";
    Object first = Visitor.items(author.get(STUDIO + "/setups?limit=1")).getFirst();
    String path = STUDIO + "/setups/" + Told.at(first, "id") + "/sheet.pdf";
    HttpResponse<String> file = described.mustFit(sheet, 200, author.get(path));
    String etag = file.headers().firstValue("ETag").orElseThrow();
    described.mustFit(sheet, 304, author.with("If-None-Match", etag).get(path));
    described.mustFit(sheet, 401, house.visitor().get(path));
    described.mustFit(sheet, 404, author.get(STUDIO + "/setups/zzzz/sheet.pdf"));
    described.mustFit(sheet, 422, author.get(path + "?paper=a3"));
  }

  private void reacting() {
    Object setup = Visitor.items(author.get(STUDIO + "/setups?limit=1")).getFirst();
    String path = STUDIO + "/setups/" + Told.at(setup, "id") + "/reactions";
    String stored = "POST " + IN_STUDIO + "/setups/{setup}/reactions";
    String falls = "\"happening\":{\"ambient_falls_stops\":1}";
    described.mustFit(stored, 200, author.post(path, "{" + falls + "}"));
    described.mustFit(stored, 422, author.post(path, "{}"));
    String own = "POST " + IN_STUDIO + "/reactions";
    String document = Documents.json(Documents.setup("Described"));
    described.mustFit(
        own,
        200,
        author.post(STUDIO + "/reactions", "{\"document\":" + document + "," + falls + "}"));
    described.mustFit(own, 422, author.post(STUDIO + "/reactions", "{}"));
  }

  private void packing() {
    Object setup = Visitor.items(author.get(STUDIO + "/setups?limit=1")).getFirst();
    Object kit = Visitor.items(author.get(STUDIO + "/kits?limit=1")).getFirst();
    String id = String.valueOf(Told.at(setup, "id"));
    String day = STUDIO + "/packing?hands=3&ready_by=19:20&setup=" + id;
    String operation = "GET " + IN_STUDIO + "/packing";
    described.mustFit(operation, 200, author.get(day + "&kit=" + Told.at(kit, "id")));
    described.mustFit(operation, 200, author.get(day + "&setup=" + id + "&not_before=19:00"));
    described.mustFit(operation, 422, author.get(STUDIO + "/packing"));
    described.mustFit(operation, 422, author.get(day + "&adapted=true"));
    described.mustFit(operation, 404, author.get(STUDIO + "/packing?setup=zzzz"));
  }

  private void mapping(String document) {
    String map = "{\"over\":" + ReadingMapsOverRestTest.FLOOR + ",\"columns\":5,\"rows\":4}";
    String operation = "POST " + IN_STUDIO + "/reading-maps";
    String body = "{\"document\":" + document + ",\"map\":" + map + "}";
    described.mustFit(operation, 200, author.post(STUDIO + "/reading-maps", body));
    described.mustFit(operation, 422, author.post(STUDIO + "/reading-maps", "{}"));
  }

  private void calibrating() {
    String all = "POST " + IN_STUDIO + "/calibrations";
    String path = STUDIO + "/calibrations";
    String sheet = Documents.json(Documents.calibrationSheet());
    described.mustFit(all, 200, author.post(path, sheet));
    described.mustFit(all, 422, author.post(path, "{}"));
    described.mustFit(all, 400, author.post(path, "{"));
    described.mustFit(all, 401, house.visitor().post(path, sheet));
  }

  private static String location(HttpResponse<String> made) {
    return made.headers().firstValue("Location").orElseThrow();
  }

  @Test
  void refusalsAreAsDescribed() {
    Visitor anybody = house.visitor();
    described.mustFit("POST /api/session", 401, house.signIn("reader@demo.example", "wrong"));
    described.mustFit("POST /api/session", 422, anybody.post("/api/session", "{}"));
    described.mustFit(
        "POST /api/session",
        403,
        anybody.with("Sec-Fetch-Site", "cross-site").post("/api/session", "{}"));
    described.mustFit("GET /api/studios", 401, anybody.get("/api/studios"));
    described.mustFit("GET /api/schemas/{file}", 404, anybody.get("/api/schemas/other.json"));
    described.mustFit(
        "GET " + IN_STUDIO + "/setups", 404, author.get("/api/studios/zzzz9zzzz9zzzz9z/setups"));
    described.mustFit(
        "GET " + IN_STUDIO + "/setups", 422, author.get(STUDIO + "/setups?limit=101"));
    described.mustFit("DELETE /api/session", 403, author.delete("/api/session"));
    described.mustFit("DELETE /api/tokens/{token}", 403, author.delete("/api/tokens/none"));
  }
}
