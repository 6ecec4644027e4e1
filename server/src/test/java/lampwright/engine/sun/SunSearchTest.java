package lampwright.engine.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Random;
import lampwright.engine.exposure.Ev100;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Stops;
import org.junit.jupiter.api.Test;

final class SunSearchTest {

  private static final Degrees HALF_A_DEGREE = new Degrees(0.5);
  private static final Instant SEPTEMBER = Instant.parse("2025-09-12T18:13:00Z");
  private static final Observer SLIPWAY = observer(50.35, -4.15);

  /** The declination of a September sun comes back in spring: 23 days before the equinox. */
  @Test
  void aSunOfSeptemberStandsSoAgainInSpringAndInSeptember() {
    SunTarget target = SunTarget.of(SLIPWAY.position(SEPTEMBER));
    SunAgain.Returns returns =
        assertInstanceOf(
            SunAgain.Returns.class,
            new SunSearch(SLIPWAY, SEPTEMBER.plusSeconds(20 * 86_400), 365)
                .again(target, HALF_A_DEGREE));
    assertEquals(2, returns.spells().size());
    LocalDate spring = date(returns.spells().get(0).nearest());
    assertTrue(
        spring.isAfter(LocalDate.of(2026, 3, 28)) && spring.isBefore(LocalDate.of(2026, 4, 3)),
        spring.toString());
    LocalDate autumn = date(returns.spells().get(1).nearest());
    assertTrue(Math.abs(autumn.toEpochDay() - LocalDate.of(2026, 9, 12).toEpochDay()) <= 1);
    assertTrue(returns.spells().get(1).nearest().miss().value() < 0.2);
  }

  @Test
  void searchingFromTheMomentItselfFindsIt() {
    SunAgain.Returns returns =
        assertInstanceOf(
            SunAgain.Returns.class,
            new SunSearch(SLIPWAY, SEPTEMBER, 5)
                .again(SunTarget.of(SLIPWAY.position(SEPTEMBER)), HALF_A_DEGREE));
    Encounter first = returns.spells().getFirst().first();
    assertEquals(SEPTEMBER, first.at());
    assertEquals(0, first.miss().value(), 1e-6);
  }

  /** Against looking at every fifth second of the day. */
  @Test
  void theBestMomentOfADayIsTheBestOfAllItsMoments() {
    Random random = new Random(5);
    for (int i = 0; i < 6; i++) {
      Observer observer = observer(random.nextDouble() * 140 - 70, random.nextDouble() * 360 - 180);
      SunTarget target =
          new SunTarget(
              new Degrees(random.nextDouble() * 360), new Degrees(random.nextDouble() * 50));
      SunDay day = SunDay.of(observer, LocalDate.of(2026, 5, 1 + i), ZoneOffset.UTC);
      Encounter best = day.nearestTo(target);
      double least = 180;
      for (long s = day.start().getEpochSecond(); s < day.end().getEpochSecond(); s += 5) {
        SunPosition sun = observer.position(Instant.ofEpochSecond(s));
        least = Math.min(least, target.missOf(sun).value());
      }
      assertTrue(best.miss().value() <= least + 1e-9, best + " against " + least + " (seed 5)");
    }
  }

  @Test
  void aSunThatHighIsNeverReachedInTheNorthAndTheNearestIsTold() {
    SunAgain.StaysAway away =
        assertInstanceOf(
            SunAgain.StaysAway.class,
            new SunSearch(observer(60, 10), SEPTEMBER, 400)
                .again(new SunTarget(new Degrees(180), new Degrees(70)), HALF_A_DEGREE));
    // The highest sun is 90 - 60 + 23.44 degrees at the solstice.
    assertEquals(70 - 53.44, away.nearest().miss().value(), 0.02);
    assertEquals(6, date(away.nearest()).getMonthValue());
    HeightAgain.OutOfReach outOfReach =
        assertInstanceOf(
            HeightAgain.OutOfReach.class,
            new SunSearch(observer(60, 10), SEPTEMBER, 400)
                .height(HalfDay.SETTING, new Degrees(70), 3));
    assertEquals(16.56, outOfReach.nearest().miss().value(), 0.02);
  }

  @Test
  void anElevationIsMetToTheSecondOnTheSideAskedFor() {
    Degrees wanted = new Degrees(12);
    HeightAgain.Reached reached =
        assertInstanceOf(
            HeightAgain.Reached.class,
            new SunSearch(SLIPWAY, SEPTEMBER, 30).height(HalfDay.RISING, wanted, 7));
    assertEquals(7, reached.times().size());
    Instant before = SEPTEMBER;
    for (Encounter time : reached.times()) {
      assertTrue(time.at().isAfter(before));
      assertTrue(time.sun().azimuth().value() < 180, time.toString());
      assertTrue(time.miss().value() < 0.0025, "half of what the sun moves in a second: " + time);
      before = time.at();
    }
  }

  /**
   * Midnight sun and polar night north of the circle; the elevation is declination less colatitude.
   */
  @Test
  void aDayWithoutSunriseIsAnAnswer() {
    Degrees horizon = SunPhase.GOLDEN_SUN_UP.lowest();
    SunDay summer = SunDay.of(observer(78, 15), LocalDate.of(2026, 6, 21), ZoneOffset.ofHours(1));
    Crossing.StaysAbove above =
        assertInstanceOf(Crossing.StaysAbove.class, summer.crossing(HalfDay.SETTING, horizon));
    assertEquals(23.44 - 12, above.encounter().sun().geometricElevation().value(), 0.01);
    SunDay winter = SunDay.of(observer(78, 15), LocalDate.of(2026, 12, 21), ZoneOffset.ofHours(1));
    Crossing.StaysBelow below =
        assertInstanceOf(Crossing.StaysBelow.class, winter.crossing(HalfDay.RISING, horizon));
    assertEquals(12 - 23.44, below.encounter().sun().geometricElevation().value(), 0.01);
  }

  @Test
  void searchesEndAndAnswerAtEveryLatitudeAndLength() {
    Random random = new Random(17);
    for (int i = 0; i < 300; i++) {
      double latitude = i % 10 == 0 ? 90 : i % 10 == 1 ? -90 : random.nextDouble() * 180 - 90;
      Observer observer = observer(latitude, random.nextDouble() * 360 - 180);
      Instant from = SEPTEMBER.plusSeconds(random.nextInt(40_000_000));
      SunSearch search = new SunSearch(observer, from, 1 + random.nextInt(4));
      Degrees elevation = new Degrees(random.nextDouble() * 180 - 90);
      SunTarget target = new SunTarget(new Degrees(random.nextDouble() * 360), elevation);
      Encounter near =
          switch (search.again(target, HALF_A_DEGREE)) {
            case SunAgain.Returns(var spells) -> spells.getFirst().first();
            case SunAgain.StaysAway(Encounter nearest) -> nearest;
          };
      Encounter height =
          switch (search.height(HalfDay.SETTING, elevation, 2)) {
            case HeightAgain.Reached(var times) -> times.getFirst();
            case HeightAgain.OutOfReach(Encounter nearest) -> nearest;
          };
      for (Encounter each : new Encounter[] {near, height}) {
        assertTrue(!each.at().isBefore(from), "seed 17, " + search);
        assertTrue(
            Duration.between(from, each.at()).toHours() <= 24L * (search.days() + 1) + 12,
            "seed 17, " + search + " " + each);
      }
    }
  }

  @Test
  void waitingUsesTheReadingWhereThereIsOne() {
    SunSearch search = new SunSearch(SLIPWAY, SEPTEMBER, 1);
    Ev100 level = new Ev100(8);
    double ofModel = waiting(search, level, Stops.ZERO);
    double brighter = waiting(search, level, new Stops(0.5));
    assertTrue(brighter > ofModel + 60, brighter + " against " + ofModel);
    assertInstanceOf(
        AmbientFall.IsLower.class,
        search.ambientFallsTo(new Ev100(12), MeterConstant.FLAT, Stops.ZERO));
    assertInstanceOf(
        AmbientFall.StaysBrighter.class,
        search.ambientFallsTo(new Ev100(-20), MeterConstant.FLAT, Stops.ZERO));
    assertInstanceOf(
        AmbientFall.StaysBrighter.class,
        new SunSearch(observer(78, 15), Instant.parse("2026-06-01T12:00:00Z"), 10)
            .ambientFallsTo(level, MeterConstant.FLAT, Stops.ZERO));
  }

  @Test
  void aSearchHasBounds() {
    assertEquals(
        "Days to search (401) must be from 1 to 400.",
        assertThrows(IllegalArgumentException.class, () -> new SunSearch(SLIPWAY, SEPTEMBER, 401))
            .getMessage());
  }

  private static double waiting(SunSearch search, Ev100 level, Stops readingOverModel) {
    return assertInstanceOf(
            AmbientFall.Falls.class,
            search.ambientFallsTo(level, MeterConstant.FLAT, readingOverModel))
        .waiting()
        .value();
  }

  private static LocalDate date(Encounter encounter) {
    return encounter.at().atZone(ZoneOffset.UTC).toLocalDate();
  }

  private static Observer observer(double latitude, double longitude) {
    return Observer.of(PlaceOnEarth.of(new Degrees(latitude), new Degrees(longitude)));
  }
}
