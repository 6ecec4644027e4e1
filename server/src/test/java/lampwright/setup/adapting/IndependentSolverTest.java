package lampwright.setup.adapting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.LongStream;
import lampwright.Sweep;
import lampwright.setup.figures.FiguresComputation;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The search against the SCIP solver on cases too large to try everything: twelve lights, twenty
 * heads in six models, twenty-five modifiers. SCIP comes with OR-tools and knows nothing of the
 * search; it gets the problem as {@link StatedProblem} states it.
 */
class IndependentSolverTest {

  private static final double TOLERANCE = 1e-6;

  static LongStream seeds() {
    return LongStream.rangeClosed(1, Sweep.cases(6));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void anIntegerProgrammingSolverFindsTheSameCost(long seed) {
    RandomCase drawn = RandomCase.ofTwelveLights(seed, false);
    AdaptationPlan best =
        AdaptationSearch.best(
                drawn.setup(), FiguresComputation.of(drawn.setup()), drawn.kit(), drawn.wishes())
            .orElseThrow();
    double cost = best.cost() + 1_000 * best.outside();
    double solved =
        new IntegerProgram(new StatedProblem(drawn.setup(), drawn.kit(), drawn.wishes())).solve();
    assertEquals(solved, cost, TOLERANCE * Math.max(1, solved));
  }
}
