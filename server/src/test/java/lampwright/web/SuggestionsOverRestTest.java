package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Suggestions over REST, with the demo's few setups and one draft of a strange mood. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SuggestionsOverRestTest {

  private static final String STUDIO = "/api/studios/demo";
  private static final String SUGGESTIONS = STUDIO + "/suggestions";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor author;
  private Visitor reader;

  @BeforeAll
  void membersComeWithTokens() {
    author = house.withToken("author@demo.example");
    reader = house.withToken("reader@demo.example");
    Map<String, Object> draft =
        Documents.with(Documents.setup("Zinnwald shed"), "moods", List.of("zestful or not"));
    HttpResponse<String> created = author.post(STUDIO + "/setups", Documents.json(draft));
    assertEquals(201, created.statusCode(), created.body());
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  private static List<?> items(Visitor visitor, String query) {
    HttpResponse<String> answer = visitor.get(SUGGESTIONS + query);
    assertEquals(200, answer.statusCode(), answer.body());
    return Visitor.items(answer);
  }

  private static void eachFindsWhatItPromises(Visitor visitor, List<?> items) {
    for (Object item : items) {
      Map<?, ?> one = (Map<?, ?>) item;
      if (one.containsKey("count")) {
        String q = String.valueOf(one.get("q"));
        String mark = q.substring(q.indexOf('['));
        HttpResponse<String> found = visitor.get(STUDIO + "/setups?q=" + encoded(mark));
        assertEquals(200, found.statusCode(), found.body());
        assertEquals(Told.number(Visitor.object(found), "total"), one.get("count"), mark);
      }
    }
  }

  @Test
  void whatIsUsedMostIsSuggestedBeforeAnythingIsTyped() {
    List<?> items = items(reader, "");
    assertFalse(items.isEmpty());
    assertTrue(
        items.stream()
            .map(item -> Told.at(item, "kind"))
            .allMatch(kind -> kind.equals("Mood") || kind.equals("Kind of place")));
    eachFindsWhatItPromises(reader, items);
  }

  @Test
  void countsAreThoseOfASearchForWhateverLetterIsTyped() {
    for (String typed : List.of("h", "l", "so", "cold s", "light m")) {
      List<?> items = items(author, "?limit=20&q=" + encoded(typed));
      eachFindsWhatItPromises(author, items);
      assertFalse(items.isEmpty(), typed);
    }
  }

  @Test
  void aDraftIsSuggestedToItsAuthorButNotToAReader() {
    List<?> own = items(author, "?q=zestf");
    assertEquals(1, own.size(), own.toString());
    assertEquals("Mood", Told.at(own, 0, "kind"));
    assertEquals("[mood \"zestful or not\"]", Told.at(own, 0, "q"));
    eachFindsWhatItPromises(author, own);
    List<?> title = items(author, "?q=zinn");
    assertEquals("Zinnwald shed", Told.at(title, 0, "words"));
    assertEquals("Setup", Told.at(title, 0, "kind"));
    String setup = STUDIO + "/setups/" + Told.at(title, 0, "setup");
    assertEquals(200, author.get(setup).statusCode());
    assertEquals(List.of(), items(reader, "?q=zestf"));
    assertEquals(List.of(), items(reader, "?q=zinn"));
  }

  @Test
  void aBracketIsCompletedByItsMarksAndThenByTheirWords() {
    assertEquals("dusk [place kind ", Told.at(items(author, "?q=dusk+%5Bplace+k"), 0, "q"));
    assertEquals("[mood \"zestful or not\"]", Told.at(items(author, "?q=%5Bmood+zes"), 0, "q"));
    assertEquals("[mood \"zestful or not\"]", Told.at(items(author, "?q=%5Bzes"), 0, "q"));
    assertEquals(List.of(), items(author, "?q=%5Bplace+kind+zes"));
  }

  @Test
  void anAuthorIsSuggestedByNameWithTheSetupsThatOneMaySee() {
    HttpResponse<String> all = reader.get(STUDIO + "/setups?facets=author");
    Map<?, ?> authors = (Map<?, ?>) Told.at(Visitor.object(all), "facets", "author");
    String name = String.valueOf(authors.keySet().iterator().next());
    List<?> items = items(reader, "?q=" + encoded("[author " + name.substring(0, 2)));
    assertTrue(items.stream().anyMatch(item -> name.equals(Told.at(item, "words"))), name);
    eachFindsWhatItPromises(reader, items);
  }

  @Test
  void whoMayNotAskIsToldSoAndStrangeWishesAreRefused() {
    assertEquals(401, house.visitor().get(SUGGESTIONS).statusCode());
    assertEquals(404, author.get("/api/studios/other/suggestions").statusCode());
    for (String query : List.of("?limit=0", "?limit=21", "?limit=many", "?word=a")) {
      assertEquals(422, author.get(SUGGESTIONS + query).statusCode(), query);
    }
    assertEquals(422, author.get(SUGGESTIONS + "?q=" + "a".repeat(2_001)).statusCode());
    for (String odd :
        List.of("[", "]", "\"", "[[", " [ ", "[mood", "[mood ", "–", "or", "\\", "%")) {
      items(author, "?q=" + encoded(odd));
    }
  }
}
