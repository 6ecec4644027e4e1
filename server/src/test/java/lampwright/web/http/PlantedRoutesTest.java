package lampwright.web.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.javalin.Javalin;
import io.javalin.http.Context;
import java.net.URI;
import java.net.http.HttpResponse;
import java.security.SecureRandom;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import lampwright.Visitor;
import lampwright.metrics.Metrics;
import lampwright.tasks.Refused;
import lampwright.web.api.HealthApi;
import lampwright.web.api.HealthCheck;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the door does for every handler, seen through handlers planted for the purpose. */
class PlantedRoutesTest {

  private static final int REVISION = 7;

  private static HttpServer server;
  private static Visitor visitor;

  @BeforeAll
  static void open() {
    Door door =
        new Door(
            _ -> Optional.empty(),
            _ -> Optional.empty(),
            Optional.empty(),
            (_, _, _) -> {},
            new SessionCookie(true),
            new CsrfTokens(new SecureRandom()));
    server =
        HttpServer.start(
            new HttpServer.Place("127.0.0.1", 0, true, new HostNames(List.of("light.example"))),
            door,
            (problem, _) -> "<p>" + problem.kind().slug() + "</p>",
            new SecureRandom(),
            Traffic.unbounded(new Metrics()),
            PlantedRoutesTest::plant);
    visitor = new Visitor(URI.create("http://127.0.0.1:" + server.port()));
  }

  private static void plant(RouteList routes) {
    routes.get("/api/planted/revision", PlantedRoutesTest::read, Access.Outside.ANYONE);
    routes.put("/api/planted/revision", PlantedRoutesTest::change, Access.Outside.ANYONE);
    routes.get("/api/planted/fault", PlantedRoutesTest::fail, Access.Outside.ANYONE);
    routes.get("/api/planted/text", PlantedRoutesTest::write, Access.Outside.ANYONE);
    routes.get("/planted/fault", PlantedRoutesTest::fail, Access.Outside.ANYONE);
    routes.get("/api/planted/ready", troubled()::ready, Access.Outside.ANYONE);
    routes.get("/api/planted/error", PlantedRoutesTest::overflow, Access.Outside.ANYONE);
  }

  private static HealthApi troubled() {
    return new HealthApi(
        List.of(
            new HealthCheck("lamp", () -> Optional.of("The lamp is out.")),
            new HealthCheck("oil", Optional::empty)),
        () -> Duration.ofMillis(1_500));
  }

  private static void read(Context context) {
    if (!Preconditions.isKnown(context, REVISION)) {
      context.result("read");
    }
  }

  private static void change(Context context) {
    int based = Preconditions.based(context, () -> REVISION);
    if (based != REVISION) {
      throw Refused.stale(REVISION);
    }
    context.result("changed " + based);
  }

  private static void fail(Context context) {
    throw new IllegalStateException("a secret of " + context.path());
  }

  private static void overflow(Context context) {
    throw new StackOverflowError("a secret of " + context.path());
  }

  private static void write(Context context) {
    context.result("light ".repeat(2000)).contentType("text/plain; charset=utf-8");
  }

  @AfterAll
  static void close() {
    server.close();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          '"7"' | 200
          '"6", "7"' | 200
          '*' | 200
          '"6"' | 412
          'W/"7"' | 412
          '7' | 412
          'rubbish' | 412
          """)
  void aChangeHoldsOnlyForTheRevisionThatItNames(String ifMatch, int status) {
    assertEquals(
        status, visitor.with("If-Match", ifMatch).put("/api/planted/revision", "{}").statusCode());
  }

  @Test
  void aStaleChangeIsToldTheCurrentRevision() {
    HttpResponse<String> stale =
        visitor.with("If-Match", "\"6\"").put("/api/planted/revision", "{}");
    assertEquals("\"7\"", stale.headers().firstValue("ETag").orElseThrow());
    assertEquals("/problems/stale", Visitor.object(stale).get("type"));
  }

  @Test
  void aChangeWithoutAPreconditionIsRefused() {
    HttpResponse<String> answer = visitor.put("/api/planted/revision", "{}");
    assertEquals(428, answer.statusCode());
    assertEquals("/problems/precondition-missing", Visitor.object(answer).get("type"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          '"7"' | 304
          'W/"7"' | 304
          '"5", "7"' | 304
          '*' | 304
          '"6"' | 200
          """)
  void whatIsKnownIsNotSentAgain(String ifNoneMatch, int status) {
    HttpResponse<String> answer =
        visitor.with("If-None-Match", ifNoneMatch).get("/api/planted/revision");
    assertEquals(status, answer.statusCode());
    assertEquals("\"7\"", answer.headers().firstValue("ETag").orElseThrow());
    assertEquals(status == 304 ? "" : "read", answer.body());
  }

  @Test
  void aFaultGetsAReferenceAndTellsNothing() {
    HttpResponse<String> answer = visitor.get("/api/planted/fault");
    assertEquals(500, answer.statusCode());
    assertFalse(answer.body().contains("secret"));
    assertFalse(answer.body().contains("Exception"));
    assertEquals(10, String.valueOf(Visitor.object(answer).get("instance")).length());
    HttpResponse<String> page = visitor.get("/planted/fault");
    assertEquals(500, page.statusCode());
    assertEquals("<p>our-fault</p>", page.body());
  }

  @Test
  void anErrorOfTheMachineTellsNothingEither() {
    HttpResponse<String> answer = visitor.get("/api/planted/error");
    assertEquals(500, answer.statusCode());
    assertFalse(answer.body().contains("secret"));
    assertEquals("/problems/our-fault", Visitor.object(answer).get("type"));
  }

  @Test
  void whatIsNotReadySaysWhy() {
    HttpResponse<String> answer = visitor.get("/api/planted/ready");
    assertEquals(503, answer.statusCode());
    assertTrue(answer.headers().firstValue("Retry-After").isPresent());
    assertEquals(
        "{\"status\":\"not_ready\",\"reasons\":[{\"name\":\"lamp\",\"reason\":\"The lamp is"
            + " out.\"}],\"index_lag_s\":1.5}",
        answer.body());
  }

  @Test
  void textIsCompressedForWhoTakesIt() {
    HttpResponse<String> packed = visitor.with("Accept-Encoding", "gzip").get("/api/planted/text");
    assertEquals("gzip", packed.headers().firstValue("Content-Encoding").orElseThrow());
    HttpResponse<String> plain = visitor.get("/api/planted/text");
    assertTrue(plain.headers().firstValue("Content-Encoding").isEmpty());
    assertTrue(plain.headers().firstValue("Vary").orElseThrow().contains("Accept-Encoding"));
  }

  @Test
  void behindTlsTheBrowserIsToldToStayThere() {
    assertTrue(
        visitor
            .get("/api/planted/text")
            .headers()
            .firstValue("Strict-Transport-Security")
            .isPresent());
  }

  @Test
  void aRouteThatNamesNoAccessKeepsTheServerFromStarting() {
    Javalin silent = Javalin.create(config -> config.routes.get("/planted", _ -> {}));
    String message =
        String.valueOf(
            assertThrows(IllegalStateException.class, () -> Door.mustGuardEveryRoute(silent))
                .getMessage());
    assertEquals("Route (GET /planted) must name exactly one Access.", message);
    Javalin torn =
        Javalin.create(
            config ->
                config.routes.get(
                    "/planted", _ -> {}, Access.Outside.ANYONE, Access.Outside.SIGNED_IN));
    assertThrows(IllegalStateException.class, () -> Door.mustGuardEveryRoute(torn));
    Javalin sound =
        Javalin.create(config -> config.routes.get("/p", _ -> {}, Access.Outside.ANYONE));
    Door.mustGuardEveryRoute(sound);
  }
}
