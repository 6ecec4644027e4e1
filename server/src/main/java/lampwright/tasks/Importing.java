package lampwright.tasks;

import java.io.InputStream;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import lampwright.archive.Archive;
import lampwright.archive.Fault;
import lampwright.archive.Limits;
import lampwright.people.Ids;
import lampwright.people.Permission;
import lampwright.people.Role;
import lampwright.people.StudioId;
import lampwright.store.Database;
import lampwright.store.ImportJobs;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Brings archives in. An archive is received, checked and planned ({@link ImportReceiving}), and
 * nothing of it is in the catalogue yet. Carrying it out puts the pictures into their places first
 * and then writes everything in one transaction; whoever stops it before that is kept finds nothing
 * done.
 *
 * <p>Each server on the database can be asked about an import and can order what becomes of it. The
 * archive stays where it was received; when that server ends, so does what it had not brought in.
 */
public final class Importing implements AutoCloseable {

  /** The most bytes of an archive. */
  public static final long MOST_BYTES = Limits.USUAL.bytes();

  private static final Duration ANSWERED_WITHIN = Duration.ofSeconds(20);
  private static final Duration ENDING = Duration.ofSeconds(10);
  private static final String ENDED =
      ImportText.ofTrouble(ImportTrouble.of(ImportTrouble.Why.ENDED_WITH_ITS_SERVER));
  private static final Duration LATER = Duration.ofMinutes(1);
  private static final Duration ORDER_TAKEN = Duration.ofSeconds(8);
  private static final Duration BETWEEN_LOOKS = Duration.ofMillis(100);
  private static final Logger LOG = LoggerFactory.getLogger(Importing.class);

  private final Database database;
  private final ImportExecution execution;
  private final String server;
  private final HeldImports held;
  private final ImportReceiving receiving;

  /**
   * @param folder for archives that have come; what is in it from before goes
   */
  public Importing(
      Database database,
      Cataloguing cataloguing,
      PictureUpkeep upkeep,
      PictureAdding adding,
      Ids ids,
      Clock clock,
      Path folder) {
    this.database = database;
    this.execution = new ImportExecution(database, cataloguing, upkeep, adding, ids, clock);
    this.server = ids.next();
    this.held = new HeldImports(database, this::carryOutAsOrdered);
    ImportChecking checking = new ImportChecking(database, adding);
    this.receiving =
        new ImportReceiving(database, checking, held, ids, server, Spool.emptied(folder));
    held.start();
  }

  /** What becomes of things that clash with what is here. */
  public enum Clashes {
    /** Nothing comes in at all. */
    REFUSE,
    /** They come in under other ids, beside what is here. */
    COPY,
    /** What is here stays as it is, and only what is not here comes in. */
    KEEP
  }

  /** How many imports this server holds that are at work, or wait for somebody's word. */
  public int underWay() {
    return held.underWay();
  }

  /** How far an import is. */
  public enum State {
    CHECKING,
    PLANNED,
    FAULTY,
    RUNNING,
    COMMITTING,
    IMPORTED,
    FAILED
  }

  /**
   * An import as it is at a moment.
   *
   * @param done of so many steps
   * @param plan empty until it has been checked
   * @param faults why it cannot be brought in
   * @param trouble why it was not brought in
   */
  public record Told(
      String id,
      State state,
      Clashes clashes,
      Instant begun,
      int done,
      int total,
      Optional<ImportPlan> plan,
      List<Fault> faults,
      Optional<ImportTrouble> trouble) {}

  /**
   * Whether a member may bring anything in; asked before the bytes are taken.
   *
   * @throws Refused NotAllowed, NotFound
   */
  public void askToImport(Caller caller, StudioId studio) {
    database.inStudio(studio, caller.asker(), in -> Leave.ask(in, Permission.WRITE_SETUPS));
  }

  /**
   * Receives an archive and says what bringing it in would do, where that is known soon.
   *
   * @throws Refused TooLarge, NotReadable where it ends too early, Invalid where it is unsound,
   *     each with nothing kept; Clash where the studio has several waiting
   */
  public Told receive(Caller caller, StudioId studio, Clashes clashes, InputStream body) {
    return firstAnswer(accept(caller, studio, clashes, body));
  }

  /**
   * The same without waiting for what is found: that is told by {@link #get}.
   *
   * @throws Refused TooLarge, NotReadable where it ends too early, with nothing kept; Clash where
   *     the studio has several waiting
   */
  public Told begin(Caller caller, StudioId studio, Clashes clashes, InputStream body) {
    return accept(caller, studio, clashes, body).told();
  }

  ImportJob accept(Caller caller, StudioId studio, Clashes clashes, InputStream body) {
    askToImport(caller, studio);
    return receiving.accept(caller, studio, clashes, body);
  }

  /** Faults that are found soon are the answer; of a large archive they are told later. */
  private Told firstAnswer(ImportJob job) {
    try {
      if (!job.checked().await(ANSWERED_WITHIN.toMillis(), TimeUnit.MILLISECONDS)) {
        return job.told();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return job.told();
    }
    Told told = job.told();
    if (told.state() == State.FAULTY) {
      receiving.forget(job);
      throw Refused.invalid(told.faults().stream().map(ImportChecking::problem).toList());
    }
    if (told.state() == State.FAILED) {
      receiving.forget(job);
      throw job.refused().orElseGet(() -> Refused.unavailable(LATER));
    }
    return told;
  }

  /**
   * An import as it is now.
   *
   * @throws Refused NotFound where there is none of the member's own, or of the studio for an owner
   */
  public Told get(Caller caller, StudioId studio, String id) {
    return told(find(caller, studio, id));
  }

  private ImportJobs.Job find(Caller caller, StudioId studio, String id) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Role role = Leave.ask(in, Permission.WRITE_SETUPS);
          return new ImportJobs(in)
              .find(id, in.now().minus(ImportReceiving.KEPT), ENDED)
              .filter(
                  job -> role.may(Permission.MOVE_STUDIO) || job.by().equals(caller.person().id()))
              .orElseThrow(Refused::notFound);
        });
  }

  /** The server that has it knows best how far it is, as long as the others believe in it. */
  private Told told(ImportJobs.Job job) {
    ImportJobs.Standing kept = job.standing();
    Optional<ImportJob> here = held.find(job.id()).filter(_ -> kept.step().isOpen());
    if (here.isPresent()) {
      return here.get().told();
    }
    State state = State.valueOf(kept.step().name());
    boolean isToRun = state == State.COMMITTING || (state == State.PLANNED && job.isOrdered());
    return new Told(
        job.id(),
        isToRun ? State.RUNNING : state,
        clashes(job),
        job.begunAt(),
        kept.done(),
        kept.total(),
        kept.plan().map(ImportText::plan),
        kept.faults().map(ImportText::faults).orElse(List.of()),
        kept.trouble().map(ImportText::trouble));
  }

  private static Clashes clashes(ImportJobs.Job job) {
    return Clashes.valueOf(job.clashes().toUpperCase(Locale.ROOT));
  }

  /**
   * Begins to carry an import out, at the server that has it.
   *
   * @throws Refused Clash where it has not been planned, was begun before, or things clash and are
   *     not to be copied
   */
  public Told start(Caller caller, StudioId studio, String id) {
    ImportJobs.Job found = find(caller, studio, id);
    Optional<ImportJob> here = held.find(id);
    return here.isPresent() ? startHere(caller, here.get()) : order(caller, studio, found);
  }

  private Told startHere(Caller caller, ImportJob job) {
    Archive archive = job.archive().orElseThrow(() -> notPlanned(job.told()));
    int steps = ImportExecution.steps(archive);
    Fates fates =
        database.inStudio(
            job.studio(),
            caller.asker(),
            in -> {
              ImportChecking.mayBring(in, archive);
              Fates of = Fates.find(in, archive, job.clashes());
              mustNotClash(job, of);
              if (!new ImportJobs(in).run(job.id(), server, steps)) {
                throw notPlanned(job.told());
              }
              return of;
            });
    if (!job.begin(steps)) {
      throw notPlanned(job.told());
    }
    Thread.ofVirtual()
        .name("import-" + job.id())
        .start(
            () -> {
              execution.carryOut(job, archive, fates);
              held.tellNow(job);
            });
    return job.told();
  }

  /** Whoever ordered it has been asked for leave; the archive speaks as whoever sent it. */
  private void carryOutAsOrdered(ImportJob job) {
    try {
      var _ = startHere(job.by(), job);
    } catch (Refused refused) {
      String why = sentence(refused);
      database.inStudioForUpkeep(
          job.studio(),
          in -> {
            new ImportJobs(in).refuse(job.id(), server, why);
            return why;
          });
    }
  }

  private static String sentence(Refused refused) {
    return switch (refused.refusal()) {
      case Refusal.Clash(String what) -> what;
      case Refusal.NotAllowed(String what) -> what;
      default -> "The studio is no longer there for you.";
    };
  }

  private Told order(Caller caller, StudioId studio, ImportJobs.Job found) {
    ImportPlan plan = told(found).plan().orElseThrow(() -> notPlanned(told(found)));
    boolean isOrdered =
        database.inStudio(
            studio,
            caller.asker(),
            in -> {
              ImportChecking.mayBring(in, plan.what());
              ImportJobs jobs = new ImportJobs(in);
              jobs.wake();
              return jobs.order(found.id());
            });
    if (!isOrdered) {
      throw notPlanned(told(find(caller, studio, found.id())));
    }
    return taken(caller, studio, found.id());
  }

  /** An order that is not taken soon still stands. */
  private Told taken(Caller caller, StudioId studio, String id) {
    long end = System.nanoTime() + ORDER_TAKEN.toNanos();
    ImportJobs.Job now = find(caller, studio, id);
    try {
      while (now.isOrdered() && System.nanoTime() < end) {
        Thread.sleep(BETWEEN_LOOKS);
        now = find(caller, studio, id);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    now.refusal()
        .ifPresent(
            why -> {
              throw new Refused(new Refusal.Clash(why));
            });
    return told(now);
  }

  private static Refused notPlanned(Told told) {
    return new Refused(
        new Refusal.Clash(
            "Only an import that is planned can be started; this one is %s."
                .formatted(told.state().name().toLowerCase(Locale.ROOT))));
  }

  private static void mustNotClash(ImportJob job, Fates fates) {
    boolean clashes =
        fates.of().values().stream().anyMatch(of -> of.containsValue(ImportPlan.Fate.CLASHING));
    if (clashes && job.clashes() == Clashes.REFUSE) {
      throw new Refused(
          new Refusal.Clash(
              "Things of the archive clash with what is here; its plan names them. Send it again"
                  + " with clashes=copy to have them beside what is here, or with clashes=keep to"
                  + " leave what is here as it is."));
    }
  }

  /**
   * Forgets an import; one that is being carried out ends before anything of it is kept.
   *
   * @throws Refused Clash where it was brought in, or is about to be
   */
  public void discard(Caller caller, StudioId studio, String id) {
    var _ = find(caller, studio, id);
    // Its server keeps nothing of what is not in the database any more.
    boolean isGone =
        database.inStudio(
            studio,
            caller.asker(),
            in -> {
              ImportJobs jobs = new ImportJobs(in);
              jobs.wake();
              return jobs.discard(id);
            });
    if (!isGone) {
      throw new Refused(
          new Refusal.Clash("The archive has been brought in; that cannot be stopped any more."));
    }
    held.find(id)
        .ifPresent(
            job -> {
              var _ = job.stop();
              awaitEnd(job);
              receiving.letGo(job);
            });
  }

  private static void awaitEnd(ImportJob job) {
    try {
      CountDownLatch end =
          switch (job.told().state()) {
            case CHECKING -> job.checked();
            case RUNNING, COMMITTING -> job.over();
            case PLANNED, FAULTY, FAILED, IMPORTED -> new CountDownLatch(0);
          };
      if (!end.await(ENDING.toMillis(), TimeUnit.MILLISECONDS)) {
        LOG.warn("The import {} takes long to end", job.id());
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Ends whatever is being checked or carried out, before anything of it is kept, and says so. */
  @Override
  public void close() {
    List<ImportJob> all = held.all();
    all.forEach(ImportJob::endWithServer);
    all.forEach(Importing::awaitEnd);
    held.close();
    all.stream().filter(job -> !job.isAtWork()).forEach(ImportJob::letFilesGo);
  }
}
