package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.engine.unit.Stops;
import lampwright.gear.Kit;
import lampwright.setup.SetupDocument;
import lampwright.setup.adapting.AdaptationSearch;
import lampwright.setup.figures.FiguresComputation;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Setups that a kit makes, as a filter beside the others, with the demo's few setups. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BuildableOverRestTest {

  private static final String STUDIO = "/api/studios/demo";
  private static final String KITS = STUDIO + "/kits";
  private static final String SETUPS = STUDIO + "/setups";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor author;
  private Visitor reader;

  @BeforeAll
  void membersComeWithTokens() {
    author = house.withToken("author@demo.example");
    reader = house.withToken("reader@demo.example");
  }

  private static String query(String filter) {
    return "?limit=100&filter=" + URLEncoder.encode(filter, StandardCharsets.UTF_8);
  }

  private static Map<?, ?> found(Visitor visitor, String filter) {
    return found(visitor, filter, "");
  }

  private static Map<?, ?> found(Visitor visitor, String filter, String more) {
    HttpResponse<String> answer = visitor.get(SETUPS + query(filter) + more);
    assertEquals(200, answer.statusCode(), answer.body());
    Map<?, ?> found = Visitor.object(answer);
    assertFalse(found.containsKey("not_judged"), answer.body());
    return found;
  }

  private static Set<String> ids(Map<?, ?> found) {
    return Told.list(found, "items").stream()
        .map(item -> Told.at(item, "id").toString())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** All that are not put by, by their ids. */
  private Map<String, SetupDocument> setups() {
    Map<String, SetupDocument> all = new TreeMap<>();
    for (Object item : Visitor.items(author.get(SETUPS + "?limit=100"))) {
      String id = Told.at(item, "id").toString();
      Object document = Told.at(Visitor.object(author.get(SETUPS + "/" + id)), "document");
      all.put(id, lampwright.setup.Documents.setup(document));
    }
    return all;
  }

  private static boolean isMade(SetupDocument setup, Kit kit, double stops) {
    return AdaptationSearch.isWithin(setup, FiguresComputation.of(setup), kit, new Stops(stops));
  }

  @Test
  void theyAreThoseThatTheFullSearchSaysOneByOne() {
    Map<String, SetupDocument> setups = setups();
    int made = 0;
    int notMade = 0;
    for (Object item : Visitor.items(author.get(KITS))) {
      Object whole = Visitor.object(author.get(KITS + "/" + Told.at(item, "id")));
      Kit kit = lampwright.setup.Documents.kit(Told.at(whole, "document"));
      for (double stops : List.of(0.3, 1.0)) {
        Set<String> found =
            ids(found(author, "buildable with \"" + kit.name() + "\" within " + stops + " stops"));
        for (Map.Entry<String, SetupDocument> setup : setups.entrySet()) {
          // Told in hundredths of a stop: what lies between two of them may be either.
          boolean surely = isMade(setup.getValue(), kit, stops - 0.01);
          boolean maybe = surely || isMade(setup.getValue(), kit, stops + 0.01);
          boolean is = found.contains(setup.getKey());
          String what = kit.name() + " within " + stops + ": " + setup.getValue().title();
          assertTrue(is ? maybe : !surely, what);
          made += is ? 1 : 0;
          notMade += is ? 0 : 1;
        }
      }
    }
    assertTrue(made > 0 && notMade > 0, made + " made, " + notMade + " not");
  }

  @Test
  void theAnswerFollowsKitsAndSetupsAndGoesWithOtherFilters() {
    String kit = makeKit("The follower");
    String filter = "buildable with the follower within 64 stops";
    HttpResponse<String> created =
        author.post(SETUPS, Documents.json(Documents.setup("Made to follow")));
    assertEquals(201, created.statusCode(), created.body());
    String id = Told.at(Visitor.object(created), "id").toString();
    Map<?, ?> before = found(author, filter);
    assertTrue(ids(before).contains(id), "The kit makes it.");
    assertFalse(ids(found(reader, filter)).contains(id), "A draft is for no reader.");
    Object lights = Told.at(found(author, filter, "&facets=lights"), "facets", "lights");
    assertEquals(
        Told.number(before, "total"),
        ((Map<?, ?>) lights).values().stream().mapToDouble(n -> (Double) n).sum());
    assertEquals(Set.of(), ids(found(author, filter, "&filter=lights+from+90")));

    Map<String, Object> heavy = Documents.setup("Made to follow");
    List<Object> many =
        java.util.stream.IntStream.range(0, 12)
            .<Object>mapToObj(i -> Documents.light("light-" + i))
            .toList();
    HttpResponse<String> changed =
        author
            .with("If-Match", created.headers().firstValue("ETag").orElseThrow())
            .put(SETUPS + "/" + id, Documents.json(Documents.with(heavy, "lights", many)));
    assertEquals(200, changed.statusCode(), changed.body());
    assertFalse(ids(found(author, filter)).contains(id), "Twelve lights are too many for it.");

    Map<String, Object> none = Documents.with(Documents.kit("The follower"), "heads", List.of());
    none = Documents.with(none, "pairings", List.of());
    HttpResponse<String> old = author.get(KITS + "/" + kit);
    HttpResponse<String> bare =
        author
            .with("If-Match", old.headers().firstValue("ETag").orElseThrow())
            .put(KITS + "/" + kit, Documents.json(none));
    assertEquals(200, bare.statusCode(), bare.body());
    assertEquals(0, Told.number(found(author, filter), "total"), "A kit without heads.");
  }

  @Test
  void pagesGoOnWithTheSameKitAndToleranceOnly() {
    makeKit("The pager");
    for (String title : List.of("Paged first", "Paged next")) {
      HttpResponse<String> made = author.post(SETUPS, Documents.json(Documents.setup(title)));
      assertEquals(201, made.statusCode(), made.body());
    }
    String filter = "buildable with The pager within 64 stops";
    Set<String> all = ids(found(author, filter, "&limit=100"));
    String one = SETUPS + "?limit=1&filter=" + URLEncoder.encode(filter, StandardCharsets.UTF_8);
    Map<?, ?> page = Visitor.object(author.get(one));
    Set<String> paged = new TreeSet<>(ids(page));
    String first = Told.at(page, "next").toString();
    while (page.containsKey("next")) {
      page = Visitor.object(author.get(one + "&cursor=" + Told.at(page, "next")));
      assertTrue(paged.addAll(ids(page)), "A setup came twice");
    }
    assertEquals(all, paged);
    HttpResponse<String> other =
        author.get(
            SETUPS + query("buildable with The pager within 2 stops") + "&limit=1&cursor=" + first);
    assertEquals(422, other.statusCode(), other.body());
    assertEquals("/cursor", Told.at(Visitor.object(other), "errors", 0, "pointer"));
  }

  @Test
  void theLeastOffComeFirstOverAllPages() {
    makeKit("The small one");
    for (double stopsDown : List.of(3.0, 0.0)) {
      Map<String, Object> light = Documents.with(Documents.light("key"), "stops_down", stopsDown);
      Map<String, Object> setup = Documents.with(Documents.setup("Full"), "lights", List.of(light));
      assertEquals(201, author.post(SETUPS, Documents.json(setup)).statusCode());
    }
    String asked =
        SETUPS
            + "?limit=3&sort=off&filter="
            + URLEncoder.encode("buildable with the small one however far", StandardCharsets.UTF_8);
    List<Double> offs = new ArrayList<>();
    Set<String> ids = new TreeSet<>();
    Map<?, ?> page = Visitor.object(author.get(asked));
    double total = Told.number(page, "total");
    boolean more = true;
    while (more) {
      for (Object item : Told.list(page, "items")) {
        offs.add(Told.number(item, "off_stops"));
        assertTrue(ids.add(Told.at(item, "id").toString()), "A setup came twice");
      }
      more = page.containsKey("next");
      if (more) {
        page = Visitor.object(author.get(asked + "&cursor=" + Told.at(page, "next")));
      }
    }
    assertEquals(total, offs.size());
    assertEquals(offs.stream().sorted().toList(), offs);
    assertTrue(offs.getFirst() < offs.getLast(), offs.toString());
  }

  @Test
  void nothingIsPutByHowFarOffItIsWithoutAKit() {
    HttpResponse<String> refused = author.get(SETUPS + "?sort=off");
    assertEquals(422, refused.statusCode(), refused.body());
    Object problem = Told.at(Visitor.object(refused), "errors", 0);
    assertEquals("/sort", Told.at(problem, "pointer"));
    assertEquals(
        "To put the least off first, name a kit. Maybe filter=buildable with its name?",
        Told.at(problem, "message"));
  }

  private String makeKit(String name) {
    HttpResponse<String> made = author.post(KITS, Documents.json(Documents.kit(name)));
    assertEquals(201, made.statusCode(), made.body());
    return Told.at(Visitor.object(made), "id").toString();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "buildable | Buildable needs a kit. Maybe buildable with the name of a kit within 0.5"
            + " stops?",
        "buildable with The bga | There is no kit “The bga”. Maybe The bag?",
        "buildable with The bag within 65 stops | Stops (65) must be 0 to 64. Maybe 0.5?",
        "buildable with a or b | Buildable needs one kit, not 2.",
      })
  void whatSaysNothingKnownIsRefusedWithALine(String filter, String message) {
    if (Visitor.items(author.get(KITS)).stream()
        .noneMatch(kit -> kit.toString().contains("name=The bag"))) {
      makeKit("The bag");
    }
    HttpResponse<String> answer = author.get(SETUPS + query(filter));
    assertEquals(422, answer.statusCode(), answer.body());
    assertEquals(message, Told.at(Visitor.object(answer), "errors", 0, "message"));
  }

  @Test
  void thePageOffersTheKitsAndSaysHowFarOffEachIs() {
    makeKit("The page kit");
    HttpResponse<String> made =
        author.post(SETUPS, Documents.json(Documents.setup("Made for the page")));
    assertEquals(201, made.statusCode(), made.body());
    Visitor signedIn = house.signedIn("author@demo.example");
    Document plain = Jsoup.parse(signedIn.get("/studios/demo/setups").body());
    String choice = plain.select("select#kit option:contains(The page kit)").attr("value");
    assertEquals("buildable with The page kit", choice);
    Document page =
        Jsoup.parse(
            signedIn
                .get("/studios/demo/setups" + query("buildable with The page kit within 64 stops"))
                .body());
    assertEquals(1, page.select("a.chip:contains(Buildable with The page kit)").size());
    assertTrue(page.select(".hit-reason").text().contains("The page kit makes it"), page.text());
  }
}
