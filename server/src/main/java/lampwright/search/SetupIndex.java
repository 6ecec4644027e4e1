package lampwright.search;

import java.io.EOFException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import org.apache.lucene.index.CorruptIndexException;
import org.apache.lucene.index.IndexFormatTooNewException;
import org.apache.lucene.index.IndexFormatTooOldException;
import org.apache.lucene.index.IndexNotFoundException;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.FieldExistsQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.store.AlreadyClosedException;
import org.apache.lucene.store.FSDirectory;
import org.apache.lucene.store.LockObtainFailedException;

/**
 * The index of one server process in its folder. A disposable copy: what is missing, broken, of
 * another database or of an older layout is noticed when it is opened and built anew from the
 * database ({@link #needsRebuild}).
 *
 * <p>Safe for many readers; writers take turns. Each method that writes may throw {@link
 * IndexFailure}.
 */
public final class SetupIndex implements AutoCloseable {

  private final Path folder;
  private final Generations generations;
  private final Words words = new Words();
  private volatile Generation live;
  private volatile Optional<String> needsRebuild = Optional.empty();
  private boolean closed;

  private final Set<String> takenIn = new HashSet<>();
  private final Map<String, Long> shown = new ConcurrentHashMap<>();
  private final AtomicLong shownAnew = new AtomicLong();

  private SetupIndex(Path folder, String identity, Generations.Opening files) throws IOException {
    this.folder = folder;
    this.generations = new Generations(folder, identity, files, words);
    this.live = newestUsable();
  }

  /**
   * Opens the index, or starts an empty one where there is none to use.
   *
   * @param folder a folder of this process alone; made where it is missing
   * @param identity names the database that the index is a copy of
   * @throws IndexFailure.InUse where another process has the folder open
   * @throws IndexFailure.NotWritten where the folder cannot be used
   */
  public static SetupIndex open(Path folder, String identity) {
    return open(folder, identity, FSDirectory::open);
  }

  static SetupIndex open(Path folder, String identity, Generations.Opening files) {
    try {
      return new SetupIndex(folder, identity, files);
    } catch (LockObtainFailedException e) {
      throw new IndexFailure.InUse(
          "Index folder ("
              + folder
              + ") is in use by another process. Maybe a data folder of its own?",
          e);
    } catch (IOException e) {
      throw new IndexFailure.NotWritten(
          "Index folder (" + folder + ") must be writable. Maybe the disk is full?", e);
    }
  }

  /** Why the index must be built anew before it can be trusted; empty where it can. */
  public Optional<String> needsRebuild() {
    return needsRebuild;
  }

  /** Orders a rebuild, as when the change log no longer reaches back to the bookmark. */
  public void requireRebuild(String reason) {
    needsRebuild = Optional.of(reason);
  }

  /** Takes back an order of a rebuild, unless there is another reason for one since. */
  void forgoRebuild(String reason) {
    if (needsRebuild.equals(Optional.of(reason))) {
      needsRebuild = Optional.empty();
    }
  }

  /** How many setups of a studio searches can find, by whoever may see them all. */
  public int count(String studio) {
    Query all =
        new BooleanQuery.Builder()
            .add(new TermQuery(new Term(EntryDocument.STUDIO, studio)), Occur.FILTER)
            .add(new FieldExistsQuery(EntryDocument.CHANGED), Occur.FILTER)
            .build();
    return read(searcher -> searcher.count(all));
  }

  /** How many setups of all studios searches can find. */
  public int count() {
    return read(searcher -> searcher.count(new FieldExistsQuery(EntryDocument.CHANGED)));
  }

  /** Where the last commit stands in the change log; {@link Bookmark#START} before a rebuild. */
  public Bookmark bookmark() {
    return live.committed().bookmark();
  }

  /** Takes in a setup, unless the index knows a newer revision of it or its deletion. */
  public synchronized void put(IndexEntry entry) {
    takenIn.add(entry.studio());
    write(() -> live.put(entry));
  }

  /**
   * Forgets a setup, unless the index knows a newer revision of it.
   *
   * @param revision its last, or {@link Change#ERASED}
   */
  public synchronized void delete(String studio, String setup, int revision) {
    takenIn.add(studio);
    write(() -> live.delete(studio, setup, revision));
  }

  /** Shows what was taken in to every search from now on. */
  public synchronized void refresh() {
    write(() -> live.refresh());
    takenIn.forEach(studio -> shown.merge(studio, 1L, Long::sum));
    takenIn.clear();
  }

  /** Whether it was built to the end once, so that no setup is missing for long. */
  boolean isComplete() {
    return live.committed().complete();
  }

  /**
   * Which state of a studio searches show: differs whenever something of it was taken in. To be
   * read before a search whose answer is kept with it.
   */
  String shown(String studio) {
    return shownAnew.get() + "." + shown.getOrDefault(studio, 0L);
  }

  /** Writes all that was taken in to the disk, with its place in the change log. */
  public synchronized void commit(Bookmark bookmark) {
    write(() -> live.commit(live.committed().at(bookmark)));
  }

  /** The newest revision that searches know of a setup, even a deleted one. */
  public OptionalInt findRevision(String studio, String setup) {
    return read(
        searcher ->
            Generation.findRevision(searcher, EntryDocument.key(studio, setup))
                .map(revision -> OptionalInt.of(revision.number()))
                .orElse(OptionalInt.empty()));
  }

  /**
   * Begins anew at the last commit, after a failed write. Searches are answered from what was there
   * until it is done.
   */
  public synchronized void reopen() {
    Generation old = live;
    write(
        () -> {
          old.stopWriting();
          live = newestUsable();
          shownAnew.incrementAndGet();
          old.close();
        });
  }

  /** Starts an empty index beside this one, which takes its place when it is finished. */
  public synchronized Rebuild startRebuild() {
    Rebuild rebuild = new Rebuild();
    write(rebuild::start);
    return rebuild;
  }

  /** Closes the files at the last commit; what came later is read from the change log again. */
  @Override
  public synchronized void close() {
    closed = true;
    try {
      live.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  Words words() {
    return words;
  }

  <T> T read(Generation.Reading<T> reading) {
    while (true) {
      Generation asked = live;
      try {
        return asked.read(reading);
      } catch (AlreadyClosedException e) {
        if (asked == live) {
          throw new IndexFailure.NotWritten("The index is closed.", e);
        }
      } catch (IOException e) {
        throw failure(e);
      } catch (InternalError e) {
        // A file that was cut off while it was mapped into memory is found out so.
        throw broken(e);
      }
    }
  }

  /** A new index in the making. */
  public final class Rebuild implements AutoCloseable {

    private static final int BETWEEN_GLIMPSES = 1_000;

    private Optional<Generation> building = Optional.empty();
    private long taken;
    private boolean finished;

    private Rebuild() {}

    private void start() throws IOException {
      Generation made = generations.create();
      building = Optional.of(made);
      if (!live.committed().complete()) {
        // There is nothing worth searching yet, so show what is built while it grows.
        replaceLive(made);
      }
    }

    public void put(IndexEntry entry) {
      synchronized (SetupIndex.this) {
        write(
            () -> {
              made().put(entry);
              if (++taken % BETWEEN_GLIMPSES == 0) {
                made().refresh();
                shownAnew.incrementAndGet();
              }
            });
      }
    }

    /** Puts the new index in the old one's place. */
    public void finish(Bookmark asOf) {
      synchronized (SetupIndex.this) {
        write(
            () -> {
              made().refresh();
              made().commit(made().committed().completeAt(asOf));
              finished = true;
              needsRebuild = Optional.empty();
              if (live != made()) {
                replaceLive(made());
              }
              shownAnew.incrementAndGet();
            });
      }
    }

    private Generation made() {
      return building.orElseThrow(() -> new IllegalStateException("The rebuild did not start."));
    }

    /** Gives the new index up, unless it is finished. */
    @Override
    public void close() {
      synchronized (SetupIndex.this) {
        if (!finished && !closed && building.isPresent() && live != made()) {
          write(() -> Generations.discard(made()));
        }
      }
    }
  }

  private void replaceLive(Generation with) throws IOException {
    Generation old = live;
    live = with;
    shownAnew.incrementAndGet();
    Generations.discard(old);
  }

  private Generation newestUsable() throws IOException {
    Generations.Found found = generations.newestUsable();
    found.reasonForRebuild().ifPresent(this::requireRebuild);
    return found.generation();
  }

  private interface Writing {
    void run() throws IOException;
  }

  private void write(Writing writing) {
    if (closed) {
      throw new IndexFailure.NotWritten("The index is closed.");
    }
    try {
      writing.run();
    } catch (IOException e) {
      throw failure(e);
    } catch (AlreadyClosedException e) {
      throw new IndexFailure.NotWritten("The index stopped writing after a failure.", e);
    }
  }

  private IndexFailure broken(Throwable e) {
    needsRebuild = Optional.of("it was found broken");
    return new IndexFailure.Broken("The index (" + folder + ") is broken.", e);
  }

  private IndexFailure failure(IOException e) {
    boolean broken =
        e instanceof CorruptIndexException
            || e instanceof IndexFormatTooOldException
            || e instanceof IndexFormatTooNewException
            || e instanceof IndexNotFoundException
            || e instanceof EOFException
            || e instanceof NoSuchFileException;
    if (broken) {
      return broken(e);
    }
    String what = e instanceof FileSystemException file ? file.getReason() : e.getMessage();
    return new IndexFailure.NotWritten(
        "The index (" + folder + ") could not be written: " + what + ". Maybe the disk is full?",
        e);
  }
}
