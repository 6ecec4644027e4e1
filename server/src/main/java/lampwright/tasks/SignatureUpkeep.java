package lampwright.tasks;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import lampwright.store.Database;
import lampwright.store.DatabaseUnavailable;
import lampwright.store.Signatures;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Signs in the background, once at the start, what a database of an older version has not signed,
 * or not by this version of the computation. Nothing waits for it: until it is done, whoever reads
 * such a signature computes it. It can end at any time and goes on at the next start, since it asks
 * for what is unsigned.
 */
public final class SignatureUpkeep implements AutoCloseable {

  private static final Logger LOG = LoggerFactory.getLogger(SignatureUpkeep.class);

  private static final int BATCH = 50;
  private static final long CLOSING_S = 5;

  private final Database database;
  private final CountDownLatch done = new CountDownLatch(1);
  private volatile boolean closed;

  private SignatureUpkeep(Database database) {
    this.database = database;
  }

  /** Begins. */
  public static SignatureUpkeep start(Database database) {
    SignatureUpkeep upkeep = new SignatureUpkeep(database);
    Thread.ofPlatform().name("signature-upkeep").daemon().start(upkeep::run);
    return upkeep;
  }

  private void run() {
    try {
      signAll();
    } catch (DatabaseUnavailable e) {
      LOG.warn("Signing goes on at the next start", e);
    } finally {
      done.countDown();
    }
  }

  private void signAll() {
    Optional<Signatures.Unsigned> last = Optional.empty();
    int signed = 0;
    while (!closed) {
      Optional<Signatures.Unsigned> after = last;
      List<Signatures.Unsigned> batch =
          database.asIndexer(in -> Signatures.listUnsigned(in, after, BATCH));
      if (batch.isEmpty()) {
        break;
      }
      for (Signatures.Unsigned unsigned : batch) {
        if (!closed) {
          sign(unsigned);
          signed++;
        }
      }
      last = Optional.of(batch.getLast());
    }
    if (signed > 0) {
      LOG.info("Signed {} setups anew", signed);
    }
  }

  private void sign(Signatures.Unsigned unsigned) {
    database.inStudioForUpkeep(
        unsigned.studio(),
        in -> {
          Signatures.keep(in, unsigned);
          return unsigned;
        });
  }

  /** Waits until all is signed that there was at the start. */
  public boolean await(long seconds) throws InterruptedException {
    return done.await(seconds, TimeUnit.SECONDS);
  }

  /** Ends after the setup that is being signed. */
  @Override
  public void close() {
    closed = true;
    try {
      if (!await(CLOSING_S)) {
        LOG.warn("Signing is still busy; it goes on at the next start.");
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
