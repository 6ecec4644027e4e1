package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.Map;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.people.PersonId;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Archives out and in by pages, in a browser without scripts. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ArchivePagesTest {

  private static final String DEMO = "/api/studios/demo";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor browser;
  private byte[] setup = new byte[0];
  private String studio = "";

  @BeforeAll
  void anOwnerHasAnArchiveAndAnEmptyStudio() {
    Visitor owner = house.withToken("owner@demo.example");
    browser = house.signedIn("owner@demo.example").with("X-CSRF-Token", "");
    String place =
        owner
            .post(DEMO + "/setups", Documents.json(Documents.setup("Carried <over>")))
            .headers()
            .firstValue("Location")
            .orElseThrow();
    setup = owner.bytes(place + "/archive").body();
    PersonId id =
        new PersonId(Told.at(Visitor.object(owner.get("/api/session")), "person", "id").toString());
    studio = "/studios/" + house.database().newStudio(id).text();
  }

  private static Document page(HttpResponse<String> answer) {
    assertEquals(200, answer.statusCode(), answer.body());
    return Jsoup.parse(answer.body());
  }

  private HttpResponse<String> send(byte[] archive, String clashes) {
    return send(browser, studio, archive, clashes);
  }

  private static HttpResponse<String> send(
      Visitor browser, String studio, byte[] archive, String clashes) {
    String csrf =
        page(browser.get(studio + "/archive")).expectFirst("form.form input[name=csrf]").val();
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    Map.of("csrf", csrf, "clashes", clashes)
        .forEach(
            (name, value) ->
                body.writeBytes(
                    part("name=\"" + name + "\"", value.getBytes(StandardCharsets.UTF_8))));
    body.writeBytes(part("name=\"file\"; filename=\"a.zip\"", archive));
    body.writeBytes("--XX--\r\n".getBytes(StandardCharsets.UTF_8));
    return browser
        .with("Content-Type", "multipart/form-data; boundary=XX")
        .send("POST", studio + "/archive", BodyPublishers.ofByteArray(body.toByteArray()));
  }

  private static byte[] part(String named, byte[] content) {
    ByteArrayOutputStream part = new ByteArrayOutputStream();
    part.writeBytes(
        "--XX\r\nContent-Disposition: form-data; %s\r\n\r\n"
            .formatted(named)
            .getBytes(StandardCharsets.UTF_8));
    part.writeBytes(content);
    part.writeBytes("\r\n".getBytes(StandardCharsets.UTF_8));
    return part.toByteArray();
  }

  private static String place(HttpResponse<String> answer) {
    assertEquals(303, answer.statusCode(), answer.body());
    return answer.headers().firstValue("Location").orElseThrow();
  }

  /** Looks again, as the page offers, until nothing is being done. */
  private Document untilDone(String place) {
    return untilDone(browser, place);
  }

  private static Document untilDone(Visitor browser, String place) {
    long end = System.nanoTime() + 60_000_000_000L;
    Document page = page(browser.get(place));
    while (!page.select("[data-progress]").isEmpty()) {
      assertTrue(System.nanoTime() < end, page.text());
      page = page(browser.get(page.expectFirst("[data-unscripted] a").attr("href")));
    }
    return page;
  }

  private HttpResponse<String> press(Element form) {
    return browser.postForm(
        form.attr("action"), "csrf=" + form.expectFirst("input[name=csrf]").val());
  }

  @Test
  void anArchiveIsPlannedThenCarriedOutAndSaysSo() {
    String place = place(send(setup, "refuse"));
    Document planned = untilDone(place);
    assertEquals("Planned", planned.expectFirst("#state").text());
    assertTrue(planned.text().contains("Carried <over> setup comes in"), planned.text());
    assertEquals(0, Visitor.items(browser.get("/api" + studio + "/setups")).size());

    press(planned.expectFirst("form[action$=execution]"));
    Document done = untilDone(place);
    assertEquals("Brought in", done.expectFirst("#state").text());
    assertTrue(done.select("form[action$=execution], form[action$=removal]").isEmpty());
    assertEquals(200, browser.get("/api" + studio + "/setups").statusCode());
  }

  @Test
  void aBrokenArchiveIsToldWhyAndDiscarded() {
    byte[] broken = Arrays.copyOf(setup, setup.length - 40);
    String place = place(send(broken, "copy"));
    Document faulty = untilDone(place);
    assertEquals("Not sound", faulty.expectFirst("#state").text());
    assertFalse(faulty.select(".problems li").isEmpty());
    assertEquals(studio + "/archive", place(press(faulty.expectFirst("form[action$=removal]"))));
    assertEquals(404, browser.get(place).statusCode());
  }

  @Test
  void whyNothingCameInIsToldInTheReadersLanguage() throws SQLException {
    String place = place(send(setup, "copy"));
    assertEquals("Planned", untilDone(place).expectFirst("#state").text());
    // As if its server had not said for a while that it lives.
    house
        .database()
        .sqlAsSuperuser(
            "update lampwright.import_job set alive_until = now() - interval '1 minute' where id ="
                + " '%s' returning id".formatted(place.substring(place.lastIndexOf('/') + 1)));
    String english = page(browser.get(place)).expectFirst(".import-state .lead").text();
    assertTrue(english.startsWith("It ended with the server that had received it"), english);
    Document german = page(browser.with("Accept-Language", "de").get(place));
    assertEquals("Nicht hereingeholt", german.expectFirst("#state").text());
    String why = german.expectFirst(".import-state .lead").text();
    assertTrue(why.startsWith("Es endete mit dem Server, der es empfangen hatte"), why);
    Object told = Visitor.object(browser.with("Accept-Language", "de").get("/api" + place));
    assertEquals(english, Told.at(told, "trouble"), "programs read English");
  }

  @Test
  void whoMayNotBringAStudioInIsToldSoInTheirLanguage() throws SQLException {
    byte[] whole = house.withToken("owner@demo.example").bytes(DEMO + "/archive").body();
    Visitor author = house.signedIn("author@demo.example").with("X-CSRF-Token", "");
    String place = place(send(author, "/studios/demo", whole, "keep"));
    Visitor german = author.with("Accept-Language", "de");
    String why = untilDone(german, place).expectFirst(".import-state .lead").text();
    assertTrue(why.startsWith("Ihre Rolle im Studio reicht dafür nicht"), why);
  }

  @Test
  void onlyWhoMayTakesAStudioOutOrBringsAnythingIn() {
    Document ofOwner = page(browser.get("/studios/demo/archive"));
    assertEquals(200, browser.bytes(ofOwner.expectFirst("a[download]").attr("href")).statusCode());
    Visitor author = house.signedIn("author@demo.example");
    Document ofAuthor = page(author.get("/studios/demo/archive"));
    assertTrue(ofAuthor.select("a[download]").isEmpty());
    assertEquals(1, ofAuthor.select("input[type=file]").size());
    Visitor reader = house.signedIn("reader@demo.example");
    assertTrue(
        page(reader.get("/studios/demo/archive"))
            .select("a[download], input[type=file]")
            .isEmpty());
  }
}
