package lampwright.engine.exposure;

import lampwright.engine.unit.BaseTwo;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;

/**
 * How long the shutter is open.
 *
 * @param seconds the exact time, above 0; behind the mark 1/125 it is 1/128. Electronic shutters
 *     time 30 s as 32 s; a time counted by hand from the printed number is 0.09 stop short
 */
public record ShutterTime(double seconds) implements Comparable<ShutterTime> {

  /** Checks the bound. */
  public ShutterTime {
    Bounds.requirePositive("Time", seconds, "s");
  }

  /** Returns exactly this time. */
  public static ShutterTime of(double seconds) {
    return new ShutterTime(seconds);
  }

  /**
   * Reads "1/125", "0.4" or "2", with or without a closing "s", and returns the exact value behind
   * the mark. A number that is on no scale is taken as it stands.
   *
   * @throws IllegalArgumentException where the text is no number or fraction above 0
   */
  public static ShutterTime parse(String text) {
    String trimmed = text.trim();
    boolean unit = trimmed.endsWith("s");
    return ofMark(Fractions.parse(unit ? trimmed.substring(0, trimmed.length() - 1) : trimmed));
  }

  /** Returns the exact value behind a printed number of seconds, or the number where it is none. */
  public static ShutterTime ofMark(double printed) {
    return new ShutterTime(
        MarkedScale.SHUTTER_THIRD
            .findPrinted(printed)
            .map(MarkedScale.Mark::exact)
            .orElse(printed));
  }

  /** Returns the time as a span. */
  public Seconds toSeconds() {
    return new Seconds(seconds);
  }

  /** Returns the time value, {@code Tv = -log2 t}. */
  public double toTimeValue() {
    return -BaseTwo.log(seconds);
  }

  /** Returns by how many stops more ambient light this lets in than the other time. */
  public Stops stopsOver(ShutterTime other) {
    return Stops.ofRatio(seconds / other.seconds);
  }

  /** Returns the time that lets in so many stops more; minus is shorter. */
  public ShutterTime plus(Stops stops) {
    return new ShutterTime(seconds * stops.toFactor());
  }

  /** Returns the exact value of the nearest mark, in stops; of two the shorter. */
  public ShutterTime nearestMark(MarkedScale scale) {
    return new ShutterTime(scale.nearest(seconds).mark().exact());
  }

  /** Returns the nearest mark as printed, such as "1/125 s". */
  public String markText(MarkedScale scale) {
    return scale.nearest(seconds).mark().text() + " s";
  }

  @Override
  public int compareTo(ShutterTime other) {
    return Double.compare(seconds, other.seconds);
  }

  /** The mark where this is one, else a fraction or seconds: "1/125 s", "1/187 s", "45 s". */
  @Override
  public String toString() {
    return MarkedScale.SHUTTER_THIRD
            .findExact(seconds)
            .map(MarkedScale.Mark::text)
            .orElseGet(
                () ->
                    seconds < 0.3
                        ? "1/" + Bounds.rounded(1 / seconds, 0)
                        : Bounds.rounded(seconds, 2))
        + " s";
  }
}
