package lampwright.web.api;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lampwright.engine.Working;
import lampwright.engine.light.Pattern;
import lampwright.engine.sun.ClearSky;
import lampwright.engine.sun.Encounter;
import lampwright.engine.sun.HeightAgain;
import lampwright.engine.sun.SunAgain;
import lampwright.engine.sun.SunPosition;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;
import lampwright.setup.figures.SunFigures;
import lampwright.tasks.SunWatching;

/** The sun of a setup, as the API tells it. Numbers are unrounded; keys carry the unit. */
record SunJson(Optional<ThenJson> sun, Optional<AgainJson> again, List<String> needs) {

  static SunJson of(SunWatching.Watched watched) {
    return new SunJson(
        watched.then().map(ThenJson::of), watched.again().map(AgainJson::of), watched.needs());
  }

  /** Where it stands. */
  record PositionJson(
      double azimuthDeg, double elevationDeg, double geometricElevationDeg, String phase) {

    static PositionJson of(SunPosition sun) {
      return new PositionJson(
          sun.azimuth().value(),
          sun.elevation().value(),
          sun.geometricElevation().value(),
          sun.phase().tradeName());
    }
  }

  /** The setup's own sun. */
  record ThenJson(
      Instant at,
      PositionJson position,
      Optional<Double> relativeAzimuthDeg,
      Optional<Double> angleToAxisDeg,
      Optional<FromSubjectJson> fromSubject,
      Optional<Double> shadowM,
      Optional<ClearSkyJson> clearSky,
      WorkingJson working) {

    static ThenJson of(SunFigures sun) {
      return new ThenJson(
          sun.at(),
          PositionJson.of(sun.position()),
          sun.ofCamera().map(camera -> camera.relativeAzimuth().value()),
          sun.ofCamera().map(camera -> camera.angleToAxis().value()),
          sun.ofSubject().map(FromSubjectJson::of),
          sun.shadow().map(Metres::value),
          sun.clearSky().flatMap(sky -> sun.clearSkyWorking().map(w -> ClearSkyJson.of(sky, w))),
          WorkingJson.of(sun.elevationWorking()));
    }
  }

  /** The sun as a light. */
  record FromSubjectJson(double azimuthDeg, double elevationDeg, Optional<String> pattern) {

    static FromSubjectJson of(SunFigures.OfSubject subject) {
      return new FromSubjectJson(
          subject.direction().azimuth().value(),
          subject.direction().elevation().value(),
          subject.pattern().map(Pattern::tradeName));
    }
  }

  /**
   * What a clear sky gives on a level plane.
   *
   * @param known always estimated: a reading wins
   */
  record ClearSkyJson(double lux, double ev100, String known, WorkingJson working) {

    static ClearSkyJson of(ClearSky sky, Working working) {
      return new ClearSkyJson(
          sky.horizontal().value(), working.value(), "estimated", WorkingJson.of(working));
    }
  }

  /** When it stands so again. */
  record AgainJson(
      double latitudeDeg,
      double longitudeDeg,
      String from,
      int days,
      double nearEnoughDeg,
      String half,
      DirectionJson direction,
      HeightJson height) {

    static AgainJson of(SunWatching.Again again) {
      Clocks clocks = new Clocks(again.offset(), again.relativeAzimuth());
      return new AgainJson(
          again.search().observer().place().latitude().value(),
          again.search().observer().place().longitude().value(),
          clocks.written(again.search().from()),
          again.search().days(),
          SunWatching.NEAR_ENOUGH.value(),
          again.half().name().toLowerCase(Locale.ROOT),
          DirectionJson.of(again.direction(), clocks),
          HeightJson.of(again.height(), clocks));
    }
  }

  /**
   * The same direction.
   *
   * @param outcome returns or stays_away
   * @param nearest the nearest it comes, where it stays away
   */
  record DirectionJson(String outcome, List<SpellJson> spells, Optional<TimeJson> nearest) {

    static DirectionJson of(SunAgain again, Clocks clocks) {
      return switch (again) {
        case SunAgain.Returns(List<SunAgain.Spell> spells) ->
            new DirectionJson(
                "returns",
                spells.stream().map(spell -> SpellJson.of(spell, clocks)).toList(),
                Optional.empty());
        case SunAgain.StaysAway(Encounter nearest) ->
            new DirectionJson("stays_away", List.of(), Optional.of(TimeJson.of(nearest, clocks)));
      };
    }
  }

  /** Days in a row on which it comes near enough. */
  record SpellJson(TimeJson first, TimeJson nearest, TimeJson last) {

    static SpellJson of(SunAgain.Spell spell, Clocks clocks) {
      return new SpellJson(
          TimeJson.of(spell.first(), clocks),
          TimeJson.of(spell.nearest(), clocks),
          TimeJson.of(spell.last(), clocks));
    }
  }

  /**
   * The same height in the same half of the day, in whatever direction.
   *
   * @param outcome reached or out_of_reach
   */
  record HeightJson(String outcome, List<TimeJson> times, Optional<TimeJson> nearest) {

    static HeightJson of(HeightAgain again, Clocks clocks) {
      return switch (again) {
        case HeightAgain.Reached(List<Encounter> times) ->
            new HeightJson(
                "reached",
                times.stream().map(time -> TimeJson.of(time, clocks)).toList(),
                Optional.empty());
        case HeightAgain.OutOfReach(Encounter nearest) ->
            new HeightJson("out_of_reach", List.of(), Optional.of(TimeJson.of(nearest, clocks)));
      };
    }
  }

  /**
   * One moment.
   *
   * @param clock the same as {@code at}, by the place's clocks
   * @param cameraBearingDeg where the camera must point to have the sun as the setup had it
   */
  record TimeJson(
      Instant at,
      String clock,
      PositionJson position,
      double missDeg,
      Optional<Double> cameraBearingDeg) {

    static TimeJson of(Encounter encounter, Clocks clocks) {
      return new TimeJson(
          encounter.at(),
          clocks.written(encounter.at()),
          PositionJson.of(encounter.sun()),
          encounter.miss().value(),
          clocks.bearing(encounter.sun()));
    }
  }

  /** How the place's clocks go, and how the setup's camera had the sun. */
  record Clocks(ZoneOffset offset, Optional<Degrees> relativeAzimuth) {

    String written(Instant at) {
      return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(at.atOffset(offset));
    }

    Optional<Double> bearing(SunPosition sun) {
      return relativeAzimuth.map(
          relative -> {
            double bearing = sun.azimuth().minus(relative).value();
            return bearing - 360 * Math.floor(bearing / 360);
          });
    }
  }
}
