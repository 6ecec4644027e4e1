package lampwright.engine.sun;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.Optional;
import lampwright.engine.Source;
import lampwright.engine.Working;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Degrees;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;

/**
 * Someone at a place who looks for the sun.
 *
 * <p>The position is by the algorithm of Reda and Andreas (source reda-andreas), within 0.0003
 * degree for the years -2000 to 6000. Instants are taken at the nearest second, in which the sun
 * moves 0.004 degree. Refraction is the algorithm's own: added to the centre of the sun until its
 * upper limb is below the horizon, which is a step of 0.6 degree there.
 *
 * @param air at the place
 * @param deltaTSeconds terrestrial less universal time, where it is known better than by the
 *     estimate; a minute's error moves the sun by 0.0007 degree
 */
public record Observer(PlaceOnEarth place, Air air, Optional<Double> deltaTSeconds) {

  /** Solar degrees a second of time, on average. */
  private static final double SECONDS_PER_DEGREE = 240;

  /** The years between which delta T has an estimate. */
  private static final int FIRST_ESTIMATE = -499;

  private static final int LAST_ESTIMATE = 2999;

  /** Checks the bound. */
  public Observer {
    deltaTSeconds.ifPresent(seconds -> Bounds.requireBetween("Delta T", seconds, "s", -1e6, 1e6));
  }

  /** Returns an observer in standard air with an estimated delta T. */
  public static Observer of(PlaceOnEarth place) {
    return new Observer(place, Air.STANDARD, Optional.empty());
  }

  /** Returns where the sun stands. */
  public SunPosition position(Instant at) {
    ZonedDateTime time = Instant.ofEpochSecond(nearestSecond(at)).atZone(ZoneOffset.UTC);
    double latitude = place.latitude().value();
    double longitude = place.longitude().value();
    double height = place.height().value();
    SPA.SpaTimeDependent ofTime = SPA.calculateSpaTimeDependentParts(time, deltaT(time));
    SolarPosition bare =
        SPA.calculateSolarPositionWithTimeDependentParts(latitude, longitude, height, ofTime);
    SolarPosition seen =
        SPA.calculateSolarPositionWithTimeDependentParts(
            latitude, longitude, height, air.pressureHpa(), air.temperatureC(), ofTime);
    return new SunPosition(
        new Degrees(bare.azimuth()),
        new Degrees(90 - seen.zenithAngle()),
        new Degrees(90 - bare.zenithAngle()));
  }

  /** There is no estimate far from our time; then that of the nearest year that has one. */
  private double deltaT(ZonedDateTime time) {
    int year = Math.max(FIRST_ESTIMATE, Math.min(LAST_ESTIMATE, time.getYear()));
    return deltaTSeconds.orElseGet(() -> DeltaT.estimate(time.toLocalDate().withYear(year)));
  }

  private static long nearestSecond(Instant at) {
    return at.getEpochSecond() + (at.getNano() >= 500_000_000 ? 1 : 0);
  }

  /** Returns the sun's declination as seen from the place, -90 to 90. */
  public Degrees declination(Instant at) {
    return EarthFrame.of(position(at), place.latitude()).declination();
  }

  /** Returns in which half of the solar day an instant is. */
  public HalfDay halfDay(Instant at) {
    Degrees hourAngle = EarthFrame.of(position(at), place.latitude()).hourAngle();
    return hourAngle.value() < 0 ? HalfDay.RISING : HalfDay.SETTING;
  }

  /** Returns the instant nearest to another at which the sun is at an hour angle, to the second. */
  Instant at(Degrees hourAngle, Instant near) {
    Instant found = near;
    // The hour angle grows evenly but for 30 seconds a day, so the third step is below a second.
    for (int step = 0; step < 3; step++) {
      Degrees now = EarthFrame.of(position(found), place.latitude()).hourAngle();
      double miss = hourAngle.minus(now).toHalfTurns().value();
      found = found.plusSeconds(Math.round(miss * SECONDS_PER_DEGREE));
    }
    return found;
  }

  /** Returns how the apparent elevation came about. */
  public Working elevationWorking(Instant at) {
    SunPosition sun = position(at);
    return Working.of(
        "sun above the horizon, as seen",
        sun.elevation().value(),
        "°",
        "geometric elevation + refraction",
        Source.REDA_ANDREAS,
        Working.of(
            "sun above the horizon, without air",
            sun.geometricElevation().value(),
            "°",
            "asin(sin φ sin δ′ + cos φ cos δ′ cos H′)",
            Source.REDA_ANDREAS,
            Working.given("latitude", place.latitude().value(), "°"),
            Working.given("longitude", place.longitude().value(), "°"),
            Working.given("Julian day", JulianDay.of(at).days(), "d")),
        Working.given("pressure", air.pressureHpa(), "hPa"),
        Working.given("temperature", air.temperatureC(), "°C"));
  }
}
