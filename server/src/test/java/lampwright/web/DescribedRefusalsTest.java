package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.picture.Drawn;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

/**
 * Every operation of the description refuses as it is described to: each status that can be
 * provoked in one way everywhere is provoked everywhere, and each parameter of a query that cannot
 * hold any text refuses one that it cannot hold. What is particular to an operation is in {@link
 * OpenApiTest}.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DescribedRefusalsTest {

  private static final String STUDIO = "/api/studios/demo";
  private static final String NOT_ANY_VALUE = "%3F%3F";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private final Map<String, String> things = new TreeMap<>();
  private Described described = new Described("{}");
  private Visitor owner;

  @BeforeAll
  void oneOfEachThingIsThere() {
    described = new Described(house.visitor().get("/api/openapi.json").body());
    owner = house.signedIn("owner@demo.example");
    String setup = made("setup", "/setups", Documents.json(Documents.setup("Refusing")));
    made("kit", "/kits", Documents.json(Documents.kit("Refusing")));
    made("gear", "/gear", Documents.json(GearForTests.head("Refusing", 64)));
    made("location", "/locations", Documents.json(Documents.location("Refusing")));
    String below = setup.substring(STUDIO.length());
    made("search", "/saved-searches", "{\"name\":\"Refusing\",\"question\":\"q=a\"}");
    made("note", below + "/notes", "{\"text\":\"Refusing\"}");
    made("proposal", below + "/proposals", "{\"setup_revision\":1,\"used\":{}}");
    made("take", below + "/takes", Documents.json(TakesOverRestTest.take("refusing", 8)));
    String id = setup.substring(setup.lastIndexOf('/') + 1);
    String trail = made("trail", "/trails", TrailsOverRestTest.trail("Refusing", id));
    Visitor crew = house.withToken("crew@demo.example");
    crew.post(trail + "/stages/read/done", "");
    String run = TrailsOverRestTest.runThrough(crew, setup, "refusing-run", 8);
    crew.post(trail + "/stages/build/builds", "{\"take\":\"" + run + "\"}");
    things.put("stage", "build");
    things.put(
        "build",
        String.valueOf(Told.at(Visitor.items(owner.get(STUDIO + "/builds")).getLast(), "id")));
    HttpResponse<String> picture =
        owner
            .with("Content-Type", "image/png")
            .send(
                "POST",
                setup + "/pictures?kind=final",
                BodyPublishers.ofByteArray(Drawn.png(Drawn.scene(40, 30))));
    keep("picture", picture);
    things.put("link", "zzzz");
    things.put("studio", "demo");
    things.put("revision", "1");
    things.put("file", "setup.json");
    things.put("token", "zzzz");
    things.put("session", "zzzz");
    things.put("import", "zzzz");
    things.put("invitation", "zzzz");
    things.put("person", String.valueOf(Told.at(memberToBe(), "id")));
    HttpResponse<String> invited =
        owner.post(STUDIO + "/invitations", "{\"role\":\"crew\",\"meant_for\":\"Refusing\"}");
    String link = String.valueOf(Visitor.object(invited).get("link"));
    things.put("secret", link.substring(link.lastIndexOf('/') + 1));
  }

  private Object memberToBe() {
    return Visitor.items(owner.get(STUDIO + "/members")).stream()
        .filter(one -> "reader".equals(Told.at(one, "role")))
        .findFirst()
        .orElseThrow();
  }

  private String made(String what, String path, String body) {
    return keep(what, owner.post(STUDIO + path, body));
  }

  private String keep(String what, HttpResponse<String> made) {
    assertEquals(201, made.statusCode(), made.body());
    String place = made.headers().firstValue("Location").orElseThrow();
    things.put(what, place.substring(place.lastIndexOf('/') + 1));
    return place;
  }

  private static String verb(String operation) {
    return operation.substring(0, operation.indexOf(' '));
  }

  /** The address of an operation on the things that are there. */
  private String path(String operation) {
    String path = operation.substring(operation.indexOf(' ') + 1);
    for (Map.Entry<String, String> thing : things.entrySet()) {
      path = path.replace("{" + thing.getKey() + "}", thing.getValue());
    }
    assertTrue(path.indexOf('{') < 0, path);
    return path;
  }

  private interface Provoking {
    HttpResponse<String> send(String operation);
  }

  /**
   * Provokes a status in each operation that is described to answer with it, so far as it applies.
   */
  private List<String> provoke(int status, Provoking provoking) {
    List<String> wrong = new ArrayList<>();
    int provoked = 0;
    for (String operation : described.operations()) {
      if (described.tells(operation, status) && applies(operation, status)) {
        HttpResponse<String> answer = provoking.send(operation);
        provoked++;
        try {
          described.mustFit(operation, status, answer);
        } catch (AssertionError fault) {
          wrong.add(String.valueOf(fault.getMessage()));
        }
      }
    }
    assertTrue(provoked > 0, status + " is nowhere described");
    return wrong;
  }

  private boolean applies(String operation, int status) {
    boolean hasBody = !described.takes(operation).isEmpty();
    return switch (status) {
      // A wrong password, and what was used where nothing was told: others' tests.
      case 401 -> !operation.equals("POST /api/session");
      case 304 -> !operation.endsWith("/used");
      // Files have larger bounds, which their own tests try.
      case 413 -> described.takes(operation).stream().allMatch(DescribedRefusalsTest::isJson);
      case 404 -> !hasBody && !verb(operation).equals("POST") && operation.contains("{studio}");
      case 412 -> verb(operation).equals("DELETE") || verb(operation).equals("PATCH");
      default -> true;
    };
  }

  private static boolean isJson(String type) {
    return type.endsWith("json");
  }

  private HttpResponse<String> send(Visitor visitor, String operation, String query, String body) {
    return visitor.send(verb(operation), path(operation) + query, BodyPublishers.ofString(body));
  }

  /** With the state that is there now, so that nothing but what is provoked is wrong. */
  private Visitor current(String operation) {
    return owner.with("If-Match", "\"1\"").with("Content-Type", type(operation));
  }

  private String type(String operation) {
    Set<String> types = described.takes(operation);
    return types.isEmpty() ? "" : types.iterator().next();
  }

  /** What an operation must be asked with, where it must be. */
  private static String query(String operation) {
    if (operation.endsWith("/ambient")) {
      return "?at=2026-01-01T12:00:00Z";
    }
    if (operation.endsWith("/packing")) {
      return "?setup=zzzz";
    }
    return operation.endsWith("{setup}/comparison") ? "?from=1" : "";
  }

  @Test
  void everyStatusThatCanBeProvokedEverywhereIs() {
    List<String> wrong = new ArrayList<>();
    wrong.addAll(provoke(400, operation -> unreadable(operation)));
    wrong.addAll(provoke(401, operation -> send(house.visitor(), operation, "", "")));
    wrong.addAll(
        provoke(
            404,
            operation ->
                owner
                    .with("If-Match", "\"1\"")
                    .send(
                        verb(operation),
                        path(operation).replace("/demo/", "/nowhere/") + query(operation),
                        BodyPublishers.noBody())));
    wrong.addAll(
        provoke(
            412,
            operation -> send(current(operation).with("If-Match", "\"7\""), operation, "", "{}")));
    wrong.addAll(
        provoke(
            413,
            operation ->
                send(current(operation), operation, "", "\"" + "a".repeat(1 << 20) + "\"")));
    wrong.addAll(
        provoke(
            415,
            operation ->
                send(
                    current(operation).with("Content-Type", "application/xml"),
                    operation,
                    "",
                    "<a/>")));
    wrong.addAll(
        provoke(
            416, operation -> send(owner.with("Range", "bytes=999999999-"), operation, "", "")));
    wrong.addAll(
        provoke(
            428,
            operation -> {
              String query = operation.endsWith("{gear}/calibration") ? "?adopt=true" : "";
              return send(current(operation).with("If-Match", ""), operation, query, "{}");
            }));
    wrong.addAll(
        provoke(304, operation -> send(owner.with("If-None-Match", "*"), operation, "", "")));
    assertEquals(List.of(), wrong, String.join("\n", wrong));
  }

  /** An address with a character that no text may hold. */
  private HttpResponse<String> unreadable(String operation) {
    return send(current(operation), operation, "?a=%00", "{}");
  }

  @Test
  void everyParameterOfAQueryThatCannotHoldAnyTextRefusesWhatItCannotHold() {
    List<String> wrong = new ArrayList<>();
    int tried = 0;
    for (String operation : described.operations()) {
      if (!verb(operation).equals("GET")) {
        continue;
      }
      for (Map<?, ?> parameter : described.parameters(operation, "query")) {
        Map<?, ?> schema = (Map<?, ?>) Told.at(parameter, "schema");
        if (isAnyText(schema)) {
          continue;
        }
        tried++;
        Object name = parameter.get("name");
        HttpResponse<String> answer = send(owner, operation, "?" + name + "=" + NOT_ANY_VALUE, "");
        if (answer.statusCode() != 422 || !answer.body().contains("\"/" + name + "\"")) {
          wrong.add(operation + " " + name + ": " + answer.statusCode() + " " + answer.body());
        }
      }
    }
    assertTrue(tried > 20, tried + " parameters were tried");
    assertEquals(List.of(), wrong, String.join("\n", wrong));
  }

  private static boolean isAnyText(Map<?, ?> schema) {
    if ("array".equals(schema.get("type"))) {
      return isAnyText((Map<?, ?>) Told.at(schema, "items"));
    }
    return "string".equals(schema.get("type"))
        && !schema.containsKey("enum")
        && !schema.containsKey("format");
  }
}
