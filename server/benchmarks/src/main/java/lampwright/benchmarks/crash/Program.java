package lampwright.benchmarks.crash;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** One of the keeper's commands as a process of its own. */
final class Program {

  private final Process process;

  private Program(Process process) {
    this.process = process;
  }

  /** Starts one on a data folder; what it complains of goes to the server's log. */
  static Program start(Path folder, Path data, List<String> words) throws IOException {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "--enable-native-access=ALL-UNNAMED",
                "-cp",
                System.getProperty("java.class.path", ""),
                "lampwright.Lampwright"));
    command.addAll(words);
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().keySet().removeIf(key -> key.startsWith("LAMPWRIGHT_"));
    builder.environment().put("LAMPWRIGHT_DATA", data.toString());
    builder.redirectError(ProcessBuilder.Redirect.appendTo(folder.resolve("server.log").toFile()));
    return new Program(builder.start());
  }

  /** All that it says until it ends. */
  String said() throws IOException {
    return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
  }

  int awaitEnd() throws InterruptedException {
    return process.waitFor();
  }

  boolean isAlive() {
    return process.isAlive();
  }

  void kill() throws InterruptedException {
    process.destroyForcibly();
    var _ = process.waitFor();
  }
}
