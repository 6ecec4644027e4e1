package lampwright.engine.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import lampwright.engine.beam.Even;
import lampwright.engine.beam.Lobe;
import lampwright.engine.beam.Omnidirectional;
import lampwright.engine.beam.Spread;
import lampwright.engine.light.EmittingFace.Disc;
import lampwright.engine.light.EmittingFace.Octagon;
import lampwright.engine.light.EmittingFace.PointSource;
import lampwright.engine.light.EmittingFace.Rectangle;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;
import org.junit.jupiter.api.Test;

/** What must hold of any source, whatever its formulas, and numbers that others published. */
final class SourceLawsTest {

  private static final long SEED = 20261125;
  private static final Receptor TOWARD = new Receptor.TowardSource();
  private static final Pose AWAY = Pose.toward(Point.of(0, 0, 0), Point.of(0, 1, 0));
  private static final List<EmittingFace> FACES =
      List.of(
          new Rectangle(new Metres(0.9), new Metres(1.2)),
          new Rectangle(new Metres(0.3), new Metres(1.8)),
          new Octagon(new Metres(1.5)),
          new Disc(new Metres(0.6)),
          new PointSource());
  private static final List<Spread> SPREADS =
      List.of(new Even(), new Lobe(4.07), new Lobe(30), new Omnidirectional());

  private static PlacedSource source(EmittingFace face, Spread spread) {
    return new PlacedSource(face, spread, AWAY);
  }

  private static Receptor flat(double x, double y, double z) {
    return new Receptor.Flat(UnitVector.of(x, y, z));
  }

  /** Howell B-12 (0.2), B-3 by Drysdale's table (0.106), BR 187's perpendicular case. */
  @Test
  void placedFacesAreTheCatalogueCasesHowellAndBr187() {
    PlacedSource disc = source(new Disc(new Metres(1)), new Even());
    assertEquals(0.2, disc.geometryAt(Point.of(0, 2, 0), flat(0, -1, 0)), 1e-12);
    PlacedSource rectangle = source(new Rectangle(new Metres(5), new Metres(4)), new Even());
    double corner = rectangle.geometryAt(Point.of(2.5, Math.sqrt(20 / 0.6), 2), flat(0, -1, 0));
    assertEquals(0.106, corner * 20 / Math.PI, 5e-4);
    assertEquals(0.10633951895, corner * 20 / Math.PI, 1e-10);
    PlacedSource small = source(new Rectangle(new Metres(0.7), new Metres(0.5)), new Even());
    assertEquals(
        0.017569594,
        small.geometryAt(Point.of(-0.35, 1, -0.25), flat(0, 0, 1)) * 0.35 / Math.PI,
        3.5e-8);
    // A sphere around the receiver that is all face: F tends to 1.
    PlacedSource huge = source(new Disc(new Metres(1e4)), new Even());
    assertEquals(1, huge.geometryAt(Point.of(3, 1, 4), flat(0, -1, 0)) * 1e8, 1e-6);
  }

  @Test
  void onItsAxisAFaceGivesWhatItsClosedFormSays() {
    for (EmittingFace face : FACES) {
      for (double d = 0.02; d < 1e7; d *= 1.7) {
        double exact = face.geometry(new Metres(d));
        double placed = source(face, new Even()).geometryAt(Point.of(0, d, 0), TOWARD);
        assertEquals(exact, placed, 1e-9 * exact, face + " at " + d);
      }
    }
  }

  /** The derived closed form for a disc of lobes, over exponents and distances. */
  @Test
  void aDiscOfLobesOnItsAxisIsItsClosedForm() {
    for (double m : new double[] {0.5, 1, 2, 4.07, 10, 40}) {
      for (double d = 0.05; d < 100; d *= 1.5) {
        double r = 0.5;
        double exact = 2 / ((m + 1) * r * r) * (1 - Math.pow(d * d / (d * d + r * r), (m + 1) / 2));
        double placed =
            source(new Disc(new Metres(r)), new Lobe(m)).geometryAt(Point.of(0, d, 0), TOWARD);
        assertEquals(0, Math.log(placed / exact) / Math.log(2), 1e-4, m + " at " + d);
      }
    }
  }

  @Test
  void movingAwayNeverBrightensOnAxisAndTendsToTheInverseSquareLaw() {
    for (EmittingFace face : FACES) {
      for (Spread spread : SPREADS) {
        PlacedSource source = source(face, spread);
        double before = Double.POSITIVE_INFINITY;
        for (double d = 0.2; d < 1e4; d *= 1.2) {
          double now = source.geometryAt(Point.of(0, d, 0), TOWARD);
          assertTrue(now < before * (1 + 1e-6), source + " at " + d);
          before = now;
        }
        assertEquals(1, source.geometryAt(Point.of(0, 1e4, 0), TOWARD) * 1e8, 1e-6, "" + source);
      }
    }
  }

  @Test
  void behindItsFaceAnEvenSourceOrALobeGivesNothing() {
    Random random = new Random(SEED);
    for (EmittingFace face : FACES) {
      for (Spread spread : List.of(new Even(), new Lobe(4))) {
        for (int i = 0; i < 200; i++) {
          Point behind =
              Point.of(random.nextDouble(-3, 3), -random.nextDouble(0.01, 3), random.nextDouble(3));
          assertEquals(0, source(face, spread).geometryAt(behind, TOWARD));
          assertEquals(
              0,
              source(face, spread).geometryAt(behind, new Receptor.Dome(UnitVector.of(0, 1, 0))));
        }
      }
    }
  }

  /** No jump where the receiver turns through the horizon, and none where it turns wholly away. */
  @Test
  void horizonClippingIsContinuous() {
    Point at = Point.of(0.4, 0.7, -0.2);
    for (EmittingFace face : FACES) {
      for (Spread spread : SPREADS) {
        PlacedSource source = source(face, spread);
        double most = source.geometryAt(at, TOWARD);
        double before = Double.NaN;
        for (double degrees = 0; degrees <= 360; degrees += 0.25) {
          double turn = degrees * Math.PI / 180;
          double now = source.geometryAt(at, flat(0.3, Math.cos(turn), Math.sin(turn)));
          assertTrue(now >= 0 && Double.isFinite(now), source + " at " + degrees);
          assertTrue(
              degrees == 0 || Math.abs(now - before) < 0.02 * most, source + " at " + degrees);
          before = now;
        }
      }
    }
  }

  @Test
  void mirroredPlacesAreLitAlike() {
    Random random = new Random(SEED);
    for (EmittingFace face : FACES) {
      for (Spread spread : SPREADS) {
        PlacedSource source = source(face, spread);
        for (int i = 0; i < 50; i++) {
          double x = random.nextDouble(2);
          double y = random.nextDouble(0.1, 3);
          double z = random.nextDouble(-1, 1);
          double nx = random.nextGaussian();
          double ny = random.nextGaussian();
          double nz = random.nextGaussian();
          double right = source.geometryAt(Point.of(x, y, z), flat(nx, ny, nz));
          double left = source.geometryAt(Point.of(-x, y, z), flat(-nx, ny, nz));
          assertEquals(right, left, 1e-4 * right + 1e-12, "seed " + SEED + ", " + source);
        }
      }
    }
  }

  /** Turning the whole scene, rolled or not, changes nothing. */
  @Test
  void aDiscDoesNotKnowItsRollAndARectangleTurnsWithIt() {
    Pose rolled = new Pose(AWAY.place(), AWAY.axis(), new Degrees(90));
    PlacedSource upright = source(new Rectangle(new Metres(0.3), new Metres(1.8)), new Even());
    PlacedSource lying =
        new PlacedSource(new Rectangle(new Metres(1.8), new Metres(0.3)), new Even(), rolled);
    Point at = Point.of(0.5, 1, 0.2);
    assertEquals(upright.geometryAt(at, TOWARD), lying.geometryAt(at, TOWARD), 1e-12);
  }

  /**
   * A dome takes (1 + cos)/2 of each direction: pointed at a far source as much as a flat one, from
   * the side half, from behind nothing; and never less than half of what is opposite together.
   */
  @Test
  void aDomeWeighsLightByItsDirection() {
    for (EmittingFace face : FACES) {
      PlacedSource source = source(face, new Even());
      Point far = Point.of(0, 300, 0);
      double flat = source.geometryAt(far, TOWARD);
      Receptor front = new Receptor.Dome(UnitVector.of(0, -1, 0));
      Receptor side = new Receptor.Dome(UnitVector.of(0, 0, 1));
      Receptor back = new Receptor.Dome(UnitVector.of(0, 1, 0));
      assertEquals(1, source.geometryAt(far, front) / flat, 1e-4);
      assertEquals(0.5, source.geometryAt(far, side) / flat, 1e-4);
      assertEquals(0, source.geometryAt(far, back) / flat, 1e-4);
    }
  }

  /** The quadrature of a lobe of exponent 1 is an even face, also for the dome's scalar light. */
  @Test
  void closedDomesAgreeWithQuadrature() {
    Random random = new Random(SEED);
    for (EmittingFace face : FACES.subList(0, 4)) {
      for (int i = 0; i < 300; i++) {
        Point at =
            Point.of(random.nextDouble(-2, 2), random.nextDouble(0.1, 3), random.nextDouble(-2, 2));
        Receptor dome =
            new Receptor.Dome(
                UnitVector.of(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()));
        double closed = source(face, new Even()).geometryAt(at, dome);
        double sampled = source(face, new Lobe(1)).geometryAt(at, dome);
        assertEquals(0, Math.log(closed / sampled) / Math.log(2), 5e-4, face + " at " + at);
      }
    }
  }

  /** Also on the face, on its rim, at its corners, in its plane, at the source itself. */
  @Test
  void everyPlaceIsFinite() {
    for (EmittingFace face : FACES) {
      for (Spread spread : List.of(new Even(), new Omnidirectional())) {
        double[] places =
            spread instanceof Even
                ? new double[] {-0.6, -0.45, 0, 1e-300, 1e-12, 0.6, 1e6}
                : new double[] {0, 0.6};
        for (double x : places) {
          for (double y : places) {
            for (double z : places) {
              Point at = Point.of(x, y, z);
              for (Receptor receptor :
                  List.of(
                      TOWARD,
                      flat(0, -1, 0),
                      flat(1, 0, 0),
                      flat(0.3, 0.4, 0.5),
                      new Receptor.Dome(UnitVector.of(0, 0, 1)))) {
                double geometry = source(face, spread).geometryAt(at, receptor);
                assertTrue(
                    geometry >= 0 && Double.isFinite(geometry),
                    source(face, spread) + " at " + at + " " + receptor + ": " + geometry);
              }
            }
          }
        }
      }
    }
  }
}
