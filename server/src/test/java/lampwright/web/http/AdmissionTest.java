package lampwright.web.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.javalin.http.Context;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import lampwright.Visitor;
import lampwright.metrics.Metrics;
import lampwright.web.RawAnswer;
import lampwright.web.api.HealthApi;
import lampwright.web.api.HealthCheck;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** A small server, with two places for light work and one for heavy, that gets more than that. */
@Timeout(60)
class AdmissionTest {

  private static final Executor THREADS = work -> Thread.ofVirtual().start(work);

  private final CountDownLatch goOn = new CountDownLatch(1);
  private final List<String> kept = new CopyOnWriteArrayList<>();
  private final Metrics metrics = new Metrics();
  private final Admission admission =
      new Admission(
          new Capacity(
              Map.of(
                  Lane.LIGHT, new Capacity.Bound(2, 2), Lane.COMPUTING, new Capacity.Bound(1, 1)),
              Duration.ofSeconds(20)));
  private final Traffic traffic =
      new Traffic(
          admission,
          new MemberLimits(MemberLimits.PerMinute.UNLIMITED),
          Map.of("GET /heavy", Lane.COMPUTING, "GET /health", Lane.OPEN),
          new Watchers(Optional.empty()),
          metrics.requestTimes(),
          Duration.ZERO);
  private HttpServer server = start();
  private Visitor visitor = visitor();

  @BeforeEach
  void visit() {
    visitor = visitor();
  }

  @AfterEach
  void close() {
    goOn.countDown();
    server.close();
    metrics.close();
  }

  private Visitor visitor() {
    return new Visitor(URI.create("http://127.0.0.1:" + server.port()))
        .with("Accept", "application/json");
  }

  private HttpServer start() {
    return HttpServer.start(
        new HttpServer.Place("127.0.0.1", 0, false, new HostNames(List.of())),
        new Door(
            _ -> Optional.empty(),
            _ -> Optional.empty(),
            Optional.empty(),
            (_, _, _) -> {},
            new SessionCookie(false),
            new CsrfTokens(new SecureRandom())),
        (problem, _) -> problem.kind().slug(),
        new SecureRandom(),
        traffic,
        routes -> {
          routes.get("/heavy", this::slowly, Access.Outside.ANYONE);
          routes.get("/slow", this::slowly, Access.Outside.ANYONE);
          routes.get("/light", context -> context.result("light"), Access.Outside.ANYONE);
          routes.post("/kept", this::keep, Access.Outside.ANYONE);
          routes.get("/fault", AdmissionTest::fail, Access.Outside.ANYONE);
          routes.get("/much", AdmissionTest::answerMuch, Access.Outside.ANYONE);
          routes.get("/health", health()::ready, Access.Outside.ANYONE);
        });
  }

  private HealthApi health() {
    return new HealthApi(
        List.of(
            new HealthCheck(
                "load",
                () ->
                    Optional.of("Too much.")
                        .filter(_ -> admission.isOverloaded(Duration.ofDays(1))))),
        () -> Duration.ZERO);
  }

  private void slowly(Context context) throws InterruptedException {
    goOn.await();
    context.result("done");
  }

  private void keep(Context context) throws InterruptedException {
    String text = Body.plainText(context);
    goOn.await();
    kept.add(text);
    context.status(201).result(text);
  }

  private static void fail(Context context) {
    throw new IllegalStateException(context.path());
  }

  private static void answerMuch(Context context) {
    context.result(new byte[64 << 20]);
  }

  private CompletableFuture<HttpResponse<String>> begin(String path) {
    return CompletableFuture.supplyAsync(() -> visitor.get(path), THREADS);
  }

  /** Both sides are on their way; there is nothing to wait on but the fact itself. */
  private static void until(BooleanSupplier fact) {
    while (!fact.getAsBoolean()) {
      Thread.onSpinWait();
    }
  }

  private static void mustBeRefused(HttpResponse<String> answer) {
    assertEquals(503, answer.statusCode(), answer.body());
    assertEquals("1", answer.headers().firstValue("Retry-After").orElseThrow());
    assertEquals("/problems/unavailable", Visitor.object(answer).get("type"));
    assertEquals("close", answer.headers().firstValue("Connection").orElseThrow());
  }

  @Test
  void heavyWorkFillsItsOwnLaneAndNoOther() throws Exception {
    CompletableFuture<HttpResponse<String>> working = begin("/heavy");
    until(() -> admission.working(Lane.COMPUTING) == 1);
    CompletableFuture<HttpResponse<String>> waiting = begin("/heavy");
    until(() -> admission.waiting(Lane.COMPUTING) == 1);
    mustBeRefused(visitor.get("/heavy"));
    assertEquals(1, admission.refused(Lane.COMPUTING));
    assertEquals("light", visitor.get("/light").body());
    assertEquals(200, visitor.get("/health").statusCode());
    goOn.countDown();
    assertEquals("done", working.get(20, TimeUnit.SECONDS).body());
    assertEquals("done", waiting.get(20, TimeUnit.SECONDS).body());
    assertEquals(200, visitor.get("/heavy").statusCode());
  }

  @Test
  void aFullServerRefusesAtOnceStillTellsHowItIsLosesNothingAndRecoversByItself() throws Exception {
    List<CompletableFuture<HttpResponse<String>>> sent =
        IntStream.range(0, 20)
            .mapToObj(
                i ->
                    CompletableFuture.supplyAsync(
                        () ->
                            visitor
                                .with("Content-Type", "text/plain")
                                .send("POST", "/kept", BodyPublishers.ofString("take " + i)),
                        THREADS))
            .toList();
    until(() -> admission.refused(Lane.LIGHT) >= 10);
    mustBeRefused(visitor.get("/light"));
    HttpResponse<String> health = visitor.get("/health");
    assertEquals(503, health.statusCode());
    assertTrue(health.body().contains("Too much."), health.body());
    goOn.countDown();
    int acknowledged = 0;
    for (CompletableFuture<HttpResponse<String>> one : sent) {
      HttpResponse<String> answer = one.get(20, TimeUnit.SECONDS);
      if (answer.statusCode() == 201) {
        acknowledged++;
        assertTrue(kept.contains(answer.body()), answer.body());
      } else {
        mustBeRefused(answer);
      }
    }
    assertTrue(acknowledged >= 4, acknowledged + " of 20");
    assertEquals(acknowledged, kept.size(), "what was refused changed nothing");
    assertEquals("light", visitor.get("/light").body());
    until(() -> admission.working(Lane.LIGHT) == 0);
  }

  @Test
  void aRefusalDoesNotWaitForTheBody() throws Exception {
    fill();
    try (Socket socket = connect()) {
      write(socket, "POST /kept HTTP/1.1\r\nHost: 127.0.0.1\r\nContent-Length: 9\r\n\r\n");
      assertEquals(503, RawAnswer.read(socket.getInputStream()).status());
    }
  }

  @Test
  void whoSendsOrTakesSlowlyKeepsNobodyOut() throws Exception {
    goOn.countDown();
    try (Socket one = connect();
        Socket two = connect();
        Socket three = connect();
        Socket reader = connect()) {
      for (Socket slow : List.of(one, two, three)) {
        write(
            slow,
            "POST /kept HTTP/1.1\r\nHost: 127.0.0.1\r\nContent-Type: text/plain\r\n"
                + "Content-Length: 4\r\nConnection: close\r\n\r\nta");
      }
      write(reader, "GET /much HTTP/1.1\r\nHost: 127.0.0.1\r\nConnection: close\r\n\r\n");
      until(() -> traffic.inFlight() == 4 && admission.working(Lane.LIGHT) == 0);
      assertEquals("light", visitor.get("/light").body());
      write(three, "ke");
      assertEquals(201, RawAnswer.read(three.getInputStream()).status());
    }
  }

  @Test
  void aFaultGivesItsPlaceBack() {
    for (int i = 0; i < 5; i++) {
      assertEquals(500, visitor.get("/fault").statusCode());
    }
    assertEquals("light", visitor.get("/light").body());
    assertFalse(traffic.isStopping());
  }

  private void fill() {
    for (int i = 0; i < 4; i++) {
      var _ = begin("/slow");
    }
    until(() -> admission.working(Lane.LIGHT) == 2 && admission.waiting(Lane.LIGHT) == 2);
  }

  private Socket connect() throws IOException {
    return new Socket(InetAddress.getLoopbackAddress(), server.port());
  }

  private static void write(Socket socket, String text) throws IOException {
    socket.getOutputStream().write(text.getBytes(StandardCharsets.US_ASCII));
  }
}
