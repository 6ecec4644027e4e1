package lampwright.place;

import java.time.Duration;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lampwright.engine.exposure.Ev100;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.sun.ClearSky;
import lampwright.engine.sun.HalfDay;
import lampwright.engine.sun.Observer;
import lampwright.engine.sun.SunPosition;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Stops;

/**
 * What was metered at a location about an hour of the day, and what a clear sky would give then.
 * Neither is a promise: weather decides, and a reading on the day wins.
 *
 * @param at the hour that was asked for
 * @param half the half of the solar day that it is in
 * @param clearSky absent below {@link ClearSky#DARKEST}
 * @param bySun the readings whose sun stood most nearly as high, nearest first
 * @param byClock the readings whose clocks showed most nearly the same time, nearest first
 */
public record AmbientNear(
    OffsetDateTime at,
    SunPosition sun,
    HalfDay half,
    Optional<ClearSky> clearSky,
    List<Near> bySun,
    List<Near> byClock) {

  /** As many as help to judge. */
  private static final int MOST = 5;

  private static final long DAY_MINUTES = 24 * 60;

  public AmbientNear {
    bySun = List.copyOf(bySun);
    byClock = List.copyOf(byClock);
  }

  /**
   * One reading, and how far it is.
   *
   * @param index in the location's document
   * @param higher by how much its sun stood higher, without air
   * @param half the half of the solar day that it was taken in
   * @param clockMinutes by how much its clocks were later in the day, -720 up to 720
   * @param days by how much it was later, in whole days; negative for one of the past
   * @param fromClearSky by how much it is above what a clear sky gave then, by the model; absent
   *     for a spot reading, which says nothing of what falls on a plane, and in the dark
   */
  public record Near(
      int index,
      AmbientReading reading,
      SunPosition sun,
      Degrees higher,
      HalfDay half,
      long clockMinutes,
      long days,
      Optional<Stops> fromClearSky) {}

  /** The readings of a location about an hour. */
  public static AmbientNear of(Location location, OffsetDateTime at) {
    Observer observer = Observer.of(location.onEarth());
    SunPosition sun = observer.position(at.toInstant());
    List<AmbientReading> readings = location.ambientReadings();
    List<Near> all =
        IntStream.range(0, readings.size())
            .mapToObj(index -> near(observer, at, sun, index, readings.get(index)))
            .toList();
    return new AmbientNear(
        at,
        sun,
        observer.halfDay(at.toInstant()),
        SunOfDay.clearSky(sun),
        nearest(all, Comparator.comparingDouble(near -> Math.abs(near.higher().value()))),
        nearest(all, Comparator.comparingLong(near -> Math.abs(near.clockMinutes()))));
  }

  private static List<Near> nearest(List<Near> all, Comparator<Near> by) {
    return all.stream()
        .sorted(by.thenComparingLong(near -> Math.abs(near.days())))
        .limit(MOST)
        .toList();
  }

  private static Near near(
      Observer observer, OffsetDateTime at, SunPosition sun, int index, AmbientReading reading) {
    SunPosition then = observer.position(reading.at().toInstant());
    return new Near(
        index,
        reading,
        then,
        then.geometricElevation().minus(sun.geometricElevation()),
        observer.halfDay(reading.at().toInstant()),
        clockMinutes(at.toLocalTime(), reading.at().toLocalTime()),
        Duration.between(at, reading.at()).toDays(),
        reading.how() == AmbientReading.Meter.SPOT
            ? Optional.empty()
            : SunOfDay.clearSky(then)
                .map(sky -> over(reading.level(), sky.ev100(MeterConstant.FLAT))));
  }

  /** The shorter way round the clock. */
  private static long clockMinutes(LocalTime from, LocalTime to) {
    long later = Duration.between(from, to).toMinutes();
    if (later > DAY_MINUTES / 2) {
      return later - DAY_MINUTES;
    }
    return later <= -DAY_MINUTES / 2 ? later + DAY_MINUTES : later;
  }

  private static Stops over(Ev100 reading, Ev100 model) {
    return new Stops(reading.value() - model.value());
  }
}
