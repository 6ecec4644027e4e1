package lampwright.engine.lens;

import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.MetresPerSecond;
import lampwright.engine.unit.Micrometres;
import lampwright.engine.unit.Millimetres;
import lampwright.engine.unit.MillimetresPerSecond;
import lampwright.engine.unit.Seconds;

/**
 * Blur of a subject that moves at the focused distance (source thin-lens). The flash's part of the
 * picture blurs by t0.1, the ambient's by the shutter time, a long burst's by the shutter time too.
 * Limbs, cloth and hair move up to twice as fast as the body.
 *
 * @param lens the lens, focused on the subject
 * @param speed of the subject
 * @param angle between the velocity and the line of sight, 0 to 180 degrees; 90 is across
 */
public record Movement(FocusedLens lens, MetresPerSecond speed, Degrees angle) {

  /** Standard gravity, metres a second squared. */
  private static final double GRAVITY = 9.80665;

  /** Checks the angle. */
  public Movement {
    Bounds.requireBetween("Angle to the line of sight", angle.value(), "°", 0, 180);
  }

  /** Returns a movement across the picture. */
  public static Movement across(FocusedLens lens, MetresPerSecond speed) {
    return new Movement(lens, speed, new Degrees(90));
  }

  /** Returns how fast the image moves over the sensor, {@code m v sin(angle)}. */
  public MillimetresPerSecond imageSpeed() {
    // At 90 and 180 degrees the sine of a rounded pi is a hair off; never let it turn negative.
    double sine = Math.max(0, StrictMath.sin(angle.toRadians()));
    return new MillimetresPerSecond(lens.magnification() * speed.value() * 1000 * sine);
  }

  /** Returns how long the blur on the sensor is. */
  public Millimetres blur(Seconds time) {
    return imageSpeed().over(time);
  }

  /** Returns the blur in pixels. */
  public double blurPixels(Seconds time, Micrometres pitch) {
    Bounds.requirePositive("Pixel pitch", pitch.value(), "µm");
    return blur(time).toMicrometres().value() / pitch.value();
  }

  /** Returns the blur as a share of the frame's height. */
  public double blurShare(Seconds time, SensorFormat format) {
    return blur(time).value() / format.height().value();
  }

  /**
   * Returns the longest time that keeps the blur.
   *
   * @throws IllegalArgumentException where the image does not move: then any time does
   */
  public Seconds longestTimeFor(Millimetres blur) {
    double moving = imageSpeed().value();
    Bounds.requirePositive("Image speed", moving, "mm/s");
    return new Seconds(blur.value() / moving);
  }

  /**
   * Returns how fast a point of the image grows outwards while its subject comes head-on, {@code r
   * v / d}.
   *
   * @param imageRadius the point's distance from the middle of the frame
   * @param distance of the subject, above 0
   */
  public static MillimetresPerSecond approachSpeed(
      Millimetres imageRadius, MetresPerSecond speed, Metres distance) {
    Bounds.requirePositive("Distance", distance.value(), "m");
    return new MillimetresPerSecond(imageRadius.value() * speed.value() / distance.value());
  }

  /**
   * Returns the ambient's share of the light on the subject, 0 to 1: the strength of its ghost. As
   * a rule of the trade 3 stops under the flash (0.11) hides most ghosts, 2 stops (0.2) shows soft
   * trails at light edges, less than 1 (0.33) needs a frozen pose.
   *
   * @param ambient on the subject while the shutter is open
   * @param flash on the subject; not both 0
   */
  public static double ghostFraction(LuxSeconds ambient, LuxSeconds flash) {
    double total = ambient.value() + flash.value();
    Bounds.requirePositive("Light on the subject", total, "lx·s");
    return ambient.value() / total;
  }

  /** Returns the speed at which a jump of a rise leaves the ground, {@code sqrt(2 g h)}. */
  public static MetresPerSecond takeOff(Metres rise) {
    return new MetresPerSecond(Math.sqrt(2 * GRAVITY * rise.value()));
  }

  /** Returns the time in the air of a jump of a rise, {@code 2 sqrt(2 h / g)}. */
  public static Seconds airTime(Metres rise) {
    return new Seconds(2 * Math.sqrt(2 * rise.value() / GRAVITY));
  }

  /** Returns how long a jump stays within a drop of its top; why pictures of the top freeze. */
  public static Seconds timeNearTop(Metres drop) {
    return airTime(drop);
  }
}
