package lampwright.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The tools that {@code src/test/npm/package.json} names, installed under {@code target} by its
 * lock file; installed anew only where that file has changed.
 */
final class NodeTools {

  private static final Path SOURCES = Path.of("src/test/npm");
  private static final Path FOLDER = Path.of("target/npm");
  private static final String LOCK = "package-lock.json";
  private static final Path INSTALLED = FOLDER.resolve("installed.json");

  private NodeTools() {}

  /**
   * Installs them, once for all who ask at a time; without npm on the machine the test is skipped.
   */
  static synchronized NodeTools installed() throws Exception {
    assumeTrue(
        Stream.of("/usr/bin/npm", "/usr/local/bin/npm").anyMatch(at -> Files.exists(Path.of(at))),
        "No npm here: apt-get install nodejs npm");
    Files.createDirectories(FOLDER);
    NodeTools tools = new NodeTools();
    try (Stream<Path> sources = Files.list(SOURCES)) {
      for (Path source : sources.toList()) {
        Files.copy(
            source, FOLDER.resolve(source.getFileName()), StandardCopyOption.REPLACE_EXISTING);
      }
    }
    byte[] lock = Files.readAllBytes(SOURCES.resolve(LOCK));
    if (!Files.exists(INSTALLED) || Files.mismatch(SOURCES.resolve(LOCK), INSTALLED) >= 0) {
      tools.mustRun("npm", "ci", "--ignore-scripts", "--no-audit", "--no-fund");
      Files.write(INSTALLED, lock);
    }
    return tools;
  }

  /** Where they work: the files that a test brings and those that they make. */
  Path folder() {
    return FOLDER;
  }

  /** Runs a tool's script. */
  Said node(String script, String... arguments) throws Exception {
    return run(command(script, arguments));
  }

  /** What starts a tool's script by itself, without a shell or a launcher around it. */
  static List<String> command(String script, String... arguments) {
    List<String> command = new ArrayList<>(List.of("node", script));
    command.addAll(List.of(arguments));
    return command;
  }

  /**
   * What a tool said.
   *
   * @param code its exit code
   */
  record Said(int code, String text) {}

  private void mustRun(String... command) throws Exception {
    Said said = run(List.of(command));
    assertEquals(0, said.code(), said.text());
  }

  private static Said run(List<String> command) throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(command)
            .directory(FOLDER.toFile())
            .redirectErrorStream(true)
            .redirectInput(ProcessBuilder.Redirect.from(Path.of("/dev/null").toFile()))
            .start();
    String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    return new Said(process.waitFor(), text);
  }
}
