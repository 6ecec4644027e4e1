package lampwright.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lampwright.document.Definitions;
import lampwright.document.Json;
import lampwright.language.Language;
import lampwright.language.PhraseFiles;
import lampwright.setup.SetupDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The editor's modules that touch no page: units, geometry, history, snapping, merging and the
 * rest. Their facts stand in {@code facts.mjs}; node stands for the browser.
 */
class EditorModulesTest {

  private static final Path FACTS = Path.of("src/test/resources/lampwright/editor/facts.mjs");
  private static final Path MODULES = Path.of("src/main/resources/lampwright/assets");

  /** A phrase's key in a module, such as {@code "group.place"}. */
  private static final Pattern PHRASE =
      Pattern.compile(
          "\"((?:act|choice|field|group|hint|kept|new|note|piece|place|since|stale|told|unit|value"
              + "|wrong)\\.[a-z][A-Za-z_0-9.]*)\"");

  @Test
  void everyFactOfTheModulesHolds(@TempDir Path folder) throws IOException, InterruptedException {
    Path schema = folder.resolve("setup.json");
    Files.writeString(schema, Json.print(Definitions.schemaOf(SetupDocument.FORM, "setup")));
    Process node =
        new ProcessBuilder(
                "node",
                FACTS.toAbsolutePath().toString(),
                MODULES.toAbsolutePath().toString(),
                schema.toString())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    String printed = new String(node.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    List<String> facts = printed.lines().toList();
    assertEquals(0, node.waitFor(), printed);
    assertTrue(facts.size() > 25, () -> "Facts: " + facts.size());
    assertEquals(List.of(), facts.stream().filter(fact -> !fact.startsWith("ok ")).toList());
  }

  @Test
  void everyPhraseThatAModuleNamesIsSentInEachLanguage() throws IOException {
    Set<String> named = new TreeSet<>();
    try (Stream<Path> files = Files.list(MODULES)) {
      for (Path file :
          files.filter(path -> path.getFileName().toString().matches("editor.*\\.js")).toList()) {
        PHRASE
            .matcher(Files.readString(file))
            .results()
            .forEach(found -> named.add("editor." + found.group(1)));
      }
    }
    assertTrue(named.size() > 60, () -> "Phrases: " + named.size());
    for (Language language : Language.values()) {
      Map<String, String> sent = EditorData.phrases(PhraseFiles.read(language));
      assertEquals(
          List.of(),
          named.stream()
              .filter(key -> !sent.containsKey(key) && !sent.containsKey(key + ".other"))
              .toList(),
          language.tag());
    }
  }
}
