package lampwright.web;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;

/**
 * The answer to a request that is written byte by byte, since a good HTTP client would not send it.
 */
public record RawAnswer(int status, String head, String body) {

  private static final int PATIENCE_MILLIS = 20_000;

  public static RawAnswer to(int port, String start) throws IOException {
    return to(port, start, "127.0.0.1:" + port);
  }

  public static RawAnswer to(int port, String start, String host) throws IOException {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
      socket.setSoTimeout(PATIENCE_MILLIS);
      String request = start + "Host: " + host + "\r\nConnection: close\r\n\r\n";
      socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
      return read(socket.getInputStream());
    }
  }

  /** Reads an answer up to the end of its connection. */
  public static RawAnswer read(InputStream in) throws IOException {
    String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    int end = text.indexOf("\r\n\r\n");
    return new RawAnswer(
        Integer.parseInt(text.split(" ", 3)[1]), text.substring(0, end), text.substring(end + 4));
  }
}
