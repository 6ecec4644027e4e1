package lampwright.engine.sun;

import java.time.Instant;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Lux;

/**
 * The sun's part of the program in US Naval Observatory Circular 171 (source usno-circular-171),
 * with its own position of low precision (about 0.02 degree, within some decades of 2000). Kept for
 * the circular's certification cases; figures use {@link Observer} and {@link ClearSky}.
 *
 * @param light on a level plane under a clear sky
 * @param wholeAzimuth from north, clockwise, rounded to whole degrees as the program prints it
 */
public record UsnoProgram(Lux light, Degrees wholeAzimuth) {

  /** Cosine and sine of the tilt of the earth's axis, as the program has them. */
  private static final double COSINE_TILT = 0.91775;

  private static final double SINE_TILT = 0.39715;

  /** Runs the program for a place and an instant. */
  public static UsnoProgram of(PlaceOnEarth place, Instant at) {
    double days = JulianDay.of(at).daysSince2000();
    Degrees meanLongitude = new Degrees(280.46 + 0.98565 * days);
    Degrees anomaly = new Degrees(357.5 + 0.98560 * days);
    double longitude =
        new Degrees(meanLongitude.value() + 1.91 * StrictMath.sin(anomaly.toRadians())).toRadians();
    double rightAscension =
        StrictMath.atan2(COSINE_TILT * StrictMath.sin(longitude), StrictMath.cos(longitude));
    double sineDeclination = SINE_TILT * StrictMath.sin(longitude);
    double cosineDeclination = Math.sqrt(1 - sineDeclination * sineDeclination);
    // The fraction of the day, in turns; the sidereal time is the mean longitude less half a turn.
    double turns = days + 0.5 - Math.floor(days + 0.5);
    double sidereal = meanLongitude.value() - 180 + 360 * turns + place.longitude().value();
    double hourAngle = new Degrees(sidereal).toRadians() - rightAscension;

    double sineLatitude = StrictMath.sin(place.latitude().toRadians());
    double cosineLatitude = StrictMath.cos(place.latitude().toRadians());
    double north =
        sineDeclination * cosineLatitude
            - cosineDeclination * sineLatitude * StrictMath.cos(hourAngle);
    double east = -cosineDeclination * StrictMath.sin(hourAngle);
    double up =
        sineDeclination * sineLatitude
            + cosineDeclination * cosineLatitude * StrictMath.cos(hourAngle);
    double azimuth = Degrees.ofRadians(StrictMath.atan2(east, north)).value();
    Degrees elevation = Degrees.ofRadians(StrictMath.asin(Math.max(-1, Math.min(1, up))));
    return new UsnoProgram(
        ClearSky.published(elevation).horizontal(),
        new Degrees(Math.floor((azimuth < 0 ? azimuth + 360 : azimuth) + 0.5)));
  }
}
