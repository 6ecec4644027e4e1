package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.people.DeviceForTests;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** One's own account, over REST and on its pages; each test has a member to itself. */
class AccountOverRestTest {

  private static final String ACCOUNT = "/api/account";
  private static final String PASSWORD = ACCOUNT + "/password";
  private static final String OTHER = "seven lamps in a row";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private static String change(String current, String wanted) {
    return Documents.json(Map.of("current", current, "new", wanted));
  }

  private static String kind(HttpResponse<String> answer) {
    return String.valueOf(Visitor.object(answer).get("type"));
  }

  @Test
  void aNewPasswordSignsOutEverywhereElseAndTheSessionGoesOnUnderAnotherToken() {
    Visitor here = house.signedIn("reader@demo.example");
    Visitor elsewhere = house.signedIn("reader@demo.example");
    HttpResponse<String> wrong = here.put(PASSWORD, change("not the password", OTHER));
    assertEquals(422, wrong.statusCode());
    assertTrue(wrong.body().contains("\"/current\""), wrong.body());
    for (String weak :
        List.of("eleven char", "qwertyuiop12", "mailcreated5240", "reader.demo.example")) {
      HttpResponse<String> refused = here.put(PASSWORD, change(TestHouse.PASSWORD, weak));
      assertEquals(422, refused.statusCode(), weak);
      assertTrue(refused.body().contains("\"/new\""), refused.body());
    }
    assertEquals(200, elsewhere.get(ACCOUNT).statusCode());
    HttpResponse<String> changed = here.put(PASSWORD, change(TestHouse.PASSWORD, OTHER));
    assertEquals(200, changed.statusCode(), changed.body());
    Visitor next = AccountAsDescribed.goesOn(here, changed);
    assertEquals(401, here.get(ACCOUNT).statusCode(), "the old token");
    assertEquals(401, elsewhere.get(ACCOUNT).statusCode(), "the other session");
    assertEquals(1, Visitor.items(next.get(ACCOUNT + "/sessions")).size());
    assertEquals(401, house.signIn("reader@demo.example", TestHouse.PASSWORD).statusCode());
    assertEquals(201, house.signIn("reader@demo.example", OTHER).statusCode());
    assertEquals(204, next.delete("/api/session").statusCode(), "its proof is the new one");
  }

  @Test
  void whoFoundAnOpenSessionCannotGuessThePasswordThere() {
    Visitor here = house.signedIn("owner@demo.example");
    HttpResponse<String> last = here.put(PASSWORD, change("guess 0", OTHER));
    for (int i = 1; i < 12 && last.statusCode() == 422; i++) {
      last = here.put(PASSWORD, change("guess " + i, OTHER));
    }
    assertEquals(429, last.statusCode());
  }

  @Test
  void aProgramWithATokenCannotTouchTheAccount() {
    Visitor program = house.withToken("author@demo.example");
    assertEquals(403, program.get(ACCOUNT).statusCode());
    assertEquals(403, program.put(PASSWORD, change(TestHouse.PASSWORD, OTHER)).statusCode());
    assertEquals(403, program.get(ACCOUNT + "/sessions").statusCode());
    assertEquals(403, program.post(ACCOUNT + "/second-factor", "{}").statusCode());
  }

  @Test
  void theNameChangesFreelyAndTheEmailOnlyWithThePassword() throws SQLException {
    String mail = "lisbet@light.example";
    house
        .database()
        .sqlAsSuperuser(
            "insert into lampwright.person (id, email, name, password_hash, created_at) select"
                + " 'lisbet00', '%s', 'Lisbet', password_hash, now() from lampwright.person where"
                    .formatted(mail)
                + " email = 'author@demo.example' returning id");
    Visitor here = house.signedIn(mail);
    Visitor first = here.with("If-Match", "\"1\"");
    HttpResponse<String> named = first.patch(ACCOUNT, "{\"name\":\" Lisbet Tal \"}");
    assertEquals(200, named.statusCode(), named.body());
    assertEquals("Lisbet Tal", Visitor.object(named).get("name"));
    assertEquals(412, first.patch(ACCOUNT, "{\"name\":\"Late\"}").statusCode());
    Visitor second = here.with("If-Match", "\"2\"");
    String moved = "{\"email\":\"Tal@Light.Example\"";
    assertTrue(second.patch(ACCOUNT, moved + "}").body().contains("\"/password\""));
    assertTrue(
        second.patch(ACCOUNT, moved + ",\"password\":\"no\"}").body().contains("\"/password\""));
    String proven = ",\"password\":\"" + TestHouse.PASSWORD + "\"}";
    for (String taken : List.of("crew@demo.example", "no address")) {
      HttpResponse<String> refused = second.patch(ACCOUNT, "{\"email\":\"" + taken + "\"" + proven);
      assertEquals(422, refused.statusCode());
      assertTrue(refused.body().contains("\"/email\""), refused.body());
    }
    HttpResponse<String> changed = second.patch(ACCOUNT, moved + proven);
    assertEquals(200, changed.statusCode(), changed.body());
    assertFalse(changed.body().contains(TestHouse.PASSWORD));
    assertEquals(201, house.signIn("tal@light.example", TestHouse.PASSWORD).statusCode());
    assertEquals(401, house.signIn(mail, TestHouse.PASSWORD).statusCode());
  }

  private static String field(String name, String value) {
    return "&" + name + "=" + URLEncoder.encode(value, StandardCharsets.UTF_8);
  }

  private static Document page(HttpResponse<String> answer, int status) {
    assertEquals(status, answer.statusCode(), answer.body());
    return Jsoup.parse(answer.body());
  }

  private static String csrf(Document page) {
    return page.expectFirst("main [name=csrf]").attr("value");
  }

  /** The same browser with the cookies that an answer set. */
  private static Visitor browser(Visitor before, HttpResponse<String> answer) {
    Map<String, String> cookies = new TreeMap<>();
    for (String pair : before.header("Cookie").split("; ", -1)) {
      if (!pair.isEmpty()) {
        cookies.put(pair.substring(0, pair.indexOf('=')), pair);
      }
    }
    for (String set : answer.headers().allValues("Set-Cookie")) {
      String pair = set.substring(0, set.indexOf(';'));
      cookies.put(pair.substring(0, pair.indexOf('=')), pair);
    }
    return before.with("Cookie", cookies.values().stream().collect(Collectors.joining("; ")));
  }

  private static String to(HttpResponse<String> answer) {
    assertEquals(303, answer.statusCode(), answer.body());
    return answer.headers().firstValue("Location").orElseThrow();
  }

  @Test
  void aPersonSwitchesTheSecondFactorOnAndSignsInByItInABrowser() {
    String mine = "email=crew%40demo.example" + field("password", TestHouse.PASSWORD);
    Visitor browser = house.visitor().with("User-Agent", "Station tablet");
    HttpResponse<String> in =
        browser.postForm("/sign-in", mine + field("next", "/account/second-factor"));
    browser = browser(browser, in);
    String factor = to(in);
    assertEquals("/account/second-factor", factor);
    Document off = page(browser.get(factor), 200);
    String proof = "csrf=" + csrf(off);
    Document refused = page(browser.postForm(factor, proof + field("password", "no")), 422);
    assertFalse(refused.select("#password-error").isEmpty());
    assertEquals(
        factor, to(browser.postForm(factor, proof + field("password", TestHouse.PASSWORD))));
    Document offer = page(browser.get(factor), 200);
    assertFalse(offer.select("main svg.address-code title").isEmpty());
    String key = offer.expectFirst(".factor-key").text().replace(" ", "");
    DeviceForTests device = new DeviceForTests(key);
    assertEquals(32, key.length());
    assertTrue(offer.expectFirst("a[href^=otpauth]").attr("href").contains("secret=" + key));
    page(browser.postForm(factor + "/confirmation", proof + "&code=12345"), 422);
    Instant now = Instant.now();
    HttpResponse<String> on =
        browser.postForm(factor + "/confirmation", proof + field("code", device.codeAt(now)));
    Document shown = page(on, 200);
    List<String> recovery = shown.select(".recovery-codes code").eachText();
    assertEquals(10, recovery.size());
    assertEquals(401, browser.get("/api/session").statusCode(), "the token is another");
    browser = browser(browser, on);
    String signOut = shown.expectFirst(".head-member [name=csrf]").attr("value");
    assertFalse(page(browser.get(factor), 200).text().contains(recovery.getFirst()));
    Document account = page(browser.get("/account"), 200);
    assertTrue(account.expectFirst(".own-device").text().equals("Station tablet"));
    assertEquals("/sign-in", to(browser.postForm("/sign-out", "csrf=" + signOut)));
    byCode(browser, mine, device.codeAt(now.plusSeconds(30)), recovery);
  }

  private static void byCode(Visitor before, String mine, String code, List<String> recovery) {
    HttpResponse<String> password =
        before.postForm("/sign-in", mine + field("next", "/preferences"));
    assertEquals("/sign-in/code?next=%2Fpreferences", to(password));
    Visitor waiting = browser(before, password);
    assertEquals(401, waiting.get("/api/session").statusCode());
    assertEquals("/sign-in/code?next=%2F", to(waiting.get("/sign-in")));
    Document form = page(waiting.get("/sign-in/code?next=/preferences"), 200);
    assertEquals("one-time-code", form.expectFirst("#code").attr("autocomplete"));
    Document wrong = page(waiting.postForm("/sign-in/code", "code=12345&next=/preferences"), 401);
    assertFalse(wrong.select("#code-error").isEmpty());
    HttpResponse<String> right =
        waiting.postForm("/sign-in/code", field("code", code) + field("next", "/preferences"));
    assertEquals("/preferences", to(right));
    Visitor in = browser(waiting, right);
    assertEquals(200, in.get("/api/session").statusCode());
    assertEquals(401, waiting.get("/api/session").statusCode(), "the token is another");
    String removal = "/account/second-factor/removal";
    String proof = "csrf=" + csrf(page(in.get("/account/second-factor"), 200));
    assertEquals(
        "/account",
        to(
            in.postForm(
                removal,
                proof
                    + field("password", TestHouse.PASSWORD)
                    + field("code", recovery.getLast()))));
  }

  @Test
  void aProgramSendsTheCodeBesideThePassword() {
    String mail = "author@demo.example";
    Visitor here = house.signedIn(mail);
    String password = Documents.json(Map.of("password", TestHouse.PASSWORD));
    Map<?, ?> offer = Visitor.object(here.post(ACCOUNT + "/second-factor", password));
    DeviceForTests device = new DeviceForTests(String.valueOf(offer.get("secret")));
    Instant now = Instant.now();
    HttpResponse<String> on =
        here.post(
            ACCOUNT + "/second-factor/confirmation",
            Documents.json(Map.of("code", device.codeAt(now))));
    assertEquals(200, on.statusCode(), on.body());
    Visitor next = AccountAsDescribed.goesOn(here, on);
    HttpResponse<String> none = house.signIn(mail, TestHouse.PASSWORD);
    assertEquals(401, none.statusCode());
    assertEquals("/problems/code-needed", kind(none));
    assertEquals("/problems/wrong-password", kind(house.signIn(mail, "not the password")));
    assertTrue(none.headers().allValues("Set-Cookie").isEmpty());
    Map<String, Object> all =
        new TreeMap<>(Map.of("email", mail, "password", TestHouse.PASSWORD, "code", "12345"));
    HttpResponse<String> wrong = house.visitor().post("/api/session", Documents.json(all));
    assertEquals("/problems/wrong-code", kind(wrong));
    all.put("code", device.codeAt(now.plusSeconds(30)));
    assertEquals(201, house.visitor().post("/api/session", Documents.json(all)).statusCode());
    all.remove("email");
    all.put(
        "code",
        String.valueOf(((List<?>) Told.at(Visitor.object(on), "recovery_codes")).getFirst()));
    HttpResponse<String> off = next.post(ACCOUNT + "/second-factor/removal", Documents.json(all));
    assertEquals(200, off.statusCode(), off.body());
    assertEquals(201, house.signIn(mail, TestHouse.PASSWORD).statusCode());
  }
}
