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
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Filters, counts and offers over REST, and the same on the page, with the demo's few setups. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FiltersOverRestTest {

  private static final String STUDIO = "/api/studios/demo";
  private static final String SETUPS = STUDIO + "/setups";
  private static final String PROVEN = "{\"state\":\"proven\",\"archived\":false}";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor author;
  private Visitor reader;

  @BeforeAll
  void membersComeWithTokens() {
    author = house.withToken("author@demo.example");
    reader = house.withToken("reader@demo.example");
    // The few setups come without locations: this one is where the demo's ferry steps are.
    Map<String, Object> pier =
        Documents.with(
            Documents.with(Documents.location("Old pier"), "latitude_deg", 53.214),
            "longitude_deg",
            0.318);
    HttpResponse<String> created = author.post(STUDIO + "/locations", Documents.json(pier));
    assertEquals(201, created.statusCode(), created.body());
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  private static Map<?, ?> found(Visitor visitor, String query) {
    HttpResponse<String> answer = visitor.get(SETUPS + query);
    assertEquals(200, answer.statusCode(), answer.body());
    return Visitor.object(answer);
  }

  private static double total(Visitor visitor, String query) {
    return Told.number(found(visitor, query), "total");
  }

  private void isRefused(String query, String pointer, String message) {
    HttpResponse<String> answer = author.get(SETUPS + query);
    assertEquals(422, answer.statusCode(), answer.body());
    Map<?, ?> problem = Visitor.object(answer);
    assertEquals(pointer, Told.at(problem, "errors", 0, "pointer"));
    assertEquals(message, Told.at(problem, "errors", 0, "message"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "lihgts 2 | There is no mark “lihgts”. Maybe lights?",
        "lights many | “lights” needs a number. Maybe lights 2 to 4, or lights below 4?",
        "within 20 km of Nowhere at all | There is no location “Nowhere at all”. Distances are"
            + " measured from the studio's locations, by name.",
        "within 20 km of Old peir | There is no location “Old peir”. Maybe Old pier?",
      })
  void aFilterThatSaysNothingKnownIsRefusedWithALine(String filter, String message) {
    isRefused("?filter=" + encoded(filter), "/filter", message);
  }

  @Test
  void aFaultyBracketIsRefusedWithItsPlace() {
    isRefused(
        "?q=" + encoded("wet steps [lihgts 2]"),
        "/q",
        "“[lihgts 2]” at character 11: There is no mark “lihgts”. Maybe lights?");
    isRefused(
        "?q=" + encoded("wet [lights 2"),
        "/q",
        "“[lights 2” at character 5: The bracket is not closed. Maybe a ] is missing?");
  }

  @Test
  void otherPartsOfTheSearchAreRefusedAtTheirNames() {
    isRefused("?facets=lihgts", "/facets", "Nothing can be counted by this name. Maybe lights?");
    isRefused("?sort=newest", "/sort", "Sort must be best, near or off. Maybe best?");
    isRefused(
        "?sort=near",
        "/sort",
        "To put the nearest first, say where. Maybe filter=within 20 km of a location?");
    HttpResponse<String> within = author.get(SETUPS + "?facets=within");
    assertEquals(422, within.statusCode());
    String many = "&filter=mood+x1".repeat(41).replaceFirst("&", "?");
    HttpResponse<String> tooMany = author.get(SETUPS + many);
    assertEquals(422, tooMany.statusCode());
    assertEquals("/filter", Told.at(Visitor.object(tooMany), "errors", 0, "pointer"));
    StringBuilder moods = new StringBuilder("?limit=1");
    for (int i = 0; i < 21; i++) {
      moods.append("&mood=m").append(i);
    }
    HttpResponse<String> tooManyMoods = author.get(SETUPS + moods);
    assertEquals(422, tooManyMoods.statusCode());
    assertEquals("/mood", Told.at(Visitor.object(tooManyMoods), "errors", 0, "pointer"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "lights 1 to 3",
        "place kind harbour",
        "without gear softbox",
        "inside outdoors",
        "f/2 to f/8",
        "iso from 100 up to 400",
        "year above 2000",
        "season autumn",
        "time of day dawn or dusk",
        "within 30 km of old PIER"
      })
  void aBracketAndAFilterFindTheSameSomeOfTheDemoButNotAll(String filter) {
    double all = total(author, "?limit=1");
    double some = total(author, "?limit=1&filter=" + encoded(filter));
    assertTrue(some > 0 && some <= all, filter + ": " + some + " of " + all);
    assertEquals(some, total(author, "?limit=1&q=" + encoded("[" + filter + "]")));
    assertEquals(some, total(author, "?limit=1&filter=" + encoded("[" + filter + "]")));
  }

  @Test
  void everyCountIsWhatItsFilterFinds() {
    String all =
        "mood,place,place_kind,state,genre,author,gear,role,season,time_of_day,inside,lights,"
            + "modifier,aperture,iso,year";
    Map<?, ?> facets = (Map<?, ?>) Told.at(found(author, "?limit=1&facets=" + all), "facets");
    assertEquals(List.of(all.split(",")).size(), facets.size());
    List<String> asked = new ArrayList<>();
    for (Map.Entry<?, ?> facet : facets.entrySet()) {
      Map<?, ?> counts = (Map<?, ?>) facet.getValue();
      assertFalse(counts.isEmpty(), "Nothing is counted: " + facet.getKey());
      counts.entrySet().stream()
          .limit(4)
          .forEach(
              count -> {
                String filter = facet.getKey().toString().replace('_', ' ') + " " + count.getKey();
                asked.add(filter);
                assertEquals(
                    count.getValue(),
                    total(author, "?limit=1&facets=none&filter=" + encoded(filter)),
                    filter);
              });
    }
    assertTrue(asked.size() > 30, asked.toString());
  }

  @Test
  void onlyWhatIsAskedForIsCounted() {
    assertEquals(
        List.of("mood", "place_kind", "place", "state"),
        List.copyOf(((Map<?, ?>) Told.at(found(author, "?limit=1"), "facets")).keySet()));
    assertEquals(
        List.of("season", "lights"),
        List.copyOf(
            ((Map<?, ?>) Told.at(found(author, "?limit=1&facets=lights,season"), "facets"))
                .keySet()));
    assertEquals(Map.of(), Told.at(found(author, "?limit=1&facets=none"), "facets"));
  }

  @Test
  void theNearestComesFirstWhereThatIsAskedFor() {
    String within = "?filter=" + encoded("within 20000 km of Old pier") + "&limit=100";
    Map<?, ?> nearest = found(author, within + "&sort=near");
    assertEquals("Ferry steps, Merrowhithe harbour", Told.at(nearest, "items", 0, "place"));
    assertEquals(total(author, within), Told.number(nearest, "total"));
  }

  @Test
  void anEmptyResultOffersOthersWithWhatTheyFind() {
    Map<?, ?> nothing = found(author, "?filter=" + encoded("lights 40") + "&q=light");
    assertEquals(0.0, nothing.get("total"));
    List<?> instead = Told.list(nothing, "instead");
    assertFalse(instead.isEmpty());
    for (Object other : instead) {
      StringBuilder query = new StringBuilder("?limit=1&q=");
      query.append(encoded(Told.at(other, "q").toString()));
      for (Object filter : Told.list(other, "filters")) {
        query.append("&filter=").append(encoded(filter.toString()));
      }
      assertEquals(Told.at(other, "total"), total(author, query.toString()), other.toString());
      assertTrue(Told.at(other, "words").toString().startsWith("No setup with 40 lights; "));
    }
    assertEquals(List.of(), Told.at(found(author, "?limit=1"), "instead"));
  }

  private String draft(String title, String mood) {
    HttpResponse<String> created =
        author.post(
            SETUPS, Documents.json(Documents.with(Documents.setup(title), "moods", List.of(mood))));
    assertEquals(201, created.statusCode(), created.body());
    return created.headers().firstValue("Location").orElseThrow();
  }

  @Test
  void aReaderLearnsNothingOfADraftUntilItIsProven() {
    String path = draft("Hidden bay", "crepuscular");
    String unseen = "?limit=1&facets=mood&filter=" + encoded("mood crepuscular");
    assertEquals(1.0, total(author, unseen));
    Map<?, ?> hidden = found(reader, unseen);
    assertEquals(0.0, hidden.get("total"));
    assertFalse(Told.at(hidden, "facets", "mood").toString().contains("crepuscular"));
    double seen = total(reader, "?limit=1");
    for (Object other : Told.list(hidden, "instead")) {
      assertTrue(Told.number(other, "total") <= seen, other.toString());
    }
    String without = "?limit=1&filter=" + encoded("without mood crepuscular");
    assertEquals(seen, total(reader, without));
    Document page = page(reader, "/studios/demo/setups");
    assertFalse(page.text().contains("crepuscular"));
    author.with("If-Match", "\"1\"").put(path + "/state", PROVEN);
    assertEquals(1.0, total(reader, unseen));
  }

  @Test
  void peopleFilterByTheNamesThatAuthorsHave() {
    draft("By a name", "named");
    Map<?, ?> mine =
        found(
            author, "?facets=author&filter=mood+named&filter=" + encoded("author ivo castellane"));
    assertEquals(1.0, mine.get("total"));
    assertEquals(Map.of("Ivo Castellane", 1.0), Told.at(mine, "facets", "author"));
    Map<?, ?> nobody = found(author, "?filter=mood+named&filter=" + encoded("author Nobody"));
    assertEquals(
        "No setup with author Nobody; 1 with author Ivo Castellane.",
        Told.at(nobody, "instead", 0, "words"));
  }

  private static Document page(Visitor visitor, String path) {
    HttpResponse<String> answer = visitor.with("Accept", "text/html").get(path);
    assertEquals(200, answer.statusCode(), answer.body());
    return Jsoup.parse(answer.body());
  }

  @Test
  void thePageKeepsAFaultyBracketInTheBoxAndGoesOnWithTheRest() {
    Document page =
        page(author, "/studios/demo/setups?q=" + encoded("[lights 1 to 9] light [lihgts 2]"));
    assertEquals("light [lihgts 2]", page.expectFirst("#q").val());
    assertEquals(
        "“[lihgts 2]” at character 23: There is no mark “lihgts”. Maybe lights?",
        page.expectFirst(".faults li").text());
    assertEquals("1 to 9 lights×", page.expectFirst("a.chip").text());
    assertFalse(page.select("ol.hits > li").isEmpty());
  }

  @Test
  void everyChoiceOfThePageLeadsToAsManySetupsAsItSays() {
    Document page = page(author, "/studios/demo/setups");
    int tried = 0;
    for (Element choice : page.select("nav.facets a")) {
      if (tried++ % 7 == 0) {
        Document next = page(author, choice.attr("href"));
        String count = choice.expectFirst(".facet-count").text();
        assertTrue(
            next.expectFirst(".total").text().matches(count + " setups?"),
            choice.text() + ": " + next.expectFirst(".total").text());
        assertEquals(1, next.select("a.chip").size());
      }
    }
    assertTrue(tried > 40, "Choices: " + tried);
    assertEquals(5, page.select(".how dt a").size());
    for (Element example : page.select(".how dt a")) {
      Document next = page(author, example.attr("href"));
      assertFalse(next.select("ol.hits > li").isEmpty(), example.text());
      assertEquals("", next.expectFirst("#q").val());
    }
  }

  @Test
  void theOldNamesOfTheAddressStillNarrowThePage() {
    Document page = page(author, "/studios/demo/setups?place_kind=harbour&state=proven");
    assertEquals(
        List.of("Kind of place: harbour×", "State: proven×"), page.select("a.chip").eachText());
  }
}
