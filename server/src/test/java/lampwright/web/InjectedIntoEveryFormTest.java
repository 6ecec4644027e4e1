package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import lampwright.RouteWalk;
import lampwright.TestHouse;
import lampwright.Visitor;
import lampwright.people.Role;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.jsoup.select.Elements;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/**
 * What could end a text in SQL, in every field of every form that a page shows, hidden ones and
 * choices with it (Web Security Testing Guide, INPV-05): each form is sent once for each field, as
 * it was shown but for that one. A statement that ran would sleep for eight seconds.
 */
class InjectedIntoEveryFormTest {

  private static final String SLEEP =
      "x' or (select 1 from pg_sleep(8)) is null or '1'='1';select pg_sleep(8)--";
  private static final long MOST_NANOS = 6_000_000_000L;

  /** A network that is for documentation (RFC 5737): failed passwords count there and not here. */
  private static final String ELSEWHERE = "203.0.113.77";

  /**
   * Forms that hold nothing but the proof of their session, and those of a moment that is not here:
   * a first owner, a second factor, a build to judge, gear to calibrate, an archive that came.
   */
  private static final Set<String> WITHOUT_A_FIELD =
      Set.of(
          "/account/other-sessions/removal",
          "/account/second-factor/confirmation",
          "/account/second-factor/recovery-codes",
          "/account/second-factor/removal",
          "/account/sessions/{session}/removal",
          "/account/tokens/{token}/removal",
          "/first-owner/{secret}",
          "/password-reset/{secret}",
          "/sign-in/code",
          "/sign-out",
          "/studios/{studio}/builds/{build}",
          "/studios/{studio}/gear/{gear}/calibration",
          "/studios/{studio}/imports/{import}/execution",
          "/studios/{studio}/imports/{import}/removal",
          "/studios/{studio}/index/rebuild",
          "/studios/{studio}/index/stop",
          "/studios/{studio}/people/invitations/{invitation}/withdrawal",
          "/studios/{studio}/people/{person}/reset-links",
          "/studios/{studio}/saved-searches/{search}/looks",
          "/studios/{studio}/setups/{setup}/proposals/{proposal}/withdrawal",
          "/studios/{studio}/setups/{setup}/share-links/{link}/removal",
          "/studios/{studio}/trails/{trail}/stages/{stage}");

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  /** What was tried, by route and field, so that the same form on many pages is tried once. */
  private final Set<String> tried = new HashSet<>();

  private final List<String> wrong = new ArrayList<>();
  private final Set<String> routes = new HashSet<>();

  @Test
  void noFieldOfAFormIsTakenForAStatement() throws Exception {
    Visitor owner =
        Newcomer.to(house, "Odd", Role.OWNER).signedIn().with("X-Forwarded-For", ELSEWHERE);
    RoleThings things =
        RoleThings.made(
            house.withToken("owner@demo.example"), house.withToken("crew@demo.example"), "Odd");
    Visitor stranger = house.visitor().with("X-Forwarded-For", ELSEWHERE);
    String studio = "/studios/demo";
    owner.post("/api" + studio + "/saved-searches", "{\"name\":\"Odd\",\"question\":\"q=rope\"}");
    HttpResponse<String> invited =
        owner.post(
            "/api" + studio + "/invitations", "{\"role\":\"reader\",\"meant_for\":\"Somebody\"}");
    String link = String.valueOf(Visitor.object(invited).get("link"));
    List<String> pages = new ArrayList<>();
    RouteWalk.of(house).stream()
        .filter(step -> !step.isForPrograms() && step.verb().equals("GET"))
        .forEach(step -> pages.add(address(things, step.template())));
    pages.add(studio + "/setups?q=rope");
    pages.add(things.filled("/studios/demo/setups/{setup}/adapted?kit={kit}"));
    for (String page : pages) {
      tryEveryForm(owner, page);
    }
    for (String page : List.of("/sign-in", URI.create(link).getPath())) {
      tryEveryForm(stranger, page);
    }
    assertEquals(List.of(), wrong, String.join("\n", wrong));
    assertEquals(
        List.of("t"), house.database().sqlAsSuperuser("select count(*) > 0 from lampwright.setup"));
    assertEquals(
        List.of(),
        RouteWalk.of(house).stream()
            .filter(step -> step.changes() && !step.isForPrograms())
            .map(RouteWalk.Step::template)
            .filter(template -> !routes.contains("POST " + template))
            .filter(template -> !WITHOUT_A_FIELD.contains(template))
            .toList());
    assertTrue(tried.size() > 300, tried.size() + " tries");
  }

  /** Of what there is one of, and else of what there is none of. */
  private static String address(RoleThings things, String template) {
    return things.filled(template).replaceAll("[{<][^}>]*[}>]", "zzzzzzzzzzzzzzzz");
  }

  private void tryEveryForm(Visitor visitor, String page) {
    HttpResponse<String> asked = visitor.get(page);
    HttpResponse<String> answer =
        asked.headers().firstValue("Location").map(visitor::get).orElse(asked);
    if (answer.headers().firstValue("Content-Type").orElse("").startsWith("text/html")) {
      for (Element form : Jsoup.parse(answer.body()).select("form")) {
        tryEveryField(visitor, page, form);
      }
    }
  }

  private void tryEveryField(Visitor visitor, String page, Element form) {
    Map<String, String> fields = fields(form);
    String verb = form.attr("method").equalsIgnoreCase("post") ? "POST" : "GET";
    String action = form.hasAttr("action") ? form.attr("action") : page;
    String route = verb + " " + template(verb, action);
    if (route.endsWith("/sign-out")) {
      return;
    }
    for (String field : fields.keySet()) {
      if (!field.equals("csrf") && tried.add(route + " " + field)) {
        routes.add(route);
        Map<String, String> odd = new LinkedHashMap<>(fields);
        odd.put(field, SLEEP);
        send(visitor, verb, action, form.attr("enctype"), odd);
      }
    }
  }

  /** Each as a browser would send it; what one has to fill in is filled in. */
  private static Map<String, String> fields(Element form) {
    Map<String, String> fields = new LinkedHashMap<>();
    for (Element field : form.select("input[name], select[name], textarea[name], button[name]")) {
      String value =
          switch (field.normalName()) {
            case "select" -> chosen(field);
            case "textarea" -> field.text().isEmpty() ? "Rope" : field.text();
            default -> value(field);
          };
      boolean isChoice = List.of("radio", "checkbox").contains(field.attr("type"));
      if (!isChoice || field.hasAttr("checked") || !fields.containsKey(field.attr("name"))) {
        fields.put(field.attr("name"), value);
      }
    }
    return fields;
  }

  private static String chosen(Element select) {
    Elements marked = select.select("option[selected]");
    Element option = marked.isEmpty() ? select.selectFirst("option") : marked.first();
    return option == null ? "" : option.hasAttr("value") ? option.attr("value") : option.text();
  }

  /** No password is the right one: nothing that asks for it again is to come about. */
  private static String value(Element input) {
    String value = input.attr("value");
    return switch (input.attr("type")) {
      case "password" -> "not the one that it is";
      case "email" -> value.isEmpty() ? "nobody@light.example" : value;
      case "number" -> value.isEmpty() ? input.attr("min") : value;
      case "file" -> "";
      default -> value.isEmpty() && input.hasAttr("required") ? "Rope" : value;
    };
  }

  private static String template(String verb, String action) {
    String path = action.replaceAll("[?#].*", "");
    return RouteWalk.of(house).stream()
        .filter(step -> step.verb().equals(verb))
        .map(RouteWalk.Step::template)
        .filter(template -> path.matches(template.replaceAll("[{<][^}>]*[}>]", "[^/]+")))
        .min(InjectedIntoEveryFormTest::plainerFirst)
        .orElse(path);
  }

  private static int plainerFirst(String one, String other) {
    return Long.compare(
        one.chars().filter(c -> c == '{').count(), other.chars().filter(c -> c == '{').count());
  }

  private void send(
      Visitor visitor, String verb, String action, String type, Map<String, String> fields) {
    String encoded =
        fields.entrySet().stream()
            .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
            .collect(Collectors.joining("&"));
    String path = action.replaceAll("[?#].*", "");
    long begun = System.nanoTime();
    HttpResponse<String> answer =
        verb.equals("GET")
            ? visitor.get(path + "?" + encoded)
            : type.startsWith("multipart")
                ? visitor
                    .with("Content-Type", "multipart/form-data; boundary=XX")
                    .send("POST", action, BodyPublishers.ofString(parts(fields)))
                : visitor.postForm(action, encoded);
    if (answer.statusCode() >= 500
        || System.nanoTime() - begun > MOST_NANOS
        || answer.body().contains("syntax error")
        || answer.body().contains("org.jooq")) {
      wrong.add(verb + " " + action + " " + encoded + " -> " + answer.statusCode());
    }
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  private static String parts(Map<String, String> fields) {
    return fields.entrySet().stream()
            .map(
                field ->
                    "--XX\r\nContent-Disposition: form-data; name=\"%s\"%s\r\n\r\n%s\r\n"
                        .formatted(
                            field.getKey(),
                            field.getKey().equals("file") ? "; filename=\"a\"" : "",
                            field.getValue()))
            .collect(Collectors.joining())
        + "--XX--\r\n";
  }
}
