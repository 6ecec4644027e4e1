package lampwright.engine.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import lampwright.Sweep;
import lampwright.engine.beam.Even;
import lampwright.engine.beam.Lobe;
import lampwright.engine.light.EmittingFace.Disc;
import lampwright.engine.light.EmittingFace.Octagon;
import lampwright.engine.light.EmittingFace.Rectangle;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;
import org.junit.jupiter.api.Test;

/** Sources at any place, against quadrature of a general library and against the catalogue. */
final class PlacedSourceTest {

  private static final long SEED = 20261125;
  private static final double STOP = Math.log(2);

  private static EmittingFace face(Random random, int kind) {
    return switch (kind) {
      case 0 ->
          new Rectangle(
              new Metres(random.nextDouble(0.1, 2)), new Metres(random.nextDouble(0.1, 2)));
      case 1 -> new Octagon(new Metres(random.nextDouble(0.3, 2)));
      default -> new Disc(new Metres(random.nextDouble(0.05, 1)));
    };
  }

  private static UnitVector direction(Random random) {
    return UnitVector.of(
        random.nextGaussian(), random.nextGaussian(), random.nextGaussian() + 1e-9);
  }

  private static Pose pose(Random random) {
    return new Pose(
        Point.of(random.nextDouble(-3, 3), random.nextDouble(-3, 3), random.nextDouble(0, 3)),
        direction(random),
        new Degrees(random.nextDouble(-180, 180)));
  }

  /** Over the face at least 0.05 of its size before it, or beside it down to nearly edge-on. */
  private static Point place(Random random, EmittingFace face, Pose pose) {
    double size = face.largestDimension().value();
    double distance = size * Math.exp(random.nextDouble(Math.log(0.05), Math.log(50)));
    SourceFrame frame = SourceFrame.of(pose);
    if (random.nextInt(3) == 0) {
      return frame.toPlace(
          random.nextDouble(-0.7, 0.7) * size, random.nextDouble(-0.7, 0.7) * size, distance);
    }
    double grazing = random.nextInt(4) == 0 ? random.nextDouble(0.003, 0.05) : random.nextDouble();
    double around = random.nextDouble(2 * Math.PI);
    double aside = (distance + size * 0.75) * Math.sqrt(1 - grazing * grazing);
    return frame.toPlace(
        aside * Math.cos(around),
        aside * Math.sin(around),
        (distance + size * 0.05) * grazing + size * 1e-3);
  }

  /** A third toward the source, a third anywhere, a third with the face partly below. */
  private static UnitVector normal(Random random, EmittingFace face, Pose pose, Point at) {
    UnitVector toward = UnitVector.between(at, pose.place());
    UnitVector any = direction(random);
    int kind = random.nextInt(3);
    if (kind == 0) {
      return toward;
    }
    if (kind == 1) {
      return any;
    }
    double along = any.x() * toward.x() + any.y() * toward.y() + any.z() * toward.z();
    double reach = face.largestDimension().value() / 2 / pose.place().distanceTo(at).value();
    double tilt = random.nextDouble(-1, 1) * Math.min(1, reach) - along;
    return UnitVector.of(
        any.x() + tilt * toward.x(), any.y() + tilt * toward.y(), any.z() + tilt * toward.z());
  }

  /** Independent: adaptive quadrature of hipparchus straight from the definition. */
  @Test
  void evenFacesAgreeWithQuadratureOfAGeneralLibraryWithinAThousandthOfAStop() {
    Random random = new Random(SEED);
    int cases = Sweep.cases(3_000);
    int lit = 0;
    int cut = 0;
    for (int i = 0; i < cases; i++) {
      EmittingFace face = face(random, i % 3);
      Pose pose = pose(random);
      Point at = place(random, face, pose);
      UnitVector normal = normal(random, face, pose, at);
      PlacedSource source = new PlacedSource(face, new Even(), pose);
      double closed = source.geometryAt(at, new Receptor.Flat(normal));
      double sum = new NumericSource(face, 1, pose, 1e-6).flat(at, normal);
      double stray = 1e-9 / squared(pose.place(), at);
      String where = "seed " + SEED + ", case " + i + ": " + source + " at " + at + " " + normal;
      if (sum < stray || closed < stray) {
        assertEquals(sum, closed, 2 * stray, where);
      } else {
        double stops = Math.abs(Math.log(closed / sum)) / STOP;
        assertTrue(stops < 0.001, where + ": " + closed + " against " + sum);
        lit++;
        Receptor back = new Receptor.Flat(normal.reversed());
        cut += source.geometryAt(at, back) > 0 ? 1 : 0;
      }
    }
    assertTrue(lit > cases / 2 && cut > cases / 10, lit + " lit, " + cut + " cut by the horizon");
  }

  /** Independent: the same for faces of which each part is a lobe. */
  @Test
  void facesOfLobesAgreeWithQuadratureOfAGeneralLibraryWithinAThousandthOfAStop() {
    Random random = new Random(SEED);
    for (int i = 0; i < Sweep.cases(600); i++) {
      EmittingFace face = face(random, i % 3);
      Pose pose = pose(random);
      Point at = place(random, face, pose);
      UnitVector normal = normal(random, face, pose, at);
      double exponent = Math.exp(random.nextDouble(0, Math.log(40)));
      PlacedSource source = new PlacedSource(face, new Lobe(exponent), pose);
      double ours = source.geometryAt(at, new Receptor.Flat(normal));
      double sum = new NumericSource(face, exponent, pose, 1e-6).flat(at, normal);
      double stray = 1e-6 / squared(pose.place(), at);
      String where = "seed " + SEED + ", case " + i + ": " + source + " at " + at + " " + normal;
      if (sum < stray || ours < stray) {
        assertEquals(sum, ours, 0.001 * stray + 1e-3 * sum, where);
      } else {
        assertTrue(
            Math.abs(Math.log(ours / sum)) / STOP < 0.001, where + ": " + ours + " not " + sum);
      }
    }
  }

  private static double squared(Point a, Point b) {
    double d = a.distanceTo(b).value();
    return d * d;
  }
}
