package lampwright.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import lampwright.engine.unit.Stops;
import lampwright.gear.Kit;
import lampwright.setup.SetupDocument;
import lampwright.setup.buildable.Demand;
import lampwright.setup.buildable.DemandCatalogue;
import lampwright.setup.buildable.Judge;
import lampwright.setup.buildable.RandomStudios;
import lampwright.setup.buildable.Verdict;
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
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * One kit against 100,000 generated setups, yes or no within a third of a stop and else how far
 * off; goal: under 250 ms on two cores (the median).
 */
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 4)
@Fork(1)
public class BuildableBenchmark {

  private static final int SETUPS = 100_000;
  private static final int CHUNK = 500;
  private static final int THREADS = 2;
  private static final Stops WITHIN = new Stops(1.0 / 3);

  /** The catalogue, a kit that is known already, and two threads. */
  @State(Scope.Benchmark)
  public static class Catalogue {

    /** Which kit: of a bag, of a van, of a studio, lights only, of a rental house. */
    @Param({"1"})
    public int kit;

    private final ExecutorService threads = Executors.newFixedThreadPool(THREADS);
    private DemandCatalogue demands = DemandCatalogue.of(List.of());
    private Kit piece = RandomStudios.kit(0);
    private Judge judge = Judge.of(piece, demands);

    /** Generates the setups. */
    @Setup
    public void generate() {
      List<Demand> all =
          IntStream.range(0, SETUPS)
              .parallel()
              .mapToObj(RandomStudios::setup)
              .map(setup -> Demand.of(setup, FiguresComputation.of(setup)))
              .toList();
      demands = DemandCatalogue.of(all);
      piece = RandomStudios.kit(kit);
      judge = Judge.of(piece, demands);
    }

    /** Ends the threads. */
    @TearDown
    public void end() {
      threads.shutdown();
    }

    int judgeAll(Judge first) throws Exception {
      AtomicInteger next = new AtomicInteger();
      List<Future<Integer>> parts = new ArrayList<>();
      for (int i = 0; i < THREADS; i++) {
        Judge own = first.another();
        parts.add(threads.submit(() -> judgeSome(own, next)));
      }
      int made = 0;
      for (Future<Integer> part : parts) {
        made += part.get();
      }
      return made;
    }

    private int judgeSome(Judge own, AtomicInteger next) {
      int made = 0;
      for (int from = next.getAndAdd(CHUNK); from < SETUPS; from = next.getAndAdd(CHUNK)) {
        for (int i = from; i < Math.min(SETUPS, from + CHUNK); i++) {
          made += own.judge(i, WITHIN) instanceof Verdict.Within ? 1 : 0;
        }
      }
      return made;
    }
  }

  /** Some setups with their figures. */
  @State(Scope.Benchmark)
  public static class Some {

    private final List<SetupDocument> setups =
        IntStream.range(0, 1_000).mapToObj(RandomStudios::setup).toList();
    private final List<Figures> figures = setups.stream().map(FiguresComputation::of).toList();
  }

  /** All setups for a kit that is known. */
  @Benchmark
  public int judgeAll(Catalogue catalogue) throws Exception {
    return catalogue.judgeAll(catalogue.judge);
  }

  /** The same for a kit that has to be looked at first. */
  @Benchmark
  public int judgeAllForANewKit(Catalogue catalogue) throws Exception {
    return catalogue.judgeAll(Judge.of(catalogue.piece, catalogue.demands));
  }

  /** What is done where a setup is saved, a thousand times. */
  @Benchmark
  public List<Demand> demandsOfAThousand(Some some) {
    List<Demand> demands = new ArrayList<>();
    for (int i = 0; i < some.setups.size(); i++) {
      demands.add(Demand.of(some.setups.get(i), some.figures.get(i)));
    }
    return demands;
  }

  /** A thousand demands packed. */
  @Benchmark
  public DemandCatalogue packAThousand(Some some) {
    return DemandCatalogue.of(demandsOfAThousand(some));
  }
}
