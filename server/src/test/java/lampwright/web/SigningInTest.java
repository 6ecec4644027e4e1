package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URLEncoder;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import lampwright.TestHouse;
import lampwright.Visitor;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

class SigningInTest {

  private static final String OWNER = "owner@demo.example";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  @Test
  void signingInSetsACookieThatNoScriptCanRead() {
    HttpResponse<String> answer = house.signIn(OWNER, TestHouse.PASSWORD);
    assertEquals(201, answer.statusCode());
    assertEquals("/api/session", answer.headers().firstValue("Location").orElseThrow());
    String cookie = answer.headers().firstValue("Set-Cookie").orElseThrow();
    assertTrue(cookie.matches("lampwright_session=[A-Za-z0-9_-]{43};.*"), cookie);
    assertTrue(cookie.contains("HttpOnly"), cookie);
    assertTrue(cookie.contains("SameSite=Lax"), cookie);
    assertTrue(cookie.contains("Path=/"), cookie);
    assertFalse(cookie.contains("Secure"), cookie);
  }

  @Test
  void onlyHashesOfSecretsAreKept() throws SQLException {
    HttpResponse<String> answer = house.signIn(OWNER, TestHouse.PASSWORD);
    String cookie = answer.headers().firstValue("Set-Cookie").orElseThrow();
    String token = cookie.substring(cookie.indexOf('=') + 1, cookie.indexOf(';'));
    List<String> rows =
        house.database().sqlAsSuperuser("select row_to_json(s)::text from lampwright.session s");
    assertFalse(rows.isEmpty());
    assertTrue(rows.stream().noneMatch(row -> row.contains(token)));
    List<String> hashes =
        house.database().sqlAsSuperuser("select password_hash from lampwright.person");
    assertTrue(
        hashes.stream().allMatch(hash -> hash.startsWith("$argon2id$v=19$")), hashes.toString());
  }

  @Test
  void aKnownAndAnUnknownNameAreAnsweredAlike() {
    HttpResponse<String> known = house.signIn(OWNER, "not the password");
    HttpResponse<String> unknown = house.signIn("nobody@demo.example", "not the password");
    assertEquals(401, known.statusCode());
    assertEquals(401, unknown.statusCode());
    Map<?, ?> one = Visitor.object(known);
    Map<?, ?> other = Visitor.object(unknown);
    for (String field : List.of("type", "title", "detail", "status")) {
      assertEquals(one.get(field), other.get(field));
    }
    assertEquals(known.headers().map().keySet(), unknown.headers().map().keySet());
  }

  @Test
  void theNameMayBeWrittenInAnyCase() {
    assertEquals(201, house.signIn("Owner@Demo.Example", TestHouse.PASSWORD).statusCode());
  }

  @Test
  void aSessionSaysWhoOneIsUntilItIsEnded() {
    Visitor owner = house.signedIn(OWNER);
    HttpResponse<String> here = owner.get("/api/session");
    assertEquals(200, here.statusCode());
    assertTrue(here.body().contains("\"email\":\"owner@demo.example\""), here.body());
    assertTrue(here.body().contains("\"way\":\"session\""), here.body());
    assertEquals(204, owner.delete("/api/session").statusCode());
    assertEquals(401, owner.get("/api/session").statusCode());
  }

  @Test
  void aProofIsGoodForItsOwnSessionOnly() {
    Visitor owner = house.signedIn(OWNER);
    String others =
        String.valueOf(
            Visitor.object(house.signedIn("crew@demo.example").get("/api/session"))
                .get("csrf_token"));
    assertEquals(403, owner.with("X-CSRF-Token", others).delete("/api/session").statusCode());
    Map<?, ?> here = Visitor.object(owner.get("/api/session"));
    String fresh = String.valueOf(here.get("csrf_token"));
    assertNotEquals(fresh, Visitor.object(owner.get("/api/session")).get("csrf_token"));
    assertEquals(204, owner.with("X-CSRF-Token", fresh).delete("/api/session").statusCode());
  }

  @Test
  void aChangeFromAnotherSiteIsRefusedEvenWithItsProof() {
    Visitor owner = house.signedIn(OWNER);
    assertEquals(
        403, owner.with("Sec-Fetch-Site", "cross-site").delete("/api/session").statusCode());
    assertEquals(
        403, owner.with("Origin", "https://elsewhere.example").delete("/api/session").statusCode());
    assertEquals(200, owner.get("/api/session").statusCode());
  }

  @Test
  void aTokenIsShownOnceAndWorksUntilItIsRevoked() {
    Visitor owner = house.signedIn(OWNER);
    HttpResponse<String> made = owner.post("/api/tokens", "{\"name\":\"a script\"}");
    assertEquals(201, made.statusCode());
    Map<?, ?> token = Visitor.object(made);
    Visitor program = house.visitor().with("Authorization", "Bearer " + token.get("token"));
    assertTrue(program.get("/api/session").body().contains("\"way\":\"token\""));
    HttpResponse<String> listed = owner.get("/api/tokens");
    assertTrue(listed.body().contains("a script"));
    assertFalse(listed.body().contains(String.valueOf(token.get("token"))));
    String path = made.headers().firstValue("Location").orElseThrow();
    assertEquals(404, house.signedIn("crew@demo.example").delete(path).statusCode());
    assertEquals(204, owner.delete(path).statusCode());
    assertEquals(401, program.get("/api/session").statusCode());
    assertEquals(404, owner.delete(path).statusCode());
  }

  @Test
  void aMemberSeesTheStudiosThatTheyBelongTo() {
    HttpResponse<String> studios = house.withToken("crew@demo.example").get("/api/studios");
    assertEquals(200, studios.statusCode());
    assertEquals(1, Visitor.items(studios).size());
    assertTrue(studios.body().contains("\"id\":\"demo\""), studios.body());
    assertTrue(studios.body().contains("\"role\":\"crew\""), studios.body());
  }

  @Test
  void whoGuessesIsSlowedDownAndNobodyElseIs() {
    String victim = "reader@demo.example";
    HttpResponse<String> last = house.signIn(victim, "guess 0");
    for (int i = 1; i < 20 && last.statusCode() == 401; i++) {
      last = house.signIn(victim, "guess " + i);
    }
    assertEquals(429, last.statusCode());
    long seconds = Long.parseLong(last.headers().firstValue("Retry-After").orElseThrow());
    assertTrue(seconds >= 1 && seconds <= 60, seconds + " s");
    assertEquals(201, house.signIn(OWNER, TestHouse.PASSWORD).statusCode());
  }

  @Test
  void aVisitorSignsInAndOutByForm() {
    HttpResponse<String> page = house.visitor().get("/sign-in?next=/api/session");
    Document form = Jsoup.parse(page.body());
    assertEquals("/sign-in", form.select("main form").attr("action"));
    assertEquals("/api/session", form.select("input[name=next]").attr("value"));
    assertTrue(form.text().contains("owner@demo.example"));
    HttpResponse<String> in =
        house
            .visitor()
            .postForm(
                "/sign-in",
                "email=owner%40demo.example&next=%2Fapi%2Fsession&password="
                    + TestHouse.PASSWORD.replace(' ', '+'));
    assertEquals(303, in.statusCode(), in.body());
    assertEquals("/api/session", in.headers().firstValue("Location").orElseThrow());
    String cookie = in.headers().firstValue("Set-Cookie").orElseThrow();
    Visitor member = house.visitor().with("Cookie", cookie.substring(0, cookie.indexOf(';')));
    String proof = String.valueOf(Visitor.object(member.get("/api/session")).get("csrf_token"));
    assertEquals(403, member.postForm("/sign-out", "").statusCode());
    HttpResponse<String> out = member.postForm("/sign-out", "csrf=" + proof);
    assertEquals(303, out.statusCode());
    assertEquals(401, member.get("/api/session").statusCode());
  }

  @Test
  void theFormLeadsNowhereElse() {
    for (String next : List.of("//elsewhere.example/", "https://elsewhere.example/", "/%5C..")) {
      HttpResponse<String> in =
          house
              .visitor()
              .postForm(
                  "/sign-in",
                  "email=owner%40demo.example&next="
                      + URLEncoder.encode(next, StandardCharsets.UTF_8)
                      + "&password="
                      + TestHouse.PASSWORD.replace(' ', '+'));
      String location = in.headers().firstValue("Location").orElseThrow();
      assertTrue(location.startsWith("/") && !location.startsWith("//"), location);
    }
  }

  @Test
  void aWrongPasswordByFormIsToldBesideTheFormThatKeepsTheName() {
    HttpResponse<String> answer =
        house.visitor().postForm("/sign-in", "email=crew%40demo.example&password=zz7guess");
    assertEquals(401, answer.statusCode());
    Document page = Jsoup.parse(answer.body());
    assertEquals("crew@demo.example", page.select("input[name=email]").attr("value"));
    assertTrue(page.text().contains("E-mail and password do not belong together"));
    assertFalse(answer.body().contains("zz7guess"));
  }

  @Test
  void whatPeopleTypeIsEscaped() {
    HttpResponse<String> page = house.visitor().get("/sign-in?next=%22%3E%3Cscript%3E");
    assertFalse(page.body().contains("\"><script>"));
  }

  @Test
  void theFirstPageLeadsOn() {
    HttpResponse<String> stranger = house.visitor().get("/");
    assertEquals(303, stranger.statusCode());
    assertEquals("/sign-in", stranger.headers().firstValue("Location").orElseThrow());
    HttpResponse<String> member = house.signedIn(OWNER).get("/");
    assertEquals(303, member.statusCode());
    assertTrue(member.headers().firstValue("Location").orElseThrow().contains("/demo"));
  }

  @Test
  void assetsNeverChangeUnderTheirAddress() {
    Document page = Jsoup.parse(house.visitor().get("/sign-in").body());
    String style = page.select("link[rel=stylesheet]").attr("href");
    HttpResponse<String> sheet = house.visitor().get(style);
    assertEquals(200, sheet.statusCode());
    assertEquals(
        "public, max-age=31536000, immutable",
        sheet.headers().firstValue("Cache-Control").orElseThrow());
    assertEquals(404, house.visitor().get("/assets/0/style.css").statusCode());
    HttpResponse<String> head = house.visitor().send("HEAD", style, BodyPublishers.noBody());
    assertEquals(200, head.statusCode());
    assertEquals("", head.body());
  }

  @Test
  void theServerSaysThatItLivesAndIsReady() {
    assertEquals(200, house.visitor().get("/health/live").statusCode());
    HttpResponse<String> ready = house.visitor().get("/health/ready");
    assertEquals(200, ready.statusCode(), ready.body());
    assertTrue(ready.body().contains("\"status\":\"ready\""), ready.body());
  }
}
