package lampwright.browser;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * The way from a phone to a server, at an address of its own: bytes as they come, until it is cut.
 * A service worker's requests go this way too, which the browser's own switch does not reach.
 */
final class Signal implements AfterAllCallback {

  /** What becomes of what is sent. */
  enum State {
    THERE,
    /** The server gets everything that is sent to be kept, and nobody gets its answer. */
    LOSES_ANSWERS,
    NONE
  }

  private final Set<Socket> sockets = ConcurrentHashMap.newKeySet();
  private final ServerSocket door;
  private volatile State state = State.THERE;
  private volatile int port;

  Signal() {
    try {
      door = new ServerSocket();
      door.bind(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Leads to a server. */
  void leadTo(int serverPort) {
    port = serverPort;
    Thread.ofVirtual().start(this::welcome);
  }

  String address(String path) {
    return "http://127.0.0.1:" + door.getLocalPort() + path;
  }

  /** Changes it; what is under way is broken off. */
  void become(State next) {
    state = next;
    sockets.forEach(Signal::close);
    sockets.clear();
  }

  @Override
  public void afterAll(ExtensionContext context) throws IOException {
    become(State.NONE);
    door.close();
  }

  private void welcome() {
    while (!door.isClosed()) {
      try {
        Socket phone = door.accept();
        if (state == State.NONE) {
          close(phone);
          continue;
        }
        Socket server = new Socket(InetAddress.getLoopbackAddress(), port);
        sockets.add(phone);
        sockets.add(server);
        if (state == State.NONE) {
          // It was lost since they came, perhaps before they were among those that are broken off.
          close(phone);
          close(server);
          continue;
        }
        AtomicBoolean sends = new AtomicBoolean();
        Thread.ofVirtual().start(() -> carry(phone, server, asked -> hear(asked, sends)));
        Thread.ofVirtual().start(() -> carry(server, phone, _ -> loseIf(sends.get(), server)));
      } catch (IOException _) {
        // The door is closed, or the server went with its test.
      }
    }
  }

  /** What comes after a head, a body's bytes, belongs to the same request. */
  private static void hear(String asked, AtomicBoolean sends) {
    if (asked.matches("(?s)[A-Z]{3,7} /.*")) {
      sends.set(asked.startsWith("POST "));
    }
  }

  private void loseIf(boolean isAnswerToSent, Socket server) {
    if (isAnswerToSent && state == State.LOSES_ANSWERS) {
      close(server);
      throw new UncheckedIOException(new IOException("Lost."));
    }
  }

  private void carry(Socket from, Socket to, Consumer<String> heard) {
    try (from;
        to) {
      InputStream in = from.getInputStream();
      OutputStream out = to.getOutputStream();
      byte[] bytes = new byte[16_384];
      for (int many = in.read(bytes); many >= 0; many = in.read(bytes)) {
        heard.accept(new String(bytes, 0, many, StandardCharsets.ISO_8859_1));
        if (state == State.NONE) {
          return;
        }
        out.write(bytes, 0, many);
      }
    } catch (IOException | UncheckedIOException _) {
      // Cut.
    }
  }

  private static void close(Socket socket) {
    try {
      socket.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
