package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lampwright.TestHouse;
import lampwright.Visitor;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

class FirstOwnerTest {

  private static final String FORM =
      "studio=Tidewrack&name=Imke+Sorrel&email=imke%%40light.example&password=%s&password_again=%s";

  @RegisterExtension static final TestHouse house = TestHouse.with(Map.of());

  @Test
  void theLinkOnTheConsoleMakesAnOwnerOnce() {
    String path = link();
    assertEquals(200, house.visitor().get(path).statusCode());
    assertEquals(404, house.visitor().get("/first-owner/AAAA").statusCode());

    HttpResponse<String> tooShort = house.visitor().postForm(path, FORM.formatted("abc", "abc"));
    assertEquals(422, tooShort.statusCode());
    Document page = Jsoup.parse(tooShort.body());
    assertEquals("Imke Sorrel", page.select("input[name=name]").attr("value"));
    assertTrue(page.text().contains("Password (3 characters) must have 12"), page.text());
    HttpResponse<String> differ =
        house.visitor().postForm(path, FORM.formatted("three+quiet+lamps", "three+quiet+lamp"));
    assertEquals(422, differ.statusCode());

    HttpResponse<String> made =
        house.visitor().postForm(path, FORM.formatted("three+quiet+lamps", "three+quiet+lamps"));
    assertEquals(303, made.statusCode(), made.body());
    String cookie = made.headers().firstValue("Set-Cookie").orElseThrow();
    Visitor owner = house.visitor().with("Cookie", cookie.substring(0, cookie.indexOf(';')));
    String studios = owner.get("/api/studios").body();
    assertTrue(studios.contains("\"name\":\"Tidewrack\""), studios);
    assertTrue(studios.contains("\"role\":\"owner\""), studios);
    assertEquals(201, house.signIn("imke@light.example", "three quiet lamps").statusCode());

    assertEquals(404, house.visitor().get(path).statusCode());
    assertEquals(
        404,
        house
            .visitor()
            .postForm(path, FORM.formatted("three+quiet+lamps", "three+quiet+lamps"))
            .statusCode());
    String before = house.console();
    house.reopen();
    assertFalse(house.console().substring(before.length()).contains("/first-owner/"));
  }

  @Test
  void theDemoIsShutWhereItIsOff() {
    assertEquals(401, house.signIn("owner@demo.example", TestHouse.PASSWORD).statusCode());
    assertFalse(house.visitor().get("/sign-in").body().contains("demo.example"));
  }

  private static String link() {
    Matcher link =
        Pattern.compile("http://127\\.0\\.0\\.1:\\d+(/first-owner/\\S+)").matcher(house.console());
    assertTrue(link.find(), house.console());
    return link.group(1);
  }
}
