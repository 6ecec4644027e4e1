package lampwright.postgres;

import static lampwright.postgres.EmbeddedPostgresTest.assertSaysInOneLine;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a person reads who has named a folder that cannot be used. */
class DataFolderTest {

  @TempDir Path home;

  @BeforeEach
  void letEverybodyPassThrough() throws IOException {
    Files.setPosixFilePermissions(home, PosixFilePermissions.fromString("rwx--x--x"));
  }

  @Test
  void aFileIsRefused() throws IOException {
    Path file = Files.createFile(home.resolve("data"));
    assertSaysInOneLine(refusalOf(file), file.toString(), "is a file", "LAMPWRIGHT_DATA");
  }

  @Test
  void aFolderBelowAFileIsRefused() throws IOException {
    Path below = Files.createFile(home.resolve("file")).resolve("data");
    assertSaysInOneLine(refusalOf(below), below.toString(), "below one", "LAMPWRIGHT_DATA");
  }

  @Test
  void aFolderThatCannotBeMadeIsRefused() {
    // Nobody, root included, makes folders there.
    Path system = Path.of("/proc/lampwright");
    assertSaysInOneLine(refusalOf(system), system.toString(), "LAMPWRIGHT_DATA");
  }

  @Test
  void aFullDiskIsNamed() {
    assertSaysInOneLine(
        DataFolder.unusable(home, "could not write: No space left on device"),
        home.toString(),
        "full disk",
        "Make room");
  }

  @Test
  void filesThatDoNotBelongToUsAreRefused() throws IOException {
    Path data = home.resolve("data");
    UnpackedPrograms.linkInto(data);
    EmbeddedPostgres.start(data).close();
    Path password = data.resolve("postgres-password");

    Files.writeString(password, "another");
    assertSaysInOneLine(refusalOf(data), data.toString(), "password authentication failed");

    Files.delete(password);
    assertSaysInOneLine(refusalOf(data), data.toString(), "postgres-password", "backup");

    Files.writeString(data.resolve("postgres/cluster/PG_VERSION"), "12\n");
    assertSaysInOneLine(refusalOf(data), data.toString(), "PostgreSQL 12", "LAMPWRIGHT_DATA");
  }

  private static DataFolderUnusable refusalOf(Path folder) {
    return assertThrows(DataFolderUnusable.class, () -> EmbeddedPostgres.start(folder));
  }
}
