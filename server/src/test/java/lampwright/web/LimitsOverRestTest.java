package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.Map;
import lampwright.TestHouse;
import lampwright.Visitor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Who asks too often is told when to come again, and nobody else notices. */
class LimitsOverRestTest {

  private static final int MEMBER = 40;
  private static final int COSTLY = 3;

  @RegisterExtension
  static final TestHouse house =
      TestHouse.with(
          Map.of(
              "LAMPWRIGHT_DEMO",
              "few",
              "LAMPWRIGHT_DEMO_PASSWORD",
              TestHouse.PASSWORD,
              "LAMPWRIGHT_MEMBER_REQUESTS_PER_MINUTE",
              Integer.toString(MEMBER),
              "LAMPWRIGHT_MEMBER_COSTLY_REQUESTS_PER_MINUTE",
              Integer.toString(COSTLY),
              "LAMPWRIGHT_VISITOR_REQUESTS_PER_MINUTE",
              Integer.toString(MEMBER)));

  private static final String STUDIO = "/api/studios/demo";

  /** The answer that comes when there were too many; it must come soon after so many. */
  private static HttpResponse<String> limited(Visitor visitor, String path, int after) {
    // While these are sent, some of the bucket is filled again.
    for (int i = 0; i < 20 * after; i++) {
      HttpResponse<String> answer = visitor.get(path);
      if (answer.statusCode() == 429) {
        assertTrue(i >= after - 2, "after " + i);
        return answer;
      }
    }
    throw new AssertionError("Nobody was limited.");
  }

  private static void mustSayWhenToComeAgain(HttpResponse<String> answer, String policy, int of) {
    assertEquals("/problems/too-many", Visitor.object(answer).get("type"));
    int wait = Integer.parseInt(answer.headers().firstValue("Retry-After").orElseThrow());
    assertTrue(wait >= 1 && wait <= 60 / of + 1, "Retry-After: " + wait);
    // draft-ietf-httpapi-ratelimit-headers-10, sections 3 and 4.
    assertEquals(
        "\"%s\";q=%d;w=60".formatted(policy, of),
        answer.headers().firstValue("RateLimit-Policy").orElseThrow());
    assertTrue(
        answer
            .headers()
            .firstValue("RateLimit")
            .orElseThrow()
            .matches("\"" + policy + "\";r=0;t=\\d+"));
  }

  @Test
  void aMemberIsCountedOverAllThatTheyComeBy() {
    Visitor browser = house.signedIn("crew@demo.example");
    Visitor program = house.withToken("crew@demo.example");
    HttpResponse<String> answer = limited(browser, STUDIO + "/kits", MEMBER - 2);
    mustSayWhenToComeAgain(answer, "member", MEMBER);
    assertEquals(429, program.get(STUDIO + "/kits").statusCode());
    assertEquals(200, house.signedIn("reader@demo.example").get(STUDIO + "/kits").statusCode());
    assertEquals(200, browser.get("/health/live").statusCode());
  }

  @Test
  void costlyRequestsAreFewer() {
    Visitor author = house.signedIn("author@demo.example");
    HttpResponse<String> setups = author.get(STUDIO + "/setups?limit=1");
    String id = setups.body().split("\"id\":\"", 2)[1].split("\"", 2)[0];
    mustSayWhenToComeAgain(
        limited(author, STUDIO + "/setups/" + id + "/sheet.pdf", COSTLY), "costly", COSTLY);
    assertEquals(200, author.get(STUDIO + "/kits").statusCode());
  }

  @Test
  void whoIsNotSignedInIsCountedByTheirAddress() {
    HttpResponse<String> answer = limited(house.visitor(), "/api/openapi.json", MEMBER - 10);
    mustSayWhenToComeAgain(answer, "visitor", MEMBER);
    assertEquals(200, house.visitor().get("/metrics").statusCode());
  }
}
