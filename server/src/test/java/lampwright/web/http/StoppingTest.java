package lampwright.web.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.SocketException;
import java.net.URI;
import java.net.http.HttpResponse;
import java.security.SecureRandom;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import lampwright.Visitor;
import lampwright.metrics.Metrics;
import org.junit.jupiter.api.Test;

class StoppingTest {

  @Test
  void aRequestThatIsBeingAnsweredIsFinishedBeforeTheServerStops() throws Exception {
    CountDownLatch begun = new CountDownLatch(1);
    CountDownLatch goOn = new CountDownLatch(1);
    HttpServer server =
        start(
            0,
            routes ->
                routes.get(
                    "/api/slow",
                    context -> {
                      begun.countDown();
                      goOn.await();
                      context.result("finished");
                    },
                    Access.Outside.ANYONE));
    Visitor visitor = new Visitor(URI.create("http://127.0.0.1:" + server.port()));
    CompletableFuture<HttpResponse<String>> answer =
        CompletableFuture.supplyAsync(() -> visitor.get("/api/slow"));
    assertTrue(begun.await(20, TimeUnit.SECONDS));
    int port = server.port();
    CompletableFuture<Void> stopped = CompletableFuture.runAsync(server::close);
    awaitRefused(port);
    goOn.countDown();
    assertEquals("finished", answer.get(20, TimeUnit.SECONDS).body());
    stopped.get(20, TimeUnit.SECONDS);
    assertThrows(UncheckedIOException.class, () -> visitor.get("/api/slow"));
  }

  @Test
  void aPortThatIsTakenIsToldInOneLine() {
    HttpServer first = start(0, _ -> {});
    try {
      AddressUnusable refused =
          assertThrows(AddressUnusable.class, () -> start(first.port(), _ -> {}));
      String told = String.valueOf(refused.getMessage());
      assertTrue(told.startsWith("LAMPWRIGHT_PORT (" + first.port() + ")"), told);
    } finally {
      first.close();
    }
  }

  /** Until nobody new is let in; the one inside is still being answered. */
  private static void awaitRefused(int port) throws IOException {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(2);
    while (System.nanoTime() < end) {
      try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
        assertTrue(socket.isConnected());
      } catch (SocketException refusedOrReset) {
        return;
      }
    }
    throw new AssertionError("The server still lets in.");
  }

  private static HttpServer start(int port, Consumer<RouteList> routes) {
    Door door =
        new Door(
            _ -> Optional.empty(),
            _ -> Optional.empty(),
            Optional.empty(),
            (_, _, _) -> {},
            new SessionCookie(false),
            new CsrfTokens(new SecureRandom()));
    return HttpServer.start(
        new HttpServer.Place("127.0.0.1", port, false, new HostNames(List.of())),
        door,
        (problem, _) -> problem.kind().slug(),
        new SecureRandom(),
        Traffic.unbounded(new Metrics()),
        routes);
  }
}
