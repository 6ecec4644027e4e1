package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.Map;
import java.util.TreeMap;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.picture.Drawn;

/**
 * One of each thing in the demo studio, made anew for each who tries what they may, so that
 * nobody's try is in another's way. The setup is proven, so that readers may know of it.
 *
 * @param owner who makes what owners make
 * @param crew who logs the day
 * @param ids what stands in addresses, by the name of its place there
 */
record RoleThings(Visitor owner, Visitor crew, Map<String, String> ids) {

  private static final String STUDIO = "/api/studios/demo";

  static RoleThings made(Visitor owner, Visitor crew, String name) {
    RoleThings things = new RoleThings(owner, crew, new TreeMap<>());
    things.ids.put("studio", "demo");
    things.ids.put("revision", "2");
    things.ids.put("stage", "build");
    things.gearAndPlace(name);
    things.setup(name);
    things.day(name);
    things.learning(name);
    things.links(name);
    return things;
  }

  /** A text with the ids of the things that are there. */
  String filled(String text) {
    String filled = text;
    for (Map.Entry<String, String> thing : ids.entrySet()) {
      filled = filled.replace("{" + thing.getKey() + "}", thing.getValue());
    }
    return filled;
  }

  /** An address with the things that are there. */
  String path(String template) {
    String path = filled(template);
    assertTrue(path.indexOf('{') < 0, "Make one of what " + path + " names");
    return path;
  }

  private String setupPath() {
    return path(STUDIO + "/setups/{setup}");
  }

  private String keep(String what, HttpResponse<String> made) {
    assertEquals(201, made.statusCode(), made.body());
    String place = made.headers().firstValue("Location").orElseThrow();
    ids.put(what, place.substring(place.lastIndexOf('/') + 1));
    return place;
  }

  private void gearAndPlace(String name) {
    keep("kit", owner.post(STUDIO + "/kits", Documents.json(Documents.kit(name))));
    String gear =
        keep("gear", owner.post(STUDIO + "/gear", Documents.json(GearForTests.head(name, 60))));
    assertEquals(
        200,
        owner
            .with("If-Match", "\"1\"")
            .put(gear, Documents.json(GearForTests.head(name, 64)))
            .statusCode());
    keep("location", owner.post(STUDIO + "/locations", Documents.json(Documents.location(name))));
  }

  /** Its head is called as the studio's that is made beside it. */
  private static String setupWithHead(String name) {
    return Documents.json(Documents.setup(name)).replace("400 W·s battery head", name);
  }

  private void setup(String name) {
    String setup = keep("setup", owner.post(STUDIO + "/setups", setupWithHead(name)));
    assertEquals(
        200,
        owner
            .with("If-Match", "\"1\"")
            .put(setup + "/state", "{\"state\":\"proven\",\"archived\":false}")
            .statusCode());
    assertEquals(
        200,
        owner
            .with("If-Match", "\"2\"")
            .post(setup + "/used", "{\"lights\":[{\"light\":\"key\",\"stops_down\":3.5}]}")
            .statusCode());
    keep(
        "picture",
        owner
            .with("Content-Type", "image/png")
            .send(
                "POST",
                setup + "/pictures?kind=final",
                BodyPublishers.ofByteArray(Drawn.png(Drawn.scene(40, 30)))));
  }

  private void day(String name) {
    keep("note", crew.post(setupPath() + "/notes", "{\"text\":\"Fog.\"}"));
    keep(
        "proposal",
        crew.post(
            setupPath() + "/proposals",
            "{\"setup_revision\":1,\"used\":{\"lights\":[{\"light\":\"key\",\"stops_down\":4}]}}"));
    ids.put("client_key", key(name, "take"));
    keep(
        "take",
        crew.post(
            setupPath() + "/takes", Documents.json(TakesOverRestTest.take(key(name, "take"), 8))));
  }

  private static String key(String name, String what) {
    return what + "-of-" + name.replace(' ', '-');
  }

  /** New ones, which nobody has taken back. */
  void links(String name) {
    keep(
        "invitation",
        owner.post(STUDIO + "/invitations", "{\"role\":\"crew\",\"meant_for\":\"" + name + "\"}"));
    keep("link", owner.post(setupPath() + "/share-links", "{}"));
  }

  private void learning(String name) {
    String trail =
        keep(
            "trail",
            owner.post(STUDIO + "/trails", TrailsOverRestTest.trail(name, path("{setup}"))));
    assertEquals(200, crew.post(trail + "/stages/read/done", "").statusCode());
    String run = TrailsOverRestTest.runThrough(crew, setupPath(), key(name, "run"), 8);
    assertEquals(
        200, crew.post(trail + "/stages/build/builds", "{\"take\":\"" + run + "\"}").statusCode());
    String id = path("{trail}");
    ids.put(
        "build",
        Visitor.items(owner.get(STUDIO + "/builds")).stream()
            .filter(build -> Told.at(build, "trail").equals(id))
            .map(build -> Told.at(build, "id").toString())
            .findFirst()
            .orElseThrow());
  }
}
