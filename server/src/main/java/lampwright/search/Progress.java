package lampwright.search;

import java.time.Duration;
import java.util.concurrent.locks.Condition;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.BooleanSupplier;

/** How far the follower has come: where its thread and those who wait for it meet. */
final class Progress {

  private final ReentrantLock lock = new ReentrantLock();
  private final Condition wanted = lock.newCondition();
  private final Condition shown = lock.newCondition();

  private boolean woken;
  private boolean closing;
  private Bookmark visible;
  private FollowerState state = new FollowerState.Behind();
  private long caughtUpAt = System.nanoTime();

  Progress(Bookmark visible) {
    this.visible = visible;
  }

  void wake() {
    lock.lock();
    try {
      woken = true;
      wanted.signal();
    } finally {
      lock.unlock();
    }
  }

  FollowerState state() {
    lock.lock();
    try {
      return state;
    } finally {
      lock.unlock();
    }
  }

  Bookmark visible() {
    lock.lock();
    try {
      return visible;
    } finally {
      lock.unlock();
    }
  }

  void show(FollowerState now) {
    lock.lock();
    try {
      state = now;
    } finally {
      lock.unlock();
    }
  }

  Duration lag() {
    lock.lock();
    try {
      return state instanceof FollowerState.Ready
          ? Duration.ZERO
          : Duration.ofNanos(System.nanoTime() - caughtUpAt);
    } finally {
      lock.unlock();
    }
  }

  /** To be asked within {@link #await} only. */
  boolean hasShown(Bookmark bookmark) {
    return visible.compareTo(bookmark) >= 0;
  }

  /** Wakes the follower, and asks again after each batch that it has shown. */
  boolean await(BooleanSupplier reached, Duration atMost) throws InterruptedException {
    long left = atMost.toNanos();
    lock.lock();
    try {
      woken = true;
      wanted.signal();
      while (!reached.getAsBoolean()) {
        if (left <= 0 || closing) {
          return false;
        }
        left = shown.awaitNanos(left);
      }
      return true;
    } finally {
      lock.unlock();
    }
  }

  /**
   * A batch is shown.
   *
   * @param all whether it was all there is
   */
  void pulled(Bookmark upTo, boolean all) {
    lock.lock();
    try {
      visible = upTo;
      state = all ? new FollowerState.Ready() : new FollowerState.Behind();
      caughtUpAt = all ? System.nanoTime() : caughtUpAt;
      shown.signalAll();
    } finally {
      lock.unlock();
    }
  }

  /** Searches show an older state again. */
  void fallenBackTo(Bookmark bookmark) {
    lock.lock();
    try {
      visible = bookmark;
    } finally {
      lock.unlock();
    }
  }

  /** Rests until woken. */
  void rest(Duration atMost) throws InterruptedException {
    sleep(atMost, true);
  }

  /** Pauses whether woken or not, so that nobody's wish can hurry a source that fails. */
  void pause(Duration atMost) throws InterruptedException {
    sleep(atMost, false);
  }

  private void sleep(Duration atMost, boolean untilWoken) throws InterruptedException {
    long left = atMost.toNanos();
    lock.lock();
    try {
      while (left > 0 && !closing && !(untilWoken && woken)) {
        left = wanted.awaitNanos(left);
      }
      if (untilWoken) {
        woken = false;
      }
    } finally {
      lock.unlock();
    }
  }

  boolean isClosing() {
    lock.lock();
    try {
      return closing;
    } finally {
      lock.unlock();
    }
  }

  /** Ends every rest and every wait. */
  void close() {
    lock.lock();
    try {
      closing = true;
      wanted.signalAll();
      shown.signalAll();
    } finally {
      lock.unlock();
    }
  }
}
