package lampwright.archive;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Writes a bag as a ZIP, in one folder as RFC 8493 section 4 has it, so that whoever unpacks it can
 * check it with {@code sha256sum -c}.
 */
public final class BagWriter {

  private final String base;
  private final LocalDateTime at;
  private final ZipOutputStream zip;

  private BagWriter(String base, LocalDateTime at, ZipOutputStream zip) {
    this.base = base;
    this.at = at;
    this.zip = zip;
  }

  /**
   * What is said about a bag beside its payload.
   *
   * @param base the name of the folder that it unpacks to
   * @param studio the name of the studio that it comes from
   */
  public record About(String base, String studio, Instant madeAt) {}

  /**
   * Writes it all, and leaves the stream open.
   *
   * @throws IOException where the stream does not take it, or a file cannot be read
   */
  public static void write(OutputStream out, About about, List<PayloadFile> payload)
      throws IOException {
    ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
    LocalDateTime at = LocalDateTime.ofInstant(about.madeAt(), ZoneOffset.UTC);
    new BagWriter(about.base(), at, zip).write(about, payload);
    zip.finish();
  }

  private void write(About about, List<PayloadFile> payload) throws IOException {
    List<PayloadFile> sorted = new ArrayList<>(payload);
    sorted.sort(Comparator.comparing(PayloadFile::path));
    StringBuilder manifest = new StringBuilder();
    for (PayloadFile file : sorted) {
      manifest.append(file.sha256()).append("  ").append(file.path()).append('\n');
    }
    Map<String, String> tags = new LinkedHashMap<>();
    tags.put(Bag.DECLARATION, Bag.DECLARED);
    tags.put(Bag.INFO, info(about, payload));
    tags.put(Bag.MANIFEST, manifest.toString());
    StringBuilder tagManifest = new StringBuilder();
    for (Map.Entry<String, String> tag : tags.entrySet()) {
      byte[] text = tag.getValue().getBytes(StandardCharsets.UTF_8);
      put(tag.getKey(), text);
      String hash = HexFormat.of().formatHex(Bag.sha256().digest(text));
      tagManifest.append(hash).append("  ").append(tag.getKey()).append('\n');
    }
    put(Bag.TAG_MANIFEST, tagManifest.toString().getBytes(StandardCharsets.UTF_8));
    for (PayloadFile file : sorted) {
      // What a camera has packed does not become smaller.
      zip.setLevel(file.isPicture() ? Deflater.NO_COMPRESSION : Deflater.DEFAULT_COMPRESSION);
      begin(file.path());
      try (InputStream in = file.opening().open()) {
        in.transferTo(zip);
      }
      zip.closeEntry();
    }
  }

  private void put(String name, byte[] text) throws IOException {
    begin(name);
    zip.write(text);
    zip.closeEntry();
  }

  private void begin(String name) throws IOException {
    ZipEntry entry = new ZipEntry(base + "/" + name);
    entry.setTimeLocal(at);
    zip.putNextEntry(entry);
  }

  /** RFC 8493 section 2.2.2; the octets and the count of files let a reader see what is missing. */
  private static String info(About about, List<PayloadFile> payload) {
    long octets = payload.stream().mapToLong(PayloadFile::bytes).sum();
    return """
    Source-Organization: %s
    Bagging-Date: %s
    Payload-Oxum: %s.%s
    Bag-Software-Agent: Lampwright
    Lampwright-Made-At: %s
    """
        .formatted(
            about.studio().replaceAll("\\p{Cntrl}", " ").strip(),
            LocalDate.ofInstant(about.madeAt(), ZoneOffset.UTC),
            Long.toString(octets),
            Integer.toString(payload.size()),
            about.madeAt());
  }
}
