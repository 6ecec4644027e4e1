package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
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
import lampwright.document.Json;
import lampwright.web.http.ServedRoute;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.TextNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/**
 * Every page that links lead to, as a German reads it: beside what people wrote themselves, and
 * what is marked as English, no word of it is English.
 */
class GermanReaderTest {

  /** Words that hardly an English sentence is without, and that no German one has. */
  private static final Pattern ENGLISH =
      Pattern.compile(
          "\\b(the|of|and|with|from|is|not|to|are|that|this|its?|has|have|for|than|which|how|were"
              + "|here|there|only|each|every|where|between|stops?|lights|heads|known|kept|taken"
              + "|without|nothing|no|be|by|at|or)\\b",
          Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CHARACTER_CLASS);

  /** Words of the search's brackets, which are English in every language. */
  private static final Pattern TYPED = Pattern.compile("„(or|to|from|above|up to|below|without)“");

  private static final Set<String> SPOKEN = Set.of("aria-label", "placeholder", "alt", "title");

  /** Workings of the engine, words of the search's brackets, names of languages in themselves. */
  private static final Set<String> ENGLISH_ON =
      Set.of(
          "/preferences",
          "/studios/{studio}/setups",
          "/studios/{studio}/setups/{setup}",
          "/studios/{studio}/setups/{setup}/adapted",
          "/studios/{studio}/setups/{setup}/figures");

  private static final List<String> FIRST =
      List.of(
          "/studios/demo/setups",
          "/studios/demo/setups?q=cold+lonely+first+light",
          "/studios/demo/setups?q=zzzzqqqq",
          "/studios/demo/setups?q=%5Blights+11+to+12%5D",
          "/nowhere",
          "/problems/clash",
          "/problems/not-proven");

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private final Set<String> own = new TreeSet<>(longestFirst());
  private final Deque<String> open = new ArrayDeque<>(FIRST);
  private final Set<String> visited = new HashSet<>();
  private final List<String> wrong = new ArrayList<>();
  private int pages;
  private final Map<String, Integer> marked = new TreeMap<>();

  private static Comparator<String> longestFirst() {
    return Comparator.comparingInt(String::length)
        .reversed()
        .thenComparing(Comparator.naturalOrder());
  }

  @Test
  void noPageSpeaksEnglishToAGermanReader() {
    Visitor programs = house.withToken("owner@demo.example");
    Map<String, String> made =
        new EveryKindOfThing("/api/studios/demo", programs, house.withToken("crew@demo.example"))
            .make();
    for (String list : List.of("setups", "kits", "gear", "locations", "trails")) {
      Visitor.items(programs.get("/api/studios/demo/" + list + "?limit=50"))
          .forEach(
              item -> {
                String id = Told.at(item, "id").toString();
                collect(Json.parse(programs.get("/api/studios/demo/" + list + "/" + id).body()));
              });
    }
    // What has gone or is called otherwise now is still told of by the name that it had.
    Visitor.items(programs.get("/api/studios/demo/audit?limit=100"))
        .forEach(line -> collect(Told.at(line, "subject", "name")));
    for (String thing : made.values()) {
      Optional.of(programs.get(thing))
          .filter(told -> told.statusCode() == 200 && told.body().startsWith("{"))
          .ifPresent(told -> collect(Json.parse(told.body())));
    }
    String setup = page(made, "setup");
    open.addAll(
        List.of(
            setup, page(made, "picture"), page(made, "location"), setup + "/changes?from=1&to=2"));
    Visitor german = house.signedIn("owner@demo.example").with("Accept-Language", "de");
    while (!open.isEmpty()) {
      visit(open.remove(), german);
    }
    assertEquals(List.of(), wrong);
    assertTrue(pages > 25, "only " + pages + " pages were read");
    assertEquals(ENGLISH_ON, marked.keySet(), () -> "marked as English: " + marked);
  }

  private static String page(Map<String, String> made, String thing) {
    return Objects.requireNonNull(made.get(thing)).substring("/api".length());
  }

  /** What people wrote: every text that a document holds. */
  private void collect(Object json) {
    switch (json) {
      case String text when text.strip().length() > 1 -> {
        own.add(tidy(text));
        // Pages show the paragraphs of a text one by one.
        Arrays.stream(text.split("\\R\\s*\\R", -1))
            .filter(paragraph -> paragraph.strip().length() > 1)
            .forEach(paragraph -> own.add(tidy(paragraph)));
      }
      case Map<?, ?> map -> map.values().forEach(this::collect);
      case List<?> list -> list.forEach(this::collect);
      default -> {}
    }
  }

  private void visit(String link, Visitor german) {
    String path = URI.create(link).getPath();
    String route =
        house.routes().stream()
            .filter(served -> served.verb().equals("GET"))
            .map(ServedRoute::path)
            .filter(pattern -> path.matches(pattern.replaceAll("\\{[^}]*}|<[^>]*>", "[^/]+")))
            .min((one, other) -> Integer.compare(braces(one), braces(other)))
            .orElse("");
    boolean isSearch = FIRST.contains(link);
    if (route.startsWith("/api") || route.startsWith("/assets")) {
      return;
    }
    if (!visited.add(isSearch ? link : route)) {
      return;
    }
    Document page = Jsoup.parse(german.get(link).body());
    pages++;
    for (Element element : page.getAllElements()) {
      look(link, route, element);
    }
    page.select("main a[href^=/], header a[href^=/]").stream()
        .map(a -> a.attr("href"))
        .filter(to -> !to.contains(".pdf"))
        .forEach(open::add);
    page.select("main form:not([method=post]) select[name=kit]")
        .forEach(
            kits ->
                open.add(
                    Objects.requireNonNull(kits.closest("form")).attr("action")
                        + "?kit="
                        + kits.select("option[value~=.+]").attr("value")));
  }

  private static int braces(String pattern) {
    return (int) pattern.chars().filter(c -> c == '{').count();
  }

  private void look(String link, String route, Element element) {
    if (Set.of("script", "style").contains(element.normalName())) {
      return;
    }
    Element speaks = element.closest("[lang]");
    boolean isEnglish = speaks != null && speaks.attr("lang").equals("en");
    for (TextNode text : element.textNodes()) {
      if (!text.isBlank()) {
        if (isEnglish) {
          marked.merge(route, 1, Integer::sum);
        }
        hear(link, isEnglish ? "" : text.text());
      }
    }
    if (!isEnglish) {
      SPOKEN.forEach(attribute -> hear(link, element.attr(attribute)));
    }
  }

  private void hear(String link, String said) {
    String words = TYPED.matcher(tidy(said).replace("…", "")).replaceAll(" ").strip();
    if (own.stream().anyMatch(theirs -> theirs.contains(words))) {
      return;
    }
    String left = words;
    for (String theirs : own) {
      left = left.replace(theirs, " ");
    }
    if (ENGLISH.matcher(left).find()) {
      wrong.add(link + ": " + said);
    }
  }

  private static String tidy(String text) {
    return text.replaceAll("\\s+", " ").strip();
  }
}
