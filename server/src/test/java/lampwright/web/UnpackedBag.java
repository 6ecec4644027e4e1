package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gov.loc.repository.bagit.domain.Bag;
import gov.loc.repository.bagit.reader.BagReader;
import gov.loc.repository.bagit.verify.BagVerifier;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import lampwright.document.Json;

/** An archive, unpacked to a folder, so that others can judge it. */
final class UnpackedBag implements AutoCloseable {

  private final Path folder;
  private final Path bag;

  private UnpackedBag(Path folder, Path bag) {
    this.folder = folder;
    this.bag = bag;
  }

  static UnpackedBag of(byte[] zip) throws IOException {
    Path folder = Files.createTempDirectory("lampwright-bag");
    for (Map.Entry<String, byte[]> entry : entries(zip).entrySet()) {
      Path file = folder.resolve(entry.getKey());
      Files.createDirectories(file.getParent());
      Files.write(file, entry.getValue());
    }
    try (Stream<Path> tops = Files.list(folder)) {
      List<Path> only = tops.toList();
      assertEquals(1, only.size(), "a bag unpacks to one folder, RFC 8493 section 4");
      return new UnpackedBag(folder, only.getFirst());
    }
  }

  /** What a ZIP holds, by name, in its order. */
  static Map<String, byte[]> entries(byte[] zip) throws IOException {
    Map<String, byte[]> entries = new LinkedHashMap<>();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        entries.put(entry.getName(), in.readAllBytes());
      }
    }
    return entries;
  }

  /** The checksums of the payload, by path, as the manifest tells them. */
  static Map<String, String> payload(byte[] zip) throws IOException {
    Map<String, String> checksums = new TreeMap<>();
    for (Map.Entry<String, byte[]> entry : entries(zip).entrySet()) {
      if (entry.getKey().endsWith("/manifest-sha256.txt")) {
        new String(entry.getValue(), StandardCharsets.UTF_8)
            .lines()
            .forEach(line -> checksums.put(line.substring(66), line.substring(0, 64)));
      }
    }
    return checksums;
  }

  /** The library of the Library of Congress finds it complete and every checksum right. */
  void mustBeValid() throws Exception {
    Bag read = new BagReader().read(bag);
    try (BagVerifier verifier = new BagVerifier()) {
      verifier.isValid(read, false);
      BagVerifier.quicklyVerify(read);
    }
  }

  /** The system's own sha256sum says so too; its last line otherwise. */
  String sha256sum(String manifest) throws Exception {
    Process process =
        new ProcessBuilder("sha256sum", "--check", "--strict", "--quiet", manifest)
            .directory(bag.toFile())
            .redirectErrorStream(true)
            .start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    return process.waitFor() == 0 ? "" : said;
  }

  /** The lines of one of its files. */
  List<Map<?, ?>> lines(String path) throws IOException {
    List<Map<?, ?>> lines = new ArrayList<>();
    for (String line : Files.readAllLines(bag.resolve(path))) {
      lines.add((Map<?, ?>) Json.parse(line));
    }
    return lines;
  }

  String text(String path) throws IOException {
    return Files.readString(bag.resolve(path));
  }

  Path file(String path) {
    return bag.resolve(path);
  }

  @Override
  public void close() throws IOException {
    try (Stream<Path> tree = Files.walk(folder)) {
      for (Path path : tree.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }
}
