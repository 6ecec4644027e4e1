package lampwright.place;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lampwright.engine.sun.ClearSky;
import lampwright.engine.sun.Crossing;
import lampwright.engine.sun.HalfDay;
import lampwright.engine.sun.Observer;
import lampwright.engine.sun.PlaceOnEarth;
import lampwright.engine.sun.SunDay;
import lampwright.engine.sun.SunPhase;
import lampwright.engine.sun.SunPosition;

/**
 * The sun over a place through one day of its clocks.
 *
 * @param noon when the sun crosses the meridian
 * @param track every half hour of the day, both midnights included
 * @param turns where one phase of the light goes over into the next, morning first
 */
public record SunOfDay(
    PlaceOnEarth place,
    LocalDate date,
    ZoneOffset offset,
    Moment noon,
    List<Moment> track,
    List<Turn> turns) {

  private static final Duration EACH = Duration.ofMinutes(30);
  private static final int STEPS = 48;

  /** The phases whose lower bound is told, from the brightest. */
  private static final List<SunPhase> TOLD =
      List.of(
          SunPhase.DAY,
          SunPhase.GOLDEN_SUN_UP,
          SunPhase.GOLDEN_SUN_DOWN,
          SunPhase.BLUE_HOUR,
          SunPhase.NAUTICAL_TWILIGHT,
          SunPhase.ASTRONOMICAL_TWILIGHT);

  public SunOfDay {
    track = List.copyOf(track);
    turns = List.copyOf(turns);
  }

  /**
   * Where it stands.
   *
   * @param clearSky what a clear sky gives on a level plane, an estimate; absent below {@link
   *     ClearSky#DARKEST}
   */
  public record Moment(Instant at, SunPosition sun, Optional<ClearSky> clearSky) {

    static Moment of(Observer observer, Instant at) {
      SunPosition sun = observer.position(at);
      return new Moment(at, sun, SunOfDay.clearSky(sun));
    }
  }

  static Optional<ClearSky> clearSky(SunPosition sun) {
    boolean isDark = sun.geometricElevation().compareTo(ClearSky.DARKEST) < 0;
    return isDark ? Optional.empty() : Optional.of(ClearSky.smooth(sun.geometricElevation()));
  }

  /**
   * The sun at the lower bound of a phase.
   *
   * @param half rising, where the phase begins, or setting, where it ends
   * @param crossing a day without one, as near the poles, says so
   */
  public record Turn(SunPhase phase, HalfDay half, Crossing crossing) {}

  /**
   * The sun of a day.
   *
   * @param offset of the place's clocks from universal time
   */
  public static SunOfDay of(PlaceOnEarth place, LocalDate date, ZoneOffset offset) {
    Observer observer = Observer.of(place);
    SunDay day = SunDay.of(observer, date, offset);
    Instant midnight = date.atStartOfDay().toInstant(offset);
    return new SunOfDay(
        place,
        date,
        offset,
        Moment.of(observer, day.noon()),
        IntStream.rangeClosed(0, STEPS)
            .mapToObj(step -> Moment.of(observer, midnight.plus(EACH.multipliedBy(step))))
            .toList(),
        Stream.concat(
                TOLD.reversed().stream().map(phase -> turn(day, phase, HalfDay.RISING)),
                TOLD.stream().map(phase -> turn(day, phase, HalfDay.SETTING)))
            .toList());
  }

  private static Turn turn(SunDay day, SunPhase phase, HalfDay half) {
    return new Turn(phase, half, day.crossing(half, phase.lowest()));
  }
}
