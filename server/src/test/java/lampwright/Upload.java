package lampwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A picture on its way to a server, which stops in the middle until it is told to go on. */
public final class Upload implements AutoCloseable {

  private static final int PATIENCE_SECONDS = 30;

  private final Socket socket;
  private final byte[] rest;

  private Upload(Socket socket, byte[] rest) {
    this.socket = socket;
    this.rest = rest;
  }

  /** Sends a whole picture. */
  public static HttpResponse<String> whole(Visitor author, String pictures, byte[] file) {
    return author
        .with("Content-Type", "image/jpeg")
        .send("POST", pictures + "?kind=final", BodyPublishers.ofByteArray(file));
  }

  /** Sends the first half of a file. */
  public static Upload begin(URI server, Visitor author, String pictures, byte[] file)
      throws IOException {
    return begin(server, author, pictures, file, file.length);
  }

  /** The same, but tells another length. */
  public static Upload begin(
      URI server, Visitor author, String pictures, byte[] file, long toldLength)
      throws IOException {
    Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.getPort());
    socket.setSoTimeout((int) TimeUnit.SECONDS.toMillis(PATIENCE_SECONDS));
    String head =
        "POST %s?kind=final HTTP/1.1\r\nHost: 127.0.0.1:%d\r\nAuthorization: %s\r\n"
                .formatted(pictures, server.getPort(), author.header("Authorization"))
            + "Content-Type: image/jpeg\r\nContent-Length: %d\r\nConnection: close\r\n\r\n"
                .formatted(toldLength);
    socket.getOutputStream().write(head.getBytes(StandardCharsets.ISO_8859_1));
    int half = file.length / 2;
    socket.getOutputStream().write(file, 0, half);
    socket.getOutputStream().flush();
    byte[] rest = new byte[file.length - half];
    System.arraycopy(file, half, rest, 0, rest.length);
    return new Upload(socket, rest);
  }

  /** Waits until bytes of it lie in a folder of pictures. */
  public void awaitFileIn(Path pictures) {
    await(() -> arriving(pictures).stream().anyMatch(file -> size(file) > 0), "Nothing arrives");
  }

  /** Waits until nothing arrives in a folder of pictures. */
  public static void awaitNothingIn(Path pictures) {
    await(() -> arriving(pictures).isEmpty(), "Something is left: " + arriving(pictures));
  }

  private interface State {
    boolean holds();
  }

  private static void await(State state, String otherwise) {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
    while (!state.holds()) {
      assertTrue(System.nanoTime() < end, otherwise);
      Thread.onSpinWait();
    }
  }

  private static long size(Path file) {
    try {
      return Files.size(file);
    } catch (IOException e) {
      return 0;
    }
  }

  /** Files that are arriving, without the servers' locks. */
  private static List<Path> arriving(Path pictures) {
    try (Stream<Path> tree = Files.walk(pictures)) {
      return tree.filter(file -> file.toString().contains("arriving"))
          .filter(Files::isRegularFile)
          .filter(file -> !file.toString().endsWith(".lock"))
          .toList();
    } catch (NoSuchFileException e) {
      return List.of();
    } catch (IOException | UncheckedIOException e) {
      // A folder went while it was looked at; whoever waits looks again.
      return List.of(pictures);
    }
  }

  /** The status of the answer to what was sent so far. */
  public int status() throws IOException {
    return Integer.parseInt(read().split(" ", 3)[1]);
  }

  /** Sends the rest, and tells where the picture is. */
  public String finish() throws IOException {
    String answer = answer();
    assertEquals("201", answer.split(" ", 3)[1], answer);
    Matcher location = Pattern.compile("(?i)\r\nLocation: (\\S+)").matcher(answer);
    assertTrue(location.find(), answer);
    return location.group(1);
  }

  private String answer() throws IOException {
    try (socket) {
      socket.getOutputStream().write(rest);
      socket.getOutputStream().flush();
      return read();
    }
  }

  private String read() throws IOException {
    return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
  }

  /** Hangs up. */
  @Override
  public void close() throws IOException {
    socket.close();
  }
}
