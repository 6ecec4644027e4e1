package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.ArrayList;
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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class CalibrationOverRestTest {

  private static final String CALIBRATIONS = "/api/studios/demo/calibrations";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor reader;

  @BeforeAll
  void aReaderComesWithAToken() {
    reader = house.withToken("reader@demo.example");
  }

  /** f/32 at 2 m is a guide number of 64 m (definition); marks and tenths leave 0.05 stop. */
  @Test
  void aHeadAndItsBoxAreFoundFromElevenReadings() {
    Map<?, ?> answer = calibrated(Documents.calibrationSheet());
    Object head = Told.at(answer, "heads", 0);
    assertEquals(64, Told.number(head, "guide_number_m"), 1.5);
    assertTrue(Told.number(head, "standard_error_stops") < 0.1);
    assertTrue(Told.number(head, "above_makers_stops") < -0.4);
    Object octagon = Told.at(answer, "modifiers", 0);
    assertEquals("octagon", Told.at(octagon, "name"));
    assertEquals(1.5, Told.number(octagon, "loss_stops"), 0.1);
    assertEquals(2, Told.number(octagon, "loss_at_m"), 0);
    assertEquals("f/32", Told.at(answer, "pairs", 0, "shown"));
  }

  @Test
  void theReadingThatIsAStopTooHighIsNamedWithItsCauses() {
    Map<?, ?> answer = calibrated(Documents.calibrationSheet());
    assertEquals(1, Told.list(answer, "outliers").size());
    Object outlier = Told.at(answer, "outliers", 0);
    assertEquals(4, Told.number(outlier, "number"), 0);
    assertEquals(1, Told.number(outlier, "off_stops"), 0.15);
    assertEquals(List.of("power_dial", "iso", "distance"), Told.list(outlier, "causes"));
    assertTrue(
        Told.at(outlier, "sentence").toString().startsWith("Reading 4 is 1.0 stop too high: "),
        outlier.toString());
    assertEquals(
        List.of("Loss of snoot: there is no reading with it."), Told.list(answer, "undetermined"));
    assertEquals(1, Told.list(answer, "dials").size());
  }

  private Map<?, ?> calibrated(Map<String, Object> sheet) {
    HttpResponse<String> answer = reader.post(CALIBRATIONS, Documents.json(sheet));
    assertEquals(200, answer.statusCode(), answer.body());
    return Visitor.object(answer);
  }

  @ParameterizedTest
  @CsvSource({
    "head, other, /readings/2/head",
    "modifier, other, /readings/2/modifier",
    "distance_m, 0, /readings/2/distance_m",
    "tenths, 10, /readings/2/tenths",
    "stops_down, -1, /readings/2/stops_down",
    "meter_constant_lx_s, 0, /readings/2/meter_constant_lx_s",
    "f_number, 0, /readings/2/f_number",
    "mood, 1, /readings/2/mood"
  })
  void aWrongFieldOfAReadingIsPointedAt(String field, String value, String pointer) {
    List<Object> readings = new ArrayList<>(Told.list(Documents.calibrationSheet(), "readings"));
    Map<String, Object> wrong = new LinkedHashMap<>();
    ((Map<?, ?>) readings.get(2)).forEach((key, kept) -> wrong.put(key.toString(), kept));
    wrong.put(field, value.matches("-?\\d+") ? Integer.valueOf(value) : value);
    readings.set(2, wrong);
    refused(Documents.with(Documents.calibrationSheet(), "readings", readings), pointer);
  }

  @Test
  void aNameThatStandsTwiceAndAnEmptySheetArePointedAt() {
    Map<String, Object> head = Map.of("name", "400 W·s battery head");
    refused(
        Documents.with(Documents.calibrationSheet(), "heads", List.of(head, head)),
        "/heads/1/name");
    refused(Documents.with(Documents.calibrationSheet(), "readings", List.of()), "/readings");
    refused(Map.of("readings", List.of()), "/heads");
  }

  private void refused(Map<String, Object> sheet, String pointer) {
    HttpResponse<String> answer = reader.post(CALIBRATIONS, Json.print(sheet));
    assertEquals(422, answer.statusCode(), answer.body());
    assertTrue(answer.body().contains("\"pointer\":\"" + pointer + "\""), answer.body());
  }

  @Test
  void whoIsNoMemberDoesNotLearnOfTheStudio() {
    HttpResponse<String> answer =
        reader.post(
            "/api/studios/zzzz9zzzz9zzzz9z/calibrations",
            Documents.json(Documents.calibrationSheet()));
    assertEquals(404, answer.statusCode());
  }
}
