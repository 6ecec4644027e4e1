package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.document.Json;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Drills over REST and on their page. */
class DrillsOverRestTest {

  private static final String DRILLS = "/api/studios/demo/drills";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private static Map<?, ?> asked(Visitor who, String query) {
    HttpResponse<String> answer = who.get(DRILLS + query);
    assertEquals(200, answer.statusCode(), answer.body());
    return Visitor.object(answer);
  }

  private static HttpResponse<String> answer(Visitor who, Map<?, ?> drill, Object... more) {
    Map<String, Object> sent = new LinkedHashMap<>();
    sent.put("kind", drill.get("kind"));
    sent.put("setup", Told.at(drill, "setup", "id"));
    sent.put("seed", drill.get("seed"));
    sent.put("question", drill.get("question"));
    for (int i = 0; i < more.length; i += 2) {
      sent.put(more[i].toString(), more[i + 1]);
    }
    return who.post(DRILLS + "/answers", Json.print(sent));
  }

  private static Object told(Visitor who, String kind) {
    return Told.list(Visitor.object(who.get(DRILLS + "/progress")), "kinds").stream()
        .filter(one -> Told.at(one, "kind").equals(kind))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theSameSeedAsksTheSameAndAnAnswerIsJudgedAndKept() {
    Visitor crew = house.withToken("crew@demo.example");
    Map<?, ?> drill = asked(crew, "?kind=power_after_move&seed=7");
    assertEquals(drill, asked(crew, "?kind=power_after_move&seed=7"));
    Map<?, ?> wrong = Visitor.object(answer(crew, drill, "number", 11.0));
    assertEquals(false, wrong.get("right"));
    Map<?, ?> slip = Visitor.object(answer(crew, drill, "number", -Told.number(wrong, "number")));
    assertEquals(
        "The other way: farther off it needs more power, closer it needs less.", slip.get("slip"));
    Map<?, ?> right = Visitor.object(answer(crew, drill, "number", Told.number(wrong, "number")));
    assertEquals(true, right.get("right"));
    assertTrue(!Told.list(right, "workings").isEmpty() && !Told.list(right, "why").isEmpty());
    Object progress = told(crew, "power_after_move");
    assertEquals(3.0, Told.number(progress, "answered"));
    assertEquals(1.0, Told.number(progress, "right"));
    assertEquals(
        0.0,
        Told.number(told(house.withToken("author@demo.example"), "power_after_move"), "answered"),
        "what one answered is one's own");
  }

  @Test
  void oneOfSeveralIsAnsweredByItsPlace() {
    Visitor reader = house.withToken("reader@demo.example");
    Map<?, ?> drill = asked(reader, "?kind=unsafe&seed=5");
    int options = Told.list(drill, "options").size();
    long right =
        IntStream.range(0, options)
            .filter(
                i ->
                    Told.at(Visitor.object(answer(reader, drill, "option", i)), "right")
                        .equals(true))
            .count();
    assertEquals(1, right);
  }

  @Test
  void whatIsNoAnswerIsRefusedWithItsFieldAndNotKept() {
    Visitor author = house.withToken("author@demo.example");
    Map<?, ?> drill = asked(author, "?kind=sun_direction&seed=1");
    boolean isNumber = drill.get("measure") != null;
    Map<?, ?> numeric = asked(author, "?kind=stops_between&seed=1");
    HttpResponse<String> missing = answer(author, numeric);
    assertEquals(422, missing.statusCode());
    assertEquals("/number", Told.at(Visitor.object(missing), "errors", 0, "pointer"));
    assertEquals(422, answer(author, numeric, "number", 1000.0).statusCode());
    assertEquals(422, answer(author, numeric, "option", 0).statusCode());
    assertEquals(
        422, answer(author, asked(author, "?kind=unsafe&seed=5"), "option", 9).statusCode());
    assertEquals(
        isNumber ? 422 : 200, answer(author, drill, "option", 0).statusCode(), drill.toString());
    Map<Object, Object> other = new LinkedHashMap<>(numeric);
    other.put("question", "000000000000");
    HttpResponse<String> changed = answer(author, other, "number", 1.0);
    assertEquals(409, changed.statusCode(), "a question that is no longer the same");
    assertEquals(0.0, Told.number(told(author, "stops_between"), "answered"));
    assertEquals(422, author.get(DRILLS + "?kind=juggling").statusCode());
    assertEquals(404, author.get(DRILLS + "?setup=zzzz").statusCode());
    assertEquals(404, author.get("/api/studios/nowhere/drills").statusCode());
  }

  @Test
  void readersAreAskedNothingOfDrafts() {
    HttpResponse<String> made =
        house
            .withToken("author@demo.example")
            .post("/api/studios/demo/setups", Documents.json(Documents.setup("A draft")));
    String place = made.headers().firstValue("Location").orElseThrow();
    String id = place.substring(place.lastIndexOf('/') + 1);
    String query = "?kind=stops_between&seed=1&setup=" + id;
    assertEquals(200, house.withToken("crew@demo.example").get(DRILLS + query).statusCode());
    assertEquals(404, house.withToken("reader@demo.example").get(DRILLS + query).statusCode());
  }

  @Test
  void aPageAsksJudgesAndShowsWhereOneStands() {
    Visitor owner = house.signedIn("owner@demo.example").with("X-CSRF-Token", "");
    Document learning = page(owner.get("/studios/demo/learning"));
    assertEquals(14, learning.select(".learning-kind").size());
    assertEquals("What a stop is", learning.expectFirst(".learning-next span").text());
    String asked = place(owner.get(learning.expectFirst(".learning-go").attr("href")));
    assertTrue(asked.contains("seed="), asked);
    Element form = page(owner.get(asked)).expectFirst(".drill-form");
    HttpResponse<String> refused = owner.postForm(form.attr("action"), sent(form, "a bit"));
    assertEquals(422, refused.statusCode());
    assertEquals(
        "The answer (“a bit”) must be a number, such as 1.5, −2 or 1⅓.",
        Jsoup.parse(refused.body()).expectFirst(".errors li").text());
    String judged = place(owner.postForm(form.attr("action"), sent(form, "19⅔")));
    assertEquals("Not right", page(owner.get(judged)).expectFirst("#drill-judged").text());
    String right = page(owner.get(judged)).expectFirst(".drill-answers div:last-child dd").text();
    String again =
        place(owner.postForm(form.attr("action"), sent(form, right.replaceAll(" stops?", ""))));
    assertEquals("Right", page(owner.get(again)).expectFirst("#drill-judged").text());
    page(owner.get(again));
    assertEquals(
        "1 of 2 right",
        page(owner.get("/studios/demo/learning"))
            .expectFirst(".learning-kind .learning-counted")
            .text(),
        "looking again is not answering again");
    assertNotEquals(asked, place(owner.get("/studios/demo/drills?kind=stops_between")));
  }

  private static Document page(HttpResponse<String> answer) {
    assertEquals(200, answer.statusCode(), answer.body());
    return Jsoup.parse(answer.body());
  }

  private static String place(HttpResponse<String> answer) {
    assertEquals(303, answer.statusCode(), answer.body());
    URI place = URI.create(answer.headers().firstValue("Location").orElseThrow());
    return place.getRawPath() + "?" + place.getRawQuery();
  }

  private static String sent(Element form, String typed) {
    Map<String, String> fields = new LinkedHashMap<>();
    form.select("input[type=hidden]").forEach(field -> fields.put(field.attr("name"), field.val()));
    fields.put("answer", typed);
    return fields.entrySet().stream()
        .map(
            field ->
                field.getKey() + "=" + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
        .collect(Collectors.joining("&"));
  }

  /** Nobody finds out from what they may not see: {@code kind} is a word of a closed list. */
  @Test
  void theKindsOfTheDescriptionAreTheKindsThatThereAre() {
    Object description = Json.parse(house.visitor().get("/api/openapi.json").body());
    List<?> described = Told.list(description, "components", "schemas", "DrillKind", "enum");
    assertEquals(
        described,
        Told.list(
                Visitor.object(house.withToken("crew@demo.example").get(DRILLS + "/progress")),
                "kinds")
            .stream()
            .map(kind -> Told.at(kind, "kind"))
            .toList());
  }
}
