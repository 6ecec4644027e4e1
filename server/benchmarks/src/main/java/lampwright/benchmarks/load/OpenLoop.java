package lampwright.benchmarks.load;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ThreadLocalRandom;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.LockSupport;
import org.HdrHistogram.ConcurrentHistogram;
import org.HdrHistogram.Histogram;

/**
 * Asks at fixed times, whether or not earlier answers have come, and measures each wait from the
 * time at which the request was due. So a server that stands still for a second is charged with
 * every request of that second, which a closed loop leaves out ("coordinated omission", Gil Tene).
 */
final class OpenLoop {

  private static final long LONGEST_NANOS = Duration.ofSeconds(60).toNanos();

  private OpenLoop() {}

  /**
   * What is asked.
   *
   * @param requests whole requests, of which one is drawn each time
   * @param status what the answer must have
   */
  record Asked(int port, List<byte[]> requests, int status) {}

  /** How long the answers took, in milliseconds. */
  record Waits(Histogram nanos, long failures, double perSecond) {

    double millis(double percentile) {
      return nanos.getValueAtPercentile(percentile) / 1e6;
    }

    String line() {
      return String.format(Locale.ROOT, "%.2f | %.2f | %.2f", millis(50), millis(99), millis(99.9));
    }
  }

  /**
   * Runs for a while.
   *
   * @param perSecond requests a second
   * @param connections so many can wait at once; where all do, the next waits, and its wait counts
   */
  static Waits run(Asked asked, double perSecond, int connections, Duration time)
      throws IOException, InterruptedException {
    Histogram nanos = new ConcurrentHistogram(LONGEST_NANOS, 3);
    AtomicLong next = new AtomicLong();
    AtomicLong failures = new AtomicLong();
    double between = 1e9 / perSecond;
    long many = Math.max(1, (long) (perSecond * time.toNanos() / 1e9));
    long begin = System.nanoTime() + Duration.ofMillis(50).toNanos();
    List<Thread> askers = new ArrayList<>();
    for (int i = 0; i < connections; i++) {
      Connection connection = new Connection(asked.port());
      askers.add(
          Thread.ofPlatform()
              .name("open-loop-" + i)
              .start(
                  () -> {
                    for (long n = next.getAndIncrement(); n < many; n = next.getAndIncrement()) {
                      long due = begin + (long) (n * between);
                      awaitTime(due);
                      if (!isAnswered(connection, asked)) {
                        failures.incrementAndGet();
                      }
                      nanos.recordValue(Math.clamp(System.nanoTime() - due, 1, LONGEST_NANOS));
                    }
                    close(connection);
                  }));
    }
    for (Thread asker : askers) {
      asker.join();
    }
    return new Waits(nanos, failures.get(), many / ((System.nanoTime() - begin) / 1e9));
  }

  /** How many a second are answered where each connection asks again as soon as it can. */
  static double saturate(Asked asked, int connections, Duration time)
      throws IOException, InterruptedException {
    AtomicLong answered = new AtomicLong();
    long begin = System.nanoTime();
    long end = begin + time.toNanos();
    List<Thread> askers = new ArrayList<>();
    for (int i = 0; i < connections; i++) {
      Connection connection = new Connection(asked.port());
      askers.add(
          Thread.ofPlatform()
              .start(
                  () -> {
                    while (System.nanoTime() < end) {
                      if (isAnswered(connection, asked)) {
                        answered.incrementAndGet();
                      }
                    }
                    close(connection);
                  }));
    }
    for (Thread asker : askers) {
      asker.join();
    }
    return answered.get() / ((System.nanoTime() - begin) / 1e9);
  }

  private static void awaitTime(long due) {
    for (long left = due - System.nanoTime(); left > 0; left = due - System.nanoTime()) {
      LockSupport.parkNanos(left);
    }
  }

  private static boolean isAnswered(Connection connection, Asked asked) {
    byte[] request =
        asked.requests().get(ThreadLocalRandom.current().nextInt(asked.requests().size()));
    try {
      return connection.ask(request) == asked.status();
    } catch (IOException e) {
      try {
        connection.renew();
      } catch (IOException gone) {
        e.addSuppressed(gone);
      }
      return false;
    }
  }

  private static void close(Connection connection) {
    try {
      connection.close();
    } catch (IOException e) {
      // It has served its purpose.
    }
  }
}
