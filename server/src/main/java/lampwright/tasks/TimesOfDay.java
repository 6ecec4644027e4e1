package lampwright.tasks;

import java.time.Instant;
import java.time.LocalTime;
import java.util.Optional;
import lampwright.engine.sun.HalfDay;
import lampwright.engine.sun.Observer;
import lampwright.engine.sun.PlaceOnEarth;
import lampwright.engine.sun.SunPhase;
import lampwright.setup.Occasion;

/**
 * The time of day of an occasion: by where the sun stands, or where that is not known by the clock.
 *
 * <p>Dawn and dusk are from nautical twilight to the end of the golden hour ({@link SunPhase});
 * midday is an hour and a half on both sides of the sun's noon, while it is up. The hours by the
 * clock are common practice, no source.
 */
final class TimesOfDay {

  private static final long MIDDAY_SECONDS = 5_400;

  private TimesOfDay() {}

  /** The time of day; none where no time is known. */
  static Optional<String> of(Occasion occasion) {
    return bySun(occasion).or(() -> occasion.time().map(TimesOfDay::byClock));
  }

  private static Optional<String> bySun(Occasion occasion) {
    if (occasion.date().isEmpty() || occasion.time().isEmpty() || occasion.utcOffset().isEmpty()) {
      return Optional.empty();
    }
    Instant at =
        occasion.date().get().atTime(occasion.time().get()).toInstant(occasion.utcOffset().get());
    return occasion
        .place()
        .flatMap(
            place ->
                place
                    .latitude()
                    .flatMap(
                        latitude ->
                            place
                                .longitude()
                                .map(longitude -> PlaceOnEarth.of(latitude, longitude))))
        .map(place -> bySun(Observer.of(place), at));
  }

  private static String bySun(Observer observer, Instant at) {
    boolean rising = observer.halfDay(at) == HalfDay.RISING;
    boolean noonIsNear =
        observer.halfDay(at.minusSeconds(MIDDAY_SECONDS)) == HalfDay.RISING
            && observer.halfDay(at.plusSeconds(MIDDAY_SECONDS)) == HalfDay.SETTING;
    SunPhase phase = observer.position(at).phase();
    boolean isUp = phase == SunPhase.DAY || phase == SunPhase.GOLDEN_SUN_UP;
    if (isUp && noonIsNear) {
      return "midday";
    }
    return switch (phase) {
      case NIGHT, ASTRONOMICAL_TWILIGHT -> "night";
      case DAY -> rising ? "morning" : "afternoon";
      case GOLDEN_SUN_UP, GOLDEN_SUN_DOWN, BLUE_HOUR, NAUTICAL_TWILIGHT -> rising ? "dawn" : "dusk";
    };
  }

  private static String byClock(LocalTime time) {
    int hour = time.getHour();
    if (hour < 5 || hour >= 22) {
      return "night";
    }
    if (hour < 7) {
      return "dawn";
    }
    if (hour < 11) {
      return "morning";
    }
    if (hour < 14) {
      return "midday";
    }
    return hour < 18 ? "afternoon" : "dusk";
  }
}
