package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.picture.Drawn;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Setups whose finished picture looks like one that is shown and not kept. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LikePictureOverRestTest {

  private static final String STUDIO = "/api/studios/demo";
  private static final String SETUPS = STUDIO + "/setups";
  private static final String SHOWN = STUDIO + "/shown-pictures";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor author;
  private Visitor reader;

  @BeforeAll
  void someHavePictures() {
    author = house.withToken("author@demo.example");
    reader = house.withToken("reader@demo.example");
    plant("Violet and black", jpeg(0x7a3cb4, 0x0a0a0a));
    plant("Orange and white", jpeg(0xe08020, 0xf4f4f4));
    plant("Two greys", jpeg(0x707070, 0x909090));
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(30);
    while (Told.number(found(author, tones(jpeg(0x7a3cb4, 0x0a0a0a)), ""), "total") < 3) {
      assertTrue(System.nanoTime() < end, "The index does not follow the pictures.");
    }
  }

  private static byte[] jpeg(int left, int right) {
    return Drawn.jpeg(Drawn.image(64, 48, (x, _) -> x < 32 ? left : right), 0.9);
  }

  private void plant(String title, byte[] picture) {
    HttpResponse<String> made = author.post(SETUPS, Documents.json(Documents.setup(title)));
    assertEquals(201, made.statusCode(), made.body());
    String setup = made.headers().firstValue("Location").orElseThrow();
    assertEquals(201, send(author, setup + "/pictures?kind=final", picture).statusCode());
  }

  private static HttpResponse<String> send(Visitor visitor, String path, byte[] picture) {
    return visitor
        .with("Content-Type", "image/jpeg")
        .send("POST", path, BodyPublishers.ofByteArray(picture));
  }

  private Map<?, ?> shown(byte[] picture) {
    HttpResponse<String> answer = send(reader, SHOWN, picture);
    assertEquals(200, answer.statusCode(), answer.body());
    return Visitor.object(answer);
  }

  private String tones(byte[] picture) {
    return Told.at(shown(picture), "tones").toString();
  }

  private static Map<?, ?> found(Visitor visitor, String tones, String more) {
    HttpResponse<String> answer = visitor.get(SETUPS + "?like_tones=" + tones + more);
    assertEquals(200, answer.statusCode(), answer.body());
    return Visitor.object(answer);
  }

  private static List<?> titles(Map<?, ?> found) {
    return Told.list(found, "items").stream().map(item -> Told.at(item, "title")).toList();
  }

  @Test
  void whatLooksLikeItComesFirstAndSaysWhy() {
    Map<?, ?> shown = shown(jpeg(0x7440b0, 0x101010));
    assertEquals("low", Told.at(shown, "picture", "key").toString().replace(" key", ""));
    Map<?, ?> found = Visitor.object(author.get(Told.at(shown, "setups").toString()));
    assertEquals("Violet and black", titles(found).getFirst());
    Object first = Told.list(found, "items").getFirst();
    assertTrue(Told.number(first, "score") > 0.8, found.toString());
    List<?> reasons = Told.list(first, "reasons");
    assertTrue(reasons.contains("tones alike") && reasons.contains("colours alike"), "" + reasons);
    assertEquals(
        "Orange and white", titles(found(author, tones(jpeg(0xd88828, 0xffffff)), "")).getFirst());
  }

  @Test
  void filtersWordsAndPagesHoldAsEverywhere() {
    String tones = tones(jpeg(0x707070, 0x909090));
    assertEquals(List.of("Two greys"), titles(found(author, tones, "&q=greys")));
    Map<?, ?> first = found(author, tones, "&limit=1&facets=state");
    assertEquals(List.of("Two greys"), titles(first));
    double total = Told.number(first, "total");
    assertTrue(total >= 3, first.toString());
    Map<?, ?> next = found(author, tones, "&limit=1&cursor=" + Told.at(first, "next"));
    assertEquals(1, titles(next).stream().filter(title -> !title.equals("Two greys")).count());
    HttpResponse<String> other =
        author.get(
            SETUPS
                + "?limit=1&like_tones="
                + tones(jpeg(0x7a3cb4, 0x0a0a0a))
                + "&cursor="
                + Told.at(first, "next"));
    assertEquals(422, other.statusCode(), other.body());
    assertEquals(0, Told.number(found(reader, tones, "&q=greys"), "total"), "It is a draft.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "?like_tones=a | /like_tones",
        "?like_tones=1.3.8.18.40.61.88~101418.60&sort=near | /sort",
        "?like_tones=1.3.8.18.40.61.88~101418.60&like=a | /like_tones",
      })
  void whatIsNoPictureIsRefusedWhereItStands(String query, String pointer) {
    HttpResponse<String> refused = author.get(SETUPS + query);
    assertEquals(422, refused.statusCode(), refused.body());
    assertEquals(pointer, Told.at(Visitor.object(refused), "errors", 0, "pointer"));
  }

  @Test
  void bytesThatAreNoPictureAreRefused() {
    assertEquals(422, send(reader, SHOWN, new byte[] {1, 2, 3, 4}).statusCode());
    assertEquals(415, reader.post(SHOWN, "{}").statusCode());
    assertEquals(
        404, send(reader, "/api/studios/elsewhere/shown-pictures", jpeg(0, 0)).statusCode());
  }

  @Test
  void thePageTakesAPictureAndShowsWhatLooksLikeIt() {
    Visitor member = house.signedIn("reader@demo.example");
    Document page = Jsoup.parse(member.get("/studios/demo/setups").body());
    assertEquals(
        "/studios/demo/shown-pictures",
        page.expectFirst(".show-picture form[enctype=multipart/form-data]").attr("action"));
    String found = "/studios/demo/setups?like_tones=" + tones(jpeg(0x707070, 0x909090));
    Document like = Jsoup.parse(house.signedIn("author@demo.example").get(found).body());
    assertEquals("Two greys", like.expectFirst(".hit h2").text());
    assertEquals("Looks like the picture shown", like.expectFirst(".active .chip").ownText());
    assertTrue(like.expectFirst(".hit-reason").text().contains("tones alike"));
    assertTrue(
        like.select(".keep-search").isEmpty(), "A picture is not kept, so no search with it.");
  }
}
