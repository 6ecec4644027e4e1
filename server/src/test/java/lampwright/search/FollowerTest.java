package lampwright.search;

import static lampwright.search.SetupIndexTest.total;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Timeout(180)
class FollowerTest {

  private static final Duration LONG = Duration.ofSeconds(60);

  @TempDir Path folder;

  private final Log log = new Log();
  private final List<Running> running = new ArrayList<>();

  private record Running(SetupIndex index, Follower follower) {}

  @AfterEach
  void stop() {
    for (Running each : running) {
      each.follower().close();
      each.index().close();
    }
    running.clear();
  }

  @Test
  void whatIsWrittenIsFoundOnceTheFollowerHasPassedIt() throws InterruptedException {
    start();
    Bookmark pier = log.put(entry("pier", 1, "Pier"));
    assertTrue(follower().await(pier, LONG));
    assertEquals(1, total(index(), "pier"));

    log.put(entry("pier", 2, "Crane"));
    assertTrue(follower().awaitSetupRevision("demo", "pier", 2, LONG));
    assertEquals(1, total(index(), "crane"));

    log.delete("pier", 2);
    assertTrue(follower().await(log.newest(), LONG));
    assertEquals(0, total(index(), ""));
    waitFor(() -> follower().state() instanceof FollowerState.Ready);
    assertEquals(Duration.ZERO, follower().lag());
  }

  @Test
  void theComparisonNamesWhatTheIndexLacksSaysOtherwiseOrHasTooMuch() throws InterruptedException {
    start();
    for (String setup : List.of("pier", "crane", "mole")) {
      log.put(entry(setup, 1, "Written of " + setup));
    }
    assertEquals(new IndexComparison(3, List.of(), List.of(), List.of()), compared());

    index().delete("demo", "pier", Change.ERASED);
    index().put(entry("crane", 1, "Written of something else"));
    index().put(entry("ghost", 1, "Written nowhere"));
    index().refresh();
    assertEquals(
        new IndexComparison(1, List.of("demo/pier"), List.of("demo/crane"), List.of("demo/ghost")),
        compared());
  }

  private IndexComparison compared() throws InterruptedException {
    return IndexComparison.of(index(), follower(), log, LONG);
  }

  @Test
  void aWaitThatIsTooShortIsAnsweredAllTheSame() throws InterruptedException {
    start();
    assertFalse(follower().await(new Bookmark(99, 99), Duration.ofMillis(20)));
    assertFalse(follower().awaitSetupRevision("demo", "nobody", 1, Duration.ofMillis(20)));
  }

  @Test
  void aMissingIndexIsBuiltFromTheDatabase() throws InterruptedException {
    for (int i = 0; i < 2_500; i++) {
      log.put(entry("s" + i, 1, "Pier"));
    }
    start();
    assertTrue(follower().await(log.newest(), LONG));
    assertTrue(index().needsRebuild().isEmpty());
    assertEquals(2_500, total(index(), "pier"));
  }

  @Test
  void aRestartGoesOnFromTheBookmark() throws InterruptedException {
    start();
    assertTrue(follower().await(log.put(entry("pier", 1, "Pier")), LONG));
    stop();
    int rebuilds = log.rebuilds;
    log.put(entry("crane", 1, "Crane"));
    start();
    assertTrue(follower().await(log.newest(), LONG));
    assertEquals(2, total(index(), ""));
    assertEquals(rebuilds, log.rebuilds);
  }

  @Test
  void aDamagedIndexIsBuiltAnew() throws Exception {
    start();
    assertTrue(follower().await(log.put(entry("pier", 1, "Pier")), LONG));
    stop();
    try (Stream<Path> all = Files.walk(folder)) {
      Path file = all.filter(path -> path.toString().endsWith(".cfs")).findFirst().orElseThrow();
      byte[] bytes = Files.readAllBytes(file);
      bytes[bytes.length / 2] ^= 1;
      Files.write(file, bytes);
    }
    start();
    assertTrue(follower().await(log.newest(), LONG));
    assertEquals(1, total(index(), "pier"));
    assertTrue(index().needsRebuild().isEmpty());
  }

  @Test
  void aGapInTheLogIsBridgedByARebuild() throws InterruptedException {
    start();
    assertTrue(follower().await(log.put(entry("pier", 1, "Pier")), LONG));
    stop();
    log.put(entry("pier", 2, "Crane"));
    log.prune();
    start();
    assertTrue(follower().awaitSetupRevision("demo", "pier", 2, LONG));
    assertEquals(1, total(index(), "crane"));
  }

  @Test
  void aSourceThatFailsIsAskedAgain() throws InterruptedException {
    log.broken.set(true);
    start();
    waitFor(() -> follower().state() instanceof FollowerState.Failed);
    Bookmark pier = log.put(entry("pier", 1, "Pier"));
    assertFalse(follower().await(pier, Duration.ofMillis(50)));
    assertTrue(follower().lag().isPositive());
    log.broken.set(false);
    assertTrue(follower().await(pier, LONG));
    assertEquals(1, total(index(), "pier"));

    log.broken.set(true);
    Bookmark crane = log.put(entry("crane", 1, "Crane"));
    waitFor(() -> follower().state() instanceof FollowerState.Failed);
    log.broken.set(false);
    assertTrue(follower().await(crane, LONG));
    assertEquals(2, total(index(), ""));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", ".nothing"})
  void aFailedCommitHealsAndNothingIsLost(String refused) throws InterruptedException {
    AtomicBoolean full = new AtomicBoolean();
    start(
        SetupIndex.open(
            folder, "catalogue", place -> new SetupIndexTest.Disk(place, full, refused)));
    Bookmark pier = log.put(entry("pier", 1, "Pier"));
    // Shown is not yet written: after a failure what was written last is shown until all is read
    // again.
    waitFor(() -> index().bookmark().equals(pier));
    full.set(true);
    log.put(entry("crane", 1, "Crane"));
    waitFor(() -> follower().state() instanceof FollowerState.Failed);
    assertEquals(1, total(index(), "pier"), "searches go on");
    full.set(false);
    waitFor(() -> follower().state() instanceof FollowerState.Ready);
    assertTrue(follower().await(log.newest(), LONG));
    assertEquals(2, total(index(), ""));
    waitFor(() -> index().bookmark().equals(log.newest()));
  }

  @Test
  void revisionsOutOfOrderLeaveTheNewest() throws InterruptedException {
    start();
    waitFor(() -> follower().state() instanceof FollowerState.Ready);
    log.append(entry("pier", 3, "Newest"));
    log.append(entry("pier", 1, "Oldest"));
    log.append(entry("pier", 2, "Older"));
    assertTrue(follower().await(log.newest(), LONG));
    assertEquals(1, total(index(), "newest"));
    assertEquals(1, total(index(), ""));
  }

  @Test
  void afterARandomHistoryWithRestartsTheIndexEqualsTheDatabase() throws InterruptedException {
    long seed = 77;
    Random random = new Random(seed);
    Map<String, Integer> revisions = new LinkedHashMap<>();
    start();
    for (int step = 0; step < 1_200; step++) {
      String setup = "s" + random.nextInt(40);
      int revision = revisions.merge(setup, 1, Integer::sum);
      if (random.nextInt(4) == 0) {
        log.delete(setup, revision);
      } else {
        log.put(entry(setup, revision, "Title" + revision + "x" + setup));
      }
      if (step % 300 == 299) {
        stop();
        start();
      }
    }
    assertTrue(follower().await(log.newest(), LONG));
    assertEquals(log.setups.size(), total(index(), ""), "seed " + seed);
    for (IndexEntry entry : log.setups.values()) {
      assertEquals(1, total(index(), "\"" + entry.title() + "\""), "seed " + seed);
    }
  }

  @Test
  void closingIsQuickEvenWhileARebuildRuns() throws InterruptedException {
    for (int i = 0; i < 10; i++) {
      log.put(entry("s" + i, 1, "Pier"));
    }
    log.gate = new CountDownLatch(1);
    start();
    waitFor(
        () ->
            follower().state() instanceof FollowerState.Rebuilding(long done, long total)
                && total == 10
                && done > 0);
    Thread closer = Thread.ofPlatform().daemon().name("closer").start(follower()::close);
    waitFor(() -> closer.getState() == Thread.State.TIMED_WAITING);
    log.gate.countDown();
    assertTrue(closer.join(LONG));
    assertTrue(index().needsRebuild().isPresent());
  }

  private void start() {
    start(SetupIndex.open(folder, "catalogue"));
  }

  private void start(SetupIndex index) {
    running.add(new Running(index, Follower.start(index, log)));
  }

  private SetupIndex index() {
    return running.getLast().index();
  }

  private Follower follower() {
    return running.getLast().follower();
  }

  static IndexEntry entry(String setup, int revision, String title) {
    return IndexEntry.of("demo", setup, revision, title).build();
  }

  static void waitFor(BooleanSupplier state) throws InterruptedException {
    long until = System.nanoTime() + LONG.toNanos();
    CountDownLatch never = new CountDownLatch(1);
    while (!state.getAsBoolean()) {
      assertTrue(System.nanoTime() < until, "the state did not come");
      assertFalse(never.await(2, TimeUnit.MILLISECONDS));
    }
  }

  /** A database that fits in memory. */
  static final class Log implements ChangeSource {
    final AtomicBoolean broken = new AtomicBoolean();
    final Map<String, IndexEntry> setups = new LinkedHashMap<>();
    private final List<Change> changes = new ArrayList<>();
    private Bookmark prunedUpTo = Bookmark.START;
    private long seq;
    volatile int rebuilds;
    volatile CountDownLatch gate = new CountDownLatch(0);
    volatile Consumer<IndexEntry> onEntry = _ -> {};

    synchronized Bookmark put(IndexEntry entry) {
      setups.put(entry.setup(), entry);
      return append(entry);
    }

    synchronized Bookmark append(IndexEntry entry) {
      changes.add(new Change.Kept(nextBookmark(), entry));
      return newest();
    }

    synchronized void delete(String setup, int revision) {
      setups.remove(setup);
      changes.add(new Change.Gone(nextBookmark(), "demo", setup, revision));
    }

    private Bookmark nextBookmark() {
      seq++;
      return new Bookmark(seq / 3, seq);
    }

    synchronized Bookmark newest() {
      return new Bookmark(seq / 3, seq);
    }

    synchronized void prune() {
      changes.clear();
      prunedUpTo = newest();
    }

    @Override
    public synchronized List<Change> after(Bookmark bookmark, int limit) {
      checkAlive();
      if (bookmark.compareTo(prunedUpTo) < 0) {
        throw new LogGap("pruned");
      }
      return changes.stream()
          .filter(change -> change.at().compareTo(bookmark) > 0)
          .limit(limit)
          .toList();
    }

    @Override
    public synchronized Everything everything() {
      checkAlive();
      rebuilds++;
      List<IndexEntry> all = List.copyOf(setups.values());
      Stream<IndexEntry> entries = all.stream().peek(entry -> passGate(entry, all));
      return new Everything(newest(), all.size(), entries);
    }

    private void passGate(IndexEntry entry, List<IndexEntry> all) {
      onEntry.accept(entry);
      if (entry.equals(all.getLast())) {
        try {
          assertTrue(gate.await(20, TimeUnit.SECONDS));
        } catch (InterruptedException e) {
          throw new IllegalStateException(e);
        }
      }
    }

    private void checkAlive() {
      if (broken.get()) {
        throw new IllegalStateException("The database is gone");
      }
    }
  }
}
