package lampwright.engine.match;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.google.ortools.Loader;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Problems of a studio's size, too large to try everything, against a solver that is not ours. */
final class AllotmentSearchIntegerProgrammeTest {

  /** How exactly the solver keeps whole numbers and costs: its own default, "1e-6". */
  private static final double SOLVER_TOLERANCE = 1e-6;

  @BeforeAll
  static void loadTheSolver() {
    String platform = System.getProperty("os.name") + " " + System.getProperty("os.arch");
    assumeTrue(
        platform.equals("Linux amd64"),
        "The solver's native library comes for Linux on x86-64 only, not for " + platform + ".");
    Loader.loadNativeLibraries();
  }

  @ParameterizedTest
  @CsvSource({
    "1, 0, 1, 10, no waits",
    "1, 1, 1, 5, waits",
    "4, 1, 1, 4, waits traded at the dial",
    "4, 6, 1, 3, dear waits",
    "2, 0.5, 3, 4, lights that want the same by threes"
  })
  void costsAsMuchAsAnIntegerProgrammeSays(
      int steps, double pricePerWait, int alike, int runs, String kind) {
    for (int run = 0; run < runs; run++) {
      Random random = new Random(31 * run + steps);
      AllotmentCase problem =
          AllotmentCase.studio(random, 12, steps, pricePerWait, light -> light / alike * alike);
      Allotment answer = problem.least();
      String about = kind + ", run " + run;
      assertTrue(answer.isProved(), about);
      assertEquals(answer.cost(), problem.costOf(answer.choiceOfRow()), 1e-9, about);
      assertEquals(
          IntegerProgramme.leastCost(problem), answer.cost(), SOLVER_TOLERANCE * 20, about);
    }
  }
}
