package lampwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import lampwright.backup.BackupFile;
import lampwright.backup.BackupRefused;
import lampwright.backup.Manifest;
import lampwright.picture.Drawn;
import lampwright.postgres.DataFolderUnusable;
import lampwright.schema.DatabaseRefused;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** A server is written down while people work in it, and comes back on a machine with nothing. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BackupTest {

  private static final String SETUPS = "/api/studios/demo/setups";
  private static final int NOTES_BEFORE = 10;

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  @TempDir static Path folder;

  private final ByteArrayOutputStream console = new ByteArrayOutputStream();
  private Visitor author;
  private String setup = "";
  private Map<String, String> rows = Map.of();
  private @Nullable RestoredHouse restored;

  @BeforeAll
  void aHouseIsBackedUpAndRestored() throws Exception {
    author = house.withToken("author@demo.example");
    setup = SETUPS + "/" + ((Map<?, ?>) Visitor.items(author.get(SETUPS)).getFirst()).get("id");
    byte[] picture = Drawn.jpeg(Drawn.image(64, 48, (x, y) -> x * y), 0.9);
    assertEquals(
        201,
        author
            .with("Content-Type", "image/jpeg")
            .send("POST", setup + "/pictures?kind=final", BodyPublishers.ofByteArray(picture))
            .statusCode());
    house
        .database()
        .sqlAsSuperuser(
            "insert into lampwright.second_factor (person_id, secret, created_at) select id,"
                + " decode(repeat('11', 20), 'hex'), now() from lampwright.person where email ="
                + " 'crew@demo.example'");
    Map<String, String> before;
    // The server works a little by itself, such as on signatures; wait until it has ended.
    do {
      before = WholeTables.rows(house.database()::sqlAsSuperuser);
      Files.deleteIfExists(quiet());
      backup(quiet());
      rows = WholeTables.rows(house.database()::sqlAsSuperuser);
    } while (!rows.equals(before));
    restored = RestoredHouse.of(quiet());
  }

  @AfterAll
  void close() throws IOException {
    if (restored != null) {
      restored.close();
    }
  }

  private RestoredHouse there() {
    return Objects.requireNonNull(restored);
  }

  private static Path quiet() {
    return folder.resolve("quiet.zip");
  }

  private Settings settings(String databaseUrl, Path data) {
    return Settings.read(
        Map.of("LAMPWRIGHT_DATABASE_URL", databaseUrl, "LAMPWRIGHT_DATA", data.toString()));
  }

  private boolean run(Settings settings, String command, Path file) {
    return Backups.run(
        settings, command, file.toString(), new PrintStream(console, true, StandardCharsets.UTF_8));
  }

  private void backup(Path to) {
    assertTrue(
        run(settings(house.database().ownerUrl(), house.data()), "backup", to), console::toString);
  }

  /** Every row of a table in a backup, some columns of it. */
  private static List<String> written(Path backup, String table, String column) throws IOException {
    try (BackupFile file = BackupFile.open(backup);
        ZipFile zip = new ZipFile(backup.toFile());
        InputStream in = zip.getInputStream(zip.getEntry("rows/" + table + ".copy"))) {
      Manifest.Rows wanted =
          file.manifest().tables().stream()
              .filter(rows -> rows.table().name().equals(table))
              .findFirst()
              .orElseThrow();
      int at = wanted.table().columns().indexOf(column);
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .map(line -> line.split("\t", -1)[at])
          .toList();
    }
  }

  private static List<String> names(Path backup) throws IOException {
    try (ZipFile zip = new ZipFile(backup.toFile())) {
      return zip.stream().map(ZipEntry::getName).toList();
    }
  }

  @Test
  void whoRestoresIsAskedForTheKeyThatNoBackupHolds() throws Exception {
    assertTrue(there().said().contains("Put the old server's at "), there().said());
    assertEquals(List.of(), names(quiet()).stream().filter(n -> n.contains(".key")).toList());
  }

  @Test
  void everyRowOfEveryTableComesBackInAllItsColumns() throws Exception {
    assertEquals(rows, there().rows());
    assertTrue(rows.size() > 35, rows.toString());
    assertTrue(there().said().contains("Restored as of "), there().said());
  }

  @Test
  void theKeysTriggersAndPoliciesHoldAsBefore() throws Exception {
    assertEquals(WholeTables.guards(house.database()::sqlAsSuperuser), there().guards());
  }

  @Test
  void everyPictureComesBackInAllItsSizes() throws Exception {
    Map<String, String> pictures = WholeTables.pictures(house.data().resolve("pictures"));
    assertTrue(pictures.size() >= 4, pictures.toString());
    assertEquals(pictures, WholeTables.pictures(there().settings().data().resolve("pictures")));
  }

  /** Or else an index, or a folder of pictures, of the one would be taken for the other's. */
  @Test
  void theRestoredDatabaseIsAnotherThanTheOneThatWasBackedUp() throws Exception {
    String identity = "select identity from lampwright.catalogue";
    assertNotEquals(house.database().sqlAsSuperuser(identity), there().sql(identity));
  }

  @Test
  void theIndexOfWhatWasRestoredEqualsItsDatabase() {
    assertTrue(there().indexEqualsDatabase(), there().said());
  }

  @Test
  void somebodySignsInFindsASetupAndGoesOnWriting() {
    Visitor stranger = there().visitor();
    HttpResponse<String> session =
        stranger.post(
            "/api/session",
            "{\"email\":\"author@demo.example\",\"password\":\"" + TestHouse.PASSWORD + "\"}");
    assertEquals(201, session.statusCode(), session.body());
    Visitor again = stranger.with("Authorization", author.header("Authorization"));
    String search = SETUPS + "?q=window&limit=5";
    assertFalse(Visitor.items(author.get(search)).isEmpty());
    assertEquals(ids(author.get(search)), ids(again.get(search)));
    assertEquals(201, again.post(setup + "/notes", "{\"text\":\"After it all.\"}").statusCode());
    assertEquals(
        author.bytes(firstPicture(author)).body().length,
        again.bytes(firstPicture(again)).body().length);
  }

  private String firstPicture(Visitor visitor) {
    String pictures = setup + "/pictures";
    Map<?, ?> first = (Map<?, ?>) Visitor.items(visitor.get(pictures)).getFirst();
    return pictures + "/" + first.get("id") + "/original";
  }

  private static List<Object> ids(HttpResponse<String> found) {
    List<Object> ids = new ArrayList<>();
    Visitor.items(found).forEach(item -> ids.add(((Map<?, ?>) item).get("id")));
    return ids;
  }

  @Test
  void whatWasAcknowledgedBeforeIsInABackupThatIsMadeWhilePeopleWrite() throws Exception {
    List<String> acknowledged = Collections.synchronizedList(new ArrayList<>());
    AtomicBoolean goOn = new AtomicBoolean(true);
    CompletableFuture<Void> writer =
        CompletableFuture.runAsync(
            () -> {
              while (goOn.get()) {
                String text = "{\"text\":\"Written meanwhile.\"}";
                HttpResponse<String> made = author.post(setup + "/notes", text);
                assertEquals(201, made.statusCode(), made.body());
                String place = made.headers().firstValue("Location").orElseThrow();
                acknowledged.add(place.substring(place.lastIndexOf('/') + 1));
              }
            });
    while (acknowledged.size() < NOTES_BEFORE && !writer.isDone()) {
      Thread.onSpinWait();
    }
    List<String> before = List.copyOf(acknowledged);
    Path backup = folder.resolve("busy.zip");
    backup(backup);
    goOn.set(false);
    writer.join();
    assertTrue(acknowledged.size() > before.size());
    List<String> notes = written(backup, "note", "id");
    assertTrue(notes.containsAll(before), () -> before + " in " + notes);
    // A note, its revision and the line of who wrote it are one transaction.
    assertEquals(new TreeSet<>(notes), new TreeSet<>(written(backup, "note_revision", "note_id")));
    assertTrue(written(backup, "audit_entry", "subject_id").containsAll(notes));
  }

  @Test
  void aBackupIsMadeBesideTheServersOwnPostgresqlToo() throws Exception {
    Path into = Files.createDirectory(folder.resolve("own"));
    assertTrue(run(there().settings(), "backup", into), console::toString);
    try (Stream<Path> files = Files.list(into)) {
      List<Path> only = files.toList();
      assertEquals(1, only.size(), only.toString());
      assertTrue(run(there().settings(), "check-backup", only.getFirst()), console::toString);
      assertEquals(
          "rw-------",
          PosixFilePermissions.toString(Files.getPosixFilePermissions(only.getFirst())));
    }
    assertThrows(DataFolderUnusable.class, () -> run(there().settings(), "restore", quiet()));
  }

  @Test
  void nothingIsRestoredOverWhatIsThere() throws Exception {
    Path data = folder.resolve("never-made");
    DatabaseRefused refused =
        assertThrows(
            DatabaseRefused.class,
            () -> run(settings(house.database().ownerUrl(), data), "restore", quiet()));
    assertTrue(refused.toString().contains("is not empty"), refused.toString());
    assertFalse(Files.exists(data));
    List<String> guards = WholeTables.guards(house.database()::sqlAsSuperuser);
    assertTrue(guards.contains("setup truetrue"), guards.toString());
  }

  @Test
  void noBackupTakesTheNameOfAFileThatIsThere() {
    Settings here = settings(house.database().ownerUrl(), house.data());
    BackupRefused refused = assertThrows(BackupRefused.class, () -> run(here, "backup", quiet()));
    assertTrue(refused.toString().contains("already"), refused.toString());
  }

  @Test
  void theServersOwnRoleCannotMakeOne() {
    String url =
        "postgresql://%s:%s@%s"
            .formatted(
                house.database().where().user(),
                house.database().where().password(),
                house.database().where().jdbcUrl().replaceFirst("jdbc:postgresql://", ""));
    Path target = folder.resolve("stolen.zip");
    assertThrows(DatabaseRefused.class, () -> run(settings(url, house.data()), "backup", target));
    assertFalse(Files.exists(target));
  }

  @Test
  void aDataFolderWithoutADatabaseIsNotMadeToHaveOne() {
    Path data = folder.resolve("nothing-there");
    Settings nothing = Settings.read(Map.of("LAMPWRIGHT_DATA", data.toString()));
    assertThrows(BackupRefused.class, () -> run(nothing, "backup", folder.resolve("nothing.zip")));
    assertFalse(Files.exists(data));
  }
}
