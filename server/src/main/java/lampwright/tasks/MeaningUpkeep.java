package lampwright.tasks;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import lampwright.meaning.Meaning;
import lampwright.meaning.SentenceModel;
import lampwright.meaning.Sentences;
import lampwright.search.IndexEntry;
import lampwright.store.Bookmark;
import lampwright.store.ChangeLog;
import lampwright.store.Database;
import lampwright.store.SetupMeanings;
import lampwright.store.SetupOfStudio;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Works out in the background what setups mean, and keeps it in the database, so that it is done
 * once for all servers and never again for the same text. One server does so at a time; a search
 * never waits for it.
 */
public final class MeaningUpkeep implements AutoCloseable {

  private static final Logger LOG = LoggerFactory.getLogger(MeaningUpkeep.class);
  private static final Duration BETWEEN_LOOKS = Duration.ofSeconds(2);
  private static final int BATCH = 32;

  private final Database database;
  private final Sentences sentences;
  private final CountDownLatch closing = new CountDownLatch(1);
  private final Thread thread;

  /**
   * Up to where in the change log no setup wants anything, so that all are not gone through again.
   */
  private Optional<Bookmark> done = Optional.empty();

  private volatile double outstanding = Double.NaN;

  private MeaningUpkeep(Database database, Sentences sentences) {
    this.database = database;
    this.sentences = sentences;
    this.thread = Thread.ofPlatform().name("meaning-upkeep").daemon().unstarted(this::run);
  }

  /** Starts. The model stays the caller's to close, after this. */
  public static MeaningUpkeep start(Database database, Sentences sentences) {
    MeaningUpkeep upkeep = new MeaningUpkeep(database, sentences);
    upkeep.thread.start();
    return upkeep;
  }

  private void run() {
    try {
      Optional<SentenceModel> model = sentences.await();
      while (model.isPresent() && !closing.await(0, TimeUnit.MILLISECONDS)) {
        boolean more = workThrough(model.get());
        if (!more) {
          closing.await(BETWEEN_LOOKS.toMillis(), TimeUnit.MILLISECONDS);
        }
      }
    } catch (InterruptedException e) {
      // Nobody but close interrupts.
      LOG.debug("The upkeep of meanings was interrupted", e);
    }
  }

  /**
   * How many setups wait for theirs, as of the last batch; NaN while another server works them out
   * and before the first.
   */
  public double outstanding() {
    return outstanding;
  }

  /** Does one batch; tells whether there may be more at once. */
  private boolean workThrough(SentenceModel model) {
    try {
      return database.anonymous(
          in -> {
            // Holds a lock and writes nothing, so that it keeps no change from being seen.
            if (!SetupMeanings.mayWork(in)) {
              outstanding = Double.NaN;
              return false;
            }
            Bookmark newest = database.asIndexer(reader -> new ChangeLog(reader).newestBookmark());
            if (done.filter(newest::equals).isPresent()) {
              return false;
            }
            List<SetupOfStudio> batch =
                database.asIndexer(reader -> SetupMeanings.wanting(reader, BATCH));
            for (SetupOfStudio setup : batch) {
              if (closing.getCount() == 0) {
                return false;
              }
              keep(setup, model);
            }
            outstanding =
                batch.size() < BATCH ? 0 : database.asIndexer(SetupMeanings::countWanting);
            if (batch.size() < BATCH) {
              done = Optional.of(newest);
            }
            return batch.size() == BATCH;
          });
    } catch (RuntimeException e) {
      LOG.warn("What setups mean is not worked out for now", e);
      return false;
    }
  }

  private void keep(SetupOfStudio wanting, SentenceModel model) {
    // Of a text without a word the model makes something too, which is near nothing.
    Meaning meaning = model.of(IndexedSetup.find(wanting).map(IndexEntry::about).orElse(""));
    database.inStudioForUpkeep(
        wanting.studio(),
        in -> {
          SetupMeanings.keep(in, wanting.setup(), meaning);
          return wanting;
        });
  }

  @Override
  public void close() {
    closing.countDown();
    try {
      if (!thread.join(Duration.ofSeconds(5))) {
        thread.interrupt();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
