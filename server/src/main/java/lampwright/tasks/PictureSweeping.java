package lampwright.tasks;

import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import lampwright.store.DatabaseUnavailable;
import lampwright.store.PicturesUnavailable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The one sweep of a start where the files lie in an object store: a thread of its own, since to go
 * through a large bucket takes a while and the store may be away.
 */
public final class PictureSweeping implements AutoCloseable {

  private static final Duration AGAIN = Duration.ofSeconds(10);
  private static final Logger LOG = LoggerFactory.getLogger(PictureSweeping.class);

  private final CountDownLatch closed = new CountDownLatch(1);
  private final PictureUpkeep upkeep;
  private final Thread thread;

  private PictureSweeping(PictureUpkeep upkeep) {
    this.upkeep = upkeep;
    this.thread = Thread.ofVirtual().name("picture-sweep").unstarted(this::sweepOnce);
  }

  /** Begins. */
  public static PictureSweeping start(PictureUpkeep upkeep) {
    PictureSweeping sweeping = new PictureSweeping(upkeep);
    sweeping.thread.start();
    return sweeping;
  }

  private void sweepOnce() {
    try {
      while (!isSwept()) {
        if (closed.await(AGAIN.toMillis(), TimeUnit.MILLISECONDS)) {
          return;
        }
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (RuntimeException e) {
      if (closed.getCount() > 0) {
        LOG.error("The files of pictures could not be looked through", e);
      }
    }
  }

  private boolean isSwept() {
    try {
      upkeep.sweep();
      return true;
    } catch (PicturesUnavailable | DatabaseUnavailable e) {
      if (closed.getCount() > 0) {
        LOG.warn("The files of pictures are looked through later. {}", e.getMessage());
      }
      return false;
    }
  }

  /** Gives up; the next start begins anew. */
  @Override
  public void close() {
    closed.countDown();
    thread.interrupt();
    try {
      thread.join();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
