package lampwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.web.Documents;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** What people write stays within the page, however long a word it is, and is never run. */
class LongWordsTest {

  private static final String WORD = "W".repeat(120);
  private static final String SCRIPT = "<script>alert(1)</script>\"'></text></svg><img src=x>";

  @RegisterExtension static final Browser browser = Browser.desktop();

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  @Test
  void noWordWidensThePageAndNoScriptRuns() {
    Visitor author = house.withToken("author@demo.example");
    browser.open(house.visitor().address("/sign-in").toString());
    browser.see("input[name=email]").sendKeys("author@demo.example");
    browser.see("input[name=password]").sendKeys(TestHouse.PASSWORD);
    browser.follow(browser.see("main form button"));
    for (String text : List.of(WORD, SCRIPT)) {
      String kit = made(author, "kits", Documents.kit(text));
      String parent = made(author, "setups", setup(text));
      String setup = made(author, "setups?parent=" + parent, setup(text));
      Map<String, Object> used =
          Map.of(
              "lights",
              List.of(Map.of("light", "key", "stops_down", 2.0, "distance_m", 3.0)),
              "note",
              text);
      HttpResponse<String> told =
          author
              .with("If-Match", "\"1\"")
              .post("/api/studios/demo/setups/" + setup + "/used", Documents.json(used));
      assertEquals(200, told.statusCode(), told.body());
      sound("/studios/demo/setups/" + parent);
      sound("/studios/demo/setups/" + setup);
      sound("/studios/demo/setups/" + setup + "/figures");
      sound("/studios/demo/setups/" + setup + "/lights?off=key");
      sound("/studios/demo/setups/" + setup + "/adapted?kit=" + kit);
    }
    sound("/studios/demo/setups");
  }

  private static Map<String, Object> setup(String text) {
    Map<String, Object> light = Documents.light("key");
    light.put("reason", text);
    light.put("target", Map.of("name", text, "at", Map.of("x_m", 0, "y_m", 0, "z_m", 1.6)));
    Map<String, Object> setup = Documents.setup(text);
    setup.put("intent", text);
    setup.put("occasion", Map.of("place", Map.of("name", text, "kind", "quay"), "weather", text));
    setup.put("moods", List.of(text.substring(0, 50)));
    setup.put("lights", List.of(light));
    setup.put("build_order", List.of(Map.of("light", "key", "what", text)));
    setup.put("cautions", List.of(text));
    setup.put("retouch_notes", List.of(text));
    return setup;
  }

  private static String made(Visitor author, String what, Map<String, Object> document) {
    HttpResponse<String> answer =
        author.post("/api/studios/demo/" + what, Documents.json(document));
    assertEquals(201, answer.statusCode(), answer.body());
    return String.valueOf(Told.at(Visitor.object(answer), "id"));
  }

  private static void sound(String path) {
    browser.open(house.visitor().address(path).toString());
    browser.see("h1");
    assertEquals(0, browser.overflow(), path);
    List<String> complaints = browser.complaints();
    assertTrue(complaints.isEmpty(), complaints.toString());
  }
}
