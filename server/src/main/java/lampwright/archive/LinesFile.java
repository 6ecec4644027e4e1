package lampwright.archive;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.util.HexFormat;
import lampwright.document.Json;

/** A file of the payload while it is written: one JSON value a line. */
public final class LinesFile implements AutoCloseable {

  private final String path;
  private final Path file;
  private final MessageDigest hash = Bag.sha256();
  private final OutputStream out;
  private int lines;
  private long bytes;

  private LinesFile(String path, Path file, OutputStream out) {
    this.path = path;
    this.file = file;
    this.out = new DigestOutputStream(new BufferedOutputStream(out), hash);
  }

  /** Begins the file of a kind's things. */
  public static LinesFile ofThings(ArchiveKind kind, Path folder) {
    return open(kind.thingsFile(), folder);
  }

  /** Begins the file of a kind's revisions. */
  public static LinesFile ofVersions(ArchiveKind kind, Path folder) {
    return open(kind.versionsFile(), folder);
  }

  /** Writes the file that says what the archive is. */
  public static PayloadFile ofSummary(Summary summary, Path folder) {
    try (LinesFile file = open(Bag.SUMMARY, folder)) {
      file.add(Summary.FORM.write(summary));
      return file.finish();
    }
  }

  private static LinesFile open(String path, Path folder) {
    Path file = folder.resolve(path.substring(Bag.PAYLOAD.length()));
    try {
      return new LinesFile(path, file, Files.newOutputStream(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Adds a line. */
  public void add(Object json) {
    byte[] line = (Json.print(json) + "\n").getBytes(StandardCharsets.UTF_8);
    try {
      out.write(line);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    lines++;
    bytes += line.length;
  }

  public int lines() {
    return lines;
  }

  /** What has been written, complete. */
  public PayloadFile finish() {
    close();
    return new PayloadFile(
        path, HexFormat.of().formatHex(hash.digest()), bytes, () -> Files.newInputStream(file));
  }

  @Override
  public void close() {
    try {
      out.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
