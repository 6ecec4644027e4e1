package lampwright.postgres;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.stream.Stream;

/**
 * PostgreSQL's programs, unpacked once for all tests: to unpack them takes seconds of processor
 * time, to link to them none.
 */
public final class UnpackedPrograms {

  /** Unpacked when the first test wants them. */
  private static final class Once {
    static final Binaries UNPACKED = unpack();
  }

  private UnpackedPrograms() {}

  private static Binaries unpack() {
    try {
      Path folder = Files.createTempDirectory("lampwright-programs");
      Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx--x--x"));
      Runtime.getRuntime().addShutdownHook(new Thread(() -> takeAway(folder)));
      return Binaries.in(folder);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void takeAway(Path folder) {
    try {
      Binaries.deleteTree(folder);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Puts them where the first start on a data folder would unpack them. */
  public static void linkInto(Path data) throws IOException {
    Path home = Once.UNPACKED.home();
    try (DataFolder folder = DataFolder.take(data);
        Stream<Path> tree = Files.walk(home)) {
      Path there = folder.postgres().resolve(String.valueOf(home.getFileName()));
      for (Path path : tree.toList()) {
        Path target = there.resolve(home.relativize(path).toString());
        if (Files.isSymbolicLink(path)) {
          Files.createSymbolicLink(target, Files.readSymbolicLink(path));
        } else if (Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)) {
          Files.createDirectory(target);
          Files.setPosixFilePermissions(target, Files.getPosixFilePermissions(path));
        } else {
          Files.createLink(target, path);
        }
      }
    }
  }
}
