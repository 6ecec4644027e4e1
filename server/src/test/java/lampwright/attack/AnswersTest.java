package lampwright.attack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.read.ListAppender;
import java.io.IOException;
import java.net.http.HttpHeaders;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import lampwright.RouteWalk;
import lampwright.TestHouse;
import lampwright.Visitor;
import lampwright.web.RawAnswer;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slf4j.LoggerFactory;

/**
 * What every answer tells a browser, and that nobody writes into its head or into the log (Web
 * Security Testing Guide, CONF-14, CLNT-09 and INPV-15).
 */
class AnswersTest {

  private static final String OWNER = "owner@demo.example";

  @RegisterExtension static final AttackedHouse house = new AttackedHouse();

  /** What is missing of what each answer must say, by the OWASP Secure Headers Project. */
  private static List<String> lacks(String where, HttpHeaders headers) {
    List<String> lacks = new ArrayList<>();
    String policy = headers.firstValue("Content-Security-Policy").orElse("");
    for (String part :
        List.of("default-src 'none'", "base-uri 'none'", "frame-ancestors 'none'", "form-action")) {
      if (!policy.contains(part)) {
        lacks.add(where + ": " + part);
      }
    }
    if (policy.contains("unsafe") || policy.contains("*")) {
      lacks.add(where + ": " + policy);
    }
    for (String[] header :
        new String[][] {
          {"X-Content-Type-Options", "nosniff"},
          // Where the address itself opens something, it is told to nobody, ourselves included.
          {"Referrer-Policy", where.contains("/shared/") ? "no-referrer" : "same-origin"},
          {"Permissions-Policy", "camera=(), geolocation=(), microphone=(), payment=(), usb=()"},
          {"Cross-Origin-Opener-Policy", "same-origin"},
          {"Cross-Origin-Resource-Policy", "same-origin"}
        }) {
      if (!headers.allValues(header[0]).equals(List.of(header[1]))) {
        lacks.add(where + ": " + header[0] + " " + headers.allValues(header[0]));
      }
    }
    for (String never :
        List.of("Access-Control-Allow-Origin", "Server", "X-Powered-By", "Content-Location")) {
      if (headers.firstValue(never).isPresent()) {
        lacks.add(where + ": " + never);
      }
    }
    String type = headers.firstValue("Content-Type").orElse("");
    if (type.startsWith("text/") && !type.toLowerCase(Locale.ROOT).contains("charset=utf-8")) {
      lacks.add(where + ": " + type);
    }
    return lacks;
  }

  @Test
  void everyAnswerTellsTheBrowserWhatNotToDo() {
    Visitor owner = house.signedIn(OWNER).with("Accept", "text/html, */*");
    List<String> lacks = new ArrayList<>();
    for (RouteWalk.Step step : house.routes()) {
      String path = house.path(step.template());
      if (!step.changes()) {
        HttpResponse<byte[]> answer = owner.bytes(path);
        lacks.addAll(lacks(step + " " + answer.statusCode(), answer.headers()));
      } else {
        // Without its proof: what is refused says the same.
        HttpResponse<String> refused = owner.with("X-CSRF-Token", "").post(path, "{}");
        lacks.addAll(lacks(step + " " + refused.statusCode(), refused.headers()));
      }
    }
    String style =
        Jsoup.parse(owner.get("/preferences").body()).select("link[rel=stylesheet]").attr("href");
    for (String path :
        List.of(style, "/nothing", "/api/nothing", "/api/studios?q=%00", "/%C3%28")) {
      HttpResponse<byte[]> answer = house.stranger().with("Accept", "*/*").bytes(path);
      lacks.addAll(lacks(path, answer.headers()));
    }
    assertEquals(List.of(), lacks, String.join("\n", lacks));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "GET /%zz HTTP/1.1\r\n",
        "GET / HTTP/9.9\r\n",
        "GET /a b HTTP/1.1\r\n",
        "BROKEN\r\n",
        "GET /x HTTP/1.1\r\nX Bad: 1\r\n",
        "GET /sign-in HTTP/1.1\r\nX-Long: aaaa\u0001\r\n"
      })
  void whatIsTooBrokenToBeRoutedIsAnsweredUnderTheSamePolicy(String start) throws IOException {
    RawAnswer answer = RawAnswer.to(house.port(), start);
    assertTrue(answer.status() >= 400 && answer.status() < 600, answer.toString());
    assertTrue(answer.head().contains("Content-Security-Policy: default-src 'none'"), start);
    assertTrue(answer.head().contains("X-Content-Type-Options: nosniff"), answer.head());
    assertFalse(answer.head().toLowerCase(Locale.ROOT).contains("jetty"), answer.toString());
    assertFalse(answer.body().contains("Exception"), answer.body());
  }

  @Test
  void nothingThatSomebodySentIsAPageOfOurs() {
    Visitor owner = house.withToken(OWNER);
    String picture = house.path("/api/studios/{studio}/setups/{setup}/pictures/{picture}");
    for (String below : List.of("/file", "/original", "/clean", "/thumbnail", "/views/small")) {
      HttpResponse<byte[]> answer = owner.bytes(picture + below);
      String type = answer.headers().firstValue("Content-Type").orElse("");
      assertTrue(answer.statusCode() == 404 || type.startsWith("image/"), below + " " + type);
    }
    // What is asked for as a page is none: the type is ours, whatever was sent or is asked for.
    HttpResponse<byte[]> page = owner.with("Accept", "text/html").bytes(picture);
    assertTrue(page.headers().firstValue("Content-Type").orElse("").startsWith("application/json"));
  }

  private static final String BREAK = "a\r\nX-Planted: yes\r\n\r\n<script>";

  @Test
  void noTextEndsALineOfAHead() {
    Visitor owner = house.withToken(OWNER);
    String title = "Broken \\\"; filename=evil.html\\r\\nX-Planted: yes\\u0085\\u2028";
    HttpResponse<String> made =
        owner.post(
            AttackedHouse.STUDIO + "/setups",
            ("{\"title\":\"%s\",\"exposure\":{\"f_number\":5.6,\"time\":\"1/125\",\"iso\":100},"
                    + "\"lights\":[]}")
                .formatted(title));
    List<HttpResponse<byte[]>> answers = new ArrayList<>();
    if (made.statusCode() == 201) {
      String setup = made.headers().firstValue("Location").orElseThrow();
      answers.add(owner.bytes(setup + "/sheet.pdf"));
      answers.add(owner.bytes(setup + "/archive"));
      owner.with("If-Match", "*").delete(setup);
    }
    String encoded = BREAK.replace("\r", "%0d").replace("\n", "%0a").replace(" ", "%20");
    encoded = encoded.replace("<", "%3C").replace(">", "%3E");
    for (String path :
        List.of(
            "/sign-in?next=/" + encoded,
            "/api/studios/" + encoded,
            AttackedHouse.STUDIO + "/setups?q=" + encoded,
            AttackedHouse.STUDIO + "/setups?cursor=" + encoded,
            AttackedHouse.STUDIO + "/gear/export?format=csv&kind=" + encoded,
            "/studios/demo/setups/" + encoded + "/takes/" + encoded,
            "/problems/" + encoded,
            "/" + encoded)) {
      answers.add(owner.bytes(path));
    }
    for (HttpResponse<byte[]> answer : answers) {
      assertTrue(answer.statusCode() < 500, answer.uri().toString());
      assertTrue(answer.headers().firstValue("X-Planted").isEmpty(), answer.uri().toString());
      String name = answer.headers().firstValue("Content-Disposition").orElse("");
      assertFalse(name.contains("evil.html\"") || name.contains(";filename"), name);
      assertTrue(
          name.isEmpty() || name.matches("(attachment|inline); filename=\"[a-zA-Z0-9._-]+\""),
          name);
    }
    HttpResponse<String> in =
        house
            .stranger()
            .postForm(
                "/sign-in",
                "email=owner%40demo.example&next=/"
                    + encoded
                    + "&password="
                    + TestHouse.PASSWORD.replace(' ', '+'));
    assertEquals("/", in.headers().firstValue("Location").orElseThrow());
    assertTrue(in.headers().firstValue("X-Planted").isEmpty());
  }

  @Test
  void theLogHasOneLineARequestAndNothingOfWhatSomebodyWrote() {
    Logger log = (Logger) LoggerFactory.getLogger("lampwright");
    Level before = log.getLevel();
    ListAppender<ILoggingEvent> lines = new ListAppender<>();
    lines.start();
    log.setLevel(Level.INFO);
    log.addAppender(lines);
    String session;
    String token;
    try {
      Visitor owner = house.signedIn(OWNER);
      session = owner.header("Cookie").split("=", 2)[1];
      token = house.withToken(OWNER).header("Authorization").substring("Bearer ".length());
      owner.get(AttackedHouse.STUDIO + "/setups?q=planted-search%0d%0aFORGED%20line");
      owner.get("/nothing/%0a%0dFORGED/planted-path");
      owner.with("User-Agent", "planted-agent").get("/api/session?token=" + token);
      owner.post(AttackedHouse.STUDIO + "/setups", "{\"title\":\"planted-body\"}");
      house
          .stranger()
          .post(
              "/api/session",
              "{\"email\":\"planted-mail@demo.example\",\"password\":\"planted-pass\"}");
      house.stranger().get("/first-owner/planted-secret");
    } finally {
      log.detachAppender(lines);
      log.setLevel(before);
    }
    // Other attacks may go on at the same time, so there may be more.
    List<ILoggingEvent> seen = List.copyOf(lines.list);
    assertTrue(seen.size() >= 6, seen.toString());
    for (ILoggingEvent line : seen) {
      String text = line.getFormattedMessage();
      assertTrue(
          !line.getLoggerName().endsWith("requests")
              || text.matches(
                  "[A-Z]+ (/\\S*|\\(no route\\)) [1-5]\\d\\d \\d+ ms \\d+ bytes ([a-z0-9]{4,32}|-)"
                      + " ([a-z0-9]{4,32}|-)"),
          text);
      assertTrue(
          !line.getLoggerName().endsWith("requests")
              || line.getMDCPropertyMap().getOrDefault("request", "").matches("[0-9a-z]{10}"),
          text);
      for (String secret :
          List.of("planted-", "FORGED", "@demo", session, token, TestHouse.PASSWORD, "198.51.")) {
        assertFalse(text.contains(secret), text);
      }
    }
  }
}
