package lampwright.engine.sun;

import lampwright.engine.unit.Degrees;

/**
 * A direction seen from a place, as hour angle and declination: in this frame the sun goes round
 * evenly, once a day, whatever the latitude, so searches work in it.
 *
 * @param hourAngle from the meridian, positive after noon, above -180 up to 180
 * @param declination above the equator, -90 to 90
 */
record EarthFrame(Degrees hourAngle, Degrees declination) {

  /** Turns azimuth and elevation by the latitude. */
  static EarthFrame of(Degrees azimuth, Degrees elevation, Degrees latitude) {
    double ground = StrictMath.cos(elevation.toRadians());
    double north = ground * StrictMath.cos(azimuth.toRadians());
    double east = ground * StrictMath.sin(azimuth.toRadians());
    double up = StrictMath.sin(elevation.toRadians());
    double sine = StrictMath.sin(latitude.toRadians());
    double cosine = StrictMath.cos(latitude.toRadians());
    double polar = sine * up + cosine * north;
    double meridian = cosine * up - sine * north;
    double equatorial = Math.sqrt(meridian * meridian + east * east);
    return new EarthFrame(
        Degrees.ofRadians(StrictMath.atan2(-east, meridian)).toHalfTurns(),
        Degrees.ofRadians(StrictMath.atan2(polar, equatorial)));
  }

  static EarthFrame of(SunPosition sun, Degrees latitude) {
    return of(sun.azimuth(), sun.geometricElevation(), latitude);
  }
}
