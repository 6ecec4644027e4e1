package lampwright.benchmarks;

import com.google.ortools.Loader;
import java.util.concurrent.TimeUnit;
import lampwright.engine.match.Allotment;
import lampwright.engine.match.AllotmentSearch;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Who gets which head and modifier at one camera setting, from cold, and the same from an
 * integer-programming solver. The mode samples, so that the median can be read.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(value = 1, jvmArgsAppend = "--enable-native-access=ALL-UNNAMED")
public class AllotmentBenchmark {

  /** Steps of the dial for each head with each modifier, and what a second of waiting costs. */
  @Param({"1, 0", "5, 0", "5, 1"})
  public String stepsAndPrice = "1, 0";

  private StudioAllotment problem = new StudioAllotment(1, 1, 0);
  private AllotmentSearch warm = new AllotmentSearch(problem.supplies, 0);

  @Setup
  public void agree() {
    Loader.loadNativeLibraries();
    String[] parts = stepsAndPrice.split(", ");
    problem = new StudioAllotment(1, Integer.parseInt(parts[0]), Double.parseDouble(parts[1]));
    double ours = fromCold().cost();
    double theirs = integerProgramme();
    if (Math.abs(ours - theirs) > 1e-6) {
      throw new IllegalStateException(ours + " is not " + theirs);
    }
    warm = new AllotmentSearch(problem.supplies, problem.pricePerWait);
    warm.least(problem.rows, Double.POSITIVE_INFINITY, () -> false);
  }

  @Benchmark
  public Allotment fromCold() {
    return new AllotmentSearch(problem.supplies, problem.pricePerWait)
        .least(problem.rows, Double.POSITIVE_INFINITY, () -> false)
        .orElseThrow();
  }

  @Benchmark
  public double lowerBound() {
    return warm.lowerBound(problem.rows);
  }

  /** With making the programme. */
  @Benchmark
  public double integerProgramme() {
    AllotmentProgramme programme = new AllotmentProgramme(problem);
    double cost = programme.leastCost();
    programme.delete();
    return cost;
  }

  /** A programme that is there, to be solved once. */
  @State(Scope.Benchmark)
  public static class Made {
    private AllotmentProgramme programme;

    @Setup(Level.Invocation)
    public void make(AllotmentBenchmark benchmark) {
      programme = new AllotmentProgramme(benchmark.problem);
    }

    @TearDown(Level.Invocation)
    public void delete() {
      programme.delete();
    }
  }

  /** Without making it. */
  @Benchmark
  public double integerProgrammeMadeBefore(Made made) {
    return made.programme.leastCost();
  }
}
