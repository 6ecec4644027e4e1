package lampwright.web.http;

import java.time.Duration;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.LongAdder;

/** The places of one lane: so many work, so many wait in turn, and who comes then is refused. */
final class Places {

  private final int atOnce;
  private final int mostWaiting;
  private final long longestWaitNanos;
  private final Semaphore free;
  private final AtomicInteger waiting = new AtomicInteger();
  private final LongAdder refused = new LongAdder();
  private final AtomicLong refusedAtNanos = new AtomicLong(Long.MIN_VALUE);

  Places(Capacity.Bound bound, Duration longestWait) {
    atOnce = bound.atOnce();
    mostWaiting = bound.waiting();
    longestWaitNanos = longestWait.toNanos();
    free = new Semaphore(bound.atOnce(), true);
  }

  /** Takes a place, perhaps after a while; false where there is none. */
  boolean enter() {
    // Nobody overtakes who waits.
    if (waiting.get() == 0 && free.tryAcquire()) {
      return true;
    }
    boolean isIn = waiting.incrementAndGet() <= mostWaiting && comesToTurn();
    waiting.decrementAndGet();
    if (!isIn) {
      refused.increment();
      refusedAtNanos.set(System.nanoTime());
    }
    return isIn;
  }

  /** Takes a place again after a pause, however many wait: who began is not sent away for those. */
  boolean enterAgain() {
    boolean isIn = comesToTurn();
    if (!isIn) {
      refused.increment();
      refusedAtNanos.set(System.nanoTime());
    }
    return isIn;
  }

  private boolean comesToTurn() {
    try {
      return free.tryAcquire(longestWaitNanos, TimeUnit.NANOSECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  void leave() {
    free.release();
  }

  int working() {
    return atOnce - free.availablePermits();
  }

  int atOnce() {
    return atOnce;
  }

  int waiting() {
    return waiting.get();
  }

  long refused() {
    return refused.sum();
  }

  /** Whether somebody was refused within so long. */
  boolean hasRefusedWithin(Duration time) {
    long at = refusedAtNanos.get();
    return at != Long.MIN_VALUE && System.nanoTime() - at < time.toNanos();
  }
}
