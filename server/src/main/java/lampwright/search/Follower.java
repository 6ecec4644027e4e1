package lampwright.search;

import java.time.Duration;
import java.util.Iterator;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.locks.Condition;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.BooleanSupplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Keeps the index true to the database: one thread reads the change log in order, shows each batch
 * to the searches, and writes to the disk now and then. It rebuilds the index where that is needed,
 * and survives every failure of the source and of the disk.
 */
public final class Follower implements AutoCloseable {

  private static final Logger LOG = LoggerFactory.getLogger(Follower.class);

  private static final Duration BETWEEN_LOOKS = Duration.ofMillis(250);
  // A commit costs a disk flush (8 ms measured), so never one for each change.
  private static final Duration BETWEEN_COMMITS = Duration.ofMillis(500);
  private static final Duration FIRST_PAUSE = Duration.ofMillis(100);
  private static final Duration LONGEST_PAUSE = Duration.ofSeconds(10);
  private static final Duration CLOSING = Duration.ofSeconds(10);
  private static final int BATCH = 500;

  private final SetupIndex index;
  private final ChangeSource source;
  private final Thread thread;

  private final ReentrantLock lock = new ReentrantLock();
  private final Condition wanted = lock.newCondition();
  private final Condition shown = lock.newCondition();

  // Guarded by the lock.
  private boolean woken;
  private boolean closing;
  private Bookmark visible;
  private FollowerState state = new FollowerState.Behind();
  private long caughtUpAt = System.nanoTime();

  // The follower's thread only.
  private Bookmark position;
  private boolean uncommitted;
  private long committedAt = System.nanoTime();

  private Follower(SetupIndex index, ChangeSource source) {
    this.index = index;
    this.source = source;
    this.position = index.bookmark();
    this.visible = position;
    this.thread = Thread.ofPlatform().name("index-follower").daemon().unstarted(this::run);
  }

  /** Starts following. The index stays the caller's to close, after the follower. */
  public static Follower start(SetupIndex index, ChangeSource source) {
    Follower follower = new Follower(index, source);
    follower.thread.start();
    return follower;
  }

  /** Asks for a look at the change log now rather than at the next turn. */
  public void wake() {
    lock.lock();
    try {
      woken = true;
      wanted.signal();
    } finally {
      lock.unlock();
    }
  }

  public FollowerState state() {
    lock.lock();
    try {
      return state;
    } finally {
      lock.unlock();
    }
  }

  /**
   * For how long the index may have lacked a change; zero where it lacked none at the last look.
   */
  public Duration lag() {
    lock.lock();
    try {
      return state instanceof FollowerState.Ready
          ? Duration.ZERO
          : Duration.ofNanos(System.nanoTime() - caughtUpAt);
    } finally {
      lock.unlock();
    }
  }

  /**
   * Waits until searches show the change log up to the bookmark.
   *
   * @return whether they do; false where the time was not enough: answer then all the same
   */
  public boolean await(Bookmark bookmark, Duration atMost) throws InterruptedException {
    return await(() -> visible.compareTo(bookmark) >= 0, atMost);
  }

  /**
   * Waits until searches show this revision of a setup, a newer one, or its deletion.
   *
   * @return whether they do; false where the time was not enough: answer then all the same
   */
  public boolean awaitSetupRevision(String studio, String setup, int revision, Duration atMost)
      throws InterruptedException {
    return await(() -> shows(studio, setup, revision), atMost);
  }

  private boolean shows(String studio, String setup, int revision) {
    try {
      OptionalInt known = index.findRevision(studio, setup);
      return known.isPresent() && known.getAsInt() >= revision;
    } catch (IndexFailure e) {
      LOG.debug("The index cannot be asked for now", e);
      return false;
    }
  }

  private boolean await(BooleanSupplier reached, Duration atMost) throws InterruptedException {
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

  /** Stops following, with a last commit. */
  @Override
  public void close() {
    lock.lock();
    try {
      closing = true;
      wanted.signalAll();
      shown.signalAll();
    } finally {
      lock.unlock();
    }
    // Not an interrupt at first: it would close Lucene's files under a write.
    try {
      if (!thread.join(CLOSING)) {
        LOG.warn("The index follower is still busy; what it has not committed is read again.");
        thread.interrupt();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private void run() {
    Duration pause = FIRST_PAUSE;
    while (!isClosing()) {
      try {
        if (index.needsRebuild().isPresent()) {
          rebuild();
        }
        boolean all = pull();
        commitIfDue();
        pause = FIRST_PAUSE;
        if (all) {
          sleep(BETWEEN_LOOKS, true);
        }
      } catch (InterruptedException e) {
        // Nobody but close interrupts; then the loop ends.
        LOG.debug("The index follower was interrupted", e);
      } catch (ChangeSource.LogGap e) {
        index.requireRebuild("the change log does not reach back to it");
      } catch (Throwable e) {
        // Whatever it is, even an Error: a dead follower would leave the index stale for good.
        failed(e);
        pauseAfterFailure(pause);
        Duration doubled = pause.multipliedBy(2);
        pause = doubled.compareTo(LONGEST_PAUSE) < 0 ? doubled : LONGEST_PAUSE;
      }
    }
    lastCommit();
  }

  private void rebuild() {
    LOG.info("Building the index anew: {}", index.needsRebuild().orElse(""));
    try (ChangeSource.Everything everything = source.everything();
        SetupIndex.Rebuild rebuild = index.startRebuild()) {
      long done = 0;
      show(new FollowerState.Rebuilding(done, everything.total()));
      for (Iterator<IndexEntry> entries = everything.entries().iterator(); entries.hasNext(); ) {
        if (isClosing()) {
          return;
        }
        rebuild.put(entries.next());
        done++;
        show(new FollowerState.Rebuilding(done, Math.max(done, everything.total())));
      }
      rebuild.finish(everything.asOf());
      position = everything.asOf();
      uncommitted = false;
      LOG.info("The index holds {} setups", done);
    }
  }

  /** Takes in one batch; tells whether that was all there is. */
  private boolean pull() {
    if (isClosing()) {
      return true;
    }
    List<Change> changes = source.after(position, BATCH);
    for (Change change : changes) {
      switch (change) {
        case Change.Kept(_, IndexEntry entry) -> index.put(entry);
        case Change.Gone(_, String studio, String setup, int revision) ->
            index.delete(studio, setup, revision);
      }
      position = change.at();
      uncommitted = true;
    }
    if (!changes.isEmpty()) {
      index.refresh();
    }
    boolean all = changes.size() < BATCH;
    lock.lock();
    try {
      visible = position;
      state = all ? new FollowerState.Ready() : new FollowerState.Behind();
      caughtUpAt = all ? System.nanoTime() : caughtUpAt;
      shown.signalAll();
    } finally {
      lock.unlock();
    }
    return all;
  }

  private void commitIfDue() {
    if (uncommitted && System.nanoTime() - committedAt >= BETWEEN_COMMITS.toNanos()) {
      commit();
    }
  }

  private void commit() {
    index.commit(position);
    uncommitted = false;
    committedAt = System.nanoTime();
  }

  private void lastCommit() {
    try {
      if (uncommitted && index.needsRebuild().isEmpty()) {
        commit();
      }
    } catch (RuntimeException e) {
      LOG.warn("The last commit of the index failed; its changes are read again", e);
    }
  }

  private void failed(Throwable cause) {
    LOG.warn("The index does not follow the database for now", cause);
    String reason =
        cause instanceof IndexFailure failure
            ? String.valueOf(failure.getMessage())
            : "The change log could not be read: " + cause.getClass().getSimpleName();
    show(new FollowerState.Failed(reason));
    if (cause instanceof IndexFailure) {
      beginAtLastCommit();
    }
  }

  private void beginAtLastCommit() {
    try {
      index.reopen();
      position = index.bookmark();
      uncommitted = false;
    } catch (RuntimeException e) {
      LOG.warn("The index could not be opened again", e);
    }
  }

  private void pauseAfterFailure(Duration pause) {
    try {
      sleep(pause, false);
    } catch (InterruptedException e) {
      LOG.debug("The index follower was interrupted", e);
    }
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

  private boolean isClosing() {
    lock.lock();
    try {
      return closing;
    } finally {
      lock.unlock();
    }
  }

  private void show(FollowerState now) {
    lock.lock();
    try {
      state = now;
    } finally {
      lock.unlock();
    }
  }
}
