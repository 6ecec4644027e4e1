package lampwright.postgres;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * The folder that a server keeps its data in, held by one process at a time. The lock is the
 * operating system's, so it ends with the process however that ends.
 */
final class DataFolder implements AutoCloseable {

  private final Path root;
  private final FileChannel lockFile;

  private DataFolder(Path root, FileChannel lockFile) {
    this.root = root;
    this.lockFile = lockFile;
  }

  /**
   * Makes the folder where it is missing and takes it for this process.
   *
   * @throws DataFolderUnusable when it cannot be made or written, or another process holds it
   */
  static DataFolder take(Path wanted) {
    Path absolute = wanted.toAbsolutePath().normalize();
    try {
      Files.createDirectories(absolute);
      Path root = absolute.toRealPath();
      DataFolder folder = new DataFolder(root, lock(root));
      folder.makeReadable(folder.postgres());
      return folder;
    } catch (IOException e) {
      throw unusable(absolute, e);
    }
  }

  private static FileChannel lock(Path root) throws IOException {
    Path file = root.resolve("lock");
    FileChannel channel =
        FileChannel.open(
            file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
    FileLock lock = tryLock(channel);
    if (lock == null) {
      String holder = Files.readString(file, StandardCharsets.UTF_8).strip();
      channel.close();
      throw new DataFolderUnusable(
          "The data folder %s is in use by another Lampwright%s. Stop that one, or give this one another folder by LAMPWRIGHT_DATA."
              .formatted(root, holder.isEmpty() ? "" : " (process " + holder + ")"));
    }
    channel.truncate(0);
    byte[] process =
        Long.toString(ProcessHandle.current().pid()).getBytes(StandardCharsets.US_ASCII);
    channel.write(ByteBuffer.wrap(process), 0);
    return channel;
  }

  private static @Nullable FileLock tryLock(FileChannel channel) throws IOException {
    try {
      return channel.tryLock();
    } catch (OverlappingFileLockException heldByThisProcess) {
      return null;
    }
  }

  private void makeReadable(Path directory) throws IOException {
    Files.createDirectories(directory);
    Files.setPosixFilePermissions(directory, PosixFilePermissions.fromString("rwxr-xr-x"));
  }

  Path root() {
    return root;
  }

  /** What PostgreSQL's own account has to reach lies in here and nothing else does. */
  Path postgres() {
    return root.resolve("postgres");
  }

  Path cluster() {
    return postgres().resolve("cluster");
  }

  Path passwordFile() {
    return root.resolve("postgres-password");
  }

  /** Says in one line what an error of the file system means for the person who starts us. */
  static DataFolderUnusable unusable(Path folder, IOException e) {
    String reason = String.valueOf(e.getMessage());
    String problem =
        switch (e) {
          case AccessDeniedException _ ->
              "may not be written by this user. Change its owner or its permissions";
          case FileAlreadyExistsException _, NotDirectoryException _ ->
              "is a file or lies below one, not a folder. Move the file away";
          default -> problemOf(reason);
        };
    return new DataFolderUnusable(
        "The data folder %s %s, or choose another folder by LAMPWRIGHT_DATA."
            .formatted(folder, problem),
        e);
  }

  static DataFolderUnusable unusable(Path folder, String output) {
    return new DataFolderUnusable(
        "The data folder %s %s, or choose another folder by LAMPWRIGHT_DATA."
            .formatted(folder, problemOf(output)));
  }

  private static String problemOf(String reason) {
    String lower = reason.toLowerCase(Locale.ROOT);
    if (lower.contains("no space left")) {
      return "is on a full disk. Make room there";
    }
    if (lower.contains("read-only file system")) {
      return "is on a read-only disk. Mount it for writing";
    }
    if (lower.contains("not a directory")) {
      return "is a file or lies below one, not a folder. Move the file away";
    }
    return "could not be used: %s. Put that right".formatted(reason.lines().findFirst().orElse(""));
  }

  @Override
  public void close() {
    try {
      lockFile.close();
    } catch (IOException e) {
      throw unusable(root, e);
    }
  }
}
