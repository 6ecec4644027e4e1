package lampwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.web.EveryKindOfThing;
import lampwright.web.TrailsOverRestTest;
import lampwright.web.http.ServedRoute;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/**
 * Every page that links lead to, in a real browser: held against the rules of axe-core in both
 * themes, narrow enough for its window, without a complaint and without a request to anywhere else.
 */
@Order(1)
class EveryPageTest {

  /** Pages that no link leads to from inside; each has its own test. */
  private static final Set<String> ELSEWHERE =
      Set.of(
          "/",
          // For programs, which are told of it by the README.
          "/metrics",
          "/sign-in",
          "/sign-in/code",
          "/first-owner/{secret}",
          "/invitations/{secret}",
          "/password-reset/{secret}",
          "/problems/{kind}",
          "/studios/{studio}/imports/{import}",
          // The demo's members cannot leave.
          "/account/leaving/question",
          "/shared/{secret}/pictures/{picture}",
          // A form that was refused shows it again at its own address, and these are such.
          "/studios/{studio}/setups/{setup}/used",
          "/studios/{studio}/setups/{setup}/share-links",
          "/studios/{studio}/setups/{setup}/proposals/{proposal}",
          "/studios/{studio}/setups/{setup}/takes/{take}",
          "/studios/{studio}/setups/{setup}/notes");

  /** All setups, some, and none. */
  private static final List<String> SEARCHES =
      List.of(
          "/studios/demo/setups",
          "/studios/demo/setups?q=cold+lonely+first+light",
          "/studios/demo/setups?q=zzzzqqqq");

  private static final List<String> RULES =
      List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice");

  private static final String AXE =
      """
      const [rules] = arguments;
      const told = (found) => found.violations.map(
        (one) => one.id + ": " + one.nodes.map((node) => node.target.join(" ")).slice(0, 3).join("; "));
      const axe = window.axe;
      const root = document.documentElement;
      const before = root.dataset.theme;
      root.dataset.theme = "day";
      return axe.run(document, {runOnly: {type: "tag", values: rules}, resultTypes: ["violations"]}).then(async (day) => {
        root.dataset.theme = "dim";
        const dim = await axe.run(document, {runOnly: {type: "rule", values: ["color-contrast"]}, resultTypes: ["violations"]});
        if (before) { root.dataset.theme = before; } else { delete root.dataset.theme; }
        return [...told(day), ...told(dim).map((one) => "dim: " + one)];
      });
      """;

  @RegisterExtension static final Browser browser = Browser.phone();

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private final Deque<String> open = new ArrayDeque<>();
  private final Set<String> seen = new TreeSet<>();
  private final Map<String, String> visited = new TreeMap<>();
  private final List<String> wrong = new ArrayList<>();
  private final String axe = axe();

  private static String axe() {
    try (InputStream script = EveryPageTest.class.getResourceAsStream("/axe.min.js")) {
      return new String(Objects.requireNonNull(script).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void everyPageKeepsTheRulesOfAccessibilityAndStaysInItsWindow() {
    browser.open(address("/sign-in"));
    look("/sign-in");
    Visitor owner = house.signedIn("owner@demo.example");
    String[] cookie = owner.header("Cookie").split("=", 2);
    browser.takeCookie(cookie[0], cookie[1]);
    Map<String, String> made =
        new EveryKindOfThing(
                "/api/studios/demo",
                house.withToken("owner@demo.example"),
                house.withToken("crew@demo.example"))
            .make();
    String setup = page(made, "setup");
    String picture = page(made, "picture");
    open.addAll(List.of(setup, picture, page(made, "location")));
    // Forms lead to these.
    open.addAll(List.of(setup + "/changes?from=1&to=2", picture + "/removal"));
    open.addAll(SEARCHES);
    open.add(handedIn());
    open.add(shown());
    while (!open.isEmpty()) {
      visit(open.remove());
    }
    // Seven lights on a phone: the handles of the drawings lie close together.
    browser.open(address("/studios/demo/setups/overthecut/edit"));
    browser.await(() -> !browser.all(".desk-view-plan .handle").isEmpty());
    look("a crowded setup");
    assertEquals(List.of(), wrong);
    Set<String> missed = new TreeSet<>();
    for (ServedRoute route : house.routes()) {
      if (isPage(route) && !visited.containsKey(route.path())) {
        missed.add(route.path());
      }
    }
    missed.removeAll(ELSEWHERE);
    assertEquals(Set.of(), missed, "no link leads to these pages");
  }

  /** A setup as somebody outside sees it. */
  private static String shown() {
    return String.valueOf(
        Visitor.object(
                house
                    .withToken("author@demo.example")
                    .post("/api/studios/demo/setups/overthecut/share-links", "{}"))
            .get("address"));
  }

  /** A build that waits to be judged. */
  private static String handedIn() {
    Visitor author = house.withToken("author@demo.example");
    Visitor crew = house.withToken("crew@demo.example");
    String studio = "/api/studios/demo";
    String trail =
        author
            .post(studio + "/trails", TrailsOverRestTest.trail("Looked at", "overthecut"))
            .headers()
            .firstValue("Location")
            .orElseThrow();
    crew.post(trail + "/stages/read/done", "");
    String run =
        TrailsOverRestTest.runThrough(crew, studio + "/setups/overthecut", "looked-at-1", 8);
    crew.post(trail + "/stages/build/builds", "{\"take\":\"" + run + "\"}");
    Object build = Visitor.items(author.get(studio + "/builds")).getLast();
    return "/studios/demo/builds/" + Told.at(build, "id");
  }

  private static String page(Map<String, String> made, String thing) {
    return Objects.requireNonNull(made.get(thing)).substring("/api".length());
  }

  private static boolean isPage(ServedRoute route) {
    return route.verb().equals("GET")
        && !route.path().startsWith("/api/")
        && !route.path().startsWith("/assets/")
        && !route.path().matches(".*\\.(pdf|js|webmanifest)")
        && !route.path().startsWith("/health/");
  }

  private void visit(String link) {
    String path = URI.create(link).getPath();
    Optional<String> route =
        house.routes().stream()
            .filter(EveryPageTest::isPage)
            .map(ServedRoute::path)
            .filter(pattern -> matches(pattern, path))
            .min((one, other) -> Integer.compare(braces(one), braces(other)));
    if (route.isEmpty() || (visited.containsKey(route.get()) && !SEARCHES.contains(link))) {
      return;
    }
    if (!seen.add(link)) {
      return;
    }
    visited.put(route.get(), link);
    browser.open(address(link));
    look(link);
  }

  /** Looks at the page that is shown, and remembers where its links lead. */
  private void look(String link) {
    browser.showWhole();
    browser.run(axe);
    browser.list(AXE, RULES).forEach(one -> wrong.add(link + " " + one));
    browser.showUsual();
    if (browser.overflow() != 0) {
      wrong.add(link + " is " + browser.overflow() + " pixels too wide");
    }
    browser.complaints().forEach(complaint -> wrong.add(link + " " + complaint));
    String here = address("/");
    browser.loadedFrom().stream()
        .filter(from -> !from.startsWith(here))
        .forEach(from -> wrong.add(link + " loads " + from));
    open.addAll(
        browser.list(
            "return [...document.querySelectorAll('main a[href], header a[href]')].map(a =>"
                + " a.getAttribute('href')).filter(h =>"
                + " h.startsWith('/')).concat([...document.querySelectorAll('main"
                + " form:not([method=post]) select[name=kit]')].flatMap(s =>"
                + " [...s.options].slice(0, 2).map(o => new URL(s.form.action).pathname + '?kit=' +"
                + " encodeURIComponent(o.value))))"));
  }

  private static boolean matches(String pattern, String path) {
    String regex = Pattern.compile("\\{[^}]*}|<[^>]*>").matcher(pattern).replaceAll("[^/]+");
    return path.matches(regex);
  }

  private static int braces(String pattern) {
    return (int) pattern.chars().filter(c -> c == '{').count();
  }

  private static String address(String path) {
    return house.visitor().address(path).toString();
  }
}
