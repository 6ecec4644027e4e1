package lampwright.archive;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

/**
 * A bag that a stranger sent: its files by their names, each of which may be read once its checksum
 * is known. What the manifests say is held against what is there when it is opened.
 */
final class BagFile implements AutoCloseable {

  private static final int LARGEST_TAG_FILE = 64 << 10;
  private static final int LARGEST_MANIFEST = 16 << 20;
  private static final int LARGEST_SUMMARY = 4 << 20;
  private static final String LINE = "[0-9a-f]{64} [ *][A-Za-z0-9._/-]{1,200}";

  private final ZipFile zip;
  private final Map<String, ZipEntry> files;
  private final Map<String, String> checksums;
  private final String info;

  private BagFile(
      ZipFile zip, Map<String, ZipEntry> files, Map<String, String> checksums, String info) {
    this.zip = zip;
    this.files = files;
    this.checksums = checksums;
    this.info = info;
  }

  /**
   * Opens it.
   *
   * @throws Unsound where it is no bag, or its manifests do not fit what is there
   */
  static BagFile open(Path file, Limits limits) throws IOException, Unsound {
    List<ZipDirectory.Entry> entries = ZipDirectory.read(file, limits);
    BagNames.mustBeBounded(entries, file.toFile().length(), limits);
    Map<String, String> names = BagNames.of(entries);
    ZipFile zip = open(file);
    boolean sound = false;
    try {
      Map<String, ZipEntry> files = new TreeMap<>();
      for (Map.Entry<String, String> name : names.entrySet()) {
        ZipEntry entry = zip.getEntry(name.getValue());
        if (entry == null) {
          throw new Unsound(Fault.ofFile(name.getKey(), "The file cannot be found in the ZIP."));
        }
        files.put(name.getKey(), entry);
      }
      BagFile bag = checked(zip, files);
      sound = true;
      return bag;
    } finally {
      if (!sound) {
        zip.close();
      }
    }
  }

  private static ZipFile open(Path file) throws Unsound {
    try {
      return new ZipFile(file.toFile(), StandardCharsets.UTF_8);
    } catch (IOException | IllegalArgumentException e) {
      throw new Unsound(Fault.ofArchive("The ZIP is broken. Pack it anew."));
    }
  }

  private static BagFile checked(ZipFile zip, Map<String, ZipEntry> files)
      throws IOException, Unsound {
    BagFile bare = new BagFile(zip, files, Map.of(), "");
    for (String needed : List.of(Bag.DECLARATION, Bag.INFO, Bag.MANIFEST, Bag.TAG_MANIFEST)) {
      if (!files.containsKey(needed)) {
        throw new Unsound(Fault.ofFile(needed, "The file is missing, so this is no archive."));
      }
    }
    Map<String, String> tags = bare.manifest(Bag.TAG_MANIFEST);
    Map<String, String> texts = new HashMap<>();
    for (String name : List.of(Bag.DECLARATION, Bag.INFO, Bag.MANIFEST)) {
      byte[] bytes =
          bare.whole(name, name.equals(Bag.MANIFEST) ? LARGEST_MANIFEST : LARGEST_TAG_FILE);
      if (!HexFormat.of().formatHex(Bag.sha256().digest(bytes)).equals(tags.get(name))) {
        throw new Unsound(Fault.ofFile(name, "The file is not what its checksum says."));
      }
      texts.put(name, text(name, bytes));
    }
    if (!Bag.DECLARED.equals(texts.get(Bag.DECLARATION))) {
      throw new Unsound(
          Fault.ofFile(Bag.DECLARATION, "The archive must be a bag of version 1.0 in UTF-8."));
    }
    if (tags.size() != texts.size()) {
      throw new Unsound(Fault.ofFile(Bag.TAG_MANIFEST, "The file names other files than it must."));
    }
    Map<String, String> checksums = bare.manifest(Bag.MANIFEST);
    mustFit(files.keySet(), checksums.keySet());
    return new BagFile(zip, files, checksums, texts.getOrDefault(Bag.INFO, ""));
  }

  private static void mustFit(Set<String> there, Set<String> listed) throws Unsound {
    Faults faults = new Faults();
    for (String name : listed) {
      if (!name.startsWith(Bag.PAYLOAD) || !there.contains(name)) {
        faults.add(Fault.ofFile(name, "The manifest names this file, and it is not there."));
      }
    }
    Set<String> tags = Set.of(Bag.DECLARATION, Bag.INFO, Bag.MANIFEST, Bag.TAG_MANIFEST);
    for (String name : there) {
      if (!listed.contains(name) && !tags.contains(name)) {
        faults.add(Fault.ofFile(name, "The manifest does not name this file."));
      }
    }
    faults.throwAny();
  }

  private Map<String, String> manifest(String name) throws IOException, Unsound {
    Map<String, String> checksums = new LinkedHashMap<>();
    int number = 0;
    for (String line : text(name, whole(name, LARGEST_MANIFEST)).split("\n", -1)) {
      number++;
      String plain = line.endsWith("\r") ? line.substring(0, line.length() - 1) : line;
      if (plain.isEmpty()) {
        continue;
      }
      if (!plain.matches(LINE)) {
        throw new Unsound(
            Fault.ofLine(name, number, "A line must be a SHA-256, two spaces and a file's name."));
      }
      if (checksums.put(plain.substring(66), plain.substring(0, 64)) != null) {
        throw new Unsound(Fault.ofLine(name, number, "The file of this line stands twice."));
      }
    }
    return checksums;
  }

  private static String text(String name, byte[] bytes) throws Unsound {
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      throw new Unsound(Fault.ofFile(name, "The file is not UTF-8."));
    }
  }

  /** A field of what is said about the bag; empty where it is not said. */
  String said(String label) {
    return info.lines()
        .filter(line -> line.startsWith(label + ": "))
        .map(line -> line.substring(label.length() + 2).strip())
        .findFirst()
        .orElse("");
  }

  boolean has(String name) {
    return files.containsKey(name);
  }

  /** Every file of the payload. */
  Set<String> payload() {
    return checksums.keySet();
  }

  long bytes(String name) throws Unsound {
    return entry(name).getSize();
  }

  /** The summary's text, whose checksum has been found right. */
  String summary() throws IOException, Unsound {
    byte[] bytes = whole(Bag.SUMMARY, LARGEST_SUMMARY);
    if (!HexFormat.of().formatHex(Bag.sha256().digest(bytes)).equals(checksums.get(Bag.SUMMARY))) {
      throw new Unsound(Fault.ofFile(Bag.SUMMARY, "The file is not what its checksum says."));
    }
    return text(Bag.SUMMARY, bytes);
  }

  private byte[] whole(String name, int most) throws IOException, Unsound {
    try (InputStream in = bounded(name)) {
      byte[] bytes = in.readNBytes(most + 1);
      if (bytes.length > most) {
        throw new Unsound(Fault.ofFile(name, "The file must have at most " + most + " bytes."));
      }
      return bytes;
    } catch (Bounded.Lied e) {
      throw e.unsound();
    } catch (ZipException | EOFException e) {
      throw broken(name);
    }
  }

  /** What is done with the bytes of a file. */
  interface Use<T> {
    T with(InputStream in) throws IOException, Unsound;
  }

  /**
   * Reads a file of the payload to its end.
   *
   * @throws Unsound where it is broken, has another size than it says, or another checksum; what
   *     was done with it must then be undone
   */
  <T> T read(String name, Use<T> use) throws IOException, Unsound {
    MessageDigest hash = Bag.sha256();
    T result;
    try (InputStream in = new DigestInputStream(bounded(name), hash)) {
      result = use.with(in);
      in.transferTo(OutputStream.nullOutputStream());
    } catch (Bounded.Lied e) {
      throw e.unsound();
    } catch (ZipException | EOFException e) {
      throw broken(name);
    } catch (UncheckedIOException e) {
      if (e.getCause() instanceof Bounded.Lied lied) {
        throw lied.unsound();
      }
      throw e;
    }
    if (!HexFormat.of().formatHex(hash.digest()).equals(checksums.get(name))) {
      throw new Unsound(Fault.ofFile(name, "The file is not what its checksum says."));
    }
    return result;
  }

  private static Unsound broken(String name) {
    return new Unsound(Fault.ofFile(name, "The file is broken. Pack the archive anew."));
  }

  private ZipEntry entry(String name) throws Unsound {
    ZipEntry entry = files.get(name);
    if (entry == null) {
      throw new Unsound(Fault.ofFile(name, "The file is missing."));
    }
    return entry;
  }

  private InputStream bounded(String name) throws IOException, Unsound {
    ZipEntry entry = entry(name);
    InputStream in = zip.getInputStream(entry);
    if (in == null) {
      throw broken(name);
    }
    return new Bounded(in, name, entry.getSize());
  }

  @Override
  public void close() throws IOException {
    zip.close();
  }
}
