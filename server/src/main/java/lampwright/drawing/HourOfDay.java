package lampwright.drawing;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;

/** Instants as hours of one day's clocks, 0 to 24, and as the clocks write them. */
record HourOfDay(LocalDate date, ZoneOffset offset) {

  /** Below 0 and above 24 on the days before and after. */
  double hours(Instant at) {
    long midnight = date.atStartOfDay().toInstant(offset).getEpochSecond();
    return (at.getEpochSecond() - midnight) / 3600.0;
  }

  /** "06:12". */
  String clock(Instant at) {
    long minutes = Math.floorMod(Math.round(hours(at) * 60), 1_440L);
    return padded(minutes / 60) + ":" + padded(minutes % 60);
  }

  private static String padded(long number) {
    return (number < 10 ? "0" : "") + number;
  }
}
