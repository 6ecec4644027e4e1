package lampwright.engine.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import lampwright.engine.unit.Degrees;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shredzone.commons.suncalc.SunTimes;

/** The sun against libraries that share no code with the one behind it. */
final class SunAgainstOthersTest {

  /**
   * Positions printed by astronomy-engine 2.1.19, whose maker states one arc minute; the first line
   * of the file says how. Delta T differs between both by some seconds, which is 0.0001 degree.
   */
  @Test
  void theSunStandsWhereAstronomyEngineSees() throws IOException {
    int count = 0;
    for (String line : lines("/lampwright/reference/sun/astronomy-engine.csv")) {
      if (line.startsWith("#") || line.startsWith("instant")) {
        continue;
      }
      String[] cells = line.split(",", -1);
      SunPosition sun =
          Observer.of(place(Double.parseDouble(cells[1]), Double.parseDouble(cells[2])))
              .position(Instant.parse(cells[0]));
      SunTarget theirs =
          new SunTarget(
              new Degrees(Double.parseDouble(cells[3])), new Degrees(Double.parseDouble(cells[4])));
      double miss = theirs.missOf(sun).value();
      assertTrue(miss < 1.0 / 60, () -> line + ": off by " + miss + "°, " + sun);
      count++;
    }
    assertEquals(356, count);
  }

  /**
   * Altitude without refraction against commons-suncalc 3.11 (Montenbruck and Pfleger's short
   * series), which is good to about 0.1 degree (from memory).
   */
  @Test
  void theSunStandsWhereSuncalcSees() {
    Random random = new Random(20_261_125);
    for (int i = 0; i < 500; i++) {
      double latitude = random.nextDouble() * 170 - 85;
      double longitude = random.nextDouble() * 360 - 180;
      Instant at = Instant.ofEpochSecond(random.nextLong(-631_152_000L, 2_556_057_600L));
      SunPosition ours = Observer.of(place(latitude, longitude)).position(at);
      var theirs =
          org.shredzone.commons.suncalc.SunPosition.compute()
              .on(at.atZone(ZoneOffset.UTC))
              .at(latitude, longitude)
              .execute();
      double miss =
          new SunTarget(new Degrees(theirs.getAzimuth()), new Degrees(theirs.getTrueAltitude()))
              .missOf(ours)
              .value();
      String where = at + " at " + latitude + ", " + longitude + " (seed 20261125): " + miss;
      assertTrue(miss < 0.1, where);
    }
  }

  /** Sunrise and sunset against commons-suncalc 3.11, whose page states one minute. */
  @Test
  void theSunRisesAndSetsWhenSuncalcSays() {
    Random random = new Random(7);
    for (int i = 0; i < 100; i++) {
      double latitude = random.nextDouble() * 100 - 50;
      double longitude = random.nextDouble() * 360 - 180;
      LocalDate date = LocalDate.of(2025, 1, 1).plusDays(random.nextInt(365));
      ZoneOffset offset = ZoneOffset.ofHours((int) Math.round(longitude / 15));
      SunDay day = SunDay.of(Observer.of(place(latitude, longitude)), date, offset);
      SunTimes theirs =
          SunTimes.compute().on(date.atStartOfDay(offset)).at(latitude, longitude).execute();
      assertNear(Objects.requireNonNull(theirs.getRise()).toInstant(), day, HalfDay.RISING);
      assertNear(Objects.requireNonNull(theirs.getSet()).toInstant(), day, HalfDay.SETTING);
    }
  }

  private static void assertNear(Instant expected, SunDay day, HalfDay half) {
    Crossing.At crossing =
        assertInstanceOf(Crossing.At.class, day.crossing(half, SunPhase.GOLDEN_SUN_UP.lowest()));
    long off = Math.abs(Duration.between(expected, crossing.encounter().at()).toSeconds());
    assertTrue(off <= 60, () -> half + " off by " + off + " s, " + day);
  }

  /**
   * Sunrise and sunset of the report's worked example: 06:12:43 and 17:20:19 local (Reda and
   * Andreas, table A5.1, as REFERENCE 10 quotes them). The report interpolates between daily
   * positions and leaves height and parallax out, so a few seconds remain; its sunset is that of
   * the universal day, which is the evening before.
   */
  @ParameterizedTest
  @CsvSource({"RISING,2003-10-17T13:12:43Z", "SETTING,2003-10-17T00:20:19Z"})
  void theDayOfTheReportBeginsAndEndsAsPrinted(HalfDay half, Instant expected) {
    SunDay day =
        SunDay.of(
            Observer.of(place(39.742476, -105.1786)),
            LocalDate.ofInstant(expected, ZoneOffset.ofHours(-7)),
            ZoneOffset.ofHours(-7));
    Crossing crossing = day.crossing(half, new Degrees(-0.8333));
    assertEquals(
        0.0,
        Duration.between(expected, crossing.encounter().at()).toMillis() / 1000.0,
        5,
        "seconds");
  }

  private static PlaceOnEarth place(double latitude, double longitude) {
    return PlaceOnEarth.of(new Degrees(latitude), new Degrees(longitude));
  }

  private static List<String> lines(String resource) throws IOException {
    try (BufferedReader reader =
        new BufferedReader(
            new InputStreamReader(
                Objects.requireNonNull(SunAgainstOthersTest.class.getResourceAsStream(resource)),
                StandardCharsets.UTF_8))) {
      return reader.lines().toList();
    }
  }
}
