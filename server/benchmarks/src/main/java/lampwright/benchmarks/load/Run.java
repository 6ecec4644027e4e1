package lampwright.benchmarks.load;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * A Java program that runs as a process of its own: the server as it is shipped, or what it is
 * compared with. Both with the same virtual machine and no options but those that are asked for.
 */
public final class Run implements AutoCloseable {

  private static final long PATIENCE_SECONDS = 60;

  private final Process process;
  private final URI address;

  private Run(Process process, URI address) {
    this.process = process;
    this.address = address;
  }

  /** The server, when it says where it is open. */
  public static Run server(Path log, List<String> options, Map<String, String> settings)
      throws IOException {
    return start(log, options, settings, "lampwright.Lampwright", "Lampwright is open at ");
  }

  static Run start(
      Path log, List<String> options, Map<String, String> settings, String program, String opened)
      throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("--enable-native-access=ALL-UNNAMED");
    command.addAll(options);
    command.addAll(List.of("-cp", System.getProperty("java.class.path", ""), program));
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().keySet().removeIf(key -> key.startsWith("LAMPWRIGHT_"));
    builder.environment().putAll(settings);
    builder.redirectError(ProcessBuilder.Redirect.appendTo(log.toFile()));
    Process process = builder.start();
    // Closing the reader would break the program's console.
    BufferedReader console =
        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    for (String line = console.readLine(); line != null; line = console.readLine()) {
      if (line.startsWith(opened)) {
        Thread.ofVirtual().start(() -> passOver(console));
        return new Run(process, URI.create(line.substring(opened.length()).strip()));
      }
    }
    throw new IllegalStateException(program + " did not open; its log is " + log);
  }

  /** Reads what else it says, until it ends or is ended. */
  private static void passOver(BufferedReader console) {
    try {
      while (console.readLine() != null) {
        // Nobody wants it; but a full pipe would hold the program up.
      }
    } catch (IOException ended) {
      // Its end closes the stream under the reader.
    }
  }

  /** Where it is open, without a slash at the end. */
  public String address() {
    return "http://127.0.0.1:" + address.getPort();
  }

  public int port() {
    return address.getPort();
  }

  public ProcessHandle handle() {
    return process.toHandle();
  }

  public long pid() {
    return process.pid();
  }

  public boolean isAlive() {
    return process.isAlive();
  }

  /** Waits until it says that it is ready; tells how long that took. */
  public Duration awaitReady(Duration patience) throws IOException, InterruptedException {
    long began = System.nanoTime();
    try (HttpClient client = HttpClient.newHttpClient()) {
      HttpRequest ask = HttpRequest.newBuilder(URI.create(address() + "/health/ready")).build();
      while (true) {
        HttpResponse<String> answer = client.send(ask, HttpResponse.BodyHandlers.ofString());
        Duration taken = Duration.ofNanos(System.nanoTime() - began);
        if (answer.statusCode() == 200) {
          return taken;
        }
        if (taken.compareTo(patience) > 0) {
          throw new IllegalStateException("Not ready after " + taken + ": " + answer.body());
        }
        TimeUnit.MILLISECONDS.sleep(50);
      }
    }
  }

  /** Ends it in the middle of whatever it is at. */
  public void kill() throws InterruptedException {
    process.destroyForcibly();
    if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
      throw new IllegalStateException("It cannot be killed: " + process.pid());
    }
  }

  /** Asks it to stop, and waits. */
  @Override
  public void close() {
    process.destroy();
    try {
      if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
        process.destroyForcibly();
      }
    } catch (InterruptedException e) {
      process.destroyForcibly();
      Thread.currentThread().interrupt();
    }
  }
}
