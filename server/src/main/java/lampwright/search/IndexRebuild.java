package lampwright.search;

import java.time.Duration;
import java.util.Optional;

/**
 * How far the making of a new index is.
 *
 * @param done setups of all studios taken in
 * @param total about how many there are; 0 until they are counted
 * @param since it was ordered
 * @param mayStop whether searches have a whole index to go on with
 */
public record IndexRebuild(long done, long total, Duration since, boolean mayStop) {

  private static final double MILLIS = 1_000;

  /** How many setups a second so far. */
  public double perSecond() {
    return done / Math.max(0.001, since.toMillis() / MILLIS);
  }

  /** How long the rest takes at that rate; empty before the first. */
  public Optional<Duration> left() {
    return done == 0
        ? Optional.empty()
        : Optional.of(Duration.ofMillis(Math.round((total - done) / perSecond() * MILLIS)));
  }

  /** How one ended. */
  public enum Ending {
    FINISHED,
    STOPPED,
    FAILED
  }

  /**
   * One that is over.
   *
   * @param setups that it took in
   * @param took from its order to its end
   * @param ago since its end
   */
  public record Past(Ending ending, long setups, Duration took, Duration ago) {}
}
