package lampwright.setup.adapting;

import java.util.concurrent.TimeUnit;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FiguresComputation;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Twelve lights with twenty heads in six models and twenty-five modifiers at every setting of an
 * ordinary camera: the search, from setup and kit to the best plan, and somebody else's
 * integer-programming solver on the same problem. Both must find the same cost before anything is
 * timed. The mode samples, so that the median can be read. The package is the search's, because
 * what is measured is not public.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(value = 1, jvmArgsAppend = "--enable-native-access=ALL-UNNAMED")
public class AdaptationBenchmark {

  /** Which of the invented setups; the presets are drawn with them. */
  @Param({"0", "1", "2", "3", "4", "5"})
  public long seed = 0;

  private RandomCase drawn = RandomCase.ofTwelveLights(0, true);
  private Figures figures = FiguresComputation.of(drawn.setup());
  private IntegerProgram program = program();
  private double least;

  @Setup
  public void agree() {
    drawn = RandomCase.ofTwelveLights(seed, true);
    figures = FiguresComputation.of(drawn.setup());
    program = program();
    least = oneWay().cost();
    agreed(program.solve());
  }

  private IntegerProgram program() {
    return new IntegerProgram(new StatedProblem(drawn.setup(), drawn.kit(), drawn.wishes()));
  }

  /** Makes ready and searches; the figures of the setup are there, as for whoever looks at it. */
  @Benchmark
  public AdaptationPlan oneWay() {
    return find(1).ways().getFirst();
  }

  /** The best three that are truly different, as a visitor gets them. */
  @Benchmark
  public SettingSearch.Found threeWays() {
    return find(Wishes.USUAL_WAYS);
  }

  private SettingSearch.Found find(int ways) {
    AdaptationProblem problem =
        new AdaptationProblem(
            drawn.setup(),
            figures,
            drawn.kit(),
            drawn.wishes().withWays(ways),
            drawn.setup().ambient().map(ambient -> ambient.level()),
            Trial.NONE);
    return SettingSearch.find(problem, () -> false);
  }

  /**
   * Building and solving the program; the candidates at each setting are there, reduced as far as
   * anybody would.
   */
  @Benchmark
  @Warmup(iterations = 1, time = 3)
  @Measurement(iterations = 3, time = 5)
  public double integerProgram() {
    return program.solve();
  }

  /**
   * The same program without our bound, as it is stated: every setting that asks for something else
   * of the lights. Once an iteration, because it takes its time.
   */
  @Benchmark
  @Warmup(iterations = 1, time = 1)
  @Measurement(iterations = 3, time = 1)
  public double wholeIntegerProgram() {
    return agreed(program.solveWhole());
  }

  private double agreed(double theirs) {
    if (Math.abs(least - theirs) > 1e-6 * Math.max(1, theirs)) {
      throw new IllegalStateException(least + " is not " + theirs);
    }
    return theirs;
  }
}
