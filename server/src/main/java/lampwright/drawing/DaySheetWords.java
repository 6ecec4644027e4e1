package lampwright.drawing;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import lampwright.language.Notation;
import lampwright.setup.SetupDocument;
import lampwright.setup.packing.DayPlan;
import lampwright.setup.packing.Stage;
import lampwright.setup.packing.Stint;
import lampwright.setup.packing.SunEvent;
import lampwright.wording.Wording;

/** What the sheet of a day says: times, stages, errands. */
record DaySheetWords(
    DayPlan plan, List<SetupDocument> setups, ZoneOffset offset, Notation notation) {

  DaySheetWords {
    setups = List.copyOf(setups);
  }

  String title() {
    return notation.say("packing.sheet.title");
  }

  String description(int minutes) {
    return notation.say(
        "packing.sheet.words", plan.hands(), time(0), time(minutes), plan.stages().size());
  }

  String hand(int hand) {
    return notation.say("packing.hand", hand);
  }

  String heading(Stage stage) {
    return notation.say(
        "packing.stage." + Wording.key(stage.kind()), setups.get(stage.setup()).title());
  }

  /** By the clocks of the place; "+0:45" from the start where no light gives the day its clock. */
  String time(int minute) {
    return plan.at(minute)
        .map(at -> clock(at, offset))
        .orElseGet(() -> String.format(Locale.ROOT, "+%d:%02d", minute / 60, minute % 60));
  }

  /** "18:05": of what is planned the minute that has begun, so that nobody comes late by it. */
  static String clock(Instant at, ZoneOffset offset) {
    LocalTime time = at.atOffset(offset).toLocalTime();
    return String.format(Locale.ROOT, "%02d:%02d", time.getHour(), time.getMinute());
  }

  /** "golden hour ends 19:12", by the nearest minute, as the sun's track has it. */
  String sun(SunEvent.Timed event) {
    LocalDate day = event.at().atOffset(offset).toLocalDate();
    return notation.say(
        "packing.sun." + Wording.key(event.event()), new HourOfDay(day, offset).clock(event.at()));
  }

  /** "3 aim": the light's number and the work, as much as a box holds. */
  String inShort(Stage stage, Stint stint) {
    String work = notation.say("packing.work." + Wording.key(stint.errand().work()));
    return stint
        .errand()
        .light()
        .map(id -> setups.get(stage.setup()).numbersInBuildOrder().getOrDefault(id, 0) + " " + work)
        .orElse(work);
  }

  /** The same with what the build order says, and that somebody is alone with it. */
  String whole(Stage stage, Stint stint) {
    String said = stint.errand().words().map(words -> ": " + words).orElse("");
    String alone = stint.errand().isShortHanded() ? " (" + notation.say("packing.alone") + ")" : "";
    return inShort(stage, stint) + said + alone;
  }
}
