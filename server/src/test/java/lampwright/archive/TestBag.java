package lampwright.archive;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import lampwright.document.Json;
import lampwright.picture.Drawn;
import lampwright.web.Documents;

/** A small archive, sound at first, that tests spoil in one place. */
final class TestBag {

  static final byte[] PICTURE = Drawn.png(Drawn.scene(40, 30));
  static final String HASH = hash(PICTURE);

  private final Map<String, byte[]> payload = new TreeMap<>();
  private final Map<String, String> tags = new LinkedHashMap<>();
  private final Map<String, byte[]> extra = new LinkedHashMap<>();

  private static Map<String, Object> head() {
    return Map.of(
        "kind",
        "head",
        "head",
        Map.of(
            "name",
            "400 W·s battery head",
            "energy_ws",
            400.0,
            "output",
            Map.of("kind", "guide_number", "guide_number_m", 64.0)));
  }

  /** A kit that takes one piece of gear beside its own head. */
  static Map<String, Object> kitWith(String gear) {
    return Documents.with(Documents.kit("Van"), "gear", List.of(Map.of("id", gear)));
  }

  /** A setup of two revisions with a location, a picture, a take and a note. */
  static TestBag sound() {
    TestBag bag = new TestBag();
    Map<String, Object> setup =
        Documents.with(
            Documents.setup("Rope"),
            "occasion",
            Map.of("place", Map.of("name", "the slipway", "location", "loc1")));
    bag.kind("gear", List.of(thing("gear1", 1)), List.of(version("gear1", 1, head())));
    bag.kind("kits", List.of(thing("kit1", 1)), List.of(version("kit1", 1, kitWith("gear1"))));
    bag.kind(
        "locations",
        List.of(thing("loc1", 1)),
        List.of(version("loc1", 1, Documents.location("Slipway"))));
    Map<String, Object> standing = Map.of("state", "draft", "archived", false);
    bag.kind(
        "setups",
        List.of(thing("set1", 2), Documents.with(thing("set2", 1), "parent", origin("set1", 2))),
        List.of(
            Documents.with(version("set1", 1, setup), "standing", standing),
            Documents.with(version("set1", 2, setup), "standing", standing),
            Documents.with(version("set2", 1, setup), "standing", standing)));
    Map<String, Object> file =
        Map.of(
            "sha256",
            HASH,
            "bytes",
            PICTURE.length,
            "media_type",
            "image/png",
            "width",
            40,
            "height",
            30);
    bag.kind(
        "pictures",
        List.of(Documents.with(Documents.with(thing("pic1", 1), "setup", "set1"), "file", file)),
        List.of(version("pic1", 1, Map.of("kind", "final"))));
    bag.kind(
        "takes",
        List.of(Documents.with(Documents.with(thing("tak1", 1), "setup", "set1"), "number", 1)),
        List.of(version("tak1", 1, take("key-of-the-phone"))));
    bag.kind(
        "notes",
        List.of(Documents.with(thing("not1", 1), "setup", "set1")),
        List.of(version("not1", 1, Map.of("text", "Fog."))));
    bag.kind("trails", List.of(thing("tra1", 1)), List.of(version("tra1", 1, trail())));
    bag.payload.put(Bag.PICTURES + HASH, PICTURE);
    return bag.summary("studio");
  }

  static Map<String, Object> trail() {
    return Map.of(
        "name",
        "First steps",
        "stages",
        List.of(
            Map.of(
                "kind",
                "build",
                "id",
                "rope",
                "title",
                "Rope",
                "setup",
                "set1",
                "task",
                "Build it.")));
  }

  static Map<String, Object> take(String key) {
    return Map.of("at", "2025-09-12T19:13:00+01:00", "setup_revision", 2, "client_key", key);
  }

  static Map<String, Object> origin(String id, int revision) {
    // In this order: tests look for it in the text.
    Map<String, Object> origin = new LinkedHashMap<>();
    origin.put("id", id);
    origin.put("revision", revision);
    return origin;
  }

  static Map<String, Object> thing(String id, int revision) {
    Map<String, Object> thing = new LinkedHashMap<>();
    thing.put("id", id);
    thing.put("revision", revision);
    thing.put("created_at", "2030-01-02T08:00:00Z");
    thing.put("created_by", "imke");
    return thing;
  }

  static Map<String, Object> version(String id, int revision, Object document) {
    Map<String, Object> version = new LinkedHashMap<>();
    version.put("id", id);
    version.put("revision", revision);
    version.put("changed_at", "2030-01-02T08:00:00Z");
    version.put("changed_by", "imke");
    version.put("document", document);
    return version;
  }

  private void kind(String word, List<Map<String, Object>> things, List<Map<String, Object>> all) {
    lines(word + ".jsonl", things);
    lines(word + "_revisions.jsonl", all);
  }

  /** Puts other lines into a file of the payload. */
  TestBag lines(String file, List<? extends Object> lines) {
    StringBuilder text = new StringBuilder();
    lines.forEach(line -> text.append(Json.print(line)).append('\n'));
    return file(Bag.PAYLOAD + file, text.toString().getBytes(StandardCharsets.UTF_8));
  }

  TestBag file(String path, byte[] bytes) {
    payload.put(path, bytes);
    return this;
  }

  TestBag text(String path, String text) {
    return file(path, text.getBytes(StandardCharsets.UTF_8));
  }

  TestBag without(String path) {
    payload.remove(path);
    return this;
  }

  /** Says something else in a file beside the payload. */
  TestBag tag(String name, String text) {
    tags.put(name, text);
    return this;
  }

  /** Puts a file into the ZIP that no manifest names; its name as it stands there. */
  TestBag zipped(String name, byte[] bytes) {
    extra.put(name, bytes);
    return this;
  }

  /** Changes the lines of a file by their text. */
  TestBag replaced(String file, String from, String to) {
    String path = Bag.PAYLOAD + file;
    String before =
        new String(Optional.ofNullable(payload.get(path)).orElseThrow(), StandardCharsets.UTF_8);
    String after = before.replace(from, to);
    if (after.equals(before)) {
      throw new IllegalArgumentException("There is no " + from + " in " + before);
    }
    return text(path, after);
  }

  /** Tells anew what is there. */
  TestBag summary(String what) {
    List<Map<String, Object>> counts = new ArrayList<>();
    for (ArchiveKind kind : ArchiveKind.values()) {
      counts.add(
          Map.of(
              "kind",
              kind.word(),
              "things",
              lineCount(kind.thingsFile()),
              "revisions",
              lineCount(kind.versionsFile())));
    }
    Map<String, Object> summary = new LinkedHashMap<>();
    summary.put("format", 1);
    summary.put("what", what);
    summary.put("counts", counts);
    summary.put("authors", List.of(Map.of("key", "imke", "name", "Imke Tal")));
    return text(Bag.SUMMARY, Json.print(summary));
  }

  private long lineCount(String path) {
    byte[] bytes = Optional.ofNullable(payload.get(path)).orElse(new byte[0]);
    return new String(bytes, StandardCharsets.UTF_8).lines().count();
  }

  byte[] zip() {
    return zip(entries());
  }

  /** The same with its files in another order. */
  byte[] shuffled(Random random) {
    List<Map.Entry<String, byte[]>> entries = new ArrayList<>(entries().entrySet());
    Collections.shuffle(entries, random);
    Map<String, byte[]> shuffled = new LinkedHashMap<>();
    entries.forEach(entry -> shuffled.put(entry.getKey(), entry.getValue()));
    return zip(shuffled);
  }

  private Map<String, byte[]> entries() {
    Map<String, String> all = new LinkedHashMap<>();
    all.put(Bag.DECLARATION, Bag.DECLARED);
    all.put(Bag.INFO, "Source-Organization: Quay\n");
    StringBuilder manifest = new StringBuilder();
    payload.forEach((path, bytes) -> manifest.append(line(path, bytes)));
    all.put(Bag.MANIFEST, manifest.toString());
    all.putAll(tags);
    all.values().removeIf(String::isEmpty);
    StringBuilder tagManifest = new StringBuilder();
    for (String name : List.of(Bag.DECLARATION, Bag.INFO, Bag.MANIFEST)) {
      String text = all.getOrDefault(name, "");
      tagManifest.append(line(name, text.getBytes(StandardCharsets.UTF_8)));
    }
    all.putIfAbsent(Bag.TAG_MANIFEST, tagManifest.toString());
    Map<String, byte[]> entries = new LinkedHashMap<>();
    all.forEach((name, text) -> entries.put("b/" + name, text.getBytes(StandardCharsets.UTF_8)));
    payload.forEach((path, bytes) -> entries.put("b/" + path, bytes));
    entries.putAll(extra);
    return entries;
  }

  private static String line(String path, byte[] bytes) {
    return hash(bytes) + "  " + path + "\n";
  }

  static String hash(byte[] bytes) {
    return HexFormat.of().formatHex(Bag.sha256().digest(bytes));
  }

  private static byte[] zip(Map<String, byte[]> entries) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
        zip.putNextEntry(new ZipEntry(entry.getKey()));
        zip.write(entry.getValue());
        zip.closeEntry();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }
}
