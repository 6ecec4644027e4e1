package lampwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.net.http.HttpRequest.BodyPublishers;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import lampwright.backup.BackupFile;
import lampwright.backup.BackupRefused;
import lampwright.backup.BackupWriter;
import lampwright.backup.Progress;
import lampwright.picture.Drawn;
import lampwright.schema.DatabaseRefused;
import lampwright.schema.OwnedDatabase;
import lampwright.schema.Snapshot;
import lampwright.store.PicturePlace;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is wrong with a backup is found before, and nothing is half restored from it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SpoiltBackupTest {

  private static final String SETUPS = "/api/studios/demo/setups";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  @TempDir static Path folder;

  private final ByteArrayOutputStream console = new ByteArrayOutputStream();
  private final PrintStream out = new PrintStream(console, true, StandardCharsets.UTF_8);
  private Visitor author;
  private String pictures = "";
  private Path whole;
  private int emptyDatabases;

  @BeforeAll
  void aBackupIsMadeFromWhichAPictureWasTakenAwayMeanwhile() throws Exception {
    author = house.withToken("author@demo.example");
    pictures =
        SETUPS
            + "/"
            + ((Map<?, ?>) Visitor.items(author.get(SETUPS)).getFirst()).get("id")
            + "/pictures";
    byte[] shown = Drawn.jpeg(Drawn.image(64, 48, (x, y) -> x + y), 0.9);
    String place =
        author
            .with("Content-Type", "image/jpeg")
            .send("POST", pictures + "?kind=final", BodyPublishers.ofByteArray(shown))
            .headers()
            .firstValue("Location")
            .orElseThrow();
    whole = folder.resolve("whole.zip");
    try (Snapshot snapshot = database(house.database().ownerUrl()).snapshot()) {
      assertEquals(204, author.with("If-Match", "\"1\"").delete(place).statusCode());
      Path files = house.data().resolve("pictures").resolve(snapshot.identity());
      BackupWriter.write(
          whole,
          snapshot,
          new PicturePlace.Folder(files).read(),
          "a test",
          Instant.EPOCH,
          new Progress(out));
      assertTrue(WholeTables.pictures(files).size() >= 4);
    }
  }

  private static OwnedDatabase database(String url) {
    return OwnedDatabase.at("LAMPWRIGHT_DATABASE_URL", url);
  }

  private static void verify(Path file) {
    try (BackupFile backup = BackupFile.open(file)) {
      backup.verify(new Progress(new PrintStream(OutputStream.nullOutputStream())));
    }
  }

  @Test
  void aPictureThatIsTakenAwayMeanwhileIsInItAndGoesAfterwards() throws Exception {
    try (BackupFile backup = BackupFile.open(whole)) {
      assertEquals(1, backup.manifest().pictures());
      assertEquals(List.of(), backup.manifest().lost());
    }
    verify(whole);
    byte[] other = Drawn.jpeg(Drawn.image(64, 48, (x, y) -> x), 0.9);
    String place =
        author
            .with("Content-Type", "image/jpeg")
            .send("POST", pictures + "?kind=final", BodyPublishers.ofByteArray(other))
            .headers()
            .firstValue("Location")
            .orElseThrow();
    assertEquals(204, author.with("If-Match", "\"1\"").delete(place).statusCode());
    assertEquals(Map.of(), WholeTables.pictures(house.data().resolve("pictures")));
  }

  /** By the ZIP library of Apache Commons, and the sha256sum of GNU's coreutils. */
  @Test
  void othersReadItAndFindItsChecksumsRight() throws Exception {
    Path unpacked = Files.createDirectory(folder.resolve("unpacked"));
    try (ZipFile zip = ZipFile.builder().setPath(whole).get()) {
      for (ZipArchiveEntry entry : Collections.list(zip.getEntries())) {
        Path file = unpacked.resolve(entry.getName());
        Files.createDirectories(file.getParent());
        try (InputStream in = zip.getInputStream(entry)) {
          Files.copy(in, file);
        }
      }
    }
    Process process =
        new ProcessBuilder("sha256sum", "--check", "--strict", "--quiet", "files.sha256")
            .directory(unpacked.toFile())
            .redirectErrorStream(true)
            .start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals("", said);
    assertEquals(0, process.waitFor());
  }

  @Test
  void whereverItIsCutItIsRefusedInOneLine() throws Exception {
    byte[] bytes = Files.readAllBytes(whole);
    Random dice = new Random(12);
    for (int i = 0; i < 30; i++) {
      int length = dice.nextInt(bytes.length);
      Path cut = Files.write(folder.resolve("cut.zip"), Arrays.copyOf(bytes, length));
      BackupRefused refused =
          assertThrows(BackupRefused.class, () -> verify(cut), () -> "cut after " + length);
      assertEquals(1, refused.toString().lines().count(), refused.toString());
    }
  }

  /** A bit of what the ZIP says twice, or of a time, may be another: then nothing else is. */
  @Test
  void whicheverBitIsAnotherItIsRefusedOrHarmless() throws Exception {
    byte[] bytes = Files.readAllBytes(whole);
    Random dice = new Random(13);
    int refused = 0;
    for (int i = 0; i < 60; i++) {
      byte[] other = bytes.clone();
      // Half of them in the directory and the last files, of which there is little.
      int at =
          i % 2 == 0
              ? dice.nextInt(bytes.length)
              : bytes.length - 1 - dice.nextInt(Math.min(bytes.length, 8000));
      other[at] ^= (byte) (1 << dice.nextInt(8));
      Path flipped = Files.write(folder.resolve("flipped.zip"), other);
      try {
        verify(flipped);
      } catch (BackupRefused e) {
        refused++;
      }
    }
    assertTrue(refused > 40, "refused " + refused + " of 60");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        // The manifest is right where the rows are not: found while they come in.
        "\"name\":\"setup\",\"columns\":\\[[^\\]]*\\],\"rows\":\\d+ | the table setup has",
        "\"schema\":\\d+ | this Lampwright knows them up to",
        "\"name\":\"kit\" | its files are not those",
        "Lampwright backup 1 | no backup that this Lampwright reads"
      })
  void aManifestThatTellsSomethingElseRestoresNothing(String pattern, String reason)
      throws Exception {
    Path liar = withManifest(manifest -> manifest.replaceFirst(pattern, lie(manifest, pattern)));
    String url = emptyDatabase();
    Path data = folder.resolve("data-of-" + emptyDatabases);
    Settings settings =
        Settings.read(Map.of("LAMPWRIGHT_DATABASE_URL", url, "LAMPWRIGHT_DATA", data.toString()));
    RuntimeException refused =
        assertThrows(
            RuntimeException.class, () -> Backups.run(settings, "restore", liar.toString(), out));
    assertTrue(
        refused instanceof BackupRefused || refused instanceof DatabaseRefused, refused.toString());
    assertEquals(1, refused.toString().lines().count(), refused.toString());
    assertTrue(refused.toString().contains(reason), refused.toString());
    assertFalse(Files.exists(data), "pictures without a database");
    assertTrue(database(url).isEmpty(), "tables without rows");
  }

  private static String lie(String manifest, String pattern) {
    String truth =
        Pattern.compile(pattern).matcher(manifest).results().findFirst().orElseThrow().group();
    return truth.matches(".*\\d") ? truth + "9" : truth.replace("\"kit\"", "\"tik\"");
  }

  private Path withManifest(UnaryOperator<String> change) throws IOException {
    Path copy = folder.resolve("liar.zip");
    Files.deleteIfExists(copy);
    Files.copy(whole, copy);
    try (FileSystem zip = FileSystems.newFileSystem(copy)) {
      Path manifest = zip.getPath("manifest.json");
      Files.writeString(manifest, change.apply(Files.readString(manifest)));
    }
    return copy;
  }

  private String emptyDatabase() throws Exception {
    emptyDatabases++;
    String name = "empty_of_backups_" + emptyDatabases;
    house.database().sqlAsSuperuser("create database " + name);
    return house.database().ownerUrl().replaceFirst("/[^/]+$", "/" + name);
  }
}
