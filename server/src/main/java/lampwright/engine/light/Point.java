package lampwright.engine.light;

import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Metres;

/**
 * A place in the setup's frame, seen from the camera; the origin is the hit mark on the ground.
 *
 * @param x metres to camera right
 * @param y metres away from the camera
 * @param z metres up from the ground
 */
public record Point(double x, double y, double z) {

  /** Refuses numbers that are not finite. */
  public Point {
    Bounds.requireFinite("x", x, "m");
    Bounds.requireFinite("y", y, "m");
    Bounds.requireFinite("z", z, "m");
  }

  /** Returns a place from metres to the right, away and up. */
  public static Point of(double x, double y, double z) {
    return new Point(x, y, z);
  }

  /** Returns the straight distance to the other place, 0 where they are one. */
  public Metres distanceTo(Point other) {
    double dx = other.x - x;
    double dy = other.y - y;
    double dz = other.z - z;
    return new Metres(Math.sqrt(dx * dx + dy * dy + dz * dz));
  }

  /** Returns this place moved by so many metres along a direction; minus is backwards. */
  public Point moved(UnitVector direction, double metres) {
    return new Point(
        x + direction.x() * metres, y + direction.y() * metres, z + direction.z() * metres);
  }

  @Override
  public String toString() {
    return "("
        + Bounds.rounded(x, 3)
        + ", "
        + Bounds.rounded(y, 3)
        + ", "
        + Bounds.rounded(z, 3)
        + ") m";
  }
}
