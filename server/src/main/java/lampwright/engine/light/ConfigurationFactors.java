package lampwright.engine.light;

import java.util.List;
import lampwright.engine.unit.Bounds;

/**
 * Configuration factors F from a small receiver to a source of even luminance L: the illuminance is
 * {@code E = pi L F}. All lengths in metres, or in any one unit.
 *
 * <p>Closed forms after Howell's catalogue (sources howell, br-187), exact for a Lambertian source;
 * real boxes are brighter in the middle, so take the model as 0.3 stop sure inside one diagonal
 * (trade-practice).
 */
public final class ConfigurationFactors {

  private ConfigurationFactors() {}

  /** Howell B-12: a disc face to face on its axis, {@code R^2 / (R^2 + d^2)}. */
  public static double disc(double radius, double distance) {
    Bounds.requirePositive("Radius", radius, "m");
    Bounds.requireZeroOrMore("Distance", distance, "m");
    return radius * radius / (radius * radius + distance * distance);
  }

  /** Howell B-18: an ellipse face to face on its axis; with equal semi-axes it is the disc. */
  public static double ellipse(double semiAxisA, double semiAxisB, double distance) {
    Bounds.requirePositive("Semi-axis a", semiAxisA, "m");
    Bounds.requirePositive("Semi-axis b", semiAxisB, "m");
    Bounds.requirePositive("Distance", distance, "m");
    double a = semiAxisA / distance;
    double b = semiAxisB / distance;
    return a * b / Math.sqrt((1 + a * a) * (1 + b * b));
  }

  /** Howell B-3: a parallel rectangle, the receiver facing one of its corners. */
  public static double rectangleFromCorner(double width, double height, double distance) {
    Bounds.requirePositive("Width", width, "m");
    Bounds.requirePositive("Height", height, "m");
    Bounds.requirePositive("Distance", distance, "m");
    double a = width / distance;
    double b = height / distance;
    double rootA = Math.sqrt(1 + a * a);
    double rootB = Math.sqrt(1 + b * b);
    return (a / rootA * StrictMath.atan(b / rootA) + b / rootB * StrictMath.atan(a / rootB))
        / (2 * Math.PI);
  }

  /** A parallel rectangle on its axis: four corners of half the sides. */
  public static double rectangle(double width, double height, double distance) {
    return 4 * rectangleFromCorner(width / 2, height / 2, distance);
  }

  /**
   * Lambert's contour formula for a convex flat polygon at any place (source lambert-contour), cut
   * at the receiver's horizon; 0 at and behind its plane.
   *
   * @param corners at least three, counter-clockwise as seen from the side that shines
   * @param at where the light is taken
   * @param normal where the receiver faces
   * @throws IllegalArgumentException where the corners span no area
   */
  public static double polygon(List<Point> corners, Point at, UnitVector normal) {
    if (corners.size() < 3) {
      throw new IllegalArgumentException(
          Bounds.subject("Corners", corners.size(), "") + " must be at least 3.");
    }
    Point origin = corners.get(0);
    UnitVector x = UnitVector.between(origin, corners.get(1));
    UnitVector toLast = UnitVector.between(origin, corners.get(corners.size() - 1));
    UnitVector z =
        UnitVector.of(
            x.y() * toLast.z() - x.z() * toLast.y(),
            x.z() * toLast.x() - x.x() * toLast.z(),
            x.x() * toLast.y() - x.y() * toLast.x());
    UnitVector y =
        UnitVector.of(
            z.y() * x.z() - z.z() * x.y(),
            z.z() * x.x() - z.x() * x.z(),
            z.x() * x.y() - z.y() * x.x());
    double[] across = new double[corners.size()];
    double[] up = new double[corners.size()];
    for (int i = 0; i < across.length; i++) {
      across[i] = along(origin, corners.get(i), x);
      up[i] = along(origin, corners.get(i), y);
    }
    Corners face = Corners.of(across, up);
    double geometry =
        new PolygonField(face)
            .flat(
                along(origin, at, x),
                along(origin, at, y),
                along(origin, at, z),
                product(normal, x),
                product(normal, y),
                product(normal, z));
    return geometry * face.area() / Math.PI;
  }

  private static double along(Point from, Point to, UnitVector way) {
    return (to.x() - from.x()) * way.x()
        + (to.y() - from.y()) * way.y()
        + (to.z() - from.z()) * way.z();
  }

  private static double product(UnitVector a, UnitVector b) {
    return a.x() * b.x() + a.y() * b.y() + a.z() * b.z();
  }

  /**
   * BR 187, perpendicular case: the receiver's plane stands square to the rectangle and passes
   * through its lower edge, the receiver opposite a corner.
   */
  public static double rectanglePerpendicular(double width, double height, double distance) {
    Bounds.requirePositive("Width", width, "m");
    Bounds.requirePositive("Height", height, "m");
    Bounds.requirePositive("Distance", distance, "m");
    double x = width / distance;
    double y = height / distance;
    double root = Math.sqrt(1 + y * y);
    return (StrictMath.atan(x) - StrictMath.atan(x / root) / root) / (2 * Math.PI);
  }
}
