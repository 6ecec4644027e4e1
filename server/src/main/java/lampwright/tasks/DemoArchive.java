package lampwright.tasks;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import lampwright.archive.ArchiveKind;
import lampwright.archive.BagWriter;
import lampwright.archive.LinesFile;
import lampwright.archive.PayloadFile;
import lampwright.archive.PictureFile;
import lampwright.archive.Summary;
import lampwright.archive.Thing;
import lampwright.archive.Version;
import lampwright.document.Form;
import lampwright.document.Json;
import lampwright.document.MergePatch;
import lampwright.document.Reading;
import lampwright.gear.Kit;
import lampwright.gear.stock.GearId;
import lampwright.gear.stock.GearItem;
import lampwright.gear.stock.WholeKit;
import lampwright.gear.stock.WrittenKit;
import lampwright.learning.trail.Trail;
import lampwright.picture.PictureFrame;
import lampwright.picture.PictureReader;
import lampwright.setup.SetupId;

/**
 * The demo's files as one archive, so that they come in as every archive does: checked whole, in
 * one transaction, with their authors and their years.
 */
final class DemoArchive {

  /** When the studio wrote down its first piece of gear; each further thing an hour later. */
  private static final Instant FOUNDED = Instant.parse("2016-03-14T09:00:00Z");

  private static final String FOUNDER = "maren";

  private final DemoFiles files;
  private final UnaryOperator<String> people;
  private final Path folder;
  private final DemoLines lines = new DemoLines();
  private final List<PayloadFile> payload = new ArrayList<>();
  private int hours;

  /**
   * @param people the key in the archive of whom the files call so
   * @param folder where what goes into the archive is put together
   */
  DemoArchive(DemoFiles files, UnaryOperator<String> people, Path folder) {
    this.files = files;
    this.people = people;
    this.folder = folder;
  }

  /** Everything there is. */
  void addAll() throws IOException {
    for (ArchiveKind kind : List.of(ArchiveKind.GEAR, ArchiveKind.LOCATIONS, ArchiveKind.KITS)) {
      for (String name : files.names(kind.word())) {
        addPlain(kind, name, files.document(kind.word(), name));
      }
    }
    for (String name : files.names("setups")) {
      Optional<byte[]> picture = files.picture(name);
      Optional<PictureFile> file = Optional.empty();
      if (picture.isPresent()) {
        file = Optional.of(putPicture(picture.get()));
      }
      new DemoSetup(name, files.document("setups", name), files.document("histories", name), people)
          .addTo(lines, file);
    }
    addTrails(files.names("setups"));
  }

  /** The trails whose setups are all there. */
  private void addTrails(List<String> setups) {
    Set<String> there = setups.stream().map(DemoSetup::id).collect(Collectors.toSet());
    for (String name : files.names(ArchiveKind.TRAILS.word())) {
      Map<?, ?> document = files.document(ArchiveKind.TRAILS.word(), name);
      Trail trail = sound(Trail.FORM, document);
      if (trail.setups().stream().map(SetupId::text).allMatch(there::contains)) {
        addPlain(ArchiveKind.TRAILS, name, document);
      }
    }
  }

  /** A few setups without a history, and kits that are written out. */
  void addFew() {
    Map<GearId, GearItem> stock = new HashMap<>();
    for (String name : files.names("gear")) {
      stock.put(new GearId(name), sound(GearItem.FORM, files.document("gear", name)));
    }
    for (String name : files.few("kits")) {
      WrittenKit written = sound(WrittenKit.FORM, files.document("kits", name));
      addPlain(ArchiveKind.KITS, name, Kit.FORM.write(WholeKit.of(written, stock).kit()));
    }
    Object nowhereKept = Json.parse("{\"occasion\":{\"place\":{\"location\":null}}}");
    for (String name : files.few("setups")) {
      Object document = MergePatch.apply(files.document("setups", name), nowhereKept);
      Map<String, Object> history =
          Map.of("revisions", List.of(Map.of("by", FOUNDER, "at", next(), "state", "proven")));
      new DemoSetup(name, (Map<?, ?>) document, history, people).addTo(lines, Optional.empty());
    }
    addTrails(files.few("setups"));
  }

  private static <T> T sound(Form<T> form, Object json) {
    return switch (form.read(json)) {
      case Reading.Sound<T>(T value) -> value;
      case Reading.Faulty<T> faulty ->
          throw new IllegalStateException("Faulty seed data: " + faulty.problems());
    };
  }

  private String next() {
    return FOUNDED.plus(Duration.ofHours(hours++)).toString();
  }

  private void addPlain(ArchiveKind kind, String name, Object document) {
    String id = DemoSetup.id(name);
    Instant at = Instant.parse(next());
    String author = people.apply(FOUNDER);
    lines.add(
        kind,
        new Thing(
            id,
            1,
            at,
            author,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty()),
        List.of(
            new Version(
                id,
                1,
                at,
                author,
                "",
                false,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                document)));
  }

  private PictureFile putPicture(byte[] bytes) throws IOException {
    PictureFrame frame =
        PictureReader.frame(ByteBuffer.wrap(bytes))
            .orElseThrow(() -> new IllegalStateException("A picture of the demo is none"));
    String sha256 = PictureFile.hash(bytes);
    Path file = folder.resolve(sha256);
    Files.write(file, bytes);
    payload.add(PayloadFile.ofPicture(sha256, bytes.length, () -> Files.newInputStream(file)));
    return new PictureFile(
        sha256, bytes.length, frame.format().mediaType(), frame.width(), frame.height());
  }

  /** Writes the archive; its authors are members here and need no names. */
  void write(OutputStream out, Instant now) throws IOException {
    List<Summary.Count> counts = new ArrayList<>();
    for (ArchiveKind kind : ArchiveKind.values()) {
      counts.add(spool(kind));
    }
    List<Summary.Author> authors =
        lines.authors().stream().map(key -> new Summary.Author(key, key)).toList();
    Summary summary = new Summary(Summary.What.STUDIO, counts, authors, List.of(), List.of());
    payload.add(LinesFile.ofSummary(summary, folder));
    BagWriter.write(out, new BagWriter.About("studio-demo", files.studioName(), now), payload);
  }

  private Summary.Count spool(ArchiveKind kind) {
    try (LinesFile things = LinesFile.ofThings(kind, folder);
        LinesFile versions = LinesFile.ofVersions(kind, folder)) {
      lines.things(kind).forEach(thing -> things.add(kind.things().write(thing)));
      lines.versions(kind).forEach(version -> versions.add(kind.versions().write(version)));
      payload.add(things.finish());
      payload.add(versions.finish());
      return new Summary.Count(kind, things.lines(), versions.lines());
    }
  }

  /** How many setups it holds. */
  int setups() {
    return lines.things(ArchiveKind.SETUPS).size();
  }

  /** How many pictures it holds. */
  int pictures() {
    return lines.things(ArchiveKind.PICTURES).size();
  }

  /** How many takes and notes it holds. */
  int takesAndNotes() {
    return lines.things(ArchiveKind.TAKES).size() + lines.things(ArchiveKind.NOTES).size();
  }
}
