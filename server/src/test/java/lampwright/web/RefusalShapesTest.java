package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import lampwright.RouteWalk;
import lampwright.TestHouse;
import lampwright.Visitor;
import lampwright.web.http.ProblemKind;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every refusal has one shape, whatever is refused and wherever. */
class RefusalShapesTest {

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  @Test
  void everyRouteForMembersRefusesStrangers() {
    List<String> wrong = new ArrayList<>();
    for (RouteWalk.Step step : RouteWalk.of(house)) {
      if (step.isForMembers()) {
        HttpResponse<String> answer =
            house.visitor().send(step.verb(), step.path("zzzz"), BodyPublishers.noBody());
        if (answer.statusCode() != 401 || !isShaped(answer, step)) {
          wrong.add(step + " -> " + answer.statusCode() + " " + answer.body());
        }
      }
    }
    assertEquals(List.of(), wrong);
  }

  @Test
  void everyRouteForMembersRefusesAWrongToken() {
    Visitor liar = house.visitor().with("Authorization", "Bearer not-a-token");
    for (RouteWalk.Step step : RouteWalk.of(house)) {
      if (step.isForMembers()) {
        assertEquals(
            401,
            liar.send(step.verb(), step.path("zzzz"), BodyPublishers.noBody()).statusCode(),
            step.toString());
      }
    }
  }

  @Test
  void everyChangeByCookieNeedsItsProof() {
    Visitor unproven = house.signedIn("owner@demo.example").with("X-CSRF-Token", "");
    List<String> wrong = new ArrayList<>();
    for (RouteWalk.Step step : RouteWalk.of(house)) {
      if (step.isForMembers() && step.changes()) {
        for (Visitor visitor : List.of(unproven, unproven.with("X-CSRF-Token", "AAAA"))) {
          HttpResponse<String> answer =
              visitor.send(step.verb(), step.path("zzzz"), BodyPublishers.noBody());
          if (answer.statusCode() != 403 || !isShaped(answer, step)) {
            wrong.add(step + " -> " + answer.statusCode());
          }
        }
      }
    }
    assertEquals(List.of(), wrong);
  }

  @Test
  void nothingThatAMemberSendsIsAFaultOfOurs() {
    Visitor owner = house.withToken("owner@demo.example");
    List<String> bodies = List.of("", "{", "[]", "{\"a\":\"\\u0000\"}", "{\"a\":1e999}", "null");
    List<String> wrong = new ArrayList<>();
    for (RouteWalk.Step step : RouteWalk.of(house)) {
      for (String id : List.of("zzzz", "demo", "..%252f", "%20", "a".repeat(300))) {
        for (String body : step.changes() ? bodies : List.of("")) {
          HttpResponse<String> answer =
              owner
                  .with("Content-Type", "application/json")
                  .with("Accept", step.isForPrograms() ? "application/json" : "text/html")
                  .send(step.verb(), step.path(id), BodyPublishers.ofString(body));
          boolean refused = answer.statusCode() >= 400;
          if (answer.statusCode() >= 500 || (refused && !isShaped(answer, step))) {
            wrong.add(step.path(id) + " " + body + " -> " + answer.statusCode());
          }
        }
      }
    }
    assertEquals(List.of(), wrong);
  }

  private static boolean isShaped(HttpResponse<String> answer, RouteWalk.Step step) {
    String type = answer.headers().firstValue("Content-Type").orElse("none");
    if (step.verb().equals("HEAD")) {
      return true;
    }
    if (!step.isForPrograms()) {
      return type.startsWith("text/html") && !Jsoup.parse(answer.body()).select("h1").isEmpty();
    }
    if (!type.equals("application/problem+json")) {
      return false;
    }
    Map<?, ?> problem = Visitor.object(answer);
    return problem.keySet().containsAll(List.of("type", "title", "status", "detail", "instance"))
        && Double.valueOf(answer.statusCode()).equals(problem.get("status"));
  }

  @Test
  void anUnknownAddressIsAProblemOrAPage() {
    HttpResponse<String> api = house.visitor().get("/api/nothing");
    assertEquals(404, api.statusCode());
    assertEquals("/problems/not-found", Visitor.object(api).get("type"));
    HttpResponse<String> page = house.visitor().get("/nothing");
    assertEquals(404, page.statusCode());
    assertEquals("There is nothing here", Jsoup.parse(page.body()).select("h1").text());
    HttpResponse<String> program = house.visitor().with("Accept", "application/json").get("/no");
    assertEquals("/problems/not-found", Visitor.object(program).get("type"));
  }

  @Test
  void aWrongMethodIsToldTheRightOnes() {
    HttpResponse<String> answer = house.visitor().put("/api/session", "{}");
    assertEquals(405, answer.statusCode());
    String allowed = answer.headers().firstValue("Allow").orElseThrow();
    for (String verb : List.of("GET", "HEAD", "POST", "DELETE")) {
      assertTrue(allowed.contains(verb), allowed);
    }
    assertEquals("/problems/method-not-allowed", Visitor.object(answer).get("type"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/api/tokens/%00",
        "/api/tokens/%zz",
        "/api/tokens/%c3%28",
        "/api/tokens/a%2fb",
        "/api/tokens/..%2f..%2fsession",
        "/api/studios?q=%00",
        "/api/studios?q=%ff",
        "/api//studios",
        "/api/;a=b/studios"
      })
  void aMalformedAddressIsAProblem(String path) throws Exception {
    RawAnswer answer = RawAnswer.to(house.port(), "GET " + path + " HTTP/1.1\r\n");
    assertTrue(answer.status() == 400 || answer.status() == 404, answer.toString());
    assertTrue(answer.head().contains("application/problem+json"), answer.toString());
    assertFalse(answer.body().contains("Exception"));
  }

  @Test
  void anAddressThatIsTooLongIsAProblem() throws Exception {
    RawAnswer answer =
        RawAnswer.to(house.port(), "GET /api/studios?q=" + "a".repeat(40_000) + " HTTP/1.1\r\n");
    assertEquals(414, answer.status(), answer.toString());
    assertTrue(answer.head().contains("application/problem+json"), answer.toString());
  }

  @Test
  void headersThatAreTooLargeAreAProblem() throws Exception {
    RawAnswer answer =
        RawAnswer.to(
            house.port(), "GET /api/studios HTTP/1.1\r\nX-Long: " + "a".repeat(40_000) + "\r\n");
    assertEquals(431, answer.status(), answer.toString());
    assertTrue(answer.head().contains("application/problem+json"), answer.toString());
  }

  @Test
  void aNameThatIsNotOursIsTurnedAway() throws Exception {
    RawAnswer other =
        RawAnswer.to(house.port(), "GET /health/live HTTP/1.1\r\n", "rebound.example");
    assertEquals(421, other.status(), other.toString());
    assertEquals(
        200, RawAnswer.to(house.port(), "GET /health/live HTTP/1.1\r\n", "localhost:1").status());
  }

  @ParameterizedTest
  @EnumSource(ProblemKind.class)
  void everyKindOfProblemIsExplainedAtItsAddress(ProblemKind kind) {
    HttpResponse<String> page = house.visitor().get(kind.type());
    assertEquals(200, page.statusCode());
    assertTrue(Jsoup.parse(page.body()).text().contains(kind.explanation()));
  }

  @Test
  void noAnswerLetsABrowserRunOrFrameWhatIsNotOurs() {
    for (String path : List.of("/sign-in", "/nothing", "/api/session", "/health/live")) {
      var headers = house.visitor().get(path).headers();
      String policy = headers.firstValue("Content-Security-Policy").orElseThrow();
      assertTrue(policy.startsWith("default-src 'none'; style-src 'self'; script-src 'self';"));
      assertTrue(policy.contains("frame-ancestors 'none'"));
      assertFalse(policy.contains("unsafe"));
      assertEquals("nosniff", headers.firstValue("X-Content-Type-Options").orElseThrow());
      assertEquals("no-store", headers.firstValue("Cache-Control").orElseThrow());
      assertTrue(headers.firstValue("Server").isEmpty());
    }
  }
}
