package lampwright;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Comparator;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * An empty folder for each test that PostgreSQL can reach, which runs as another account where the
 * tests are the root's; JUnit's own is closed to it.
 */
final class ReachableFolder implements BeforeEachCallback, AfterEachCallback {

  private Path folder = Path.of("");

  /** Makes one that lives as long as its maker wants. */
  static Path made() throws IOException {
    return Files.createTempDirectory(
        "lampwright-reachable",
        PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwxr-xr-x")));
  }

  /** Deletes a folder and all that is in it. */
  static void delete(Path folder) throws IOException {
    try (Stream<Path> tree = Files.walk(folder)) {
      for (Path path : tree.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }

  @Override
  public void beforeEach(ExtensionContext context) throws IOException {
    folder = made();
  }

  @Override
  public void afterEach(ExtensionContext context) throws IOException {
    delete(folder);
  }

  Path resolve(String name) {
    return folder.resolve(name);
  }
}
