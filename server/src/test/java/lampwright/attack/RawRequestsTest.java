package lampwright.attack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.zip.GZIPOutputStream;
import lampwright.Visitor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Requests that a good client would not send: two lengths at once (request smuggling), bodies that
 * are bombs, thousands of fields, and paths that climb (Web Security Testing Guide, INPV-15 and
 * ATHZ-01; framing by RFC 9112, section 6.3).
 */
class RawRequestsTest {

  @RegisterExtension static final AttackedHouse house = new AttackedHouse();

  private static final String NEXT = "GET /health/live HTTP/1.1\r\nHost: localhost\r\n\r\n";

  private static String answers(String request) throws IOException {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), house.port())) {
      socket.setSoTimeout(10_000);
      socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
      socket.shutdownOutput();
      return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static int count(String text, String what) {
    return text.split(what, -1).length - 1;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Content-Length: 2\r\nContent-Length: 40\r\n",
        "Content-Length: 2, 40\r\n",
        "Content-Length: 2\r\nTransfer-Encoding: chunked\r\n",
        "Transfer-Encoding: chunked\r\nContent-Length: 2\r\n",
        "Transfer-Encoding: chunked\r\nTransfer-Encoding: identity\r\nContent-Length: 2\r\n",
        "Transfer-Encoding: xchunked\r\n",
        "Transfer-Encoding: chunked, identity\r\n",
        "Transfer-Encoding : chunked\r\n",
        "Content-Length: +2\r\n",
        "Content-Length: -1\r\n",
        "Content-Length: 0x2\r\n",
        "Content-Length: 99999999999999999999\r\n",
        "Content-Length: 2\r\n Content-Length: 40\r\n"
      })
  void aRequestWithADoubtfulLengthIsRefusedAndNothingIsReadAfterIt(String lengths)
      throws IOException {
    String all =
        answers(
            "POST /api/session HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\n"
                + lengths
                + "\r\n0\r\n\r\n"
                + NEXT);
    assertTrue(all.startsWith("HTTP/1.1 4") || all.startsWith("HTTP/1.1 501"), all);
    assertEquals(0, count(all, "HTTP/1.1 200"), all);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "ffffffffffffffff\r\n",
        "-1\r\n",
        "5;a=\"\n\"\r\nab\r\n",
        "g\r\n",
        "1\r\nabc\r\n0\r\n\r\n"
      })
  void aBrokenChunkIsRefusedAndNothingIsReadAfterIt(String chunks) throws IOException {
    String all =
        answers(
            "POST /api/session HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\n"
                + "Transfer-Encoding: chunked\r\n\r\n"
                + chunks
                + NEXT);
    assertEquals(0, count(all, "HTTP/1.1 200"), all);
    assertFalse(all.startsWith("HTTP/1.1 5"), all);
  }

  @Test
  void anHonestRequestAfterAnHonestOneIsAnswered() throws IOException {
    assertEquals(2, count(answers(NEXT + NEXT), "HTTP/1.1 200"));
  }

  @Test
  void twoHostsOrNoneAreRefused() throws IOException {
    for (String hosts :
        new String[] {
          "",
          "Host: localhost\r\nHost: elsewhere.example\r\n",
          "Host: elsewhere.example\r\n",
          "Host: localhost@elsewhere.example\r\n",
          "Host: localhost, elsewhere.example\r\n"
        }) {
      String all = answers("GET /health/live HTTP/1.1\r\n" + hosts + "Connection: close\r\n\r\n");
      assertTrue(all.startsWith("HTTP/1.1 4"), hosts + all);
    }
    String absolute =
        answers(
            "GET http://elsewhere.example/health/live HTTP/1.1\r\nHost: localhost\r\nConnection:"
                + " close\r\n\r\n");
    assertTrue(absolute.startsWith("HTTP/1.1 4"), absolute);
  }

  @Test
  void aPackedBodyIsNeverUnpacked() throws IOException {
    ByteArrayOutputStream bomb = new ByteArrayOutputStream();
    try (GZIPOutputStream packed = new GZIPOutputStream(bomb)) {
      byte[] nothing = new byte[1 << 16];
      for (int i = 0; i < 1600; i++) {
        packed.write(nothing);
      }
    }
    assertTrue(bomb.size() < 1 << 20, "100 MiB of nothing packed");
    HttpResponse<String> answer =
        house
            .stranger()
            .with("Content-Type", "application/json")
            .with("Content-Encoding", "gzip")
            .send("POST", "/api/session", BodyPublishers.ofByteArray(bomb.toByteArray()));
    assertTrue(answer.statusCode() == 400 || answer.statusCode() == 415, answer.body());
  }

  @Test
  void thousandsOfFieldsAndParametersAreRefusedOrIgnoredButCostNothing() {
    Visitor owner = house.withToken("owner@demo.example");
    StringBuilder fields = new StringBuilder("{\"title\":\"a\"");
    StringBuilder form = new StringBuilder("email=a");
    for (int i = 0; i < 40_000; i++) {
      fields.append(",\"f").append(i).append("\":1");
      form.append("&f").append(i).append("=1");
    }
    HttpResponse<String> json =
        owner.post(AttackedHouse.STUDIO + "/setups", fields.append('}').toString());
    assertTrue(json.statusCode() == 422 || json.statusCode() == 400, json.statusCode() + "");
    assertTrue(json.body().length() < 100_000, json.body().length() + " characters of refusal");
    int posted = house.stranger().postForm("/sign-in", form.toString()).statusCode();
    assertTrue(posted < 500, posted + "");
    String query = "?q=a" + "&mood=b".repeat(1500);
    int found = owner.get(AttackedHouse.STUDIO + "/setups" + query).statusCode();
    assertTrue(found == 200 || found == 422 || found == 414, found + "");
    String ranges = "bytes=" + "0-1,".repeat(1000) + "0-1";
    int ranged =
        owner
            .with("Range", ranges)
            .bytes(house.path("/api/studios/{studio}/setups/{setup}/pictures/{picture}/file"))
            .statusCode();
    assertTrue(ranged < 500, ranged + "");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "../../../../etc/passwd",
        "..%2f..%2f..%2f..%2fetc%2fpasswd",
        "%2e%2e/%2e%2e/%2e%2e/etc/passwd",
        "..%252f..%252fetc%252fpasswd",
        "..%5c..%5cetc%5cpasswd",
        "..\\..\\etc\\passwd",
        "..%c0%af..%c0%afetc/passwd",
        "%c0%ae%c0%ae/%c0%ae%c0%ae/etc/passwd",
        "....//....//etc/passwd",
        "..;/..;/etc/passwd",
        "%00",
        "style.css%00.png",
        "/etc/passwd",
        "file:///etc/passwd",
        "../lampwright.properties",
        "../../logback.xml",
        "%2e%2e%2f%2e%2e%2flogback.xml",
        ".git/config",
        "C:%5cwindows%5cwin.ini"
      })
  void noPathClimbsOutOfWhatIsGivenOut(String climbing) throws IOException {
    String authorization = house.withToken("owner@demo.example").header("Authorization");
    for (String below :
        new String[] {
          "/assets/0/",
          "/assets/",
          "/api/schemas/",
          "/",
          "/problems/",
          house.path("/api/studios/{studio}/setups/{setup}/pictures/"),
          "/api/studios/demo/imports/",
          "/api/studios/demo/setups/"
        }) {
      String answer =
          answers(
              "GET "
                  + below
                  + climbing
                  + " HTTP/1.1\r\nHost: localhost\r\nAuthorization: "
                  + authorization
                  + "\r\nConnection: close\r\n\r\n");
      assertTrue(
          answer.startsWith("HTTP/1.1 4") || answer.startsWith("HTTP/1.1 303"), below + answer);
      assertFalse(answer.contains("root:") || answer.contains("<configuration>"), below + answer);
    }
  }

  @Test
  void aSecretThatDiffersInCaseAloneIsAnotherOneOnTheSameConnectionToo() throws IOException {
    String cookie = house.signedIn("owner@demo.example").header("Cookie");
    String name = cookie.substring(0, cookie.indexOf('=') + 1);
    String secret = cookie.substring(name.length());
    int letter = 0;
    while (!Character.isLetter(secret.charAt(letter))) {
      letter++;
    }
    char swapped =
        Character.isUpperCase(secret.charAt(letter))
            ? Character.toLowerCase(secret.charAt(letter))
            : Character.toUpperCase(secret.charAt(letter));
    String other = secret.substring(0, letter) + swapped + secret.substring(letter + 1);
    String asking = "GET /api/session HTTP/1.1\r\nHost: localhost\r\nCookie: " + name;
    String all = answers((asking + "%s\r\n\r\n").repeat(3).formatted(secret, other, secret));
    assertEquals(2, count(all, "HTTP/1.1 200"), all);
    assertEquals(1, count(all, "HTTP/1.1 401"), all);
  }
}
