package lampwright.engine.sun;

import lampwright.engine.light.UnitVector;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Degrees;

/**
 * Where the sun is wanted, seen from a place.
 *
 * @param azimuth from north, clockwise
 * @param geometricElevation without air, -90 to 90; near the horizon up to 0.6 degree below what
 *     one sees
 */
public record SunTarget(Degrees azimuth, Degrees geometricElevation) {

  /** Checks the bound. */
  public SunTarget {
    Bounds.requireBetween("Geometric elevation", geometricElevation.value(), "°", -90, 90);
  }

  /** Returns where a sun stands. */
  public static SunTarget of(SunPosition sun) {
    return new SunTarget(sun.azimuth(), sun.geometricElevation());
  }

  /**
   * Returns where the sun must stand for a camera.
   *
   * @param relativeAzimuth from the camera's axis, positive to camera right
   */
  public static SunTarget relative(
      Degrees cameraBearing, Degrees relativeAzimuth, Degrees geometricElevation) {
    return new SunTarget(cameraBearing.plus(relativeAzimuth), geometricElevation);
  }

  /** Returns how far a sun is from here, 0 to 180 degrees. */
  public Degrees missOf(SunPosition sun) {
    return vector(azimuth, geometricElevation)
        .angleTo(vector(sun.azimuth(), sun.geometricElevation()));
  }

  /** The straight gap on the unit sphere, squared: as smooth as the angle is not at its end. */
  double squaredGapTo(SunPosition sun) {
    UnitVector here = vector(azimuth, geometricElevation);
    UnitVector there = vector(sun.azimuth(), sun.geometricElevation());
    double x = here.x() - there.x();
    double y = here.y() - there.y();
    double z = here.z() - there.z();
    return x * x + y * y + z * z;
  }

  EarthFrame inEarthFrame(PlaceOnEarth place) {
    return EarthFrame.of(azimuth, geometricElevation, place.latitude());
  }

  private static UnitVector vector(Degrees azimuth, Degrees elevation) {
    double ground = StrictMath.cos(elevation.toRadians());
    return new UnitVector(
        ground * StrictMath.sin(azimuth.toRadians()),
        ground * StrictMath.cos(azimuth.toRadians()),
        StrictMath.sin(elevation.toRadians()));
  }
}
