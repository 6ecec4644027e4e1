package lampwright.engine.lens;

import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.MetresPerSecond;
import lampwright.engine.unit.Millimetres;
import lampwright.engine.unit.MillimetresPerSecond;
import lampwright.engine.unit.Seconds;

/**
 * How a moving point's image moves over the sensor, by central projection through the lens (source
 * thin-lens): {@code dx/dt = v (Vx/Z - X Vz/Z^2)}, v the distance from lens to sensor. Exact at the
 * moment; over a time so long that the subject comes notably nearer the blur is longer than speed
 * times time. It is right outside the focused distance too, where {@link Movement} is not.
 *
 * @param imageDistance from the rear principal plane to the sensor, {@code f (1 + m)}, above 0
 * @param depth of the point before the lens, along its axis, above 0
 * @param rightM metres that the point lies to the right of the axis
 * @param upM metres that it lies above the axis
 * @param rightMPerS its velocity to the right, in metres a second
 * @param upMPerS its velocity upwards
 * @param awayMPerS its velocity away along the axis; minus comes nearer
 */
public record ImageMotion(
    Millimetres imageDistance,
    Metres depth,
    double rightM,
    double upM,
    double rightMPerS,
    double upMPerS,
    double awayMPerS) {

  /** Checks the bounds. */
  public ImageMotion {
    Bounds.requirePositive("Image distance", imageDistance.value(), "mm");
    Bounds.requirePositive("Depth", depth.value(), "m");
    Bounds.requireFinite("Right", rightM, "m");
    Bounds.requireFinite("Up", upM, "m");
    Bounds.requireFinite("Velocity to the right", rightMPerS, "m/s");
    Bounds.requireFinite("Velocity upwards", upMPerS, "m/s");
    Bounds.requireFinite("Velocity away", awayMPerS, "m/s");
  }

  /** Returns a movement across the picture at the focused distance, in the middle of the frame. */
  public static ImageMotion across(FocusedLens lens, MetresPerSecond speed) {
    return new ImageMotion(lens.imageDistance(), lens.focus(), 0, 0, speed.value(), 0, 0);
  }

  /** Returns the image's speed, both parts together. */
  public MillimetresPerSecond speed() {
    double outward = awayMPerS / depth.value();
    return speed(rightMPerS - rightM * outward, upMPerS - upM * outward);
  }

  /** Returns the part by moving across the line of sight, {@code v |Vxy| / Z}. */
  public MillimetresPerSecond lateral() {
    return speed(rightMPerS, upMPerS);
  }

  /**
   * Returns the part by coming or going, by which the image grows or shrinks about the middle of
   * the frame, {@code r |Vz| / Z}; 0 in the middle.
   */
  public MillimetresPerSecond approaching() {
    double outward = awayMPerS / depth.value();
    return speed(rightM * outward, upM * outward);
  }

  /** Returns how long the blur on the sensor is. */
  public Millimetres blur(Seconds time) {
    return speed().over(time);
  }

  private MillimetresPerSecond speed(double acrossMPerS, double uprightMPerS) {
    double metres = Math.sqrt(acrossMPerS * acrossMPerS + uprightMPerS * uprightMPerS);
    return new MillimetresPerSecond(imageDistance.value() / depth.value() * metres);
  }
}
