package lampwright.engine.sun;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import lampwright.engine.unit.Degrees;

/**
 * One solar day at a place: from the lowest sun over noon, when it crosses the meridian, to the
 * next lowest.
 *
 * @param observer who looks
 * @param start sun at hour angle -180 degrees
 * @param noon sun at hour angle 0
 * @param end sun at hour angle 180 degrees
 */
public record SunDay(Observer observer, Instant start, Instant noon, Instant end) {

  private static final Degrees HALF_TURN = new Degrees(180);
  private static final long HALF_DAY_SECONDS = 43_200;

  /** Within how many seconds of the wanted hour angle the day's nearest sun is sought. */
  private static final long ABOUT_SECONDS = 1_800;

  /**
   * Returns the solar day whose noon is nearest to twelve o'clock of a date.
   *
   * @param offset of the place's clocks from universal time
   */
  public static SunDay of(Observer observer, LocalDate date, ZoneOffset offset) {
    return around(observer, date.atTime(LocalTime.NOON).toInstant(offset));
  }

  /** Returns the solar day whose noon is nearest to an instant. */
  static SunDay around(Observer observer, Instant near) {
    Instant noon = observer.at(new Degrees(0), near);
    return new SunDay(
        observer,
        observer.at(HALF_TURN, noon.minusSeconds(HALF_DAY_SECONDS)),
        noon,
        observer.at(HALF_TURN, noon.plusSeconds(HALF_DAY_SECONDS)));
  }

  /** Returns the solar day after this one. */
  SunDay next() {
    return around(observer, noon.plusSeconds(2 * HALF_DAY_SECONDS));
  }

  /**
   * Returns when the sun crosses a geometric elevation, to the second; where it does so twice in
   * half a day, which happens near the poles only, one of both.
   */
  public Crossing crossing(HalfDay half, Degrees geometricElevation) {
    long from = (half == HalfDay.RISING ? start : noon).getEpochSecond();
    long to = (half == HalfDay.RISING ? noon : end).getEpochSecond();
    double wanted = geometricElevation.value();
    double first = elevation(from) - wanted;
    double last = elevation(to) - wanted;
    if (first * last > 0) {
      boolean firstIsNearer = Math.abs(first) < Math.abs(last);
      Encounter nearest = encounter(firstIsNearer ? from : to, wanted);
      return first > 0 ? new Crossing.StaysAbove(nearest) : new Crossing.StaysBelow(nearest);
    }
    boolean fromBelow = first < last;
    while (to - from > 1) {
      long middle = from + (to - from) / 2;
      if (elevation(middle) < wanted == fromBelow) {
        from = middle;
      } else {
        to = middle;
      }
    }
    Encounter before = encounter(from, wanted);
    Encounter after = encounter(to, wanted);
    return new Crossing.At(after.miss().compareTo(before.miss()) < 0 ? after : before);
  }

  private double elevation(long second) {
    return observer.position(Instant.ofEpochSecond(second)).geometricElevation().value();
  }

  private Encounter encounter(long second, double wanted) {
    Instant at = Instant.ofEpochSecond(second);
    SunPosition sun = observer.position(at);
    return new Encounter(at, sun, new Degrees(Math.abs(sun.geometricElevation().value() - wanted)));
  }

  /** Returns when in this day the sun comes nearest to a direction, to the second. */
  public Encounter nearestTo(SunTarget target) {
    EarthFrame wanted = target.inEarthFrame(observer.place());
    double turn = wanted.hourAngle().value() / 360;
    long about =
        observer
            .at(wanted.hourAngle(), noon.plusSeconds(Math.round(turn * 2 * HALF_DAY_SECONDS)))
            .getEpochSecond();
    long from = about - ABOUT_SECONDS;
    long to = about + ABOUT_SECONDS;
    // The gap shrinks, then grows: halve by which way it goes from one second to the next.
    while (to > from) {
      long middle = from + (to - from) / 2;
      if (gap(middle, target) <= gap(middle + 1, target)) {
        to = middle;
      } else {
        from = middle + 1;
      }
    }
    Instant at = Instant.ofEpochSecond(from);
    SunPosition sun = observer.position(at);
    return new Encounter(at, sun, target.missOf(sun));
  }

  private double gap(long second, SunTarget target) {
    return target.squaredGapTo(observer.position(Instant.ofEpochSecond(second)));
  }
}
