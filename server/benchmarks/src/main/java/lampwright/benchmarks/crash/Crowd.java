package lampwright.benchmarks.crash;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;

/** Many clients that write and read while something happens, and what they were told. */
final class Crowd {

  private static final int WRITERS = 24;
  private static final int READERS = 4;

  private final Entry entry;
  private final String word;
  private final AtomicInteger number = new AtomicInteger();
  private final List<String> acknowledged = new CopyOnWriteArrayList<>();

  Crowd(Entry entry, String word) {
    this.entry = entry;
    this.word = word;
  }

  /** What happens meanwhile. */
  interface Happening {
    Object happens() throws Exception;
  }

  private interface Asking {
    Api.Answer ask() throws IOException;
  }

  /**
   * What was answered.
   *
   * @param longestMillis that somebody waited for an answer
   * @param withoutHint how many 503 did not say when to come again
   */
  record Seen(
      Map<String, Integer> writes,
      Map<String, Integer> reads,
      long longestMillis,
      int withoutHint) {

    private static final long MOST_MILLIS = 70_000;

    String words() {
      return "writes %s, reads %s, the longest wait %d ms, 503 without Retry-After: %d"
          .formatted(writes, reads, longestMillis, withoutHint);
    }

    /** Only what a client can act on, and soon. */
    boolean isClear() {
      return Set.of("201", "503").containsAll(writes.keySet())
          && Set.of("200", "503").containsAll(reads.keySet())
          && withoutHint == 0
          && longestMillis < MOST_MILLIS;
    }
  }

  /** Writes and reads until something is over. */
  Seen during(Happening happening) throws Exception {
    String before = entry.mustWrite("Before " + word);
    Map<String, Integer> writes = new ConcurrentSkipListMap<>();
    Map<String, Integer> reads = new ConcurrentSkipListMap<>();
    AtomicLong longest = new AtomicLong();
    AtomicInteger withoutHint = new AtomicInteger();
    AtomicBoolean stop = new AtomicBoolean();
    try (ExecutorService clients = Executors.newVirtualThreadPerTaskExecutor()) {
      for (int i = 0; i < WRITERS + READERS; i++) {
        boolean writing = i < WRITERS;
        var _ =
            clients.submit(
                () -> {
                  while (!stop.get()) {
                    note(
                        writing ? writes : reads,
                        longest,
                        withoutHint,
                        writing ? this::write : () -> entry.api().get(before));
                    pause();
                  }
                });
      }
      try {
        var _ = happening.happens();
      } finally {
        stop.set(true);
      }
    }
    return new Seen(new TreeMap<>(writes), new TreeMap<>(reads), longest.get(), withoutHint.get());
  }

  private static void pause() {
    try {
      Thread.sleep(50);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private Api.Answer write() throws IOException {
    Api.Answer answer = entry.write("Written " + word + " x" + number.incrementAndGet());
    if (answer.status() == 201) {
      acknowledged.add(answer.location().orElseThrow());
    }
    return answer;
  }

  private static void note(
      Map<String, Integer> seen, AtomicLong longest, AtomicInteger withoutHint, Asking asking) {
    long began = System.nanoTime();
    String status;
    try {
      Api.Answer answer = asking.ask();
      status = Integer.toString(answer.status());
      if (answer.status() == 503 && !answer.headers().containsKey("retry-after")) {
        withoutHint.incrementAndGet();
      }
    } catch (IOException e) {
      status = e.getClass().getSimpleName();
    }
    longest.accumulateAndGet((System.nanoTime() - began) / 1_000_000, Math::max);
    seen.merge(status, 1, Integer::sum);
  }

  /** How much of what was acknowledged is there. */
  String kept(Entry now) throws IOException {
    return "%d of %d acknowledged are there".formatted(there(now), acknowledged.size());
  }

  /** Whether all of it is there, and the index finds it or soon does. */
  boolean isKept(Entry now) throws IOException, InterruptedException {
    int least = acknowledged.size();
    return there(now) == least && Stage.isInTime(Stage.until(() -> now.total(word) >= least));
  }

  private int there(Entry now) throws IOException {
    int there = 0;
    for (String address : acknowledged) {
      there += now.api().get(address).status() == 200 ? 1 : 0;
    }
    return there;
  }
}
