package lampwright.search;

import static lampwright.search.SetupIndexTest.total;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/** A new index that somebody ordered, while the one that is there is whole. */
@Timeout(60)
@Isolated("It looks at states that last for moments.")
class OrderedRebuildTest {

  private static final Duration LONG = Duration.ofSeconds(30);
  private static final int SETUPS = 250;

  @TempDir Path folder;

  private final FollowerTest.Log log = new FollowerTest.Log();
  private SetupIndex index;
  private Follower follower;

  @BeforeEach
  void aWholeIndexFollows() throws InterruptedException {
    for (int i = 1; i <= SETUPS; i++) {
      log.put(FollowerTest.entry("setup-" + i, 1, "Pier"));
    }
    index = SetupIndex.open(folder, "database");
    follower = Follower.start(index, log);
    assertTrue(follower.await(log.newest(), LONG));
    waitFor(() -> follower.state() instanceof FollowerState.Ready);
    log.gate = new CountDownLatch(1);
  }

  @AfterEach
  void stop() {
    log.gate.countDown();
    follower.close();
    index.close();
  }

  private static void waitFor(BooleanSupplier fact) throws InterruptedException {
    FollowerTest.waitFor(fact);
  }

  private boolean isAtTheLast() {
    return follower.rebuild().filter(now -> now.done() == SETUPS - 1).isPresent();
  }

  @Test
  void searchesGoOnAndSeeChangesUntilTheNewOneIsWhole() throws InterruptedException {
    log.onEntry =
        entry -> {
          if (entry.setup().equals("setup-100")) {
            log.put(FollowerTest.entry("late", 1, "Crane"));
          }
        };
    assertTrue(follower.orderRebuild());
    assertFalse(follower.orderRebuild(), "One at a time");
    waitFor(this::isAtTheLast);
    IndexRebuild now = follower.rebuild().orElseThrow();
    assertEquals(SETUPS, now.total());
    assertTrue(now.mayStop());
    assertTrue(now.perSecond() > 0 && now.left().isPresent());
    assertEquals(new FollowerState.Ready(), follower.state(), "The server can serve");
    assertTrue(follower.awaitSetupRevision("demo", "late", 1, LONG), "Seen in the old one");
    assertEquals(SETUPS + 1, index.count("demo"));
    assertEquals(0, index.count("other"));

    log.gate.countDown();
    waitFor(() -> follower.rebuild().isEmpty());
    IndexRebuild.Past past = follower.lastRebuild().orElseThrow();
    assertEquals(IndexRebuild.Ending.FINISHED, past.ending());
    assertEquals(SETUPS, past.setups());
    assertTrue(follower.await(log.newest(), LONG));
    assertEquals(1, total(index, "crane"), "and in the new one, which began before it");
    assertEquals(SETUPS + 1, index.count("demo"));
  }

  @Test
  void aStoppedOneLeavesTheOldOneInUse() throws InterruptedException {
    int made = log.rebuilds;
    assertFalse(follower.stopRebuild(), "There is none yet");
    assertTrue(follower.orderRebuild());
    waitFor(this::isAtTheLast);
    assertTrue(follower.stopRebuild());
    log.gate.countDown();
    waitFor(() -> follower.rebuild().isEmpty());
    assertEquals(IndexRebuild.Ending.STOPPED, follower.lastRebuild().orElseThrow().ending());
    assertTrue(index.needsRebuild().isEmpty());
    log.put(FollowerTest.entry("late", 1, "Crane"));
    assertTrue(follower.await(log.newest(), LONG));
    assertEquals(SETUPS + 1, index.count("demo"));
    assertEquals(made + 1, log.rebuilds, "It is not tried again");
  }

  @Test
  void oneThatFailsIsGivenUpAndSearchesGoOn() throws InterruptedException {
    log.onEntry =
        _ -> {
          throw new IllegalStateException("The database went away.");
        };
    assertTrue(follower.orderRebuild());
    waitFor(
        () ->
            follower.lastRebuild().orElseThrow().ending() == IndexRebuild.Ending.FAILED
                && follower.rebuild().isEmpty());
    log.put(FollowerTest.entry("late", 1, "Crane"));
    assertTrue(follower.await(log.newest(), LONG));
    assertEquals(SETUPS + 1, index.count("demo"));
  }
}
