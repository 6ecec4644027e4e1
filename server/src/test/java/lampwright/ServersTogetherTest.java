package lampwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import lampwright.web.Documents;
import lampwright.web.ManyPictures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/**
 * What one server is told holds at the other, as behind a proxy that sends each request anywhere.
 */
@LongProgram
class ServersTogetherTest {

  private static final String DEMO = "/api/studios/demo";
  private static final String SETUPS = DEMO + "/setups";

  @RegisterExtension final ReachableFolder folder = new ReachableFolder();

  @Test
  void whatOneServerIsToldHoldsAtTheOther() throws Exception {
    try (OnePostgres postgres = OnePostgres.start(folder);
        ServerProcess one = postgres.server("one");
        ServerProcess other = postgres.server("other")) {
      Visitor here = one.member("owner@demo.example");
      Visitor there = here.at(other.address());
      aTokenThatIsRevokedAtOneIsRefusedAtTheOther(one, other);
      aRoleThatIsTakenAtOneIsGoneAtTheOther(one, other, here);
      oneKeyAtBothAtOnceMakesOneThing(List.of(here, there));
      oneInvitationAtBothAtOnceLetsOneIn(one, other, here);

      byte[] archive = archiveWithPictures(here);
      anImportIsStoppedAtTheOther(postgres, here, there, archive);
      anImportIsCarriedOutAtTheOther(here, there, archive);
      theStudiosImportsAreCountedAtBothTogether(here, there, archive);
      try (Connection _ = holdWhatAnImportChanges(postgres)) {
        anImportWhoseServerIsKilledIsOver(one, here, there, archive);
      }
      assertEquals(2, called(there, "Carriedover"), "nothing came in");
    }
  }

  private static void aTokenThatIsRevokedAtOneIsRefusedAtTheOther(
      ServerProcess one, ServerProcess other) {
    Visitor stranger = new Visitor(one.address());
    HttpResponse<String> began =
        stranger.post(
            "/api/session",
            "{\"email\":\"crew@demo.example\",\"password\":\"four-heads-at-dusk\"}");
    String cookie = began.headers().firstValue("Set-Cookie").orElseThrow();
    Visitor signedIn =
        stranger
            .with("Cookie", cookie.substring(0, cookie.indexOf(';')))
            .with("X-CSRF-Token", Told.at(Visitor.object(began), "csrf_token").toString());
    Visitor elsewhere = signedIn.at(other.address());
    HttpResponse<String> token = elsewhere.post("/api/tokens", "{\"name\":\"both\"}");
    assertEquals(201, token.statusCode(), token.body());
    Visitor program =
        new Visitor(one.address())
            .with("Authorization", "Bearer " + Told.at(Visitor.object(token), "token"));
    assertEquals(200, program.get(SETUPS).statusCode());
    assertEquals(
        204, elsewhere.delete("/api/tokens/" + Told.at(Visitor.object(token), "id")).statusCode());
    assertEquals(401, program.get(SETUPS).statusCode());

    assertEquals(200, elsewhere.get(SETUPS).statusCode());
    assertEquals(204, signedIn.delete("/api/session").statusCode());
    assertEquals(401, elsewhere.get(SETUPS).statusCode(), "out is out at both");
  }

  private static void aRoleThatIsTakenAtOneIsGoneAtTheOther(
      ServerProcess one, ServerProcess other, Visitor owner) {
    Visitor author = other.author();
    assertEquals(201, write(author, "Before").statusCode());
    String members = DEMO + "/members";
    Object id =
        Visitor.items(owner.get(members)).stream()
            .filter(member -> member.toString().contains("email=author@demo.example"))
            .findFirst()
            .map(member -> Told.at(member, "id"))
            .orElseThrow();
    String member = members + "/" + id;
    for (String role : List.of("reader", "author")) {
      String tag = owner.get(member).headers().firstValue("ETag").orElseThrow();
      HttpResponse<String> changed =
          owner.with("If-Match", tag).put(member, "{\"role\":\"" + role + "\"}");
      assertEquals(200, changed.statusCode(), changed.body());
      assertEquals(role.equals("reader") ? 403 : 201, write(author, "After").statusCode());
      assertEquals(
          role.equals("reader") ? 403 : 201, write(author.at(one.address()), "After").statusCode());
    }
  }

  private static HttpResponse<String> write(Visitor author, String title) {
    return author.post(SETUPS, Documents.json(Documents.setup(title)));
  }

  private static void oneKeyAtBothAtOnceMakesOneThing(List<Visitor> visitors) throws Exception {
    List<HttpResponse<String>> answers =
        atOnce(
            visitors.stream()
                .<Callable<HttpResponse<String>>>map(
                    visitor -> () -> write(visitor.with("Idempotency-Key", "made-at-both"), "Once"))
                .toList());
    for (HttpResponse<String> answer : answers) {
      assertTrue(Set.of(200, 201).contains(answer.statusCode()), answer.body());
    }
    assertEquals(
        1L,
        answers.stream().map(answer -> Told.at(Visitor.object(answer), "id")).distinct().count());
  }

  private static void oneInvitationAtBothAtOnceLetsOneIn(
      ServerProcess one, ServerProcess other, Visitor owner) throws Exception {
    HttpResponse<String> made =
        owner.post(DEMO + "/invitations", "{\"role\":\"crew\",\"meant_for\":\"whoever is first\"}");
    assertEquals(201, made.statusCode(), made.body());
    String link = Told.at(Visitor.object(made), "link").toString();
    String path = "/api" + link.substring(link.indexOf("/invitations/"));
    List<HttpResponse<String>> answers =
        atOnce(
            Stream.of(one, other)
                .<Callable<HttpResponse<String>>>map(
                    server ->
                        () ->
                            new Visitor(server.address())
                                .post(
                                    path,
                                    "{\"account\":{\"name\":\"First\",\"email\":\"first%d@light.example\",\"password\":\"a lantern by the weir\"}}"
                                        .formatted(server.address().getPort())))
                .toList());
    assertEquals(
        1L,
        answers.stream().filter(answer -> answer.statusCode() < 300).count(),
        answers.stream().map(HttpResponse::body).toList().toString());
  }

  private static <T> List<T> atOnce(List<Callable<T>> all) throws Exception {
    try (ExecutorService threads = Executors.newVirtualThreadPerTaskExecutor()) {
      List<T> answers = new ArrayList<>();
      for (Future<T> answer : threads.invokeAll(all)) {
        answers.add(answer.get());
      }
      return answers;
    }
  }

  /** Of a setup that has changed since, so that a copy of it comes in. */
  private static byte[] archiveWithPictures(Visitor owner) {
    String setup = write(owner, "Carriedover").headers().firstValue("Location").orElseThrow();
    var _ = ManyPictures.add(owner, setup, 8);
    byte[] archive = owner.bytes(setup + "/archive").body();
    String tag = owner.get(setup).headers().firstValue("ETag").orElseThrow();
    HttpResponse<String> changed =
        owner.with("If-Match", tag).patch(setup, "{\"intent\":\"Changed since.\"}");
    assertEquals(200, changed.statusCode(), changed.body());
    return archive;
  }

  /** Until it is closed, no import that runs comes to its end. */
  private static Connection holdWhatAnImportChanges(OnePostgres postgres) throws SQLException {
    Connection held = postgres.connect();
    held.setAutoCommit(false);
    try (Statement hold = held.createStatement()) {
      hold.execute("select id from lampwright.studio for no key update");
    }
    return held;
  }

  private static void anImportIsStoppedAtTheOther(
      OnePostgres postgres, Visitor here, Visitor there, byte[] archive) throws SQLException {
    String stopped = planned(here, archive);
    HttpResponse<String> seen = there.get(stopped);
    assertEquals(here.get(stopped).body(), seen.body());
    try (Connection _ = holdWhatAnImportChanges(postgres)) {
      assertEquals(202, begin(there, stopped).statusCode());
      assertEquals(409, begin(here, stopped).statusCode(), "it is begun");
      assertEquals(204, there.delete(stopped).statusCode());
      assertEquals(404, here.get(stopped).statusCode());
    }
    assertEquals(1, called(here, "Carriedover"), "nothing came in");
  }

  private static void anImportIsCarriedOutAtTheOther(Visitor here, Visitor there, byte[] archive) {
    String place = planned(here, archive);
    assertEquals(202, begin(there, place).statusCode());
    awaitState(there, place, "imported");
    awaitState(here, place, "imported");
    awaitCalled(there, "Carriedover", 2);
    assertEquals(409, there.delete(place).statusCode());
    assertEquals(409, begin(there, place).statusCode());
  }

  private static void theStudiosImportsAreCountedAtBothTogether(
      Visitor here, Visitor there, byte[] archive) {
    List<String> places =
        List.of(planned(here, archive), planned(there, archive), planned(here, archive));
    assertEquals(409, send(there, archive).statusCode());
    assertEquals(409, send(here, archive).statusCode());
    for (String place : places) {
      assertEquals(204, there.delete(place).statusCode());
      assertEquals(404, here.get(place).statusCode());
    }
  }

  private static void anImportWhoseServerIsKilledIsOver(
      ServerProcess one, Visitor here, Visitor there, byte[] archive) throws InterruptedException {
    String waiting = planned(here, archive);
    String running = planned(here, archive);
    assertEquals(202, begin(there, running).statusCode());
    one.kill();
    for (String place : List.of(waiting, running)) {
      Map<?, ?> told = awaitState(there, place, "failed");
      assertTrue(String.valueOf(told.get("trouble")).contains("Send the archive again"), "" + told);
      assertEquals(409, begin(there, place).statusCode());
    }
    assertEquals(204, there.delete(planned(there, archive)).statusCode(), "others go on");
  }

  /** The index of a server follows what the other did, soon. */
  private static void awaitCalled(Visitor visitor, String title, long many) {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
    while (called(visitor, title) != many) {
      assertTrue(
          System.nanoTime() < end,
          () -> many + " are called so: " + visitor.get(SETUPS + "?q=" + title).body());
    }
  }

  private static long called(Visitor visitor, String title) {
    return Visitor.items(visitor.get(SETUPS + "?limit=100")).stream()
        .filter(item -> Told.at(item, "title").equals(title))
        .count();
  }

  private static HttpResponse<String> begin(Visitor visitor, String place) {
    return visitor.send("POST", place + "/execution", BodyPublishers.noBody());
  }

  private static HttpResponse<String> send(Visitor visitor, byte[] archive) {
    return visitor
        .with("Content-Type", "application/zip")
        .send("POST", DEMO + "/imports?clashes=copy", BodyPublishers.ofByteArray(archive));
  }

  private static String planned(Visitor visitor, byte[] archive) {
    HttpResponse<String> answer = send(visitor, archive);
    assertEquals(201, answer.statusCode(), answer.body());
    String place = answer.headers().firstValue("Location").orElseThrow();
    awaitState(visitor, place, "planned");
    return place;
  }

  private static Map<?, ?> awaitState(Visitor visitor, String place, String state) {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(90);
    Map<?, ?> told = Visitor.object(visitor.get(place));
    while (!state.equals(told.get("state"))) {
      assertTrue(System.nanoTime() < end, told.toString());
      told = Visitor.object(visitor.get(place));
    }
    return told;
  }
}
