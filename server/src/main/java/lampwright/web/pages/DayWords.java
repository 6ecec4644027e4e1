package lampwright.web.pages;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import lampwright.wording.Wording;

/** Days and times as a person reads them: the month in letters, the clock with 24 hours. */
record DayWords(Wording words) {

  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  /** "4 May 2031", "4. Mai 2031". */
  String day(LocalDate day) {
    return words.say(
        "pages.day",
        day.getDayOfMonth(),
        words.say("pages.month." + day.getMonthValue()),
        day.getYear());
  }

  /** The day on which something was, by universal time. */
  String day(Instant when) {
    return day(LocalDate.ofInstant(when, ZoneOffset.UTC));
  }

  /** "18:05, 4 May 2031". */
  String timeAndDay(LocalTime time, LocalDate day) {
    return CLOCK.format(time) + ", " + day(day);
  }

  /** "4 May 2031, 18:05". */
  String dayAndTime(LocalDate day, LocalTime time) {
    return day(day) + ", " + CLOCK.format(time);
  }
}
