package lampwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ReadmeTest {

  /** The tests run in {@code server/}. */
  private static final Path TOP = Path.of("..");

  private static String read(String file) throws IOException {
    return Files.readString(TOP.resolve(file));
  }

  @Test
  void everySettingStandsInTheReadmeWithItsStandard() throws IOException {
    String readme = read("README.md");
    List<String> missing =
        Arrays.stream(Setting.values())
            .filter(
                setting ->
                    readme
                        .lines()
                        .noneMatch(
                            line ->
                                line.startsWith("|")
                                    && line.contains("`" + setting.key() + "`")
                                    && (setting.standard().isEmpty()
                                        || line.contains("`" + setting.standard() + "`"))))
            .map(Setting::key)
            .toList();
    assertEquals(List.of(), missing);
  }

  @Test
  void theReadmeNamesNoSettingThatIsNone() throws IOException {
    List<String> unknown =
        Pattern.compile("LAMPWRIGHT_[A-Z0-9_]+")
            .matcher(read("README.md"))
            .results()
            .map(MatchResult::group)
            .distinct()
            .filter(key -> Setting.find(key).isEmpty())
            .toList();
    assertEquals(List.of(), unknown);
  }

  /** The table of the security standard names the test that meets each requirement. */
  @Test
  void everyTestThatTheDocumentsNameIsThere() throws IOException {
    Set<String> there = new TreeSet<>();
    try (Stream<Path> files = Files.walk(Path.of("src/test/java"))) {
      files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith("Test.java"))
          .forEach(name -> there.add(name.substring(0, name.length() - ".java".length())));
    }
    List<String> named =
        Pattern.compile("`([A-Z][A-Za-z]*Test)\\b")
            .matcher(read("DEVELOPERS.md"))
            .results()
            .map(match -> match.group(1))
            .distinct()
            .toList();
    assertTrue(named.size() > 50, named.toString());
    assertEquals(List.of(), named.stream().filter(name -> !there.contains(name)).toList());
  }

  @Test
  void everyFileThatTheDocumentsLinkToIsThere() throws IOException {
    for (String document : List.of("README.md", "DEVELOPERS.md")) {
      List<String> broken =
          Pattern.compile("\\]\\(([^)#:]+)\\)")
              .matcher(read(document))
              .results()
              .map(link -> link.group(1))
              .filter(link -> Files.notExists(TOP.resolve(link)))
              .toList();
      assertEquals(List.of(), broken, document);
    }
  }

  @Test
  void theReadmeMarksTheCommandsToRunAndToTest() throws IOException {
    String readme = read("README.md");
    for (String mark : List.of("<!-- run -->", "<!-- test -->", "<!-- test processes -->")) {
      assertTrue(
          Pattern.compile(Pattern.quote(mark) + "\n```sh\n[^\n]+\n```").matcher(readme).find(),
          mark);
    }
  }
}
