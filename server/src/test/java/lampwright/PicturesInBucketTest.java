package lampwright;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.net.URI;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.MessageDigest;
import java.time.Clock;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import lampwright.picture.Drawn;
import lampwright.store.PicturesUnavailable;
import lampwright.web.Documents;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/**
 * Pictures in a real store that speaks S3. What a store must do is in the Amazon S3 API Reference
 * (PutObject, GetObject, HeadObject, ListObjectsV2, DeleteObject, "Authenticating Requests (AWS
 * Signature Version 4)"); parts of a file are those of RFC 9110, section 14.
 */
@LongProgram
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PicturesInBucketTest {

  private static final String SETUPS = "/api/studios/demo/setups";
  private static final String PREFIX = "studio";
  private static final S3Server store = S3Server.start();

  @RegisterExtension
  static final TestHouse house = TestHouse.with(with(store.settings(PREFIX), "few"));

  @TempDir static Path folder;

  private Visitor author;
  private String setup = "";

  private static Map<String, String> with(Map<String, String> settings, String demo) {
    Map<String, String> all = new HashMap<>(settings);
    all.put("LAMPWRIGHT_DEMO", demo);
    all.put("LAMPWRIGHT_DEMO_PASSWORD", TestHouse.PASSWORD);
    return all;
  }

  @AfterAll
  static void closeTheStore() throws Exception {
    store.close();
  }

  @BeforeEach
  void anAuthorWithASetup() {
    author = house.withToken("author@demo.example");
    setup =
        author
            .post(SETUPS, Documents.json(Documents.setup("Pictured far away")))
            .headers()
            .firstValue("Location")
            .orElseThrow();
  }

  private static byte[] photograph(int shade) {
    return Drawn.jpeg(Drawn.image(640, 480, (x, y) -> (x * shade * 7) ^ y), 0.9);
  }

  private String add(int shade) {
    HttpResponse<String> made = Upload.whole(author, setup + "/pictures", photograph(shade));
    assertEquals(201, made.statusCode(), made.body());
    return made.headers().firstValue("Location").orElseThrow();
  }

  private void showItsPlace(String picture) {
    assertEquals(
        200,
        author
            .with("If-Match", "\"1\"")
            .put(picture, "{\"kind\":\"final\",\"may_show_place\":true}")
            .statusCode());
  }

  private static List<String> keys() throws Exception {
    return store.keys(PREFIX);
  }

  private static void until(State state, String otherwise) throws Exception {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
    while (!state.holds()) {
      assertTrue(System.nanoTime() < end, otherwise);
      Thread.onSpinWait();
    }
  }

  private interface State {
    boolean holds() throws Exception;
  }

  @Test
  void aPictureIsKeptGivenOutInPartsAndTakenAway() throws Exception {
    List<String> before = keys();
    String place = add(11);
    assertEquals(before.size() + 4, keys().size(), keys().toString());
    byte[] sent = photograph(11);
    String hash = HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(sent));
    String key =
        keys().stream().filter(k -> k.endsWith(hash + ".original")).findFirst().orElseThrow();
    assertArrayEquals(sent, Files.readAllBytes(store.folder("").resolve(key)));
    showItsPlace(place);
    assertArrayEquals(sent, author.bytes(place + "/original").body());
    HttpResponse<byte[]> part = author.with("Range", "bytes=100-299").bytes(place + "/original");
    assertEquals(206, part.statusCode());
    assertEquals(
        "bytes 100-299/" + sent.length, part.headers().firstValue("Content-Range").orElseThrow());
    assertArrayEquals(Arrays.copyOfRange(sent, 100, 300), part.body());
    assertEquals(
        416, author.with("Range", "bytes=99999999-").get(place + "/original").statusCode());
    HttpResponse<byte[]> small = author.bytes(place + "/thumbnail");
    assertEquals(200, small.statusCode());
    String tag = small.headers().firstValue("ETag").orElseThrow();
    assertEquals(304, author.with("If-None-Match", tag).get(place + "/thumbnail").statusCode());
    assertEquals(204, author.with("If-Match", "\"2\"").delete(place).statusCode());
    assertEquals(404, author.get(place + "/thumbnail").statusCode());
    assertEquals(before, keys());
  }

  @Test
  void theOriginalIsGivenOutWithoutItsPlaceInPartsToo() {
    String place = add(12);
    byte[] all = author.bytes(place + "/original").body();
    byte[] some = author.with("Range", "bytes=700-999").bytes(place + "/original").body();
    assertArrayEquals(Arrays.copyOfRange(all, 700, 1000), some);
  }

  @Test
  void whatIsThereIsNeverWrittenOver() throws Exception {
    List<String> before = keys();
    add(13);
    Path one =
        store
            .folder("")
            .resolve(keys().stream().filter(k -> !before.contains(k)).findFirst().orElseThrow());
    FileTime old = FileTime.fromMillis(1_000_000_000_000L);
    Files.setLastModifiedTime(one, old);
    add(13);
    assertEquals(before.size() + 4, keys().size());
    assertEquals(old, Files.getLastModifiedTime(one));
  }

  @Test
  void whileTheStoreIsAwayNothingIsLostAndAllGoesOnByItselfWhenItIsBack() throws Exception {
    String place = add(14);
    List<String> before = keys();
    int pictures = Visitor.items(author.get(setup + "/pictures")).size();
    Visitor browser = house.signedIn("author@demo.example");
    store.kill();
    try {
      HttpResponse<String> upload = Upload.whole(author, setup + "/pictures", photograph(15));
      assertEquals(503, upload.statusCode(), upload.body());
      assertTrue(upload.headers().firstValue("Retry-After").isPresent());
      assertEquals(503, author.get(place + "/thumbnail").statusCode());
      assertEquals(503, author.get(place + "/original").statusCode());
      assertEquals(200, author.get(place).statusCode());
      HttpResponse<String> ready = house.visitor().get("/health/ready");
      assertEquals(503, ready.statusCode());
      assertTrue(ready.body().contains("pictures"), ready.body());
      String page = setup.replaceFirst("/api", "");
      assertEquals(200, browser.get(page).statusCode());
      assertEquals(200, browser.get(page + "/pictures").statusCode());
      assertEquals(pictures, Visitor.items(author.get(setup + "/pictures")).size());
    } finally {
      store.startAgain();
    }
    until(
        () -> house.visitor().get("/health/ready").statusCode() == 200,
        "The store is back and not used");
    assertEquals(before, keys());
    assertEquals(200, author.get(place + "/thumbnail").statusCode());
    add(15);
  }

  @Test
  void whatACrashLeftWithoutARowGoesAfterTheNextStart() throws Exception {
    String place = add(16);
    List<String> kept = keys();
    String root = kept.getFirst().substring(0, kept.getFirst().indexOf('/', PREFIX.length() + 1));
    Path orphan = store.folder(root).resolve("ab/ab/" + "ab".repeat(32) + ".original");
    Files.createDirectories(orphan.getParent());
    Files.write(orphan, photograph(17));
    house.reopen();
    until(() -> keys().equals(kept), "It stays");
    Visitor again = house.withToken("author@demo.example");
    assertEquals(200, again.get(place + "/thumbnail").statusCode());
  }

  @Test
  void anotherServerWithADataFolderOfItsOwnGivesOutTheSamePictures() throws Exception {
    String place = add(18);
    Map<String, String> other = with(store.settings(PREFIX), "few");
    other.put("LAMPWRIGHT_PORT", "0");
    other.put("LAMPWRIGHT_MEANING", "false");
    other.put("LAMPWRIGHT_DATA", Files.createDirectory(folder.resolve("other")).toString());
    try (House second =
        House.open(
            Settings.read(other),
            house.database().where(),
            Clock.systemUTC(),
            new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8))) {
      Visitor there =
          new Visitor(URI.create("http://127.0.0.1:" + second.port()))
              .with("Authorization", author.header("Authorization"));
      assertArrayEquals(
          author.bytes(place + "/original").body(), there.bytes(place + "/original").body());
      HttpResponse<String> made = Upload.whole(there, setup + "/pictures", photograph(19));
      String new19 = made.headers().firstValue("Location").orElseThrow();
      assertEquals(200, author.get(new19 + "/screen").statusCode());
    }
  }

  @Test
  void aWrongKeyABucketThatIsMissingAndAnEmptyKeyFileAreToldInOneLine() throws Exception {
    Path wrong = Files.writeString(folder.resolve("wrong"), "light-keeper\nanother key\n");
    assertTold(Map.of("LAMPWRIGHT_S3_KEY_FILE", wrong.toString()), "refuses");
    assertTold(Map.of("LAMPWRIGHT_PICTURES", "s3://not-there/at-all"), "refuses: NoSuchBucket");
    Path empty = Files.writeString(folder.resolve("empty"), "\n");
    assertTold(Map.of("LAMPWRIGHT_S3_KEY_FILE", empty.toString()), "has not two lines");
  }

  private static void assertTold(Map<String, String> instead, String told) {
    Map<String, String> settings = new HashMap<>(store.settings(PREFIX));
    settings.putAll(instead);
    settings.put("LAMPWRIGHT_DATA", folder.resolve("never").toString());
    PicturesUnavailable refused =
        assertThrows(
            PicturesUnavailable.class, () -> Settings.read(settings).pictures().of("a").open());
    String message = String.valueOf(refused.getMessage());
    assertTrue(message.contains(told), message);
    assertFalse(message.contains("\n"), message);
    assertTrue(refused.isRefused(), message);
  }

  @Test
  void aBackupFromTheBucketComesBackIntoAFolderAndFromThereIntoTheBucket() throws Exception {
    add(20);
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    PrintStream console = new PrintStream(said, true, StandardCharsets.UTF_8);
    Path first = folder.resolve("first.zip");
    Map<String, String> here = new HashMap<>(store.settings(PREFIX));
    here.put("LAMPWRIGHT_DATABASE_URL", house.database().ownerUrl());
    here.put("LAMPWRIGHT_DATA", house.data().toString());
    assertTrue(
        Backups.run(Settings.read(here), "backup", first.toString(), console), said::toString);
    Map<String, String> kept = WholeTables.pictures(store.folder(PREFIX));
    assertTrue(kept.size() >= 4, kept.toString());
    Path second = folder.resolve("second.zip");
    try (RestoredHouse restored = RestoredHouse.of(first)) {
      assertEquals(kept, WholeTables.pictures(restored.settings().data().resolve("pictures")));
      assertTrue(
          Backups.run(restored.settings(), "backup", second.toString(), console), said::toString);
    }
    Path top = Files.createTempDirectory("lampwright-again");
    Files.setPosixFilePermissions(top, PosixFilePermissions.fromString("rwx--x--x"));
    Map<String, String> again = new HashMap<>(store.settings("again"));
    again.put("LAMPWRIGHT_DATA", top.resolve("data").toString());
    assertTrue(
        Backups.run(Settings.read(again), "restore", second.toString(), console), said::toString);
    assertEquals(kept, WholeTables.pictures(store.folder("again")));
  }
}
