package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpRequest.BodyPublishers;
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

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class CandelaTablesOverRestTest {

  private static final String TABLES = "/api/studios/demo/candela-tables";

  /** The mini example of REFERENCE section 4 (field order of LM-63-1991; invented data). */
  static final String FILE =
      """
      IESNA91
      [TEST] invented demonstration data
      [MANUFAC] none
      TILT=NONE
      1 -1 1 10 1 1 2 0 0 0
      1.0 1.0 0.0
      0 10 20 30 40 50 60 70 80 90
      0
      1000 970 880 740 560 380 220 100 30 0
      """;

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor reader;

  @BeforeAll
  void aReaderComesWithAToken() {
    reader = house.withToken("reader@demo.example");
  }

  private HttpResponse<String> post(String text) {
    return reader
        .with("Content-Type", "text/plain; charset=utf-8")
        .send("POST", TABLES, BodyPublishers.ofString(text));
  }

  /** Zonal flux 2016.6 lm, REFERENCE section 4; half of 1000 cd lies at 43.33 degrees. */
  @Test
  void aFileBecomesATableWithItsFluxAndBeam() {
    HttpResponse<String> answer = post(FILE);
    assertEquals(200, answer.statusCode(), answer.body());
    Map<?, ?> table = Visitor.object(answer);
    assertEquals(2016.567, Told.number(table, "zonal_flux_lm"), 0.004);
    assertEquals(1000, Told.number(table, "peak_cd"));
    assertEquals(2 * (40 + 10 / 3.0), Told.number(table, "beam_angle_deg"), 1e-9);
    assertEquals("candela", table.get("quantity"));
  }

  @Test
  void theTableFitsIntoAModifierAndIsKeptWithItsKit() {
    Object candela = Visitor.object(post(FILE)).get("candela");
    Map<String, Object> modifier =
        Map.of("name", "measured dish", "kind", "dish", "candela", candela);
    Map<String, Object> kit =
        Documents.with(
            Documents.kit("With a table"), "modifiers", List.of(Map.of("modifier", modifier)));
    Visitor author = house.withToken("author@demo.example");
    HttpResponse<String> made = author.post("/api/studios/demo/kits", Json.print(kit));
    assertEquals(201, made.statusCode(), made.body());
    assertEquals(
        candela, Told.at(Visitor.object(made), "document", "modifiers", 0, "modifier", "candela"));
  }

  @Test
  void aBadFileIsRefusedWithItsLine() {
    HttpResponse<String> answer = post(FILE.replace("970", "-970"));
    assertEquals(422, answer.statusCode(), answer.body());
    String message = Told.at(Visitor.object(answer), "errors", 0, "message").toString();
    assertTrue(message.startsWith("Line 9: Intensity (-970 cd)"), message);
  }

  @Test
  void whatIsNoTextOrTooLongOrElsewhereIsRefused() {
    assertEquals(415, reader.post(TABLES, "{}").statusCode());
    assertEquals(413, post("x".repeat((1 << 20) + 1)).statusCode());
    assertEquals(422, post("").statusCode());
    assertEquals(422, post("\0").statusCode());
    assertEquals(
        400,
        reader
            .with("Content-Type", "text/plain")
            .send("POST", TABLES, BodyPublishers.ofByteArray(new byte[] {(byte) 0xff}))
            .statusCode());
    assertEquals(
        404,
        reader
            .with("Content-Type", "text/plain")
            .send("POST", "/api/studios/zzzz/candela-tables", BodyPublishers.ofString(FILE))
            .statusCode());
  }
}
