package lampwright.postgres;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Locale;
import java.util.Properties;
import org.apache.commons.compress.archivers.tar.TarArchiveEntry;
import org.apache.commons.compress.archivers.tar.TarArchiveInputStream;
import org.apache.commons.compress.compressors.xz.XZCompressorInputStream;
import org.jspecify.annotations.Nullable;

/** PostgreSQL's programs, unpacked once for each version from the archive on the class path. */
record Binaries(Path home, String version) {

  /**
   * Finds or unpacks them below a folder.
   *
   * @throws IOException when the folder cannot be written
   * @throws DataFolderUnusable when there is no archive for this machine
   */
  static Binaries in(Path folder) throws IOException {
    String version = versionOfArchive();
    Path home = folder.resolve("bin-" + version);
    if (!Files.isDirectory(home)) {
      // Only a whole tree gets the final name: a killed start leaves a part that the next removes.
      Path part = folder.resolve("bin-" + version + ".part");
      deleteTree(part);
      unpack(part);
      Files.move(part, home, StandardCopyOption.ATOMIC_MOVE);
    }
    return new Binaries(home, version);
  }

  Path program(String name) {
    return home.resolve("bin").resolve(name);
  }

  String majorVersion() {
    return version.substring(0, version.indexOf('.'));
  }

  private static String versionOfArchive() throws IOException {
    Properties properties = new Properties();
    try (InputStream in = resource("/lampwright/postgres/binaries.properties")) {
      if (in == null) {
        throw new IllegalStateException("binaries.properties is missing from the class path.");
      }
      properties.load(in);
    }
    return properties.getProperty("version");
  }

  private static void unpack(Path into) throws IOException {
    String archive = "/postgres-%s.txz".formatted(platform());
    InputStream resource = resource(archive);
    if (resource == null) {
      throw new DataFolderUnusable(
          "This build carries no PostgreSQL for this machine (%s). Give LAMPWRIGHT_DATABASE_URL a PostgreSQL of your own, 15 or newer."
              .formatted(platform()));
    }
    try (var tar =
        new TarArchiveInputStream(
            new XZCompressorInputStream(new BufferedInputStream(resource)),
            StandardCharsets.UTF_8.name())) {
      for (TarArchiveEntry entry = tar.getNextEntry(); entry != null; entry = tar.getNextEntry()) {
        if (isNeeded(entry.getName())) {
          write(entry, tar, into);
        }
      }
    }
  }

  private static void write(TarArchiveEntry entry, InputStream content, Path into)
      throws IOException {
    Path target = into.resolve(entry.getName()).normalize();
    if (!target.startsWith(into)) {
      throw new IOException("The archive names a path outside itself: " + entry.getName());
    }
    if (entry.isDirectory()) {
      makeDirectory(target);
      return;
    }
    makeDirectory(target.getParent());
    if (entry.isSymbolicLink()) {
      Files.createSymbolicLink(target, Path.of(entry.getLinkName()));
      return;
    }
    Files.copy(content, target);
    boolean program = (entry.getMode() & 0100) != 0;
    Files.setPosixFilePermissions(
        target, PosixFilePermissions.fromString(program ? "rwxr-xr-x" : "rw-r--r--"));
  }

  private static void makeDirectory(@Nullable Path directory) throws IOException {
    if (directory != null && !Files.isDirectory(directory)) {
      makeDirectory(directory.getParent());
      Files.createDirectory(directory);
      Files.setPosixFilePermissions(directory, PosixFilePermissions.fromString("rwxr-xr-x"));
    }
  }

  /** A server needs its programs, libraries and shared files, not what is for building on it. */
  private static boolean isNeeded(String name) {
    return !name.startsWith("include/")
        && !name.contains("/pgxs/")
        && !name.contains("/pkgconfig/")
        && !name.endsWith(".a");
  }

  private static String platform() {
    String system =
        System.getProperty("os.name").toLowerCase(Locale.ROOT).startsWith("mac")
            ? "darwin"
            : "linux";
    String processor = System.getProperty("os.arch");
    return switch (processor) {
      case "amd64", "x86_64" -> system + "-x86_64";
      case "aarch64" -> system + "-arm_64";
      default -> system + "-" + processor;
    };
  }

  private static @Nullable InputStream resource(String name) {
    return Binaries.class.getResourceAsStream(name);
  }

  /** Removes a folder and what is in it; does nothing where there is none. */
  static void deleteTree(Path root) throws IOException {
    if (!Files.exists(root)) {
      return;
    }
    Files.walkFileTree(
        root,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
              throws IOException {
            Files.delete(file);
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult postVisitDirectory(Path folder, @Nullable IOException failure)
              throws IOException {
            if (failure != null) {
              throw failure;
            }
            Files.delete(folder);
            return FileVisitResult.CONTINUE;
          }
        });
  }
}
