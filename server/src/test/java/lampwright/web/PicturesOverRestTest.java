package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.drew.imaging.ImageMetadataReader;
import com.drew.metadata.exif.GpsDirectory;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.picture.Drawn;
import lampwright.picture.ExifWriter;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PicturesOverRestTest {

  private static final String SETUPS = "/api/studios/demo/setups";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor author;
  private String pictures = "";

  @BeforeAll
  void anAuthorComesWithAToken() {
    author = house.withToken("author@demo.example");
  }

  @BeforeEach
  void aSetupWithoutPictures() {
    HttpResponse<String> made = author.post(SETUPS, Documents.json(Documents.setup("Pictured")));
    pictures = made.headers().firstValue("Location").orElseThrow() + "/pictures";
  }

  /** A scene with a place, a name and a serial number in it, another for each shade. */
  private static byte[] photograph(int shade) {
    byte[] plain = Drawn.jpeg(Drawn.image(64, 48, (x, y) -> x < 32 ? shade << 8 : 0x202020), 0.9);
    return Drawn.withExif(plain, ExifWriter.full(1));
  }

  private static HttpResponse<String> add(Visitor who, String path, String type, byte[] body) {
    return who.with("Content-Type", type).send("POST", path, BodyPublishers.ofByteArray(body));
  }

  private HttpResponse<String> add(byte[] body) {
    return add(author, pictures + "?kind=final&caption=The%20quay", "image/jpeg", body);
  }

  private static String location(HttpResponse<String> answer) {
    assertEquals(201, answer.statusCode(), answer.body());
    return answer.headers().firstValue("Location").orElseThrow();
  }

  /** Of this database; there are folders of others only where a test makes one. */
  private static Path folder() throws IOException {
    try (Stream<Path> folders = Files.list(house.data().resolve("pictures"))) {
      List<Path> own = folders.filter(folder -> !folder.endsWith("another")).toList();
      assertEquals(1, own.size(), own.toString());
      return own.getFirst();
    }
  }

  private static List<Path> files() throws IOException {
    try (Stream<Path> tree = Files.walk(folder())) {
      // A living server's lock is no picture.
      return tree.filter(Files::isRegularFile)
          .filter(file -> !file.toString().endsWith(".lock"))
          .toList();
    }
  }

  @Test
  void aPictureIsAddedReadChangedAndTakenAway() throws IOException {
    int before = files().size();
    HttpResponse<String> made = add(photograph(11));
    String place = location(made);
    assertEquals("\"1\"", made.headers().firstValue("ETag").orElseThrow());
    Map<?, ?> picture = Visitor.object(author.get(place));
    assertEquals(Visitor.object(made), picture);
    assertEquals("The quay", Told.at(picture, "document", "caption"));
    assertEquals("1/60 s", Told.at(picture, "exif", "time"));
    assertEquals(true, Told.at(picture, "exif", "has_place"));
    assertFalse(made.body().contains("latitude"), made.body());
    assertEquals(before + 4, files().size());
    assertEquals(1, Visitor.items(author.get(pictures)).size());

    String note = "{\"kind\":\"final\",\"may_show_place\":true}";
    assertEquals(428, author.put(place, note).statusCode());
    HttpResponse<String> changed = author.with("If-Match", "\"1\"").put(place, note);
    assertEquals(200, changed.statusCode(), changed.body());
    assertTrue(changed.body().contains("\"latitude_deg\":54.51"), changed.body());
    assertEquals(412, author.with("If-Match", "\"1\"").put(place, note).statusCode());
    assertEquals(412, author.with("If-Match", "\"1\"").delete(place).statusCode());

    assertEquals(204, author.with("If-Match", "\"2\"").delete(place).statusCode());
    assertEquals(404, author.get(place).statusCode());
    assertEquals(404, author.get(place + "/original").statusCode());
    assertEquals(before, files().size());
  }

  @Test
  void theOriginalIsGivenOutWithoutItsPlaceUnlessThatMayBeShown() throws Exception {
    String place = location(add(photograph(22)));
    HttpResponse<byte[]> given = author.bytes(place + "/original");
    assertEquals(200, given.statusCode());
    assertEquals("image/jpeg", given.headers().firstValue("Content-Type").orElseThrow());
    assertEquals("nosniff", given.headers().firstValue("X-Content-Type-Options").orElseThrow());
    assertTrue(
        given
            .headers()
            .firstValue("Content-Disposition")
            .orElseThrow()
            .matches("attachment; filename=\"picture-[0-9a-z]+\\.jpg\""));
    assertTrue(places(given.body()).isEmpty());
    String tag = given.headers().firstValue("ETag").orElseThrow();
    assertEquals(304, author.with("If-None-Match", tag).get(place + "/original").statusCode());

    author.with("If-Match", "\"1\"").put(place, "{\"kind\":\"final\",\"may_show_place\":true}");
    HttpResponse<byte[]> whole = author.with("If-None-Match", tag).bytes(place + "/original");
    assertTrue(Arrays.equals(photograph(22), whole.body()));
    assertEquals(1, places(whole.body()).size());
  }

  private static List<GpsDirectory> places(byte[] file) throws Exception {
    return List.copyOf(
        ImageMetadataReader.readMetadata(new ByteArrayInputStream(file))
            .getDirectoriesOfType(GpsDirectory.class));
  }

  @Test
  void smallerVersionsAreJpegWhateverCame() {
    byte[] png = Drawn.png(Drawn.scene(1500, 1000));
    // What the sender says it is does not matter.
    String place = location(add(author, pictures + "?kind=reference", "image/webp", png));
    for (String path : List.of("/thumbnail", "/screen", "/screen?width=2560")) {
      HttpResponse<byte[]> given = author.bytes(place + path);
      assertEquals(200, given.statusCode());
      assertEquals("image/jpeg", given.headers().firstValue("Content-Type").orElseThrow());
      assertEquals((byte) 0xd8, given.body()[1]);
    }
    assertEquals(422, author.get(place + "/screen?width=99").statusCode());
  }

  @Test
  void aFormWithOneFileIsTakenWhateverTheFileIsCalled() throws IOException {
    byte[] form = form("../../etc/passwd", photograph(33));
    HttpResponse<String> made = add(author, pictures, "multipart/form-data; boundary=XX", form);
    location(made);
    assertEquals("contact_frame", Told.at(Visitor.object(made), "document", "kind"));
    assertFalse(made.body().contains("passwd"));
    assertTrue(files().stream().noneMatch(file -> file.toString().contains("passwd")));
    byte[] cut = Arrays.copyOf(form, form.length - 30);
    assertEquals(400, add(author, pictures, "multipart/form-data; boundary=XX", cut).statusCode());
    assertEquals(400, add(author, pictures, "multipart/form-data", form).statusCode());
  }

  private static byte[] form(String name, byte[] file) {
    byte[] head =
        """
        --XX\r
        Content-Disposition: form-data; name="file"; filename="%s"\r
        Content-Type: image/jpeg\r
        \r
        """
            .formatted(name)
            .getBytes(StandardCharsets.UTF_8);
    byte[] rest =
        "\r\n--XX\r\nContent-Disposition: form-data; name=\"kind\"\r\n\r\ncontact_frame\r\n--XX--\r\n"
            .getBytes(StandardCharsets.UTF_8);
    return ByteBuffer.allocate(head.length + file.length + rest.length)
        .put(head)
        .put(file)
        .put(rest)
        .array();
  }

  @Test
  void theCrewAddsWhatIsOfTheDayAndReadersRead() {
    Visitor crew = house.withToken("crew@demo.example");
    byte[] file = photograph(44);
    String place = location(add(crew, pictures + "?kind=behind_the_scenes", "image/jpeg", file));
    assertEquals(403, add(crew, pictures + "?kind=final", "image/jpeg", file).statusCode());
    assertEquals(403, crew.with("If-Match", "\"1\"").delete(place).statusCode());
    Visitor reader = house.withToken("reader@demo.example");
    assertEquals(404, reader.get(place + "/thumbnail").statusCode());
    Proven.by(author, pictures);
    assertEquals(200, reader.get(place + "/thumbnail").statusCode());
    assertEquals(
        403, add(reader, pictures + "?kind=contact_frame", "image/jpeg", file).statusCode());
  }

  @Test
  void whatTheFileSaysIsHeldAgainstTheSetup() {
    String place = location(add(photograph(66)));
    Map<?, ?> told = Visitor.object(author.get(place + "/comparison"));
    assertEquals(1.0, Told.number(told, "setup_revision"));
    assertEquals("/exposure/time", Told.at(told, "differs", 0, "pointer"));
    assertEquals(
        "The file says 1/60 s, the setup 1/125 s: one stop more ambient.",
        Told.at(told, "differs", 0, "sentence"));
    assertEquals("/exposure/iso", Told.at(told, "differs", 1, "pointer"));
    assertEquals("/occasion/date", Told.at(told, "offers", 0, "pointer"));
    assertEquals("2026-10-03", Told.at(told, "offers", 0, "value"));
  }

  @Test
  void theSameBytesLieInOneFileUntilNoPictureNeedsThem() throws IOException {
    int before = files().size();
    String one = location(add(photograph(55)));
    String other = location(add(photograph(55)));
    assertEquals(before + 4, files().size());
    assertEquals(204, author.with("If-Match", "\"1\"").delete(one).statusCode());
    assertEquals(200, author.get(other + "/thumbnail").statusCode());
    assertEquals(204, author.with("If-Match", "\"1\"").delete(other).statusCode());
    assertEquals(before, files().size());
  }

  @Test
  void pagesGoOnWhereTheOneBeforeEnded() {
    for (int i = 0; i < 3; i++) {
      location(add(photograph(60 + i)));
    }
    HttpResponse<String> first = author.get(pictures + "?limit=2");
    assertEquals(2, Visitor.items(first).size());
    String link = first.headers().firstValue("Link").orElseThrow();
    String next = link.substring(1, link.indexOf('>'));
    assertEquals(1, Visitor.items(author.get(next)).size());
    assertEquals(422, author.get(pictures + "?cursor=nonsense").statusCode());
  }

  @Test
  void whatIsNoPictureIsRefusedAndLeavesNothing() throws IOException {
    int before = files().size();
    byte[] bomb = Drawn.png(Drawn.scene(8, 8));
    ByteBuffer.wrap(bomb).putInt(16, 65_535).putInt(20, 65_535);
    byte[] photograph = photograph(77);
    Map<String, byte[]> hostile =
        Map.of(
            "is empty",
            new byte[0],
            "65535 by 65535",
            bomb,
            "ends before the picture is complete",
            Arrays.copyOf(photograph, photograph.length / 2),
            "an SVG",
            "<svg><script>alert(1)</script></svg>".getBytes(StandardCharsets.UTF_8),
            "a GIF",
            Drawn.gif(Drawn.scene(8, 8)),
            "a page of markup",
            "<!doctype html><script>alert(1)</script>".getBytes(StandardCharsets.UTF_8));
    hostile.forEach(
        (reason, file) -> {
          HttpResponse<String> answer = add(file);
          assertEquals(422, answer.statusCode(), answer.body());
          assertTrue(answer.body().contains(reason), answer.body());
        });
    assertEquals(415, add(author, pictures + "?kind=final", "text/html", photograph).statusCode());
    assertEquals(
        422, add(author, pictures + "?kind=poster", "image/jpeg", photograph).statusCode());
    assertEquals(
        404, add(author, SETUPS + "/zzzz/pictures", "image/jpeg", photograph).statusCode());
    assertEquals(before, files().size());
    assertEquals(List.of(), Visitor.items(author.get(pictures)));
  }

  @Test
  void threeGigabytesAreRefusedWhenTheyAreAnnounced() throws Exception {
    String token = author.header("Authorization");
    RawAnswer answer =
        RawAnswer.to(
            house.port(),
            "POST "
                + pictures
                + "?kind=final HTTP/1.1\r\nAuthorization: "
                + token
                + "\r\nContent-Type: image/jpeg\r\nContent-Length: 3221225472\r\n");
    assertEquals(413, answer.status());
  }

  @Test
  void whatACrashLeftWithoutARowIsGoneAfterTheNextStart() throws IOException {
    String place = location(add(photograph(88)));
    List<Path> kept = files();
    String hash = "ab".repeat(32);
    Path orphan = folder().resolve("ab/ab/" + hash + ".original");
    Files.createDirectories(orphan.getParent());
    Files.write(orphan, photograph(99));
    Path arriving = folder().resolve("arriving/picture123");
    Files.write(arriving, new byte[100]);
    Path ofAnotherDatabase = house.data().resolve("pictures/another/ab/ab/" + hash + ".original");
    Files.createDirectories(ofAnotherDatabase.getParent());
    Files.write(ofAnotherDatabase, photograph(99));
    house.reopen();
    assertEquals(kept, files());
    assertTrue(Files.exists(ofAnotherDatabase));
    Visitor again = house.withToken("author@demo.example");
    assertEquals(200, again.get(place + "/original").statusCode());
    author = again;
  }
}
