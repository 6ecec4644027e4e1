package lampwright.engine.beam;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import lampwright.engine.unit.Degrees;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class CandelaFileTest {

  private static final String AXIAL =
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

  private static final String WHOLE_TURN =
      """
      IESNA:LM-63-2002
      [TEST] invented
      [_QUANTITY] cd s
      TILT=NONE
      1 1200 2 3 5 1 1 2 -3 0.5
      0.5, 1, 250
      0, 45,
      90 0 90 180
      270 360
      800 400 0 800 500 10 800 300 0 800 100 0
      800 400 0
      """;

  private static CandelaFile.Read read(String text) {
    return assertInstanceOf(CandelaFile.Read.class, CandelaFile.read(text));
  }

  private static CandelaFile.Refused refused(String text) {
    return assertInstanceOf(CandelaFile.Refused.class, CandelaFile.read(text));
  }

  @Test
  void numbersMayBreakOverLinesAnywhereAndCommasPartThem() {
    CandelaTable table = read(WHOLE_TURN).table();
    // Multiplier 2 times ballast factor 0.5.
    assertEquals(800, table.peakCandela());
    assertEquals(400, table.candelaAt(new Degrees(45), new Degrees(0)), 1e-12);
  }

  /** LM-63-2002 (as quoted) counts type C counterclockwise; our angles run clockwise. */
  @Test
  void horizontalAnglesOfAWholeTurnChangeTheirSense() {
    CandelaTable table = read(WHOLE_TURN).table();
    assertEquals(100, table.candelaAt(new Degrees(45), new Degrees(90)), 1e-12);
    assertEquals(500, table.candelaAt(new Degrees(45), new Degrees(270)), 1e-12);
    assertEquals(300, table.candelaAt(new Degrees(45), new Degrees(-180)), 1e-12);
    assertEquals(250, table.candelaAt(new Degrees(45), new Degrees(45)), 1e-12);
  }

  /** A foot is 0.3048 m exactly; negative sides are round (from memory). */
  @Test
  void feetBecomeMetresAndNegativeSidesRound() {
    LuminousOpening opening = read(WHOLE_TURN).opening();
    assertEquals(0.6096, opening.width().value(), 1e-12);
    assertEquals(0.9144, opening.length().value(), 1e-12);
    assertEquals(0.1524, opening.height().value(), 1e-12);
    assertTrue(opening.round());
    assertFalse(read(AXIAL).opening().round());
    assertTrue(read(AXIAL).opening().isPoint());
  }

  @Test
  void aKeywordSaysThatTheNumbersAreOfAFlash() {
    assertEquals(CandelaFile.Quantity.CANDELA, read(AXIAL).quantity());
    assertEquals(CandelaFile.Quantity.CANDELA_SECONDS, read(WHOLE_TURN).quantity());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "IESNA91\n", "IESNA:LM-63-1995\n", "IESNA:LM-63-2002\n", "IES:LM-63-2019\n"})
  void everyEditionIsRead(String header) {
    assertEquals(1000, read(AXIAL.replace("IESNA91\n", header)).table().peakCandela());
    assertEquals(
        1000,
        read("\uFEFF" + AXIAL.replace("IESNA91\n", header).replace("\n", "\r\n"))
            .table()
            .peakCandela());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "IESNA91 | IESNA:LM-63-2044 | 1 | Edition",
        "TILT=NONE | TILT=INCLUDE | 4 | Tilt",
        "TILT=NONE | TILT=lamp.tlt | 4 | Tilt",
        "TILT=NONE | [MORE] | 10 | TILT=NONE is missing",
        "1 -1 1 10 | 0 -1 1 10 | 5 | Number of lamps (0)",
        "1 -1 1 10 | 1 -2 1 10 | 5 | Lumens of a lamp (-2)",
        "1 -1 1 10 | 1 -1 0 10 | 5 | Candela multiplier (0)",
        "1 -1 1 10 | 1 -1 1 11 | 10 | Numbers (34)",
        "1 -1 1 10 | 1 -1 1 9 | 9 | Numbers (34)",
        "1 -1 1 10 | 1 -1 1 10.5 | 5 | Number of vertical angles (10.5)",
        "10 1 1 2 | 10 1 2 2 | 5 | Photometric type (2)",
        "10 1 1 2 | 10 1 3 2 | 5 | Photometric type (3)",
        "10 1 1 2 | 10 1 1 0 | 5 | Units (0)",
        "2 0 0 0 | 2 900 0 0 | 5 | Luminous width (900)",
        "1.0 1.0 0.0 | 0 1.0 0.0 | 6 | Ballast factor (0)",
        "10 20 30 | 10 10.00001 30 | 7 | Vertical angle (10.00001 °)",
        "10 20 30 | 10 30 20 | 7 | Vertical angle (20 °)",
        "80 90 | 80 190 | 7 | Vertical angle (190 °)",
        "970 | -970 | 9 | Intensity (-970 cd)",
        "970 | 97O | 9 | must be a number",
        "970 | 0x9 | 9 | must be a number",
        "970 | NaN | 9 | must be a number",
        "970 | 1e999 | 9 | must be a number",
      })
  void whatIsWrongIsRefusedWithItsLine(String right, String wrong, int line, String reason) {
    assertTrue(AXIAL.contains(right));
    CandelaFile.Refused refused = refused(AXIAL.replace(right, wrong));
    assertTrue(refused.reason().contains(reason), refused.toString());
    assertEquals(line, refused.line(), refused.toString());
  }

  @Test
  void aLastHorizontalAngleThatIsNoSymmetryIsRefused() {
    CandelaFile.Refused refused = refused(WHOLE_TURN.replace("270 360", "270 350"));
    assertEquals(9, refused.line());
    assertTrue(refused.reason().contains("360"), refused.reason());
  }

  @Test
  void whateverStandsInAFileItIsReadOrRefusedWithALineOfTheFile() {
    long seed = 20261125;
    Random random = new Random(seed);
    int read = 0;
    for (int i = 0; i < 20_000; i++) {
      String text = mutated(random.nextBoolean() ? AXIAL : WHOLE_TURN, random);
      String where = "seed " + seed + ", file " + i + ":\n" + text;
      switch (CandelaFile.read(text)) {
        case CandelaFile.Read file -> {
          read++;
          assertTrue(file.table().peakCandela() > 0, where);
          assertTrue(file.table().zonalFluxLm() >= 0, where);
          assertTrue(Double.isFinite(file.table().solidAngleSr()), where);
          file.table().findHalfPeakAngle(new Degrees(90));
        }
        case CandelaFile.Refused refused -> {
          assertTrue(refused.line() >= 1, where);
          assertTrue(refused.line() <= text.split("\r\n|\r|\n", -1).length, where);
          assertFalse(refused.reason().isBlank(), where);
        }
      }
    }
    assertTrue(read > 1_000 && read < 19_000, "read " + read);
  }

  private static String mutated(String valid, Random random) {
    List<String> bits =
        List.of(
            "-",
            "0",
            "9",
            " ",
            "\n",
            ",",
            ".",
            "e",
            "1e9",
            "\0",
            "TILT=",
            "NaN",
            "[",
            "360",
            "\r",
            "°",
            "1e-320",
            "99999999999",
            "\uFEFF",
            "-1");
    StringBuilder text = new StringBuilder(valid);
    int changes = 1 + random.nextInt(4);
    for (int i = 0; i < changes && text.length() > 1; i++) {
      int at = random.nextInt(text.length());
      int end = Math.min(text.length(), at + random.nextInt(8));
      switch (random.nextInt(4)) {
        case 0 -> text.delete(at, end);
        case 1 -> text.insert(at, bits.get(random.nextInt(bits.size())));
        case 2 -> text.replace(at, at + 1, bits.get(random.nextInt(bits.size())));
        default -> text.insert(at, text.substring(at, end));
      }
    }
    return text.toString();
  }

  @Test
  void aTextThatIsTooLongIsRefused() {
    assertTrue(refused("x".repeat(CandelaFile.MOST_CHARACTERS + 1)).reason().contains("at most"));
    assertTrue(
        refused("TILT=NONE\n" + "1 ".repeat(40_000)).reason().contains("Numbers must be at most"));
  }
}
