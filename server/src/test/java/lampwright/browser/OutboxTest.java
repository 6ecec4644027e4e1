package lampwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import lampwright.document.Json;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/**
 * Entries of the day on their way from a phone whose tab is lost, over a line that loses every
 * fifth answer after the server took what was sent. The server here is the test's own: it does what
 * ours promises of a client key, and breaks the line.
 */
class OutboxTest {

  private static final int MANY = 25;

  private static final String LOG =
      """
      const [many] = arguments;
      return import("/assets/field-outbox.js").then(async ({ log, entriesOf, Sender }) => {
        for (let i = 0; i < many; i += 1) {
          await log({ person: "p1", path: "/studios/demo/setups/s1", title: "A quay", offset: "+01:00" },
            { kind: "take", setup_revision: 1, why: String(i) });
        }
        const { state } = await new Sender().run();
        return [state, (await entriesOf("p1")).length];
      });
      """;

  private static final String SEND =
      """
      return import("/assets/field-outbox.js").then(async ({ entriesOf, Sender }) => {
        const two = [new Sender(), new Sender()];
        const left = async () => (await entriesOf("p1")).filter((entry) => entry.state !== "sent").length;
        for (let round = 0; round < 40 && await left() > 0; round += 1) {
          await Promise.all(two.map((sender) => sender.run()));
          two.forEach((sender) => clearTimeout(sender.timer));
        }
        return [await left()];
      });
      """;

  @RegisterExtension static final Browser browser = Browser.smallPhone();

  private static final Line line = new Line();

  @BeforeAll
  static void theLineIsThere() throws IOException {
    line.open();
  }

  @AfterAll
  static void theLineIsTakenAway() {
    line.close();
  }

  @Test
  void whatWasLoggedWithoutSignalArrivesOnceAndInItsOrder() {
    browser.open(line.address());
    assertEquals(List.of("away", String.valueOf(MANY)), browser.list(LOG, MANY));
    browser.loseTheTab();
    line.hasSignal = true;
    browser.open(line.address());
    assertEquals(List.of("0"), browser.list(SEND), "entries that are left");
    assertEquals(
        IntStream.range(0, MANY).mapToObj(String::valueOf).toList(),
        line.held.values().stream().map(take -> String.valueOf(take.get("why"))).toList());
    List<String> times =
        line.held.values().stream().map(take -> String.valueOf(take.get("at"))).toList();
    assertEquals(times.stream().sorted().distinct().toList(), times, "times rise");
    assertEquals(MANY + line.lost, line.asked, "what was lost was sent once more, nothing else");
  }

  /** A server with a line that can be cut. */
  private static final class Line {

    private final Map<String, Map<?, ?>> held = new LinkedHashMap<>();
    private final List<HttpServer> servers = new ArrayList<>();
    private volatile boolean hasSignal;
    private int asked;
    private int lost;

    void open() throws IOException {
      HttpServer server = HttpServer.create(new InetSocketAddress("127.0.0.1", 0), 0);
      server.createContext("/", this::answer);
      server.start();
      servers.add(server);
    }

    void close() {
      servers.forEach(server -> server.stop(0));
    }

    String address() {
      return "http://127.0.0.1:" + servers.getFirst().getAddress().getPort() + "/";
    }

    private void answer(HttpExchange exchange) throws IOException {
      String path = exchange.getRequestURI().getPath();
      if (path.startsWith("/assets/")) {
        say(exchange, 200, "text/javascript", asset(path));
      } else if (!path.startsWith("/api/")) {
        say(exchange, 200, "text/html", "<!doctype html><title>A phone</title>");
      } else if (!hasSignal) {
        exchange.close();
      } else if (path.equals("/api/session")) {
        say(
            exchange,
            200,
            "application/json",
            "{\"person\":{\"id\":\"p1\"},\"csrf_token\":\"proof\"}");
      } else {
        take(exchange);
      }
    }

    private synchronized void take(HttpExchange exchange) throws IOException {
      String body = new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.UTF_8);
      Map<?, ?> take = (Map<?, ?>) Json.parse(body);
      boolean isNew = held.putIfAbsent(String.valueOf(take.get("client_key")), take) == null;
      asked++;
      if (isNew && held.size() % 5 == 0) {
        lost++;
        exchange.close();
        return;
      }
      String told = "{\"number\":%d,\"document\":%s}".formatted(held.size(), body);
      say(exchange, isNew ? 201 : 200, "application/json", told);
    }

    private static String asset(String path) throws IOException {
      try (InputStream module =
          Objects.requireNonNull(OutboxTest.class.getResourceAsStream("/lampwright" + path))) {
        return new String(module.readAllBytes(), StandardCharsets.UTF_8);
      }
    }

    private static void say(HttpExchange exchange, int status, String type, String body)
        throws IOException {
      byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
      exchange.getResponseHeaders().set("Content-Type", type);
      exchange.sendResponseHeaders(status, bytes.length);
      exchange.getResponseBody().write(bytes);
      exchange.close();
    }
  }
}
