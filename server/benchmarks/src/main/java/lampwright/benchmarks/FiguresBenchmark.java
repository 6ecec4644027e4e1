package lampwright.benchmarks;

import java.util.concurrent.TimeUnit;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FiguresComputation;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** All figures of one setup of twelve lights; goal: under 50 microseconds. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class FiguresBenchmark {

  private final SetupDocument setup = TwelveLights.document();

  @Benchmark
  public Figures allFiguresOfTwelveLights() {
    return FiguresComputation.of(setup);
  }
}
