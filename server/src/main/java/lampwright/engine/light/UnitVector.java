package lampwright.engine.light;

import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Degrees;

/**
 * A direction in the setup's frame as a vector of length one: where a receiver faces, where a light
 * is aimed.
 *
 * @param x share to camera right
 * @param y share away from the camera
 * @param z share up
 */
public record UnitVector(double x, double y, double z) {

  /** How far the squared length may be off for rounding. */
  private static final double ROUNDING = 1e-9;

  /** Straight toward the camera along its axis; a wall that faces the camera has this normal. */
  public static final UnitVector TOWARD_CAMERA = new UnitVector(0, -1, 0);

  /** Checks the length. */
  public UnitVector {
    Bounds.requireFinite("x", x, "");
    Bounds.requireFinite("y", y, "");
    Bounds.requireFinite("z", z, "");
    double squared = x * x + y * y + z * z;
    if (Math.abs(squared - 1) > ROUNDING) {
      throw new IllegalArgumentException(
          Bounds.subject("Squared length of a direction", squared, "") + " must be 1.");
    }
  }

  /** Returns the direction of any vector that is not zero. */
  public static UnitVector of(double x, double y, double z) {
    double length = Math.sqrt(x * x + y * y + z * z);
    Bounds.requirePositive("Length of a direction", length, "");
    return new UnitVector(x / length, y / length, z / length);
  }

  /**
   * Returns the direction from one place to another.
   *
   * @throws IllegalArgumentException where both are the same place
   */
  public static UnitVector between(Point from, Point to) {
    return of(to.x() - from.x(), to.y() - from.y(), to.z() - from.z());
  }

  /** Returns the cosine of the angle to the other, -1 to 1. */
  public double cosineTo(UnitVector other) {
    double product = x * other.x + y * other.y + z * other.z;
    return Math.max(-1, Math.min(1, product));
  }

  /**
   * Returns the share of light that a flat receiver takes from this direction: the cosine, and none
   * from behind. The receiver's normal points away from its lit side.
   */
  public double receivedBy(UnitVector receiverNormal) {
    return Math.max(0, cosineTo(receiverNormal));
  }

  /** Returns the angle to the other, 0 to 180 degrees; by atan2, which is sure near 0 and 180. */
  public Degrees angleTo(UnitVector other) {
    double crossX = y * other.z - z * other.y;
    double crossY = z * other.x - x * other.z;
    double crossZ = x * other.y - y * other.x;
    double cross = Math.sqrt(crossX * crossX + crossY * crossY + crossZ * crossZ);
    return Degrees.ofRadians(StrictMath.atan2(cross, x * other.x + y * other.y + z * other.z));
  }

  /** Returns the opposite direction. */
  public UnitVector reversed() {
    return new UnitVector(-x, -y, -z);
  }
}
