package lampwright.tasks;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import lampwright.engine.sun.HalfDay;
import lampwright.engine.sun.HeightAgain;
import lampwright.engine.sun.Observer;
import lampwright.engine.sun.PlaceOnEarth;
import lampwright.engine.sun.SunAgain;
import lampwright.engine.sun.SunSearch;
import lampwright.engine.sun.SunTarget;
import lampwright.engine.unit.Degrees;
import lampwright.people.StudioId;
import lampwright.place.LocationId;
import lampwright.place.SunOfDay;
import lampwright.setup.Camera;
import lampwright.setup.Occasion;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.setup.figures.SunComputation;
import lampwright.setup.figures.SunFigures;

/**
 * Looks when the sun stands again as it stood for a setup, and where it stands over a location
 * through a day. Stores nothing.
 */
public final class SunWatching {

  /** Near enough to call the sun the same: about its width. */
  public static final Degrees NEAR_ENOUGH = new Degrees(0.5);

  /** How many days of the same height are told. */
  private static final int MOST_HEIGHTS = 14;

  private final Cataloguing cataloguing;
  private final LocationKeeping locations;
  private final Clock clock;

  public SunWatching(Cataloguing cataloguing, LocationKeeping locations, Clock clock) {
    this.cataloguing = cataloguing;
    this.locations = locations;
    this.clock = clock;
  }

  /**
   * Where and from when on to look.
   *
   * @param from the first day by the place's clocks; today where absent
   * @param days how many
   * @param place the setup's own where absent
   * @param offset of the place's clocks; the setup's own where absent
   */
  public record Wishes(
      Optional<LocalDate> from,
      int days,
      Optional<PlaceOnEarth> place,
      Optional<ZoneOffset> offset) {}

  /**
   * What was found.
   *
   * @param then the setup's own sun
   * @param again absent where the setup's own sun is not known
   * @param needs what the setup would have to say for more, as JSON Pointers
   */
  public record Watched(
      Catalogued setup, Optional<SunFigures> then, Optional<Again> again, List<String> needs) {}

  /**
   * When it stands so again.
   *
   * @param direction in the same direction
   * @param height as high in the same half of the day, in whatever direction
   * @param half in which half of the day it was
   * @param relativeAzimuth from the setup's camera, so that a camera can be turned to suit
   */
  public record Again(
      SunSearch search,
      ZoneOffset offset,
      SunAgain direction,
      HeightAgain height,
      HalfDay half,
      Optional<Degrees> relativeAzimuth) {}

  /** The sun of a stored setup, and when it stands so again. */
  public Watched watch(Caller caller, StudioId studio, SetupId id, Wishes wishes) {
    Catalogued setup = cataloguing.get(caller, studio, id);
    SetupDocument document = setup.document();
    Optional<SunFigures> then = SunComputation.find(document);
    return new Watched(
        setup, then, then.map(sun -> again(sun, document, wishes)), SunComputation.needs(document));
  }

  /**
   * The sun over one of the studio's locations through a day.
   *
   * @param location where
   * @param day what the sun does there
   */
  public record WatchedDay(KeptLocation location, SunOfDay day) {}

  /**
   * The sun over a location through a day.
   *
   * @param date by the place's clocks; today where absent
   * @param offset of the place's clocks; by the location's own zone where absent, and universal
   *     time where it has none
   */
  public WatchedDay watch(
      Caller caller,
      StudioId studio,
      LocationId id,
      Optional<LocalDate> date,
      Optional<ZoneOffset> offset) {
    KeptLocation location = locations.get(caller, studio, id);
    LocalDate day =
        date.orElseGet(
            () ->
                LocalDate.ofInstant(
                    clock.instant(),
                    offset
                        .<ZoneId>map(clocks -> clocks)
                        .or(() -> location.document().timeZone())
                        .orElse(ZoneOffset.UTC)));
    ZoneOffset clocks = offset.or(() -> location.document().offsetOn(day)).orElse(ZoneOffset.UTC);
    return new WatchedDay(location, SunOfDay.of(location.document().onEarth(), day, clocks));
  }

  private Again again(SunFigures then, SetupDocument setup, Wishes wishes) {
    ZoneOffset offset =
        wishes
            .offset()
            .or(() -> setup.occasion().flatMap(Occasion::utcOffset))
            .orElse(ZoneOffset.UTC);
    LocalDate from = wishes.from().orElseGet(() -> LocalDate.ofInstant(clock.instant(), offset));
    Instant start = from.atStartOfDay().toInstant(offset);
    Observer observer = wishes.place().map(Observer::of).orElseGet(then::observer);
    SunSearch search = new SunSearch(observer, start, wishes.days());
    HalfDay half = then.observer().halfDay(then.at());
    return new Again(
        search,
        offset,
        search.again(SunTarget.of(then.position()), NEAR_ENOUGH),
        search.height(half, then.position().geometricElevation(), MOST_HEIGHTS),
        half,
        setup.camera().flatMap(Camera::bearing).map(then.position()::relativeAzimuth));
  }
}
