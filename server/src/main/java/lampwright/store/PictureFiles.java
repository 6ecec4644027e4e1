package lampwright.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The bytes of one database's pictures: {@code ab/cd/<SHA-256>.<name>} in one folder, the same
 * bytes once. A file is written beside, brought to the disk and moved into its place whole; so what
 * has a name here is complete, whatever crashed.
 */
public final class PictureFiles implements AutoCloseable {

  /** The name of the file as it came; its smaller versions have names of their own. */
  public static final String ORIGINAL = "original";

  private static final String ARRIVING = "arriving";
  private static final int PIECE = 64 * 1024;

  private final Path folder;
  private final ArrivingFolder arriving;

  private PictureFiles(Path folder, ArrivingFolder arriving) {
    this.folder = folder;
    this.arriving = arriving;
  }

  /**
   * Opens a folder, which it makes, and forgets what was arriving at servers that have ended.
   * Several servers may have one folder open.
   */
  public static PictureFiles open(Path folder) {
    try {
      return new PictureFiles(folder, ArrivingFolder.open(folder.resolve(ARRIVING)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Forgets what is arriving. */
  @Override
  public void close() {
    arriving.close();
  }

  /** What came in, until it is kept or closed. */
  public record Arrival(Path file, String sha256, long bytes) implements AutoCloseable {

    @Override
    public void close() {
      try {
        Files.deleteIfExists(file);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  /**
   * Takes bytes in, piece by piece.
   *
   * @return empty where they are more than the most
   * @throws IOException where they end before their time; what has come is forgotten
   */
  public Optional<Arrival> receive(InputStream in, long mostBytes) throws IOException {
    Path file = arriving.newFile();
    boolean kept = false;
    try (FileChannel out = FileChannel.open(file, StandardOpenOption.WRITE)) {
      MessageDigest hash = sha256();
      byte[] piece = new byte[PIECE];
      long bytes = 0;
      for (int read = in.read(piece); read >= 0; read = in.read(piece)) {
        bytes += read;
        if (bytes > mostBytes) {
          return Optional.empty();
        }
        hash.update(piece, 0, read);
        write(out, ByteBuffer.wrap(piece, 0, read));
      }
      out.force(true);
      kept = true;
      return Optional.of(new Arrival(file, HexFormat.of().formatHex(hash.digest()), bytes));
    } finally {
      if (!kept) {
        Files.deleteIfExists(file);
      }
    }
  }

  /** Keeps what came in under its hash; where the same bytes are there already, those stay. */
  public void put(Arrival arrival) {
    put(arrival, arrival.sha256(), ORIGINAL);
  }

  /** Keeps what came in as a version of what lies under a hash. */
  public void put(Arrival arrival, String sha256, String name) {
    place(arrival.file(), path(sha256, name));
  }

  /** Keeps a version of it. */
  public void put(String sha256, String name, byte[] bytes) {
    try {
      Path file = arriving.newFile();
      try (FileChannel out = FileChannel.open(file, StandardOpenOption.WRITE)) {
        write(out, ByteBuffer.wrap(bytes));
        out.force(true);
      }
      place(file, path(sha256, name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Whether files can be kept in the folder now. */
  public boolean isUsable() {
    return arriving.isUsable();
  }

  /** Where a version of it lies; empty where there is none. */
  public Optional<Path> find(String sha256, String name) {
    return Optional.of(path(sha256, name)).filter(Files::exists);
  }

  /** Takes all its versions away, the original first: what has an original is complete. */
  public void delete(String sha256) {
    try {
      Files.deleteIfExists(path(sha256, ORIGINAL));
      Path shelf = path(sha256, ORIGINAL).getParent();
      if (shelf != null && Files.exists(shelf)) {
        for (Path file : list(shelf)) {
          if (hash(file).equals(sha256)) {
            Files.deleteIfExists(file);
          }
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** One of the files that lie under a hash. */
  public record Version(String name, Path file) {}

  /**
   * The files that lie under a hash in a folder, the original last, for who reads it beside the
   * servers that have it open.
   */
  public static List<Version> versionsIn(Path folder, String sha256) throws IOException {
    Path shelf = path(folder, sha256, ORIGINAL).getParent();
    if (shelf == null || !Files.isDirectory(shelf)) {
      return List.of();
    }
    return list(shelf).stream()
        .filter(file -> hash(file).equals(sha256))
        .map(
            file ->
                new Version(
                    String.valueOf(file.getFileName()).substring(sha256.length() + 1), file))
        .sorted(
            Comparator.comparing((Version version) -> version.name().equals(ORIGINAL))
                .thenComparing(Version::name))
        .toList();
  }

  /** Every hash that there is a file of. */
  public Set<String> hashes() {
    try (Stream<Path> tree = Files.walk(folder)) {
      return tree.filter(file -> !file.startsWith(folder.resolve(ARRIVING)))
          .filter(Files::isRegularFile)
          .map(PictureFiles::hash)
          .collect(Collectors.toSet());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String hash(Path file) {
    String name = String.valueOf(file.getFileName());
    return name.substring(0, Math.max(0, name.indexOf('.')));
  }

  private Path path(String sha256, String name) {
    return path(folder, sha256, name);
  }

  private static Path path(Path folder, String sha256, String name) {
    if (!sha256.matches("[0-9a-f]{64}") || !name.matches("[a-z0-9-]{1,40}")) {
      throw new IllegalArgumentException("No file of a picture can be called so");
    }
    return folder
        .resolve(sha256.substring(0, 2))
        .resolve(sha256.substring(2, 4))
        .resolve(sha256 + "." + name);
  }

  private static void place(Path from, Path to) {
    try {
      Path shelf = to.getParent();
      if (shelf == null) {
        throw new IllegalArgumentException("A file of a picture lies in a folder");
      }
      if (Files.exists(to)) {
        Files.deleteIfExists(from);
        return;
      }
      Files.createDirectories(shelf);
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
      // The name itself must reach the disk too.
      try (FileChannel names = FileChannel.open(shelf, StandardOpenOption.READ)) {
        names.force(true);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void write(FileChannel out, ByteBuffer bytes) throws IOException {
    while (bytes.hasRemaining()) {
      out.write(bytes);
    }
  }

  private static List<Path> list(Path shelf) throws IOException {
    List<Path> files = new ArrayList<>();
    try (DirectoryStream<Path> entries = Files.newDirectoryStream(shelf)) {
      entries.forEach(files::add);
    }
    return files;
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java has SHA-256", e);
    }
  }
}
