package lampwright.engine.map;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import lampwright.engine.beam.Even;
import lampwright.engine.beam.Lobe;
import lampwright.engine.beam.Omnidirectional;
import lampwright.engine.beam.Spread;
import lampwright.engine.light.EmittingFace;
import lampwright.engine.light.PlacedSource;
import lampwright.engine.light.Point;
import lampwright.engine.light.Pose;
import lampwright.engine.light.Receptor;
import lampwright.engine.light.SampledField;
import lampwright.engine.light.UnitVector;
import lampwright.engine.unit.CandelaSeconds;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;
import org.junit.jupiter.api.Test;

final class ReadingMapTest {

  private static final long SEED = 20261125;

  private static MappedLight light(Random random, EmittingFace face, Spread spread) {
    Point place =
        Point.of(random.nextDouble(-4, 4), random.nextDouble(-4, 4), random.nextDouble(0.5, 4));
    Point aim = Point.of(random.nextDouble(-1, 1), random.nextDouble(-1, 1), 0.3);
    Pose pose =
        new Pose(place, UnitVector.between(place, aim), new Degrees(random.nextDouble(-180, 180)));
    return new MappedLight(
        new PlacedSource(face, spread, pose), new CandelaSeconds(random.nextDouble(10, 2000)));
  }

  private static List<MappedLight> lights(Random random) {
    List<MappedLight> lights = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      lights.add(
          light(
              random,
              new EmittingFace.Rectangle(
                  new Metres(random.nextDouble(0.1, 2)), new Metres(random.nextDouble(0.1, 2))),
              new Even()));
      lights.add(
          light(
              random, new EmittingFace.Octagon(new Metres(random.nextDouble(0.3, 2))), new Even()));
      lights.add(
          light(random, new EmittingFace.Disc(new Metres(random.nextDouble(0.05, 1))), new Even()));
      lights.add(
          light(random, new EmittingFace.PointSource(), new Lobe(random.nextDouble(0.5, 220))));
    }
    lights.add(light(random, new EmittingFace.PointSource(), new Omnidirectional()));
    lights.add(light(random, new EmittingFace.Disc(new Metres(0.4)), new Lobe(4)));
    lights.add(light(random, new EmittingFace.Octagon(new Metres(0.9)), new Lobe(12)));
    return lights;
  }

  private static MapPlane plane(Random random) {
    return random.nextBoolean()
        ? MapPlane.plan(Point.of(-3, -3, 0.2), new Metres(6), new Metres(6), 25, 24)
        : MapPlane.upright(
            Point.of(-2, 1, 0), new Degrees(20), new Metres(5), new Metres(2.5), 25, 20);
  }

  /** Fast against exact, on both kinds of plane and with each receptor. */
  @Test
  void everyPointIsWhatThePlacedSourcesGiveThere() {
    Random random = new Random(SEED);
    for (int round = 0; round < 30; round++) {
      MapPlane plane = plane(random);
      List<MappedLight> lights = lights(random);
      UnitVector any =
          UnitVector.of(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
      Receptor receptor =
          switch (round % 3) {
            case 0 -> new Receptor.TowardSource();
            case 1 -> new Receptor.Flat(any);
            default -> new Receptor.Dome(any);
          };
      ReadingMap map = ReadingMap.of(plane, lights, new LuxSeconds(3), receptor);
      for (int row = 0; row < plane.rows(); row++) {
        for (int column = 0; column < plane.columns(); column++) {
          double sum = 3;
          double sampled = 0;
          for (int i = 0; i < lights.size(); i++) {
            MappedLight light = lights.get(i);
            double peak = light.peak().value();
            Point at = plane.at(column, row);
            double exact = peak * light.source().geometryAt(at, receptor);
            double d = at.distanceTo(light.source().pose().place()).value();
            double stray = 1e-6 * peak / (d * d);
            double fast = map.exposureAt(i, column, row).value();
            double share = light.source().field() instanceof SampledField ? 1e-4 : 1e-5;
            assertEquals(
                exact,
                fast,
                Math.min(share * exact + share * stray, Math.max(stray, share * exact)),
                "seed " + SEED + ", round " + round + ", " + light + " at " + at);
            sum += exact;
            sampled += light.source().field() instanceof SampledField ? exact : 0;
          }
          assertEquals(sum, map.sumAt(column, row).value(), 1e-5 * sum + 1e-4 * sampled);
        }
      }
    }
  }

  @Test
  void theAngleOverItsSineIsRightToTenDigits() {
    for (double angle = 1e-4; angle < Math.PI - 1e-3; angle += 1e-4) {
      double exact = angle / Math.sin(angle);
      assertEquals(exact, SideAngle.overSine(Math.cos(angle)), 1e-10 * exact, "at " + angle);
    }
    assertEquals(1, SideAngle.overSine(1), 1e-12);
    assertTrue(Double.isFinite(SideAngle.overSine(-1)));
  }

  @Test
  void aLobesTableIsTheLobe() {
    for (double exponent : new double[] {0.3, 1, 4.07, 20.5, 100, 199, 5000}) {
      Lobe lobe = new Lobe(exponent);
      Spread table = lobe.tabled();
      for (double cosine = 1e-5; cosine <= 1; cosine += 1e-5) {
        double exact = lobe.relativeAt(cosine, 0);
        assertEquals(
            exact,
            table.relativeAt(cosine, 0),
            exact > 1e-6 ? 1e-5 * exact : 1e-9,
            exponent + " " + cosine);
      }
    }
  }

  /** Twice the light is one stop, and two equal lights are too. */
  @Test
  void levelsAreStopsAndLightAdds() {
    Random random = new Random(SEED);
    MappedLight light =
        light(random, new EmittingFace.Rectangle(new Metres(0.9), new Metres(1.2)), new Even());
    MappedLight doubled =
        new MappedLight(light.source(), new CandelaSeconds(2 * light.peak().value()));
    MapPlane plane = plane(random);
    Receptor receptor = new Receptor.TowardSource();
    ReadingMap one = ReadingMap.of(plane, List.of(light), LuxSeconds.NONE, receptor);
    ReadingMap two = ReadingMap.of(plane, List.of(light, light), LuxSeconds.NONE, receptor);
    ReadingMap strong = ReadingMap.of(plane, List.of(doubled), LuxSeconds.NONE, receptor);
    LuxSeconds required = new LuxSeconds(20);
    double[] levels = one.levelsInStops(required);
    double[] sums = two.levelsInStops(required);
    double[] strongs = strong.levelsInStops(0, required);
    int lit = 0;
    for (int i = 0; i < levels.length; i++) {
      if (levels[i] > ReadingMap.DARK.value()) {
        lit++;
        assertEquals(levels[i] + 1, sums[i], 1e-9);
        assertEquals(levels[i] + 1, strongs[i], 1e-9);
      }
    }
    assertTrue(lit > 100, "lit " + lit);
  }

  /**
   * A right contour, by one point after the other: at most a fortieth of a cell from it there is
   * more light on one side than on the other.
   */
  @Test
  void contoursPassWhereTheLightIsAtTheLevelAlsoWhereThePlaneCutsALeaningFace() {
    Random random = new Random(SEED);
    int leaps = 0;
    for (int trial = 0; trial < 24; trial++) {
      double bearing = random.nextDouble(0, 2 * Math.PI);
      UnitVector leaning =
          UnitVector.of(Math.cos(bearing), Math.sin(bearing), random.nextDouble(-0.8, 0.8));
      Point place =
          Point.of(random.nextDouble(-1, 1), random.nextDouble(-1, 1), random.nextDouble(0.7, 1.3));
      EmittingFace face =
          switch (trial % 3) {
            case 0 -> new EmittingFace.Rectangle(new Metres(0.9), new Metres(1.2));
            case 1 -> new EmittingFace.Octagon(new Metres(1.2));
            default -> new EmittingFace.Disc(new Metres(0.5));
          };
      PlacedSource source =
          new PlacedSource(face, new Even(), new Pose(place, leaning, new Degrees(0)));
      MapPlane plane = MapPlane.plan(Point.of(-2, -2, 1), new Metres(4), new Metres(4), 41, 41);
      Receptor receptor = new Receptor.Flat(UnitVector.of(-leaning.x(), -leaning.y(), 0));
      LuxSeconds ambient = new LuxSeconds(trial % 2 == 0 ? 0 : 8);
      ReadingMap map =
          ReadingMap.of(
              plane, List.of(new MappedLight(source, new CandelaSeconds(80))), ambient, receptor);
      LuxSeconds required = new LuxSeconds(25);
      for (Contour contour :
          map.contours(required, List.of(new Stops(-1), Stops.ZERO, Stops.ONE))) {
        for (Contour.Vertex vertex : contour.vertices()) {
          double least = Double.MAX_VALUE;
          double most = 0;
          for (int way = 0; way < 8; way++) {
            double angle = way * Math.PI / 4;
            Point at =
                Point.of(
                    -2 + 0.1 * vertex.xM() + 0.0025 * Math.cos(angle),
                    -2 + 0.1 * vertex.yM() + 0.0025 * Math.sin(angle),
                    1);
            double exposure = ambient.value() + 80 * source.geometryAt(at, receptor);
            least = Math.min(least, exposure);
            most = Math.max(most, exposure);
          }
          double right = 25 * Math.pow(2, contour.level());
          assertTrue(
              least <= right && right <= most,
              "seed %d, trial %d, level %s at %s: %s to %s for %s"
                  .formatted(SEED, trial, contour.level(), vertex, least, most, right));
          leaps += most > 2 * least ? 1 : 0;
        }
      }
    }
    assertTrue(leaps > 200, leaps + " leaps");
  }

  /** No light is a level too: a floor, so that no infinity reaches a drawing. */
  @Test
  void whereNoLightArrivesTheLevelIsDark() {
    MapPlane plane = MapPlane.plan(Point.of(-1, -1, 0), new Metres(2), new Metres(2), 3, 3);
    ReadingMap map = ReadingMap.of(plane, List.of(), LuxSeconds.NONE, new Receptor.TowardSource());
    for (double level : map.levelsInStops(new LuxSeconds(20))) {
      assertEquals(-20, level);
    }
    assertEquals(
        "Light (0) must be from 0 to -1.",
        assertThrows(IllegalArgumentException.class, () -> map.exposureAt(0, 0, 0)).getMessage());
  }

  @Test
  void planesSayWhereTheirPointsAreAndRefuseSkewedGrids() {
    MapPlane plan = MapPlane.plan(Point.of(-1, -2, 0.5), new Metres(2), new Metres(4), 3, 5);
    assertEquals(Point.of(-1, -2, 0.5), plan.at(0, 0));
    assertEquals(Point.of(1, 2, 0.5), plan.at(2, 4));
    MapPlane upright =
        MapPlane.upright(Point.of(0, 3, 0), new Degrees(90), new Metres(2), new Metres(2.5), 3, 6);
    assertEquals(0, upright.at(2, 5).distanceTo(Point.of(0, 5, 2.5)).value(), 1e-12);
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new MapPlane(
                Point.of(0, 0, 0),
                UnitVector.of(1, 0, 0),
                new Metres(1),
                UnitVector.of(1, 1, 0),
                new Metres(1),
                2,
                2));
    assertThrows(
        IllegalArgumentException.class,
        () -> MapPlane.plan(Point.of(0, 0, 0), new Metres(1), new Metres(1), 1, 2));
  }
}
