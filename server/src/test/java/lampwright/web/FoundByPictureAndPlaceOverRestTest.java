package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URLEncoder;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.picture.Drawn;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

/** The index follows what is beside a setup: its finished picture, and where its location is. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FoundByPictureAndPlaceOverRestTest {

  private static final String STUDIO = "/api/studios/demo";
  private static final String SETUPS = STUDIO + "/setups";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor author;

  @BeforeAll
  void anAuthorComesWithAToken() {
    author = house.withToken("author@demo.example");
  }

  private static String made(HttpResponse<String> answer) {
    assertEquals(201, answer.statusCode(), answer.body());
    return answer.headers().firstValue("Location").orElseThrow();
  }

  private Map<?, ?> found(String query) {
    HttpResponse<String> answer =
        author.get(SETUPS + "?q=" + URLEncoder.encode(query, StandardCharsets.UTF_8));
    assertEquals(200, answer.statusCode(), answer.body());
    return Visitor.object(answer);
  }

  /** Nobody waits for the index when a picture comes or a location moves; it follows at once. */
  private void awaitFound(String query, String... titles) {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(30);
    List<Object> found;
    do {
      assertTrue(System.nanoTime() < end, "Not found by " + query);
      found =
          Told.list(found(query), "items").stream()
              .<Object>map(item -> Told.at(item, "title"))
              .toList();
    } while (!found.equals(List.of(titles)));
  }

  /** Half violet and half nearly black: no picture of the demo has so much violet. */
  private static byte[] violet() {
    return Drawn.jpeg(Drawn.image(64, 48, (x, _) -> x < 32 ? 0x7a3cb4 : 0x0a0a0a), 0.9);
  }

  @Test
  void aSetupIsFoundByItsFinishedPictureAsLongAsItHasOne() {
    String setup = made(author.post(SETUPS, Documents.json(Documents.setup("Violet hour"))));
    String picture =
        made(
            author
                .with("Content-Type", "image/jpeg")
                .send(
                    "POST",
                    setup + "/pictures?kind=untouched",
                    BodyPublishers.ofByteArray(violet())));
    String query = "hour [colour violet]";
    assertEquals(0, Told.number(found(query), "total"));

    author.with("If-Match", "\"1\"").put(picture, "{\"kind\":\"final\"}");
    awaitFound(query, "Violet hour");
    Map<?, ?> signed = Visitor.object(author.get(setup + "/signature"));
    String contrast = String.valueOf(Told.at(signed, "picture", "contrast"));
    awaitFound("hour [contrast " + contrast + " contrast] [warmth cool]", "Violet hour");
    assertThePageCountsHowPicturesLook();

    author.with("If-Match", "\"2\"").delete(picture);
    awaitFound(query);
    assertEquals(200, author.get(setup).statusCode());
  }

  @Test
  void aSetupIsWhereItsLocationIsNow() {
    Map<String, Object> cove = Documents.location("Lantern cove");
    String location = made(author.post(STUDIO + "/locations", Documents.json(cove)));
    made(author.post(SETUPS, Documents.json(LocationsOverRestTest.setupAt(location))));
    String title = "At " + location.substring(location.lastIndexOf('/') + 1);
    String before = "[within 1 km of 50.35, -4.15]";
    String after = "[within 1 km of -33.91, 18.42]";
    awaitFound(before, title);

    Map<String, Object> moved =
        Documents.with(Documents.with(cove, "latitude_deg", -33.91), "longitude_deg", 18.42);
    author.with("If-Match", "\"1\"").put(location, Documents.json(moved));
    awaitFound(after, title);
    assertEquals(0, Told.number(found(before), "total"));
  }

  private void assertThePageCountsHowPicturesLook() {
    HttpResponse<String> page = author.with("Accept", "text/html").get("/studios/demo/setups");
    List<String> names = Jsoup.parse(page.body()).select("details.more-facets h3").eachText();
    List<String> wanted = List.of("Tones", "Contrast", "Warmth", "Colour");
    assertTrue(names.containsAll(wanted), names.toString());
  }
}
