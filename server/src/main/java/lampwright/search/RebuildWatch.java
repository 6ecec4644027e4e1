package lampwright.search;

import java.time.Duration;
import java.util.Optional;

/**
 * The rebuilds of an index as people see them: where the follower's thread, which makes them, meets
 * those who order, watch and stop one.
 */
final class RebuildWatch {

  private boolean isOn;
  private boolean isBegun;
  private boolean mayStop;
  private boolean isStopAsked;
  private long done;
  private long total;
  private long orderedAt;
  private Optional<Ended> last = Optional.empty();

  private record Ended(IndexRebuild.Ending how, long setups, Duration took, long at) {}

  /** Takes an order; false where one is being made already. */
  synchronized boolean order() {
    if (isOn) {
      return false;
    }
    start(true);
    return true;
  }

  private void start(boolean stoppable) {
    isOn = true;
    isBegun = false;
    mayStop = stoppable;
    isStopAsked = false;
    done = 0;
    total = 0;
    orderedAt = System.nanoTime();
  }

  /**
   * The follower begins, ordered or of need.
   *
   * @param stoppable whether searches have a whole index to go on with
   */
  synchronized void begin(long setups, boolean stoppable) {
    if (!isOn || isBegun) {
      start(stoppable);
    }
    isBegun = true;
    mayStop = stoppable;
    total = setups;
  }

  synchronized void takenIn(long setups) {
    done = setups;
    total = Math.max(total, setups);
  }

  synchronized void end(IndexRebuild.Ending how) {
    if (isOn) {
      long now = System.nanoTime();
      last = Optional.of(new Ended(how, done, Duration.ofNanos(now - orderedAt), now));
      isOn = false;
    }
  }

  /** Asks the follower to end it; false where none is being made that may be stopped. */
  synchronized boolean askToStop() {
    isStopAsked = isOn && mayStop;
    return isStopAsked;
  }

  synchronized boolean isStopAsked() {
    return isOn && isStopAsked;
  }

  synchronized Optional<IndexRebuild> now() {
    return isOn
        ? Optional.of(
            new IndexRebuild(done, total, Duration.ofNanos(System.nanoTime() - orderedAt), mayStop))
        : Optional.empty();
  }

  synchronized Optional<IndexRebuild.Past> last() {
    return last.map(
        of ->
            new IndexRebuild.Past(
                of.how(), of.setups(), of.took(), Duration.ofNanos(System.nanoTime() - of.at())));
  }
}
