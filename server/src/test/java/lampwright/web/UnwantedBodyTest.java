package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import lampwright.TestHouse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/**
 * A body that is refused before it is read: whoever sends it gets the answer, and is not cut off in
 * the middle of sending (RFC 9112, section 9.6, tells why the answer would be lost else).
 */
class UnwantedBodyTest {

  private static final int BYTES = 6_000_000;

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private static void send(OutputStream out, String head) throws IOException {
    out.write(
        (head + "Host: 127.0.0.1:" + house.port() + "\r\n\r\n")
            .getBytes(StandardCharsets.ISO_8859_1));
    out.flush();
  }

  private static String status(BufferedReader in) throws IOException {
    String first = String.valueOf(in.readLine());
    int length = 0;
    for (String line = in.readLine(); line != null && !line.isEmpty(); line = in.readLine()) {
      if (line.startsWith("Content-Length: ")) {
        length = Integer.parseInt(line.substring("Content-Length: ".length()));
      }
    }
    assertEquals(length, in.skip(length));
    return first;
  }

  @Test
  void theAnswerComesBeforeTheBodyIsSentAndTheConnectionGoesOnAfterIt() throws IOException {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), house.port())) {
      socket.setSoTimeout(20_000);
      OutputStream out = socket.getOutputStream();
      BufferedReader in =
          new BufferedReader(
              new InputStreamReader(socket.getInputStream(), StandardCharsets.ISO_8859_1));
      send(
          out,
          "POST /api/studios/demo/imports HTTP/1.1\r\nAuthorization: Bearer nothing\r\n"
              + "Content-Type: application/zip\r\nContent-Length: "
              + BYTES
              + "\r\n");
      out.write(new byte[BYTES / 10]);
      out.flush();
      assertEquals("HTTP/1.1 401 Unauthorized", status(in));
      out.write(new byte[BYTES - BYTES / 10]);
      send(out, "GET /health/live HTTP/1.1\r\n");
      assertEquals("HTTP/1.1 200 OK", status(in));
    }
  }

  @Test
  void whoAsksWhetherToSendItIsToldNotTo() throws IOException {
    RawAnswer answer =
        RawAnswer.to(
            house.port(),
            String.join(
                "\r\n",
                "POST /api/studios/demo/imports HTTP/1.1",
                "Authorization: Bearer nothing",
                "Expect: 100-continue",
                "Content-Type: application/zip",
                "Content-Length: " + BYTES,
                ""));
    assertEquals(401, answer.status(), answer.toString());
  }
}
