package lampwright.search;

import java.time.Duration;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
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
  private static final Duration CLOSING = Duration.ofSeconds(5);
  private static final int BATCH = 500;
  private static final int BETWEEN_PULLS = 200;
  private static final String ORDERED = "it was asked for";

  private final SetupIndex index;
  private final ChangeSource source;
  private final Thread thread;

  private final Progress progress;
  private final RebuildWatch rebuilds = new RebuildWatch();

  // The follower's thread only.
  private Bookmark position;
  private boolean uncommitted;
  private long committedAt = System.nanoTime();

  private Follower(SetupIndex index, ChangeSource source) {
    this.index = index;
    this.source = source;
    this.position = index.bookmark();
    this.progress = new Progress(position);
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
    progress.wake();
  }

  public FollowerState state() {
    return progress.state();
  }

  /** Up to where in the change log searches show what is there. */
  public Bookmark position() {
    return progress.visible();
  }

  /**
   * For how long the index may have lacked a change; zero where it lacked none at the last look.
   */
  public Duration lag() {
    return progress.lag();
  }

  /**
   * Orders a new index, made from the database. Searches go on from the one that is there, and see
   * changes, until the new one takes its place.
   *
   * @return false where one is being made already
   */
  public boolean orderRebuild() {
    if (!rebuilds.order()) {
      return false;
    }
    if (index.needsRebuild().isEmpty()) {
      index.requireRebuild(ORDERED);
    }
    progress.wake();
    return true;
  }

  /**
   * Ends the making of a new index; the one that is there stays.
   *
   * @return false where none is being made that may be stopped
   */
  public boolean stopRebuild() {
    return rebuilds.askToStop();
  }

  /** The new index that is being made; empty where none is. */
  public Optional<IndexRebuild> rebuild() {
    return rebuilds.now();
  }

  /** The one that was made last since this process started. */
  public Optional<IndexRebuild.Past> lastRebuild() {
    return rebuilds.last();
  }

  /**
   * Waits until searches show the change log up to the bookmark.
   *
   * @return whether they do; false where the time was not enough: answer then all the same
   */
  public boolean await(Bookmark bookmark, Duration atMost) throws InterruptedException {
    return progress.await(() -> progress.hasShown(bookmark), atMost);
  }

  /**
   * Waits until searches show this revision of a setup, a newer one, or its deletion.
   *
   * @return whether they do; false where the time was not enough: answer then all the same
   */
  public boolean awaitSetupRevision(String studio, String setup, int revision, Duration atMost)
      throws InterruptedException {
    return progress.await(() -> shows(studio, setup, revision), atMost);
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

  /** Stops following, with a last commit. */
  @Override
  public void close() {
    progress.close();
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
    while (!progress.isClosing()) {
      try {
        if (index.needsRebuild().isPresent()) {
          makeAnew();
        }
        boolean all = pull();
        commitIfDue();
        pause = FIRST_PAUSE;
        if (all) {
          progress.rest(BETWEEN_LOOKS);
        }
      } catch (InterruptedException e) {
        // Nobody but close interrupts; then the loop ends.
        LOG.debug("The index follower was interrupted", e);
      } catch (ChangeSource.LogGap e) {
        index.requireRebuild("the change log does not reach back to it");
        pauseAfterFailure(pause);
        pause = longer(pause);
      } catch (Throwable e) {
        // Whatever it is, even an Error: a dead follower would leave the index stale for good.
        failed(e);
        pauseAfterFailure(pause);
        pause = longer(pause);
      }
    }
    lastCommit();
  }

  private void makeAnew() {
    LOG.info("Building the index anew: {}", index.needsRebuild().orElse(""));
    // An order is no fault: what there is stays in use meanwhile.
    boolean isOrdered = index.isComplete() && index.needsRebuild().equals(Optional.of(ORDERED));
    try (ChangeSource.Everything everything = source.everything();
        SetupIndex.Rebuild rebuild = index.startRebuild()) {
      rebuilds.begin(everything.total(), isOrdered);
      if (takeInAll(everything, rebuild, isOrdered)) {
        rebuild.finish(everything.asOf());
        position = everything.asOf();
        progress.fallenBackTo(position);
        uncommitted = false;
        rebuilds.end(IndexRebuild.Ending.FINISHED);
      }
    } catch (RuntimeException | Error e) {
      giveUp(isOrdered, IndexRebuild.Ending.FAILED);
      throw e;
    }
  }

  /** Tells whether all of it was taken in, rather than stopped. */
  private boolean takeInAll(
      ChangeSource.Everything everything, SetupIndex.Rebuild rebuild, boolean isOrdered) {
    long done = 0;
    show(isOrdered, done, everything.total());
    for (Iterator<IndexEntry> entries = everything.entries().iterator(); entries.hasNext(); ) {
      if (progress.isClosing()) {
        return false;
      }
      if (rebuilds.isStopAsked()) {
        giveUp(isOrdered, IndexRebuild.Ending.STOPPED);
        return false;
      }
      rebuild.put(entries.next());
      done++;
      rebuilds.takenIn(done);
      show(isOrdered, done, everything.total());
      if (isOrdered && done % BETWEEN_PULLS == 0) {
        pull();
      }
    }
    LOG.info("The index holds {} setups", done);
    return true;
  }

  private void show(boolean isOrdered, long done, long total) {
    if (!isOrdered) {
      progress.show(new FollowerState.Rebuilding(done, Math.max(done, total)));
    }
  }

  private void giveUp(boolean isOrdered, IndexRebuild.Ending how) {
    if (isOrdered) {
      index.forgoRebuild(ORDERED);
    }
    rebuilds.end(how);
  }

  /** Takes in one batch; tells whether that was all there is. */
  private boolean pull() {
    if (progress.isClosing()) {
      return true;
    }
    List<Change> changes = source.after(position, BATCH);
    for (Change change : changes) {
      take(change);
      position = change.at();
      uncommitted = true;
    }
    if (!changes.isEmpty()) {
      index.refresh();
    }
    boolean all = changes.size() < BATCH;
    progress.pulled(position, all);
    return all;
  }

  private void take(Change change) {
    try {
      switch (change) {
        case Change.Kept(_, IndexEntry entry) -> index.put(entry);
        case Change.Gone(_, String studio, String setup, int revision) ->
            index.delete(studio, setup, revision);
      }
    } catch (IllegalArgumentException e) {
      // One document that the index refuses must not keep all later ones from being found.
      LOG.error("The change at {} cannot be indexed and is left out", change.at(), e);
    }
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
    progress.show(new FollowerState.Failed(reason));
    if (cause instanceof IndexFailure && !progress.isClosing()) {
      beginAtLastCommit();
    }
  }

  private void beginAtLastCommit() {
    try {
      index.reopen();
      position = index.bookmark();
      progress.fallenBackTo(position);
      uncommitted = false;
    } catch (RuntimeException e) {
      LOG.warn("The index could not be opened again", e);
    }
  }

  private static Duration longer(Duration pause) {
    Duration doubled = pause.multipliedBy(2);
    return doubled.compareTo(LONGEST_PAUSE) < 0 ? doubled : LONGEST_PAUSE;
  }

  private void pauseAfterFailure(Duration pause) {
    try {
      progress.pause(pause);
    } catch (InterruptedException e) {
      LOG.debug("The index follower was interrupted", e);
    }
  }
}
