package lampwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.document.Json;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.WebElement;

/**
 * An assistant comes in by an owner's link, walks a trail with a phone, builds with readings that
 * are off, is signed off.
 */
class AssistantStoryTest {

  private static final String STUDIO = "/studios/demo";
  private static final String SETUP = STUDIO + "/setups/breadandherring";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();
  @RegisterExtension static final Browser phone = Browser.smallPhone();
  @RegisterExtension static final Browser desk = Browser.desktop();

  private static void signIn(Browser browser, String email) {
    browser.open(address("/sign-in"));
    String[] cookie = house.signedIn(email).header("Cookie").split("=", 2);
    browser.takeCookie(cookie[0], cookie[1]);
  }

  private static String address(String path) {
    return "http://127.0.0.1:" + house.port() + path;
  }

  /** An owner makes the link at a desk, and whoever it is for makes an account with a phone. */
  private static void comeIn(String name, String email) {
    signIn(desk, "owner@demo.example");
    desk.open(address(STUDIO + "/people"));
    desk.see("#meant_for").sendKeys(name);
    desk.follow(desk.see("section[aria-labelledby=invite] form button"));
    String link = desk.see(".handed code").getText();
    String open = desk.see(".open-invitations li").getText();
    assertTrue(open.contains(name) && open.contains("crew"), open);

    phone.open(link);
    assertTrue(phone.see(".lead").getText().contains("Maren Tolliver invites you"));
    phone.see("#name").sendKeys(name);
    phone.see("#email").sendKeys(email);
    phone.see("#password").sendKeys("seven sandbags");
    phone.see("#password_again").sendKeys("seven sandbags");
    phone.follow(phone.see("main form button"));
    assertEquals(address(STUDIO + "/setups"), phone.address().replaceAll("[?#].*", ""));
    assertEquals(name, phone.see("a.member").getText());
    desk.open(address(STUDIO + "/people"));
    assertTrue(desk.see(".people").getText().contains(name), "a member");
    assertTrue(desk.all(".open-invitations").isEmpty(), "used up");
  }

  private static String trail() {
    HttpResponse<String> made =
        house
            .withToken("author@demo.example")
            .post(
                "/api" + STUDIO + "/trails",
                Json.print(
                    Map.of(
                        "name",
                        "First day",
                        "clears_for",
                        "set two heads",
                        "stages",
                        List.of(
                            Map.of(
                                "kind",
                                "reading",
                                "id",
                                "read",
                                "title",
                                "A stop",
                                "text",
                                "Twice the light."),
                            Map.of(
                                "kind",
                                "drills",
                                "id",
                                "count",
                                "title",
                                "Count",
                                "kinds",
                                List.of("stops_between"),
                                "right",
                                1.0),
                            Map.of(
                                "kind",
                                "build",
                                "id",
                                "build",
                                "title",
                                "Build",
                                "setup",
                                "breadandherring",
                                "task",
                                "Build and meter it.")))));
    assertEquals(201, made.statusCode(), made.body());
    return made.headers().firstValue("Location").orElseThrow().substring("/api".length());
  }

  /** The right answer to the drill on the phone, as a colleague works it out. */
  private static String rightAnswer() {
    Visitor colleague = house.withToken("author@demo.example");
    Map<String, Object> sent = new LinkedHashMap<>();
    for (String field : List.of("kind", "setup", "question")) {
      sent.put(field, phone.all("input[name=" + field + "]").getFirst().getAttribute("value"));
    }
    sent.put(
        "seed", Double.valueOf(phone.all("input[name=seed]").getFirst().getAttribute("value")));
    sent.put("number", 19.0);
    Object judged =
        Json.parse(colleague.post("/api" + STUDIO + "/drills/answers", Json.print(sent)).body());
    return String.format(Locale.ROOT, "%.2f", Told.number(judged, "number"));
  }

  @Test
  void anAssistantIsToldWhatIsOffAndSignedOffByAnother() {
    String trail = trail();
    comeIn("Pia Marl", "pia@light.example");
    phone.open(address(STUDIO + "/learning"));
    phone.follow(phone.see("a[href='" + trail + "']"));
    phone.follow(phone.see(".trail-open button"));
    phone.follow(phone.see(".trail-open .trail-links a"));
    phone.see("#drill-answer").sendKeys("19");
    phone.follow(phone.see(".drill-form button"));
    assertEquals("Not right", phone.see("#drill-judged").getText());
    phone.follow(phone.see(".learning-go"));
    phone.see("#drill-answer").sendKeys(rightAnswer());
    phone.follow(phone.see(".drill-form button"));
    assertEquals("Right", phone.see("#drill-judged").getText());

    phone.open(address(trail));
    assertTrue(phone.see(".trail-hint").getText().startsWith("Build and meter it on the page"));
    phone.follow(phone.see(".trail-open .trail-links a"));
    phone.see("[data-field][data-ready=yes]");
    for (Object light : lights()) {
      assertTrue(metered(light, 2, 0).contains("under"), "told what to do about it");
    }
    log(1);
    phone.open(address(trail));
    phone.follow(phone.see(".trail-act button"));
    assertEquals("Handed in, waits to be signed off", state());

    signIn(desk, "author@demo.example");
    desk.open(address(STUDIO + "/learning"));
    desk.follow(desk.see(".learning-waiting a"));
    assertTrue(desk.see(".read-says").getText().contains("under"));
    desk.follow(desk.see("button[value=send_back]"));
    assertTrue(desk.see(".errors").getText().contains("Words are missing"));
    desk.see("#words").sendKeys("Both a good stop under: go closer and meter again.");
    desk.follow(desk.see("button[value=send_back]"));
    phone.open(address(trail));
    assertEquals("Sent back", state());
    assertTrue(phone.see(".trail-again blockquote").getText().startsWith("Both a good stop"));

    phone.open(address(SETUP + "/field#build"));
    phone.see("[data-field][data-ready=yes]");
    while (phone.all("[data-back]").stream()
        .anyMatch(button -> button.isDisplayed() && button.isEnabled())) {
      phone.press(phone.see("[data-back]"));
    }
    for (Object light : lights()) {
      String[] shown = String.valueOf(Told.at(light, "level", "shown")).split(" \\+ 0\\.", -1);
      String says =
          metered(
              light,
              Double.parseDouble(shown[0].substring(2)),
              shown.length > 1 ? Integer.parseInt(shown[1]) : 0);
      assertTrue(says.startsWith("0.0"), says);
    }
    log(2);
    phone.open(address(trail));
    phone.follow(phone.see(".trail-act button"));
    desk.open(address(STUDIO + "/learning"));
    desk.follow(desk.see(".learning-waiting a"));
    desk.follow(desk.see("button[value=sign_off]"));
    phone.open(address(trail));
    assertEquals("3 of 3 stages", phone.see(".trail-counted").getText());
    assertTrue(phone.see(".trail-clears").getText().contains("Cleared by Ivo Castellane"));
  }

  /** Goes on to a light, puts its reading in, and returns what is said of it. */
  private static String metered(Object light, double fNumber, int tenths) {
    String field = "-" + Told.at(light, "id");
    int steps = 0;
    while (phone.all("#reading" + field).stream().noneMatch(WebElement::isDisplayed)) {
      assertTrue(++steps < 50, "No step asks for " + field);
      phone.press(phone.see("[data-next]"));
    }
    WebElement reading = phone.see("#reading" + field);
    reading.clear();
    reading.sendKeys(fNumber == Math.rint(fNumber) ? "" + (int) fNumber : "" + fNumber);
    phone.see("[name=tenths" + field + "]").sendKeys("" + tenths);
    phone.press(phone.see("[data-step]:not([hidden]) [data-meter] button"));
    phone.see("[data-step]:not([hidden]) .met-off");
    return phone.see("[data-step]:not([hidden]) [data-met]").getText();
  }

  private static void log(int sent) {
    phone.press(phone.see("a[href='#takes']"));
    phone.press(phone.see("[data-run-through]"));
    phone.await(() -> phone.all(".entry-sent").size() >= sent);
  }

  /** The lights of the setup with what the meter is to give. */
  private static List<?> lights() {
    Object figures =
        Json.parse(house.withToken("author@demo.example").get("/api" + SETUP + "/figures").body());
    return Told.list(figures, "lights");
  }

  private static String state() {
    return phone.all(".trail-state").getLast().getText();
  }
}
