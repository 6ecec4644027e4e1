package lampwright.attack;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Pattern;
import lampwright.RouteWalk;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.web.EveryKindOfThing;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * One server for all attacks, with two studios in it that know nothing of each other: the demo's,
 * full of every kind of thing, and the rival's, whose owner attacks it.
 */
public final class AttackedHouse implements BeforeAllCallback {

  static final String RIVAL = "rival@light.example";
  public static final String STUDIO = "/api/studios/demo";

  /** Where visitors say that they come from: a network that is for documentation (RFC 5737). */
  private static final AtomicInteger ADDRESSES = new AtomicInteger();

  private static final Pattern ID = Pattern.compile("\"id\":\"([0-9a-z]{16})\"");

  private @Nullable Kept kept;

  /** Lives from the first attack to the end of the run. */
  private record Kept(TestHouse house, Map<String, String> things) implements AutoCloseable {

    @Override
    public void close() throws IOException {
      house.close();
    }
  }

  @Override
  public void beforeAll(ExtensionContext context) {
    kept =
        context
            .getRoot()
            .getStore(ExtensionContext.Namespace.create(AttackedHouse.class))
            .computeIfAbsent(Kept.class, _ -> open(context), Kept.class);
  }

  private static Kept open(ExtensionContext context) {
    TestHouse house =
        TestHouse.with(
            Map.of(
                "LAMPWRIGHT_DEMO",
                "few",
                "LAMPWRIGHT_DEMO_PASSWORD",
                TestHouse.PASSWORD,
                "LAMPWRIGHT_OWNER_EMAIL",
                RIVAL,
                "LAMPWRIGHT_OWNER_NAME",
                "Rival",
                "LAMPWRIGHT_OWNER_PASSWORD",
                TestHouse.PASSWORD,
                "LAMPWRIGHT_PUBLIC_URL",
                "http://light.example"));
    try {
      house.beforeAll(context);
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
    Visitor owner = house.withToken("owner@demo.example");
    Visitor crew = house.withToken("crew@demo.example");
    return new Kept(house, things(owner, new EveryKindOfThing(STUDIO, owner, crew).make()));
  }

  /** The ids of one thing of each kind, by what addresses call them. */
  private static Map<String, String> things(Visitor owner, Map<String, String> made) {
    Map<String, String> things = new LinkedHashMap<>();
    things.put("studio", "demo");
    String setup = made.getOrDefault("setup", "");
    things.put("setup", last(setup));
    things.put("location", last(made.getOrDefault("location", "")));
    things.put("picture", last(made.getOrDefault("picture", "")));
    things.put("take", first(owner.get(setup + "/takes")));
    things.put("note", first(owner.get(setup + "/notes")));
    things.put("kit", first(owner.get(STUDIO + "/kits")));
    things.put("gear", first(owner.get(STUDIO + "/gear")));
    things.put("trail", first(owner.get(STUDIO + "/trails")));
    things.put("stage", "read");
    things.put("revision", "1");
    things.put(
        "search",
        place(
            owner.post(STUDIO + "/saved-searches", "{\"name\":\"Kept\",\"question\":\"q=rope\"}")));
    things.put(
        "proposal", place(owner.post(setup + "/proposals", "{\"setup_revision\":7,\"used\":{}}")));
    return things;
  }

  private static String place(HttpResponse<String> made) {
    return last(made.headers().firstValue("Location").orElse("none"));
  }

  private static String last(String path) {
    return path.substring(path.lastIndexOf('/') + 1);
  }

  private static String first(HttpResponse<String> list) {
    return String.valueOf(Told.at(Visitor.items(list).getFirst(), "id"));
  }

  private Kept kept() {
    if (kept == null) {
      throw new IllegalStateException("Register the AttackedHouse as a static extension.");
    }
    return kept;
  }

  public TestHouse house() {
    return kept().house();
  }

  int port() {
    return house().port();
  }

  /** The id of the demo studio's thing of a kind. */
  public String thing(String kind) {
    return kept().things().getOrDefault(kind, "zzzzzzzzzzzzzzzz");
  }

  /** An address of a route on the demo studio's things. */
  public String path(String template) {
    String path = template;
    for (Map.Entry<String, String> thing : kept().things().entrySet()) {
      path = path.replace("{" + thing.getKey() + "}", thing.getValue());
    }
    return path.replaceAll("[{<][^}>]*[}>]", "zzzzzzzzzzzzzzzz");
  }

  /** Every route that a house really serves, without those that answer as GET does. */
  public List<RouteWalk.Step> routes() {
    return RouteWalk.of(house()).stream().filter(step -> !step.verb().equals("HEAD")).toList();
  }

  /** Somebody from an address that nobody else comes from. */
  Visitor stranger() {
    int number = ADDRESSES.incrementAndGet();
    return house()
        .visitor()
        .with("X-Forwarded-For", "198.51.%d.%d".formatted(100 + number / 250, number % 250 + 1));
  }

  /** A person with a session, who proves their changes. */
  public Visitor signedIn(String email) {
    return house().signedIn(email);
  }

  /** A person by a token. */
  public Visitor withToken(String email) {
    return house().withToken(email);
  }

  /** The id of the studio that the rival owns. */
  String rivalStudio(Visitor rival) {
    List<String> studios = new ArrayList<>();
    ID.matcher(rival.get("/api/studios").body()).results().forEach(id -> studios.add(id.group(1)));
    return studios.getFirst();
  }
}
