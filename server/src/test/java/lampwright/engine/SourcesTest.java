package lampwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

final class SourcesTest {

  private static final Path ENGINE = Path.of("src/main/java/lampwright/engine");

  @Test
  void everyKeyStandsInTheReferencesAndNoOther() throws IOException {
    Set<String> written = new TreeSet<>();
    Matcher keys =
        Pattern.compile("^\\| `([a-z0-9-]+)` \\|", Pattern.MULTILINE)
            .matcher(Files.readString(ENGINE.resolve("REFERENCES.md")));
    while (keys.find()) {
      written.add(keys.group(1));
    }
    Set<String> known =
        Arrays.stream(Source.values())
            .map(Source::key)
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(known, written);
    assertEquals(Source.values().length, known.size(), "each key once");
  }

  /** Comments cite keys as "(source x, y)" or "(sources x, y)"; each must exist. */
  @Test
  void everyKeyThatACommentCitesExists() throws IOException {
    Set<String> known = Arrays.stream(Source.values()).map(Source::key).collect(Collectors.toSet());
    Pattern cited = Pattern.compile("\\(sources? ([a-z0-9-]+(?:, [a-z0-9-]+)*)");
    int count = 0;
    try (Stream<Path> files = Files.walk(ENGINE)) {
      for (Path file : files.filter(each -> each.toString().endsWith(".java")).toList()) {
        String text = Files.readString(file).replaceAll("\\s+\\* ", " ");
        Matcher matcher = cited.matcher(text);
        while (matcher.find()) {
          for (String key : matcher.group(1).split(", ", -1)) {
            if (!key.equals("quoted")) {
              assertTrue(known.contains(key), file + " cites " + key);
              count++;
            }
          }
        }
      }
    }
    assertTrue(count > 10, "citations found: " + count);
  }

  @Test
  void workingsPrintAsATreeAndRefuseNonsense() {
    Working part = Working.given("ISO", 100, "");
    Working whole = Working.of("reading", 8, "f-number", "√(H · S / C)", Source.ISO_2720, part);
    assertEquals(
        "reading = 8 f-number, √(H · S / C) [iso-2720]\n  ISO = 100 [given]\n", whole.toString());
    assertEquals(List.of(part), whole.parts());
    assertThrows(IllegalArgumentException.class, () -> Working.given("distance", Double.NaN, "m"));
  }
}
