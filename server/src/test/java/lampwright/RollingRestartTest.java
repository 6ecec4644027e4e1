package lampwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.ConnectException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import lampwright.web.Documents;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Two servers behind a proxy are stopped and started again in turn while people read and write. */
@LongProgram
class RollingRestartTest {

  private static final String SETUPS = "/api/studios/demo/setups";
  private static final int WRITERS = 3;

  private final List<URI> upstreams = new CopyOnWriteArrayList<>();
  private final AtomicInteger turn = new AtomicInteger();
  private final Map<String, String> acknowledged = new ConcurrentHashMap<>();
  private final Queue<String> lost = new ConcurrentLinkedQueue<>();
  private final Semaphore written = new Semaphore(0);
  private final AtomicBoolean isOver = new AtomicBoolean();
  @RegisterExtension final ReachableFolder folder = new ReachableFolder();

  @Test
  void noAnswerIsLostAndNothingThatWasAcknowledged() throws Exception {
    HttpServer proxy =
        HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    try (ExecutorService threads = Executors.newVirtualThreadPerTaskExecutor();
        OnePostgres postgres = OnePostgres.start(folder)) {
      List<ServerProcess> servers = new ArrayList<>();
      try {
        servers.add(postgres.server("one"));
        servers.add(postgres.server("other"));
        servers.forEach(server -> upstreams.add(server.address()));
        proxy.setExecutor(threads);
        proxy.createContext("/", this::handOn);
        proxy.start();
        Visitor author =
            servers
                .getFirst()
                .author()
                .at(URI.create("http://127.0.0.1:" + proxy.getAddress().getPort()));
        List<Thread> writers = new ArrayList<>();
        for (int i = 0; i < WRITERS; i++) {
          String name = "w" + i;
          writers.add(Thread.ofVirtual().start(() -> writeAndRead(author, name)));
        }
        for (int i = 0; i < servers.size(); i++) {
          awaitMore(10);
          assertEquals(0, servers.get(i).stop());
          awaitMore(10);
          servers.set(i, postgres.server(i == 0 ? "one" : "other"));
          untilReady(servers.get(i));
          upstreams.set(i, servers.get(i).address());
        }
        awaitMore(10);
        isOver.set(true);
        for (Thread writer : writers) {
          assertTrue(writer.join(java.time.Duration.ofSeconds(60)), "A writer does not end");
        }
        assertEquals(List.of(), List.copyOf(lost));
        servers.forEach(server -> everythingIsThereAndFound(author.at(server.address())));
      } finally {
        isOver.set(true);
        servers.forEach(ServerProcess::close);
        proxy.stop(0);
      }
    }
  }

  /** As any proxy does: to the next server only what could not be sent to the first. */
  private void handOn(HttpExchange exchange) throws IOException {
    try (exchange) {
      byte[] body = exchange.getRequestBody().readAllBytes();
      int first = turn.getAndIncrement();
      for (int i = 0; i < upstreams.size(); i++) {
        URI upstream = upstreams.get(Math.floorMod(first + i, upstreams.size()));
        try {
          answer(exchange, send(exchange, upstream, body));
          return;
        } catch (ConnectException refused) {
          // The next one, then.
        } catch (IOException cut) {
          lost.add(exchange.getRequestMethod() + " was cut: " + cut);
          break;
        } catch (InterruptedException e) {
          Thread.currentThread().interrupt();
          break;
        }
      }
      exchange.sendResponseHeaders(502, -1);
    }
  }

  /** On a connection of its own: one that was kept may be closed just when it is used. */
  private static HttpResponse<byte[]> send(HttpExchange exchange, URI upstream, byte[] body)
      throws IOException, InterruptedException {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(upstream.resolve(exchange.getRequestURI()))
            .method(exchange.getRequestMethod(), BodyPublishers.ofByteArray(body));
    for (String header : List.of("Authorization", "Content-Type")) {
      String value = exchange.getRequestHeaders().getFirst(header);
      if (value != null) {
        request.header(header, value);
      }
    }
    try (HttpClient client = HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build()) {
      return client.send(request.build(), BodyHandlers.ofByteArray());
    }
  }

  private static void answer(HttpExchange exchange, HttpResponse<byte[]> answer)
      throws IOException {
    answer
        .headers()
        .firstValue("Location")
        .ifPresent(place -> exchange.getResponseHeaders().set("Location", place));
    exchange.sendResponseHeaders(
        answer.statusCode(), answer.body().length == 0 ? -1 : answer.body().length);
    exchange.getResponseBody().write(answer.body());
  }

  private void writeAndRead(Visitor author, String name) {
    for (int i = 0; !isOver.get(); i++) {
      String word = "rolled" + name + "x" + i;
      try {
        HttpResponse<String> made =
            author.post(SETUPS, Documents.json(Documents.setup("Written " + word)));
        if (made.statusCode() == 201) {
          String place = made.headers().firstValue("Location").orElseThrow();
          acknowledged.put(place, word);
          written.release();
          int read = author.get(place).statusCode();
          if (read != 200 && read != 503) {
            lost.add("GET gave " + read);
          }
        } else if (made.statusCode() != 503) {
          lost.add("POST gave " + made.statusCode() + " " + made.body());
        }
      } catch (UncheckedIOException e) {
        lost.add("no answer: " + e);
      }
    }
  }

  private void awaitMore(int more) throws InterruptedException {
    var _ = written.drainPermits();
    assertTrue(
        written.tryAcquire(more, 90, TimeUnit.SECONDS), "Nothing is written any more: " + lost);
  }

  private static void untilReady(ServerProcess server) {
    Visitor visitor = new Visitor(server.address());
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
    while (visitor.get("/health/ready").statusCode() != 200) {
      assertTrue(System.nanoTime() < end, visitor.get("/health/ready").body());
    }
  }

  /** Also what was written while this one was away. */
  private void everythingIsThereAndFound(Visitor author) {
    acknowledged.forEach(
        (place, word) -> {
          assertEquals(200, author.get(place).statusCode(), place);
          long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(30);
          while (Visitor.items(author.get(SETUPS + "?q=" + word)).stream()
              .noneMatch(item -> place.endsWith(Told.at(item, "id").toString()))) {
            assertTrue(System.nanoTime() < end, word);
          }
        });
  }
}
