package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import lampwright.TestHouse;
import lampwright.Visitor;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/**
 * No page takes a second connection while it holds one: with as many people at once as there are
 * connections, each would wait for another's. Where there is one connection, one person is enough.
 */
class OneConnectionTest {

  @RegisterExtension static final TestHouse house = TestHouse.withDemoAndOneConnection();

  /** What a thing is called in an address, behind the kind of thing that it is. */
  private static final Pattern THING =
      Pattern.compile(
          "/(studios|setups|kits|gear|locations|pictures|takes|notes|trails|stages|searches|glossary)"
              + "/(?!new\\b)[^/]+");

  @Test
  void everyKindOfPageIsShownWithASingleConnection() {
    assertTrue(
        house
            .visitor()
            .get("/metrics")
            .body()
            .contains("hikaricp_connections_max{pool=\"lampwright\"} 1"),
        "the house has more connections than one");
    Visitor owner = house.signedIn("owner@demo.example");
    Set<String> seen = new TreeSet<>();
    Deque<String> waiting = new ArrayDeque<>(Set.of("/studios/demo/setups", "/account"));
    while (!waiting.isEmpty()) {
      String path = waiting.remove();
      if (!seen.add(kind(path))) {
        continue;
      }
      HttpResponse<String> page = owner.get(path);
      assertTrue(page.statusCode() < 400, path + ": " + page.statusCode() + " " + page.body());
      page.headers().firstValue("Location").ifPresent(waiting::add);
      if (page.headers().firstValue("Content-Type").orElse("").startsWith("text/html")) {
        for (Element link : Jsoup.parse(page.body()).select("a[href^=/]")) {
          waiting.add(link.attr("href").replaceFirst("#.*", ""));
        }
      }
    }
    assertTrue(seen.contains("/studios/{}/setups/{}"), seen.toString());
    assertTrue(seen.size() > 30, seen.toString());
  }

  private static String kind(String path) {
    return THING.matcher(path.replaceFirst("[?].*", "")).replaceAll("/$1/{}");
  }
}
