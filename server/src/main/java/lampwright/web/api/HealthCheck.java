package lampwright.web.api;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * One thing that the server needs. It is asked for by one at a time, however many want to know, and
 * who asks waits for 2 seconds at most: what hangs is a reason too.
 */
public final class HealthCheck {

  private static final Logger LOG = LoggerFactory.getLogger(HealthCheck.class);
  private static final Duration LONGEST = Duration.ofSeconds(2);

  private final String name;
  private final Supplier<Optional<String>> ask;
  private CompletableFuture<Optional<String>> asked =
      CompletableFuture.completedFuture(Optional.empty());
  private long askedAtNanos = System.nanoTime();

  /**
   * @param name what it is
   * @param ask gives the reason why it cannot be used and what to do, in sentences for whoever runs
   *     the server; empty where it can
   */
  public HealthCheck(String name, Supplier<Optional<String>> ask) {
    this.name = name;
    this.ask = ask;
  }

  /** What it is. */
  public String name() {
    return name;
  }

  /** Begins to ask, if nobody does. */
  synchronized CompletableFuture<Optional<String>> begin() {
    if (asked.isDone()) {
      CompletableFuture<Optional<String>> answer = new CompletableFuture<>();
      asked = answer;
      askedAtNanos = System.nanoTime();
      Thread.ofVirtual().name("health-" + name).start(() -> answer.complete(answer()));
    }
    return asked;
  }

  private Optional<String> answer() {
    try {
      return ask.get();
    } catch (RuntimeException e) {
      LOG.warn("Whether {} can be used is not known", name, e);
      return Optional.of("It could not be looked at; the log says why.");
    }
  }

  /** The reason why it cannot be used. */
  Optional<String> await(CompletableFuture<Optional<String>> begun) {
    try {
      return begun.get(LONGEST.toMillis(), TimeUnit.MILLISECONDS);
    } catch (TimeoutException e) {
      return Optional.of(
          "It has not answered for %d seconds. See whether it hangs."
              .formatted(Math.max(LONGEST.toSeconds(), sinceAsked().toSeconds())));
    } catch (ExecutionException e) {
      throw new IllegalStateException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Optional.of("The server is being stopped.");
    }
  }

  private synchronized Duration sinceAsked() {
    return Duration.ofNanos(System.nanoTime() - askedAtNanos);
  }
}
