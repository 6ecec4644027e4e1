package lampwright.engine.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import lampwright.engine.beam.Even;
import lampwright.engine.beam.Lobe;
import lampwright.engine.beam.Spread;
import lampwright.engine.light.EmittingFace.Rectangle;
import lampwright.engine.unit.Metres;
import org.junit.jupiter.api.Test;

final class LitSurfaceTest {

  private static final long SEED = 20261125;
  private static final Rectangle WALL = new Rectangle(new Metres(3), new Metres(2));

  /** A wall in the plane y = 0 that faces the camera. */
  private static final Pose FACING = Pose.toward(Point.of(0, 0, 0), Point.of(0, -1, 0));

  private static PlacedSource head(EmittingFace face, Spread spread, Point place, Point aim) {
    return new PlacedSource(face, spread, Pose.toward(place, aim));
  }

  /** Against a plain double sum over 60,000 points, straight from the definition. */
  @Test
  void aBounceIsTheSumOverItsSurface() {
    Random random = new Random(SEED);
    for (int i = 0; i < 20; i++) {
      Point place = Point.of(random.nextDouble(-2, 2), -random.nextDouble(1.5, 4), 0.4);
      Spread spread = i % 2 == 0 ? new Even() : Lobe.ofBeam(Lobe.STANDARD_REFLECTOR);
      EmittingFace face =
          i % 2 == 0
              ? new Rectangle(new Metres(0.6), new Metres(0.9))
              : new EmittingFace.PointSource();
      PlacedSource source = head(face, spread, place, Point.of(random.nextDouble(-1, 1), 0, 0));
      Point at = Point.of(random.nextDouble(-2, 2), -random.nextDouble(0.5, 3), 1);
      UnitVector normal = UnitVector.of(random.nextDouble(-1, 1), 1, random.nextDouble(-1, 1));
      double ours =
          LitSurface.bounce(source, WALL, FACING, 0.8).geometryAt(at, new Receptor.Flat(normal));
      double plain = 0;
      int columns = 300;
      int rows = 200;
      for (int k = 0; k < columns * rows; k++) {
        int column = k / rows;
        Point element =
            Point.of((column + 0.5) / columns * 3 - 1.5, 0, (k % rows + 0.5) / rows * 2 - 1);
        double light = source.geometryAt(element, new Receptor.Flat(UnitVector.TOWARD_CAMERA));
        UnitVector way = UnitVector.between(element, at);
        double d = element.distanceTo(at).value();
        plain +=
            0.8
                / Math.PI
                * light
                * Math.max(0, -way.y())
                * way.reversed().receivedBy(normal)
                / (d * d)
                * 6
                / (columns * rows);
      }
      assertEquals(0, Math.log(ours / plain) / Math.log(2), 0.01, "seed " + SEED + ", case " + i);
    }
  }

  /** Energy is kept: what leaves is the reflectance times what came, and no more than was sent. */
  @Test
  void aWallSendsOutItsShareOfTheFluxAndNoMore() {
    PlacedSource near =
        head(new EmittingFace.PointSource(), new Even(), Point.of(0, -1, 0), Point.of(0, 0, 0));
    LitSurface wall =
        LitSurface.bounce(near, new Rectangle(new Metres(40), new Metres(40)), FACING, 0.7);
    assertTrue(wall.receivedSr() <= new Even().solidAngleSr() * 1.02, "" + wall.receivedSr());
    LitSurface small = LitSurface.bounce(near, WALL, FACING, 0.7);
    assertEquals(0.7 * small.receivedSr(), small.emittedSr(), 1e-15);
    // Far away the wall is a small even source of that flux: I = flux / pi on its axis.
    assertEquals(
        small.emittedSr() / Math.PI,
        small.geometryAt(Point.of(0, -1000, 0), new Receptor.TowardSource()) * 1e6,
        1e-5);
    // Lambert's law for a point opposite the middle: flux into 3 x 2 at 1 m, by a plain sum.
    double plain = 0;
    for (int i = 0; i < 300 * 200; i++) {
      int column = i / 200;
      double x = (column + 0.5) / 100 - 1.5;
      double z = (i % 200 + 0.5) / 100 - 1;
      double squared = 1 + x * x + z * z;
      plain += 1e-4 / (squared * squared);
    }
    assertEquals(plain, small.receivedSr(), 0.005 * plain);
  }

  @Test
  void aScrimShinesOnItsFarSideOnlyAndABounceOnItsNearSideOnly() {
    PlacedSource source =
        head(new EmittingFace.PointSource(), new Even(), Point.of(0, 1.5, 0), Point.of(0, 0, 0));
    Receptor receptor = new Receptor.TowardSource();
    LitSurface scrim = LitSurface.scrim(source, WALL, FACING, 0.5);
    assertTrue(scrim.geometryAt(Point.of(0, -2, 0), receptor) > 0);
    assertEquals(0, scrim.geometryAt(Point.of(0, 2, 0), receptor));
    assertEquals(0, LitSurface.bounce(source, WALL, FACING, 0.5).receivedSr());
    assertEquals(
        scrim.geometryAt(Point.of(0, -2, 0), receptor) * 1.6,
        LitSurface.scrim(source, WALL, FACING, 0.8).geometryAt(Point.of(0, -2, 0), receptor),
        1e-12);
    double dome = scrim.geometryAt(Point.of(0, -2, 0), new Receptor.Dome(UnitVector.of(0, 1, 0)));
    assertTrue(dome > scrim.geometryAt(Point.of(0, -2, 0), receptor) * 0.99, "dome " + dome);
  }
}
