package lampwright.web.api;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.sun.ClearSky;
import lampwright.engine.sun.Crossing;
import lampwright.engine.sun.HalfDay;
import lampwright.engine.unit.Stops;
import lampwright.place.AmbientNear;
import lampwright.place.Location;
import lampwright.place.SunOfDay;
import lampwright.tasks.Catalogued;
import lampwright.tasks.KeptLocation;
import lampwright.tasks.SunWatching;

/** Locations, their sun and their light, as the API tells them. */
final class LocationJson {

  private LocationJson() {}

  /** One of a list. */
  record Item(
      String id,
      String name,
      Optional<String> kind,
      int revision,
      Instant changedAt,
      double latitudeDeg,
      double longitudeDeg,
      int hazards) {

    static Item of(KeptLocation location) {
      Location document = location.document();
      return new Item(
          location.id().text(),
          document.name(),
          document.kind(),
          location.revision(),
          location.changedAt(),
          document.latitude().value(),
          document.longitude().value(),
          document.hazards().size());
    }
  }

  /** Part of the list. */
  record All(List<Item> items, Optional<String> next) {}

  /** One as it is now. */
  record One(
      String id, int revision, Instant changedAt, String changedBy, Map<String, Object> document) {

    static One of(KeptLocation location) {
      return new One(
          location.id().text(),
          location.revision(),
          location.changedAt(),
          location.changedBy(),
          Location.FORM.writeObject(location.document()));
    }
  }

  /** A setup that was made there. */
  record SetupItem(String id, String title, int revision, Instant changedAt) {

    static SetupItem of(Catalogued setup) {
      return new SetupItem(
          setup.id().text(), setup.document().title(), setup.revision(), setup.changedAt());
    }
  }

  /** Part of the list of those. */
  record Setups(List<SetupItem> items, Optional<String> next) {}

  /** The sun through a day. */
  record DayJson(
      String date,
      String utcOffset,
      MomentJson noon,
      List<MomentJson> track,
      List<TurnJson> turns) {

    static DayJson of(SunWatching.WatchedDay watched) {
      SunOfDay day = watched.day();
      return new DayJson(
          day.date().toString(),
          written(day.offset()),
          MomentJson.of(day.noon(), day.offset()),
          day.track().stream().map(moment -> MomentJson.of(moment, day.offset())).toList(),
          day.turns().stream().map(turn -> TurnJson.of(turn, day.offset())).toList());
    }

    /** The JDK writes zero as one letter. */
    private static String written(ZoneOffset offset) {
      return offset.equals(ZoneOffset.UTC) ? "+00:00" : offset.getId();
    }
  }

  /** Where it stands. */
  record MomentJson(
      Instant at, String clock, SunJson.PositionJson position, Optional<SkyJson> clearSky) {

    static MomentJson of(SunOfDay.Moment moment, ZoneOffset offset) {
      return new MomentJson(
          moment.at(),
          onClock(moment.at(), offset),
          SunJson.PositionJson.of(moment.sun()),
          moment.clearSky().map(SkyJson::of));
    }
  }

  /**
   * What a clear sky gives on a level plane.
   *
   * @param known always estimated: it is no promise, and a reading wins
   */
  record SkyJson(double lux, double ev100, String known) {

    static SkyJson of(ClearSky sky) {
      return new SkyJson(
          sky.horizontal().value(), sky.ev100(MeterConstant.FLAT).value(), "estimated");
    }
  }

  /**
   * Where one phase goes over into the next.
   *
   * @param outcome crosses, stays_above or stays_below
   * @param at the crossing; where there is none, where the sun comes nearest to one
   */
  record TurnJson(
      String phase,
      String half,
      String outcome,
      Instant at,
      String clock,
      SunJson.PositionJson position) {

    static TurnJson of(SunOfDay.Turn turn, ZoneOffset offset) {
      Instant at = turn.crossing().encounter().at();
      return new TurnJson(
          turn.phase().tradeName(),
          word(turn.half()),
          switch (turn.crossing()) {
            case Crossing.At crosses -> "crosses";
            case Crossing.StaysAbove above -> "stays_above";
            case Crossing.StaysBelow below -> "stays_below";
          },
          at,
          onClock(at, offset),
          SunJson.PositionJson.of(turn.crossing().encounter().sun()));
    }
  }

  /** The light about an hour. */
  record AmbientJson(
      String at,
      SunJson.PositionJson position,
      String half,
      Optional<SkyJson> clearSky,
      List<NearJson> bySun,
      List<NearJson> byClock) {

    static AmbientJson of(AmbientNear near) {
      return new AmbientJson(
          written(near.at()),
          SunJson.PositionJson.of(near.sun()),
          word(near.half()),
          near.clearSky().map(SkyJson::of),
          near.bySun().stream().map(NearJson::of).toList(),
          near.byClock().stream().map(NearJson::of).toList());
    }
  }

  /** One reading, and how far it is. */
  record NearJson(
      String pointer,
      String at,
      double ev100,
      SunJson.PositionJson position,
      double sunHigherDeg,
      String half,
      long clockLaterMin,
      long daysLater,
      Optional<Double> fromClearSkyStops) {

    static NearJson of(AmbientNear.Near near) {
      return new NearJson(
          "/ambient_readings/" + near.index(),
          written(near.reading().at()),
          near.reading().level().value(),
          SunJson.PositionJson.of(near.sun()),
          near.higher().value(),
          word(near.half()),
          near.clockMinutes(),
          near.days(),
          near.fromClearSky().map(Stops::value));
    }
  }

  private static String word(HalfDay half) {
    return half.name().toLowerCase(Locale.ROOT);
  }

  private static String onClock(Instant at, ZoneOffset offset) {
    return written(at.atOffset(offset));
  }

  private static String written(OffsetDateTime at) {
    return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(at);
  }
}
