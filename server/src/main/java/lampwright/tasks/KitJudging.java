package lampwright.tasks;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.BooleanSupplier;
import lampwright.engine.unit.Stops;
import lampwright.gear.Kit;
import lampwright.people.StudioId;
import lampwright.search.filter.Filter;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.setup.buildable.Demand;
import lampwright.setup.buildable.DemandCatalogue;
import lampwright.setup.buildable.Judge;
import lampwright.setup.buildable.SearchedReach;
import lampwright.setup.buildable.Verdict;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FiguresComputation;
import lampwright.store.Database;
import lampwright.store.DatabaseUnavailable;
import lampwright.store.Setups;
import lampwright.store.StoredSetup;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * How far off the studio's setups are for one of its kits, in hundredths of a stop. What was judged
 * is remembered by the kit as it was, with all of its gear, and by each setup's revision: a changed
 * setup is judged again by itself, a changed kit again with all.
 */
final class KitJudging implements AutoCloseable {

  private static final Logger LOG = LoggerFactory.getLogger(KitJudging.class);

  /** What a request may spend on judging; the rest is judged in the background. */
  static final Duration LONGEST = Duration.ofMillis(1_500);

  /** What the full search of one setup may take there; what takes longer stays untold. */
  private static final Duration LONGEST_SEARCH = Duration.ofSeconds(10);

  private static final int READ_AT_ONCE = 100;
  private static final int MOST_REMEMBERED = 12;
  private static final int NEVER = Integer.MAX_VALUE;

  /** The full search took too long for it; it is not tried again before the setup changes. */
  private static final int UNTOLD = NEVER - 1;

  private final Database database;
  private final Map<Judged, Known> remembered = new LinkedHashMap<>(16, 0.75f, true);
  private volatile boolean closed;

  KitJudging(Database database) {
    this.database = database;
  }

  /**
   * What a kit comes to for the setups that somebody may see.
   *
   * @param hundredths of a stop by which it is off, of those that it makes at all
   * @param waiting how many are not judged yet
   */
  record Offs(Map<SetupId, Integer> hundredths, int waiting) {

    /** Whether a setup is made as a filter asks. */
    boolean passes(SetupId setup, Filter.Buildable filter) {
      return hundredths.getOrDefault(setup, NEVER) <= Math.round(filter.stops() * 100);
    }
  }

  private record Judged(StudioId studio, Kit kit) {}

  private record Judgement(int revision, int hundredths) {}

  /** What is known of a kit; who judges holds the lock. */
  private record Known(Map<SetupId, Judgement> of, ReentrantLock judging, AtomicBoolean goesOn) {

    static Known nothing() {
      return new Known(new ConcurrentHashMap<>(), new ReentrantLock(true), new AtomicBoolean());
    }
  }

  /**
   * What is asked.
   *
   * @param all whether these are all of the studio's setups
   */
  private record Task(Kit kit, Map<SetupId, Integer> revisions, boolean all) {}

  /**
   * How far off all setups are that the caller may see.
   *
   * @param kit its name, as {@link KitNames#locate} gave it
   * @param patience how long it may judge; with none it forgets no other kit either, and all that
   *     is not judged goes on in the background
   * @return empty where the studio has no such kit any more
   */
  Optional<Offs> find(Caller caller, StudioId studio, String kit, Duration patience) {
    Optional<Task> task =
        database.inStudio(
            studio,
            caller.asker(),
            in -> {
              Sight sight = Sight.ask(in);
              return new KitNames(in)
                  .find(kit)
                  .map(
                      found ->
                          new Task(
                              found, new Setups(in).revisions(sight.standings()), sight.isWhole()));
            });
    return task.map(asked -> offs(caller, studio, asked, patience));
  }

  private Offs offs(Caller caller, StudioId studio, Task task, Duration patience) {
    Judged judged = new Judged(studio, task.kit());
    if (patience.isZero() && isOneTooMany(judged)) {
      return new Offs(Map.of(), task.revisions().size());
    }
    Known known = known(judged);
    if (task.all()) {
      // What was deleted meanwhile is forgotten.
      known.of().keySet().retainAll(task.revisions().keySet());
    }
    BooleanSupplier stop = after(patience);
    try {
      // Two who ask for one kit at a time do not judge it twice.
      if (known.judging().tryLock(patience.toMillis(), TimeUnit.MILLISECONDS)) {
        try {
          judge(caller, studio, task, known, stop);
        } finally {
          known.judging().unlock();
        }
        if (stop.getAsBoolean()
            && !open(task, known).isEmpty()
            && known.goesOn().compareAndSet(false, true)) {
          Thread.ofPlatform()
              .name("kit-judging")
              .daemon()
              .start(() -> goOn(caller, studio, task, known));
        }
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    Map<SetupId, Integer> offs = new HashMap<>();
    int waiting = 0;
    for (Map.Entry<SetupId, Integer> setup : task.revisions().entrySet()) {
      Judgement judgement = known.of().get(setup.getKey());
      if (judgement == null
          || judgement.revision() != setup.getValue()
          || judgement.hundredths() == UNTOLD) {
        waiting++;
      } else if (judgement.hundredths() != NEVER) {
        offs.put(setup.getKey(), judgement.hundredths());
      }
    }
    return new Offs(offs, waiting);
  }

  /** One setup at a time, so that a request comes in between. */
  private void goOn(Caller caller, StudioId studio, Task task, Known known) {
    try {
      for (SetupId setup : open(task, known)) {
        if (closed) {
          return;
        }
        known.judging().lock();
        try {
          judge(caller, studio, List.of(setup), task, known, after(LONGEST_SEARCH));
          int revision = task.revisions().getOrDefault(setup, 0);
          if (!closed) {
            known
                .of()
                .merge(
                    setup,
                    new Judgement(revision, UNTOLD),
                    (had, untold) -> had.revision() == revision ? had : untold);
          }
        } finally {
          known.judging().unlock();
        }
      }
    } catch (DatabaseUnavailable e) {
      LOG.warn("Judging goes on when somebody asks again", e);
    } finally {
      known.goesOn().set(false);
    }
  }

  private BooleanSupplier after(Duration longest) {
    long start = System.nanoTime();
    return () -> closed || System.nanoTime() - start > longest.toNanos();
  }

  /** Ends what goes on in the background, before the database is closed. */
  @Override
  public void close() {
    closed = true;
    List<Known> all;
    synchronized (remembered) {
      all = List.copyOf(remembered.values());
    }
    for (Known known : all) {
      await(known);
    }
  }

  /** Whoever judges sees the end soon, and lets go. */
  private static void await(Known known) {
    known.judging().lock();
    try {
      LOG.debug("Nobody judges any more: {} setups were", known.of().size());
    } finally {
      known.judging().unlock();
    }
  }

  private boolean isOneTooMany(Judged judged) {
    synchronized (remembered) {
      return remembered.size() >= MOST_REMEMBERED && !remembered.containsKey(judged);
    }
  }

  private Known known(Judged judged) {
    synchronized (remembered) {
      Known known = remembered.computeIfAbsent(judged, _ -> Known.nothing());
      if (remembered.size() > MOST_REMEMBERED) {
        remembered.remove(remembered.keySet().iterator().next());
      }
      return known;
    }
  }

  private static List<SetupId> open(Task task, Known known) {
    List<SetupId> open = new ArrayList<>();
    task.revisions()
        .forEach(
            (setup, revision) -> {
              Judgement judgement = known.of().get(setup);
              if (judgement == null || judgement.revision() != revision) {
                open.add(setup);
              }
            });
    return open;
  }

  private void judge(Caller caller, StudioId studio, Task task, Known known, BooleanSupplier stop) {
    List<SetupId> open = open(task, known);
    for (int from = 0; from < open.size() && !stop.getAsBoolean(); from += READ_AT_ONCE) {
      List<SetupId> some = open.subList(from, Math.min(open.size(), from + READ_AT_ONCE));
      judge(caller, studio, some, task, known, stop);
    }
  }

  private void judge(
      Caller caller,
      StudioId studio,
      List<SetupId> some,
      Task task,
      Known known,
      BooleanSupplier stop) {
    // Computing holds no connection.
    List<StoredSetup> stored =
        List.copyOf(
            database.inStudio(studio, caller.asker(), in -> new Setups(in).listOf(some)).values());
    judge(stored, task.kit(), known.of(), stop);
  }

  private static void judge(
      List<StoredSetup> stored, Kit kit, Map<SetupId, Judgement> known, BooleanSupplier stop) {
    List<StoredSetup> read = new ArrayList<>();
    List<SetupDocument> documents = new ArrayList<>();
    List<Figures> figures = new ArrayList<>();
    List<Demand> demands = new ArrayList<>();
    for (StoredSetup setup : stored) {
      Optional<SetupDocument> document =
          StoredDocuments.find(SetupDocument.FORM, setup.document(), setup.id());
      if (document.isEmpty()) {
        known.put(setup.id(), new Judgement(setup.revision(), NEVER));
      } else if (!stop.getAsBoolean()) {
        Figures computed = FiguresComputation.of(document.get());
        read.add(setup);
        documents.add(document.get());
        figures.add(computed);
        demands.add(Demand.of(document.get(), computed));
      }
    }
    Judge judge = Judge.of(kit, DemandCatalogue.of(demands));
    List<Integer> slow = new ArrayList<>();
    for (int i = 0; i < read.size() && !stop.getAsBoolean(); i++) {
      Optional<Verdict> verdict = judge.find(i, Stops.ZERO);
      if (verdict.isPresent()) {
        known.put(read.get(i).id(), judgement(read.get(i), verdict.get()));
      } else {
        slow.add(i);
      }
    }
    for (int i : slow) {
      StoredSetup setup = read.get(i);
      new SearchedReach(documents.get(i), figures.get(i), kit)
          .find(stop)
          .ifPresent(verdict -> known.put(setup.id(), judgement(setup, verdict)));
    }
  }

  private static Judgement judgement(StoredSetup setup, Verdict verdict) {
    return new Judgement(setup.revision(), hundredths(verdict));
  }

  private static int hundredths(Verdict verdict) {
    return switch (verdict) {
      case Verdict.Within _ -> 0;
      case Verdict.Beyond(Stops off) -> (int) Math.round(off.value() * 100);
      case Verdict.Never _ -> NEVER;
    };
  }
}
