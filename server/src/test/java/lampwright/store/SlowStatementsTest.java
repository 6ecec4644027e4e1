package lampwright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.read.ListAppender;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import org.jooq.impl.DSL;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.slf4j.LoggerFactory;

class SlowStatementsTest {

  @RegisterExtension static final TestDatabase database = new TestDatabase();

  private final Logger log = (Logger) LoggerFactory.getLogger("lampwright.store.slow");
  private final ListAppender<ILoggingEvent> lines = new ListAppender<>();
  private final DatabaseWatch watch = new DatabaseWatch(Duration.ofMillis(300), Optional.empty());

  @BeforeEach
  void listen() {
    lines.start();
    log.addAppender(lines);
  }

  @AfterEach
  void listenNoMore() {
    log.detachAppender(lines);
  }

  private Database open(int connections) {
    return new Database(database.where(), connections, Clock.systemUTC(), watch);
  }

  private static int sleep(Transaction in, double seconds, String secret) {
    return in.sql()
        .select(DSL.field("pg_sleep({0})", Object.class, DSL.val(seconds)), DSL.val(secret))
        .fetch()
        .size();
  }

  @Test
  void aSlowStatementLeavesOneLineWithoutItsValues() {
    try (Database store = open(1)) {
      // The first connection may take its time, which is another matter.
      store.check();
      store.anonymous(in -> sleep(in, 0, "planted") + sleep(in, 0.5, "planted"));
    }
    // The log is the whole process's, in which other tests take their time too.
    List<ILoggingEvent> ours =
        lines.list.stream()
            .filter(event -> event.getFormattedMessage().contains("pg_sleep"))
            .toList();
    assertEquals(1, ours.size(), lines.list.toString());
    assertEquals(1, watch.slowStatements());
    String line = ours.getFirst().getFormattedMessage();
    assertTrue(
        line.matches("A statement took \\d{3,} ms \\(1 rows, transaction of nobody\\): select .*"),
        line);
    assertTrue(line.contains("pg_sleep(") && line.contains("?"), line);
    assertFalse(line.contains("planted") || line.contains("0.5"), line);
    assertEquals(Level.WARN, ours.getFirst().getLevel());
  }

  @Test
  void whoWaitsLongForAConnectionIsToldOf() {
    CountDownLatch begun = new CountDownLatch(1);
    try (Database store = open(1)) {
      CompletableFuture<Integer> holder =
          CompletableFuture.supplyAsync(
              () ->
                  store.anonymous(
                      in -> {
                        begun.countDown();
                        return sleep(in, 0.8, "");
                      }));
      awaitThat(begun);
      store.check();
      assertEquals(1, holder.join());
    }
    assertEquals(1, watch.slowConnections());
    assertTrue(
        lines.list.stream()
            .anyMatch(
                line ->
                    line.getFormattedMessage()
                        .matches("A transaction of nobody waited \\d{3,} ms for a connection")),
        lines.list.toString());
  }

  private static void awaitThat(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }
}
