package lampwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampwright.picture.Drawn;
import lampwright.web.Documents;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Kills the server, its PostgreSQL, or both while four writers write, and starts it again. */
@LongProgram
class KilledServerTest {

  private static final String SETUPS = "/api/studios/demo/setups";
  private static final String KITS = "/api/studios/demo/kits";
  private static final int MOST_KITS = 180;
  private static final int WRITERS = 4;
  private static final int ENOUGH = 24;

  @RegisterExtension final ReachableFolder folder = new ReachableFolder();

  /** What the server has acknowledged: the address of each setup and the word it is found by. */
  private final Map<String, String> acknowledged = new ConcurrentHashMap<>();

  /** Writes until the server is gone; counts the latch down with each acknowledged setup. */
  private Thread writer(Visitor author, String name, CountDownLatch written) {
    return Thread.ofVirtual()
        .name(name)
        .start(
            () -> {
              for (int i = 0; ; i++) {
                // One word, so that a search for it means this setup and no other.
                String word = "mark" + name + "x" + i;
                try {
                  HttpResponse<String> answer =
                      author.post(SETUPS, Documents.json(Documents.setup("Written " + word)));
                  if (answer.statusCode() == 201) {
                    acknowledged.put(answer.headers().firstValue("Location").orElseThrow(), word);
                    written.countDown();
                  }
                } catch (UncheckedIOException gone) {
                  return;
                }
              }
            });
  }

  private void writeUntilKilled(ServerProcess server, String round, Killing killing)
      throws InterruptedException {
    Visitor author = server.author();
    CountDownLatch written = new CountDownLatch(ENOUGH);
    List<Thread> writers = new ArrayList<>();
    for (int i = 0; i < WRITERS; i++) {
      writers.add(writer(author, round + "w" + i, written));
    }
    assertTrue(written.await(60, TimeUnit.SECONDS), "Too few were written: " + acknowledged.size());
    killing.kill();
    for (Thread writer : writers) {
      assertTrue(writer.join(java.time.Duration.ofSeconds(60)), "A writer does not end");
    }
  }

  /** Ends something by force. */
  private interface Killing {
    void kill() throws InterruptedException;
  }

  private void everythingAcknowledgedIsThereAndFound(ServerProcess server) {
    Visitor author = server.author();
    untilReady(author);
    acknowledged.forEach(
        (location, word) -> {
          assertEquals(200, author.get(location).statusCode(), location);
          List<?> found = Visitor.items(author.get(SETUPS + "?q=" + word));
          assertEquals(
              1L,
              found.stream()
                  .filter(item -> location.endsWith(Told.at(item, "id").toString()))
                  .count(),
              word);
        });
  }

  private static void untilReady(Visitor visitor) {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
    while (visitor.get("/health/ready").statusCode() != 200) {
      assertTrue(System.nanoTime() < end, visitor.get("/health/ready").body());
    }
  }

  @Test
  void whatWasAcknowledgedOutlivesTheServerItsDatabaseAndBoth() throws Exception {
    Path data = folder.resolve("data");
    ServerProcess first = ServerProcess.startAgain(data);
    writeUntilKilled(first, "a", first::kill);

    ServerProcess second = ServerProcess.start(data);
    everythingAcknowledgedIsThereAndFound(second);
    ProcessHandle postgres = second.postgres().orElseThrow();
    writeUntilKilled(
        second,
        "b",
        () -> {
          postgres.destroyForcibly();
          second.kill();
        });

    try (ServerProcess third = ServerProcess.start(data)) {
      everythingAcknowledgedIsThereAndFound(third);
      ProcessHandle last = third.postgres().orElseThrow();
      assertEquals(0, third.stop(), "Being told to stop is no failure");
      last.onExit().get(60, TimeUnit.SECONDS);
    }
    String checked = ServerProcess.checkIndex(data, Map.of());
    assertTrue(checked.startsWith("0: The index equals the database: "), checked);
  }

  @Test
  void aServerThatIsKilledWhilePicturesArriveLeavesNoRowWithoutItsFileAndNoFileWithoutARow()
      throws Exception {
    Path data = folder.resolve("data");
    Path pictures = data.resolve("pictures");
    ServerProcess first = ServerProcess.startAgain(data);
    Visitor author = first.author();
    String setup =
        author
            .post(SETUPS, Documents.json(Documents.setup("Pictured")))
            .headers()
            .firstValue("Location")
            .orElseThrow();
    String path = setup + "/pictures";
    Upload half = Upload.begin(first.address(), author, path, photograph(0));
    half.awaitFileIn(pictures);
    CountDownLatch some = new CountDownLatch(6);
    Thread adding =
        Thread.ofVirtual()
            .start(
                () -> {
                  try {
                    for (int i = 1; ; i++) {
                      assertEquals(201, Upload.whole(author, path, photograph(i)).statusCode());
                      some.countDown();
                    }
                  } catch (UncheckedIOException gone) {
                    // Killed.
                  }
                });
    assertTrue(some.await(60, TimeUnit.SECONDS));
    first.kill();
    half.close();
    assertTrue(adding.join(java.time.Duration.ofSeconds(60)), "The writer does not end");

    try (ServerProcess second = ServerProcess.start(data)) {
      Visitor again = second.author();
      untilReady(again);
      List<?> rows = Visitor.items(again.get(path + "?limit=100"));
      assertTrue(rows.size() >= 6, "acknowledged pictures are lost: " + rows.size());
      Set<String> hashes = new TreeSet<>();
      for (Object row : rows) {
        hashes.add(Told.at(row, "sha256").toString());
        assertEquals(200, again.get(path + "/" + Told.at(row, "id") + "/original").statusCode());
      }
      assertEquals(hashes, filesIn(pictures));
      Upload.awaitNothingIn(pictures);
    }
  }

  private static byte[] photograph(int shade) {
    return Drawn.jpeg(Drawn.image(320, 240, (x, y) -> (x * (shade + 3) * 5) ^ (y << 9)), 0.9);
  }

  /** The hashes that the names of the files begin with. */
  private static Set<String> filesIn(Path pictures) throws IOException {
    try (Stream<Path> tree = Files.walk(pictures)) {
      return tree.filter(Files::isRegularFile)
          .map(file -> String.valueOf(file.getFileName()))
          .filter(name -> !name.endsWith(".lock"))
          .map(name -> name.replaceFirst("\\..*", ""))
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }

  /**
   * What was committed and not answered is sent again, as a program does that had no answer: each
   * thing is there once.
   */
  @Test
  void aRetryUnderItsKeyAfterAKillMakesNothingTwice() throws Exception {
    Path data = folder.resolve("data");
    Map<String, String> sent = new ConcurrentHashMap<>();
    ServerProcess first = ServerProcess.startAgain(data);
    Visitor author = first.author();
    CountDownLatch written = new CountDownLatch(ENOUGH);
    List<Thread> writers = new ArrayList<>();
    for (int i = 0; i < WRITERS; i++) {
      writers.add(keyedWriter(author, "k" + i, sent, written));
    }
    assertTrue(written.await(60, TimeUnit.SECONDS), "Too few were written");
    first.kill();
    for (Thread writer : writers) {
      assertTrue(writer.join(java.time.Duration.ofSeconds(60)), "A writer does not end");
    }

    try (ServerProcess second = ServerProcess.start(data)) {
      Visitor again = second.author();
      untilReady(again);
      sent.forEach((key, name) -> assertEquals(201, keyed(again, key, name).statusCode(), name));
      List<Object> names =
          Visitor.items(again.get(KITS)).stream()
              .map(kit -> Told.at(kit, "name"))
              .filter(sent::containsValue)
              .toList();
      assertEquals(sent.size(), names.size());
      assertEquals(sent.size(), Set.copyOf(names).size());
    }
  }

  private static HttpResponse<String> keyed(Visitor author, String key, String name) {
    return author
        .with("Idempotency-Key", "\"" + key + "\"")
        .post(KITS, Documents.json(Documents.kit(name)));
  }

  private static Thread keyedWriter(
      Visitor author, String writer, Map<String, String> sent, CountDownLatch written) {
    return Thread.ofVirtual()
        .start(
            () -> {
              for (int i = 0; i < MOST_KITS / WRITERS; i++) {
                String key = writer + "-" + i;
                sent.put(key, "Written " + key);
                try {
                  keyed(author, key, "Written " + key);
                  written.countDown();
                } catch (UncheckedIOException gone) {
                  return;
                }
              }
            });
  }
}
