package lampwright.engine.sun;

import java.time.Instant;

/**
 * A moment as astronomers count it: days since noon of 1 January 4713 BC, in universal time (source
 * reda-andreas). A double holds it to about 40 microseconds.
 *
 * @param days may have a fraction
 */
public record JulianDay(double days) {

  private static final double SECONDS_PER_DAY = 86_400;

  /** The Julian day of 1970-01-01T00:00Z, from which the JDK counts. */
  private static final double OF_THE_EPOCH = 2_440_587.5;

  private static final double OF_J2000 = 2_451_545;

  /** Returns the Julian day of an instant. */
  public static JulianDay of(Instant at) {
    double seconds = at.getEpochSecond() + at.getNano() / 1e9;
    return new JulianDay(OF_THE_EPOCH + seconds / SECONDS_PER_DAY);
  }

  /** Returns the days since noon of 1 January 2000, universal time. */
  public double daysSince2000() {
    return days - OF_J2000;
  }
}
