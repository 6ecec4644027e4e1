package lampwright.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import lampwright.document.Json;
import lampwright.document.JsonNull;
import lampwright.document.Problem;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.gear.GearForms;
import lampwright.gear.Head;
import lampwright.gear.Kit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;

class SetupDocumentTest {

  private static final Object RICH = Documents.resource("slipway-at-dusk.json");
  private static final Object PLAIN = Documents.resource("one-light.json");
  private static final Object KIT = Documents.resource("kit.json");

  @ParameterizedTest
  @FieldSource("lampwright.setup.Documents#SETUPS")
  void aSetupReadsAsItWasWritten(String name) {
    SetupDocument setup = Documents.setup(Documents.resource(name));
    String text = Json.print(SetupDocument.FORM.write(setup));
    SetupDocument again = Documents.setup(Json.parse(text));
    assertEquals(setup, again);
    assertEquals(text, Json.print(SetupDocument.FORM.write(again)));
  }

  @Test
  void aKitReadsAsItWasWritten() {
    Kit kit = Documents.kit(KIT);
    assertEquals(kit, Documents.kit(Json.parse(Json.print(Kit.FORM.write(kit)))));
  }

  @Test
  void whatTheAuthorWroteIsWrittenBackToTheLetter() {
    assertEquals(
        Json.print(PLAIN).replace(".0,", ",").replace(".0}", "}"),
        Json.print(SetupDocument.FORM.write(Documents.setup(PLAIN))));
  }

  @ParameterizedTest
  @CsvSource({
    "5.6, 5.65685424949238, 5.6",
    "11, 11.31370849898476, 11",
    "3.3, 3.363585661014858, 3.3",
    "1.2, 1.259921049894873, 1.2",
    "1.189207115002721, 1.189207115002721, 1.189207115002721",
    "5.66, 5.66, 5.66",
    "0.95, 0.95, 0.95",
    "128, 128, 128"
  })
  void anFNumberStandsForItsExactValueAndIsWrittenAsPrinted(
      double printed, double exact, double written) {
    FNumber fNumber = Documents.sound(GearForms.fNumber(), printed);
    assertEquals(exact, fNumber.value(), 1e-12 * exact);
    Object json = GearForms.fNumber().write(fNumber);
    assertEquals(written, ((Number) json).doubleValue());
    assertEquals(fNumber, Documents.sound(GearForms.fNumber(), json));
  }

  @ParameterizedTest
  @CsvSource({
    "1/125, 0.0078125, 1/125", "1/200, 0.0049215666011518, 1/200", "30, 32, 30",
    "0.3, 0.31498026247371, 0.3", "1/3, 0.333333333333333, 1/3", "1/2, 0.5, 1/2",
    "0.5, 0.5, 1/2", "1/90, 0.0111111111111111, 1/90", "12.34, 12.34, 12.34",
    "600, 600, 600", "1/32000, 0.00003125, 1/32000"
  })
  void aShutterTimeStandsForItsExactValueAndIsWrittenAsPrinted(
      String printed, double exact, String written) {
    var time = Documents.sound(GearForms.shutterTime(), printed);
    assertEquals(exact, time.seconds(), 1e-12 * exact);
    assertEquals(written, GearForms.shutterTime().write(time));
    assertEquals(time, Documents.sound(GearForms.shutterTime(), written));
  }

  @ParameterizedTest
  @ValueSource(strings = {"1/99999", "601", "0.25", "1/0", "0", "1/125 s", "f/8", "1/12.5", "-1"})
  void anImpossibleShutterTimeIsRefused(String text) {
    assertEquals(
        "The document (\""
            + text
            + "\") must be a shutter time such as \"1/125\" or \"0.5\", from 1/32000 to 600"
            + " seconds.",
        Documents.problems(GearForms.shutterTime(), text).getFirst().message());
  }

  @Test
  void anIsoStandsForItsExactValue() {
    Iso iso = Documents.sound(GearForms.iso(), 640.0);
    assertEquals(634.9604207872796, iso.value(), 1e-9);
    assertEquals(640L, GearForms.iso().write(iso));
    assertEquals(110L, GearForms.iso().write(Documents.sound(GearForms.iso(), 110.0)));
  }

  @Test
  void everyTimeInMillisecondsIsWrittenAsItWasRead() {
    Object head = Documents.at(PLAIN, "/lights/0/head");
    for (int i = 1; i <= 50_000; i++) {
      Object json = Documents.with(head, "/duration_t05_ms", i / 1000.0);
      Object written =
          Head.FORM.writeObject(Documents.sound(Head.FORM, json)).get("duration_t05_ms");
      assertEquals(i / 1000.0, ((Number) Objects.requireNonNull(written)).doubleValue());
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "/lights/2/id | \"key\" | /lights/2/id | Id (\"key\") is another light's already. Maybe"
            + " \"key-2\"?",
        "/build_order/1/light | \"nobody\" | /build_order/1/light | Light (\"nobody\") is not one"
            + " of this setup's lights.",
        "/build_order/2/light | \"key\" | /build_order/2/light | Light (\"key\") is built already"
            + " in an earlier step.",
        "/lights/0/stops_down | 9 | /lights/0/stops_down | Stops down (9 stops) must be within the"
            + " head's range of 8 stops.",
        "/lights/2/place | {\"x_m\":0,\"y_m\":0.01,\"z_m\":1.6} | /lights/2/place | Place must be"
            + " at least 0.05 m away from the target. Maybe one of them is meant elsewhere?",
        "/lights/0/aim | {\"x_m\":-3.6,\"y_m\":-4.2,\"z_m\":3.4} | /lights/0/aim | Aim must be at"
            + " least 0.05 m away from the light's own place. Maybe leave it out: it is the target"
            + " then.",
        "/camera/body/iso_lowest | 3200 | /camera/body/iso_lowest | Lowest ISO (ISO 3200) must not"
            + " be above the highest (ISO 1600). Maybe they are swapped?",
        "/camera/lens/widest_f_number | 45 | /camera/lens/widest_f_number | Widest aperture (f/45)"
            + " must not be smaller than the smallest (f/32). Maybe they are swapped?",
        "/lights/0/place/z_m | 101 | /lights/0/place/z_m | Place, z (101 m) must be at most 100 m."
            + " Maybe 1.6 m?",
        "/exposure/f_number | 0 | /exposure/f_number | F-number (0) must be at least 0.5. Maybe"
            + " 5.6?",
        "/lights/0/output/kind | \"x\" | /lights/0/output/kind | There is no field \"kind\" here."
            + " Known are: f_number, iso, distance_m, stops_down.",
        "/lights/0/head/output/kind | \"x\" | /lights/0/head/output/kind | Kind (\"x\") must be"
            + " one of guide_number, reading.",
        "/lights/0/reading/known | \"computed\" | /lights/0/reading/known | Known (\"computed\")"
            + " must be one of metered, set, estimated.",
      })
  void whatContradictsIsToldWhereItStands(String at, String value, String pointer, String message) {
    Object json = Documents.with(RICH, at, Json.parse(value));
    assertEquals(
        List.of(new Problem(pointer, message)), Documents.problems(SetupDocument.FORM, json));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "/lights/1/target/surface_facing_deg | /lights/1/target/surface_facing_deg",
        "/occasion/place/latitude_deg | /occasion/place/latitude_deg",
        "/occasion/place/longitude_deg | /occasion/place/longitude_deg",
        "/lights/2/reading | /lights/2/stops_down",
        "/build_order/0/what | /build_order/0",
        "/lights/0/head/output/kind | /lights/0/head/output/kind",
        "/title | /title",
        "/exposure/time | /exposure/time"
      })
  void whatIsMissingIsToldWhereItShouldStand(String gone, String pointer) {
    List<Problem> problems = Documents.problems(SetupDocument.FORM, Documents.without(RICH, gone));
    assertEquals(List.of(pointer), problems.stream().map(Problem::pointer).toList());
  }

  @Test
  void aSetupNeedsALight() {
    assertEquals(
        "Lights (0 items) must have at least 1.",
        Documents.problems(SetupDocument.FORM, Documents.with(PLAIN, "/lights", List.of()))
            .getFirst()
            .message());
  }

  @Test
  void aPairingNamesWhatTheKitHolds() {
    Object wrong = Documents.with(KIT, "/pairings/0/head", "another");
    assertEquals(
        new Problem(
            "/pairings/0/head", "Head (\"another\") must be the name of one of this kit's heads."),
        Documents.problems(Kit.FORM, wrong).getFirst());
    assertEquals(
        "/pairings/0/modifier",
        Documents.problems(Kit.FORM, Documents.with(KIT, "/pairings/0/modifier", "x"))
            .getFirst()
            .pointer());
    Object twice = Documents.with(KIT, "/pairings/1", Documents.at(KIT, "/pairings/0"));
    assertEquals("/pairings/1", Documents.problems(Kit.FORM, twice).getFirst().pointer());
  }

  @Test
  void aLightsHeadMayNameAPackBecauseASetupKnowsNone() {
    Object json = Documents.with(PLAIN, "/lights/0/head/pack", "floor pack");
    SetupDocument setup = Documents.setup(json);
    assertEquals(Optional.of("floor pack"), setup.lights().getFirst().head().pack());
    assertEquals(
        "floor pack", Documents.at(SetupDocument.FORM.write(setup), "/lights/0/head/pack"));
  }

  @Test
  void lightsStandInBuildOrder() {
    Object json =
        Documents.with(
            RICH,
            "/build_order",
            List.of(Map.of("light", "rim-left"), Map.of("what", "Wait."), Map.of("light", "key")));
    assertEquals(
        List.of("rim-left", "key", "shed"),
        Documents.setup(json).lightsInBuildOrder().stream().map(l -> l.id().text()).toList());
  }

  @Test
  void nullsAreRefusedEverywhere() {
    for (String key : ((Map<?, ?>) RICH).keySet().stream().map(String.class::cast).toList()) {
      List<Problem> problems =
          Documents.problems(SetupDocument.FORM, Documents.with(RICH, "/" + key, JsonNull.NULL));
      assertEquals("/" + key, problems.getFirst().pointer());
      assertTrue(problems.getFirst().message().contains("(null)"), problems.toString());
    }
  }
}
