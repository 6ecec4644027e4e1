package lampwright.engine.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

final class MarkedScaleTest {

  private static final long SEED = 20261124;

  @ParameterizedTest
  @EnumSource
  void printedNumbersLieWithinASixthOfAStopOfTheirExactValue(MarkedScale scale) {
    for (MarkedScale.Mark mark : scale.marks()) {
      double error = scale.printedError(mark).value();
      assertTrue(Math.abs(error) < 0.15, mark + " is off by " + error);
    }
  }

  /** The lists of marks off by more than 0.05 stop; common practice, no source. */
  @ParameterizedTest
  @CsvSource({
    "APERTURE_THIRD, 1.1 1.2 2.2 3.5 11 13 14 22",
    "APERTURE_HALF, 3.3 11 13 22",
    "SHUTTER_THIRD, 30 15 6 0.6 0.3 1/6 1/15 1/30 1/60"
  })
  void marksThatAreOffAreTheKnownOnes(MarkedScale scale, String known) {
    List<String> off = new ArrayList<>();
    for (MarkedScale.Mark mark : scale.marks()) {
      if (Math.abs(scale.printedError(mark).value()) > 0.05) {
        off.add(mark.text());
      }
    }
    assertEquals(known, String.join(" ", off));
  }

  @Test
  void noFilmSpeedIsOff() {
    for (MarkedScale.Mark mark : MarkedScale.ISO_THIRD.marks()) {
      assertTrue(Math.abs(MarkedScale.ISO_THIRD.printedError(mark).value()) <= 0.05, mark::text);
    }
  }

  @ParameterizedTest
  @EnumSource
  void everyMarkIsItsOwnNearestAndIsFoundAgain(MarkedScale scale) {
    for (MarkedScale.Mark mark : scale.marks()) {
      MarkedScale.Nearest nearest = scale.nearest(mark.exact());
      assertEquals(mark, nearest.mark());
      assertFalse(nearest.tie());
      assertEquals(0, nearest.gain().value(), 1e-12);
      assertEquals(mark, scale.findMark(mark.text()).orElseThrow());
      assertEquals(mark, scale.findPrinted(mark.printed()).orElseThrow());
      assertEquals(mark, scale.findExact(mark.exact()).orElseThrow());
    }
  }

  @ParameterizedTest
  @EnumSource
  void nearestIsNeverFurtherThanHalfAStepInside(MarkedScale scale) {
    double first = scale.marks().getFirst().exact();
    double last = scale.marks().getLast().exact();
    double second = scale.marks().get(1).exact();
    double halfStep = Math.abs(Math.log(second / first)) / 2;
    Random random = new Random(SEED);
    for (int i = 0; i < 10_000; i++) {
      double value = first * Math.pow(last / first, random.nextDouble());
      double off = Math.abs(Math.log(scale.nearest(value).mark().exact() / value));
      assertTrue(off <= halfStep + 1e-9, value + ", seed " + SEED);
    }
  }

  @Test
  void tiesTakeTheSettingWithLessExposureAndSaySo() {
    MarkedScale.Nearest aperture = MarkedScale.APERTURE_FULL.nearest(Math.sqrt(Math.sqrt(2)) * 4);
    assertEquals("5.6", aperture.mark().text());
    assertTrue(aperture.tie());
    assertEquals(-0.5, aperture.gain().value(), 1e-12);
    MarkedScale.Nearest time = MarkedScale.SHUTTER_FULL.nearest(Math.sqrt(2) / 128);
    assertEquals("1/125", time.mark().text());
    assertTrue(time.tie());
    MarkedScale.Nearest iso = MarkedScale.ISO_THIRD.nearest(100 * Math.pow(2, 1.0 / 6));
    assertEquals("100", iso.mark().text());
    assertTrue(iso.tie());
  }

  @Test
  void marksBetweenLimitsIncludeBoth() {
    List<String> marks =
        MarkedScale.APERTURE_THIRD
            .marksBetween(FNumber.parse("2.8").value(), FNumber.parse("5.6").value())
            .stream()
            .map(MarkedScale.Mark::text)
            .toList();
    assertEquals(List.of("2.8", "3.2", "3.5", "4", "4.5", "5", "5.6"), marks);
    assertEquals(List.of(), MarkedScale.APERTURE_FULL.marksBetween(3, 3.5));
  }

  @Test
  void eachFullStopIsInTheThirds() {
    for (MarkedScale.Mark full : MarkedScale.APERTURE_FULL.marks()) {
      MarkedScale.Mark third = MarkedScale.APERTURE_THIRD.findMark(full.text()).orElseThrow();
      assertEquals(full.exact(), third.exact());
    }
    for (MarkedScale.Mark full : MarkedScale.SHUTTER_FULL.marks()) {
      MarkedScale.Mark third = MarkedScale.SHUTTER_THIRD.findMark(full.text()).orElseThrow();
      assertEquals(full.exact(), third.exact());
    }
  }
}
