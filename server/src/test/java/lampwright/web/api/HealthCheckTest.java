package lampwright.web.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(30)
class HealthCheckTest {

  @Test
  void whatHangsIsAReasonAndIsAskedOnceHoweverManyWantToKnow() throws InterruptedException {
    CountDownLatch goOn = new CountDownLatch(1);
    AtomicInteger asked = new AtomicInteger();
    HealthCheck check =
        new HealthCheck(
            "lamp",
            () -> {
              asked.incrementAndGet();
              awaitWithout(goOn);
              return Optional.of("It is out.");
            });
    CompletableFuture<Optional<String>> first = check.begin();
    for (int i = 0; i < 100; i++) {
      assertSame(first, check.begin());
    }
    String reason = check.await(first).orElseThrow();
    assertTrue(reason.startsWith("It has not answered for "), reason);
    goOn.countDown();
    assertEquals(Optional.of("It is out."), first.join());
    assertEquals(1, asked.get());
    check.begin().join();
    assertEquals(2, asked.get(), "once it has answered it can be asked anew");
  }

  @Test
  void whatFailsIsAReason() {
    HealthCheck check =
        new HealthCheck(
            "lamp",
            () -> {
              throw new IllegalStateException("a secret");
            });
    String reason = check.await(check.begin()).orElseThrow();
    assertTrue(!reason.contains("secret") && reason.contains("the log says why"), reason);
  }

  private static void awaitWithout(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
