package lampwright.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import lampwright.picture.PictureReader;
import lampwright.picture.Unusable;
import lampwright.web.Documents;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.FieldSource;

/** Archives that strangers may send: sound ones come in, all others are told what is wrong. */
class ArchiveReaderTest {

  @TempDir Path folder = Path.of("");

  private final ArchiveReader.Pictures pictures =
      new ArchiveReader.Pictures() {
        @Override
        public Optional<String> fault(Path file, PictureFile said) {
          try {
            return PictureReader.read(ByteBuffer.wrap(Files.readAllBytes(file)))
                    instanceof Unusable unusable
                ? Optional.of(unusable.sentence())
                : Optional.empty();
          } catch (IOException e) {
            throw new UncheckedIOException(e);
          }
        }

        @Override
        public Path folder() {
          return folder.resolve("scratch");
        }
      };

  private Archive read(byte[] zip) throws Unsound, IOException {
    return read(zip, Limits.USUAL);
  }

  private Archive read(byte[] zip, Limits limits) throws Unsound, IOException {
    Files.createDirectories(pictures.folder());
    Path file = folder.resolve("archive.zip");
    Files.write(file, zip);
    return ArchiveReader.read(file, limits, pictures, (done, total) -> {});
  }

  private List<Fault> faults(byte[] zip) throws IOException {
    Unsound unsound = assertThrows(Unsound.class, () -> read(zip));
    try (Stream<Path> left = Files.list(pictures.folder())) {
      assertEquals(List.of(), left.toList());
    }
    return unsound.faults();
  }

  private void mustTell(byte[] zip, String file, String words) throws IOException {
    List<Fault> faults = faults(zip);
    assertTrue(
        faults.stream()
            .anyMatch(fault -> fault.file().equals(file) && fault.message().contains(words)),
        faults.toString());
  }

  @Test
  void aSoundArchiveIsReadWithWhatEachThingIsCalled() throws Exception {
    try (Archive archive = read(TestBag.sound().zip())) {
      assertEquals("Quay", archive.studioName());
      assertEquals(Map.of("set1", "Rope", "set2", "Rope"), archive.of(ArchiveKind.SETUPS).titles());
      assertEquals(Map.of("tak1", "Take 1"), archive.of(ArchiveKind.TAKES).titles());
      List<Integer> revisions = new ArrayList<>();
      archive.eachVersion(ArchiveKind.SETUPS, (version, _) -> revisions.add(version.revision()));
      assertEquals(List.of(1, 2, 1), revisions);
      byte[] picture = archive.picture(TestBag.HASH, in -> in.readAllBytes());
      assertTrue(Arrays.equals(TestBag.PICTURE, picture));
    }
  }

  @Test
  void theOrderOfTheFilesInTheZipDoesNotMatter() throws Exception {
    try (Archive archive = read(TestBag.sound().shuffled(new Random(7)))) {
      assertEquals(1, archive.of(ArchiveKind.NOTES).things().size());
    }
  }

  private static Arguments spoilt(
      String how, String file, String words, UnaryOperator<TestBag> by) {
    return Arguments.of(how, file, words, by);
  }

  static final List<Arguments> SPOILT =
      List.of(
          spoilt(
              "no manifest",
              "manifest-sha256.txt",
              "is missing",
              bag -> bag.tag("manifest-sha256.txt", "")),
          spoilt(
              "a manifest that is none",
              "manifest-sha256.txt",
              "two spaces",
              bag -> bag.tag("manifest-sha256.txt", "nonsense\n")),
          spoilt(
              "another version",
              "bagit.txt",
              "version 1.0",
              bag -> bag.tag("bagit.txt", "BagIt-Version: 9.0\n")),
          spoilt(
              "a wrong checksum of a tag file",
              "bagit.txt",
              "checksum",
              bag ->
                  bag.tag(
                      "tagmanifest-sha256.txt",
                      "0".repeat(64) + "  bagit.txt\n" + "0".repeat(64) + "  bag-info.txt\n")),
          spoilt(
              "a file that is not there",
              "data/none",
              "not there",
              bag -> bag.tag("manifest-sha256.txt", "0".repeat(64) + "  data/none\n")),
          spoilt(
              "a file that the manifest does not name",
              "data/other",
              "does not name",
              bag -> bag.zipped("b/data/other", new byte[3])),
          spoilt(
              "a file that nothing needs",
              "data/other",
              "Nothing in the archive needs",
              bag -> bag.file("data/other", new byte[3])),
          spoilt(
              "a name that leads out",
              "b/../../etc/passwd",
              "plain name",
              bag -> bag.zipped("b/../../etc/passwd", new byte[3])),
          spoilt(
              "an absolute name",
              "/etc/passwd",
              "plain name",
              bag -> bag.zipped("/etc/passwd", new byte[3])),
          spoilt(
              "a name of another system",
              "b?..?x",
              "plain name",
              bag -> bag.zipped("b\\..\\x", new byte[3])),
          spoilt(
              "a name in another case",
              "b/DATA/notes.jsonl",
              "twice",
              bag -> bag.zipped("b/DATA/notes.jsonl", new byte[3])),
          spoilt("two folders", "c/x", "one folder", bag -> bag.zipped("c/x", new byte[3])),
          spoilt(
              "no summary",
              "data/archive.json",
              "missing",
              bag -> bag.without("data/archive.json")),
          spoilt(
              "a later format",
              "data/archive.json",
              "Format",
              bag -> bag.replaced("archive.json", "\"format\":1", "\"format\":2")),
          spoilt(
              "no file of a kind",
              "data/notes.jsonl",
              "missing",
              bag -> bag.without("data/notes.jsonl")),
          spoilt(
              "a line that is no JSON",
              "data/notes.jsonl",
              "not JSON",
              bag -> bag.text("data/notes.jsonl", "{\n")),
          spoilt(
              "a line that is no thing",
              "data/notes.jsonl",
              "Revision is missing",
              bag -> bag.text("data/notes.jsonl", "{\"id\":\"not1\"}\n")),
          spoilt(
              "half a character",
              "data/notes_revisions.jsonl",
              "half of a character",
              bag -> bag.replaced("notes_revisions.jsonl", "Fog.", "\\ud800")),
          spoilt(
              "a text with U+0000",
              "data/notes_revisions.jsonl",
              "U+0000",
              bag -> bag.replaced("notes_revisions.jsonl", "Fog.", "\\u0000")),
          spoilt(
              "a document that is none",
              "data/setups_revisions.jsonl",
              "Title",
              bag -> bag.replaced("setups_revisions.jsonl", "\"Rope\"", "7")),
          spoilt(
              "a hole in the revisions",
              "data/setups_revisions.jsonl",
              "must follow",
              bag -> bag.replaced("setups_revisions.jsonl", "\"revision\":2", "\"revision\":3")),
          spoilt(
              "a revision too few",
              "data/setups_revisions.jsonl",
              "there must be 3",
              bag ->
                  bag.replaced(
                      "setups.jsonl", "\"set1\",\"revision\":2", "\"set1\",\"revision\":3")),
          spoilt(
              "things out of order",
              "data/setups.jsonl",
              "by id",
              bag -> bag.replaced("setups.jsonl", "\"id\":\"set2\"", "\"id\":\"aaa2\"")),
          spoilt(
              "a revision of nothing",
              "data/notes_revisions.jsonl",
              "not in the archive",
              bag -> bag.replaced("notes_revisions.jsonl", "not1", "not2")),
          spoilt(
              "a note on no setup",
              "data/notes.jsonl",
              "not in the archive",
              bag -> bag.replaced("notes.jsonl", "set1", "set9")),
          spoilt(
              "a kit of gear that is not there",
              "data/kits_revisions.jsonl",
              "gear is not in the archive",
              bag -> bag.replaced("kits_revisions.jsonl", "gear1", "gear9")),
          spoilt(
              "a kit that is no whole one with its gear",
              "data/kits_revisions.jsonl",
              "200 W·s battery head",
              bag -> bag.replaced("gear_revisions.jsonl", "400 W·s", "200 W·s")),
          spoilt(
              "a setup at no location",
              "data/setups_revisions.jsonl",
              "location is not in the archive",
              bag -> bag.replaced("setups_revisions.jsonl", "loc1", "loc9")),
          spoilt(
              "a parent that is not there",
              "data/setups.jsonl",
              "not in the archive",
              bag ->
                  bag.replaced(
                      "setups.jsonl",
                      "\"id\":\"set1\",\"revision\":2}",
                      "\"id\":\"set8\",\"revision\":2}")),
          spoilt(
              "a setup made from itself",
              "data/setups.jsonl",
              "made from itself",
              bag ->
                  bag.lines(
                      "setups.jsonl",
                      List.of(
                          Documents.with(
                              TestBag.thing("set1", 2), "parent", TestBag.origin("set2", 1)),
                          Documents.with(
                              TestBag.thing("set2", 1), "parent", TestBag.origin("set1", 2))))),
          spoilt(
              "an author who is not told",
              "data/notes_revisions.jsonl",
              "author",
              bag -> bag.replaced("notes_revisions.jsonl", "imke", "oren")),
          spoilt(
              "a take of no revision",
              "data/takes_revisions.jsonl",
              "no such revision",
              bag ->
                  bag.replaced(
                      "takes_revisions.jsonl", "\"setup_revision\":2", "\"setup_revision\":9")),
          spoilt(
              "two takes with one number",
              "data/takes_revisions.jsonl",
              "has its number",
              bag ->
                  bag.lines(
                          "takes.jsonl",
                          List.of(
                              Documents.with(
                                  Documents.with(TestBag.thing("tak1", 1), "setup", "set1"),
                                  "number",
                                  1),
                              Documents.with(
                                  Documents.with(TestBag.thing("tak2", 1), "setup", "set1"),
                                  "number",
                                  1)))
                      .lines(
                          "takes_revisions.jsonl",
                          List.of(
                              TestBag.version("tak1", 1, TestBag.take("key-one-1")),
                              TestBag.version("tak2", 1, TestBag.take("key-two-2"))))
                      .summary("studio")),
          spoilt(
              "a picture without its file",
              "data/pictures/" + TestBag.HASH,
              "not there",
              bag -> bag.without("data/pictures/" + TestBag.HASH)),
          spoilt(
              "a picture of another hash",
              "data/pictures/" + TestBag.HASH,
              "its own SHA-256",
              bag -> bag.file("data/pictures/" + TestBag.HASH, new byte[TestBag.PICTURE.length])),
          spoilt(
              "a picture that is none",
              "data/pictures/" + TestBag.hash(new byte[40]),
              "JPEG, PNG, WebP or TIFF",
              bag ->
                  bag.without("data/pictures/" + TestBag.HASH)
                      .replaced("pictures.jsonl", TestBag.HASH, TestBag.hash(new byte[40]))
                      .replaced(
                          "pictures.jsonl", "\"bytes\":" + TestBag.PICTURE.length, "\"bytes\":40")
                      .file("data/pictures/" + TestBag.hash(new byte[40]), new byte[40])),
          spoilt(
              "another count",
              "data/archive.json",
              "another number",
              bag -> bag.replaced("archive.json", "\"things\":2", "\"things\":3")),
          spoilt(
              "a studio that says it is a setup",
              "data/archive.json",
              "one setup",
              bag -> bag.summary("setup")));

  @ParameterizedTest(name = "{0}")
  @FieldSource("SPOILT")
  void whatIsWrongIsToldWithItsFile(
      String how, String file, String words, UnaryOperator<TestBag> by) throws IOException {
    mustTell(by.apply(TestBag.sound()).zip(), file, words);
  }

  @Test
  void aFaultInADocumentIsToldWithItsLineAndPlace() throws IOException {
    byte[] zip =
        TestBag.sound()
            .replaced("notes_revisions.jsonl", "\"text\":\"Fog.\"", "\"text\":\"Fog.\",\"mood\":1")
            .zip();
    Fault fault = faults(zip).getFirst();
    assertEquals("data/notes_revisions.jsonl", fault.file());
    assertEquals(1, fault.line());
    assertEquals("/document/mood", fault.pointer());
  }

  /** The first place of the directory's entry of a name. */
  private static int header(byte[] zip, String name) {
    byte[] wanted = name.getBytes(StandardCharsets.UTF_8);
    for (int at = zip.length - 22; at >= 0; at--) {
      if (ByteBuffer.wrap(zip).order(ByteOrder.LITTLE_ENDIAN).getInt(at) == 0x02014b50
          && Arrays.equals(zip, at + 46, at + 46 + wanted.length, wanted, 0, wanted.length)) {
        return at;
      }
    }
    throw new IllegalArgumentException(name);
  }

  private static ByteBuffer little(byte[] zip) {
    return ByteBuffer.wrap(zip).order(ByteOrder.LITTLE_ENDIAN);
  }

  @Test
  void aLinkIsNotFollowed() throws IOException {
    byte[] zip = TestBag.sound().zip();
    int at = header(zip, "b/data/notes.jsonl");
    little(zip).putShort(at + 4, (short) (3 << 8 | 20)).putInt(at + 38, 0xa1ff << 16);
    mustTell(zip, "b/data/notes.jsonl", "link");
  }

  @Test
  void anEntryThatLiesAboutItsSizeIsCaughtWhileItIsRead() throws IOException {
    byte[] zip = TestBag.sound().zip();
    int at = header(zip, "b/data/setups_revisions.jsonl");
    little(zip).putInt(at + 24, 100);
    mustTell(zip, "data/setups_revisions.jsonl", "another size");
    byte[] more = TestBag.sound().zip();
    little(more).putInt(at + 24, 1_000_000);
    mustTell(more, "data/setups_revisions.jsonl", "another size");
  }

  @Test
  void twoNamesForTheSameBytesAreRefused() throws IOException {
    byte[] zip = TestBag.sound().zip();
    int one = header(zip, "b/data/notes.jsonl");
    int other = header(zip, "b/data/takes.jsonl");
    little(zip).putInt(other + 42, little(zip).getInt(one + 42));
    assertTrue(faults(zip).getFirst().message().contains("lie apart"));
  }

  @Test
  void aSmallFileThatUnpacksToAHugeOneIsRefusedUnread() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      zip.putNextEntry(new ZipEntry("b/data/notes.jsonl"));
      byte[] zeros = new byte[1 << 20];
      for (int i = 0; i < 400; i++) {
        zip.write(zeros);
      }
    }
    assertTrue(out.size() < 1 << 20, "it is small");
    mustTell(out.toByteArray(), "", "must unpack to at most");
  }

  @Test
  void veryManyEntriesAreRefusedByTheDirectoryAlone() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      for (int i = 0; i <= Limits.USUAL.entries(); i++) {
        zip.putNextEntry(new ZipEntry("b/" + i));
      }
    }
    mustTell(out.toByteArray(), "", "at most 100000 files");
  }

  @Test
  void aLongLineAndManyLinesAreRefused() throws IOException {
    byte[] zip = TestBag.sound().zip();
    Limits narrow = new Limits(1 << 20, 100, 1 << 20, 200, 100);
    assertTrue(
        assertThrows(Unsound.class, () -> read(zip, narrow))
            .faults()
            .getFirst()
            .message()
            .contains("at most 200 bytes"));
    Limits few = new Limits(1 << 20, 100, 1 << 20, 1 << 20, 3);
    assertTrue(
        assertThrows(Unsound.class, () -> read(zip, few))
            .faults()
            .getFirst()
            .message()
            .contains("at most 3 lines"));
  }

  @Test
  void noZipAndHalfAZipAreRefused() throws IOException {
    byte[] zip = TestBag.sound().zip();
    mustTell(new byte[0], "", "no ZIP");
    mustTell("PK, as people say".getBytes(StandardCharsets.UTF_8), "", "no ZIP");
    mustTell(Arrays.copyOf(zip, zip.length / 2), "", "no ZIP");
    mustTell(Arrays.copyOf(zip, zip.length - 1), "", "no ZIP");
  }

  @Test
  void whateverIsDoneToAnArchiveOnlyFaultsComeOut() throws IOException {
    long seed = 20_261_127;
    Random random = new Random(seed);
    byte[] sound = TestBag.sound().zip();
    int refused = 0;
    for (int round = 0; round < 600; round++) {
      byte[] spoilt = random.nextInt(4) == 0 ? TestBag.sound().shuffled(random) : sound.clone();
      int flips = random.nextInt(4);
      for (int flip = 0; flip <= flips; flip++) {
        // Half of them where the directory lies, which is read first.
        int from = random.nextBoolean() ? 0 : spoilt.length * 3 / 4;
        int at = from + random.nextInt(spoilt.length - from);
        spoilt[at] = (byte) (spoilt[at] ^ (1 << random.nextInt(8)));
      }
      if (random.nextInt(5) == 0) {
        spoilt = Arrays.copyOf(spoilt, random.nextInt(spoilt.length));
      }
      try {
        read(spoilt).close();
      } catch (Unsound unsound) {
        refused++;
        assertTrue(!unsound.faults().isEmpty());
      } catch (RuntimeException e) {
        throw new AssertionError("Seed " + seed + ", round " + round, e);
      }
    }
    assertTrue(refused > 400, "so many were refused: " + refused);
    try (Stream<Path> left = Files.list(pictures.folder())) {
      assertEquals(List.of(), left.toList());
    }
  }
}
