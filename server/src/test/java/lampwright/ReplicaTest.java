package lampwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.net.URI;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import lampwright.schema.WorkingDatabase;
import lampwright.store.Database;
import lampwright.store.DatabaseWatch;
import lampwright.store.Replica;
import lampwright.store.Streaming;
import lampwright.web.Documents;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/**
 * A house that reads from a streaming replica shows what one without would, however far behind the
 * replica is and whatever befalls it.
 */
@LongProgram
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ReplicaTest {

  private static final String SETUPS = "/api/studios/demo/setups";
  private static final Duration PATIENCE = Duration.ofSeconds(40);

  @TempDir static Path folder;

  private Streaming streaming;
  private House house;
  private Visitor stranger;
  private Visitor owner;
  private Visitor crew;

  @BeforeAll
  void aHouseWithAReplica() throws Exception {
    streaming = Streaming.start();
    house =
        House.open(
            Settings.read(
                Map.of(
                    "LAMPWRIGHT_DATABASE_URL", streaming.databaseUrl(),
                    "LAMPWRIGHT_REPLICA_URL", streaming.replicaUrl(),
                    "LAMPWRIGHT_DATA", folder.resolve("data").toString(),
                    "LAMPWRIGHT_PORT", "0",
                    "LAMPWRIGHT_MEANING", "false",
                    "LAMPWRIGHT_DEMO", "few",
                    "LAMPWRIGHT_DRAIN_SECONDS", "0",
                    "LAMPWRIGHT_MEMBER_REQUESTS_PER_MINUTE", "0")),
            streaming.where(),
            Clock.systemUTC(),
            new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8));
    stranger = new Visitor(URI.create("http://127.0.0.1:" + house.port()));
    owner = member("owner@demo.example");
    crew = member("crew@demo.example");
  }

  private Visitor member(String email) {
    HttpResponse<String> session =
        stranger.post(
            "/api/session",
            "{\"email\":\"%s\",\"password\":\"four-heads-at-dusk\"}".formatted(email));
    String cookie = session.headers().firstValue("Set-Cookie").orElseThrow();
    HttpResponse<String> token =
        stranger
            .with("Cookie", cookie.substring(0, cookie.indexOf(';')))
            .with("X-CSRF-Token", String.valueOf(Visitor.object(session).get("csrf_token")))
            .post("/api/tokens", "{\"name\":\"a test\"}");
    return stranger.with("Authorization", "Bearer " + Visitor.object(token).get("token"));
  }

  @AfterEach
  void theReplicaFollowsAgain() throws Exception {
    streaming.askReplica("select pg_wal_replay_resume()");
    until(() -> told("used") == 1);
  }

  @AfterAll
  void close() throws IOException {
    house.close();
    streaming.close();
  }

  private long told(String name) {
    String line = "lampwright_replica_" + name + " ";
    return stranger
        .get("/metrics")
        .body()
        .lines()
        .filter(told -> told.startsWith(line))
        .mapToLong(told -> Math.round(Double.parseDouble(told.substring(line.length()))))
        .findFirst()
        .orElseThrow();
  }

  private static void until(Callable<Boolean> fact) throws Exception {
    long start = System.nanoTime();
    while (!fact.call()) {
      assertTrue(System.nanoTime() - start < PATIENCE.toNanos(), "it never came");
      Thread.onSpinWait();
    }
  }

  private String made(String title) {
    HttpResponse<String> made = owner.post(SETUPS, Documents.json(Documents.setup(title)));
    assertEquals(201, made.statusCode(), made.body());
    return made.headers().firstValue("Location").orElseThrow();
  }

  private void rename(String setup, int revision, String title) {
    HttpResponse<String> renamed =
        owner
            .with("If-Match", "\"" + revision + "\"")
            .patch(setup, "{\"title\":\"%s\"}".formatted(title));
    assertEquals(200, renamed.statusCode(), renamed.body());
  }

  private static String told(Visitor visitor, String path) {
    HttpResponse<String> answer = visitor.get(path);
    assertEquals(200, answer.statusCode(), answer.body());
    return answer.body();
  }

  @Test
  void readingsAreAnsweredByTheReplica() throws Exception {
    String setup = made("Quiet water");
    until(() -> told("used") == 1 && told("lag_bytes") == 0);
    long readings = told("readings_total");
    long failures = told("failures_total");
    for (Visitor visitor : new Visitor[] {owner, crew}) {
      assertTrue(told(visitor, setup + "/revisions").contains("\"revision\":1"));
      assertTrue(told(visitor, SETUPS + "?q=quiet").contains("Quiet water"));
      assertTrue(told(visitor, setup.substring("/api".length())).contains("Quiet water"));
    }
    assertTrue(told("readings_total") >= readings + 6, "the database answered");
    assertEquals(failures, told("failures_total"));
  }

  @Test
  void whatWasAcknowledgedIsReadAtOnceByWhoWroteItAndByEverybodyElse() {
    String setup = made("Change 1");
    for (int revision = 1; revision <= 20; revision++) {
      String title = "Change " + (revision + 1);
      rename(setup, revision, title);
      Visitor reader = revision % 2 == 0 ? owner : crew;
      assertTrue(told(reader, setup + "/revisions").contains("\"revision\":" + (revision + 1)));
      assertTrue(told(reader, setup.substring("/api".length())).contains(title + "<"), title);
    }
  }

  @Test
  void whereTheReplicaIsBehindTheDatabaseAnswers() throws Exception {
    String setup = made("Before the pause");
    until(() -> told("used") == 1 && told("lag_bytes") == 0);
    streaming.askReplica("select pg_wal_replay_pause()");
    long behind = told("behind_total");
    rename(setup, 1, "After the pause");
    assertTrue(told(owner, setup + "/revisions").contains("\"revision\":2"));
    assertTrue(told(crew, setup.substring("/api".length())).contains("After the pause"));
    assertTrue(told("behind_total") >= behind + 2);
    until(() -> told("lag_bytes") > 0);
    streaming.askReplica("select pg_wal_replay_resume()");
    until(() -> told("lag_bytes") == 0);
    long readings = told("readings_total");
    assertTrue(told(owner, setup + "/revisions").contains("\"revision\":2"));
    assertTrue(told("readings_total") > readings, "it has caught up");
  }

  @Test
  void whoWasThrownOutIsRefusedThoughTheReplicaDoesNotKnow() throws Exception {
    Visitor reader = member("reader@demo.example");
    assertEquals(200, reader.get(SETUPS).statusCode());
    String person = Told.at(Visitor.object(reader.get("/api/session")), "person", "id").toString();
    String address = "/api/studios/demo/members/" + person;
    streaming.askReplica("select pg_wal_replay_pause()");
    String now = owner.get(address).headers().firstValue("ETag").orElse("\"1\"");
    HttpResponse<String> gone = owner.with("If-Match", now).delete(address);
    assertEquals(204, gone.statusCode(), gone.body());
    assertEquals(404, reader.get(SETUPS).statusCode());
    assertEquals(404, reader.get("/studios/demo/setups").statusCode());
  }

  @Test
  void whileTheReplicaIsDeadTheDatabaseAnswersAndAfterwardsItIsReadFromAgain() throws Exception {
    String setup = made("Dead water");
    until(() -> told("used") == 1);
    assertTrue(streaming.replicaProcess().destroyForcibly());
    for (int i = 0; i < 20; i++) {
      assertTrue(told(owner, setup + "/revisions").contains("\"revision\":1"));
    }
    until(() -> told("used") == 1);
    long readings = told("readings_total");
    until(
        () -> {
          told(owner, setup + "/revisions");
          return told("readings_total") > readings;
        });
  }

  @Test
  void oneThatFollowsAnotherOrWasMadeADatabaseOfItsOwnIsNotReadFrom() throws Exception {
    try (Streaming other = Streaming.start()) {
      String unknown = trouble(streaming.where(), other.replicaUrl());
      assertTrue(unknown.contains("password authentication failed"), unknown);
      var _ =
          other.ask(
              "alter role %s password '%s'"
                  .formatted(streaming.where().user(), streaming.where().password()));
      until(() -> !trouble(streaming.where(), other.replicaUrl()).contains("password"));
      assertEquals(
          "it is a replica of another database", trouble(streaming.where(), other.replicaUrl()));
      WorkingDatabase same =
          new WorkingDatabase(
              other.where().jdbcUrl(), streaming.where().user(), streaming.where().password());
      assertEquals("", trouble(same, other.replicaUrl()));
      assertEquals("t", other.askReplica("select pg_promote()"));
      assertEquals(
          "it is a database of its own, and no replica", trouble(same, other.replicaUrl()));
    }
  }

  /** What is wrong with a replica, once it was looked at. */
  private static String trouble(WorkingDatabase database, String replica) throws Exception {
    try (Database opened =
        new Database(
            new Database.Places(database, Optional.of(database.replica(replica))),
            2,
            Clock.systemUTC(),
            new DatabaseWatch(PATIENCE, Optional.empty()))) {
      Replica state = opened.replica().orElseThrow();
      until(() -> !state.trouble().orElse("").equals("not looked at yet"));
      return state.trouble().orElse("");
    }
  }
}
