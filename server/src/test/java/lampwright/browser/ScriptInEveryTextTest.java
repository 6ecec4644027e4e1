package lampwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import lampwright.RouteWalk;
import lampwright.Visitor;
import lampwright.attack.AttackedHouse;
import lampwright.attack.Planted;
import lampwright.document.Json;
import lampwright.picture.Drawn;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/**
 * Markup and script behind every text that people can write, then every page in a real browser: it
 * is shown as the text that it is (Web Security Testing Guide, INPV-02: stored cross-site
 * scripting).
 */
class ScriptInEveryTextTest {

  private static final String SCRIPT =
      " \"'><img src=x onerror=struck=1><script>struck=1</script><svg onload=struck=1>";

  /** What ran, and what of the text became markup. */
  private static final String STRUCK =
      """
      const handlers = (element) => [...element.attributes].some((one) => /^on/i.test(one.name));
      return [
        ...(typeof struck === "undefined" ? [] : ["a script ran"]),
        ...[...document.querySelectorAll("*")].filter(handlers).map((one) => one.outerHTML),
        ...[...document.querySelectorAll("img[src=x], script:not([src]):not([type*=json])")]
          .map((one) => one.outerHTML),
        ...[...document.querySelectorAll("[href], [action], [formaction]")]
          .filter((one) => /^\\s*(javascript|data|vbscript):/i.test(one.getAttribute("href")
            ?? one.getAttribute("action") ?? one.getAttribute("formaction")))
          .map((one) => one.outerHTML),
      ];
      """;

  @RegisterExtension static final AttackedHouse house = new AttackedHouse();

  @RegisterExtension static final Browser browser = Browser.desktop();

  private final Map<String, String> planted = new LinkedHashMap<>();

  private Visitor owner = new Visitor(URI.create("http://127.0.0.1"));

  private static String last(String path) {
    return path.substring(path.lastIndexOf('/') + 1);
  }

  /** Keeps one more of a kind with the script behind each text of it. */
  private void plant(String kind, String from, String collection) {
    Map<?, ?> read = Visitor.object(owner.get(AttackedHouse.STUDIO + from));
    Object document = read.get("document") == null ? without(read) : read.get("document");
    planted.put(
        kind,
        last(
            Planted.everywhere(
                Objects.requireNonNull(document),
                SCRIPT,
                json -> owner.post(AttackedHouse.STUDIO + collection, json))));
  }

  /** What a thing says of itself that nobody writes. */
  private static Map<?, ?> without(Map<?, ?> thing) {
    Map<Object, Object> own = new LinkedHashMap<>(thing);
    for (String told :
        List.of("id", "revision", "changed_at", "changed_by", "created_at", "by", "written_by")) {
      own.remove(told);
    }
    return own;
  }

  private void plantEverywhere() throws SQLException {
    owner = house.withToken("owner@demo.example");
    plant("setup", "/setups/overthecut", "/setups");
    String setup = "/setups/" + planted.get("setup");
    plant("kit", "/kits/housekit", "/kits");
    plant("gear", "/gear/" + house.thing("gear"), "/gear");
    plant("location", "/locations/" + house.thing("location"), "/locations");
    plant("trail", "/trails/" + house.thing("trail"), "/trails");
    post(
        setup + "/takes",
        Map.of(
            "at",
            "2025-09-12T19:13:00+01:00",
            "setup_revision",
            1,
            "why",
            "Why" + SCRIPT,
            "changed",
            "Changed" + SCRIPT,
            "client_key",
            "with-a-script"));
    picture(setup);
    post(setup + "/notes", Map.of("text", "A note" + SCRIPT));
    post("/saved-searches", Map.of("name", SCRIPT.strip(), "question", "q=light"));
    post(
        setup + "/proposals", Map.of("setup_revision", 1, "used", Map.of("note", "Used" + SCRIPT)));
    house
        .house()
        .database()
        .sqlAsSuperuser(
            "update lampwright.person set name = name || $s$"
                + SCRIPT
                + "$s$ where email = 'reader@demo.example'",
            "update lampwright.studio set name = name || $s$" + SCRIPT + "$s$ where id = 'demo'");
  }

  private void picture(String setup) {
    HttpResponse<String> made =
        owner
            .with("Content-Type", "image/png")
            .send(
                "POST",
                AttackedHouse.STUDIO
                    + setup
                    + "/pictures?kind=final&caption="
                    + URLEncoder.encode("Seen" + SCRIPT, StandardCharsets.UTF_8),
                BodyPublishers.ofByteArray(Drawn.png(Drawn.scene(40, 30))));
    assertEquals(201, made.statusCode(), made.body());
    planted.put("picture", last(made.headers().firstValue("Location").orElseThrow()));
  }

  private void post(String path, Map<String, Object> document) {
    HttpResponse<String> made = owner.post(AttackedHouse.STUDIO + path, Json.print(document));
    assertEquals(201, made.statusCode(), made.body());
  }

  private String path(String template) {
    String path = template;
    for (Map.Entry<String, String> one : planted.entrySet()) {
      path = path.replace("{" + one.getKey() + "}", one.getValue());
    }
    return house.path(path);
  }

  private static boolean isPage(RouteWalk.Step step) {
    return step.verb().equals("GET")
        && !step.isForPrograms()
        && !step.template().startsWith("/assets/")
        && !step.template().matches(".*\\.(pdf|js|webmanifest)");
  }

  @Test
  void whateverPeopleWriteIsShownAsTextOnEveryPage() throws SQLException {
    plantEverywhere();
    browser.open(house.house().visitor().address("/sign-in").toString());
    String[] cookie = house.signedIn("owner@demo.example").header("Cookie").split("=", 2);
    browser.takeCookie(cookie[0], cookie[1]);
    List<String> wrong = new ArrayList<>();
    int shown = 0;
    int pages = 0;
    browser.complaints();
    for (RouteWalk.Step step : house.routes()) {
      if (!isPage(step)) {
        continue;
      }
      String path = path(step.template());
      pages++;
      browser.open(house.house().visitor().address(path).toString());
      for (String struck : browser.list(STRUCK)) {
        wrong.add(step + " " + struck);
      }
      for (String complaint : browser.complaints()) {
        if (complaint.contains("Content Security Policy") || complaint.contains("Uncaught")) {
          wrong.add(step + " " + complaint);
        }
      }
      shown +=
          browser
              .list("return document.body.innerText.includes('<script>struck=1') ? ['yes'] : []")
              .size();
    }
    assertEquals(List.of(), wrong, String.join("\n", wrong));
    assertTrue(pages > 40, pages + " pages");
    assertTrue(shown > 20, shown + " pages show it as text");
  }
}
