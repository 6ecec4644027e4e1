package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
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

/**
 * Kept searches and their news over REST and on the pages, with the demo's members; each test has
 * its own mood.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SavedSearchesOverRestTest {

  private static final String STUDIO = "/api/studios/demo";
  private static final String SEARCHES = STUDIO + "/saved-searches";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private final AtomicInteger number = new AtomicInteger();
  private Visitor owner;
  private Visitor author;
  private Visitor reader;

  @BeforeAll
  void membersComeWithTokens() {
    owner = house.withToken("owner@demo.example");
    author = house.withToken("author@demo.example");
    reader = house.withToken("reader@demo.example");
  }

  private String mood() {
    return "mood" + number.incrementAndGet();
  }

  private static String document(String name, String question) {
    return Documents.json(Map.of("name", name, "question", question));
  }

  private static String of(String mood) {
    return "filter=" + URLEncoder.encode("mood " + mood, StandardCharsets.UTF_8);
  }

  private static String kept(Visitor visitor, String name, String question) {
    HttpResponse<String> made = visitor.post(SEARCHES, document(name, question));
    assertEquals(201, made.statusCode(), made.body());
    return made.headers().firstValue("Location").orElseThrow();
  }

  private static String setup(Visitor visitor, String title, String mood) {
    Map<String, Object> document = Documents.with(Documents.setup(title), "moods", List.of(mood));
    HttpResponse<String> made = visitor.post(STUDIO + "/setups", Documents.json(document));
    assertEquals(201, made.statusCode(), made.body());
    return made.headers().firstValue("Location").orElseThrow();
  }

  private static void changeMood(Visitor visitor, String setup, String mood) {
    String change = "{\"moods\":[\"" + mood + "\"]}";
    assertEquals(200, visitor.with("If-Match", "*").patch(setup, change).statusCode());
  }

  private static Map<?, ?> news(Visitor visitor, String search) {
    HttpResponse<String> answer = visitor.get(search + "/news");
    assertEquals(200, answer.statusCode(), answer.body());
    return Visitor.object(answer);
  }

  private static List<?> titles(Visitor visitor, String search) {
    Map<?, ?> news = news(visitor, search);
    List<?> titles = Told.list(news, "items").stream().map(item -> Told.at(item, "title")).toList();
    assertEquals((double) titles.size(), Told.number(news, "unseen"));
    return titles;
  }

  private static void look(Visitor visitor, String search) {
    HttpResponse<String> looked = visitor.post(search + "/looks", "");
    assertEquals(200, looked.statusCode(), looked.body());
    assertEquals(0.0, Told.number(Visitor.object(looked), "unseen"));
  }

  @Test
  void whatSomebodyElseMakesIsNewUntilOneLooksAndWhatIsDeletedVanishes() {
    String mood = mood();
    setup(author, "There before", mood);
    String search = kept(owner, "New ones", of(mood));
    assertEquals(List.of(), titles(owner, search));
    String first = setup(author, "First", mood);
    setup(author, "Second", mood);
    assertEquals(List.of("Second", "First"), titles(owner, search));
    assertEquals(3.0, Told.number(news(owner, search), "total"));
    assertEquals(204, author.with("If-Match", "*").delete(first).statusCode());
    assertEquals(List.of("Second"), titles(owner, search));
    look(owner, search);
    assertEquals(List.of(), titles(owner, search));
    assertEquals(2.0, Told.number(news(owner, search), "total"));
  }

  @Test
  void whatIsChangedSoThatItMatchesIsNewAndNoLongerWhereItIsChangedBack() {
    String mood = mood();
    String setup = setup(author, "Turned", "other-" + mood);
    String search = kept(owner, "Turned ones", of(mood));
    changeMood(author, setup, mood);
    assertEquals(List.of("Turned"), titles(owner, search));
    changeMood(author, setup, "other-" + mood);
    assertEquals(List.of(), titles(owner, search));
    changeMood(author, setup, mood);
    look(owner, search);
    changeMood(author, setup, "other-" + mood);
    changeMood(author, setup, mood);
    assertEquals(List.of(), titles(owner, search), "it matched when they looked");
    changeMood(author, setup, "other-" + mood);
    look(owner, search);
    changeMood(author, setup, mood);
    assertEquals(List.of("Turned"), titles(owner, search), "it did not match when they looked");
  }

  @Test
  void whatOneChangesOneselfIsNoNewsEvenWhereOthersTouchItAfterwards() {
    String mood = mood();
    String others = setup(author, "Others’", "other-" + mood);
    String search = kept(owner, "Mine", of(mood));
    String own = setup(owner, "Own", mood);
    changeMood(owner, others, mood);
    assertEquals(List.of(), titles(owner, search));
    String retitled = "{\"title\":\"Own, retitled\"}";
    assertEquals(200, author.with("If-Match", "*").patch(own, retitled).statusCode());
    assertEquals(List.of(), titles(owner, search));
    assertEquals(2.0, Told.number(news(owner, search), "total"));
  }

  @Test
  void aReaderHearsOfADraftWhenItIsProvenAndNoMoreWhenItIsADraftAgain() {
    String mood = mood();
    String search = kept(reader, "Proven ones", of(mood));
    String setup = setup(author, "Ripened", mood);
    assertEquals(List.of(), titles(reader, search));
    assertEquals(0.0, Told.number(news(reader, search), "total"));
    Proven.by(author, setup);
    assertEquals(List.of("Ripened"), titles(reader, search));
    String draft = "{\"state\":\"draft\",\"archived\":false}";
    assertEquals(200, author.with("If-Match", "*").put(setup + "/state", draft).statusCode());
    assertEquals(List.of(), titles(reader, search));
    assertEquals(0.0, Told.number(news(reader, search), "total"));
  }

  @Test
  void newsOutliveARestart() {
    String mood = mood();
    String search = kept(owner, "Outliving", of(mood));
    setup(author, "While away", mood);
    look(owner, search);
    setup(author, "Since", mood);
    house.reopen();
    membersComeWithTokens();
    assertEquals(List.of("Since"), titles(owner, search));
  }

  @Test
  void theListTellsOfEachWhatItFindsAndInOneLineWhatIsNotUnderstoodAnyMore() {
    String mood = mood();
    Map<String, Object> place = Documents.location("Weir " + mood);
    HttpResponse<String> made = author.post(STUDIO + "/locations", Documents.json(place));
    String location = made.headers().firstValue("Location").orElseThrow();
    String near =
        "filter=" + URLEncoder.encode("within 5 km of Weir " + mood, StandardCharsets.UTF_8);
    String gone = kept(author, "At the weir", near + "&sort=near");
    kept(author, "Élan", of(mood));
    assertEquals(204, author.with("If-Match", "*").delete(location).statusCode());
    setup(owner, "New to the author", mood);
    List<?> items = Visitor.items(author.get(SEARCHES));
    Object weir =
        items.stream().filter(i -> "At the weir".equals(Told.at(i, "name"))).findFirst().get();
    Object elan = items.stream().filter(i -> "Élan".equals(Told.at(i, "name"))).findFirst().get();
    assertTrue(
        String.valueOf(Told.at(weir, "problem")).startsWith("There is no location “Weir " + mood),
        weir.toString());
    assertEquals(1.0, Told.number(elan, "total"));
    assertEquals(1.0, Told.number(elan, "unseen"));
    assertEquals(200, author.post(gone + "/looks", "").statusCode());
    assertEquals(204, author.with("If-Match", "*").delete(gone).statusCode());
  }

  @Test
  void nobodySeesOrTouchesTheSearchesOfAnother() {
    String search = kept(owner, "Private", of(mood()));
    Visitor any = author.with("If-Match", "*");
    assertEquals(404, author.get(search).statusCode());
    assertEquals(404, author.get(search + "/news").statusCode());
    assertEquals(404, author.post(search + "/looks", "").statusCode());
    assertEquals(404, any.put(search, document("Taken", "q=a")).statusCode());
    assertEquals(404, any.delete(search).statusCode());
    assertTrue(
        Visitor.items(author.get(SEARCHES)).stream()
            .noneMatch(item -> "Private".equals(Told.at(item, "name"))));
    kept(author, "Private", of(mood()));
    assertEquals(404, owner.get(search.replace("demo", "zzzz")).statusCode());
    assertEquals(401, house.visitor().get(search).statusCode());
  }

  @Test
  void aNameIsTakenOnceInWhateverCapitals() {
    String question = of(mood());
    kept(owner, "Grüne Stunde", question);
    String other = kept(owner, "Other", question);
    assertEquals(409, owner.post(SEARCHES, document("GRÜNE  stunde", question)).statusCode());
    Visitor first = owner.with("If-Match", "\"1\"");
    assertEquals(409, first.put(other, document("grüne stunde", question)).statusCode());
    assertEquals(200, first.put(other, document("OTHER", question)).statusCode());
    assertEquals(412, first.patch(other, "{\"name\":\"Third\"}").statusCode());
    HttpResponse<String> kept = owner.get(other);
    assertEquals("\"2\"", kept.headers().firstValue("ETag").orElse(""));
    assertEquals("OTHER", Told.at(Visitor.object(kept), "document", "name"));
  }

  @Test
  void anotherQuestionStartsAnew() {
    String mood = mood();
    String search = kept(owner, "Changing", of("nothing-" + mood));
    setup(author, "There already", mood);
    String changed = "{\"question\":\"" + of(mood) + "\"}";
    assertEquals(200, owner.with("If-Match", "\"1\"").patch(search, changed).statusCode());
    assertEquals(List.of(), titles(owner, search));
    setup(author, "After it", mood);
    String renamed = "{\"name\":\"Changed " + mood + "\"}";
    assertEquals(200, owner.with("If-Match", "\"2\"").patch(search, renamed).statusCode());
    assertEquals(List.of("After it"), titles(owner, search));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "filter=lihgts+2 | There is no mark “lihgts”. Maybe lights?",
        "q=dusk&limit=5 | Question must say only what is searched for. Maybe leave out limit?",
        "q=%zz | Question must be escaped as addresses are, with % and two digits. Maybe %25 for"
            + " %?",
        "q=cold dusk | Question must be escaped as addresses are, with % and two digits. Maybe %25"
            + " for %?",
        "dusk | Question must be as it stands in the address of a search. Maybe q=dusk?",
      })
  void aQuestionThatIsNotUnderstoodIsRefusedWithALine(String question, String message) {
    HttpResponse<String> refused = owner.post(SEARCHES, document("Odd", question));
    assertEquals(422, refused.statusCode(), refused.body());
    Map<?, ?> problem = Visitor.object(refused);
    assertEquals("/question", Told.at(problem, "errors", 0, "pointer"));
    assertEquals(message, Told.at(problem, "errors", 0, "message"));
  }

  @Test
  void fiftyAreKeptAndNotOneMore() {
    Visitor crew = house.withToken("crew@demo.example");
    for (int i = 1; i <= 50; i++) {
      kept(crew, "Search " + i, "q=dusk");
    }
    HttpResponse<String> refused = crew.post(SEARCHES, document("One more", "q=dusk"));
    assertEquals(409, refused.statusCode(), refused.body());
    List<?> all = Visitor.items(crew.get(SEARCHES));
    assertEquals(50, all.size());
    for (Object one : all) {
      String path = SEARCHES + "/" + Told.at(one, "id");
      assertEquals(204, crew.with("If-Match", "*").delete(path).statusCode());
    }
  }

  private static Document page(Visitor visitor, String path) {
    HttpResponse<String> answer = visitor.get(path);
    assertEquals(200, answer.statusCode(), answer.body());
    return Jsoup.parse(answer.body());
  }

  /** Sends a form as a browser without JavaScript would. */
  private static HttpResponse<String> sent(Visitor visitor, Element form, String name) {
    StringBuilder fields = new StringBuilder();
    for (Element input : form.select("input")) {
      String value = input.attr("type").equals("hidden") ? input.val() : name;
      fields
          .append(fields.isEmpty() ? "" : "&")
          .append(input.attr("name"))
          .append('=')
          .append(URLEncoder.encode(value, StandardCharsets.UTF_8));
    }
    return visitor.postForm(form.attr("action"), fields.toString());
  }

  private static Element card(Document page, String name) {
    return page.select(".saved-search").stream()
        .filter(one -> one.expectFirst("h2").text().equals(name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aSearchIsKeptOpenedRenamedAndDeletedOnThePageWithoutScripts() {
    String mood = mood();
    Visitor crew = house.signedIn("crew@demo.example");
    String pages = "/studios/demo/saved-searches";
    String asked = "/studios/demo/setups?q=light&" + of(mood);
    Element keep = page(crew, asked).expectFirst(".keep-search form");
    assertEquals("light, Mood: " + mood, keep.expectFirst("#keep-name").val());
    String name = "<script>alert(1)</script> & more";
    assertEquals(303, sent(crew, keep, name).statusCode());
    HttpResponse<String> again = sent(crew, keep, name);
    assertEquals(409, again.statusCode());
    assertTrue(Jsoup.parse(again.body()).expectFirst(".errors").text().contains("Maybe another"));
    assertEquals(422, sent(crew, keep, " ").statusCode());

    setup(author, "A light for " + mood, mood);
    Document list = page(crew, pages);
    assertEquals("1 new", list.expectFirst(".head-new").text());
    Element card = card(list, name);
    assertEquals("“light” · Mood: " + mood, card.expectFirst(".saved-asked").text());
    assertEquals("1 new of 1 setup", card.expectFirst(".saved-count").text());
    assertEquals("A light for " + mood, card.expectFirst(".saved-news a").text());
    assertEquals("1 new", page(crew, "/studios/demo/locations").expectFirst(".head-new").text());

    HttpResponse<String> opened = sent(crew, card.expectFirst("form"), "");
    assertEquals(303, opened.statusCode());
    Document found = page(crew, opened.headers().firstValue("Location").orElseThrow());
    assertEquals("A light for " + mood, found.expectFirst(".hit h2").text());
    assertEquals(List.of(), found.select(".head-new").eachText());

    assertEquals(303, sent(crew, card.expectFirst(".saved-rename"), "Plain").statusCode());
    assertEquals(412, sent(crew, card.expectFirst(".saved-rename"), "Later").statusCode());
    Element renamed = card(page(crew, pages), "Plain");
    assertEquals(412, sent(crew, card.select("form").get(2), "").statusCode());
    assertEquals(303, sent(crew, renamed.select("form").get(2), "").statusCode());
    assertEquals(List.of(), page(crew, pages).select(".saved-search").eachText());
    assertEquals(404, sent(crew, renamed.expectFirst("form"), "").statusCode());
  }

  @Test
  void thePageOffersNothingToKeepWhereNothingIsAskedOrNotUnderstood() {
    Visitor visitor = house.signedIn("reader@demo.example");
    for (String query : List.of("", "?q=%5Blihgts+2%5D", "?filter=within+5+km+of+Nowhere+at+all")) {
      assertEquals(
          List.of(),
          page(visitor, "/studios/demo/setups" + query).select(".keep-search").eachText(),
          query);
    }
  }

  private static void awaitJudging(Visitor visitor, String search) {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
    while (news(visitor, search).containsKey("problem")) {
      assertTrue(System.nanoTime() < end, "The kit is not held against all setups.");
    }
  }

  @Test
  void whatAKitMakesIsNewUntilTheKitIsGone() {
    String mood = mood();
    String kit = "Bag of " + mood;
    HttpResponse<String> made = author.post(STUDIO + "/kits", Documents.json(Documents.kit(kit)));
    String place = made.headers().firstValue("Location").orElseThrow();
    String buildable = "buildable with " + kit + " within 64 stops";
    String search =
        kept(
            owner,
            "Made by it",
            "filter=" + URLEncoder.encode(buildable, StandardCharsets.UTF_8) + "&" + of(mood));
    awaitJudging(owner, search);
    setup(author, "Made by the bag", mood);
    awaitJudging(owner, search);
    assertEquals(List.of("Made by the bag"), titles(owner, search));
    assertEquals(204, author.with("If-Match", "*").delete(place).statusCode());
    Map<?, ?> gone = news(owner, search);
    assertTrue(
        String.valueOf(gone.get("problem")).startsWith("There is no kit “" + kit + "”."),
        gone.toString());
    assertEquals(List.of(), gone.get("items"));
  }

  @Test
  void whereMoreMatchedThanIsKeptNewsBeginWhenItIsFewAgain() throws Exception {
    String mood = mood();
    setup(author, "One of very many", mood);
    String search = kept(owner, "Very many", of(mood));
    String id = search.substring(search.lastIndexOf('/') + 1);
    house
        .database()
        .sqlAsSuperuser(
            "update lampwright.saved_search set seen = null where id = '" + id + "' returning id");
    assertEquals(List.of(), titles(owner, search));
    setup(author, "Since then", mood);
    assertEquals(List.of("Since then"), titles(owner, search));
  }
}
