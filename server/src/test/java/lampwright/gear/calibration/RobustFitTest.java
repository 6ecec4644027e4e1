package lampwright.gear.calibration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import lampwright.engine.unit.Stops;
import org.junit.jupiter.api.Test;

/** The fit against answers that do not come from it. */
class RobustFitTest {

  /** Air flow, water temperature, acid, loss: Brownlee 1965, 21 days (from memory). */
  private static final double[][] STACK_LOSS = {
    {80, 27, 89, 42}, {80, 27, 88, 37}, {75, 25, 90, 37}, {62, 24, 87, 28}, {62, 22, 87, 18},
    {62, 23, 87, 18}, {62, 24, 93, 19}, {62, 24, 93, 20}, {58, 23, 87, 15}, {58, 18, 80, 14},
    {58, 18, 89, 14}, {58, 17, 88, 13}, {58, 18, 82, 11}, {58, 19, 93, 12}, {50, 18, 89, 8},
    {50, 18, 86, 7}, {50, 19, 72, 8}, {50, 19, 79, 8}, {50, 20, 80, 9}, {56, 20, 82, 15},
    {70, 20, 91, 15}
  };

  /** Plain least squares of the stack loss data in any textbook (from memory). */
  private static final double[] STACK_PLAIN = {-39.9197, 0.7156, 1.2953, -0.1521};

  private static List<FitRow> stackLoss() {
    List<FitRow> rows = new ArrayList<>();
    for (double[] day : STACK_LOSS) {
      rows.add(FitRow.ofReading(new double[] {1, day[0], day[1], day[2]}, new Stops(day[3])));
    }
    return rows;
  }

  @Test
  void thePlainFitOfTheStackLossDataIsTheTextbooks() {
    RobustFit fit = RobustFit.of(stackLoss());
    for (int i = 0; i < 4; i++) {
      double[] one = new double[4];
      one[i] = 1;
      double plain =
          fit.estimate(one).orElseThrow().value().value() + fit.plainMinusRobust(one).value();
      assertEquals(STACK_PLAIN[i], plain, 0.0001);
    }
  }

  /** Days 1, 3, 4 and 21 are the known outliers of these data (the literature since 1960s). */
  @Test
  void theFitOfTheStackLossDataTrustsTheKnownOutliersLeast() {
    RobustFit fit = RobustFit.of(stackLoss());
    List<Integer> doubted = new ArrayList<>();
    for (int i = 0; i < STACK_LOSS.length; i++) {
      if (fit.weight(i) < 0.8) {
        doubted.add(i + 1);
      }
    }
    assertTrue(doubted.containsAll(List.of(4, 21)), doubted.toString());
    assertTrue(List.of(1, 3, 4, 21).containsAll(doubted), doubted.toString());
  }

  /** Where nothing is out of line, the answer is that of the normal equations, solved here. */
  @Test
  void wellBehavedReadingsGiveTheNormalEquationsAnswer() {
    for (long seed = 1; seed <= 50; seed++) {
      Random random = new Random(seed);
      List<FitRow> rows = new ArrayList<>();
      for (int i = 0; i < 14; i++) {
        rows.add(
            FitRow.ofReading(
                new double[] {i % 2, 1 - i % 2, i % 3 == 0 ? -1 : 0},
                new Stops(12 + (random.nextDouble() - 0.5) * 0.1)));
      }
      RobustFit fit = RobustFit.of(rows);
      double[] expected = byNormalEquations(rows, 3);
      for (int i = 0; i < 3; i++) {
        double[] one = new double[3];
        one[i] = 1;
        assertEquals(
            expected[i], fit.estimate(one).orElseThrow().value().value(), 1e-9, "seed " + seed);
      }
    }
  }

  /** At the minimum of Huber's sum the bent residuals balance on every unknown. */
  @Test
  void bentResidualsBalanceOnEveryUnknown() {
    for (long seed = 1; seed <= 200; seed++) {
      Random random = new Random(seed);
      List<FitRow> rows = new ArrayList<>();
      for (int i = 0; i < 20; i++) {
        double gross = random.nextInt(6) == 0 ? 3 * random.nextGaussian() : 0;
        rows.add(
            FitRow.ofReading(
                new double[] {i % 2, 1 - i % 2, i % 3 == 0 ? -1 : 0, i % 5 == 0 ? -1 : 0},
                new Stops(12 + 0.1 * random.nextGaussian() + gross)));
      }
      RobustFit fit = RobustFit.of(rows);
      for (int unknown = 0; unknown < 4; unknown++) {
        double balance = 0;
        for (int i = 0; i < rows.size(); i++) {
          balance +=
              fit.weight(i) * fit.residual(i).value() * rows.get(i).combination().getEntry(unknown);
        }
        assertEquals(0, balance, 1e-8, "seed " + seed);
      }
    }
  }

  @Test
  void combinationsOutsideOfTheReadingsAreNotAnswered() {
    RobustFit fit =
        RobustFit.of(
            List.of(
                FitRow.ofReading(new double[] {1, -1, 0}, new Stops(10)),
                FitRow.ofReading(new double[] {0, 0, 1}, new Stops(12))));
    assertTrue(fit.estimate(new double[] {1, 0, 0}).isEmpty());
    assertTrue(fit.estimate(new double[] {0, 1, 0}).isEmpty());
    assertEquals(10, fit.estimate(new double[] {1, -1, 0}).orElseThrow().value().value(), 1e-12);
    assertEquals(12, fit.estimate(new double[] {0, 0, 1}).orElseThrow().value().value(), 1e-12);
  }

  private static double[] byNormalEquations(List<FitRow> rows, int unknowns) {
    double[][] normal = new double[unknowns][unknowns + 1];
    for (FitRow row : rows) {
      for (int i = 0; i < unknowns; i++) {
        double factor = row.combination().getEntry(i);
        for (int j = 0; j < unknowns; j++) {
          normal[i][j] += factor * row.combination().getEntry(j);
        }
        normal[i][unknowns] += factor * row.valueStops();
      }
    }
    for (int pivot = 0; pivot < unknowns; pivot++) {
      for (int i = 0; i < unknowns; i++) {
        double factor = i == pivot ? 0 : normal[i][pivot] / normal[pivot][pivot];
        for (int j = pivot; j <= unknowns; j++) {
          normal[i][j] -= factor * normal[pivot][j];
        }
      }
    }
    double[] solved = new double[unknowns];
    for (int i = 0; i < unknowns; i++) {
      solved[i] = normal[i][unknowns] / normal[i][i];
    }
    return solved;
  }
}
