package lampwright.web.pages;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.sun.Crossing;
import lampwright.engine.sun.HalfDay;
import lampwright.engine.sun.SunPhase;
import lampwright.engine.unit.Degrees;
import lampwright.place.AmbientReading;
import lampwright.place.Location;
import lampwright.place.LocationPermission;
import lampwright.place.Power;
import lampwright.place.SunOfDay;

/** Puts a location and its sun into the words of its page. */
final class LocationView {

  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);
  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("d MMMM uuuu, HH:mm", Locale.ENGLISH);
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  /** Of the half hours that the engine tells; more would be a wall of figures on a phone. */
  private static final int EACH_TWO_HOURS = 4;

  private LocationView() {}

  static String facts(Location location) {
    List<String> facts = new ArrayList<>();
    location.kind().ifPresent(facts::add);
    location.indoors().ifPresent(roof -> facts.add(roof ? "indoors" : "outdoors"));
    facts.add(coordinate(location.latitude()) + ", " + coordinate(location.longitude()));
    location
        .altitude()
        .ifPresent(
            height ->
                facts.add(String.format(Locale.ROOT, "%.0f m above the sea", height.value())));
    return String.join(" · ", facts);
  }

  private static String coordinate(Degrees angle) {
    return String.format(Locale.ROOT, "%.4f°", angle.value()).replace('-', '−');
  }

  static String power(Power power) {
    List<String> words = new ArrayList<>();
    words.add(power.mains() ? "Mains" : "No mains");
    power.outlets().ifPresent(count -> words.add(count == 1 ? "1 outlet" : count + " outlets"));
    power
        .current()
        .ifPresent(
            current -> words.add(String.format(Locale.ROOT, "%.0f A a circuit", current.value())));
    String all = String.join(", ", words) + ".";
    return power.note().map(note -> all + " " + note).orElse(all);
  }

  static LocationPage.Permission permission(LocationPermission permission, LocalDate today) {
    boolean isOver = permission.isOver(today);
    return new LocationPage.Permission(
        permission.text(),
        permission
            .validUntil()
            .map(last -> (isOver ? "over since " : "until ") + DAY.format(last))
            .orElse(""),
        isOver);
  }

  static LocationPage.Reading reading(AmbientReading reading) {
    String how = reading.how() == AmbientReading.Meter.SPOT ? "spot" : "incident";
    List<String> overhead = new ArrayList<>();
    reading.sky().ifPresent(sky -> overhead.add(Wording.uncapital(Wording.sentence(sky.name()))));
    reading.weather().ifPresent(overhead::add);
    return new LocationPage.Reading(
        WHEN.format(reading.at()),
        Wording.level(reading.level()),
        reading.towards().map(towards -> how + ", " + towards).orElse(how),
        String.join(", ", overhead),
        reading.comment().orElse(""));
  }

  static LocationPage.Sun sun(SunOfDay day, String action, Optional<String> dateError) {
    List<SunOfDay.Moment> track = day.track();
    return new LocationPage.Sun(
        action,
        day.date().toString(),
        "by clocks "
            + (day.offset().equals(ZoneOffset.UTC) ? "+00:00" : day.offset().getId())
            + " of universal time",
        dateError,
        List.of(
            Figure.of(CLOCK.format(day.noon().at().atOffset(day.offset())), "", "highest sun"),
            Figure.of(Wording.degrees(day.noon().sun().elevation()), "", "its height")
                .with(Known.COMPUTED)),
        turns(day),
        IntStream.iterate(0, i -> i < track.size(), i -> i + EACH_TWO_HOURS)
            .mapToObj(track::get)
            .map(moment -> moment(moment, day.offset()))
            .toList());
  }

  private static List<LocationPage.Turn> turns(SunOfDay day) {
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
  private static String name(SunPhase phase) {
    String height = String.format(Locale.ROOT, "%.0f°", phase.lowest().value()).replace('-', '−');
    return switch (phase) {
      case DAY -> "Golden hour, sun at " + height;
      case GOLDEN_SUN_UP -> "Sun on the horizon";
      case GOLDEN_SUN_DOWN -> "Blue hour, sun at " + height;
      case BLUE_HOUR -> "End of civil twilight, " + height;
      case NAUTICAL_TWILIGHT -> "End of nautical twilight, " + height;
      case ASTRONOMICAL_TWILIGHT -> "End of astronomical twilight, " + height;
      case NIGHT -> "Night";
    };
  }

  private static String time(Crossing crossing, ZoneOffset offset) {
    return switch (crossing) {
      case Crossing.At at -> CLOCK.format(at.encounter().at().atOffset(offset));
      case Crossing.StaysAbove above -> "stays above";
      case Crossing.StaysBelow below -> "stays below";
    };
  }

  private static LocationPage.Moment moment(SunOfDay.Moment moment, ZoneOffset offset) {
    return new LocationPage.Moment(
        CLOCK.format(moment.at().atOffset(offset)),
        Wording.degrees(moment.sun().elevation()),
        Wording.degrees(moment.sun().azimuth()),
        moment.clearSky().map(sky -> Wording.level(sky.ev100(MeterConstant.FLAT))).orElse(""));
  }
}
