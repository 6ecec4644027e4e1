package lampwright.benchmarks.load;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * One connection that asks by HTTP/1.1 and reads the answer to its end, and does as little else as
 * possible: a client that is itself slow would be measured with the server.
 */
final class Connection implements AutoCloseable {

  private static final int LONGEST_LINE = 16 * 1024;

  private final int port;
  private Socket socket;
  private InputStream in;

  Connection(int port) throws IOException {
    this.port = port;
    socket = new Socket(InetAddress.getLoopbackAddress(), port);
    socket.setTcpNoDelay(true);
    in = new BufferedInputStream(socket.getInputStream(), 64 * 1024);
  }

  /** The text of a GET, with the lines of its header. */
  static byte[] request(String path, String headers) {
    return ("GET " + path + " HTTP/1.1\r\nHost: 127.0.0.1\r\n" + headers + "\r\n")
        .getBytes(StandardCharsets.ISO_8859_1);
  }

  /** Asks and reads the whole answer; says its status. */
  int ask(byte[] request) throws IOException {
    socket.getOutputStream().write(request);
    int status = Integer.parseInt(line().split(" ", -1)[1]);
    long length = status == 304 || status == 204 ? 0 : -1;
    boolean chunked = false;
    boolean closes = false;
    for (String line = line(); !line.isEmpty(); line = line()) {
      String lower = line.toLowerCase(Locale.ROOT);
      if (lower.startsWith("content-length:") && length < 0) {
        length = Long.parseLong(lower.substring(15).strip());
      } else if (lower.startsWith("transfer-encoding:")) {
        chunked = lower.contains("chunked");
      } else if (lower.startsWith("connection:")) {
        closes = lower.contains("close");
      }
    }
    if (chunked) {
      for (long size = chunk(); size > 0; size = chunk()) {
        in.skipNBytes(size + 2);
      }
      var _ = line();
    } else {
      in.skipNBytes(Math.max(0, length));
    }
    if (closes) {
      renew();
    }
    return status;
  }

  /** Begins anew, after an answer that ended the connection or none at all. */
  void renew() throws IOException {
    socket.close();
    socket = new Socket(InetAddress.getLoopbackAddress(), port);
    socket.setTcpNoDelay(true);
    in = new BufferedInputStream(socket.getInputStream(), 64 * 1024);
  }

  private long chunk() throws IOException {
    return Long.parseLong(line().strip(), 16);
  }

  private String line() throws IOException {
    StringBuilder line = new StringBuilder();
    for (int c = in.read(); c != '\n'; c = in.read()) {
      if (c < 0 || line.length() > LONGEST_LINE) {
        throw new IOException("The answer ended in the middle.");
      }
      if (c != '\r') {
        line.append((char) c);
      }
    }
    return line.toString();
  }

  @Override
  public void close() throws IOException {
    socket.close();
  }
}
