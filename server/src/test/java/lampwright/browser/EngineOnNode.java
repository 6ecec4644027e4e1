package lampwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import lampwright.document.Json;

/** The engine's ES module, run by node: one process for many requests. */
public final class EngineOnNode implements AutoCloseable {

  private static final int MOST_TOLD = 20;
  private static final int PATIENCE_SECONDS = 60;

  private static final String PROGRAM =
      """
      import { answer } from './engine.mjs';
      let rest = '';
      process.stdin.setEncoding('utf8');
      for await (const part of process.stdin) {
        const requests = (rest + part).split('\\n');
        rest = requests.pop();
        for (const request of requests) {
          process.stdout.write(answer(request) + '\\n');
        }
      }
      """;

  private final Path said;
  private final Process node;
  private final BufferedWriter asking;
  private final BufferedReader answering;

  private EngineOnNode(Path said, Process node) {
    this.said = said;
    this.node = node;
    this.asking = node.outputWriter(StandardCharsets.UTF_8);
    this.answering = node.inputReader(StandardCharsets.UTF_8);
  }

  /**
   * What node and the JVM answer to the same requests.
   *
   * @param onTheJvm each answer as plain values
   * @param differences where node's are others, each place once
   */
  record Compared(List<Object> onTheJvm, List<String> differences) {}

  /** The newest module, copied into a folder by the name that tells node what it is. */
  public static EngineOnNode compiled(Path folder) throws Exception {
    Path classes =
        Path.of(BrowserEngine.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    Files.copy(EngineModule.newest(classes), folder.resolve("engine.mjs"));
    Files.writeString(folder.resolve("program.mjs"), PROGRAM);
    Path said = folder.resolve("said.txt");
    return new EngineOnNode(
        said,
        new ProcessBuilder("node", "program.mjs")
            .directory(folder.toFile())
            .redirectError(said.toFile())
            .start());
  }

  /** What node answers to each request, as JSON text. */
  public List<String> answers(List<Map<String, Object>> requests) throws Exception {
    return answersTo(requests.stream().map(Json::print).toList());
  }

  private List<String> answersTo(List<String> requests) throws Exception {
    Thread writer = Thread.ofVirtual().start(() -> ask(requests));
    List<String> answers = new ArrayList<>();
    for (int i = 0; i < requests.size(); i++) {
      String answer = answering.readLine();
      if (answer == null) {
        throw new AssertionError("node ended at request " + i + "; it said: " + read(said));
      }
      answers.add(answer);
    }
    writer.join();
    return answers;
  }

  private void ask(List<String> requests) {
    try {
      for (String request : requests) {
        asking.write(request + "\n");
      }
      asking.flush();
    } catch (IOException e) {
      // Node has ended; whoever waits for its answer is told what it said.
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Asks both; numbers count bit for bit. */
  Compared compared(List<Map<String, Object>> requests) throws Exception {
    List<String> texts = requests.stream().map(Json::print).toList();
    List<String> onNode = answersTo(texts);
    List<Object> onTheJvm = new ArrayList<>();
    Set<String> found = new TreeSet<>();
    for (int i = 0; i < texts.size(); i++) {
      Object answer = Json.parse(Json.print(Answers.to(Json.parse(texts.get(i)))));
      compare(answer, Json.parse(onNode.get(i)), "", found);
      onTheJvm.add(answer);
    }
    return new Compared(onTheJvm, found.stream().limit(MOST_TOLD).toList());
  }

  /** Lets node come to its end, which is no failure. */
  @Override
  public void close() throws IOException {
    asking.close();
    try {
      Process ended = node.onExit().orTimeout(PATIENCE_SECONDS, TimeUnit.SECONDS).join();
      assertEquals(0, ended.exitValue(), () -> "node's exit code; it said: " + read(said));
    } finally {
      node.destroyForcibly();
    }
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
