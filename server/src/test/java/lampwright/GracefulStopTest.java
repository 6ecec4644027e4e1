package lampwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.ConnectException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.SocketException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import lampwright.document.Json;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/**
 * A server process is told to stop while many go on asking, each over a connection that it keeps.
 */
@LongProgram
class GracefulStopTest {

  private static final int CLIENTS = 6;

  @RegisterExtension final ReachableFolder folder = new ReachableFolder();

  /** What one client saw until nobody took its calls any more. */
  private record Seen(List<String> answers, int closedUnasked) {}

  /** One whole answer. */
  private record Answer(int status, boolean isLast, String body) {

    /** Reads one; empty text where the connection ended before its first byte. */
    static Answer read(InputStream in) throws IOException {
      StringBuilder head = new StringBuilder();
      while (head.indexOf("\r\n\r\n") < 0) {
        int next = in.read();
        if (next < 0) {
          if (head.isEmpty()) {
            throw new ClosedBefore();
          }
          throw new AssertionError("The head of an answer broke off: " + head);
        }
        head.append((char) next);
      }
      String lower = head.toString().toLowerCase(Locale.ROOT);
      byte[] body =
          lower.contains("transfer-encoding: chunked")
              ? chunks(in)
              : bytes(
                  in, Integer.parseInt(lower.split("content-length: ", 2)[1].split("\r", 2)[0]));
      return new Answer(
          Integer.parseInt(head.substring(9, 12)),
          lower.contains("connection: close"),
          new String(body, StandardCharsets.UTF_8));
    }

    private static byte[] chunks(InputStream in) throws IOException {
      ByteArrayOutputStream all = new ByteArrayOutputStream();
      for (int length = length(in); length > 0; length = length(in)) {
        all.write(bytes(in, length));
        bytes(in, 2);
      }
      bytes(in, 2);
      return all.toByteArray();
    }

    private static int length(InputStream in) throws IOException {
      StringBuilder line = new StringBuilder();
      for (int next = in.read(); next != '\n'; next = in.read()) {
        assertTrue(next >= 0, "The body of an answer broke off");
        line.append((char) next);
      }
      return Integer.parseInt(line.toString().strip(), 16);
    }

    private static byte[] bytes(InputStream in, int length) throws IOException {
      byte[] bytes = in.readNBytes(length);
      assertEquals(length, bytes.length, "The body of an answer broke off");
      return bytes;
    }
  }

  private static final class ClosedBefore extends IOException {}

  /** Asks again and again until nobody lets it in. */
  private static Seen ask(int port, String path, CountDownLatch begun) throws IOException {
    List<String> answers = new ArrayList<>();
    int closed = 0;
    while (true) {
      try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
        socket.setSoTimeout(30_000);
        InputStream in = new BufferedInputStream(socket.getInputStream());
        boolean isLast = false;
        while (!isLast) {
          byte[] request =
              "GET %s HTTP/1.1\r\nHost: 127.0.0.1\r\n\r\n"
                  .formatted(path)
                  .getBytes(StandardCharsets.US_ASCII);
          socket.getOutputStream().write(request);
          Answer answer = Answer.read(in);
          answers.add(answer.status() + " " + answer.body());
          begun.countDown();
          isLast = answer.isLast();
        }
      } catch (ConnectException refused) {
        return new Seen(answers, closed);
      } catch (ClosedBefore | SocketException e) {
        closed++;
      }
    }
  }

  @Test
  void noRequestIsLostWhileItStopsAndItsLogIsJson() throws Exception {
    Path data = Files.createDirectories(folder.resolve("data"));
    Map<String, String> settings =
        Map.of(
            "LAMPWRIGHT_DRAIN_SECONDS", "1",
            "LAMPWRIGHT_LOG", "json",
            "LAMPWRIGHT_VISITOR_REQUESTS_PER_MINUTE", "0",
            // Not the one of the tests.
            "JDK_JAVA_OPTIONS", "-Dlogback.configurationFile=logback.xml");
    try (ServerProcess server = ServerProcess.start(data, settings);
        ExecutorService threads = Executors.newVirtualThreadPerTaskExecutor()) {
      int port = server.address().getPort();
      CountDownLatch begun = new CountDownLatch(CLIENTS + 1);
      List<Future<Seen>> clients = new ArrayList<>();
      for (int i = 0; i < CLIENTS; i++) {
        String path = i % 2 == 0 ? "/api/openapi.json" : "/sign-in";
        Callable<Seen> client = () -> ask(port, path, begun);
        clients.add(threads.submit(client));
      }
      Future<Seen> watcher = threads.submit(() -> ask(port, "/health/ready", begun));
      assertTrue(begun.await(60, TimeUnit.SECONDS));
      assertEquals(0, server.stop());
      for (Future<Seen> client : clients) {
        Seen seen = client.get(30, TimeUnit.SECONDS);
        assertTrue(seen.answers().stream().allMatch(answer -> answer.startsWith("200 ")));
        assertEquals(1, seen.answers().stream().distinct().count(), "each is the same whole");
        // One that had come in as the door was closed; nothing of it had been answered.
        assertTrue(seen.closedUnasked() <= 1, seen.closedUnasked() + " times");
      }
      List<String> told = watcher.get(30, TimeUnit.SECONDS).answers();
      assertTrue(told.getFirst().startsWith("200 "), told.getFirst());
      assertTrue(told.getLast().startsWith("503 "), told.getLast());
      assertTrue(told.getLast().contains("being stopped"), told.getLast());
    }
    mustBeJson(Files.readAllLines(folder.resolve("server.log")));
  }

  private static void mustBeJson(List<String> log) {
    List<Map<?, ?>> lines = new ArrayList<>();
    for (String line : log) {
      if (line.startsWith("{")) {
        lines.add((Map<?, ?>) Json.parse(line));
      } else {
        // The virtual machine's own words, which no setting of ours can change.
        assertTrue(line.isBlank() || line.startsWith("WARNING:") || line.startsWith("NOTE:"), line);
      }
    }
    Map<?, ?> request =
        lines.stream()
            .filter(line -> "/health/ready".equals(line.get("route")))
            .findFirst()
            .orElseThrow();
    assertFalse(Instant.parse(String.valueOf(request.get("time"))).isAfter(Instant.now()));
    assertEquals("INFO", request.get("level"));
    assertEquals("lampwright.requests", request.get("loggerName"));
    assertEquals("GET", request.get("method"));
    assertEquals("200", String.valueOf(request.get("status")).replace(".0", ""));
    assertTrue(String.valueOf(Told.at(request, "mdc", "request")).matches("[0-9a-z]{10}"));
    for (String number : List.of("ms", "bytes")) {
      assertTrue(request.get(number) instanceof Number, request.toString());
    }
  }
}
