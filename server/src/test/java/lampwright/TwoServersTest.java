package lampwright;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import lampwright.postgres.EmbeddedPostgres;
import lampwright.web.TwentyWriters;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Two servers, each a process with a data folder of its own, on one PostgreSQL. */
class TwoServersTest {

  private Path folder = Path.of("");

  @BeforeEach
  void makeAFolderThatPostgresCanReach() throws IOException {
    folder =
        Files.createTempDirectory(
            "lampwright-two",
            PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwxr-xr-x")));
  }

  @AfterEach
  void takeTheFolderAway() throws IOException {
    try (Stream<Path> tree = Files.walk(folder)) {
      for (Path path : tree.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }

  @Test
  void twentyWritersAtTwoServersLoseNoUpdate() throws Exception {
    try (EmbeddedPostgres postgres = EmbeddedPostgres.start(folder.resolve("postgres"));
        ServerProcess one = start("one", postgres);
        ServerProcess other = start("other", postgres)) {
      TwentyWriters.mustLoseNothing(List.of(one.author(), other.author()));
    }
  }

  private ServerProcess start(String name, EmbeddedPostgres postgres) throws IOException {
    Path data = Files.createDirectories(folder.resolve(name).resolve("data"));
    String at = postgres.jdbcUrl(EmbeddedPostgres.DATABASE).replaceFirst("jdbc:postgresql://", "");
    return ServerProcess.start(
        data,
        Map.of(
            "LAMPWRIGHT_DATABASE_URL",
            "postgresql://%s:%s@%s".formatted(postgres.user(), postgres.password(), at)));
  }
}
