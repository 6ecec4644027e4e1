package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.zip.GZIPInputStream;
import lampwright.TestHouse;
import lampwright.Visitor;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** A page that was kept is, to the letter, the page that would be made anew. */
class KeptPagesTest {

  private static final String STUDIO = "/api/studios/demo";
  private static final String LIST = "/studios/demo/setups";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private final Visitor owner = house.withToken("owner@demo.example");
  private final String setup =
      owner
          .post(STUDIO + "/setups", Documents.json(Documents.setup("Rope and rain")))
          .headers()
          .firstValue("Location")
          .orElseThrow();
  private final String page = setup.substring("/api".length());

  private static String body(Visitor visitor, String path) {
    HttpResponse<String> answer = visitor.get(path);
    assertEquals(200, answer.statusCode(), answer.body());
    return answer.body();
  }

  /** Past every trigger, as nobody writes: what is shown then shows whether it was made anew. */
  private static void renameUncounted(String studio) {
    try {
      var _ =
          house
              .database()
              .sqlAsSuperuser(
                  "set session_replication_role = replica",
                  "update lampwright.studio set name = '%s' where id = 'demo'".formatted(studio));
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void whatWasShownIsShownAgainUntilSomethingIsWritten() {
    renameUncounted("Studio before");
    var _ = owner.post(setup + "/notes", "{\"text\":\"Counts.\"}");
    String first = body(owner, page);
    renameUncounted("Studio unseen");
    String second = body(owner, page);
    var _ = owner.post(setup + "/notes", "{\"text\":\"Counts too.\"}");
    String third = body(owner, page);
    assertEquals(first, second);
    assertTrue(first.contains("Studio before"), first);
    assertTrue(third.contains("Studio unseen"), third);
  }

  private interface Write {
    HttpResponse<String> write(Visitor by);
  }

  /** One who comes anew has nothing kept. */
  private void isShownAtOnce(String email, String path, Write write, boolean shows) {
    Visitor reader = house.withToken(email);
    String before = body(reader, path);
    assertEquals(before, body(reader, path), "kept, or made alike");
    HttpResponse<String> written = write.write(owner);
    assertEquals(2, written.statusCode() / 100, written.body());
    String anew = body(house.withToken(email), path);
    assertEquals(anew, body(reader, path), path);
    if (shows) {
      assertNotEquals(before, anew, path);
    }
  }

  private Visitor at(Visitor by) {
    return by.with("If-Match", by.get(setup).headers().firstValue("ETag").orElseThrow());
  }

  @Test
  void whateverIsWrittenIsShownAtOnceToWhoeverLooks() {
    for (String email : List.of("owner@demo.example", "crew@demo.example")) {
      isShownAtOnce(
          email, page, by -> at(by).patch(setup, "{\"title\":\"Rope for " + email + "\"}"), true);
      isShownAtOnce(
          email,
          page,
          by -> at(by).put(setup + "/state", "{\"state\":\"proven\",\"archived\":false}"),
          true);
      isShownAtOnce(
          email,
          page,
          by -> at(by).put(setup + "/state", "{\"state\":\"draft\",\"archived\":false}"),
          true);
      isShownAtOnce(
          email,
          page,
          by -> by.post(STUDIO + "/kits", Documents.json(Documents.kit("Kit for " + email))),
          true);
      isShownAtOnce(
          email,
          page,
          by ->
              at(by).post(setup + "/used", "{\"lights\":[{\"light\":\"key\",\"stops_down\":3.5}]}"),
          true);
      isShownAtOnce(
          email, page, by -> by.post(setup + "/copies", "{\"title\":\"For " + email + "\"}"), true);
      isShownAtOnce(
          email, page, by -> by.post(setup + "/notes", "{\"text\":\"Bring rope.\"}"), false);
      isShownAtOnce(
          email,
          LIST + "?q=rope",
          by -> at(by).patch(setup, "{\"intent\":\"Rope, for " + email + "\"}"),
          false);
    }
  }

  /** The index follows what was written a little later, and the page follows the index. */
  @Test
  void aSearchShowsWhatTheIndexTookInMeanwhile() {
    Visitor reader = house.withToken("author@demo.example");
    String address = LIST + "?q=zephyr";
    assertFalse(finds(reader, address));
    var _ = owner.post(STUDIO + "/setups", Documents.json(Documents.setup("Zephyr")));
    long start = System.nanoTime();
    while (!finds(reader, address)) {
      assertTrue(System.nanoTime() - start < TimeUnit.SECONDS.toNanos(30), "never found");
      Thread.onSpinWait();
    }
  }

  private static boolean finds(Visitor reader, String address) {
    return Jsoup.parse(body(reader, address)).select("main").text().contains("Zephyr");
  }

  @Test
  void nobodyIsShownAnothersPage() {
    String owners = body(owner, page);
    String readers = body(house.withToken("crew@demo.example"), page);
    assertNotEquals(owners, readers);
    assertEquals(owners, body(owner, page));
    assertEquals(
        404, house.signedIn("owner@demo.example").get("/studios/demo2/setups").statusCode());
    assertEquals(401, house.visitor().with("Accept", "application/json").get(page).statusCode());
  }

  @Test
  void itIsKeptByHowItIsReadToo() {
    String english = body(owner, page);
    String german = body(owner.with("Accept-Language", "de"), page);
    String dim = body(owner.with("Cookie", "lampwright_theme=dim"), page);
    assertNotEquals(english, german);
    assertNotEquals(english, dim);
    assertEquals(english, body(owner, page));
    assertEquals(german, body(owner.with("Accept-Language", "de"), page));
  }

  @Test
  void aBrowserTakesItByGzip() throws IOException {
    String plain = body(owner, page);
    HttpResponse<byte[]> zipped = owner.with("Accept-Encoding", "br, gzip").bytes(page);
    assertEquals("gzip", zipped.headers().firstValue("Content-Encoding").orElse(""));
    assertEquals(
        owner.get(page + "?anew").headers().firstValue("Content-Type"),
        zipped.headers().firstValue("Content-Type"));
    try (GZIPInputStream in = new GZIPInputStream(new ByteArrayInputStream(zipped.body()))) {
      assertEquals(plain, new String(in.readAllBytes(), StandardCharsets.UTF_8));
    }
    HttpResponse<byte[]> refused = owner.with("Accept-Encoding", "gzip;q=0").bytes(page);
    assertTrue(refused.headers().firstValue("Content-Encoding").isEmpty());
    assertEquals(plain, new String(refused.body(), StandardCharsets.UTF_8));
  }
}
