package lampwright.engine;

import java.util.List;
import java.util.function.Consumer;
import lampwright.engine.beam.CutSpread;
import lampwright.engine.beam.Even;
import lampwright.engine.beam.Lobe;
import lampwright.engine.beam.Opening;
import lampwright.engine.beam.Spread;
import lampwright.engine.colour.Lab;
import lampwright.engine.colour.Srgb;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.MarkedScale;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.lens.FocusedLens;
import lampwright.engine.light.ConfigurationFactors;
import lampwright.engine.light.Direction;
import lampwright.engine.light.EmittingFace;
import lampwright.engine.light.FallOff;
import lampwright.engine.light.PlacedSource;
import lampwright.engine.light.Point;
import lampwright.engine.light.Pose;
import lampwright.engine.light.Receptor;
import lampwright.engine.light.UnitVector;
import lampwright.engine.map.Contour;
import lampwright.engine.map.Contours;
import lampwright.engine.map.MapPlane;
import lampwright.engine.map.MappedLight;
import lampwright.engine.map.ReadingMap;
import lampwright.engine.power.FlashPulse;
import lampwright.engine.power.Legs;
import lampwright.engine.power.StandInWind;
import lampwright.engine.power.Wind;
import lampwright.engine.sun.ClearSky;
import lampwright.engine.unit.BaseTwo;
import lampwright.engine.unit.CandelaSeconds;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Kelvin;
import lampwright.engine.unit.Kilograms;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.MetresPerSecond;
import lampwright.engine.unit.Millimetres;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.SquareMetres;
import lampwright.engine.unit.Stops;

/**
 * A program that computes a few thousand results of the engine and prints every double bit for bit,
 * so that two platforms can be compared line by line.
 */
final class EngineDoubles {

  /** How often each formula is computed. */
  private static final int ROUNDS = 200;

  private long state = 20251125;

  private final Consumer<String> lines;

  private EngineDoubles(Consumer<String> lines) {
    this.lines = lines;
  }

  public static void main(String[] arguments) {
    print(System.out::println);
  }

  /** Hands each result on as a line. */
  static void print(Consumer<String> lines) {
    EngineDoubles doubles = new EngineDoubles(lines);
    for (int round = 0; round < ROUNDS; round++) {
      doubles.functions();
      doubles.exposure();
      doubles.light();
      doubles.power();
      doubles.lens();
      doubles.sources();
      doubles.standsAndColours();
    }
    doubles.map();
  }

  /** The same numbers on every platform: a linear congruential generator (Knuth's constants). */
  private double between(double least, double most) {
    state = state * 6364136223846793005L + 1442695040888963407L;
    return least + (most - least) * ((state >>> 11) / 9007199254740992.0);
  }

  private void print(String formula, double value) {
    lines.accept(formula + " " + Long.toHexString(Double.doubleToLongBits(value)));
  }

  private void functions() {
    double any = between(-50, 50);
    double share = between(-1, 1);
    print("sine", StrictMath.sin(any));
    print("cosine", StrictMath.cos(any));
    print("tangent", StrictMath.tan(any));
    print("arc sine", StrictMath.asin(share));
    print("arc cosine", StrictMath.acos(share));
    print("arc tangent of a share", StrictMath.atan(share));
    print("arc tangent", StrictMath.atan(any));
    print("angle", StrictMath.atan2(any, share));
    print("exponential", StrictMath.exp(any));
    print("natural logarithm", StrictMath.log(Math.abs(any)));
    print("root", Math.sqrt(Math.abs(any)));
    double a = Math.abs(any);
    double rootA = Math.sqrt(1 + a * a);
    print("root of one and a square", rootA);
    print("quotient", a / rootA);
    print("atan of quotient", StrictMath.atan(a / rootA));
    print("product", a / rootA * StrictMath.atan(a / rootA));
    print("sum", (a / rootA * StrictMath.atan(a / rootA) + share) / (2 * Math.PI));
  }

  private Metres metres() {
    return new Metres(between(0.2, 12));
  }

  private void exposure() {
    double stops = between(-20, 20);
    print("two to the power", BaseTwo.power(stops));
    print("logarithm", BaseTwo.log(between(1e-6, 1e6)));
    FNumber reading =
        FNumber.ofExposure(
            new LuxSeconds(between(0.01, 5000)), Iso.ofMark(200), MeterConstant.FLAT);
    print("reading", reading.value());
    print("mark", MarkedScale.APERTURE_THIRD.nearest(between(1, 60)).mark().exact());
    print("mired", new Kelvin(between(2000, 12000)).toMired().value());
  }

  private void light() {
    EmittingFace box = new EmittingFace.Rectangle(metres(), metres());
    EmittingFace round = new EmittingFace.Disc(metres());
    Metres distance = metres();
    print("box", box.geometry(distance));
    print("disc", round.geometry(distance));
    print("size", box.angularSize(distance).value());
    print("error", box.inverseSquareError(distance).value());
    print(
        "perpendicular",
        ConfigurationFactors.rectanglePerpendicular(
            between(0.1, 3), between(0.1, 3), between(0.1, 3)));
    print(
        "distance for gain",
        FallOff.distanceForGain(box, distance, new Stops(between(-3, 1)))
            .orElse(new Metres(0))
            .value());
    Direction direction = Direction.of(point(), point(), point());
    print("azimuth", direction.azimuth().value());
    print("elevation", direction.elevation().value());
    print(
        "lobe",
        Lobe.ofBeam(new Degrees(between(5, 170))).relativeAt(between(-1, 1), between(0, 6)));
  }

  private Point point() {
    return new Point(between(-6, 6), between(-6, 6), between(0, 4));
  }

  private void power() {
    FlashPulse pulse = new FlashPulse.Cut(new Seconds(between(0.0002, 0.005)));
    Stops down = new Stops(between(0, 9));
    print("t0.5", pulse.halfTime(down).value());
    print("t0.1", pulse.tenthTime(down).value());
    print("equivalent duration", pulse.equivalentDuration(down).value());
    print("clipped", pulse.lossIn(new Seconds(between(0.0001, 0.01)), down).value());
  }

  private void lens() {
    FocusedLens lens = FocusedLens.of(between(20, 200), between(1.4, 22), between(0.5, 30));
    Millimetres circle = new Millimetres(between(0.02, 0.06));
    print("near", lens.depthOfField(circle).near().value());
    print("far", lens.depthOfField(circle).far().orElse(new Metres(0)).value());
    print("field", lens.field(new Millimetres(36)).value());
    print("blur", lens.blurDisc(metres()).value());
  }

  private void sources() {
    UnitVector normal = UnitVector.of(between(-1, 1), between(-1, 1), between(0.1, 1));
    Point at = point();
    for (PlacedSource source : placed()) {
      String name = source.face().getClass().getSimpleName();
      print(name + ", flat", source.geometryAt(at, new Receptor.Flat(normal)));
      print(name + ", dome", source.geometryAt(at, new Receptor.Dome(normal)));
      print(name + ", toward", source.geometryAt(at, new Receptor.TowardSource()));
    }
    Spread gridded = CutSpread.of(new Even(), new Opening.Grid(between(0.5, 4)));
    print("grid", gridded.solidAngleSr());
  }

  private List<PlacedSource> placed() {
    Pose pose = Pose.toward(point(), new Point(0, 0, 1.5));
    Metres size = new Metres(between(0.2, 2));
    Spread lobe = Lobe.ofBeam(new Degrees(between(20, 120)));
    return List.of(
        new PlacedSource(new EmittingFace.PointSource(), lobe, pose),
        new PlacedSource(new EmittingFace.Rectangle(size, metres()), new Even(), pose),
        new PlacedSource(new EmittingFace.Octagon(size), new Even(), pose),
        new PlacedSource(new EmittingFace.Disc(size), new Even(), pose),
        new PlacedSource(new EmittingFace.Disc(size), lobe, pose));
  }

  private void standsAndColours() {
    StandInWind stand =
        StandInWind.of(
            new SquareMetres(between(0.1, 2)),
            metres(),
            new Legs(3, new Metres(between(0.3, 1))),
            new Kilograms(between(1, 40)));
    Wind wind = Wind.of(new MetresPerSecond(between(0, 20)), 1.6);
    print("wind", stand.force(wind).value());
    print("ballast", stand.ballast(wind, 1.5).value());
    Lab first = new Srgb(between(0, 1), between(0, 1), between(0, 1)).toLab();
    Lab second = new Srgb(between(0, 1), between(0, 1), between(0, 1)).toLab();
    print("lightness", first.lightness());
    print("difference", first.differenceTo(second));
    print("clear sky", ClearSky.smooth(new Degrees(between(-12, 80))).horizontal().value());
  }

  private void map() {
    MapPlane plane = MapPlane.plan(new Point(-4, -4, 1.4), new Metres(8), new Metres(8), 24, 24);
    List<MappedLight> lights =
        placed().stream().map(source -> new MappedLight(source, new CandelaSeconds(900))).toList();
    for (Receptor receptor :
        List.of(new Receptor.Flat(UnitVector.TOWARD_CAMERA), new Receptor.TowardSource())) {
      ReadingMap map = ReadingMap.of(plane, lights, new LuxSeconds(1), receptor);
      LuxSeconds required = new LuxSeconds(80);
      double[] levels = map.levelsInStops(required);
      for (double level : levels) {
        print("map", level);
      }
      for (Contour contour :
          Contours.of(levels, plane.columns(), plane.rows(), 0.35, List.of(-4.0, -2.0, 0.0))) {
        contour.vertices().forEach(vertex -> print("contour", vertex.xM() - vertex.yM()));
      }
      for (Contour contour : map.contours(required, List.of(new Stops(-3), new Stops(-1)))) {
        contour.vertices().forEach(vertex -> print("sought", vertex.xM() - vertex.yM()));
      }
    }
  }
}
