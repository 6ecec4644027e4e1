package lampwright.engine.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.Random;
import lampwright.engine.light.Point;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;
import org.junit.jupiter.api.Test;

final class SunPositionTest {

  private static final Instant NEW_YEAR = Instant.parse("2026-01-01T00:00:00Z");

  @Test
  void theSunMovesWithoutStepsFromMinuteToMinute() {
    Observer observer = observer(50.35, -4.15);
    SunPosition before = observer.position(NEW_YEAR);
    for (int minute = 1; minute < 3 * 1440; minute++) {
      SunPosition now = observer.position(NEW_YEAR.plusSeconds(60L * minute));
      double moved = SunTarget.of(before).missOf(now).value();
      assertTrue(moved > 0.2 && moved < 0.26, "minute " + minute + ": " + moved);
      before = now;
    }
  }

  /** Kepler's and the tilt's drift: the sun's declination changes at most 0.4 degree a day. */
  @Test
  void morningAndAfternoonMirrorEachOtherAboutNoon() {
    Random random = new Random(11);
    for (int i = 0; i < 50; i++) {
      Observer observer = observer(random.nextDouble() * 160 - 80, random.nextDouble() * 300 - 150);
      LocalDate date = LocalDate.of(2026, 1, 1).plusDays(random.nextInt(365));
      SunDay day = SunDay.of(observer, date, ZoneOffset.UTC);
      for (int hours = 1; hours < 12; hours++) {
        SunPosition morning = observer.position(day.noon().minusSeconds(3600L * hours));
        SunPosition afternoon = observer.position(day.noon().plusSeconds(3600L * hours));
        double drift = 2 * hours / 24.0 * 0.41;
        assertEquals(
            morning.geometricElevation().value(),
            afternoon.geometricElevation().value(),
            drift,
            observer + " on " + date + " (seed 11)");
      }
    }
  }

  @Test
  void everyPlaceAndTimeHasAFiniteSun() {
    Random random = new Random(3);
    for (int i = 0; i < 5_000; i++) {
      double latitude = i % 50 == 0 ? 90 : i % 50 == 1 ? -90 : random.nextDouble() * 180 - 90;
      double longitude = i % 40 == 0 ? 180 : i % 40 == 1 ? -180 : random.nextDouble() * 360 - 180;
      Instant at = Instant.ofEpochSecond(random.nextLong(-60_000_000_000L, 250_000_000_000L));
      SunPosition sun = observer(latitude, longitude).position(at);
      assertTrue(sun.azimuth().value() >= 0 && sun.azimuth().value() < 360, sun.toString());
      assertTrue(
          sun.elevation().compareTo(sun.geometricElevation()) >= 0 || sun.elevation().value() > 89,
          sun.toString());
    }
  }

  /** Elevation at the pole is the declination: 23.44 degrees at the solstice (tilt of the axis). */
  @Test
  void atThePoleTheSunGoesRoundAtOneHeight() {
    Instant solstice = Instant.parse("2026-06-21T08:24:00Z");
    for (int hour = 0; hour < 24; hour++) {
      SunPosition sun = observer(90, 0).position(solstice.plusSeconds(3600L * hour));
      assertEquals(23.44, sun.geometricElevation().value(), 0.01);
    }
  }

  @Test
  void relativeAzimuthIsSignedTowardCameraRight() {
    assertEquals(-90, sun(10, 5).relativeAzimuth(new Degrees(100)).value(), 1e-12);
    assertEquals(20, sun(10, 5).relativeAzimuth(new Degrees(350)).value(), 1e-12);
    assertEquals(-180, sun(180, 5).relativeAzimuth(new Degrees(0)).value(), 1e-12);
  }

  @Test
  void aSunBehindTheCameraIsAFrontalLight() {
    assertEquals(0, sun(60, 30).fromSubject(new Degrees(240)).azimuth().value(), 1e-12);
    // To camera right of a camera that looks north is the east.
    assertEquals(90, sun(90, 30).fromSubject(new Degrees(0)).azimuth().value(), 1e-12);
  }

  @Test
  void aSubjectOffTheAxisSeesTheSunFromItsOwnLineToTheCamera() {
    // Camera looks north from 10 m south; subject 10 m to the right of the axis, 45 degrees aside.
    double azimuth =
        sun(90, 10)
            .fromSubject(new Degrees(0), new Point(10, 0, 0), new Point(0, -10, 0))
            .azimuth()
            .value();
    assertEquals(135, azimuth, 1e-9);
    double onAxis =
        sun(90, 10)
            .fromSubject(new Degrees(0), new Point(0, 0, 0), new Point(0, -10, 0))
            .azimuth()
            .value();
    assertEquals(sun(90, 10).fromSubject(new Degrees(0)).azimuth().value(), onAxis, 1e-9);
  }

  @Test
  void aSunInTheLensHasNoAngleToItsAxis() {
    assertEquals(0, sun(123, 17).angleToAxis(new Degrees(123), new Degrees(17)).value(), 1e-12);
    assertEquals(180, sun(303, -17).angleToAxis(new Degrees(123), new Degrees(17)).value(), 1e-9);
  }

  @Test
  void shadowsAreAsLongAsTheThingAt45DegreesAndGoneWithTheSun() {
    assertEquals(1.7, sun(0, 45).shadow(new Metres(1.7)).orElseThrow().value(), 1e-12);
    assertEquals(0, sun(0, 90).shadow(new Metres(1.7)).orElseThrow().value(), 1e-12);
    assertEquals(Optional.empty(), sun(0, 0).shadow(new Metres(1.7)));
    assertEquals(Optional.empty(), sun(0, -3).shadow(new Metres(1.7)));
    assertEquals(20, sun(200, 5).shadowBearing().value(), 1e-12);
  }

  @Test
  void aBoundaryOfPhasesBelongsToTheBrighterSide() {
    assertEquals(SunPhase.DAY, SunPhase.of(new Degrees(6)));
    assertEquals(SunPhase.GOLDEN_SUN_UP, SunPhase.of(new Degrees(-0.833)));
    assertEquals(SunPhase.GOLDEN_SUN_DOWN, SunPhase.of(new Degrees(-4)));
    assertEquals(SunPhase.BLUE_HOUR, SunPhase.of(new Degrees(-6)));
    assertEquals(SunPhase.ASTRONOMICAL_TWILIGHT, SunPhase.of(new Degrees(-12.01)));
    assertEquals(SunPhase.NIGHT, SunPhase.of(new Degrees(-90)));
  }

  @Test
  void whatIsNoPlaceAndNoAirIsRefused() {
    String message =
        assertThrows(IllegalArgumentException.class, () -> observer(90.1, 0)).getMessage();
    assertEquals("Latitude (90.1 °) must be from -90 to 90.", message);
    assertThrows(IllegalArgumentException.class, () -> observer(0, -180.5));
    assertThrows(IllegalArgumentException.class, () -> new Air(0, 15));
    assertThrows(IllegalArgumentException.class, () -> new Air(1000, -300));
  }

  private static SunPosition sun(double azimuth, double elevation) {
    return new SunPosition(new Degrees(azimuth), new Degrees(elevation), new Degrees(elevation));
  }

  private static Observer observer(double latitude, double longitude) {
    return Observer.of(PlaceOnEarth.of(new Degrees(latitude), new Degrees(longitude)));
  }
}
