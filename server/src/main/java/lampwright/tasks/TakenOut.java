package lampwright.tasks;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import lampwright.document.Json;

/** What a person takes out, while it is put together: files, and what each of them is. */
final class TakenOut {

  private static final String MANIFEST = "manifest.json";

  /**
   * One file.
   *
   * @param path in what is taken out
   * @param opening opens it
   * @param what a sentence
   * @param items how many there are in it; 1 for what is no list
   */
  private record Part(String path, Opening opening, String what, int items, boolean isPicture) {}

  /** Whoever opens a file, where it lies until then. */
  interface Opening {
    InputStream open() throws IOException;
  }

  private final Path spool;
  private final List<Part> parts = new ArrayList<>();
  private final List<String> missing = new ArrayList<>();

  /**
   * @param spool an empty folder of its own
   */
  TakenOut(Path spool) {
    this.spool = spool;
  }

  /** Whoever hands out the items of a list, one after the other. */
  interface Source {
    void each(Consumer<Object> to);
  }

  /** Puts a list of JSON values in, one a line, so that no list need fit into memory. */
  void list(String path, String what, Source source) {
    Path file = spool.resolve("part" + parts.size());
    int[] items = {0};
    try (BufferedWriter out = Files.newBufferedWriter(file)) {
      out.write('[');
      source.each(item -> write(out, (items[0]++ == 0 ? "\n" : ",\n") + Json.print(item)));
      out.write("\n]\n");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    parts.add(new Part(path, () -> Files.newInputStream(file), what, items[0], false));
  }

  private static void write(BufferedWriter out, String text) {
    try {
      out.write(text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Puts one JSON object in. */
  void object(String path, String what, Map<String, Object> json) {
    Path file = spool.resolve("part" + parts.size());
    try {
      Files.writeString(file, Json.print(json) + "\n");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    parts.add(new Part(path, () -> Files.newInputStream(file), what, 1, false));
  }

  /** Puts the file of a picture in, from where it lies. */
  void picture(String path, Opening where) {
    parts.add(new Part(path, where, "A picture that you added, as it came.", 1, true));
  }

  /** Says that the file of a picture is lost. */
  void missing(String path) {
    missing.add(path);
  }

  /**
   * Writes it all as a ZIP, and leaves the stream open.
   *
   * @param base the name of the folder that it unpacks to
   * @param about what the manifest says beside the files
   * @throws IOException where whoever it is for has gone
   */
  void write(OutputStream out, String base, Instant madeAt, Map<String, Object> about)
      throws IOException {
    ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
    LocalDateTime at = LocalDateTime.ofInstant(madeAt, ZoneOffset.UTC);
    begin(zip, base + "/" + MANIFEST, at);
    zip.write((Json.print(manifest(about)) + "\n").getBytes(StandardCharsets.UTF_8));
    zip.closeEntry();
    for (Part part : parts) {
      // What a camera has packed does not become smaller.
      zip.setLevel(part.isPicture() ? Deflater.NO_COMPRESSION : Deflater.DEFAULT_COMPRESSION);
      begin(zip, base + "/" + part.path(), at);
      try (InputStream in = part.opening().open()) {
        in.transferTo(zip);
      }
      zip.closeEntry();
    }
    zip.finish();
  }

  private static void begin(ZipOutputStream zip, String name, LocalDateTime at) throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setTimeLocal(at);
    zip.putNextEntry(entry);
  }

  private Map<String, Object> manifest(Map<String, Object> about) {
    Map<String, Object> manifest = new LinkedHashMap<>(about);
    manifest.put(
        "files",
        parts.stream()
            .map(part -> Map.of("path", part.path(), "what", part.what(), "items", part.items()))
            .toList());
    manifest.put("lost_files", List.copyOf(missing));
    return manifest;
  }
}
