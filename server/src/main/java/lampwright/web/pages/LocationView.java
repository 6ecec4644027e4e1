package lampwright.web.pages;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import lampwright.drawing.AmbientByHour;
import lampwright.drawing.SunTrack;
import lampwright.engine.Known;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.sun.Crossing;
import lampwright.engine.sun.HalfDay;
import lampwright.engine.sun.SunPhase;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;
import lampwright.language.Notation;
import lampwright.place.AmbientReading;
import lampwright.place.Location;
import lampwright.place.LocationPermission;
import lampwright.place.Power;
import lampwright.place.SunOfDay;
import lampwright.wording.Figure;
import lampwright.wording.Wording;

/** Puts a location and its sun into the words of its page. */
final class LocationView {

  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  /** Of the half hours that the engine tells; more would be a wall of figures on a phone. */
  private static final int EACH_TWO_HOURS = 4;

  private final Wording words;

  LocationView(Wording words) {
    this.words = words;
  }

  String facts(Location location) {
    List<String> facts = new ArrayList<>();
    location.kind().ifPresent(facts::add);
    location
        .indoors()
        .ifPresent(
            roof ->
                facts.add(
                    roof
                        ? words.say("pages.location.indoors")
                        : words.say("pages.location.outdoors")));
    facts.add(coordinate(location.latitude()) + ", " + coordinate(location.longitude()));
    location
        .altitude()
        .ifPresent(height -> facts.add(words.say("pages.location.aboveSea", altitude(height))));
    return String.join(" · ", facts);
  }

  /** In whole metres or feet: "12 m", "39 ft". */
  private String altitude(Metres height) {
    Notation notation = words.notation();
    return words.fixed(notation.inUnit(height.value()), 0) + " " + notation.lengthSign();
  }

  private String coordinate(Degrees angle) {
    return words.fixed(angle.value(), 4) + "°";
  }

  String power(Power power) {
    List<String> said = new ArrayList<>();
    said.add(
        power.mains() ? words.say("pages.location.isMains") : words.say("pages.location.noMains"));
    power.outlets().ifPresent(count -> said.add(words.count("pages.location.outletCount", count)));
    power
        .current()
        .ifPresent(
            current ->
                said.add(words.say("pages.location.circuit", words.fixed(current.value(), 0))));
    String all = String.join(", ", said) + ".";
    return power.note().map(note -> all + " " + note).orElse(all);
  }

  LocationPage.Permission permission(LocationPermission permission, LocalDate today) {
    boolean isOver = permission.isOver(today);
    return new LocationPage.Permission(
        permission.text(),
        permission
            .validUntil()
            .map(
                last ->
                    words.say(
                        isOver ? "pages.location.overSince" : "pages.location.until",
                        new DayWords(words).day(last)))
            .orElse(""),
        isOver);
  }

  LocationPage.Reading reading(AmbientReading reading) {
    String how =
        reading.how() == AmbientReading.Meter.SPOT
            ? words.say("pages.location.spot")
            : words.say("pages.location.incident");
    List<String> overhead = new ArrayList<>();
    reading.sky().ifPresent(sky -> overhead.add(words.say("wording.sky." + Wording.key(sky))));
    reading.weather().ifPresent(overhead::add);
    return new LocationPage.Reading(
        new DayWords(words).dayAndTime(reading.at().toLocalDate(), reading.at().toLocalTime()),
        words.level(reading.level()),
        reading.towards().map(towards -> how + ", " + towards).orElse(how),
        String.join(", ", overhead),
        reading.comment().orElse(""));
  }

  /** What was metered over the hours; absent where nothing was. */
  Optional<DrawingView> readingsChart(List<AmbientReading> readings, SunOfDay day) {
    return readings.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new DrawingView(
                AmbientByHour.of(readings, day, words.notation()),
                "",
                AmbientByHour.table(readings, words.notation())));
  }

  LocationPage.Sun sun(SunOfDay day, String action, Optional<String> dateError) {
    List<SunOfDay.Moment> track = day.track();
    return new LocationPage.Sun(
        action,
        day.date().toString(),
        words.say(
            "pages.common.clocks",
            day.offset().equals(ZoneOffset.UTC) ? "+00:00" : day.offset().getId()),
        dateError,
        List.of(
            Figure.of(
                CLOCK.format(day.noon().at().atOffset(day.offset())),
                "",
                words.say("pages.location.highest")),
            Figure.of(
                    words.degrees(day.noon().sun().elevation()),
                    "",
                    words.say("pages.location.itsHeight"))
                .with(Known.COMPUTED)),
        turns(day),
        Optional.of(
            new DrawingView(
                SunTrack.of(day, words.notation()), "", SunTrack.table(day, words.notation()))),
        IntStream.iterate(0, i -> i < track.size(), i -> i + EACH_TWO_HOURS)
            .mapToObj(track::get)
            .map(moment -> moment(moment, day.offset()))
            .toList());
  }

  private List<LocationPage.Turn> turns(SunOfDay day) {
    List<LocationPage.Turn> turns = new ArrayList<>();
    for (SunOfDay.Turn turn : day.turns()) {
      if (turn.half() == HalfDay.SETTING) {
        turns.add(
            new LocationPage.Turn(
                name(turn.phase()),
                time(find(day, turn.phase(), HalfDay.RISING), day.offset()),
                time(turn.crossing(), day.offset())));
      }
    }
    return turns;
  }

  private static Crossing find(SunOfDay day, SunPhase phase, HalfDay half) {
    return day.turns().stream()
        .filter(turn -> turn.phase() == phase && turn.half() == half)
        .findFirst()
        .orElseThrow()
        .crossing();
  }

  /** The sun at the lower bound of a phase, with the angle, since the names vary. */
  private String name(SunPhase phase) {
    String height = words.fixed(phase.lowest().value(), 0) + "°".replace('-', '−');
    return switch (phase) {
      case DAY -> words.say("pages.location.golden", height);
      case GOLDEN_SUN_UP -> words.say("pages.location.horizon");
      case GOLDEN_SUN_DOWN -> words.say("pages.location.blue", height);
      case BLUE_HOUR -> words.say("pages.location.civil", height);
      case NAUTICAL_TWILIGHT -> words.say("pages.location.nautical", height);
      case ASTRONOMICAL_TWILIGHT -> words.say("pages.location.astronomical", height);
      case NIGHT -> words.say("pages.location.night");
    };
  }

  private String time(Crossing crossing, ZoneOffset offset) {
    return switch (crossing) {
      case Crossing.At at -> CLOCK.format(at.encounter().at().atOffset(offset));
      case Crossing.StaysAbove above -> words.say("pages.location.staysAbove");
      case Crossing.StaysBelow below -> words.say("pages.location.staysBelow");
    };
  }

  private LocationPage.Moment moment(SunOfDay.Moment moment, ZoneOffset offset) {
    return new LocationPage.Moment(
        CLOCK.format(moment.at().atOffset(offset)),
        words.degrees(moment.sun().elevation()),
        words.degrees(moment.sun().azimuth()),
        moment.clearSky().map(sky -> words.level(sky.ev100(MeterConstant.FLAT))).orElse(""));
  }
}
