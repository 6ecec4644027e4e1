package lampwright.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The editor's modules that touch no page: units, geometry, history, snapping, merging and the
 * rest. Their facts stand in {@code facts.mjs}; node stands for the browser.
 */
class EditorModulesTest {

  private static final Path FACTS = Path.of("src/test/resources/lampwright/editor/facts.mjs");
  private static final Path MODULES = Path.of("src/main/resources/lampwright/assets");

  @Test
  void everyFactOfTheModulesHolds() throws IOException, InterruptedException {
    Process node =
        new ProcessBuilder(
                "node", FACTS.toAbsolutePath().toString(), MODULES.toAbsolutePath().toString())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    String printed = new String(node.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    List<String> facts = printed.lines().toList();
    assertEquals(0, node.waitFor(), printed);
    assertTrue(facts.size() > 25, () -> "Facts: " + facts.size());
    assertEquals(List.of(), facts.stream().filter(fact -> !fact.startsWith("ok ")).toList());
  }
}
