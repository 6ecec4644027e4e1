package lampwright.tasks;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import java.util.concurrent.Semaphore;
import java.util.function.Consumer;
import lampwright.store.ChangeListener;
import lampwright.store.Database;
import lampwright.store.DatabaseUnavailable;
import lampwright.store.ImportJobs;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The imports whose archives lie at this server. One thread tells the database twice a second how
 * far those at work are, and that the others still wait; so it hears what was ordered at other
 * servers, at once where the database can say so, and with the next line otherwise.
 */
final class HeldImports implements AutoCloseable {

  private static final Duration AT_WORK = Duration.ofMillis(500);
  private static final Duration WAITING = Duration.ofSeconds(3);
  private static final Duration AFTER_FAILURE = Duration.ofSeconds(1);
  private static final Logger LOG = LoggerFactory.getLogger(HeldImports.class);

  private final Database database;
  private final Consumer<ImportJob> carryOut;
  private final ConcurrentMap<String, ImportJob> jobs = new ConcurrentHashMap<>();
  private final Semaphore more = new Semaphore(0);
  private final Thread thread;
  private volatile boolean isClosing;

  /**
   * @param carryOut begins what was ordered at another server
   */
  HeldImports(Database database, Consumer<ImportJob> carryOut) {
    this.database = database;
    this.carryOut = carryOut;
    this.thread = Thread.ofVirtual().name("imports-told").unstarted(this::run);
  }

  void start() {
    thread.start();
  }

  void add(ImportJob job) {
    jobs.put(job.id(), job);
    more.release();
  }

  void remove(ImportJob job) {
    jobs.remove(job.id());
  }

  Optional<ImportJob> find(String id) {
    return Optional.ofNullable(jobs.get(id));
  }

  List<ImportJob> all() {
    return List.copyOf(jobs.values());
  }

  private void run() {
    while (!isClosing) {
      try {
        if (jobs.isEmpty()) {
          more.acquire();
          more.drainPermits();
        } else {
          tellWhileThereAreAny();
        }
      } catch (DatabaseUnavailable e) {
        // Closing interrupts whoever waits for orders, which ends that connection.
        if (!isClosing) {
          LOG.warn("How far imports are cannot be told for now: {}", e.toString());
          pause();
        }
      } catch (InterruptedException e) {
        // Nobody but close interrupts.
        LOG.debug("The telling of imports was interrupted", e);
      } catch (RuntimeException e) {
        LOG.error("How far imports are cannot be told", e);
        pause();
      }
    }
  }

  private void tellWhileThereAreAny() {
    try (ChangeListener orders = database.listenForImports()) {
      while (!isClosing && !jobs.isEmpty()) {
        all().forEach(this::tell);
        if (!jobs.isEmpty()) {
          boolean isAtWork = all().stream().anyMatch(ImportJob::isAtWork);
          var _ = orders.await(isAtWork ? AT_WORK : WAITING);
        }
      }
    }
  }

  private void pause() {
    try {
      Thread.sleep(AFTER_FAILURE);
    } catch (InterruptedException e) {
      LOG.debug("The telling of imports was interrupted", e);
    }
  }

  /** How many are at work, or wait for somebody's word. */
  int underWay() {
    return (int) all().stream().filter(ImportJob::isWaiting).count();
  }

  /** Tells of one at once, where the database can be reached. */
  void tellNow(ImportJob job) {
    try {
      tell(job);
    } catch (RuntimeException e) {
      LOG.warn("How far the import {} is will be told later: {}", job.id(), e.toString());
    }
  }

  /** Tells of one, and does what is heard. */
  void tell(ImportJob job) {
    ImportJobs.Standing now = job.standing();
    ImportJobs.Heard heard =
        database.inStudioForUpkeep(
            job.studio(), in -> new ImportJobs(in).tell(job.id(), job.server(), now));
    switch (heard) {
      case GO_ON -> letGoWhereOver(job, now);
      case CARRY_OUT -> carryOut.accept(job);
      case GONE -> giveUp(job);
    }
  }

  private void letGoWhereOver(ImportJob job, ImportJobs.Standing now) {
    if (!now.step().isOpen() && !job.isAtWork()) {
      // What the database holds of it says all from now on.
      remove(job);
    }
  }

  private void giveUp(ImportJob job) {
    var _ = job.stop();
    if (!job.isAtWork()) {
      remove(job);
      job.letFilesGo();
    }
  }

  /** Tells the last of each, and no more. */
  @Override
  public void close() {
    isClosing = true;
    more.release();
    thread.interrupt();
    try {
      if (!thread.join(Duration.ofSeconds(5))) {
        LOG.warn("The telling of imports takes long to end");
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    for (ImportJob job : all()) {
      try {
        tell(job);
      } catch (RuntimeException e) {
        LOG.warn("How the import {} ended could not be told: {}", job.id(), e.toString());
      }
    }
  }
}
