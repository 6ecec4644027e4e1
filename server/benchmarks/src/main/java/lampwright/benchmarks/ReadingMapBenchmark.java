package lampwright.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import lampwright.engine.light.LightAtTarget;
import lampwright.engine.light.Point;
import lampwright.engine.light.Receptor;
import lampwright.engine.light.UnitVector;
import lampwright.engine.map.Contour;
import lampwright.engine.map.Contours;
import lampwright.engine.map.MapPlane;
import lampwright.engine.map.MappedLight;
import lampwright.engine.map.ReadingMap;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;
import lampwright.setup.Light;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.LightComputation;
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
 * The reading map of twelve lights on 200 by 200 points, and the same sums by cutting each face
 * into little squares, as many as make the worst point a metre and more from every face right to
 * 0.001 stop; goals: the map under 20 milliseconds, at least a hundred times the naive sums. These
 * are taken at one point in a hundred, so their time is to be multiplied by a hundred.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class ReadingMapBenchmark {

  private static final int POINTS = 200;
  private static final double TOLERANCE_STOPS = 0.001;
  private static final int MOST_PIECES = 512;
  private static final int EVERY = 10;
  private static final double NEAR_M = 1;
  private static final LuxSeconds AMBIENT = new LuxSeconds(0);
  private static final LuxSeconds REQUIRED = new LuxSeconds(78);
  private static final List<Double> LEVELS = List.of(-6.0, -5.0, -4.0, -3.0, -2.0, -1.0, 0.0, 1.0);

  /** How the meter is held over the plane. */
  @Param({"TOWARD_CAMERA", "UP", "TOWARD_SOURCE", "DOME"})
  public Held held;

  /** How the meter is held over the plane. */
  public enum Held {
    TOWARD_CAMERA,
    UP,
    TOWARD_SOURCE,
    DOME
  }

  private final MapPlane plane =
      MapPlane.plan(new Point(-5, -5, 1.5), new Metres(10), new Metres(10), POINTS, POINTS);
  private final List<MappedLight> lights = new ArrayList<>();
  private final List<NaiveFace> faces = new ArrayList<>();
  private Receptor receptor = new Receptor.TowardSource();
  private int pieces = 1;
  private double[] levels = new double[0];
  private ReadingMap map = ReadingMap.of(plane, lights, AMBIENT, receptor);

  @Setup
  public void take() {
    receptor =
        switch (held) {
          case TOWARD_CAMERA -> new Receptor.Flat(UnitVector.TOWARD_CAMERA);
          case UP -> new Receptor.Flat(UnitVector.of(0, 0, 1));
          case TOWARD_SOURCE -> new Receptor.TowardSource();
          case DOME -> new Receptor.Dome(UnitVector.TOWARD_CAMERA);
        };
    SetupDocument setup = TwelveLights.document();
    for (Light light : setup.lights()) {
      LightAtTarget atTarget =
          LightComputation.atTarget(
              setup, light, light.head(), light.modifierOrStandard(), light.output());
      MappedLight mapped =
          new MappedLight(atTarget.source(), atTarget.peakAt(light.stopsDown().orElseThrow()));
      lights.add(mapped);
      faces.add(NaiveFace.of(mapped));
    }
    map = map();
    levels = map.levelsInStops(REQUIRED);
    if (held == Held.UP || held == Held.TOWARD_CAMERA) {
      fitPieces();
    }
  }

  /** Doubles the pieces until the worst point of the map is right. */
  private void fitPieces() {
    ReadingMap exact = map();
    double worst = worstStops(exact);
    while (worst > TOLERANCE_STOPS && pieces < MOST_PIECES) {
      pieces *= 2;
      worst = worstStops(exact);
    }
    System.out.println("# naive sums with " + pieces + " pieces a side: " + worst + " stop off");
  }

  private double worstStops(ReadingMap exact) {
    double worst = 0;
    for (int row = 0; row < POINTS; row += EVERY) {
      for (int column = 0; column < POINTS; column += EVERY) {
        double right = exact.sumAt(column, row).value();
        Point at = plane.at(column, row);
        if (right > 0.01 && isFar(at)) {
          double naive = naiveAt(at);
          worst = Math.max(worst, Math.abs(Math.log(naive / right)) / Math.log(2));
        }
      }
    }
    return worst;
  }

  private boolean isFar(Point at) {
    return faces.stream().allMatch(face -> face.place().distanceTo(at).value() > NEAR_M);
  }

  private double naiveAt(Point at) {
    UnitVector n = ((Receptor.Flat) receptor).normal();
    double sum = AMBIENT.value();
    for (NaiveFace face : faces) {
      sum += face.exposureLxS(at, n, pieces);
    }
    return sum;
  }

  @Benchmark
  public ReadingMap map() {
    return ReadingMap.of(plane, lights, AMBIENT, receptor);
  }

  /** Only for flat receptors: there is no naive meter that turns to each source. */
  @Benchmark
  public double naiveSumsAtOnePointInAHundred() {
    if (pieces == 1) {
      throw new IllegalStateException("No naive sums for " + held);
    }
    double sum = 0;
    for (int row = 0; row < POINTS; row += EVERY) {
      for (int column = 0; column < POINTS; column += EVERY) {
        sum += naiveAt(plane.at(column, row));
      }
    }
    return sum;
  }

  @Benchmark
  public List<Contour> contoursOfEightLevels() {
    return Contours.of(levels, POINTS, POINTS, 10.0 / (POINTS - 1), LEVELS);
  }

  /** The same, each crossing sought in the light itself. */
  @Benchmark
  public List<Contour> contoursOfEightLevelsSought() {
    return map.contours(REQUIRED, LEVELS.stream().map(Stops::new).toList());
  }
}
