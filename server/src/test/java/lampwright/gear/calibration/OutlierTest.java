package lampwright.gear.calibration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.light.EmittingFace;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Readings that the others contradict. */
class OutlierTest {

  @Test
  void oneReadingOfEightThatIsFourFifthsOfAStopOffIsNamedAndHardlyMovesTheResult() {
    for (long seed = 1; seed <= 100; seed++) {
      for (int wrong = 0; wrong < 8; wrong++) {
        double off = seed % 2 == 0 ? 0.8 : -0.8;
        Calibration without = eight(seed, -1, 0);
        Calibration with = eight(seed, wrong, off);
        String told = "seed " + seed + ", reading " + (wrong + 1) + ": " + with.outliers();
        assertEquals(
            List.of(wrong + 1), with.outliers().stream().map(Outlier::number).toList(), told);
        assertEquals(off, with.outliers().getFirst().off().value(), 0.25, told);
        assertTrue(with.outliers().getFirst().certain(), told);
        assertEquals(
            Bench.outputErrorStops(without.heads().getFirst()),
            Bench.outputErrorStops(with.heads().getFirst()),
            0.1,
            told);
        assertEquals(
            without.modifiers().getFirst().loss().value(),
            with.modifiers().getFirst().loss().value(),
            0.1,
            told);
      }
    }
  }

  /** One head, four readings with its reflector and four with the box, a twentieth of scatter. */
  private static Calibration eight(long seed, int wrong, double off) {
    Random random = new Random(seed);
    Bench bench = new Bench(() -> random.nextGaussian() * 0.05);
    double[] distances = {1.5, 2, 3, 4};
    for (int i = 0; i < 8; i++) {
      bench.read("big", i < 4 ? "" : "box", distances[i % 4], i % 2, i == wrong ? off : 0);
    }
    return Calibration.of(bench.sheet(Bench.head("big")));
  }

  @Test
  void readingsThatOnlyScatterAreRarelyAccused() {
    int accused = 0;
    for (long seed = 1; seed <= 300; seed++) {
      Random random = new Random(seed);
      Bench bench = new Bench(() -> random.nextGaussian() * 0.1).readAll();
      accused += bench.calibration().outliers().size();
    }
    // 4800 readings; three deviations leave 0.3 % of a normal distribution, Student's tails more.
    assertTrue(accused < 48, accused + " of 4800");
  }

  @Test
  void aPlainFitIsSaidToDifferWhereAnOutlierWouldHaveMovedIt() {
    assertTrue(eight(1, 3, 0.8).plainFit().differs());
    assertFalse(eight(1, -1, 0).plainFit().differs());
  }

  @Test
  void twoReadingsThatContradictEachOtherAreBothNamedAndNeitherIsBlamed() {
    Bench bench = Bench.withoutErrors();
    for (double distance : new double[] {1, 1.5, 2, 3, 4, 5}) {
      bench.read("big", "", distance, 0);
    }
    bench.read("big", "box", 2, 0).read("big", "box", 3, 0, 1);
    Calibration found = Calibration.of(bench.sheet(Bench.head("big")));
    assertEquals(List.of(7, 8), found.outliers().stream().map(Outlier::number).toList());
    for (Outlier outlier : found.outliers()) {
      assertFalse(outlier.certain());
      assertTrue(outlier.sentence().endsWith("Read it once more?"), outlier.sentence());
    }
  }

  @Test
  void aReadingThatNoOtherBearsOnIsCalledUnchecked() {
    Bench bench = Bench.withoutErrors().read("big", "", 2, 0).read("big", "", 3, 0);
    Calibration found = Calibration.of(bench.read("big", "box", 2, 0, 5).sheet(Bench.head("big")));
    assertEquals(
        List.of(true, true, false),
        found.readings().stream().map(Calibration.FittedReading::checked).toList());
    assertEquals(List.of(), found.outliers());
  }

  /** Feet for metres is 2 log2(3.2808) = 3.43 stops; the dome is 0.40 (ISO 2720 as quoted). */
  @ParameterizedTest
  @CsvSource({
    "0.8, 'Reading 4 is 0.8 stop too high: power dial or distance? It would fit at 1.52 m.'",
    "-0.6, 'Reading 4 is 0.6 stop too low: distance? It would fit at 2.46 m.'",
    "-0.4, 'Reading 4 is 0.4 stop too low: dome for flat receptor or distance? It would fit at 2.3"
        + " m.'",
    "2, 'Reading 4 is 2.0 stops too high: power dial or ISO on the meter?'",
    "3.43, 'Reading 4 is 3.4 stops too high: feet written as metres or power dial?'",
    "1.5, 'Reading 4 is 1.5 stops too high: power dial?'"
  })
  void aSentenceSaysWhatIsOffAndWhy(double off, String sentence) {
    CalibrationReading reading =
        new CalibrationReading(
            "big",
            Optional.empty(),
            FNumber.of(32),
            0,
            new Iso(100),
            new Metres(2),
            Stops.ZERO,
            MeterConstant.FLAT);
    assertEquals(
        sentence,
        Outlier.of(4, reading, new EmittingFace.PointSource(), new Stops(off), true).sentence());
  }
}
