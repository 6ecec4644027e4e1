package lampwright.web.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import lampwright.Visitor;
import lampwright.metrics.Metrics;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/**
 * Who sends or takes a byte now and then (the attacks called slow head, slow body and slow reader)
 * is cut off, while others are served.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SlowPeersTest {

  /** So short that nobody waits for the tests; silence alone would let each go on for ever. */
  private static final Patience SHORT =
      new Patience(
          Duration.ofSeconds(20), Duration.ofMillis(800), Duration.ofMillis(600), 4096, 20, 4000);

  private static final String HEAD = "Host: localhost\r\n";

  private HttpServer server;

  @BeforeAll
  void aServerWithLittlePatienceIsStarted() {
    server = start(SHORT);
  }

  private static HttpServer start(Patience patience) {
    return HttpServer.start(
        new HttpServer.Place(
            "127.0.0.1", 0, false, new HostNames(List.of()), false, Optional.empty(), patience),
        new Door(
            _ -> Optional.empty(),
            _ -> Optional.empty(),
            Optional.empty(),
            (_, _, _) -> {},
            new SessionCookie(false),
            new CsrfTokens(new SecureRandom())),
        (problem, _) -> problem.kind().slug(),
        new SecureRandom(),
        Traffic.unbounded(new Metrics()),
        routes -> {
          routes.get("/api/short", context -> context.result("short"), Access.Outside.ANYONE);
          routes.get(
              "/api/long", context -> context.result(new byte[64 << 20]), Access.Outside.ANYONE);
          routes.post(
              "/api/body",
              context -> context.result("" + Body.plainText(context).length()),
              Access.Outside.ANYONE);
        });
  }

  @AfterAll
  void itStops() {
    server.close();
  }

  private Socket connect() throws IOException {
    return connect(server);
  }

  private static Socket connect(HttpServer server) throws IOException {
    Socket socket = new Socket();
    socket.setReceiveBufferSize(4096);
    socket.connect(new InetSocketAddress(InetAddress.getLoopbackAddress(), server.port()));
    socket.setSoTimeout(20_000);
    return socket;
  }

  private static void write(Socket socket, String text) throws IOException {
    socket.getOutputStream().write(text.getBytes(StandardCharsets.US_ASCII));
  }

  /** With so little patience a slow machine is cut off too, and comes again. */
  private void othersAreServed() {
    Visitor other = new Visitor(URI.create("http://127.0.0.1:" + server.port()));
    for (int tries = 0; tries < 20; tries++) {
      try {
        assertEquals("short", other.get("/api/short").body());
        return;
      } catch (UncheckedIOException cut) {
        assertTrue(tries < 19, "nobody is served");
      }
    }
  }

  /** Sends a byte every now and then until the other side has enough of it. */
  private static long millisUntilCut(Socket socket, String drop) throws InterruptedException {
    long begun = System.nanoTime();
    long end = begun + TimeUnit.SECONDS.toNanos(15);
    try {
      OutputStream out = socket.getOutputStream();
      while (System.nanoTime() < end) {
        out.write(drop.getBytes(StandardCharsets.US_ASCII));
        out.flush();
        // Slowness is what is tested here.
        TimeUnit.MILLISECONDS.sleep(40);
        if (socket.getInputStream().available() > 0) {
          break;
        }
      }
    } catch (IOException cut) {
      return TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - begun);
    }
    return TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - begun);
  }

  @Test
  void aHeadThatTricklesIsCutOff() throws Exception {
    try (Socket slow = connect()) {
      write(slow, "GET /api/short HTTP/1.1\r\n" + HEAD + "X-Slow: ");
      othersAreServed();
      long millis = millisUntilCut(slow, "a");
      assertTrue(millis < 5_000, millis + " ms");
    }
  }

  @Test
  void theSecondHeadOfAConnectionIsHeldToTheSame() throws Exception {
    try (Socket slow = connect()) {
      write(slow, "GET /api/short HTTP/1.1\r\n" + HEAD + "\r\n");
      byte[] answer = new byte[2000];
      assertTrue(slow.getInputStream().read(answer) > 0);
      write(slow, "GET /api/short HTTP/1.1\r\n");
      long millis = millisUntilCut(slow, "X");
      assertTrue(millis < 5_000, millis + " ms");
    }
  }

  @Test
  void aBodyThatTricklesIsCutOff() throws Exception {
    try (Socket slow = connect()) {
      write(
          slow,
          "POST /api/body HTTP/1.1\r\n"
              + HEAD
              + "Content-Type: text/plain\r\nContent-Length: 100000\r\n\r\n");
      othersAreServed();
      long millis = millisUntilCut(slow, "a");
      assertTrue(millis < 5_000, millis + " ms");
    }
  }

  @Test
  void aBodyThatIsSlowButComesIsRead() throws Exception {
    try (Socket slow = connect()) {
      write(
          slow,
          "POST /api/body HTTP/1.1\r\n"
              + HEAD
              + "Connection: close\r\nContent-Type: text/plain\r\nContent-Length: 12000\r\n\r\n");
      // Longer than the patience with a body that brings nothing.
      for (int i = 0; i < 20; i++) {
        write(slow, "a".repeat(600));
        TimeUnit.MILLISECONDS.sleep(50);
      }
      String answer = new String(slow.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      assertTrue(answer.startsWith("HTTP/1.1 200") && answer.endsWith("12000"), answer);
    }
  }

  @Test
  void whoDoesNotTakeTheirAnswerIsCutOff() throws Exception {
    // The buffers of the network take some MB at once, which must not count for long.
    HttpServer hasty =
        start(
            new Patience(
                SHORT.silence(), Duration.ofMillis(800), SHORT.grace(), 16 << 20, 20, 4000));
    try (Socket slow = connect(hasty)) {
      write(slow, "GET /api/long HTTP/1.1\r\n" + HEAD + "\r\n");
      long begun = System.nanoTime();
      long taken = 0;
      try {
        while (TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - begun) < 1_500) {
          taken += slow.getInputStream().read(new byte[64]);
          TimeUnit.MILLISECONDS.sleep(20);
        }
        // What lies in the buffers between comes still, and then no more.
        taken += slow.getInputStream().readAllBytes().length;
      } catch (IOException cut) {
        assertTrue(taken > 0);
      }
      assertTrue(taken < 32 << 20, taken + " bytes");
    } finally {
      hasty.close();
    }
  }

  @Test
  void whoOpensTooManyConnectionsKeepsNoneBeyondTheBound() throws Exception {
    List<Socket> all = new ArrayList<>();
    try {
      for (int i = 0; i < SHORT.fromOneAddress() + 5; i++) {
        all.add(connect());
      }
      int cut = 0;
      for (Socket one : all.subList(SHORT.fromOneAddress(), all.size())) {
        cut += one.getInputStream().read() < 0 ? 1 : 0;
      }
      assertEquals(5, cut);
    } finally {
      for (Socket one : all) {
        one.close();
      }
    }
  }
}
