package lampwright.tasks;

import java.time.Duration;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

/**
 * Turns at what is scarce, such as cores or memory: so many have theirs at once, others wait for a
 * while, in their order.
 */
public final class Turns {

  private final Semaphore free;
  private final Duration longestWait;
  private final Duration retryAfter;

  /**
   * @param longestWait after which who waits is refused; zero refuses at once
   * @param retryAfter when who was refused may try again
   */
  public Turns(int atOnce, Duration longestWait, Duration retryAfter) {
    this.free = new Semaphore(atOnce, true);
    this.longestWait = longestWait;
    this.retryAfter = retryAfter;
  }

  /** One turn, until it is closed; to be closed once. */
  public interface Turn extends AutoCloseable {

    @Override
    void close();
  }

  /**
   * Takes a turn, perhaps after a while.
   *
   * @throws Refused Unavailable where none came in time
   */
  public Turn take() {
    try {
      if (!free.tryAcquire(longestWait.toMillis(), TimeUnit.MILLISECONDS)) {
        throw Refused.unavailable(retryAfter);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw Refused.unavailable(retryAfter);
    }
    return free::release;
  }

  /** Takes a turn, however long that takes: for work that goes on in the background. */
  Turn takeInTheEnd() {
    free.acquireUninterruptibly();
    return free::release;
  }
}
