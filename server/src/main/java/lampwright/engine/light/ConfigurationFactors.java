package lampwright.engine.light;

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
