package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Arrays;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import javax.imageio.ImageIO;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Upload;
import lampwright.Visitor;
import lampwright.picture.Drawn;
import lampwright.picture.ExifWriter;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Pictures that mean harm, break off or lie on their way, and how their bytes go out. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class HostilePicturesTest {

  private static final String SETUPS = "/api/studios/demo/setups";
  private static final int MOST = 64 << 20;

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

  private static byte[] photograph(int shade) {
    return Drawn.withExif(
        Drawn.jpeg(Drawn.image(640, 480, (x, y) -> x < 99 ? shade << 8 : 0x202020), 0.9),
        ExifWriter.full(1));
  }

  private HttpResponse<String> add(byte[] file) {
    return Upload.whole(author, pictures, file);
  }

  private String place(byte[] file) {
    HttpResponse<String> made = add(file);
    assertEquals(201, made.statusCode(), made.body());
    return made.headers().firstValue("Location").orElseThrow();
  }

  private static Path folder() {
    return house.data().resolve("pictures");
  }

  private void nothingIsKept() {
    Upload.awaitNothingIn(folder());
    assertEquals(List.of(), Visitor.items(author.get(pictures)));
  }

  @Test
  void progressiveAndFourColourJpegsAreReadAndShownInThreeColours() throws IOException {
    int sky = thumbnail(Drawn.progressiveJpeg(Drawn.scene(200, 150))).getRGB(180, 10) & 0xff;
    assertTrue(sky > 150, "blue " + sky);
    BufferedImage inks = thumbnail(Drawn.cmykJpeg(64, 48));
    assertEquals(3, inks.getColorModel().getNumComponents());
    int green = (inks.getRGB(32, 24) >> 8) & 0xff;
    // Half of each ink is a middle grey, whatever the inks are; common practice, no source.
    assertTrue(green > 80 && green < 180, "green " + green);
  }

  private BufferedImage thumbnail(byte[] file) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(author.bytes(place(file) + "/thumbnail").body()));
  }

  @Test
  void aTiffIsGivenOutAsAJpegOfItsSizeUnlessItsPlaceMayBeShown() throws IOException {
    byte[] tiff = Drawn.tiff(Drawn.scene(300, 200));
    String place = place(tiff);
    HttpResponse<byte[]> given = author.bytes(place + "/original");
    assertEquals("image/jpeg", given.headers().firstValue("Content-Type").orElseThrow());
    assertTrue(given.headers().firstValue("Content-Disposition").orElseThrow().contains(".jpg"));
    assertEquals(300, ImageIO.read(new ByteArrayInputStream(given.body())).getWidth());
    author.with("If-Match", "\"1\"").put(place, "{\"kind\":\"final\",\"may_show_place\":true}");
    assertArrayEquals(tiff, author.bytes(place + "/original").body());
  }

  @Test
  void whatIsBothAPictureAndAPageOfMarkupIsGivenOutAsAPictureAlone() {
    byte[] page = "<html><script>alert(1)</script></html>".getBytes(StandardCharsets.UTF_8);
    byte[] picture = photograph(1);
    byte[] both = Arrays.copyOf(picture, picture.length + page.length);
    System.arraycopy(page, 0, both, picture.length, page.length);
    HttpResponse<byte[]> given = author.bytes(place(both) + "/original");
    assertEquals("image/jpeg", given.headers().firstValue("Content-Type").orElseThrow());
    assertEquals("nosniff", given.headers().firstValue("X-Content-Type-Options").orElseThrow());
    assertFalse(new String(given.body(), StandardCharsets.ISO_8859_1).contains("<script>"));
  }

  @Test
  void sixtyFourMegabytesAreTakenAndOneByteMoreIsNot() {
    byte[] most = Arrays.copyOf(photograph(2), MOST);
    assertEquals(413, add(Arrays.copyOf(most, MOST + 1)).statusCode());
    nothingIsKept();
    place(most);
  }

  @Test
  void whoHangsUpInTheMiddleLeavesNothing() throws IOException {
    try (Upload upload = Upload.begin(address(), author, pictures, photograph(3))) {
      upload.awaitFileIn(folder());
    }
    nothingIsKept();
  }

  @Test
  void aLengthThatLiesLeavesNothing() throws IOException {
    byte[] file = photograph(4);
    try (Upload shorter = Upload.begin(address(), author, pictures, file, file.length / 2)) {
      assertEquals(422, shorter.status());
    }
    try (Upload longer = Upload.begin(address(), author, pictures, file, file.length * 3L)) {
      longer.awaitFileIn(folder());
    }
    nothingIsKept();
  }

  private static URI address() {
    return URI.create("http://127.0.0.1:" + house.port());
  }

  @Test
  void aFormWithoutEndOrWithTooManyPartsOrAHugeHeadIsRefused() {
    String head = "--XX\r\nContent-Disposition: form-data; name=\"kind\"";
    String field = head + "\r\n\r\nfinal\r\n";
    List<String> forms =
        List.of(
            field,
            field.repeat(30) + "--XX--\r\n",
            head + "; x=\"" + "a".repeat(20_000) + "\"\r\n\r\nfinal\r\n--XX--\r\n",
            head + "\r\n\r\n" + "a".repeat(200_000) + "\r\n--XX--\r\n",
            "no form at all",
            "");
    for (String form : forms) {
      HttpResponse<String> answer =
          author
              .with("Content-Type", "multipart/form-data; boundary=XX")
              .send("POST", pictures, BodyPublishers.ofString(form));
      assertEquals(400, answer.statusCode(), answer.body());
    }
    nothingIsKept();
  }

  @Test
  void oneByteThatIsNotWhatTheDigestTellsOfIsRefused() throws Exception {
    byte[] file = photograph(5);
    String digest =
        "sha-256=:%s:"
            .formatted(
                Base64.getEncoder()
                    .encodeToString(MessageDigest.getInstance("SHA-256").digest(file)));
    byte[] damaged = file.clone();
    damaged[damaged.length / 2] ^= 1;
    for (String name : List.of("Content-Digest", "Repr-Digest")) {
      HttpResponse<String> answer =
          Upload.whole(author.with(name, "unixsum=30637, " + digest), pictures, damaged);
      assertEquals(400, answer.statusCode(), answer.body());
      assertTrue(answer.body().contains(name), answer.body());
    }
    assertEquals(
        400,
        Upload.whole(author.with("Content-Digest", "sha-256=abc"), pictures, file).statusCode());
    nothingIsKept();
    HttpResponse<String> made = Upload.whole(author.with("Content-Digest", digest), pictures, file);
    assertEquals(201, made.statusCode(), made.body());
    String place = made.headers().firstValue("Location").orElseThrow();
    author.with("If-Match", "\"1\"").put(place, "{\"kind\":\"final\",\"may_show_place\":true}");
    HttpResponse<byte[]> given = author.bytes(place + "/original");
    assertEquals(digest, given.headers().firstValue("Repr-Digest").orElseThrow());
    assertEquals(
        Told.at(Visitor.object(made), "sha256"),
        HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(given.body())));
  }

  @Test
  void partsOfThePictureMakeTheWholeAndHeadTellsHowLongThatIs() throws IOException {
    String place = place(photograph(6));
    for (String path : List.of("/thumbnail", "/screen", "/original")) {
      byte[] whole = author.with("Accept-Encoding", "gzip").bytes(place + path).body();
      HttpResponse<String> head = author.send("HEAD", place + path, BodyPublishers.noBody());
      assertEquals(200, head.statusCode());
      assertEquals(whole.length, head.headers().firstValueAsLong("Content-Length").orElseThrow());
      assertEquals("bytes", head.headers().firstValue("Accept-Ranges").orElseThrow());
      ByteArrayOutputStream parts = new ByteArrayOutputStream();
      String tag = head.headers().firstValue("ETag").orElseThrow();
      for (String range : List.of("bytes=0-99", "bytes=100-" + (whole.length - 51), "bytes=-50")) {
        HttpResponse<byte[]> part =
            author.with("Range", range).with("If-Range", tag).bytes(place + path);
        assertEquals(206, part.statusCode(), range);
        assertTrue(
            part.headers().firstValue("Content-Range").orElseThrow().endsWith("/" + whole.length));
        parts.writeBytes(part.body());
      }
      assertArrayEquals(whole, parts.toByteArray());
      HttpResponse<String> behind = author.with("Range", "bytes=99999999-").get(place + path);
      assertEquals(416, behind.statusCode());
      assertEquals(
          "bytes */" + whole.length, behind.headers().firstValue("Content-Range").orElseThrow());
      assertArrayEquals(
          whole,
          author.with("Range", "bytes=0-9").with("If-Range", "\"x\"").bytes(place + path).body());
    }
  }
}
