package lampwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import lampwright.document.Json;

/** The engine's ES module, run by node: one process for many requests. */
public final class EngineOnNode {

  private static final int MOST_TOLD = 20;

  private static final String PROGRAM =
      """
      import { readFileSync, writeFileSync } from 'node:fs';
      import { answer } from './engine.mjs';
      const answers = readFileSync('requests.txt', 'utf8').split('\\n').map(answer);
      writeFileSync('answers.txt', answers.join('\\n'));
      """;

  private final Path folder;

  private EngineOnNode(Path folder) {
    this.folder = folder;
  }

  /** The newest module, copied into a folder by the name that tells node what it is. */
  public static EngineOnNode compiled(Path folder) throws Exception {
    Path classes =
        Path.of(BrowserEngine.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    Files.copy(EngineModule.newest(classes), folder.resolve("engine.mjs"));
    Files.writeString(folder.resolve("program.mjs"), PROGRAM);
    return new EngineOnNode(folder);
  }

  /** What node answers to each request, as JSON text. */
  public List<String> answers(List<Map<String, Object>> requests) throws Exception {
    Files.writeString(folder.resolve("requests.txt"), String.join("\n", texts(requests)));
    Path said = folder.resolve("said.txt");
    Process node =
        new ProcessBuilder("node", "program.mjs")
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(said.toFile())
            .start();
    assertEquals(0, node.waitFor(), () -> "node's exit code; it said: " + read(said));
    return Files.readAllLines(folder.resolve("answers.txt"));
  }

  private static List<String> texts(List<Map<String, Object>> requests) {
    return requests.stream().map(Json::print).toList();
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Where node's answers are not the JVM's, each place once; numbers count bit for bit. */
  List<String> differences(List<Map<String, Object>> requests) throws Exception {
    List<String> onNode = answers(requests);
    assertEquals(requests.size(), onNode.size(), "answers");
    Set<String> found = new TreeSet<>();
    for (int i = 0; i < requests.size(); i++) {
      Object onTheJvm = Answers.to(Json.parse(Json.print(requests.get(i))));
      compare(Json.parse(Json.print(onTheJvm)), Json.parse(onNode.get(i)), "", found);
    }
    return found.stream().limit(MOST_TOLD).toList();
  }

  private static void compare(Object onTheJvm, Object onNode, String at, Set<String> found) {
    if (onTheJvm.equals(onNode)) {
      return;
    }
    if (onTheJvm instanceof Map<?, ?> fields
        && onNode instanceof Map<?, ?> others
        && fields.keySet().equals(others.keySet())) {
      for (Map.Entry<?, ?> field : fields.entrySet()) {
        Object other = Objects.requireNonNull(others.get(field.getKey()));
        compare(field.getValue(), other, at + "/" + field.getKey(), found);
      }
    } else if (onTheJvm instanceof List<?> items
        && onNode instanceof List<?> others
        && items.size() == others.size()) {
      for (int i = 0; i < items.size(); i++) {
        compare(items.get(i), others.get(i), at + "/" + i, found);
      }
    } else {
      found.add(at + ": " + apart(onTheJvm.toString(), onNode.toString()));
    }
  }

  /** Both texts from shortly before where they part. */
  private static String apart(String onTheJvm, String onNode) {
    int same = 0;
    while (same < Math.min(onTheJvm.length(), onNode.length())
        && onTheJvm.charAt(same) == onNode.charAt(same)) {
      same++;
    }
    return shown(onTheJvm, same) + " on the JVM, " + shown(onNode, same) + " on node";
  }

  private static String shown(String text, int same) {
    int from = Math.max(0, same - 40);
    return "\"" + text.substring(from, Math.min(text.length(), from + 100)) + "\"";
  }
}
