package lampwright.engine.light;

import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Degrees;

/**
 * Where a light comes from, seen from its target.
 *
 * @param azimuth in the horizontal plane, measured from the direction target to camera, positive to
 *     camera right, above -180 up to 180: 0 is a light at the camera, 180 one straight behind the
 *     target
 * @param elevation above the horizontal plane through the target, -90 to 90
 */
public record Direction(Degrees azimuth, Degrees elevation) {

  /** Brings the azimuth into its range and checks the elevation. */
  public Direction {
    Bounds.requireBetween("Elevation", elevation.value(), "°", -90, 90);
    azimuth = azimuth.toHalfTurns();
  }

  /** Returns a direction from degrees. */
  public static Direction of(double azimuthDeg, double elevationDeg) {
    return new Direction(new Degrees(azimuthDeg), new Degrees(elevationDeg));
  }

  /**
   * Returns where a light stands, seen from the target, measured from the camera's axis (the
   * frame's y reversed). This is what a plan shows, and the right measure for a wall or a
   * background.
   *
   * @throws IllegalArgumentException where light and target are one place
   */
  public static Direction of(Point target, Point light) {
    return measured(target, light, 0, -1);
  }

  /**
   * Returns where a light stands, seen from the target, measured from the true direction target to
   * camera. It differs from the camera's axis for targets away from it. A camera straight above or
   * below the target has no such direction; then the axis is used.
   *
   * @throws IllegalArgumentException where light and target are one place
   */
  public static Direction of(Point target, Point light, Point camera) {
    double towardX = camera.x() - target.x();
    double towardY = camera.y() - target.y();
    double length = Math.sqrt(towardX * towardX + towardY * towardY);
    return length == 0
        ? of(target, light)
        : measured(target, light, towardX / length, towardY / length);
  }

  /** Measures from the horizontal unit vector toward the camera; a light overhead has azimuth 0. */
  private static Direction measured(Point target, Point light, double towardX, double towardY) {
    double dx = light.x() - target.x();
    double dy = light.y() - target.y();
    double dz = light.z() - target.z();
    double ground = Math.sqrt(dx * dx + dy * dy);
    if (ground == 0 && dz == 0) {
      throw new IllegalArgumentException(
          "Light at " + light + " must not stand in its target. Maybe the target is another one?");
    }
    double toward = dx * towardX + dy * towardY;
    // Camera right is the direction toward the camera turned a quarter anticlockwise from above.
    double right = -dx * towardY + dy * towardX;
    return new Direction(
        Degrees.ofRadians(ground == 0 ? 0 : StrictMath.atan2(right, toward)),
        Degrees.ofRadians(StrictMath.atan2(dz, ground)));
  }

  /**
   * Returns the azimuth measured from where a face looks instead of from the camera.
   *
   * @param faceYaw where the nose points, from the direction to the camera, positive to camera
   *     right
   */
  public Direction fromNose(Degrees faceYaw) {
    return new Direction(azimuth.minus(faceYaw), elevation);
  }

  @Override
  public String toString() {
    return Bounds.rounded(azimuth.value(), 1)
        + "° aside, "
        + Bounds.rounded(elevation.value(), 1)
        + "° up";
  }
}
