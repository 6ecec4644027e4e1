package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.picture.Drawn;
import lampwright.picture.ExifWriter;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

/** The pages of pictures in a browser without scripts, which proves its forms by their field. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PicturePagesTest {

  private static final String API = "/api/studios/demo/setups";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor author;
  private Visitor browser;
  private String setup = "";

  @BeforeAll
  void theMembersSignIn() {
    author = house.withToken("author@demo.example");
    browser = signedIn("author@demo.example");
  }

  private static Visitor signedIn(String email) {
    return house.signedIn(email).with("X-CSRF-Token", "").with("Accept", "text/html");
  }

  @BeforeEach
  void aSetupWithoutPictures() {
    HttpResponse<String> made = author.post(API, Documents.json(Documents.setup("Pictured")));
    setup = made.headers().firstValue("Location").orElseThrow().substring("/api".length());
  }

  private static byte[] photograph(int shade) {
    byte[] plain = Drawn.jpeg(Drawn.image(640, 480, (x, y) -> x < 99 ? shade << 8 : 0x202020), 0.9);
    return Drawn.withExif(plain, ExifWriter.full(1));
  }

  private static Document page(HttpResponse<String> answer) {
    assertEquals(200, answer.statusCode(), answer.body());
    return Jsoup.parse(answer.body());
  }

  private static byte[] field(String name, String text) {
    return part("name=\"%s\"".formatted(name), text.getBytes(StandardCharsets.UTF_8));
  }

  private static byte[] file(byte[] content) {
    return part("name=\"file\"; filename=\"a.jpg\"", content);
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

  private HttpResponse<String> send(Visitor who, List<byte[]> parts) {
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    parts.forEach(body::writeBytes);
    body.writeBytes("--XX--\r\n".getBytes(StandardCharsets.UTF_8));
    return who.with("Content-Type", "multipart/form-data; boundary=XX")
        .send("POST", setup + "/pictures", BodyPublishers.ofByteArray(body.toByteArray()));
  }

  private String proof(Visitor who) {
    return page(who.get(setup + "/pictures")).select("form.form input[name=csrf]").val();
  }

  private HttpResponse<String> add(String kind, String caption, byte[] file) {
    return send(
        browser,
        List.of(
            field("csrf", proof(browser)),
            field("kind", kind),
            field("caption", caption),
            file(file)));
  }

  @Test
  void aSetupWithoutPicturesStaysCalm() {
    Document page = page(browser.get(setup));
    assertTrue(page.select(".pictures-part, main img").isEmpty());
    assertEquals(1, page.select("a[href=" + setup + "/pictures]").size());
    assertTrue(page(browser.get(setup + "/pictures")).text().contains("No picture is kept yet"));
  }

  @Test
  void aPictureIsAddedByAFormAndShownWithWhatItsFileSaysAgainstTheSetup() {
    HttpResponse<String> made = add("final", "The <b>quay</b>", photograph(21));
    assertEquals(303, made.statusCode(), made.body());
    String place = made.headers().firstValue("Location").orElseThrow();
    Document page = page(browser.get(place));
    assertEquals("Finished picture", page.select("h1").text());
    assertEquals("The <b>quay</b>", page.select("figcaption").text());
    assertEquals("The <b>quay</b>", page.select("main img").attr("alt"));
    assertTrue(page.select(".says").text().contains("The file says 1/60 s, the setup 1/125 s"));
    assertTrue(page.select("tr.differs").text().contains("differs 1/60 s 1/125 s"));
    assertTrue(page.select(".picture-file").text().startsWith("JPEG, 640 × 480 pixels"));
    assertEquals(200, browser.bytes(page.select("main img").attr("src")).statusCode());
    assertFalse(page.select(".colour-list li").isEmpty());

    add("contact_frame", "", photograph(22));
    Document ofSetup = page(browser.get(setup));
    assertEquals(1, ofSetup.select(".finished img[src$=screen]").size());
    assertEquals(1, ofSetup.select(".thumbnails img[src$=thumbnail]").size());
    assertEquals(2, page(browser.get(setup + "/pictures")).select(".gallery li").size());
  }

  @Test
  void theListOfSetupsShowsFinishedPictures() {
    String place =
        add("final", "Found by it", photograph(23)).headers().firstValue("Location").orElseThrow();
    add("contact_frame", "", photograph(24));
    Document list = page(browser.get("/studios/demo/setups?q=Pictured"));
    assertEquals(
        List.of("/api" + place + "/thumbnail"),
        list.select(".hit:has(a[href=" + setup + "]) img").eachAttr("src"));
  }

  @Test
  void aFormWithoutItsProofOrWithItBehindTheFileIsRefusedAndKeepsNothing() {
    byte[] file = photograph(25);
    byte[] kind = field("kind", "final");
    byte[] proof = field("csrf", proof(browser));
    for (List<byte[]> parts :
        List.of(
            List.of(kind, file(file)),
            List.of(kind, file(file), proof),
            List.of(field("csrf", "AAAA"), kind, file(file)),
            List.of(field("csrf", "A".repeat(4_000)), kind, file(file)))) {
      assertEquals(403, send(browser, parts).statusCode());
    }
    assertEquals(303, send(browser, List.of(kind, proof, file(file))).statusCode());
    assertEquals(1, Visitor.items(author.get("/api" + setup + "/pictures")).size());
    assertEquals(
        403,
        send(browser.with("Sec-Fetch-Site", "cross-site"), List.of(proof, kind, file(file)))
            .statusCode());
  }

  @Test
  void whatIsWrongWithAFormIsToldOnItsPageAndWhatWasTypedStands() {
    HttpResponse<String> gif = add("reference", "Kept words", Drawn.gif(Drawn.scene(8, 8)));
    assertEquals(422, gif.statusCode());
    Document page = Jsoup.parse(gif.body());
    assertTrue(page.select(".errors a[href=#file]").text().contains("The file is a GIF"));
    assertEquals("Kept words", page.select("#caption").text());
    assertEquals("reference", page.select("option[selected]").val());

    Document tooLong = Jsoup.parse(add("final", "x".repeat(501), photograph(26)).body());
    assertEquals(1, tooLong.select(".errors a[href=#caption]").size());
    assertEquals(422, add("final", "", new byte[0]).statusCode());
    Document none =
        Jsoup.parse(
            send(browser, List.of(field("csrf", proof(browser)), field("kind", "final"))).body());
    assertTrue(none.select(".errors").text().contains("must hold a file"));
    assertEquals(List.of(), Visitor.items(author.get("/api" + setup + "/pictures")));
  }

  @Test
  void aFileThatIsTooLargeIsToldOnThePage() {
    HttpResponse<String> answer = add("final", "Stays", new byte[(64 << 20) + 1]);
    assertEquals(413, answer.statusCode());
    Document page = Jsoup.parse(answer.body());
    assertTrue(page.select(".errors a[href=#file]").text().contains("at most 64 MB"));
    assertEquals("Stays", page.select("#caption").text());
  }

  @Test
  void whatIsSaidOfItIsChangedAndItIsTakenAwayUnlessSomebodyWasFaster() {
    String place =
        add("final", "Before", photograph(27)).headers().firstValue("Location").orElseThrow();
    String proof = proof(browser);
    String fields =
        "csrf=" + proof + "&revision=%d&kind=reference&caption=After&may_show_place=true";
    assertEquals(303, browser.postForm(place, fields.formatted(1)).statusCode());
    Document now = page(browser.get(place));
    assertEquals("Reference", now.select("h1").text());
    assertEquals("2", now.select("form.form input[name=revision]").val());
    assertTrue(now.text().contains("gets the file as it came"));
    assertTrue(author.get("/api" + place).body().contains("latitude_deg"));

    HttpResponse<String> stale =
        browser.postForm(place, fields.formatted(1).replace("After", "Mine"));
    assertEquals(412, stale.statusCode());
    assertEquals("Mine", Jsoup.parse(stale.body()).select("#caption").text());
    assertTrue(Jsoup.parse(stale.body()).select(".errors").text().contains("Somebody changed"));
    assertEquals(
        422, browser.postForm(place, "csrf=" + proof + "&revision=2&kind=poster").statusCode());
    assertEquals(
        412, browser.postForm(place + "/removal", "csrf=" + proof + "&revision=1").statusCode());
    assertEquals(
        303, browser.postForm(place + "/removal", "csrf=" + proof + "&revision=2").statusCode());
    assertEquals(404, browser.get(place).statusCode());
    assertEquals(303, browser.get(place + "/removal").statusCode());
  }

  @Test
  void theCrewMayAddOnlyWhatIsOfTheDayAndReadersNothing() {
    add("final", "", photograph(28));
    Visitor crew = signedIn("crew@demo.example");
    Document page = page(crew.get(setup + "/pictures"));
    assertEquals(
        List.of("contact_frame", "behind_the_scenes"), page.select("option").eachAttr("value"));
    byte[] proof = field("csrf", proof(crew));
    byte[] file = file(photograph(29));
    assertEquals(
        303, send(crew, List.of(proof, field("kind", "contact_frame"), file)).statusCode());
    assertEquals(403, send(crew, List.of(proof, field("kind", "final"), file)).statusCode());
    Visitor reader = signedIn("reader@demo.example");
    assertEquals(404, reader.get(setup + "/pictures").statusCode());
    Proven.by(author, "/api" + setup + "/pictures");
    Document seen = page(reader.get(setup + "/pictures"));
    assertEquals(2, seen.select(".gallery li").size());
    assertTrue(seen.select("main form").isEmpty());
    String place = seen.select(".gallery a").attr("href");
    assertTrue(page(reader.get(place)).select("main form").isEmpty());
  }

  @Test
  void notesAtPointsOfAPictureStandOnItWithTheirNumbers() {
    String place = add("final", "", photograph(30)).headers().firstValue("Location").orElseThrow();
    String id = place.substring(place.lastIndexOf('/') + 1);
    for (String text : List.of("Too hot here", "Keep this")) {
      author.post(
          "/api" + setup + "/notes",
          Documents.json(
              Map.of(
                  "text",
                  text,
                  "about",
                  Map.of("kind", "picture", "picture", id, "x", 0.25, "y", 0.5))));
    }
    Document page = page(browser.get(place));
    assertEquals(List.of("1", "2"), page.select(".picture-points text").eachText());
    assertEquals("250.0", page.select(".picture-points circle").attr("cx"));
    assertEquals("375.0", page.select(".picture-points circle").attr("cy"));
    assertTrue(page.select(".point-notes li").getFirst().text().contains("Too hot here"));
  }

  @Test
  void aPictureWhoseFileIsLostSaysSoCalmly() throws Exception {
    String place =
        add("final", "Gone", photograph(31)).headers().firstValue("Location").orElseThrow();
    Object hash = Told.at(Visitor.object(author.get("/api" + place)), "sha256");
    try (Stream<Path> tree = Files.walk(house.data().resolve("pictures"))) {
      for (Path file : tree.filter(of -> of.toString().contains(hash.toString())).toList()) {
        Files.delete(file);
      }
    }
    for (String path :
        List.of(place, setup, setup + "/pictures", "/studios/demo/setups?q=Pictured")) {
      Document page = page(browser.get(path));
      assertTrue(page.select("img[src*=" + place + "]").isEmpty(), path);
    }
    assertTrue(page(browser.get(place)).select(".lost").text().contains("from a backup"));
    assertEquals(404, author.get("/api" + place + "/thumbnail").statusCode());
  }
}
