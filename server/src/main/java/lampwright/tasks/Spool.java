package lampwright.tasks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Folders of archives on their way; none outlives its task, or the server's next start. */
final class Spool {

  private Spool() {}

  /** A folder in which nothing is left from before. */
  static Path emptied(Path folder) {
    try {
      delete(folder);
      return Files.createDirectories(folder);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A new folder, which goes with the others. */
  static Path make(Path within, List<AutoCloseable> afterwards) {
    try {
      Path made = Files.createTempDirectory(within, "spool");
      afterwards.add(() -> delete(made));
      return made;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Takes a file or a folder with all that is in it away, where it is there. */
  static void delete(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    try (Stream<Path> tree = Files.walk(folder)) {
      for (Path path : tree.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(path);
      }
    }
  }

  /** Closes what was opened, the last first, and all of it. */
  static void closeAll(List<AutoCloseable> opened) {
    IllegalStateException trouble = new IllegalStateException("Could not let go of an archive.");
    for (AutoCloseable one : opened.reversed()) {
      try {
        one.close();
      } catch (Exception e) {
        trouble.addSuppressed(e);
      }
    }
    opened.clear();
    if (trouble.getSuppressed().length > 0) {
      throw trouble;
    }
  }
}
