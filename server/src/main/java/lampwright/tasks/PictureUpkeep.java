package lampwright.tasks;

import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.locks.ReentrantLock;
import lampwright.store.AnonymousTransaction;
import lampwright.store.Database;
import lampwright.store.KeptFile;
import lampwright.store.PictureFiles;
import lampwright.store.Pictures;
import lampwright.store.PicturesUnavailable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Keeps the files of pictures and the database in step. Files go to their place before the row that
 * names them, and away after it, so that no crash leaves a row without its file; {@link #sweep}
 * takes away what one left without a row. In between, nobody may find a file unneeded that a row is
 * about to name, at this server or another: hence a lock of the database on the file's hash, which
 * who adds pictures shares and who takes a file away holds alone.
 */
public final class PictureUpkeep {

  private static final Logger LOG = LoggerFactory.getLogger(PictureUpkeep.class);

  private final Database database;
  private final PictureFiles files;
  private final HeldPictures held = new HeldPictures();

  /** Who takes away needs two connections: one at a time, so that nobody waits for a second. */
  private final ReentrantLock takingAway = new ReentrantLock();

  /**
   * Files that stayed since a backup was being made, or the object store was away; they go with the
   * next, or at a start.
   */
  private final Set<String> left = ConcurrentHashMap.newKeySet();

  public PictureUpkeep(Database database, PictureFiles files) {
    this.database = database;
    this.files = files;
  }

  /** Takes away what a crash left without a row, and tells in the log which rows lost a file. */
  public void sweep() {
    Set<String> needed = database.asIndexer(Pictures::hashes);
    PictureFiles.Listing there = files.list();
    for (String hash : there.hashes()) {
      if (!needed.contains(hash)) {
        takeAwayUnneeded(hash);
      }
    }
    Set<String> missing = new HashSet<>(needed);
    missing.removeAll(there.complete());
    missing.removeAll(files.originals(missing).keySet());
    if (!missing.isEmpty()) {
      LOG.error("{} pictures have lost their files; bring them back from a backup", missing.size());
    }
  }

  /** How many files that no row names any more are left, for a backup or a store that is away. */
  public int outstanding() {
    return left.size();
  }

  /** Why no picture can be kept now, for whoever runs the server; empty where one can. */
  public Optional<String> trouble() {
    return files.trouble();
  }

  /** Files that stay where they are until this is closed, whatever becomes of their rows. */
  final class Hold implements AutoCloseable {

    private final Set<String> hashes;

    private Hold(Set<String> hashes) {
      this.hashes = Set.copyOf(hashes);
    }

    @Override
    public void close() {
      held.letGo(hashes).forEach(PictureUpkeep.this::takeAwayUnneeded);
    }
  }

  /** Holds files at this server, those that are not there yet too. */
  Hold hold(Set<String> hashes) {
    // Who is taking one away now has done so before; see what is there afterwards.
    takingAway.lock();
    try {
      held.hold(hashes);
      return new Hold(hashes);
    } finally {
      takingAway.unlock();
    }
  }

  /** The files as they came, without those that are lost. */
  Map<String, KeptFile> originals(Set<String> hashes) {
    return files.originals(hashes);
  }

  /** Takes a file away where no row of any studio names it and nobody holds it. */
  void takeAwayUnneeded(String sha256) {
    takingAway.lock();
    try {
      if (held.isHeld(sha256)) {
        return;
      }
      left.add(sha256);
      database.anonymous(
          in -> {
            if (Pictures.mayTakeAway(in)) {
              for (String hash : Set.copyOf(left)) {
                takeAway(in, hash);
                left.remove(hash);
              }
            }
            return sha256;
          });
    } catch (PicturesUnavailable e) {
      LOG.warn(
          "{} files of pictures that nobody needs stay for now. {}", left.size(), e.getMessage());
    } finally {
      takingAway.unlock();
    }
  }

  private void takeAway(AnonymousTransaction in, String sha256) {
    if (held.isHeld(sha256)) {
      return;
    }
    Pictures.holdFileAlone(in, sha256);
    // A transaction of its own, begun with the lock held: an older one sees an older state.
    if (!database.asIndexer(reader -> Pictures.isNeeded(reader, sha256))) {
      files.delete(sha256);
    }
  }
}
