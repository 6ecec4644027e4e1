package lampwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import lampwright.picture.Drawn;
import lampwright.web.Documents;
import lampwright.web.TwentyWriters;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Two servers, each a process with a data folder of its own, on one PostgreSQL. */
@LongProgram
class TwoServersTest {

  private static final String SETUPS = "/api/studios/demo/setups";

  @RegisterExtension final ReachableFolder folder = new ReachableFolder();

  @Test
  void twentyWritersAtTwoServersLoseNoUpdateAndEachIndexFollows() throws Exception {
    try (OnePostgres postgres = OnePostgres.start(folder);
        ServerProcess one = postgres.server("one");
        ServerProcess other = postgres.server("other")) {
      TwentyWriters.mustLoseNothing(List.of(one.author(), other.author()));
      whatIsWrittenAtOneIsFoundAtTheOther(one.author(), other.author());
      whatIsNewIsTheSameAtBoth(one, other);
      wrongPasswordsCountAtBothTogether(one, other);
      passwordsAreHashedAtTheCostThatKeepsStrangersOut(postgres);
      theIndexOfAServerThatIsKilledWhileItFollowsEqualsTheDatabase(one, other, postgres);
    }
  }

  private static void whatIsWrittenAtOneIsFoundAtTheOther(Visitor here, Visitor there) {
    write(here, "tidewheel");
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
    while (Visitor.items(there.get(SETUPS + "?q=tidewheel")).isEmpty()) {
      assertTrue(System.nanoTime() < end, "It is not found at the other server.");
    }
  }

  private static void whatIsNewIsTheSameAtBoth(ServerProcess one, ServerProcess other) {
    Visitor here = one.member("owner@demo.example");
    Visitor there = other.member("owner@demo.example");
    HttpResponse<String> kept =
        here.post(
            "/api/studios/demo/saved-searches",
            "{\"name\":\"Spikes\",\"question\":\"q=%22marlinspike%22\"}");
    String search = kept.headers().firstValue("Location").orElseThrow();
    write(other.author(), "marlinspike");
    for (Visitor visitor : List.of(there, here)) {
      long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
      while (unseen(visitor, search) != 1) {
        assertTrue(System.nanoTime() < end, "It is not told at both servers.");
      }
    }
    assertEquals(200, there.post(search + "/looks", "").statusCode());
    assertEquals(0, unseen(here, search));
  }

  private static void wrongPasswordsCountAtBothTogether(ServerProcess one, ServerProcess other) {
    for (int i = 0; i < 4; i++) {
      assertEquals(401, guess(one));
      assertEquals(401, guess(other));
    }
    assertEquals(429, guess(one));
    assertEquals(429, guess(other));
  }

  /** The houses of other tests hash them at less. */
  private static void passwordsAreHashedAtTheCostThatKeepsStrangersOut(OnePostgres postgres)
      throws SQLException {
    try (Connection owner = postgres.connect();
        Statement statement = owner.createStatement();
        ResultSet cheap =
            statement.executeQuery(
                """
                select count(*) filter (where password_hash like '$argon2id$v=19$m=19456,t=2,p=1$%'),
                  count(*) filter (where password_hash not like '$argon2id$v=19$m=19456,t=2,p=1$%')
                from lampwright.person
                """)) {
      assertTrue(cheap.next());
      assertTrue(cheap.getInt(1) >= 4, "members of the demo");
      assertEquals(0, cheap.getInt(2));
    }
  }

  private static int guess(ServerProcess server) {
    return new Visitor(server.address())
        .post("/api/session", "{\"email\":\"reader@demo.example\",\"password\":\"a wrong guess\"}")
        .statusCode();
  }

  private static int unseen(Visitor visitor, String search) {
    return (int) Told.number(Visitor.object(visitor.get(search + "/news")), "unseen");
  }

  private void theIndexOfAServerThatIsKilledWhileItFollowsEqualsTheDatabase(
      ServerProcess one, ServerProcess other, OnePostgres postgres) throws Exception {
    Visitor author = one.author();
    for (int i = 0; i < 60; i++) {
      write(author, "oakum" + i);
      if (i == 40) {
        other.kill();
      }
    }
    String checked = ServerProcess.checkIndex(postgres.dataOf("other"), postgres.settings());
    assertTrue(checked.startsWith("0: The index equals the database: "), checked);
    String inUse = ServerProcess.checkIndex(postgres.dataOf("one"), postgres.settings());
    assertTrue(inUse.startsWith("2: "), inUse);
  }

  private static void write(Visitor author, String word) {
    HttpResponse<String> made =
        author.post(SETUPS, Documents.json(Documents.setup("Written " + word)));
    assertEquals(201, made.statusCode(), made.body());
  }

  @Test
  void twoServersOnOneFolderOfPicturesGiveOutWhatTheOtherTookInAndTakeNothingAway()
      throws Exception {
    try (OnePostgres postgres = OnePostgres.start(folder);
        ServerProcess one = postgres.server("one")) {
      Visitor author = one.author();
      Upload arriving = Upload.begin(one.address(), author, pictures(author), photograph(1));
      arriving.awaitFileIn(postgres.pictures());
      // Its start sweeps the folder, in which a file of the first server's is arriving.
      try (ServerProcess other = postgres.server("other")) {
        String place = arriving.finish();
        Visitor there = other.author();
        assertEquals(200, there.get(place + "/thumbnail").statusCode());
        assertEquals(author.get(place + "/original").body(), there.get(place + "/original").body());
        addAndTakeAwayTheSameFileAtBoth(List.of(author, there), place);
      }
    }
  }

  /**
   * While one server takes a file away, the other takes the same in; whoever is told 201 has it.
   */
  private static void addAndTakeAwayTheSameFileAtBoth(List<Visitor> authors, String place)
      throws Exception {
    String pictures = place.substring(0, place.lastIndexOf('/'));
    List<Callable<Void>> writers =
        authors.stream()
            .map(
                author ->
                    (Callable<Void>)
                        () -> {
                          for (int i = 0; i < 12; i++) {
                            HttpResponse<String> made =
                                Upload.whole(author, pictures, photograph(2));
                            assertEquals(201, made.statusCode(), made.body());
                            String mine = made.headers().firstValue("Location").orElseThrow();
                            assertEquals(200, author.get(mine + "/original").statusCode());
                            assertEquals(
                                204, author.with("If-Match", "\"1\"").delete(mine).statusCode());
                          }
                          return null;
                        })
            .toList();
    try (ExecutorService threads = Executors.newVirtualThreadPerTaskExecutor()) {
      for (Future<Void> writer : threads.invokeAll(writers)) {
        writer.get();
      }
    }
  }

  private static String pictures(Visitor author) {
    HttpResponse<String> made =
        author.post(
            "/api/studios/demo/setups", Documents.json(Documents.setup("Pictured at two servers")));
    return made.headers().firstValue("Location").orElseThrow() + "/pictures";
  }

  private static byte[] photograph(int shade) {
    return Drawn.jpeg(Drawn.image(640, 480, (x, y) -> (x * shade * 7) ^ y), 0.9);
  }
}
