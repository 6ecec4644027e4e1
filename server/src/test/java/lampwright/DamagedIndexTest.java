package lampwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.SQLException;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampwright.web.Documents;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Files of the search index are damaged; nobody tells the server. */
class DamagedIndexTest {

  private static final String SETUPS = "/api/studios/demo/setups";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private enum Damage {
    CUT_OFF {
      @Override
      void doTo(FileChannel file) throws IOException {
        var _ = file.truncate(file.size() / 2);
      }
    },
    A_BYTE_TURNED_OVER {
      @Override
      void doTo(FileChannel file) throws IOException {
        long middle = file.size() / 2;
        ByteBuffer one = ByteBuffer.allocate(1);
        assertEquals(1, file.read(one, middle));
        one.put(0, (byte) ~one.get(0)).rewind();
        assertEquals(1, file.write(one, middle));
      }
    };

    abstract void doTo(FileChannel file) throws IOException;
  }

  private Set<String> before = Set.of();

  @BeforeEach
  void everySetupIsFound() throws SQLException {
    Visitor author = house.withToken("author@demo.example");
    HttpResponse<String> made =
        author.post(SETUPS, Documents.json(Documents.setup("Written before the damage")));
    assertEquals(201, made.statusCode(), made.body());
    before = awaitFound(written());
    assertTrue(before.size() > 5, before.toString());
  }

  @ParameterizedTest
  @EnumSource
  void anIndexThatWasDamagedWhileTheServerStoodStillIsMadeAnew(Damage damage) throws Exception {
    Path whole = generation();
    house.reopenAfter(() -> damage(damage));
    assertEquals(before, awaitFound(before));
    assertEquals(200, awaitReady().statusCode());
    assertFalse(Files.exists(whole), "the damaged files are gone");
    everythingThatIsWrittenNowIsFound();
  }

  @Test
  void anIndexThatIsCutOffWhileTheServerRunsIsMadeAnewAndMeanwhileNothingIsOurFault()
      throws Exception {
    Path whole = generation();
    damage(Damage.CUT_OFF);
    assertEquals(before, awaitFound(before));
    // What is found from memory alone does not mend it: somebody must ask for what is on the disk.
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
    Visitor author = house.withToken("author@demo.example");
    for (int i = 1; Files.exists(whole); i = i % 100 + 1) {
      assertTrue(System.nanoTime() < end, "The index is not made anew");
      searched(author.get(SETUPS + "?q=written&limit=" + i));
    }
    assertEquals(before, awaitFound(before));
    assertEquals(200, awaitReady().statusCode());
    everythingThatIsWrittenNowIsFound();
  }

  private static void everythingThatIsWrittenNowIsFound() throws SQLException {
    Visitor author = house.withToken("author@demo.example");
    HttpResponse<String> made =
        author.post(SETUPS, Documents.json(Documents.setup("Written after the damage")));
    assertEquals(201, made.statusCode(), made.body());
    Set<String> now = written();
    assertTrue(now.size() > 6, now.toString());
    assertEquals(now, awaitFound(now));
  }

  private static Path generation() throws IOException {
    try (Stream<Path> all = Files.list(house.data().resolve("index"))) {
      List<Path> generations = all.filter(Files::isDirectory).toList();
      assertEquals(1, generations.size(), generations.toString());
      return generations.getFirst();
    }
  }

  private static void damage(Damage damage) throws IOException {
    List<Path> files;
    try (Stream<Path> tree = Files.walk(generation())) {
      files =
          tree.filter(file -> file.toString().matches(".*\\.(cfs|fdt|tim|dvd)"))
              .filter(Files::isRegularFile)
              .toList();
    }
    assertFalse(files.isEmpty());
    for (Path file : files) {
      try (FileChannel channel =
          FileChannel.open(file, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
        damage.doTo(channel);
      }
    }
  }

  /** What the database holds, whatever the index says. */
  private static Set<String> written() throws SQLException {
    return new TreeSet<>(
        house
            .database()
            .sqlAsSuperuser(
                "select id from lampwright.setup where studio_id = 'demo' and"
                    + " deleted_at is null"));
  }

  /** A search is answered, or refused for a moment; it is never our fault. */
  private static Set<String> searched(HttpResponse<String> answer) {
    if (answer.statusCode() == 503) {
      assertTrue(answer.headers().firstValue("Retry-After").isPresent(), answer.body());
      return Set.of();
    }
    assertEquals(200, answer.statusCode(), answer.body());
    return Visitor.items(answer).stream()
        .map(item -> String.valueOf(Told.at(item, "id")))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Set<String> awaitFound(Set<String> all) {
    Visitor owner = house.withToken("owner@demo.example");
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
    Set<String> found = Set.of();
    while (!found.equals(all)) {
      assertTrue(System.nanoTime() < end, found + " of " + all);
      found = searched(owner.get(SETUPS + "?limit=100"));
    }
    return found;
  }

  private static HttpResponse<String> awaitReady() {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
    HttpResponse<String> answer = house.visitor().get("/health/ready");
    while (answer.statusCode() != 200 && System.nanoTime() < end) {
      answer = house.visitor().get("/health/ready");
    }
    return answer;
  }
}
