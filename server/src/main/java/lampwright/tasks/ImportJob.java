package lampwright.tasks;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import lampwright.archive.Archive;
import lampwright.archive.Fault;
import lampwright.people.StudioId;
import lampwright.store.ImportJobs;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** One archive on its way in at the server that has it, as several threads see it. */
final class ImportJob {

  private static final Logger LOG = LoggerFactory.getLogger(ImportJob.class);

  private final String id;
  private final String server;
  private final StudioId studio;
  private final Caller by;
  private final Importing.Clashes clashes;
  private final Instant begun;
  private final Path folder;
  private final CountDownLatch checked = new CountDownLatch(1);
  private final CountDownLatch over = new CountDownLatch(1);

  private Importing.State state = Importing.State.CHECKING;
  private int done;
  private int total;
  private boolean isStopped;
  private ImportTrouble.Why whyStopped = ImportTrouble.Why.STOPPED;
  private List<Fault> faults = List.of();
  private @Nullable ImportPlan plan;
  private @Nullable Archive archive;
  private @Nullable ImportTrouble trouble;
  private @Nullable Refused refused;

  ImportJob(
      String id,
      String server,
      StudioId studio,
      Caller by,
      Importing.Clashes clashes,
      Instant begun,
      Path folder) {
    this.id = id;
    this.server = server;
    this.studio = studio;
    this.by = by;
    this.clashes = clashes;
    this.begun = begun;
    this.folder = folder;
  }

  /** Somebody wants it ended before it has done anything. */
  static final class Stopped extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Stopped() {
      super("An import was stopped", null, false, false);
    }
  }

  /** It cannot be brought in as it is. */
  static final class Failed extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient ImportTrouble trouble;

    Failed(ImportTrouble.Why why, Object... parts) {
      super(why.name(), null, false, false);
      this.trouble = ImportTrouble.of(why, parts);
    }

    ImportTrouble trouble() {
      return trouble;
    }
  }

  String id() {
    return id;
  }

  /** Which process has the archive. */
  String server() {
    return server;
  }

  StudioId studio() {
    return studio;
  }

  Caller by() {
    return by;
  }

  Instant begun() {
    return begun;
  }

  Path folder() {
    return folder;
  }

  /** The archive as it came. */
  Path file() {
    return folder.resolve("archive.zip");
  }

  /** Takes everything of it off the disk. */
  synchronized void letFilesGo() {
    giveArchiveUp().ifPresent(Archive::close);
    try {
      Spool.delete(folder);
    } catch (IOException e) {
      LOG.warn("The folder of the import {} is left until the next start", id, e);
    }
  }

  Importing.Clashes clashes() {
    return clashes;
  }

  boolean copies() {
    return clashes == Importing.Clashes.COPY;
  }

  CountDownLatch checked() {
    return checked;
  }

  CountDownLatch over() {
    return over;
  }

  /** How far it is; ends it where it was told to stop. */
  synchronized void step(int nowDone, int ofTotal) {
    mustGoOn();
    done = nowDone;
    total = ofTotal;
  }

  synchronized void stepOn() {
    mustGoOn();
    done++;
  }

  synchronized void mustGoOn() {
    if (isStopped) {
      throw new Stopped();
    }
  }

  synchronized void planned(Archive sound, ImportPlan made) {
    archive = sound;
    plan = made;
    state = Importing.State.PLANNED;
    done = 0;
    total = 0;
  }

  synchronized void faulty(List<Fault> found) {
    faults = List.copyOf(found);
    state = Importing.State.FAULTY;
  }

  synchronized void failed(ImportTrouble why) {
    trouble = why;
    state = Importing.State.FAILED;
  }

  /** The same where the member may not do it. */
  synchronized void failed(Refused reason) {
    refused = reason;
    failed(ImportTrouble.of(reason.refusal()));
  }

  synchronized Optional<Refused> refused() {
    return Optional.ofNullable(refused);
  }

  /** Whether it begins to be carried out by this. */
  synchronized boolean begin(int steps) {
    if (state != Importing.State.PLANNED) {
      return false;
    }
    state = Importing.State.RUNNING;
    done = 0;
    total = steps;
    return true;
  }

  /** After this it cannot be stopped any more. */
  synchronized void commit() {
    mustGoOn();
    state = Importing.State.COMMITTING;
  }

  synchronized void imported() {
    state = Importing.State.IMPORTED;
    done = total;
  }

  /** Why it was stopped. */
  synchronized ImportTrouble whyStopped() {
    return ImportTrouble.of(whyStopped);
  }

  /** Ends it with the server; what is being kept at this moment is still kept. */
  synchronized void endWithServer() {
    if (stop()) {
      whyStopped = ImportTrouble.Why.ENDED_WITH_ITS_SERVER;
      if (state == Importing.State.PLANNED) {
        failed(whyStopped());
      }
    }
  }

  /** Whether it ends without having done anything. */
  synchronized boolean stop() {
    if (state == Importing.State.COMMITTING || state == Importing.State.IMPORTED) {
      return false;
    }
    isStopped = true;
    return true;
  }

  synchronized boolean isAtWork() {
    return switch (state) {
      case CHECKING, RUNNING, COMMITTING -> true;
      case PLANNED, FAULTY, FAILED, IMPORTED -> false;
    };
  }

  synchronized boolean isWaiting() {
    return isAtWork() || state == Importing.State.PLANNED;
  }

  synchronized Optional<Archive> archive() {
    return Optional.ofNullable(archive);
  }

  private synchronized Optional<Archive> giveArchiveUp() {
    Optional<Archive> given = Optional.ofNullable(archive);
    archive = null;
    return given;
  }

  /** As it is kept for the other servers. */
  synchronized ImportJobs.Standing standing() {
    return new ImportJobs.Standing(
        ImportJobs.Step.valueOf(state.name()),
        done,
        total,
        Optional.ofNullable(plan).map(ImportText::ofPlan),
        faults.isEmpty() ? Optional.empty() : Optional.of(ImportText.ofFaults(faults)),
        Optional.ofNullable(trouble).map(ImportText::ofTrouble));
  }

  synchronized Importing.Told told() {
    return new Importing.Told(
        id,
        state == Importing.State.COMMITTING ? Importing.State.RUNNING : state,
        clashes,
        begun,
        done,
        total,
        Optional.ofNullable(plan),
        faults,
        Optional.ofNullable(trouble));
  }
}
