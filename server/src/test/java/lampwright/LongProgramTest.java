package lampwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What starts whole programs is left out of {@code mvn verify}, and of nothing else. */
class LongProgramTest {

  private static final Pattern STARTS =
      Pattern.compile("\\b(ServerProcess|OnePostgres|S3Server|NodeTools|Streaming)\\b");
  private static final Pattern MARK = Pattern.compile("^@LongProgram$", Pattern.MULTILINE);

  private static List<String> tests(Pattern pattern) throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src/test/java"))) {
      return files
          .filter(file -> file.toString().endsWith("Test.java"))
          .filter(file -> pattern.matcher(text(file)).find())
          .map(file -> file.getFileName().toString())
          .filter(name -> !name.equals("LongProgramTest.java"))
          .sorted()
          .toList();
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void everyTestThatStartsProgramsAsProcessesIsOneAndNoOtherIs() throws IOException {
    List<String> starting = tests(STARTS);
    assertTrue(starting.size() >= 12, starting.toString());
    assertEquals(starting, tests(MARK));
  }

  @Test
  void ciRunsThemToo() throws IOException {
    String run = Files.readString(Path.of("../.ci/run"));
    assertTrue(run.contains("for mark in \"test\" \"test processes\"; do"), run);
  }
}
