package lampwright.web;

import static lampwright.web.GearForTests.GEAR;
import static lampwright.web.GearForTests.KITS;
import static lampwright.web.GearForTests.gear;
import static lampwright.web.GearForTests.head;
import static lampwright.web.GearForTests.id;
import static lampwright.web.GearForTests.kept;
import static lampwright.web.GearForTests.kitOf;
import static lampwright.web.GearForTests.octagon;
import static lampwright.web.GearForTests.told;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
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
class GearFilesOverRestTest {

  private static final String IMPORT = GEAR + "/import";
  private static final String TRIAL = IMPORT + "?trial=true";
  private static final String EXPORT = GEAR + "/export";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor author;

  @BeforeAll
  void aStudioHasGear() {
    author = house.withToken("author@demo.example");
    kept(
        author,
        GEAR,
        Documents.with(
            Documents.with(head("=Head, \"first\"", 64), "count", 2.0),
            "condition",
            List.of(Map.of("date", "2026-05-01", "note", "Dented,\nstill fine."))));
    kept(author, GEAR, head("Second", 45.5));
    kept(author, GEAR, octagon("Box"));
  }

  private HttpResponse<String> sendTable(String where, String table) {
    return author
        .with("Content-Type", "text/csv; charset=utf-8")
        .send("POST", where, BodyPublishers.ofString(table));
  }

  private static Map<?, ?> done(HttpResponse<String> answer) {
    assertEquals(200, answer.statusCode(), answer.body());
    return Visitor.object(answer);
  }

  private String export(String query) {
    HttpResponse<String> answer = author.get(EXPORT + query);
    assertEquals(200, answer.statusCode(), answer.body());
    return answer.body();
  }

  private static double counted(Map<?, ?> done, String outcome) {
    return Told.number(done, "counts", outcome);
  }

  @Test
  void whatIsExportedComesInAsTheSame() {
    String table = export("?format=csv&kind=head");
    String list = export("");
    Map<?, ?> byTable = done(sendTable(IMPORT, table));
    Map<?, ?> byList = done(author.post(IMPORT, list));
    assertEquals(Told.list(byTable, "lines").size(), counted(byTable, "same"));
    assertEquals(Told.list(byList, "lines").size(), counted(byList, "same"));
    assertTrue(counted(byList, "same") >= 3);
    assertEquals(table, export("?format=csv&kind=head"));
    assertEquals(list, export(""));
    assertEquals(1, Told.number(told(author, GEAR + "?q=Second"), "items", 0, "revision"));
  }

  @Test
  void aTableThatWasTakenOutGivesBackWhatWasDeleted() {
    String place =
        kept(
            author,
            GEAR,
            gear("gel", Map.of("name", "+Green", "shift_mired", -35.0, "loss_stops", 0.4)));
    String table = export("?format=csv&kind=gel");
    Object document = told(author, place).get("document");
    assertEquals(204, author.with("If-Match", "\"1\"").delete(place).statusCode());
    // A new studio, or gear that has gone, knows no id.
    Map<?, ?> back = done(sendTable(IMPORT, table.replace(id(place), "")));
    assertEquals(1, counted(back, "new"));
    String again = GEAR + "/" + Told.at(back, "lines", 0, "id");
    assertEquals(document, told(author, again).get("document"));
    assertEquals(
        table.replace(id(place), ""), export("?format=csv&kind=gel").replace(id(again), ""));
  }

  @Test
  void aTrialSaysOfEachLineWhatItWouldDoAndDoesNothing() {
    String place = kept(author, GEAR, gear("stand", Map.of("name", "Trial", "highest_m", 3.0)));
    String table =
        """
        id,kind,stand.name,stand.highest_m
        ,stand,Trial,3
        ,stand,Trial two,2
        ,stand,Trial three,"2,5"
        %s,stand,Trial renamed,3
        zzzz9zzzz9zzzz9z,stand,Nobody's,3
        ,stand,Trial two,4
        """
            .formatted(id(place));
    String before = export("");
    Map<?, ?> said = done(sendTable(TRIAL, table));
    assertEquals(true, said.get("trial"));
    assertEquals(
        List.of("same", "new", "faulty", "faulty", "faulty", "faulty"),
        Told.list(said, "lines").stream().map(line -> Told.at(line, "outcome")).toList());
    assertEquals(4, Told.number(said, "lines", 2, "number"));
    assertEquals(4, Told.number(said, "lines", 2, "faults", 0, "column"));
    assertEquals("/stand/highest_m", Told.at(said, "lines", 2, "faults", 0, "pointer"));
    assertTrue(Told.at(said, "lines", 3, "faults", 0, "message").toString().contains("twice"));
    assertTrue(Told.at(said, "lines", 4, "faults", 0, "message").toString().contains("none of"));
    assertEquals(before, export(""));

    HttpResponse<String> refused = sendTable(IMPORT, table);
    assertEquals(422, refused.statusCode());
    assertEquals("/4/stand/highest_m", Told.at(Visitor.object(refused), "errors", 0, "pointer"));
    assertTrue(
        Told.at(Visitor.object(refused), "errors", 0, "message")
            .toString()
            .startsWith("Number 4, column 4: "));
    assertEquals(before, export(""), "nothing of a faulty file is kept");
  }

  @Test
  void aLineChangesTheGearOfItsKindAndName() {
    String place = kept(author, GEAR, gear("stand", Map.of("name", "Boom", "highest_m", 3.0)));
    String table = "kind,stand.name,stand.highest_m,count\r\nstand,Boom,4.5,2\r\n";
    Map<?, ?> said = done(sendTable(TRIAL, table));
    assertEquals(1, counted(said, "changed"));
    assertEquals(id(place), Told.at(said, "lines", 0, "id"));
    done(sendTable(IMPORT + "?message=Counted", table));
    Map<?, ?> now = told(author, place);
    assertEquals(2, Told.number(now, "revision"));
    assertEquals(4.5, Told.number(now, "document", "stand", "highest_m"));
    assertEquals("Counted", Told.at(told(author, place + "/revisions"), "items", 0, "message"));
  }

  @Test
  void twoOfOneKindAndNameAreToldApartByTheirIdsOnly() {
    kept(author, GEAR, gear("stand", Map.of("name", "Alike", "highest_m", 3.0)));
    kept(author, GEAR, gear("stand", Map.of("name", "Alike", "highest_m", 2.0)));
    Map<?, ?> said = done(sendTable(TRIAL, "kind,stand.name,stand.highest_m\nstand,Alike,4\n"));
    assertTrue(
        Told.at(said, "lines", 0, "faults", 0, "message").toString().contains("Give the id"));
    String both = export("?format=csv&kind=stand");
    assertEquals(0, counted(done(sendTable(TRIAL, both)), "faulty"));
  }

  @Test
  void aKitThatWouldBreakKeepsTheWholeFileOut() {
    String one = kept(author, GEAR, head("Import A", 64));
    String two = kept(author, GEAR, head("Import B", 64));
    String kit = kept(author, KITS, kitOf("Of imports", one, two));
    String twins = file(one, head("Same name", 64), two, head("Same name", 64));
    Map<?, ?> said = done(author.post(TRIAL, twins));
    assertTrue(Told.at(said, "clash").toString().contains("\"Of imports\""), said.toString());
    assertEquals(409, author.post(IMPORT, twins).statusCode());
    assertEquals("Import A", Told.at(told(author, one), "document", "head", "name"));
    // One after the other would clash; together they only change places.
    String swapped = file(one, head("Import B", 64), two, head("Import A", 64));
    done(author.post(IMPORT, swapped));
    assertEquals("Import B", Told.at(told(author, kit), "resolved", "heads", 0, "head", "name"));
    assertEquals(2, Told.number(told(author, kit), "revision"));
  }

  private static String file(
      String one, Map<String, Object> first, String two, Map<String, Object> second) {
    return Documents.json(
        Map.of(
            "gear",
            List.of(
                Map.of("id", id(one), "document", first),
                Map.of("id", id(two), "document", second))));
  }

  @Test
  void aListsFaultsArePointedAtByTheirPlace() {
    String file =
        "{\"gear\":[{\"document\":{\"kind\":\"gel\",\"gel\":{\"name\":\"A\",\"shift_mired\":1}}}]}";
    HttpResponse<String> answer = author.post(IMPORT, file);
    assertEquals(422, answer.statusCode());
    assertEquals(
        "/1/document/gel/loss_stops", Told.at(Visitor.object(answer), "errors", 0, "pointer"));
    assertEquals(422, author.post(IMPORT, "{\"gears\":[]}").statusCode());
    assertEquals(400, author.post(IMPORT, "{").statusCode());
  }

  @Test
  void whatIsNoFileOfGearIsRefusedWithAReason() {
    HttpResponse<String> semicolons = sendTable(IMPORT, "kind;stand.name\nstand;A\n");
    assertEquals(422, semicolons.statusCode());
    assertTrue(semicolons.body().contains("semicolons"), semicolons.body());
    Visitor latin = author.with("Content-Type", "text/csv");
    byte[] bytes = "kind,stand.name\nstand,Stativ groß\n".getBytes(StandardCharsets.ISO_8859_1);
    assertEquals(400, latin.send("POST", IMPORT, BodyPublishers.ofByteArray(bytes)).statusCode());
    Visitor said = author.with("Content-Type", "text/csv; charset=windows-1252");
    assertEquals(415, said.send("POST", IMPORT, BodyPublishers.ofString("")).statusCode());
    assertEquals(415, author.postForm(IMPORT, "a=b").statusCode());
    assertEquals(413, sendTable(IMPORT, "a".repeat((1 << 20) + 1)).statusCode());
    assertEquals(422, author.get(EXPORT + "?format=csv").statusCode());
    assertEquals(422, author.get(EXPORT + "?format=xml").statusCode());
  }

  @Test
  void whoReadsGearTakesItOutAndOnlyAuthorsTakeItIn() {
    Visitor reader = house.withToken("reader@demo.example");
    HttpResponse<String> table = reader.get(EXPORT + "?format=csv&kind=modifier");
    assertEquals(200, table.statusCode());
    assertEquals("text/csv; charset=utf-8", type(table));
    assertEquals(
        "attachment; filename=\"modifier.csv\"",
        table.headers().firstValue("Content-Disposition").orElseThrow());
    assertEquals("application/json", type(reader.get(EXPORT)));
    assertEquals(403, reader.post(TRIAL, "{\"gear\":[]}").statusCode());
    assertEquals(401, house.visitor().get(EXPORT).statusCode());
    assertFalse(table.body().contains("=Head"), "another kind's gear is not in it");
  }

  private static String type(HttpResponse<String> answer) {
    return answer.headers().firstValue("Content-Type").orElseThrow();
  }
}
