package lampwright.gear.calibration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whether the stated uncertainty is the real one, over many invented afternoons. */
class CoverageTest {

  private static final int TRIALS = 500;

  /** As many as the bench reads. */
  private static final int READINGS = 16;

  @ParameterizedTest
  @CsvSource({"0.06, 5", "0.1, 1", "0.15, 2", "0.2, 3", "0.3, 4"})
  void theIntervalOf95HoldsTheTruthInNinetyToNinetyNineOfAHundredCases(
      double scatterStops, long seed) {
    double share = shareInside(scatterStops, seed, false);
    assertTrue(share >= 0.90 && share <= 0.99, "seed " + seed + ": " + share);
  }

  @ParameterizedTest
  @CsvSource({"0.06, 6", "0.1, 7", "0.15, 8", "0.2, 9"})
  void itHoldsTooWhereOneReadingOfSixteenIsOneOrTwoStopsOff(double scatterStops, long seed) {
    double share = shareInside(scatterStops, seed, true);
    assertTrue(share >= 0.90 && share <= 0.99, "seed " + seed + ": " + share);
  }

  private static double shareInside(double scatterStops, long seed, boolean oneIsWrong) {
    Random random = new Random(seed);
    int inside = 0;
    int all = 0;
    for (int trial = 0; trial < TRIALS; trial++) {
      int wrong = oneIsWrong ? random.nextInt(READINGS) : -1;
      double off = (random.nextBoolean() ? 1 : -1) * (1 + random.nextDouble());
      int[] read = {0};
      Calibration found =
          new Bench(() -> random.nextGaussian() * scatterStops + (read[0]++ == wrong ? off : 0))
              .readAll()
              .calibration();
      for (Calibration.CalibratedHead head : found.heads()) {
        double width = head.uncertainty().within95().value();
        inside += Math.abs(Bench.outputErrorStops(head)) <= width ? 1 : 0;
        all++;
      }
      for (Calibration.CalibratedModifier modifier : found.modifiers()) {
        double width = modifier.uncertainty().within95().value();
        inside += Math.abs(Bench.lossErrorStops(modifier)) <= width ? 1 : 0;
        all++;
      }
    }
    return inside / (double) all;
  }

  /**
   * Student's table: 12.706 with 1 degree of freedom, 2.776 with 4, 2.228 with 10, 2.042 with 30.
   */
  @Test
  void intervalsAreAsWideAsStudentsTableSays() {
    assertEquals(12.706, StudentT.halfWidthOf95(1), 0.0005);
    assertEquals(2.776, StudentT.halfWidthOf95(4), 0.0005);
    assertEquals(2.228, StudentT.halfWidthOf95(10), 0.0005);
    assertEquals(2.042, StudentT.halfWidthOf95(30), 0.0005);
    assertEquals(1.960, StudentT.halfWidthOf95(100_000), 0.0005);
  }
}
