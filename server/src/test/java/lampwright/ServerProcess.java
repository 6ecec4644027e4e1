package lampwright;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;

/** The server as a process of its own with its own PostgreSQL, as a person starts it. */
final class ServerProcess implements AutoCloseable {

  private static final long PATIENCE_SECONDS = 120;
  private static final String LOG = "server.log";
  private static final String OPEN = "Lampwright is open at ";

  private final Process process;
  private final URI address;

  private ServerProcess(Process process, URI address) {
    this.process = process;
    this.address = address;
  }

  /**
   * Starts it on a data folder, with a few setups of the demo, and waits until it says where it is
   * open.
   */
  static ServerProcess start(Path data) throws IOException {
    return start(data, Map.of());
  }

  /**
   * Starts one where a server was before it, and left a few setups of the demo.
   *
   * @param data where nothing is yet
   */
  static ServerProcess startAgain(Path data) throws IOException {
    ServerClasses.once().copyDataTo(data);
    return start(data);
  }

  /** Starts one with more settings. */
  static ServerProcess start(Path data, Map<String, String> settings) throws IOException {
    return start(data, settings, ServerClasses.once().command());
  }

  /** The same, called in a way of its own. */
  static ServerProcess start(Path data, Map<String, String> settings, List<String> command)
      throws IOException {
    Process process = launch(data, settings, command);
    List<String> said = new ArrayList<>();
    // The reader lives as long as the process; closing it would break the server's console.
    BufferedReader console =
        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    for (String line = console.readLine(); line != null; line = console.readLine()) {
      said.add(line);
      if (line.startsWith(OPEN)) {
        return new ServerProcess(process, URI.create(line.substring(OPEN.length())));
      }
    }
    throw new IllegalStateException(
        "The server did not open: " + said + Files.readString(data.resolveSibling(LOG)));
  }

  /**
   * Compares the index of a data folder with the database, as a process of its own.
   *
   * @return its exit code and what it said
   */
  static String checkIndex(Path data, Map<String, String> settings)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(ServerClasses.once().command());
    command.add("check-index");
    Process process = launch(data, settings, command);
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    return process.waitFor() + ": " + said.strip();
  }

  private static Process launch(Path data, Map<String, String> settings, List<String> command)
      throws IOException {
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().keySet().removeIf(key -> key.startsWith(Setting.PREFIX));
    builder
        .environment()
        .putAll(
            Map.of(
                "LAMPWRIGHT_DEMO", "few",
                "LAMPWRIGHT_MEANING", "false",
                "LAMPWRIGHT_DRAIN_SECONDS", "0",
                "LAMPWRIGHT_PORT", "0",
                "LAMPWRIGHT_DATA", data.toString()));
    builder.environment().putAll(settings);
    builder.redirectError(data.resolveSibling(LOG).toFile());
    return builder.start();
  }

  /** The demo's author, by a token. */
  Visitor author() {
    return member("author@demo.example");
  }

  /** A member of the demo, by a token. */
  Visitor member(String email) {
    Visitor visitor = new Visitor(address);
    HttpResponse<String> session =
        visitor.post(
            "/api/session", "{\"email\":\"" + email + "\",\"password\":\"four-heads-at-dusk\"}");
    String cookie = session.headers().firstValue("Set-Cookie").orElseThrow();
    HttpResponse<String> token =
        visitor
            .with("Cookie", cookie.substring(0, cookie.indexOf(';')))
            .with("X-CSRF-Token", Told.at(Visitor.object(session), "csrf_token").toString())
            .post("/api/tokens", "{\"name\":\"writer\"}");
    return visitor.with("Authorization", "Bearer " + Told.at(Visitor.object(token), "token"));
  }

  URI address() {
    return address;
  }

  /** Ends it as kill -9 does, in the middle of whatever it is at. */
  void kill() throws InterruptedException {
    process.destroyForcibly();
    if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
      throw new IllegalStateException("The server cannot be killed.");
    }
  }

  /** Its PostgreSQL's first process. */
  Optional<ProcessHandle> postgres() {
    try (Stream<ProcessHandle> children = process.descendants()) {
      return children
          .filter(child -> child.info().command().filter(c -> c.endsWith("/postgres")).isPresent())
          .min((one, other) -> Long.compare(one.pid(), other.pid()));
    }
  }

  /** Asks it to stop, as a service manager does, and tells its exit code. */
  int stop() throws InterruptedException {
    process.destroy();
    if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
      throw new IllegalStateException("The server does not stop.");
    }
    return process.exitValue();
  }

  /** Ends it with its PostgreSQL, so that nothing writes to the data folder any more. */
  @Override
  public void close() {
    Optional<ProcessHandle> postgres = postgres();
    process.destroy();
    try {
      process.onExit().get(PATIENCE_SECONDS, TimeUnit.SECONDS);
      if (postgres.isPresent()) {
        postgres.get().onExit().get(PATIENCE_SECONDS, TimeUnit.SECONDS);
      }
    } catch (ExecutionException | TimeoutException e) {
      process.destroyForcibly();
      throw new IllegalStateException("The server does not stop.", e);
    } catch (InterruptedException e) {
      process.destroyForcibly();
      Thread.currentThread().interrupt();
    }
  }
}
