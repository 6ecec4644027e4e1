package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.SocketException;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import lampwright.TestHouse;
import lampwright.Visitor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the door does with bodies, good and hostile. */
class BodiesTest {

  private static final int MIB = 1 << 20;

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "{",
        "{\"email\":}",
        "{\"email\":NaN}",
        "{\"email\":1e999}",
        "{\"email\":\"a\",\"email\":\"b\"}",
        "{} {}",
        "{\"email\":\"\\u0000\"}",
        "{'email':'a'}"
      })
  void whatIsNotJsonIsRefusedWithAReason(String body) {
    HttpResponse<String> answer = house.visitor().post("/api/session", body);
    assertEquals(400, answer.statusCode(), answer.body());
    assertEquals("/problems/not-readable", Visitor.object(answer).get("type"));
  }

  @Test
  void aSyntaxErrorIsToldItsPlace() {
    HttpResponse<String> answer = house.visitor().post("/api/session", "{\n  \"email\": }");
    assertTrue(
        String.valueOf(Visitor.object(answer).get("detail")).contains("Line 2"), answer.body());
  }

  @Test
  void deepNestingIsRefusedCheaply() {
    String deep = "[".repeat(100_000) + "]".repeat(100_000);
    assertEquals(400, house.visitor().post("/api/session", deep).statusCode());
  }

  @Test
  void brokenUtf8IsRefused() {
    byte[] broken = "{\"email\":\"a\"}".getBytes(StandardCharsets.UTF_8);
    broken[10] = (byte) 0xff;
    HttpResponse<String> answer =
        house
            .visitor()
            .with("Content-Type", "application/json")
            .send("POST", "/api/session", BodyPublishers.ofByteArray(broken));
    assertEquals(400, answer.statusCode());
    assertTrue(answer.body().contains("UTF-8"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"text/plain", "application/json; charset=latin1", "application/xml"})
  void anotherFormatIsToldWhichIsRead(String type) {
    HttpResponse<String> answer =
        house
            .visitor()
            .with("Content-Type", type)
            .send("POST", "/api/session", BodyPublishers.ofString("{}"));
    assertEquals(415, answer.statusCode());
    assertEquals("application/json", answer.headers().firstValue("Accept-Post").orElseThrow());
  }

  @Test
  void aWrongDocumentIsToldEachPlace() {
    HttpResponse<String> answer =
        house.visitor().post("/api/session", "{\"email\":1,\"mail\":\"a\"}");
    assertEquals(422, answer.statusCode());
    for (String pointer : new String[] {"/email", "/mail", "/password"}) {
      assertTrue(answer.body().contains("\"pointer\":\"" + pointer + "\""), answer.body());
    }
  }

  @Test
  void aBodyOfOneMebibyteIsReadAndALargerOneIsNot() {
    String most = "\"" + "a".repeat(MIB - 2) + "\"";
    assertTrue(house.visitor().post("/api/session", most).statusCode() != 413);
    assertEquals(413, house.visitor().post("/api/session", most + " ").statusCode());
  }

  @Test
  void aBodyThatSaysItIsHugeIsRefusedUnread() throws IOException {
    assertRefusedEarly("Content-Length: 52428800\r\n", "");
  }

  @Test
  void aBodyInChunksWithoutEndIsRefusedAtTheBound() throws IOException {
    assertRefusedEarly("Transfer-Encoding: chunked\r\n", "10000\r\n");
  }

  /** Sends up to 50 MB, and stops when the server will not have more. */
  private static void assertRefusedEarly(String length, String chunk) throws IOException {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), house.port())) {
      socket.setSoTimeout(20_000);
      OutputStream out = socket.getOutputStream();
      out.write(
          ("POST /api/session HTTP/1.1\r\nHost: 127.0.0.1\r\nContent-Type: application/json\r\n"
                  + length
                  + "\r\n")
              .getBytes(StandardCharsets.ISO_8859_1));
      InputStream in = socket.getInputStream();
      byte[] part = "a".repeat(0x10000).getBytes(StandardCharsets.ISO_8859_1);
      long sent = 0;
      try {
        while (sent < 50 * MIB && in.available() == 0) {
          out.write(chunk.getBytes(StandardCharsets.ISO_8859_1));
          out.write(part);
          out.write(chunk.isEmpty() ? new byte[0] : new byte[] {'\r', '\n'});
          sent += part.length;
        }
      } catch (SocketException closed) {
        // The server may close while we still write; its answer is there all the same.
      }
      RawAnswer answer = RawAnswer.read(in);
      assertEquals(413, answer.status(), answer.toString());
      assertTrue(answer.head().contains("application/problem+json"));
      assertTrue(answer.head().toLowerCase(Locale.ROOT).contains("connection: close"));
      assertTrue(sent < 20 * MIB, sent + " bytes were taken");
    }
  }
}
