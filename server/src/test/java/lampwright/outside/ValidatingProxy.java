package lampwright.outside;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.TimeUnit;

/**
 * Somebody else's proxy before the server, which holds every request and every reply against a
 * description: what does not fit becomes an error for whoever asked.
 */
final class ValidatingProxy implements AutoCloseable {

  private static final String SCRIPT = "node_modules/@stoplight/prism-cli/dist/index.js";
  private static final String OPEN = "Prism is listening on";

  private final Process process;
  private final URI address;

  private ValidatingProxy(Process process, URI address) {
    this.process = process;
    this.address = address;
  }

  /**
   * Starts one.
   *
   * @param description a file beside the tools
   * @param port of the server on loopback
   */
  static ValidatingProxy start(NodeTools tools, String description, int port) throws Exception {
    int own = freePort();
    List<String> command =
        NodeTools.command(
            SCRIPT,
            "proxy",
            description,
            "http://127.0.0.1:" + port,
            "--host=127.0.0.1",
            "--port=" + own,
            "--errors");
    Process process =
        new ProcessBuilder(command)
            .directory(tools.folder().toFile())
            .redirectErrorStream(true)
            .redirectInput(ProcessBuilder.Redirect.from(Path.of("/dev/null").toFile()))
            .start();
    BufferedReader console =
        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    Queue<String> said = new ConcurrentLinkedQueue<>();
    for (String line = console.readLine(); line != null; line = console.readLine()) {
      said.add(line);
      if (line.contains(OPEN)) {
        // What it says later must be taken from it, or it waits for ever to say more.
        Thread.ofVirtual().start(() -> console.lines().forEach(said::add));
        return new ValidatingProxy(process, URI.create("http://127.0.0.1:" + own));
      }
    }
    throw new IllegalStateException("The proxy did not open: " + String.join("\n", said));
  }

  /** Closed again at once, so that another program could take it; then the start fails. */
  private static int freePort() throws Exception {
    try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      return socket.getLocalPort();
    }
  }

  URI address() {
    return address;
  }

  @Override
  public void close() {
    process.destroy();
    process.onExit().orTimeout(10, TimeUnit.SECONDS).exceptionally(this::killed).join();
  }

  private Process killed(Throwable tooSlow) {
    return process.destroyForcibly();
  }
}
