package lampwright.engine.sun;

import java.util.Optional;
import lampwright.engine.light.Direction;
import lampwright.engine.light.Point;
import lampwright.engine.light.UnitVector;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;

/**
 * Where the middle of the sun stands, seen from a place. The sun is 0.53 degree wide.
 *
 * @param azimuth from true north, clockwise, 0 up to but not including 360
 * @param elevation apparent, as the air bends it; -90 to 90
 * @param geometricElevation as if there were no air; the same as the apparent one where the whole
 *     sun is below the horizon
 */
public record SunPosition(Degrees azimuth, Degrees elevation, Degrees geometricElevation) {

  /** Brings the azimuth into its range and checks the elevations. */
  public SunPosition {
    Bounds.requireBetween("Elevation", elevation.value(), "°", -90, 90);
    Bounds.requireBetween("Geometric elevation", geometricElevation.value(), "°", -90, 90);
    double turned = azimuth.value() - 360 * Math.floor(azimuth.value() / 360);
    azimuth = new Degrees(turned == 360 ? 0 : turned);
  }

  /** Returns the angle from straight above to the sun as it is seen. */
  public Degrees zenith() {
    return new Degrees(90 - elevation.value());
  }

  /** Returns what the light is called. */
  public SunPhase phase() {
    return SunPhase.of(geometricElevation);
  }

  /**
   * Returns the azimuth from where the camera points: 0 is a sun in front of the lens, positive to
   * camera right, -180 (or just under 180) behind the camera.
   *
   * @param cameraBearing true bearing of the lens's axis
   */
  public Degrees relativeAzimuth(Degrees cameraBearing) {
    double turned = azimuth.value() - cameraBearing.value() + 540;
    return new Degrees(turned - 360 * Math.floor(turned / 360) - 180);
  }

  /**
   * Returns the direction to the sun as it is seen, in the setup's frame: x to camera right, y away
   * from the camera, z up.
   */
  public UnitVector toSun(Degrees cameraBearing) {
    return vector(relativeAzimuth(cameraBearing).toRadians(), elevation.toRadians());
  }

  /**
   * Returns the angle between the lens's axis and the sun as it is seen, 0 to 180 degrees. Below
   * half the lens's angle of view the sun is in the picture.
   *
   * @param cameraTilt of the axis above the horizontal, -90 to 90
   */
  public Degrees angleToAxis(Degrees cameraBearing, Degrees cameraTilt) {
    return toSun(cameraBearing).angleTo(vector(0, cameraTilt.toRadians()));
  }

  /** Returns the sun as a light, seen from a subject on the camera's axis. */
  public Direction fromSubject(Degrees cameraBearing) {
    return new Direction(new Degrees(180 - relativeAzimuth(cameraBearing).value()), elevation);
  }

  /** Returns the sun as a light, seen from a subject anywhere, measured toward the camera. */
  public Direction fromSubject(Degrees cameraBearing, Point subject, Point camera) {
    UnitVector sun = toSun(cameraBearing);
    Point toward = new Point(subject.x() + sun.x(), subject.y() + sun.y(), subject.z() + sun.z());
    return Direction.of(subject, toward, camera);
  }

  /**
   * Returns how long a shadow on level ground is, {@code h / tan(elevation)}; none where the sun is
   * not above the horizon. It grows without bound toward the horizon.
   *
   * @param height of what throws it
   */
  public Optional<Metres> shadow(Metres height) {
    if (elevation.value() <= 0) {
      return Optional.empty();
    }
    double radians = elevation.toRadians();
    double length = Math.max(0, height.value() * StrictMath.cos(radians) / StrictMath.sin(radians));
    return Double.isFinite(length) ? Optional.of(new Metres(length)) : Optional.empty();
  }

  /** Returns the true bearing in which shadows fall. */
  public Degrees shadowBearing() {
    return new Degrees(azimuth.value() < 180 ? azimuth.value() + 180 : azimuth.value() - 180);
  }

  private static UnitVector vector(double azimuthRadians, double elevationRadians) {
    double ground = StrictMath.cos(elevationRadians);
    return new UnitVector(
        ground * StrictMath.sin(azimuthRadians),
        ground * StrictMath.cos(azimuthRadians),
        StrictMath.sin(elevationRadians));
  }
}
