package lampwright.attack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lampwright.RouteWalk;
import lampwright.TestHouse;
import lampwright.Visitor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/**
 * Sessions and changes by cookie under attack (Web Security Testing Guide, SESS-01 to SESS-08):
 * forged, replayed, swapped and planted cookies, and changes that another site sends.
 */
class SessionAttacksTest {

  private static final String OWNER = "owner@demo.example";
  private static final String HERE = "/api/session";

  @RegisterExtension static final AttackedHouse house = new AttackedHouse();

  private static String token(Visitor visitor) {
    return visitor.header("Cookie").split("=", 2)[1];
  }

  private static int status(String cookie) {
    return house.stranger().with("Cookie", cookie).get(HERE).statusCode();
  }

  @Test
  void noCookieButTheOneThatWasGivenOutOpensTheDoor() {
    Visitor owner = house.signedIn(OWNER);
    String token = token(owner);
    String name = "lampwright_session";
    assertEquals(200, status(name + "=" + token));
    String flipped = (token.charAt(0) == 'A' ? 'B' : 'A') + token.substring(1);
    for (String forged :
        List.of(
            name + "=" + token.substring(0, token.length() - 1),
            name + "=" + token + "A",
            name + "=" + flipped,
            name + "=" + token.toLowerCase(java.util.Locale.ROOT),
            name + "=",
            name + "=null",
            name + "=' or 1=1--",
            name + "=%00" + token,
            name + "=" + "A".repeat(5000),
            name.toUpperCase(java.util.Locale.ROOT) + "=" + token,
            "__Host-" + name + "=" + token,
            name + "[]=" + token)) {
      assertEquals(401, status(forged), forged);
    }
  }

  @Test
  void whatWasSignedOutIsOutForEverybodyWhoKeptIt() {
    Visitor owner = house.signedIn(OWNER);
    Visitor thief = house.stranger().with("Cookie", owner.header("Cookie"));
    assertEquals(200, thief.get(HERE).statusCode());
    assertEquals(204, owner.delete(HERE).statusCode());
    assertEquals(401, thief.get(HERE).statusCode());
    assertEquals(
        401, thief.with("X-CSRF-Token", owner.header("X-CSRF-Token")).delete(HERE).statusCode());
  }

  @Test
  void noSecretIsTakenFromAnywhereButItsPlace() {
    Visitor owner = house.signedIn(OWNER);
    String session = token(owner);
    String program = house.withToken(OWNER).header("Authorization").substring("Bearer ".length());
    for (String query :
        List.of(
            "?token=" + program,
            "?access_token=" + program,
            "?authorization=Bearer%20" + program,
            "?lampwright_session=" + session,
            ";lampwright_session=" + session)) {
      int status = house.stranger().get(HERE + query).statusCode();
      assertTrue(status == 401 || status == 400 || status == 404, query + " " + status);
    }
    // Neither kind of secret does the work of the other.
    assertEquals(
        401, house.stranger().with("Authorization", "Bearer " + session).get(HERE).statusCode());
    assertEquals(401, status("lampwright_session=" + program));
    // Who shows a bad token is not let in by a good cookie beside it.
    assertEquals(401, owner.with("Authorization", "Bearer bad").get(HERE).statusCode());
  }

  @Test
  void aCookieThatWasPlantedBeforeIsNeverTheSessionAfter() {
    String planted = token(house.signedIn("crew@demo.example"));
    for (String before : List.of(planted, "A".repeat(43))) {
      HttpResponse<String> in =
          house
              .stranger()
              .with("Cookie", "lampwright_session=" + before)
              .post(
                  HERE,
                  "{\"email\":\"%s\",\"password\":\"%s\"}".formatted(OWNER, TestHouse.PASSWORD));
      assertEquals(201, in.statusCode());
      String cookie = in.headers().firstValue("Set-Cookie").orElseThrow();
      assertNotEquals(before, cookie.substring(cookie.indexOf('=') + 1, cookie.indexOf(';')));
      String who = house.stranger().with("Cookie", "lampwright_session=" + before).get(HERE).body();
      assertTrue(!who.contains(OWNER), who);
    }
  }

  @Test
  void noChangeThatAnotherSiteSendsIsMadeWhateverItKnows() {
    Visitor owner = house.signedIn(OWNER);
    List<String> wrong = new ArrayList<>();
    List<Visitor> sites =
        List.of(
            owner.with("Sec-Fetch-Site", "cross-site"),
            owner.with("Sec-Fetch-Site", "same-site"),
            owner.with("Origin", "https://elsewhere.example"),
            owner.with("Origin", "null"),
            owner.with("Origin", "http://127.0.0.1.elsewhere.example"));
    for (RouteWalk.Step step : house.routes()) {
      if (step.changes()) {
        // One of them for each route, every one for many routes: each is the same code.
        Visitor site = sites.get(Math.floorMod(step.toString().hashCode(), sites.size()));
        for (Visitor one : step.isForMembers() ? List.of(site) : sites) {
          int status =
              one.with("Content-Type", "application/x-www-form-urlencoded")
                  .send(step.verb(), house.path(step.template()), BodyPublishers.ofString("a=b"))
                  .statusCode();
          if (status != 403) {
            wrong.add(step + " -> " + status);
          }
        }
      }
    }
    assertEquals(List.of(), wrong);
  }

  @Test
  void noGetChangesAndNoOtherVerbHidesInAPost() {
    Visitor owner = house.signedIn(OWNER);
    String setup = house.path("/api/studios/{studio}/setups/{setup}");
    String before = owner.get(setup).body();
    for (Visitor one :
        Arrays.asList(
            owner.with("X-HTTP-Method-Override", "DELETE"),
            owner.with("X-HTTP-Method", "DELETE"),
            owner.with("X-Method-Override", "DELETE"))) {
      one.with("If-Match", "*").get(setup + "?_method=DELETE");
      one.with("If-Match", "*").post(setup, "{\"_method\":\"DELETE\"}");
    }
    assertEquals(before, owner.get(setup).body());
    for (String verb : List.of("TRACE", "CONNECT-X", "PROPFIND", "DEBUG")) {
      int status = owner.send(verb, setup, BodyPublishers.noBody()).statusCode();
      assertTrue(status == 405 || status == 400 || status == 501, verb + " " + status);
    }
  }
}
