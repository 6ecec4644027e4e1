package lampwright.tasks;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import lampwright.archive.Limits;
import lampwright.people.Ids;
import lampwright.people.StudioId;
import lampwright.store.Database;
import lampwright.store.ImportJobs;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Receives archives, a few at a time: each into a file of its own, which is read, checked, and held
 * against the studio. That is its plan.
 */
final class ImportReceiving {

  /** For so long one is kept that nobody carries out. */
  static final Duration KEPT = Duration.ofHours(24);

  private static final int MOST_WAITING_OF_STUDIO = 3;
  private static final int MOST_WAITING = 12;
  private static final Duration LATER = Duration.ofMinutes(1);
  private static final Logger LOG = LoggerFactory.getLogger(ImportReceiving.class);

  private final Database database;
  private final ImportChecking checking;
  private final HeldImports held;
  private final Ids ids;
  private final String server;
  private final Path folder;

  /**
   * @param server which process this is
   * @param folder for archives that have come
   */
  ImportReceiving(
      Database database,
      ImportChecking checking,
      HeldImports held,
      Ids ids,
      String server,
      Path folder) {
    this.database = database;
    this.checking = checking;
    this.held = held;
    this.ids = ids;
    this.server = server;
    this.folder = folder;
  }

  /**
   * Receives an archive, and lets it be checked meanwhile.
   *
   * @throws Refused TooLarge, NotReadable where it ends too early, with nothing kept; Clash where
   *     the studio has several waiting
   */
  ImportJob accept(Caller caller, StudioId studio, Importing.Clashes clashes, InputStream body) {
    forgetOld();
    ImportJob job = waiting(caller, studio, clashes);
    boolean received = false;
    try {
      save(body, job.file());
      received = true;
    } finally {
      if (!received) {
        forget(job);
        job.letFilesGo();
      }
    }
    Thread.ofVirtual()
        .name("import-check-" + job.id())
        .start(
            () -> {
              try {
                checking.check(job);
                // Before anybody is told here: they may ask another server next.
                held.tellNow(job);
              } finally {
                job.checked().countDown();
              }
            });
    return job;
  }

  private synchronized ImportJob waiting(
      Caller caller, StudioId studio, Importing.Clashes clashes) {
    if (held.underWay() >= MOST_WAITING) {
      throw Refused.unavailable(LATER);
    }
    String id = ids.next();
    Path own = folder.resolve(id);
    ImportJob job = new ImportJob(id, server, studio, caller, clashes, database.now(), own);
    database.inStudio(
        studio,
        caller.asker(),
        in -> {
          ImportJobs all = new ImportJobs(in);
          all.hold();
          all.forget(in.now().minus(KEPT));
          if (all.countOpen() >= MOST_WAITING_OF_STUDIO) {
            throw new Refused(
                new Refusal.Clash(
                    "%d imports of the studio wait already. Discard one first."
                        .formatted(MOST_WAITING_OF_STUDIO)));
          }
          all.begin(id, in.person(), server, clashes.name().toLowerCase(Locale.ROOT), job.begun());
          return id;
        });
    held.add(job);
    try {
      Files.createDirectories(own);
    } catch (IOException e) {
      forget(job);
      throw new UncheckedIOException(e);
    }
    return job;
  }

  private static void save(InputStream body, Path file) {
    try (OutputStream out = Files.newOutputStream(file)) {
      byte[] piece = new byte[1 << 16];
      long bytes = 0;
      for (int some = read(body, piece); some >= 0; some = read(body, piece)) {
        bytes += some;
        if (bytes > Limits.USUAL.bytes()) {
          throw new Refused(new Refusal.TooLarge(Limits.USUAL.bytes()));
        }
        out.write(piece, 0, some);
      }
    } catch (IOException e) {
      LOG.error("An archive could not be written into its folder", e);
      throw Refused.unavailable(LATER);
    }
  }

  private static int read(InputStream body, byte[] piece) {
    try {
      return body.read(piece);
    } catch (IOException e) {
      throw Refused.notReadable("The archive ended before it was complete. Send it again.");
    }
  }

  private void forgetOld() {
    Instant before = database.now().minus(KEPT);
    for (ImportJob job : held.all()) {
      if (job.begun().isBefore(before) && !job.isAtWork()) {
        forget(job);
      }
    }
  }

  /** Lets one go as if it had not come. */
  void forget(ImportJob job) {
    var _ = database.inStudioForUpkeep(job.studio(), in -> new ImportJobs(in).discard(job.id()));
    letGo(job);
  }

  void letGo(ImportJob job) {
    held.remove(job);
    // Where it is at work still, the files go when that ends.
    if (!job.isAtWork()) {
      job.letFilesGo();
    }
  }
}
