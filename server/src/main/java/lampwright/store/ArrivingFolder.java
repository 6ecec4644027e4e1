package lampwright.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;

/**
 * Where files are until they are complete: a folder for each server that uses the folder of
 * pictures, and beside it a file that the server holds locked for as long as it lives. What belongs
 * to no living server is taken away at the next start of any. A process opens one folder once: the
 * system may let go of a lock when the process closes the same file a second time.
 */
final class ArrivingFolder implements AutoCloseable {

  private static final String LOCK = ".lock";
  private static final int PIECE = 64 * 1024;

  private final Path own;
  private final Path lockFile;
  private final FileChannel lock;

  private ArrivingFolder(Path own, Path lockFile, FileChannel lock) {
    this.own = own;
    this.lockFile = lockFile;
    this.lock = lock;
  }

  /**
   * Makes this server's folder, and takes away those of servers that are gone.
   *
   * @param all where the folders of all servers lie; it is made
   */
  static ArrivingFolder open(Path all) throws IOException {
    Files.createDirectories(all);
    takeAwayOfTheGone(all);
    while (true) {
      String name = UUID.randomUUID().toString();
      Path lockFile = all.resolve(name + LOCK);
      Optional<FileChannel> lock = hold(lockFile);
      if (lock.isPresent()) {
        return new ArrivingFolder(Files.createDirectory(all.resolve(name)), lockFile, lock.get());
      }
    }
  }

  /** Locks a file for this process; empty where a living process has it. */
  private static Optional<FileChannel> hold(Path lockFile) throws IOException {
    FileChannel channel =
        FileChannel.open(lockFile, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    boolean held = false;
    try {
      FileLock lock = channel.tryLock();
      // Another server may have taken it for a dead one's, and away, before it was locked.
      held = lock != null && Files.exists(lockFile);
    } catch (OverlappingFileLockException e) {
      // Held by this process.
    } finally {
      if (!held) {
        channel.close();
      }
    }
    return held ? Optional.of(channel) : Optional.empty();
  }

  private static void takeAwayOfTheGone(Path all) throws IOException {
    for (Path found : list(all)) {
      String name = String.valueOf(found.getFileName());
      if (name.endsWith(LOCK)) {
        Optional<FileChannel> ofTheGone = hold(found);
        if (ofTheGone.isPresent()) {
          try (FileChannel _ = ofTheGone.get()) {
            deleteTree(found.resolveSibling(name.substring(0, name.length() - LOCK.length())));
            Files.deleteIfExists(found);
          }
        }
      } else if (!Files.exists(found.resolveSibling(name + LOCK))) {
        // A living server has its lock before it has its folder.
        deleteTree(found);
      }
    }
  }

  /** A new empty file in it. */
  Path newFile() throws IOException {
    return Files.createTempFile(own, "picture", "");
  }

  /** See {@link PictureFiles#receive}. */
  Optional<PictureFiles.Arrival> receive(InputStream in, long mostBytes) throws IOException {
    Source from = new Source(in);
    try {
      return keep(from, mostBytes);
    } catch (IOException e) {
      if (from.broke) {
        throw e;
      }
      // What was sent was sound; it is our own disk that did not take it.
      throw PicturesUnavailable.away("The folder of pictures cannot be written: " + e, e);
    }
  }

  private Optional<PictureFiles.Arrival> keep(Source from, long mostBytes) throws IOException {
    Path file = newFile();
    boolean kept = false;
    try (FileChannel out = FileChannel.open(file, StandardOpenOption.WRITE)) {
      MessageDigest hash = sha256();
      byte[] piece = new byte[PIECE];
      long bytes = 0;
      for (int read = from.read(piece); read >= 0; read = from.read(piece)) {
        bytes += read;
        if (bytes > mostBytes) {
          return Optional.empty();
        }
        hash.update(piece, 0, read);
        write(out, ByteBuffer.wrap(piece, 0, read));
      }
      out.force(true);
      kept = true;
      return Optional.of(
          new PictureFiles.Arrival(file, HexFormat.of().formatHex(hash.digest()), bytes));
    } finally {
      if (!kept) {
        Files.deleteIfExists(file);
      }
    }
  }

  /** What is sent, and whether it broke off. */
  private static final class Source {

    private final InputStream in;
    private boolean broke;

    Source(InputStream in) {
      this.in = in;
    }

    int read(byte[] piece) throws IOException {
      broke = true;
      int read = in.read(piece);
      broke = false;
      return read;
    }
  }

  /** A new file with bytes in it, brought to the disk. */
  Path write(byte[] bytes) throws IOException {
    Path file = newFile();
    try (FileChannel out = FileChannel.open(file, StandardOpenOption.WRITE)) {
      write(out, ByteBuffer.wrap(bytes));
      out.force(true);
    }
    return file;
  }

  private static void write(FileChannel out, ByteBuffer bytes) throws IOException {
    while (bytes.hasRemaining()) {
      out.write(bytes);
    }
  }

  static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java has SHA-256", e);
    }
  }

  boolean isUsable() {
    return Files.isWritable(own);
  }

  /** Takes the folder away with all that has not become complete. */
  @Override
  public void close() {
    try (lock) {
      deleteTree(own);
      Files.deleteIfExists(lockFile);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void deleteTree(Path root) throws IOException {
    if (!Files.exists(root)) {
      return;
    }
    try (Stream<Path> tree = Files.walk(root)) {
      for (Path path : tree.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(path);
      }
    }
  }

  private static List<Path> list(Path folder) throws IOException {
    List<Path> files = new ArrayList<>();
    try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder)) {
      entries.forEach(files::add);
    }
    return files;
  }
}
