package lampwright.store;

import java.io.FilterInputStream;
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
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The files of pictures in one folder. A file is written beside, brought to the disk and moved into
 * its place whole.
 */
public final class PictureFolder implements PictureFiles {

  private static final String ARRIVING = "arriving";

  private final Path folder;
  private final ArrivingFolder arriving;

  private PictureFolder(Path folder, ArrivingFolder arriving) {
    this.folder = folder;
    this.arriving = arriving;
  }

  /** Opens a folder, which it makes, and forgets what was arriving at servers that have ended. */
  static PictureFolder open(Path folder) {
    try {
      return new PictureFolder(folder, ArrivingFolder.open(folder.resolve(ARRIVING)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void close() {
    arriving.close();
  }

  @Override
  public Optional<Arrival> receive(InputStream in, long mostBytes) throws IOException {
    return arriving.receive(in, mostBytes);
  }

  @Override
  public void put(Arrival arrival, String sha256, String name) {
    place(arrival.file(), path(sha256, name));
  }

  @Override
  public void put(String sha256, String name, byte[] bytes) {
    try {
      place(arriving.write(bytes), path(sha256, name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public boolean isDistant() {
    return false;
  }

  @Override
  public Optional<String> trouble() {
    return arriving.isUsable()
        ? Optional.empty()
        : Optional.of("The folder of pictures cannot be written. Is it still mounted?");
  }

  @Override
  public Optional<KeptFile> find(String sha256, String name) {
    Path path = path(sha256, name);
    try {
      return Files.exists(path)
          ? Optional.of(new FileHere(name, path, Files.size(path)))
          : Optional.empty();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public Optional<KeptFile> recall(String sha256, String name) {
    return find(sha256, name);
  }

  @Override
  public Map<String, KeptFile> originals(Set<String> hashes) {
    Map<String, KeptFile> found = new HashMap<>();
    hashes.forEach(hash -> find(hash, ORIGINAL).ifPresent(original -> found.put(hash, original)));
    return found;
  }

  @Override
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

  @Override
  public List<KeptFile> versions(String sha256) throws IOException {
    return versionsIn(folder, sha256);
  }

  /** The same of a folder that is not opened. */
  static List<KeptFile> versionsIn(Path folder, String sha256) throws IOException {
    Path shelf = path(folder, sha256, ORIGINAL).getParent();
    if (shelf == null || !Files.isDirectory(shelf)) {
      return List.of();
    }
    List<KeptFile> found = new ArrayList<>();
    for (Path file : list(shelf)) {
      if (hash(file).equals(sha256)) {
        String name = PictureNames.version(String.valueOf(file.getFileName()));
        found.add(new FileHere(name, file, Files.size(file)));
      }
    }
    found.sort(KeptFile.ORIGINAL_LAST);
    return found;
  }

  @Override
  public Listing list() {
    Set<String> hashes = new HashSet<>();
    Set<String> complete = new HashSet<>();
    try (Stream<Path> tree = Files.walk(folder)) {
      tree.filter(file -> !file.startsWith(folder.resolve(ARRIVING)))
          .filter(Files::isRegularFile)
          .forEach(
              file -> {
                hashes.add(hash(file));
                if (String.valueOf(file.getFileName()).endsWith("." + ORIGINAL)) {
                  complete.add(hash(file));
                }
              });
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new Listing(hashes, complete);
  }

  @Override
  public void deleteAll() {
    arriving.close();
    try (Stream<Path> tree = Files.walk(folder)) {
      for (Path path : tree.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(path);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A file in it. */
  private record FileHere(String name, Path path, long bytes) implements KeptFile {

    @Override
    public InputStream open(long first, long count) throws IOException {
      InputStream in = Files.newInputStream(path);
      try {
        in.skipNBytes(first);
        return new Cut(in, count);
      } catch (IOException e) {
        in.close();
        throw e;
      }
    }

    @Override
    public ByteBuffer map() throws IOException {
      try (FileChannel channel = FileChannel.open(path, StandardOpenOption.READ)) {
        return channel.map(FileChannel.MapMode.READ_ONLY, 0, channel.size());
      }
    }
  }

  /** The first so many bytes. */
  private static final class Cut extends FilterInputStream {

    private long left;

    Cut(InputStream in, long bytes) {
      super(in);
      this.left = bytes;
    }

    @Override
    public int read() throws IOException {
      int read = left > 0 ? in.read() : -1;
      left -= read < 0 ? 0 : 1;
      return read;
    }

    @Override
    public int read(byte[] into, int from, int most) throws IOException {
      int read = left > 0 ? in.read(into, from, (int) Math.min(most, left)) : -1;
      left -= Math.max(0, read);
      return read;
    }
  }

  private static String hash(Path file) {
    return PictureNames.hash(String.valueOf(file.getFileName()));
  }

  private Path path(String sha256, String name) {
    return path(folder, sha256, name);
  }

  private static Path path(Path folder, String sha256, String name) {
    return folder.resolve(PictureNames.of(sha256, name));
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

  private static List<Path> list(Path shelf) throws IOException {
    List<Path> files = new ArrayList<>();
    try (DirectoryStream<Path> entries = Files.newDirectoryStream(shelf)) {
      entries.forEach(files::add);
    }
    return files;
  }
}
