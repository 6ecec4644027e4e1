package lampwright.engine.light;

import lampwright.engine.unit.Degrees;

/**
 * Where a source stands and how it is turned.
 *
 * @param place the middle of its emitting face
 * @param axis where the face looks
 * @param roll turn about the axis, clockwise as seen from behind the source; at 0 the face's own up
 *     is as near to the vertical as its axis lets it be, and points away from the camera where the
 *     axis itself is vertical
 */
public record Pose(Point place, UnitVector axis, Degrees roll) {

  /**
   * Returns the pose of a source that is aimed at a point, without roll.
   *
   * @throws IllegalArgumentException where place and aim are one point
   */
  public static Pose toward(Point place, Point aim) {
    return new Pose(place, UnitVector.between(place, aim), new Degrees(0));
  }

  /** Returns a copy that stands elsewhere and looks the same way. */
  public Pose at(Point other) {
    return new Pose(other, axis, roll);
  }
}
